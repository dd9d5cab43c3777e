import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { numberProblem, readingsProblem, spreadProblem } from './checks.ts';
import { mean, momentsOf } from './moments.ts';
import { movingRange } from './moving-range.ts';
import { runSignals, type Signal } from './run-rules.ts';

/** Fewer do not give limits worth holding anything against. Our choice; 20 to 25 are usual. */
const LEAST = 8;

/** Where a stable process keeps its readings. */
export interface IndividualsLimits {
  readonly centre: number;
  /** Mean moving range / d2. */
  readonly sigma: number;
  readonly lower: number;
  readonly upper: number;
  /** Of the moving ranges; their lower limit is zero. */
  readonly rangeCentre: number;
  readonly rangeUpper: number;
  /** Readings the limits stand on. */
  readonly n: number;
}

/** Readings held against limits. */
export interface IndividualsChart {
  readonly limits: IndividualsLimits;
  readonly readings: readonly number[];
  readonly ranges: readonly number[];
  /** By reading, then by rule. */
  readonly signals: readonly Signal[];
  /** Indices of readings whose range to the one before is above its limit. */
  readonly wideRanges: readonly number[];
}

/**
 * Limits from readings of a period in which the process is taken as stable: centre ± 3·MR/d2. Readings that depend on
 * their neighbours (`lag1` well off zero) get limits that are too narrow. e-Handbook, 6.3.2.2. Problems: `not-a-number`, `too-few`, `no-spread`.
 */
export function individualsLimits(baseline: readonly number[]): Result<IndividualsLimits> {
  const problem =
    readingsProblem(baseline, w`readings`) ??
    numberProblem(baseline.length, LEAST, w`readings`) ??
    spreadProblem(baseline, w`readings`);
  if (problem !== null) return err(problem);
  const near = movingRange(baseline);
  const centre = mean(momentsOf(baseline));
  return ok({
    centre,
    sigma: near.sigma,
    lower: centre - 3 * near.sigma,
    upper: centre + 3 * near.sigma,
    rangeCentre: near.mean,
    rangeUpper: near.upperLimit,
    n: baseline.length,
  });
}

/** The chart of readings against limits from the same or from earlier readings. Problem: `not-a-number`. */
export function individualsChart(
  readings: readonly number[],
  limits: IndividualsLimits,
): Result<IndividualsChart> {
  const problem = readingsProblem(readings, w`readings`);
  if (problem !== null) return err(problem);
  const { ranges } = movingRange(readings);
  return ok({
    limits,
    readings,
    ranges,
    signals: runSignals(readings, limits.centre, limits.sigma),
    wideRanges: ranges.flatMap((range, index) => (range > limits.rangeUpper ? [index + 1] : [])),
  });
}
