/**
 * How old a shop's records are, and what its own retention time says of each. It tells and deletes nothing: how long
 * records must be kept is for the law of the place and the shop to say.
 */
import { z } from 'zod';
import { monthsLater } from '../instrument/dates.ts';
import type { ImpactAssessment } from './impact-state.ts';
import type { AskedJob } from './questions.ts';

export const retentionSchema = z.strictObject({
  years: z.int().min(1).max(100).describe('From the last entry of a job on.'),
  basis: z
    .string()
    .min(1)
    .max(160)
    .exactOptional()
    .describe("Where the time comes from, in the shop's words."),
});
export type Retention = z.infer<typeof retentionSchema>;

/** `must`: the time has not run out. `held`: it has, but something still rests on the record. `may`: it need not be kept. */
export type Standing = 'must' | 'held' | 'may';

export interface Kept {
  /** Name of its station, where the records are of several. */
  readonly station?: string;
  readonly job: string;
  readonly state: AskedJob['state'];
  /** ISO dates; it must be kept up to and including `until`. */
  readonly lastOn: string;
  readonly until: string;
  readonly standing: Standing;
  /** Why it is held. */
  readonly because: string | null;
}

/** What the retention time says of each job, in the order given. `today` is an ISO date. */
export function keptOf(
  jobs: readonly AskedJob[],
  { years }: Retention,
  impacts: readonly ImpactAssessment[],
  today: string,
): readonly Kept[] {
  const rested = new Map(
    impacts
      .filter(({ closed }) => closed === null)
      .flatMap(({ assessment, items }) => items.map(({ job }) => [job, assessment] as const)),
  );
  return jobs.map(({ job, state, lastAt, station }) => {
    const lastOn = lastAt.slice(0, 10);
    const until = monthsLater(lastOn, 12 * years);
    const impact = rested.get(job);
    const because =
      state === 'open'
        ? 'the job is still open'
        : impact === undefined
          ? null
          : `impact assessment ${impact} is not closed`;
    const standing = until >= today ? 'must' : because === null ? 'may' : 'held';
    return { ...(station !== undefined && { station }), job, state, lastOn, until, standing, because };
  });
}

export interface YearOfRecords {
  readonly year: string;
  readonly jobs: number;
  readonly must: number;
  readonly held: number;
  readonly may: number;
}

/** Counts by the year of a job's last entry, the earliest first. */
export function byYear(kept: readonly Kept[]): readonly YearOfRecords[] {
  const years = new Map<string, Record<Standing, number>>();
  for (const { lastOn, standing } of kept) {
    const year = lastOn.slice(0, 4);
    const counts = years.get(year) ?? { must: 0, held: 0, may: 0 };
    counts[standing] += 1;
    years.set(year, counts);
  }
  return [...years]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([year, counts]) => ({ year, jobs: counts.must + counts.held + counts.may, ...counts }));
}
