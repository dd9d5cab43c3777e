import { scaled } from '../../src/reading.ts';
import { PROFILE_UNITS, type ProfileUnit, scaleOf, unitMeasures } from '../profile/unit.ts';
import type { Observed } from './observed.ts';

/** What a number of a frame was at a stated figure. */
export interface Point {
  readonly figure: number;
  readonly number: number;
}

export interface Worth {
  readonly scale: string;
  readonly unit: ProfileUnit;
  /** The smallest step that the display shows, in `unit`: that of numbers which have none of their own. */
  readonly step: string;
}

/** Steps that tools have. */
const DIGITS = ['1', '2', '5'] as const;
const POWERS = [-6, -5, -4, -3, -2, -1, 0, 1] as const;

/** Every scale and unit that all points agree with: to half a step of the display, and one of the numbers. */
export function scalesOf(observed: Observed, points: readonly Point[], isExact: boolean): readonly Worth[] {
  const { quantity, unit: shown, step } = observed;
  const largest = Math.max(...points.map(({ number }) => Math.abs(number)));
  // Where the largest number is a few steps, any scale of about that size fits: such a fit shows nothing.
  if (isExact && largest < FEW_STEPS) return [];
  const found = new Map<string, Worth>();
  const units = PROFILE_UNITS.filter((one) => unitMeasures(one) === quantity);
  for (const unit of [shown, ...units])
    for (const digit of isExact ? DIGITS : (['1'] as const))
      for (const power of POWERS)
        for (const sign of ['', '-']) {
          const scale = sign + decimalText(digit, power);
          const ratio = inSi(unit) / inSi(shown);
          const one = Number(scale) * ratio;
          const tolerance = (isExact ? 0.51 : 0.6) * Number(step) + (isExact ? Math.abs(one) : 0);
          if (!points.every(({ figure, number }) => Math.abs(number * one - figure) <= tolerance)) continue;
          // 0.01 N·m and 1 cN·m are the same.
          const same = one.toPrecision(9);
          if (!found.has(same)) found.set(same, { scale, unit, step: stepIn(Number(step) / ratio) });
        }
  return [...found.values()];
}

const FEW_STEPS = 20;

/** The power of ten below it, as text. */
const stepIn = (step: number) => decimalText('1', Math.max(-9, Math.floor(Math.log10(step) + 1e-9)));

/** N·m or m in one. */
export function inSi(unit: ProfileUnit): number {
  const { exponent, counts } = scaleOf({ scale: '1', step: '0.001', unit, decimals: 0, exact: false });
  return scaled(counts, exponent);
}

const decimalText = (digit: string, power: number) =>
  power >= 0 ? digit + '0'.repeat(power) : `0.${'0'.repeat(-power - 1)}${digit}`;
