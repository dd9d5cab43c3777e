import { chiSquareQuantile } from '../metrology/chi-square.ts';
import { normalCdf, normalQuantile } from '../metrology/normal.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { numberProblem, readingsProblem, spreadProblem, sumsProblem } from './checks.ts';
import { type Counts, count, type Limits, limitsProblem } from './limits.ts';
import { mean, momentsOf, standardDeviation } from './moments.ts';
import { movingRange } from './moving-range.ts';
import { type Normality, normalityOf } from './normality.ts';
import { type Proportion, proportion } from './proportion.ts';

/** Below this an index says next to nothing: at 30 readings Cp is known to about ±25 %. Our choice. */
const LEAST = 30;
/** Common practice for a statement of capability. */
const USUAL = 100;
/** Common practice: readings with fewer different values show the step of the instrument, not the process. */
const VALUES_APART = 5;

/** How limits compare with six, or to one side three, standard deviations. e-Handbook, 6.1.6. */
export interface Indices {
  /** Cp or Pp; null with one limit only. */
  readonly spread: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  /** Cpk or Ppk: the smaller of `lower` and `upper`. */
  readonly nearest: number;
  /** Distance of the mean from the middle in half widths (k); null with one limit only. */
  readonly offCentre: number | null;
}

/** A figure with its two-sided confidence interval. */
export interface Estimate {
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/** Readings in steps that are wide against their spread. */
export interface Coarse {
  /** How many different values there are. */
  readonly values: number;
  /** The least distance between two of them. */
  readonly step: number;
}

export interface Capability {
  readonly n: number;
  /** Fewer than the hundred that are usual for such a statement. */
  readonly fewerThanUsual: boolean;
  /** Then sigma is what rounding left of the spread, and every index may be far too good; null where the steps are fine. */
  readonly coarse: Coarse | null;
  readonly confidence: number;
  readonly mean: number;
  /** From moving ranges, so it depends on the order of the readings: what the process does from one to the next. */
  readonly sigmaWithin: number;
  /** Sample standard deviation: what was delivered. */
  readonly sigmaOverall: number;
  readonly cp: Estimate | null;
  readonly cpk: Estimate;
  readonly pp: Estimate | null;
  readonly ppk: Estimate;
  readonly offCentre: number | null;
  /** Per cent outside if the readings are normal, with `mean` and `sigmaOverall`. */
  readonly expectedPercent: { readonly below: number; readonly above: number; readonly total: number };
  /** Whether they may be normal; where that is excluded, `expectedPercent` and the indices say nothing of these readings. */
  readonly normality: Normality;
  readonly counts: Counts;
  readonly outside: Proportion;
}

/** Indices of a known mean and standard deviation (above zero) against limits of which at least one is given. */
export function indices(mean: number, sigma: number, { lower, upper }: Limits): Indices {
  const low = lower === null ? null : (mean - lower) / (3 * sigma);
  const high = upper === null ? null : (upper - mean) / (3 * sigma);
  const nearest = Math.min(low ?? Number.POSITIVE_INFINITY, high ?? Number.POSITIVE_INFINITY);
  if (lower === null || upper === null)
    return { spread: null, lower: low, upper: high, nearest, offCentre: null };
  const offCentre = Math.abs((lower + upper) / 2 - mean) / ((upper - lower) / 2);
  return { spread: (upper - lower) / (6 * sigma), lower: low, upper: high, nearest, offCentre };
}

/**
 * Capability of readings in the order they were made; rests on their being near normal and the process being stable, which
 * a chart shows and this does not. Cp and Cpk stand on the moving range, Pp and Ppk on the standard deviation.
 * Problems: `no-limits`, `range-reversed`, `not-a-number`, `too-few`, `no-spread`.
 */
export function capability(
  readings: readonly number[],
  limits: Limits,
  confidence = 0.95,
): Result<Capability> {
  const problem =
    limitsProblem(limits) ??
    readingsProblem(readings, w`readings`) ??
    numberProblem(readings.length, LEAST, w`readings`) ??
    spreadProblem(readings, w`readings`);
  if (problem !== null) return err(problem);
  const moments = momentsOf(readings);
  const notHeld = sumsProblem(moments, w`readings`);
  if (notHeld !== null) return err(notHeld);
  const n = readings.length;
  const [centre, sigmaOverall] = [mean(moments), standardDeviation(moments)];
  const near = movingRange(readings);
  const within = indices(centre, near.sigma, limits);
  const overall = indices(centre, sigmaOverall, limits);
  const counts = count(readings, limits);
  return ok({
    n,
    fewerThanUsual: n < USUAL,
    coarse: coarseness(readings, Math.min(near.sigma, sigmaOverall)),
    confidence,
    mean: centre,
    sigmaWithin: near.sigma,
    sigmaOverall,
    cp: spreadInterval(within.spread, near.degreesOfFreedom, confidence),
    cpk: nearestInterval(within.nearest, n, near.degreesOfFreedom, confidence),
    pp: spreadInterval(overall.spread, n - 1, confidence),
    ppk: nearestInterval(overall.nearest, n, n - 1, confidence),
    offCentre: overall.offCentre,
    expectedPercent: expectedPercent(centre, sigmaOverall, limits),
    normality: normalityOf(readings, centre, sigmaOverall),
    counts,
    outside: proportion(counts.below + counts.above, n, confidence),
  });
}

/** Rounding to a step alone has the standard deviation step/√12 (JCGM 100, F.2.2.1): nothing below it can be seen. */
function coarseness(readings: readonly number[], sigma: number): Coarse | null {
  const apart = new Set<number>();
  for (const reading of readings) {
    apart.add(reading);
    // Every second neighbour is then a step away at least, and sigma above 0.4 steps.
    if (apart.size > Math.max(VALUES_APART, readings.length / 2)) return null;
  }
  const values = [...apart].sort((a, b) => a - b);
  let step = Number.POSITIVE_INFINITY;
  for (const [i, value] of values.entries())
    step = Math.min(step, value - (values[i - 1] ?? Number.NEGATIVE_INFINITY));
  return values.length < VALUES_APART || sigma < step / Math.sqrt(12)
    ? { values: values.length, step }
    : null;
}

/** Cp√(χ²/ν): exact for normal readings when the standard deviation has `degreesOfFreedom`. e-Handbook, 6.1.6. */
function spreadInterval(value: number | null, degreesOfFreedom: number, confidence: number): Estimate | null {
  if (value === null) return null;
  const at = (p: number) => value * Math.sqrt(chiSquareQuantile(p, degreesOfFreedom) / degreesOfFreedom);
  return { value, from: at((1 - confidence) / 2), to: at((1 + confidence) / 2) };
}

/**
 * Bissell's normal approximation: Cpk ± z √(1/(9n) + Cpk²/(2ν)).
 * A. F. Bissell, "How reliable is your capability index?", Applied Statistics 39, 1990; e-Handbook, 6.1.6, with ν = n - 1.
 */
function nearestInterval(value: number, n: number, degreesOfFreedom: number, confidence: number): Estimate {
  const half =
    normalQuantile((1 + confidence) / 2) * Math.sqrt(1 / (9 * n) + (value * value) / (2 * degreesOfFreedom));
  return { value, from: value - half, to: value + half };
}

function expectedPercent(centre: number, sigma: number, { lower, upper }: Limits) {
  const below = lower === null ? 0 : 100 * normalCdf((lower - centre) / sigma);
  const above = upper === null ? 0 : 100 * normalCdf((centre - upper) / sigma);
  return { below, above, total: below + above };
}
