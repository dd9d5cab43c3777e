/** When each instrument of the station must be calibrated again: by date, or by cycles (see `cyclesAre`). */

import type { Certificate } from '../instrument/certificate.ts';
import { monthsLater } from '../instrument/dates.ts';
import { dueDate } from '../instrument/fitness.ts';
import type { Instrument, OutOfTolerance } from '../instrument/instrument.ts';
import { permissibleAt } from '../metrology/permissible.ts';
import { type IntervalBounds, type NextInterval, nextInterval } from '../statistics/staircase.ts';
import { w } from '../words/catalogue.ts';

/** An instrument as it was recorded last, with what the log counts since its calibration. */
export interface InUse {
  readonly instrument: Instrument;
  /**
   * Gap readings, or pulls that were given to a plug, since the day of its certificate: re-hits, checks and strokes that
   * ended low are among them, because each loads the tool. Pulls given to none are not: attempts do not hold them.
   */
  readonly cycles: number;
  /** ISO day of the last one; null where there was none. */
  readonly lastUsed: string | null;
  /** ISO day of the first job that the log has of it; null where it was never used. */
  readonly firstUsed: string | null;
  /** What was found at the end of its calibration, before anybody adjusted it; null where the log holds no such thing. */
  readonly asFound: Certificate | null;
}

export interface CalendarLine {
  readonly tool: string;
  readonly serial: string | null;
  readonly certificate: string | null;
  readonly calibrated: string | null;
  /** Of a tool without a certificate: since when it works here on what its data sheet promises; else null. */
  readonly onDataSheetSince: string | null;
  /** The day to calibrate it was counted in {@link USUAL_MONTHS}, because neither certificate nor station file names one. */
  readonly byUsualMonths: boolean;
  /** The last day on which its certificate, or else its data sheet, is relied on; null where nothing says so. */
  readonly dueByDate: string | null;
  /** The day on which its cycles run out, were it used on as until today; null without a limit of cycles. */
  readonly dueByCycles: string | null;
  /** The earlier of the two; today where the tool is out of tolerance. */
  readonly due: string | null;
  readonly cycles: number;
  readonly cycleLimit: number | null;
  readonly lastUsed: string | null;
  readonly state: 'out-of-tolerance' | 'due' | 'soon' | 'in-date' | 'data-sheet' | 'no-certificate';
  /** Why a tool that was out of tolerance is due now; null for one that was not. */
  readonly outOfTolerance: OutOfTolerance | null;
  /** What the staircase makes of the last finding; null where it was not asked for or cannot say. */
  readonly next: NextInterval | null;
}

/** A usual interval (ISO 6789-1 for wrenches) where nobody names another. */
export const USUAL_MONTHS = 12;

/** What the cycles of a line are, in words. */
export const cyclesAre = (): string =>
  w`Cycles: gap readings or pulls on a plug since the certificate or the first use, re-hits, checks and low strokes too; or the counter of the tool where that is higher. Pulls on no plug do not count.`;

export interface CalendarSettings {
  /** ISO day. */
  readonly today: string;
  /** So many days ahead it is due soon. */
  readonly soonDays: number;
  /** Adjust intervals by what was found; null for intervals as they are. */
  readonly staircase: IntervalBounds | null;
}

/** One line an instrument, the one that is due first in front, those without a date behind. */
export function calendar(inUse: readonly InUse[], settings: CalendarSettings): readonly CalendarLine[] {
  return inUse
    .map((one) => lineOf(one, settings))
    .sort((a, b) => byText(a.due ?? '~', b.due ?? '~') || byText(a.serial ?? a.tool, b.serial ?? b.tool));
}

function lineOf(inUse: InUse, settings: CalendarSettings): CalendarLine {
  const { instrument, cycles, lastUsed, asFound } = inUse;
  const { certificate, interval, outOfTolerance = null } = instrument;
  const onDataSheetSince = certificate === undefined ? inUse.firstUsed : null;
  const from = certificate?.date ?? onDataSheetSince;
  const named = certificate === undefined ? monthsFrom(from, interval?.months) : dueDate(instrument);
  const byDate = named ?? monthsFrom(from, USUAL_MONTHS);
  // A tool that counts by itself has seen more than this station.
  const used = Math.max(cycles, instrument.cyclesUsed ?? 0);
  const cycleLimit = interval?.cycles ?? null;
  const byCycles =
    cycleLimit === null || from === null ? null : dayOfCycle(used, cycleLimit, from, settings.today);
  const earlier = [byDate, byCycles].filter((day) => day !== null).sort(byText)[0] ?? null;
  const due = outOfTolerance === null ? earlier : settings.today;
  return {
    tool: instrument.id,
    serial: instrument.serial ?? null,
    certificate: certificate?.number ?? null,
    calibrated: certificate?.date ?? null,
    onDataSheetSince,
    byUsualMonths: named === null && byDate !== null,
    dueByDate: byDate,
    dueByCycles: byCycles,
    due,
    cycles: used,
    cycleLimit,
    lastUsed,
    state: outOfTolerance === null ? stateOf(due, certificate !== undefined, settings) : 'out-of-tolerance',
    outOfTolerance,
    next: settings.staircase === null ? null : staircaseOf(instrument, byDate, asFound, settings.staircase),
  };
}

function stateOf(
  due: string | null,
  isCalibrated: boolean,
  { today, soonDays }: CalendarSettings,
): CalendarLine['state'] {
  if (due === null) return 'no-certificate';
  if (due <= today) return 'due';
  if (daysBetween(today, due) <= soonDays) return 'soon';
  return isCalibrated ? 'in-date' : 'data-sheet';
}

const monthsFrom = (day: string | null, months: number | undefined): string | null =>
  day === null || months === undefined ? null : monthsLater(day, months);

/** At the pace since the calibration; today where they have run out. */
function dayOfCycle(used: number, limit: number, from: string, today: string): string | null {
  if (used >= limit) return today;
  const days = daysBetween(from, today);
  if (used === 0 || days <= 0) return null;
  return dayLater(today, Math.floor((limit - used) * (days / used)));
}

/**
 * The interval that follows from the largest error that was found against what is permitted there. The certificate tells
 * it where no impact assessment recorded what was found; where the laboratory adjusted the tool as well, that says too much.
 */
function staircaseOf(
  { certificate, permissibleDeviation }: Instrument,
  byDate: string | null,
  asFound: Certificate | null,
  bounds: IntervalBounds,
): NextInterval | null {
  if (certificate === undefined || permissibleDeviation === undefined || byDate === null) return null;
  const shares = (asFound ?? certificate).points.map(({ reading, error }) => ({
    deviation: Math.abs(error),
    permissible: permissibleAt(permissibleDeviation, reading),
  }));
  const worst = shares.reduce((most, one) =>
    one.deviation / one.permissible > most.deviation / most.permissible ? one : most,
  );
  const days = Math.min(
    bounds.longestDays,
    Math.max(bounds.shortestDays, daysBetween(certificate.date, byDate)),
  );
  const next = nextInterval(days, worst, bounds);
  return next.ok ? next.value : null;
}

const DAY_MS = 86_400_000;
const daysBetween = (from: string, to: string) => Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);
const dayLater = (day: string, days: number) =>
  new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);
const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
