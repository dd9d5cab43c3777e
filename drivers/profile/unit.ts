import { millimetres } from '../../src/quantity/length.ts';
import { newtonMetres } from '../../src/quantity/torque.ts';
import type { Quantity } from '../../src/reading.ts';

/** Units that a profile may name, as N·m or m in one of each; a power of ten stands as such, so that it stays exact. */
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
} as const satisfies Record<string, { quantity: Quantity } & ({ power: number } | { factor: number })>;

export type ProfileUnit = keyof typeof UNITS;
export const PROFILE_UNITS = Object.keys(UNITS) as [ProfileUnit, ...ProfileUnit[]];
export const unitMeasures = (unit: ProfileUnit): Quantity => UNITS[unit].quantity;

/** How numbers become counts of `10^exponent` N·m or m. */
export interface Scale {
  readonly exponent: number;
  /** Counts in one. Whole where no rounding is needed. */
  readonly counts: number;
  /** Rounded; undefined where the tool gives no step. */
  readonly resolutionCounts: number;
}

/** Counts in a step where a unit or a floating point number cannot be had exactly: the rounding is lost in the step. */
const FINENESS = 3;

/**
 * `scale` (decimal text) is the value of 1 in `unit`; `step` the same of the tool's smallest step. Exact where the unit
 * is a power of ten and the numbers are integers, else counts are rounded to less than a thousandth of a step.
 */
export function scaleOf(scale: string, step: string, unit: ProfileUnit, exact: boolean): Scale {
  const factor = UNITS[unit];
  const { digits, exponent } = decimal(scale);
  if (exact && 'power' in factor)
    return { exponent: exponent + factor.power, counts: digits, resolutionCounts: digits };
  const one = 'power' in factor ? 10 ** factor.power : factor.factor;
  const stepSi = Number(step) * one;
  const fine = Math.floor(Math.log10(stepSi)) - FINENESS;
  return {
    exponent: fine,
    counts: Number(scale) * one * 10 ** -fine,
    resolutionCounts: Math.round(stepSi * 10 ** -fine),
  };
}

/** `0.05` is 5 · 10^-2. */
function decimal(text: string): { readonly digits: number; readonly exponent: number } {
  const [whole = '', fraction = ''] = text.split('.');
  const digits = `${whole}${fraction}`.replace(/^0+/, '');
  const trimmed = digits.replace(/0+$/, '');
  return { digits: Number(trimmed), exponent: digits.length - trimmed.length - fraction.length };
}
