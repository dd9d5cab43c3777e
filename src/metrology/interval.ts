import { order } from '../quantity/compare.ts';
import { COVERAGE_FACTOR } from './coverage.ts';
import type { Judgement, Window } from './judgement.ts';
import type { Spread } from './spread.ts';

/** A value of which only bounds are known, as from a go/no-go gauge; null where that side is open. */
export interface Interval {
  readonly lower: number | null;
  readonly upper: number | null;
}

/**
 * Holds an interval against a window. OK when all of it lies in the acceptance zone, NotOK when all of it lies beyond the
 * limits by the guard band, else NotDecidable. The probability takes every value of the interval as equally likely; an
 * open side ends at 0 and at twice the upper limit. `value` is the middle, or the one bound that is known.
 */
export function judgeInterval({ lower, upper }: Interval, window: Window): Judgement {
  const { lowerLimit, upperLimit, acceptLower, acceptUpper, expandedAtUpper } = window;
  const from = lower ?? 0;
  const to = upper ?? Math.max(2 * upperLimit, 2 * from);
  if (!(from >= 0 && from < to)) throw new RangeError(`the interval ${from} to ${to} holds nothing`);
  const value = lower === null || upper === null ? (lower ?? upper ?? 0) : (from + to) / 2;
  const inside = Math.max(0, Math.min(to, upperLimit) - Math.max(from, lowerLimit)) / (to - from);
  const proven =
    lower !== null && upper !== null && order(lower, acceptLower) >= 0 && order(upper, acceptUpper) <= 0;
  const below = upper !== null && order(upper, lowerLimit - (acceptLower - lowerLimit)) <= 0;
  const above = lower !== null && order(lower, upperLimit + (upperLimit - acceptUpper)) >= 0;
  const middle = (acceptLower + acceptUpper) / 2;
  return {
    result: proven ? 'OK' : below || above ? 'NotOK' : 'NotDecidable',
    side: proven ? 'inside' : lower === null || (upper !== null && value < middle) ? 'low' : 'high',
    grade: proven ? 'pass' : below || above ? 'fail' : inside > 0.5 ? 'conditional-pass' : 'conditional-fail',
    value,
    expandedUncertainty:
      lower === null || upper === null ? expandedAtUpper : (to - from) / 2 + expandedAtUpper,
    conformanceProbability: inside,
  };
}

/** That of a bound known within ±`within`: rectangular, so within/√3. */
export const spreadWithin = (within: number): Spread => {
  const standard = within / Math.sqrt(3);
  return { standard, degreesOfFreedom: Number.POSITIVE_INFINITY, expanded: COVERAGE_FACTOR * standard };
};
