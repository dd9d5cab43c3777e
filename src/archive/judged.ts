/** Judging on arrival: every job that a station closed is judged again by the edition of its rules, and the outcome kept. */
import { z } from 'zod';
import { rulesOf, tooLong } from '../evidence/record.ts';
import { PARTINGS } from '../job/parting.ts';
import { editionOf } from '../rules/editions.ts';
import { jobEntriesFrom, type NumberedEntry } from './entries.ts';

export const jobJudgedSchema = z.discriminatedUnion('as', [
  /** The samples give the same pulls again, each with the same verdict. `lacks`: what keeps it from being complete. */
  z.strictObject({ as: z.literal('same'), pulls: z.int().nonnegative(), lacks: z.array(z.string().max(40)) }),
  /** They do not: from this event of the job on. */
  z.strictObject({
    as: z.literal('parted'),
    position: z.int().min(1),
    code: z.enum(PARTINGS),
    event: z.string().max(80),
  }),
  /** Only a later version of the program knows its rules. */
  z.strictObject({ as: z.literal('newer-rules') }),
  /** No version has rules of that name. */
  z.strictObject({ as: z.literal('unknown-rules') }),
  /** This version cannot read its entries, or they are no job that a bench ever wrote. */
  z.strictObject({ as: z.literal('unreadable') }),
  /** Longer than a record may be, or with more entries or attempts. */
  z.strictObject({ as: z.literal('too-long') }),
]);
export type JobJudged = z.infer<typeof jobJudgedSchema>;

/** Whether the outcome speaks against the station, and not merely against the version of the program. */
export const speaksAgainst = ({ as }: JobJudged): boolean => as !== 'same' && as !== 'newer-rules';

/** From all entries of one job, samples and all. */
export function judged(entries: readonly NumberedEntry[]): JobJudged {
  const read = jobEntriesFrom(entries);
  if (read === null) return { as: 'unreadable' };
  if (tooLong(read) !== null) return { as: 'too-long' };
  const edition = editionOf(rulesOf(read));
  if (edition === 'newer') return { as: 'newer-rules' };
  if (edition === 'unknown') return { as: 'unknown-rules' };
  const events = read.map(({ event }) => event);
  try {
    const again = edition.judgeAgain(events);
    if (!again.agrees)
      return { as: 'parted', position: again.position, code: again.code, event: again.event };
    const { lacks } = edition.outcomeOf(events);
    return { as: 'same', pulls: again.pulls, lacks: lacks.map(({ code }) => code) };
  } catch {
    return { as: 'unreadable' };
  }
}
