/**
 * Does a wrench drift between two calibrations? Its own reading cannot show its error, but people and threads stay as they
 * were. When the first pulls move, the wrench or the way of working has moved, and either needs a look before the
 * calibration is due.
 */
import { markOf } from '../job/proof.ts';
import { type PermissibleDeviation, permissibleAt } from '../metrology/permissible.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { coverageFactor, type Drift, fitDrift, lineAt } from '../statistics/drift.ts';
import { type Estimated, type EwmaChart, ewmaChart } from '../statistics/ewma.ts';
import { mean, momentsOf } from '../statistics/moments.ts';
import { plural, w } from '../words/catalogue.ts';
import type { AttemptRow } from './attempt.ts';
import { dayNumber, isoDay } from './days.ts';

/** Target and sigma of the chart come from so many days of use; fewer make no chart. Our choice; 20 to 25 are usual. */
const BASELINE_DAYS = 20;
/** Weight of the newest day and width of the limits: usual values, e-Handbook 6.3.2.4. */
const LAMBDA = 0.2;
const WIDTH = 3;
/** A slope over a shorter time is not continued to the due day. Our choice. */
const LEAST_SPAN_DAYS = 60;
const CONFIDENCE = 0.95;

/** The first pulls of a day: how far they are from the middle of their limits, in per cent of it. */
export interface DayOfUse {
  readonly day: string;
  readonly pulls: number;
  readonly percent: number;
}

/** How far the wrench may move, and where it began. */
export interface MayMove {
  readonly permissible: PermissibleDeviation;
  /** Its error in N·m as its certificate has it at that torque; 0 where there is none. */
  readonly errorAt: (nm: number) => number;
  /** ISO day of its next calibration; null where nobody knows. */
  readonly due: string | null;
}

export interface WrenchDrift {
  readonly days: readonly DayOfUse[];
  readonly chart: EwmaChart;
  readonly drift: Drift;
  /** More than chance: the 95 % interval of the slope does not hold zero. */
  readonly isTrend: boolean;
  /** What is permitted, and the error on the certificate, as per cent of the middle of the limits that it is used at. */
  readonly permissiblePercent: number;
  readonly errorPercent: number;
  /** The first day of a signal that still lasts; null when the newest mean is within its limits. */
  readonly shiftedSince: string | null;
  /** The day from which the whole 95 % band of the line is beyond what is permitted, until the due day; else null. */
  readonly outsideOn: string | null;
  readonly warn: boolean;
}

/**
 * Compares the days of use of one wrench since its calibration with the first of them. `rows` are its attempts under one
 * certificate. Target and sigma are estimated from the first days, and a day counts by its pulls; the limits allow for
 * both. Problems: `too-few`, `no-spread`.
 */
export function wrenchDrift(
  rows: readonly AttemptRow[],
  { permissible, errorAt, due }: MayMove,
): Result<WrenchDrift> {
  const days = daysOfUse(rows);
  const newest = rows.at(-1);
  if (newest === undefined || days.length < BASELINE_DAYS) return err(tooFew(days.length));
  const middle = (newest.lowerLimit + newest.upperLimit) / 2;
  const permissiblePercent = (100 * permissibleAt(permissible, middle)) / middle;
  const errorPercent = (100 * errorAt(middle)) / middle;
  const { target, sigma, estimated } = baselineOf(days.slice(0, BASELINE_DAYS));
  if (!(sigma > 0)) return err(noSpread());
  const atDays = days.map(({ day }) => dayNumber(day));
  const chart = ewmaChart(
    days.map(({ percent }) => percent),
    { lambda: LAMBDA, target, sigma, width: WIDTH, clip: WIDTH, estimated },
    { atDays, nominalDays: usualStep(atDays), counts: days.map(({ pulls }) => pulls) },
  );
  if (!chart.ok) return chart;
  const drift = fitDrift(
    days.map(({ percent, pulls }, i) => ({
      atDays: atDays[i] ?? 0,
      deviation: percent - target,
      standard: 1 / Math.sqrt(pulls),
    })),
  );
  if (!drift.ok) return drift;
  const half = coverageFactor(drift.value, CONFIDENCE) * drift.value.perDayUncertainty;
  const isTrend = Math.abs(drift.value.perDay) > half;
  const [first = 0, last = 0] = [atDays[0], atDays.at(-1)];
  const limits = { lower: -permissiblePercent - errorPercent, upper: permissiblePercent - errorPercent };
  const until = due === null ? last : dayNumber(due);
  const outside =
    isTrend && last - first >= LEAST_SPAN_DAYS ? surelyOutside(drift.value, limits, last, until) : null;
  const shiftedSince = standingSignal(chart.value, days);
  const outsideOn = outside === null ? null : isoDay(outside);
  return ok({
    days,
    chart: chart.value,
    drift: drift.value,
    isTrend,
    permissiblePercent,
    errorPercent,
    shiftedSince,
    outsideOn,
    warn: shiftedSince !== null || outsideOn !== null,
  });
}

/**
 * The first day on which even the nearer edge of the line's band is beyond the limits. The scatter of one day shows how
 * people work, not the wrench.
 */
function surelyOutside(
  drift: Drift,
  { lower, upper }: { readonly lower: number; readonly upper: number },
  fromDays: number,
  untilDays: number,
): number | null {
  for (let at = fromDays; at < untilDays; at++) {
    const { from, to } = lineAt(drift, at, CONFIDENCE);
    if (from > upper || to < lower) return at;
  }
  return null;
}

/** Target and sigma of one pull, with what they were estimated from. */
function baselineOf(days: readonly DayOfUse[]) {
  const values = days.reduce((sum, { pulls }) => sum + pulls, 0);
  const target = days.reduce((sum, { pulls, percent }) => sum + pulls * percent, 0) / values;
  const degreesOfFreedom = days.length - 1;
  const squares = days.reduce((sum, { pulls, percent }) => sum + pulls * (percent - target) ** 2, 0);
  const estimated: Estimated = { readings: days.length, values, degreesOfFreedom };
  return { target, sigma: Math.sqrt(squares / degreesOfFreedom), estimated };
}

/**
 * Left out: a first pull that stopped short and was continued, which shows the hand and not the wrench; and simulated
 * or replayed ones beside real ones.
 */
function daysOfUse(rows: readonly AttemptRow[]): readonly DayOfUse[] {
  const plug = ({ job, cylinder }: AttemptRow) => `${cylinder} ${job}`;
  const carriedOn = new Set(rows.filter(({ kind }) => kind === 'continuation').map(plug));
  const isReal = rows.some(({ source }) => markOf(source) === null);
  const byDay = new Map<string, number[]>();
  for (const row of rows) {
    const { first, censored, voided, quantity, valueSi, lowerLimit, upperLimit, day } = row;
    if (!first || censored !== null || voided || quantity !== 'torque' || valueSi === null) continue;
    if (carriedOn.has(plug(row)) || (isReal && markOf(row.source) !== null)) continue;
    const percent = 100 * (valueSi / ((lowerLimit + upperLimit) / 2) - 1);
    const there = byDay.get(day);
    if (there === undefined) byDay.set(day, [percent]);
    else there.push(percent);
  }
  return [...byDay]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([day, percents]) => ({ day, pulls: percents.length, percent: mean(momentsOf(percents)) }));
}

/** The median step between days of use. */
function usualStep(atDays: readonly number[]): number {
  const steps = atDays.slice(1).map((at, i) => at - (atDays[i] ?? at));
  return [...steps].sort((a, b) => a - b)[steps.length >> 1] ?? 1;
}

function standingSignal(chart: EwmaChart, days: readonly DayOfUse[]): string | null {
  let since: string | null = null;
  for (const [i, { signal }] of chart.points.entries())
    since = signal === null ? null : (since ?? days[i]?.day ?? null);
  return since;
}

const tooFew = (days: number): Problem => ({
  code: 'too-few',
  where: 'days',
  message: w`${plural(days, {
    one: '# day of use since the calibration',
    other: '# days of use since the calibration',
  })}: too few; the chart needs ${BASELINE_DAYS}`,
  next: w`Look again when it was used on more days.`,
});

const noSpread = (): Problem => ({
  code: 'no-spread',
  where: 'days',
  message: w`the first days of use all give the same figure, so there is no spread to compare with`,
  next: w`Check whether the tool shows enough digits.`,
});
