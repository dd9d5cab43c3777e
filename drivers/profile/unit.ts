import { degrees } from '../../src/quantity/angle.ts';
import { millimetres } from '../../src/quantity/length.ts';
import { newtonMetres } from '../../src/quantity/torque.ts';
import type { Quantity } from '../../src/reading.ts';

/** Units that a profile may name, as N·m, m or ° in one of each; a power of ten is kept as such, so that it stays exact. */
const UNITS = {
  N·m: { quantity: 'torque', power: 0 },
  cN·m: { quantity: 'torque', power: -2 },
  mN·m: { quantity: 'torque', power: -3 },
  lbf·ft: { quantity: 'torque', factor: newtonMetres(1, '[ft_i].[lbf_av]') },
  lbf·in: { quantity: 'torque', factor: newtonMetres(1, '[in_i].[lbf_av]') },
  kgf·m: { quantity: 'torque', factor: newtonMetres(1, 'kgf.m') },
  kgf·cm: { quantity: 'torque', factor: newtonMetres(1, 'kgf.cm') },
  m: { quantity: 'length', power: 0 },
  mm: { quantity: 'length', power: -3 },
  µm: { quantity: 'length', power: -6 },
  in: { quantity: 'length', factor: millimetres(1, '[in_i]') / 1_000 },
  mil: { quantity: 'length', factor: millimetres(1, '[mil_i]') / 1_000 },
} as const satisfies Record<string, { quantity: Quantity } & Size>;

type Size = { readonly power: number } | { readonly factor: number };
export type ProfileUnit = keyof typeof UNITS;
export const PROFILE_UNITS = Object.keys(UNITS) as [ProfileUnit, ...ProfileUnit[]];
export const unitMeasures = (unit: ProfileUnit): Quantity => UNITS[unit].quantity;

export const ANGLE_UNITS = ['°', 'turn'] as const;
const ANGLES: Readonly<Record<(typeof ANGLE_UNITS)[number], Size>> = {
  '°': { power: 0 },
  turn: { factor: degrees(1, 'circ') },
};

/** How numbers become counts of `10^exponent` N·m, m or °. */
export interface Scale {
  readonly exponent: number;
  /** Counts in 1. Whole where no rounding is needed. */
  readonly counts: number;
  /** Rounded up. */
  readonly resolutionCounts: number;
}

/** What a number is worth: `scale` (decimal text) is the value of 1 in `unit`, `step` the tool's smallest step. */
export interface Worth {
  readonly scale: string;
  readonly step: string;
  readonly unit: ProfileUnit | (typeof ANGLE_UNITS)[number];
  /** Digits behind the point of numbers that are written without it; 0 for others. */
  readonly decimals: number;
  /** The numbers are whole. */
  readonly exact: boolean;
}

/** Counts in a step where a unit or a floating point number cannot be had exactly: the rounding is lost in the step. */
const FINENESS = 3;

/** Exact where the unit is a power of ten and the numbers are whole, else rounded to less than a thousandth of a step. */
export function scaleOf({ scale, step, unit, decimals, exact }: Worth): Scale {
  const size: Size = unit === '°' || unit === 'turn' ? ANGLES[unit] : UNITS[unit];
  const one = decimal(scale);
  if (exact && 'power' in size) {
    const exponent = one.exponent - decimals;
    const least = decimal(step);
    return {
      exponent: exponent + size.power,
      counts: one.digits,
      resolutionCounts: upTo(Math.abs(least.digits) * 10 ** (least.exponent - exponent)),
    };
  }
  const inUnit = 'power' in size ? 10 ** size.power : size.factor;
  const stepSi = Math.abs(Number(step)) * inUnit;
  const fine = Math.floor(Math.log10(stepSi)) - FINENESS;
  return {
    exponent: fine,
    counts: Number(scale) * inUnit * 10 ** -(fine + decimals),
    resolutionCounts: upTo(stepSi * 10 ** -fine),
  };
}

/** Several scales of one tool in its one exponent, the finest; what it resolves is the coarsest of their steps. */
export function common(scales: readonly Scale[]): {
  readonly exponent: number;
  readonly resolutionCounts: number;
  readonly counts: readonly number[];
} {
  const exponent = Math.min(...scales.map((one) => one.exponent));
  return {
    exponent,
    counts: scales.map((one) => one.counts * 10 ** (one.exponent - exponent)),
    resolutionCounts: Math.max(
      ...scales.map((one) => upTo(one.resolutionCounts * 10 ** (one.exponent - exponent))),
    ),
  };
}

/** Whole, and never finer than it is; what is whole but for the rounding of a double stays as it is. */
const upTo = (value: number) => Math.ceil(value - 1e-6 * value);

/** `-0.05` is -5 · 10^-2. */
export function decimal(text: string): { readonly digits: number; readonly exponent: number } {
  const [whole = '', fraction = ''] = text.replace('-', '').split('.');
  const digits = `${whole}${fraction}`.replace(/^0+/, '');
  const trimmed = digits.replace(/0+$/, '');
  const sign = text.startsWith('-') ? -1 : 1;
  return { digits: sign * Number(trimmed), exponent: digits.length - trimmed.length - fraction.length };
}
