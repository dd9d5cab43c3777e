import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { checkStudy, type GaugeResult, type GaugeStudy, gaugeResult } from './gauge-study.ts';

/**
 * Reciprocals of d2*, the mean range in σ. K1, by trials, stands on many ranges; K2, by appraisers, and K3, by parts, on one
 * range each and share a table. AIAG, "Measurement Systems Analysis", average and range method; 1/√2 is printed as 0.7071.
 */
const K1: Readonly<Record<number, number>> = { 2: 0.8862, 3: 0.5908 };
const ONE_RANGE: Readonly<Record<number, number>> = {
  2: Math.SQRT1_2,
  3: 0.5231,
  4: 0.4467,
  5: 0.403,
  6: 0.3742,
  7: 0.3534,
  8: 0.3375,
  9: 0.3249,
  10: 0.3146,
};
/** D4: the upper limit of a cell's range in mean ranges, by trials. */
const D4: Readonly<Record<number, number>> = { 2: 3.267, 3: 2.574 };

export interface AverageRange extends GaugeResult {
  /** Mean range of each appraiser. */
  readonly ranges: readonly number[];
  readonly meanRange: number;
  /** Above it a cell is more spread than its appraiser's others explain. */
  readonly rangeLimit: number;
  /** `appraiser B, part 3`, where a range is above the limit; the reading should be made again. */
  readonly wideCells: readonly string[];
  /** Between the averages of the appraisers. */
  readonly appraiserRange: number;
  /** Between the averages of the parts. */
  readonly partRange: number;
}

/**
 * The average and range method. Problems: those of {@link checkStudy}, and `outside-tables` for more than 3 trials, 10
 * appraisers or 10 parts, for which there are no factors.
 */
export function averageRange(study: GaugeStudy): Result<AverageRange> {
  const checked = checkStudy(study);
  if (!checked.ok) return checked;
  const { appraisers, parts, readings, trials } = checked.value;
  const [k1, k2, k3, d4] = [K1[trials], ONE_RANGE[appraisers.length], ONE_RANGE[parts.length], D4[trials]];
  if (k1 === undefined || k2 === undefined || k3 === undefined || d4 === undefined)
    return err(outsideTables(trials, appraisers.length, parts.length));
  const cellRanges = readings.map((row) => row.map(range));
  const ranges = cellRanges.map(average);
  const meanRange = average(ranges);
  const rangeLimit = d4 * meanRange;
  const appraiserRange = range(readings.map((row) => average(row.flat())));
  const partRange = range(parts.map((_, p) => average(readings.flatMap((row) => row[p] ?? []))));
  const ev = meanRange * k1;
  const av = (appraiserRange * k2) ** 2 - (ev * ev) / (parts.length * trials);
  return ok({
    ...gaugeResult({ ev: ev * ev, av, pv: (partRange * k3) ** 2, interaction: null }, study.limits),
    ranges,
    meanRange,
    rangeLimit,
    wideCells: cellRanges.flatMap((row, a) =>
      row.flatMap((one, p) => (one > rangeLimit ? [`appraiser ${appraisers[a]}, part ${parts[p]}`] : [])),
    ),
    appraiserRange,
    partRange,
  });
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function range(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

function outsideTables(trials: number, appraisers: number, parts: number): Problem {
  return {
    code: 'outside-tables',
    where: 'study',
    message: w`average and range has factors for 2 or 3 trials, 2 to 10 appraisers and 2 to 10 parts, not for ${trials}, ${appraisers} and ${parts}`,
    next: w`Use the analysis of variance, which has no such bounds.`,
  };
}
