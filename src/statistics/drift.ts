import { studentQuantile } from '../metrology/student.ts';
import { err, ok, type Result } from '../result.ts';
import { numberProblem, readingsProblem } from './checks.ts';
import type { Limits } from './limits.ts';
import { mean, momentsOf } from './moments.ts';

/** What a calibration or a check found: days since any fixed day, reading less reference. */
export interface Found {
  readonly atDays: number;
  readonly deviation: number;
}

/** A straight line through deviations over time, by ordinary least squares. */
export interface Drift {
  readonly n: number;
  readonly perDay: number;
  /** Standard uncertainty of `perDay`, from the scatter about the line. */
  readonly perDayUncertainty: number;
  readonly meanAtDays: number;
  readonly meanDeviation: number;
  /** Σ (t - mean)². */
  readonly timeSquares: number;
  /** Standard deviation about the line, n - 2 degrees of freedom. */
  readonly scatter: number;
}

/** A value with its two-sided interval. */
export interface Predicted {
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The drift of an instrument. Rests on one line for the whole time: after an adjustment start anew. With three points
 * the intervals are very wide, and rightly so. Problems: `not-a-number`, `too-few` (three are needed), `one-day`.
 */
export function fitDrift(found: readonly Found[]): Result<Drift> {
  const days = found.map(({ atDays }) => atDays);
  const deviations = found.map(({ deviation }) => deviation);
  const problem =
    readingsProblem(days, 'days') ??
    readingsProblem(deviations, 'deviations') ??
    numberProblem(found.length, 3, 'calibrations');
  if (problem !== null) return err(problem);
  const [meanAtDays, meanDeviation] = [mean(momentsOf(days)), mean(momentsOf(deviations))];
  const centred = found.map(({ atDays, deviation }) => ({
    t: atDays - meanAtDays,
    y: deviation - meanDeviation,
  }));
  const timeSquares = sum(centred.map(({ t }) => t * t));
  if (timeSquares === 0)
    return err({
      code: 'one-day',
      where: 'calibrations',
      message: 'all calibrations are of the same day, so there is no drift to estimate',
      next: 'add calibrations of other days',
    });
  const perDay = sum(centred.map(({ t, y }) => t * y)) / timeSquares;
  const scatter = Math.sqrt(sum(centred.map(({ t, y }) => (y - perDay * t) ** 2)) / (found.length - 2));
  return ok({
    n: found.length,
    perDay,
    perDayUncertainty: scatter / Math.sqrt(timeSquares),
    meanAtDays,
    meanDeviation,
    timeSquares,
    scatter,
  });
}

/** Where one new finding at that day will lie with `confidence`: Student's t, n - 2 degrees of freedom. */
export function predict(drift: Drift, atDays: number, confidence: number): Predicted {
  const t = atDays - drift.meanAtDays;
  const value = drift.meanDeviation + drift.perDay * t;
  const spread = drift.scatter * Math.sqrt(1 + 1 / drift.n + (t * t) / drift.timeSquares);
  const half = studentQuantile((1 + confidence) / 2, drift.n - 2) * spread;
  return { value, from: value - half, to: value + half };
}

/** A stretch of time, both ends included. */
export interface Period {
  readonly fromDays: number;
  readonly toDays: number;
}

/** The first day of the period on which the prediction reaches beyond a permissible deviation; null when it never does. */
export function firstDayOutside(
  drift: Drift,
  permissible: Limits,
  { fromDays, toDays }: Period,
  confidence: number,
): number | null {
  const { lower, upper } = permissible;
  const outside = (atDays: number) => {
    const { from, to } = predict(drift, atDays, confidence);
    return (upper !== null && to > upper) || (lower !== null && from < lower);
  };
  if (outside(fromDays)) return fromDays;
  if (!outside(toDays)) return null;
  // The interval's edges bend outwards, so inside at the start and outside at the end means one crossing between.
  let [inside, beyond] = [fromDays, toDays];
  for (;;) {
    const middle = (inside + beyond) / 2;
    if (middle <= inside || middle >= beyond) return beyond;
    if (outside(middle)) beyond = middle;
    else inside = middle;
  }
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
