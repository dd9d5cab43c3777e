/**
 * Whether a wrench wanders between two calibrations. Its own reading cannot show its error, but hands and threads stay what
 * they were: when what first pulls come to moves, the wrench or the way of working has, and either wants a look before
 * the calibration is due.
 */
import { type PermissibleDeviation, permissibleAt } from '../metrology/permissible.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { type Drift, firstDayOutside, fitDrift } from '../statistics/drift.ts';
import { type EwmaChart, ewmaChart } from '../statistics/ewma.ts';
import { mean, momentsOf } from '../statistics/moments.ts';
import { movingRange } from '../statistics/moving-range.ts';
import type { AttemptRow } from './attempt.ts';
import { dayNumber, isoDay } from './days.ts';

/** Days of use that the chart's target and sigma are taken from, and the fewest that make one. Our choice; 20 to 25 are usual. */
const BASELINE_DAYS = 20;
/** Weight of the newest day and width of the limits: usual values, e-Handbook 6.3.2.4. */
const LAMBDA = 0.2;
const WIDTH = 3;
/** A slope below twice its standard uncertainty is no slope. */
const SLOPE_SIGMAS = 2;

/** One day's first pulls, as per cent of the middle of their limits away from it. */
export interface DayOfUse {
  readonly day: string;
  readonly pulls: number;
  readonly percent: number;
}

export interface WrenchDrift {
  readonly days: readonly DayOfUse[];
  readonly chart: EwmaChart;
  readonly drift: Drift;
  /** The slope is more than chance. */
  readonly isTrend: boolean;
  /** What is permitted, as per cent of the middle of the limits that it is used at. */
  readonly permissiblePercent: number;
  /** The first day of a signal that still stands; null when the newest mean lies within its limits. */
  readonly shiftedSince: string | null;
  /** The day on which the line leaves what is permitted, until the due day; null when it does not, or is no trend. */
  readonly outsideOn: string | null;
  readonly warn: boolean;
}

/**
 * Holds the days of use of one wrench since its calibration against their beginning. `rows` are its attempts under one
 * certificate; `permissible` is how far it may move, `due` the day of its next calibration (ISO), null where nobody
 * knows. Problems: `too-few`, `no-spread`.
 */
export function wrenchDrift(
  rows: readonly AttemptRow[],
  { permissible, due }: { readonly permissible: PermissibleDeviation; readonly due: string | null },
): Result<WrenchDrift> {
  const days = daysOfUse(rows);
  const baseline = days.slice(0, BASELINE_DAYS).map(({ percent }) => percent);
  const newest = rows.at(-1);
  if (newest === undefined || days.length < BASELINE_DAYS) return err(tooFew(days.length));
  const middle = (newest.lowerLimit + newest.upperLimit) / 2;
  const permissiblePercent = (100 * permissibleAt(permissible, middle)) / middle;
  const target = mean(momentsOf(baseline));
  const { sigma } = movingRange(baseline);
  if (!(sigma > 0)) return err(noSpread());
  const atDays = days.map(({ day }) => dayNumber(day));
  const percents = days.map(({ percent }) => percent);
  const chart = ewmaChart(
    percents,
    { lambda: LAMBDA, target, sigma, width: WIDTH },
    { atDays, nominalDays: usualStep(atDays) },
  );
  if (!chart.ok) return chart;
  const drift = fitDrift(
    days.map(({ percent }, i) => ({ atDays: atDays[i] ?? 0, deviation: percent - target })),
  );
  if (!drift.ok) return drift;
  const isTrend = Math.abs(drift.value.perDay) > SLOPE_SIGMAS * drift.value.perDayUncertainty;
  const last = atDays.at(-1) ?? 0;
  const outside =
    isTrend && due !== null && dayNumber(due) > last
      ? firstDayOutside(
          drift.value,
          { lower: -permissiblePercent, upper: permissiblePercent },
          { fromDays: last, toDays: dayNumber(due) },
          0, // the line alone: what one day scatters is how people work
        )
      : null;
  const shiftedSince = standingSignal(chart.value, days);
  const outsideOn = outside === null ? null : isoDay(outside);
  return ok({
    days,
    chart: chart.value,
    drift: drift.value,
    isTrend,
    permissiblePercent,
    shiftedSince,
    outsideOn,
    warn: shiftedSince !== null || outsideOn !== null,
  });
}

function daysOfUse(rows: readonly AttemptRow[]): readonly DayOfUse[] {
  const byDay = new Map<string, number[]>();
  for (const { first, censored, voided, quantity, valueSi, lowerLimit, upperLimit, day } of rows) {
    if (!first || censored !== null || voided || quantity !== 'torque' || valueSi === null) continue;
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
  message: `${days} day${days === 1 ? '' : 's'} of use since the calibration ${days === 1 ? 'is' : 'are'} too few; a chart needs ${BASELINE_DAYS}`,
  next: 'Look again when it was used on more days.',
});

const noSpread = (): Problem => ({
  code: 'no-spread',
  where: 'days',
  message: 'the first days of use all come to the same figure, so there is no spread to hold others against',
  next: 'Look whether the tool shows enough digits.',
});
