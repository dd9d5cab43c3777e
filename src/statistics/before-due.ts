import { err, ok, type Result } from '../result.ts';
import { type Drift, type Found, firstDayOutside, fitDrift, type Period } from './drift.ts';
import { type EwmaChart, type EwmaSettings, ewmaChart } from './ewma.ts';
import { type Limits, limitsProblem } from './limits.ts';

export interface DueSettings {
  readonly permissible: Limits;
  /** From today to the day the next calibration is due. */
  readonly untilDue: Period;
  readonly confidence: number;
  readonly ewma: EwmaSettings;
  /** The interval between checks that `ewma.lambda` was chosen for. */
  readonly nominalDays: number;
}

/** Whether an instrument should be looked at before its calibration is due. */
export interface BeforeDue {
  readonly drift: Drift;
  readonly chart: EwmaChart;
  /** The first day until the due one on which the prediction reaches beyond what is permitted. */
  readonly outsideAtDays: number | null;
  /** The newest weighted mean is beyond its limits. */
  readonly shifted: boolean;
  readonly warn: boolean;
}

/**
 * Holds the findings of checks between calibrations, sorted by time, against both: the line says where the instrument is
 * going, the weighted mean whether it has already moved. Problems: those of `fitDrift`, `ewmaChart` and the limits.
 */
export function beforeDue(found: readonly Found[], settings: DueSettings): Result<BeforeDue> {
  const problem = limitsProblem(settings.permissible);
  if (problem !== null) return err(problem);
  const drift = fitDrift(found);
  if (!drift.ok) return drift;
  const chart = ewmaChart(
    found.map(({ deviation }) => deviation),
    settings.ewma,
    { atDays: found.map(({ atDays }) => atDays), nominalDays: settings.nominalDays },
  );
  if (!chart.ok) return chart;
  const outsideAtDays = firstDayOutside(
    drift.value,
    settings.permissible,
    settings.untilDue,
    settings.confidence,
  );
  const shifted = (chart.value.points.at(-1)?.signal ?? null) !== null;
  return ok({
    drift: drift.value,
    chart: chart.value,
    outsideAtDays,
    shifted,
    warn: shifted || outsideAtDays !== null,
  });
}
