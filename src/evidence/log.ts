import { z } from 'zod';
import { type JobEvent, jobEventSchema } from '../job/event.ts';
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
  by: z.string().min(1).max(80).describe("Who or what made it: a technician's name, or `station`."),
};

export const logEntrySchema = z.strictObject({
  ...entryShape,
  stream: z
    .string()
    .min(1)
    .max(60)
    .regex(/^job:/, 'expected job: and the number of the job')
    .describe('`job:` and the number of the job.'),
  event: jobEventSchema.describe('What happened.'),
});
/** An entry of a job. */
export type LogEntry = z.infer<typeof logEntrySchema>;

export const stationEntrySchema = z.strictObject({
  ...entryShape,
  stream: z.literal(STATION_STREAM),
  event: stationEventSchema.describe('What happened.'),
});
/** An entry of the station itself. */
export type StationEntry = z.infer<typeof stationEntrySchema>;

export type AnyEntry = LogEntry | StationEntry;

/** Reads an entry of any stream. */
export function readEntry(value: unknown) {
  const station = stationStreamSchema.safeParse(value).success;
  return (station ? stationEntrySchema : logEntrySchema).safeParse(value);
}

const stationStreamSchema = z.looseObject({ stream: z.literal(STATION_STREAM) });

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
