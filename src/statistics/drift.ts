import { chiSquareTail } from '../metrology/chi-square.ts';
import { studentQuantile } from '../metrology/student.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { numberProblem, readingsProblem } from './checks.ts';
import type { Limits } from './limits.ts';
import { mean, momentsOf } from './moments.ts';

/** Certificates that fit a line worse than one set in twenty does by chance do not fit it; ISO/TS 28037 tests so, from memory. */
const TOO_FAR = 0.05;

/** The result of a calibration or a check: days since any fixed day, and reading minus reference. */
export interface DatedDeviation {
  readonly atDays: number;
  readonly deviation: number;
}

/** With the standard uncertainty that was stated with it. */
export interface Certified extends DatedDeviation {
  readonly standard: number;
}

/** A straight line through deviations over time, by least squares; where there are periods, that of the newest one. */
export interface Drift {
  readonly n: number;
  readonly perDay: number;
  /** Standard uncertainty of `perDay`. */
  readonly perDayUncertainty: number;
  /** Weighted means of the newest period, and the sum of its weights 1/u²; where no u is stated it is 1. */
  readonly meanAtDays: number;
  readonly meanDeviation: number;
  readonly weight: number;
  /** Σ (t - mean)²/u², each period about its own mean. */
  readonly timeSquares: number;
  /** u² of the next finding: as of the newest one. */
  readonly nextVariance: number;
  /** All standard deviations are multiplied by this: the scatter about the line, or 1 where the stated u stand for it. */
  readonly scatter: number;
  readonly degreesOfFreedom: number;
}

/** How the findings lie about a line that was drawn with their own uncertainties. */
export interface CertifiedDrift extends Drift {
  /** A point of the line in each period that holds a finding. */
  readonly levels: readonly DatedDeviation[];
  /** Σ r²/u², and how many findings there are more than a line needs. */
  readonly chiSquare: number;
  readonly spare: number;
  /** `untried`: no finding is left over to try the line on. */
  readonly fit: 'fits' | 'does-not-fit' | 'untried';
}

/** A value with its two-sided interval. */
export interface Predicted {
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The drift of an instrument by ordinary least squares, from the scatter about the line alone. Rests on one line for the
 * whole time. With three points the intervals are very wide, and rightly so. Where a `standard` is given, only how they
 * compare counts. Problems: `not-a-number`, `too-few` (three
 * are needed), `one-day`.
 */
export function fitDrift(
  deviations: readonly (DatedDeviation & { readonly standard?: number })[],
): Result<Drift> {
  const problem = deviationsProblem(deviations) ?? numberProblem(deviations.length, 3, w`calibrations`);
  if (problem !== null) return err(problem);
  const line = lineThrough([deviations.map((one) => ({ standard: 1, ...one }))]);
  if (line.timeSquares === 0) return err(oneDay());
  const degreesOfFreedom = deviations.length - 2;
  return ok(withScatter(line, Math.sqrt(line.chiSquare / degreesOfFreedom), degreesOfFreedom));
}

/**
 * The drift of an instrument by least squares with weights 1/u². Each period is what lies between two adjustments: it has
 * a level of its own, and all have one slope, so that no line runs across a step; the last period is the newest.
 *
 * Where the findings lie on the line as well as their u allow (chi-square), these are what the intervals rest on, however
 * few there are. Where they do not, something other than a steady drift moved the instrument: then the scatter does, with
 * Student's t. Few findings cannot tell that an instrument also wanders: where it does by as much as their u, what is called
 * 95 % holds 85 to 89 % of what is found next (simulated, two to five findings). Findings of one laboratory share a part of their uncertainty; taking them for independent makes that of
 * the slope too large, never too small. Problems: `not-a-number`, `uncertainty-missing`, `too-few` (two of one period), `one-day`.
 */
export function fitPeriods(periods: readonly (readonly Certified[])[]): Result<CertifiedDrift> {
  const all = periods.flat();
  const problem =
    deviationsProblem(all) ??
    (all.every(({ standard }) => standard > 0 && Number.isFinite(standard)) ? null : noUncertainty()) ??
    numberProblem(Math.max(0, ...periods.map(({ length }) => length)), 2, w`calibrations`);
  if (problem !== null) return err(problem);
  const line = lineThrough(periods.filter(({ length }) => length > 0));
  if (line.timeSquares === 0) return err(oneDay());
  const { chiSquare, spare } = line;
  const fit = spare === 0 ? 'untried' : chiSquareTail(chiSquare, spare) < TOO_FAR ? 'does-not-fit' : 'fits';
  const drift =
    fit === 'does-not-fit'
      ? withScatter(line, Math.sqrt(chiSquare / spare), spare)
      : withScatter(line, 1, Number.POSITIVE_INFINITY);
  return ok({ ...drift, levels: line.levels, chiSquare, spare, fit });
}

/** Where one new finding at that day will lie with `confidence`. */
export function predict(drift: Drift, atDays: number, confidence: number): Predicted {
  const t = atDays - drift.meanAtDays;
  const value = drift.meanDeviation + drift.perDay * t;
  const variance = drift.nextVariance + 1 / drift.weight + (t * t) / drift.timeSquares;
  const half = coverageFactor(drift, confidence) * drift.scatter * Math.sqrt(variance);
  return { value, from: value - half, to: value + half };
}

/** Where the line itself lies on that day with `confidence`, without the scatter of a new finding. */
export function lineAt(drift: Drift, atDays: number, confidence: number): Predicted {
  return predict({ ...drift, nextVariance: 0 }, atDays, confidence);
}

/** What a standard uncertainty of this line is multiplied by to cover so much. */
export function coverageFactor({ degreesOfFreedom }: Drift, confidence: number): number {
  return studentQuantile((1 + confidence) / 2, degreesOfFreedom);
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

type Line = Omit<Drift, 'perDayUncertainty' | 'scatter' | 'degreesOfFreedom'> &
  Pick<CertifiedDrift, 'levels' | 'chiSquare' | 'spare'>;

/** One slope and a level a period; no period is empty. Without two days in any of them `timeSquares` is 0. */
function lineThrough(periods: readonly (readonly Certified[])[]): Line {
  const centred = periods.map((period) => {
    const weight = sum(period.map(({ standard }) => standard ** -2));
    // Days and deviations are centred before they are weighted: less is lost to cancellation.
    const [day, level] = [meanOf(period, 'atDays'), meanOf(period, 'deviation')];
    const off = (of: (one: Certified) => number) =>
      sum(period.map((one) => of(one) * one.standard ** -2)) / weight;
    const meanAtDays = day + off(({ atDays }) => atDays - day);
    const meanDeviation = level + off(({ deviation }) => deviation - level);
    const points = period.map(({ atDays, deviation, standard }) => ({
      t: (atDays - meanAtDays) / standard,
      y: (deviation - meanDeviation) / standard,
    }));
    const newest = period.reduce((last, one) => (one.atDays >= last.atDays ? one : last));
    return { weight, meanAtDays, meanDeviation, points, nextVariance: newest.standard ** 2 };
  });
  const points = centred.flatMap((period) => period.points);
  const timeSquares = sum(points.map(({ t }) => t * t));
  const perDay = sum(points.map(({ t, y }) => t * y)) / timeSquares;
  const last = centred.at(-1);
  if (last === undefined) throw new RangeError('a line through nothing');
  const { weight, meanAtDays, meanDeviation, nextVariance } = last;
  return {
    n: points.length,
    perDay,
    meanAtDays,
    meanDeviation,
    weight,
    timeSquares,
    nextVariance,
    levels: centred.map((period) => ({ atDays: period.meanAtDays, deviation: period.meanDeviation })),
    chiSquare: sum(points.map(({ t, y }) => (y - perDay * t) ** 2)),
    spare: points.length - periods.length - 1,
  };
}

function withScatter(line: Line, scatter: number, degreesOfFreedom: number): Drift {
  const { levels: _, chiSquare: __, spare: ___, ...drift } = line;
  return { ...drift, scatter, degreesOfFreedom, perDayUncertainty: scatter / Math.sqrt(line.timeSquares) };
}

const meanOf = (deviations: readonly DatedDeviation[], which: keyof DatedDeviation) =>
  mean(momentsOf(deviations.map((one) => one[which])));

function deviationsProblem(deviations: readonly DatedDeviation[]): Problem | null {
  return (
    readingsProblem(
      deviations.map(({ atDays }) => atDays),
      'days',
    ) ??
    readingsProblem(
      deviations.map(({ deviation }) => deviation),
      'deviations',
    )
  );
}

const noUncertainty = (): Problem => ({
  code: 'uncertainty-missing',
  where: 'calibrations',
  message: w`a calibration without an uncertainty above zero weighs nothing, or everything`,
  next: w`Take the uncertainty from its certificate.`,
});

const oneDay = (): Problem => ({
  code: 'one-day',
  where: 'calibrations',
  message: w`all calibrations are of the same day, so there is no drift to estimate`,
  next: w`Add calibrations of other days.`,
});

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
