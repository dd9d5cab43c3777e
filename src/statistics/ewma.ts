import { normalCdf } from '../metrology/normal.ts';
import { studentQuantile } from '../metrology/student.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { notHeld, readingsProblem } from './checks.ts';

/** What a chart of exponentially weighted means is drawn by. e-Handbook, 6.3.2.4. */
export interface EwmaSettings {
  /** Weight of the newest reading, above 0 up to 1; 0.2 to 0.3 is usual. */
  readonly lambda: number;
  readonly target: number;
  /** Of one reading. */
  readonly sigma: number;
  /** Width of the limits in standard deviations of the mean; 3 is usual. */
  readonly width: number;
  /** Where target and sigma are not known but come from the first readings of the chart itself. */
  readonly estimated?: Estimated;
  /** A reading further from the weighted mean than so many of its own standard deviations counts as that far: no single one can alarm. */
  readonly clip?: number;
}

/** What target and sigma were estimated from. */
export interface Estimated {
  /** The first so many readings of the chart. */
  readonly readings: number;
  /** How many single values these are the means of. */
  readonly values: number;
  readonly degreesOfFreedom: number;
}

/** When the readings were made, and the interval that `lambda` was chosen for. */
export interface Spacing {
  readonly atDays: readonly number[];
  readonly nominalDays: number;
  /** Of how many values each reading is the mean; sigma is then that of one value. One each unless told. */
  readonly counts?: readonly number[];
}

export interface EwmaPoint {
  readonly mean: number;
  readonly lower: number;
  readonly upper: number;
  readonly signal: 'above' | 'below' | null;
}

export interface EwmaChart {
  readonly settings: EwmaSettings;
  /** Limits exact for the readings so far. */
  readonly points: readonly EwmaPoint[];
  /** Limits after many readings at equal distance. */
  readonly asymptotic: { readonly lower: number; readonly upper: number };
  /** `irregular`: some interval is over a tenth off the nominal one, and the weights followed the time. */
  readonly spacing: 'not given' | 'regular' | 'irregular';
}

/**
 * Weighted means with limits that are exact from the first reading on.
 *
 * With `spacing`, a reading after Δt weighs 1 - (1 - λ)^(Δt/nominal): what was before fades with time, not with the number
 * of readings. The variance follows by v ← (1-w)²v + w², which for equal distances is the printed formula. The first
 * reading weighs λ either way. A mean of n values adds w²/n.
 *
 * Where target and sigma are estimates, the limits have the probability of the width by Student's t, and behind the
 * readings of the estimate they hold the variance of the target too. Problems: `not-a-number`, `chart-settings`, `reading-times`.
 */
export function ewmaChart(
  readings: readonly number[],
  settings: EwmaSettings,
  spacing: Spacing | null = null,
): Result<EwmaChart> {
  const problem =
    settingsProblem(settings) ??
    readingsProblem(readings, w`readings`) ??
    timesProblem(readings.length, spacing);
  if (problem !== null) return err(problem);
  const { lambda, target, sigma, clip = Number.POSITIVE_INFINITY, estimated } = settings;
  const width = widthOf(settings);
  const gaps = spacing === null ? null : intervals(spacing);
  let mean = target;
  let variance = 0;
  const points = readings.map((reading, index) => {
    const weight = 1 - (1 - lambda) ** (gaps?.[index] ?? 1);
    const share = 1 / (spacing?.counts?.[index] ?? 1);
    const most = clip * sigma * Math.sqrt(share);
    mean += weight * Math.min(most, Math.max(-most, reading - mean));
    variance = (1 - weight) ** 2 * variance + weight ** 2 * share;
    const ofTarget = estimated === undefined || index < estimated.readings ? 0 : 1 / estimated.values;
    const half = width * sigma * Math.sqrt(variance + ofTarget);
    return point(mean, target - half, target + half);
  });
  const half = width * sigma * Math.sqrt(lambda / (2 - lambda));
  if (![half, ...points.flatMap(({ mean, lower, upper }) => [mean, lower, upper])].every(Number.isFinite))
    return err(notHeld(w`readings`));
  const even = gaps?.every((gap) => Math.abs(gap - 1) <= 0.1);
  return ok({
    settings,
    points,
    asymptotic: { lower: target - half, upper: target + half },
    spacing: even === undefined ? 'not given' : even ? 'regular' : 'irregular',
  });
}

/** As wide in probability as the normal distribution has it. */
function widthOf({ width, estimated }: EwmaSettings): number {
  return estimated === undefined ? width : studentQuantile(normalCdf(width), estimated.degreesOfFreedom);
}

function point(mean: number, lower: number, upper: number): EwmaPoint {
  return { mean, lower, upper, signal: mean > upper ? 'above' : mean < lower ? 'below' : null };
}

/** In nominal intervals; the first reading counts as one after the target. */
function intervals({ atDays, nominalDays }: Spacing): readonly number[] {
  return atDays.map((at, i) => (i === 0 ? 1 : (at - (atDays[i - 1] ?? at)) / nominalDays));
}

function settingsProblem({ lambda, target, sigma, width }: EwmaSettings): Problem | null {
  if (lambda > 0 && lambda <= 1 && sigma > 0 && width > 0 && [target, sigma, width].every(Number.isFinite))
    return null;
  return {
    code: 'chart-settings',
    where: 'settings',
    message: w`a chart of weighted means needs 0 < λ ≤ 1, a target, and sigma and width above zero`,
    next: w`Take λ 0.2 and width 3, and sigma from an individuals chart of a stable period.`,
  };
}

function timesProblem(n: number, spacing: Spacing | null): Problem | null {
  if (spacing === null) return null;
  const { atDays, nominalDays, counts } = spacing;
  const counted = counts?.every((count) => count >= 1 && Number.isFinite(count)) ?? true;
  const rising = atDays.every(
    (at, i) => Number.isFinite(at) && at > (atDays[i - 1] ?? Number.NEGATIVE_INFINITY),
  );
  if (
    rising &&
    counted &&
    atDays.length === n &&
    (counts?.length ?? n) === n &&
    nominalDays > 0 &&
    Number.isFinite(nominalDays)
  )
    return null;
  return {
    code: 'reading-times',
    where: 'spacing',
    message: w`each reading needs a time of its own, later than the one before, and a nominal interval above zero`,
    next: w`Sort the readings by time and merge those of the same moment.`,
  };
}
