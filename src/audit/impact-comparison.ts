/** An impact assessment beside what came before it: the last good check, and earlier assessments over the same time. */
import type { Certificate } from '../instrument/certificate.ts';
import { asFoundPoints } from './impact-span.ts';
import type { ImpactAssessment } from './impact-state.ts';

export interface MovedSince {
  readonly points: number;
  /** Points at which it moved by more than the uncertainty of both. */
  readonly moved: number;
  /** Its errors are smaller than they were, at every point. */
  readonly better: boolean;
  /** One calibration may have been given two days: same number, and at most a month apart. */
  readonly mayBeOne: boolean;
}

export function movedSince(asFound: Certificate, lastGood: Certificate): MovedSince {
  const points = asFoundPoints(asFound, lastGood);
  return {
    points: points.length,
    moved: points.filter(({ finding }) => finding === 'moved').length,
    better: points.every(({ error, was }) => was !== null && Math.abs(error) < Math.abs(was.error)),
    mayBeOne: lastGood.number === asFound.number && isWithinMonth(lastGood.date, asFound.date),
  };
}

/** A laboratory that gives all certificates one number sees a tool again after a longer time. */
const isWithinMonth = (day: string, later: string) => Date.parse(later) - Date.parse(day) <= 31 * 86_400_000;

/** Jobs that an assessment shares with earlier ones on the same file: they went on in between. */
export function sharedJobs(
  { items }: ImpactAssessment,
  before: readonly ImpactAssessment[],
): readonly string[] {
  const held = new Set(before.flatMap((one) => one.items.map(({ job }) => job)));
  return items.filter(({ job }) => held.has(job)).map(({ job }) => job);
}

export interface Overlap {
  readonly impact: ImpactAssessment;
  /** How many jobs both hold. */
  readonly jobs: number;
}

/** Impact assessments on another finding of the same tool that looked at some of the same days. */
export function overlapping(
  { assessed, items }: ImpactAssessment,
  impacts: readonly ImpactAssessment[],
): readonly Overlap[] {
  const jobs = new Set(items.map(({ job }) => job));
  return impacts
    .filter((one) => one.assessed.serial === assessed.serial && one.assessed.digest !== assessed.digest)
    .filter((one) => one.assessed.from <= assessed.to && assessed.from <= one.assessed.to)
    .map((impact) => ({ impact, jobs: impact.items.filter(({ job }) => jobs.has(job)).length }));
}
