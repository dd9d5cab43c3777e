import { z } from 'zod';
import type { JobRow } from '../../../db/jobs.ts';
import { normalVin } from '../../job/vin.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';

/** What a job has to be for a list to show it; what is left out matches every job. */
export interface JobFilter {
  readonly job?: string;
  readonly vin?: string;
  readonly plate?: string;
  readonly fleet?: string;
  /** ISO dates, in UTC as the log is; both days belong to it. */
  readonly from?: string;
  readonly to?: string;
  readonly open?: true;
}

/** The jobs that match all of the filter, in their order. Throws a {@link ProblemError} for a day that is none. */
export function matchingJobs(rows: readonly JobRow[], filter: JobFilter): readonly JobRow[] {
  const from = day(filter.from, '--from');
  const to = day(filter.to, '--to');
  return rows.filter(({ job, vin, plate, fleet, openedAt, state }) => {
    const opened = openedAt.slice(0, 10);
    return (
      holds(job, filter.job) &&
      holds(vin, filter.vin) &&
      holds(plate, filter.plate) &&
      holds(fleet, filter.fleet) &&
      (from === undefined || opened >= from) &&
      (to === undefined || opened <= to) &&
      (filter.open !== true || state === 'open')
    );
  });
}

/** People type part of a number, without its spaces and hyphens, in small letters. */
function holds(text: string | null, wanted: string | undefined): boolean {
  return wanted === undefined || (text !== null && normalVin(text).includes(normalVin(wanted)));
}

function day(text: string | undefined, where: string): string | undefined {
  if (text === undefined || z.iso.date().safeParse(text).success) return text;
  throw new ProblemError({
    code: 'option-not-valid',
    where,
    message: w`this is not a date`,
    next: w`Write it as 2026-03-02.`,
  });
}
