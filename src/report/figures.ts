import { shownDecimals, shownFigure, shownUnit, shownValue } from '../quantity/shown.ts';
import { fixed, inWriting } from '../words/catalogue.ts';

/** Decimals of what is read in one unit everywhere; the record keeps every digit. */
const DECIMALS = { '%': 2, deg: 1 } as const;

/** More of them nobody reads, and no instrument shows. */
const MOST_DECIMALS = 6;

export type Unit = keyof typeof DECIMALS | 'N.m' | 'mm';

/** The unit as written on paper, of torque and length the one that the reader reads. */
export const UNIT_TEXT: Readonly<Record<Unit, string>> = {
  get 'N.m'() {
    return shownUnit('N.m');
  },
  get mm() {
    return shownUnit('mm');
  },
  '%': '%',
  deg: '°',
};

const isShown = (unit: Unit): unit is 'N.m' | 'mm' => unit === 'N.m' || unit === 'mm';

const decimalsOf = (unit: Unit): number => (isShown(unit) ? shownDecimals(unit) : DECIMALS[unit]);

const inItsUnit = (value: number, unit: Unit): number => (isShown(unit) ? shownValue(value, unit) : value);

/** A figure without its unit. Absurdly large ones, which only a damaged tool sends, in powers of ten. */
export function figure(value: number, unit: Unit): string {
  if (Math.abs(value) >= 1e6) return inWriting(inItsUnit(value, unit).toExponential(3));
  return isShown(unit) ? shownFigure(value, unit) : written(value, unit);
}

/** Writes figures that lie this close together, with as many more decimals as it takes to tell them apart. */
export function figuresApart(distance: number, unit: Unit): (value: number) => string {
  const steps = Math.ceil(-Math.log10(Math.abs(inItsUnit(distance, unit))));
  const decimals = Number.isFinite(steps) ? Math.min(steps, MOST_DECIMALS) : 0;
  if (decimals <= decimalsOf(unit)) return (value) => figure(value, unit);
  return (value) => (Math.abs(value) >= 1e6 ? figure(value, unit) : fixed(inItsUnit(value, unit), decimals));
}

/** A figure with its unit: `25.00 N·m`, `18.44 lbf·ft`. */
export const withUnit = (value: number, unit: Unit): string => `${figure(value, unit)} ${UNIT_TEXT[unit]}`;

export const torqueText = (nm: number): string => withUnit(nm, 'N.m');

export const gapText = (mm: number): string => withUnit(mm, 'mm');

/** A lower bound rounded up: the printed zone is never wider than the one that was judged by. */
export const lowerBound = (value: number, unit: Unit): string => bound(value, unit, Math.ceil);

/** An upper bound rounded down. */
export const upperBound = (value: number, unit: Unit): string => bound(value, unit, Math.floor);

function bound(value: number, unit: Unit, rounded: (steps: number) => number): string {
  const step = 10 ** decimalsOf(unit);
  // Printed steps in the value, freed of what binary fractions add at the twelfth digit.
  const steps = Number((inItsUnit(value, unit) * step).toPrecision(12));
  return written(rounded(steps) / step, unit);
}

/** A number that is in its unit already. */
function written(number: number, unit: Unit): string {
  if (Math.abs(number) >= 1e6) return inWriting(number.toExponential(3));
  return fixed(number, decimalsOf(unit));
}

/** A probability, never printed as a certainty. */
export function percent(probability: number): string {
  if (probability >= 0.9995) return `> ${fixed(99.9, 1)} %`;
  if (probability < 0.0005) return `< ${fixed(0.1, 1)} %`;
  return `${fixed(probability * 100, 1)} %`;
}

/** `2025-11-25 09:40:12 UTC` from the ISO time of a log entry. */
export function utc(at: string): string {
  return `${at.slice(0, 10)} ${at.slice(11, 19)} UTC`;
}
