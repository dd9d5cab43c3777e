/**
 * Drift by certificates: a line through the errors on successive certificates, for each nominal by itself, and whether it
 * stays within what is permitted until the next calibration is due.
 */
import { monthsLater } from '../instrument/dates.ts';
import { calibratedAt } from '../metrology/calibration.ts';
import { COVERAGE } from '../metrology/coverage.ts';
import { type PermissibleDeviation, permissibleAt } from '../metrology/permissible.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import {
  type CertifiedDrift,
  coverageFactor,
  firstDayOutside,
  fitPeriods,
  type Predicted,
  predict,
} from '../statistics/drift.ts';
import { w } from '../words/catalogue.ts';
import type { Check } from './calibrations.ts';
import { dayNumber, isoDay } from './days.ts';

/** How far beyond its points a certificate still counts: two laboratories never set exactly the same value. Our choice. */
const BESIDE = 0.02;
/** How far ahead to look where no due day is known. */
const USUAL_MONTHS = 12;
const DAYS_IN_YEAR = 365.25;

/** What one certificate says at a nominal, in N·m or mm; U at 95 % (k = 2). */
export interface ErrorAt extends Check {
  readonly error: number;
  readonly expanded: number;
}

/**
 * `within`: a laboratory will find it within what is permitted. `warning`: it may not, for a reason: the line itself leaves,
 * or its slope is more than its uncertainty, or the certificates lie on no line. `undecided`: it may not, only because too
 * little is known; nothing shows a drift, and nothing rules one out.
 */
export type Finding = 'within' | 'warning' | 'undecided';

/** The drift at one nominal; amounts in N·m or mm, a year or as they are, U at 95 %. */
export interface NominalLine {
  readonly nominal: number;
  readonly permissible: number;
  /** The certificates that cover it, in periods. */
  readonly periods: readonly (readonly ErrorAt[])[];
  readonly drift: CertifiedDrift;
  readonly perYear: number;
  readonly perYearExpanded: number;
  /** What a laboratory will find on the day `to`, with its interval. */
  readonly atEnd: Predicted;
  /** The first day on which the interval, and the line itself, lie beyond what is permitted. */
  readonly outsideOn: string | null;
  readonly lineOutsideOn: string | null;
  readonly finding: Finding;
}

export interface CertificateLines {
  /** ISO days: the newest certificate, and the due day, or a year later where none is known. */
  readonly from: string;
  readonly to: string;
  readonly lines: readonly NominalLine[];
  /** The line at the nominal nearest to where the tool is used. */
  readonly inUse: NominalLine;
}

/** The line that leaves first, warnings before undecided ones; null where all stay within. */
export function firstBeyond({ lines }: CertificateLines): NominalLine | null {
  const of = (wanted: Finding) =>
    lines
      .filter(({ finding }) => finding === wanted)
      .sort((a, b) => byText(a.outsideOn ?? '', b.outsideOn ?? ''));
  return [...of('warning'), ...of('undecided')][0] ?? null;
}

/**
 * A line at each point of the newest certificate. `used` is the reading that the tool is used at, null where nobody knows.
 * Between the points of another certificate its error is taken on the straight line. Problems: `no-certificate`,
 * `one-certificate`, `no-line` (no two certificates of one period cover the same nominal, or they are of one day).
 */
export function certificateLines(
  periods: readonly (readonly Check[])[],
  {
    permissible,
    due,
    used,
  }: {
    readonly permissible: PermissibleDeviation;
    readonly due: string | null;
    readonly used: number | null;
  },
): Result<CertificateLines> {
  const checks = periods.flat();
  const newest = checks.at(-1)?.certificate;
  if (newest === undefined) return err(noCertificate());
  if (checks.length === 1) return err(oneCertificate());
  const from = newest.date;
  const to = due !== null && due > from ? due : monthsLater(from, USUAL_MONTHS);
  const nominals = newest.points.map(({ reading }) => reading).sort((a, b) => a - b);
  const lines = nominals.flatMap((nominal) => {
    const line = lineAt(periods, nominal, permissibleAt(permissible, nominal), { from, to });
    return line === null ? [] : [line];
  });
  const [inUse] = [...lines].sort((a, b) => distance(a, used, nominals) - distance(b, used, nominals));
  if (inUse === undefined) return err(noLine(checks.length, periods.length));
  return ok({ from, to, lines, inUse });
}

function lineAt(
  periods: readonly (readonly Check[])[],
  nominal: number,
  permissible: number,
  { from, to }: { readonly from: string; readonly to: string },
): NominalLine | null {
  // At a reading of zero a relative deviation permits nothing, so there is no limit.
  if (permissible === 0) return null;
  const errors = periods.map((checks) => checks.flatMap((check) => errorAt(check, nominal)));
  // The nominals are those of the newest certificate, so the newest period always has a level to predict from.
  const fitted = fitPeriods(
    errors.map((period) =>
      period.map(({ certificate: { date }, error, expanded }) => ({
        atDays: dayNumber(date),
        deviation: error,
        standard: expanded / 2,
      })),
    ),
  );
  if (!fitted.ok) return null;
  const drift = fitted.value;
  const limits = { lower: -permissible, upper: permissible };
  const ahead = { fromDays: dayNumber(from), toDays: dayNumber(to) };
  const outside = (confidence: number) => {
    const day = firstDayOutside(drift, limits, ahead, confidence);
    return day === null ? null : isoDay(day);
  };
  const perYear = DAYS_IN_YEAR * drift.perDay;
  const perYearExpanded = DAYS_IN_YEAR * coverageFactor(drift, COVERAGE) * drift.perDayUncertainty;
  const [outsideOn, lineOutsideOn] = [outside(COVERAGE), outside(0)];
  const isKnown =
    lineOutsideOn !== null || Math.abs(perYear) > perYearExpanded || drift.fit === 'does-not-fit';
  return {
    nominal,
    permissible,
    periods: errors.filter(({ length }) => length > 0),
    drift,
    perYear,
    perYearExpanded,
    atEnd: predict(drift, ahead.toDays, COVERAGE),
    outsideOn,
    lineOutsideOn,
    finding: outsideOn === null ? 'within' : isKnown ? 'warning' : 'undecided',
  };
}

function errorAt(check: Check, nominal: number): readonly ErrorAt[] {
  const { points } = check.certificate;
  const readings = points.map(({ reading }) => reading);
  const covers =
    nominal >= Math.min(...readings) * (1 - BESIDE) && nominal <= Math.max(...readings) * (1 + BESIDE);
  if (!covers) return [];
  const { error, standard } = calibratedAt(points, nominal);
  return [{ ...check, error, expanded: 2 * standard }];
}

/** From where the tool is used; from the middle one of its points where nobody knows. */
function distance({ nominal }: NominalLine, used: number | null, nominals: readonly number[]): number {
  return Math.abs(nominal - (used ?? nominals[nominals.length >> 1] ?? nominal));
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

const noCertificate = (): Problem => ({
  code: 'no-certificate',
  where: 'certificates',
  message: w`this tool has no certificate`,
  next: w`Name its certificate in the station file, and keep older ones with "plugmark certificates keep".`,
});

const oneCertificate = (): Problem => ({
  code: 'one-certificate',
  where: 'certificates',
  message: w`one certificate cannot show a drift`,
  next: w`Keep older ones with "plugmark certificates keep", or look again after its next calibration.`,
});

const noLine = (checks: number, periods: number): Problem => ({
  code: 'no-line',
  where: 'certificates',
  message:
    periods > 1
      ? w`no two of ${checks} certificates are between the same adjustments, on different days and at the same point, so none shows a drift`
      : w`no two of ${checks} certificates are of different days and at the same point, so none shows a drift`,
  next: w`Have it calibrated at the same points, before and after an adjustment.`,
});
