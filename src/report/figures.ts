/** Decimals a reader sees; the record keeps every digit. */
const DECIMALS = { 'N.m': 2, mm: 3, '%': 2, deg: 1 } as const;

export type Unit = keyof typeof DECIMALS;

/** The unit as written on paper. */
export const UNIT_TEXT: Readonly<Record<Unit, string>> = { 'N.m': 'N·m', mm: 'mm', '%': '%', deg: '°' };

/** A figure without its unit. Absurdly large ones, which only a damaged tool sends, in powers of ten. */
export function figure(value: number, unit: Unit): string {
  if (Math.abs(value) >= 1e6) return value.toExponential(3);
  return withoutMinusZero(value.toFixed(DECIMALS[unit]));
}

/** A lower bound rounded up: the printed zone is never wider than the one that was judged by. */
export function lowerBound(value: number, unit: Unit): string {
  return figure(Math.ceil(steps(value, unit)) / 10 ** DECIMALS[unit], unit);
}

/** An upper bound rounded down. */
export function upperBound(value: number, unit: Unit): string {
  return figure(Math.floor(steps(value, unit)) / 10 ** DECIMALS[unit], unit);
}

/** Printed steps in a value, freed of what binary fractions add at the twelfth digit. */
function steps(value: number, unit: Unit): number {
  return Number((value * 10 ** DECIMALS[unit]).toPrecision(12));
}

/** A probability, never printed as a certainty. */
export function percent(probability: number): string {
  if (probability >= 0.9995) return '> 99.9 %';
  if (probability < 0.0005) return '< 0.1 %';
  return `${(probability * 100).toFixed(1)} %`;
}

/** `2025-11-25 09:40:12 UTC` from the ISO time of a log entry. */
export function utc(at: string): string {
  return `${at.slice(0, 10)} ${at.slice(11, 19)} UTC`;
}

function withoutMinusZero(text: string): string {
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
}
