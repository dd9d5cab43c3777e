import { z } from 'zod';
import { type JobEvent, jobEventSchema } from '../job/event.ts';
import { personal } from '../personal.ts';
import type { Concealed } from './disclosures.ts';
import { stationEventSchema } from './station-event.ts';

/** The stream of what belongs to the station and to no job; that of a job is `job:` and its number. */
export const STATION_STREAM = 'station';

/**
 * One entry of the station log. `seq` counts from 1 in the whole log and is the entry's place in the Merkle tree over it;
 * `n` counts from 1 within the stream, so that a job's own entries are seen to be complete.
 */
const entryShape = {
  v: z.literal(1),
  seq: z.int().min(1).describe('Number in the whole log, from 1: its place in the Merkle tree.'),
  n: z.int().min(1).describe('Number within its stream, from 1.'),
  at: z.iso.datetime({ precision: 3 }).describe('Wall clock, UTC.'),
  monoUs: z.int().nonnegative().describe('Monotonic clock of the session, in microseconds.'),
  by: z
    .union([z.enum(['station', 'technician']), personal('person', z.string().min(1).max(80))])
    .describe('The program (`station`), the technician of the job at that time, or somebody else by name.'),
  salt: z
    .string()
    .regex(/^[A-Za-z0-9_-]{21}[AQgw]$/, 'expected 128 bits in base64url')
    .describe('128 random bits: nobody can guess an entry from its hash in the proofs of other jobs.'),
};

/** What is signed of an entry of a job, its personal texts in their places. */
export const jobEntrySchema = z.strictObject({
  ...entryShape,
  stream: z
    .string()
    .min(1)
    .max(60)
    .regex(/^job:/, 'expected job: and the number of the job')
    .describe('`job:` and the number of the job.'),
  event: jobEventSchema.describe('What happened.'),
});
/** The same of the station itself. */
export const stationEntrySchema = z.strictObject({
  ...entryShape,
  stream: z.literal(STATION_STREAM),
  event: stationEventSchema.describe('What happened.'),
});
/** What an entry keeps beside its content, so that it can be written again as it was signed. */
interface Signed {
  readonly concealed: readonly Concealed[];
}

/** An entry of a job. */
export type LogEntry = z.infer<typeof jobEntrySchema> & Signed;
/** An entry of the station itself. */
export type StationEntry = z.infer<typeof stationEntrySchema> & Signed;

export type AnyEntry = LogEntry | StationEntry;

/** An event on its way into the log. */
export interface Draft<E = JobEvent> {
  readonly by: string;
  readonly event: E;
}

export interface Stamp {
  readonly at: string;
  readonly monoUs: number;
}

/** The append-only log of one station as a job sees it. `append` returns only once the entries are on disk. */
export interface StationLog {
  append(stream: string, drafts: readonly Draft[], stamp: Stamp): readonly LogEntry[];
  entries(stream: string): readonly LogEntry[];
  /** The streams of jobs. */
  streams(): readonly string[];
  close(): void;
}
