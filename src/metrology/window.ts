/**
 * Says whether a reading proves conformity: limits and uncertainty make a window, a window and a reading a judgement.
 * The rest of this folder says where the uncertainty comes from (budget, term, terms) and what a rule risks (decision, risk).
 */
import { order } from '../quantity/compare.ts';
import type { Evaluation, Grade, Judgement, Window, Zoned } from './judgement.ts';
import { normalBetween } from './normal.ts';
import type { Spread } from './spread.ts';
import { studentCdf } from './student.ts';

/** The limits of a specification, and what is known of the instrument that is to prove them. */
export interface WindowInput<U extends string = Window['unit']> {
  readonly unit: U;
  readonly lowerLimit: number;
  readonly upperLimit: number;
  /** r of the guard band r·U; 1 keeps the risk of a false OK below 2.3 % at each limit, 0 is simple acceptance. */
  readonly guardBandFactor: number;
  /** That of a reading of that size, in the unit of the window. */
  readonly spreadAt: (value: number) => Spread;
}

/**
 * The acceptance zone that the uncertainty leaves within the limits: guard band w = r·U at each limit (JCGM 106:2012,
 * clause 8.3; ILAC-G8:09/2019). Not decidable when the guard bands meet. A wrong limit or uncertainty throws RangeError.
 */
export function windowOf<U extends string>(input: WindowInput<U>): Zoned<U> {
  const { unit, lowerLimit, upperLimit, guardBandFactor } = input;
  const expandedAtLower = input.spreadAt(lowerLimit).expanded;
  const expandedAtUpper = input.spreadAt(upperLimit).expanded;
  if (!(Number.isFinite(lowerLimit) && Number.isFinite(upperLimit) && lowerLimit < upperLimit))
    throw new RangeError(`limits ${lowerLimit} and ${upperLimit} do not enclose anything`);
  if (!(guardBandFactor >= 0)) throw new RangeError(`guard band factor ${guardBandFactor} is below zero`);
  mustBeUncertainty(expandedAtLower);
  mustBeUncertainty(expandedAtUpper);
  const acceptLower = lowerLimit + guardBandFactor * expandedAtLower;
  const acceptUpper = upperLimit - guardBandFactor * expandedAtUpper;
  const decidable = order(acceptLower, acceptUpper) < 0;
  return {
    unit,
    lowerLimit,
    upperLimit,
    guardBandFactor,
    expandedAtLower,
    expandedAtUpper,
    acceptLower,
    acceptUpper,
    decidable,
  };
}

/**
 * Holds a reading (in the unit of the window) against a window. Grades of the non-binary statement with guard band of
 * ILAC-G8:09/2019: `pass` within the acceptance zone, `conditional-pass` up to the limit, `conditional-fail` up to one
 * guard band beyond it, `fail` further out; both conditional grades are `NotDecidable`. Never OK where the window is not
 * decidable. `spread` is that of the reading. A reading that is no number throws RangeError.
 */
export function judge(value: number, spread: Spread, window: Zoned<string>): Judgement {
  if (!Number.isFinite(value)) throw new RangeError(`a reading must be a number, not ${value}`);
  mustBeUncertainty(spread.expanded);
  const grade = gradeOf(value, window);
  return {
    result: RESULT_OF[grade],
    side: sideOf(value, window),
    grade,
    value,
    expandedUncertainty: spread.expanded,
    conformanceProbability: conformanceProbability(value, spread.standard, window, spread.degreesOfFreedom),
  };
}

/**
 * Probability that the true value lies within the limits, given a reading with standard uncertainty `standard` and no
 * other knowledge (JCGM 106:2012, clause 7.4), both tails counted: normal about the reading, or t scaled by `standard`
 * where the degrees of freedom are few (GUM G.3.2).
 */
export function conformanceProbability(
  value: number,
  standard: number,
  { lowerLimit, upperLimit }: Pick<Window, 'lowerLimit' | 'upperLimit'>,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
): number {
  const [from, to] = [(lowerLimit - value) / standard, (upperLimit - value) / standard];
  const inside =
    degreesOfFreedom === Number.POSITIVE_INFINITY
      ? normalBetween(from, to)
      : studentBetween(from, to, degreesOfFreedom);
  return Math.min(1, Math.max(0, inside));
}

/** By the tails on its own side of the middle, so that none of them is lost. */
const studentBetween = (from: number, to: number, degreesOfFreedom: number): number =>
  from > 0
    ? studentCdf(-from, degreesOfFreedom) - studentCdf(-to, degreesOfFreedom)
    : studentCdf(to, degreesOfFreedom) - studentCdf(from, degreesOfFreedom);

const RESULT_OF: Readonly<Record<Grade, Evaluation>> = {
  pass: 'OK',
  'conditional-pass': 'NotDecidable',
  'conditional-fail': 'NotDecidable',
  fail: 'NotOK',
};

function gradeOf(value: number, window: Zoned<string>): Grade {
  const { lowerLimit, upperLimit, acceptLower, acceptUpper } = window;
  if (window.decidable && order(value, acceptLower) >= 0 && order(value, acceptUpper) <= 0) return 'pass';
  if (order(value, lowerLimit) >= 0 && order(value, upperLimit) <= 0) return 'conditional-pass';
  const failLower = lowerLimit - (acceptLower - lowerLimit);
  const failUpper = upperLimit + (upperLimit - acceptUpper);
  return order(value, failLower) >= 0 && order(value, failUpper) <= 0 ? 'conditional-fail' : 'fail';
}

/** An empty acceptance zone counts as the point at its middle, so that the side still tells which way to go. */
function sideOf(value: number, { acceptLower, acceptUpper, decidable }: Zoned<string>): Judgement['side'] {
  const middle = (acceptLower + acceptUpper) / 2;
  if (order(value, decidable ? acceptLower : middle) < 0) return 'low';
  return order(value, decidable ? acceptUpper : middle) > 0 ? 'high' : 'inside';
}

function mustBeUncertainty(expanded: number): void {
  if (!(Number.isFinite(expanded) && expanded > 0))
    throw new RangeError(`an uncertainty is above zero, not ${expanded}`);
}
