import { z } from 'zod';
import { type JobEvent, jobEventSchema } from '../job/event.ts';

/** Hash that stands before the first entry of a station log. */
export const NO_ENTRY = '0'.repeat(64);

/**
 * One entry of the station log. `prev` is the hash of the entry before it in the whole log, so that none can be taken
 * out or changed unseen; `n` counts from 1 within the stream, so that a job's own entries are seen to be complete.
 */
export const logEntrySchema = z.strictObject({
  v: z.literal(1),
  seq: z.int().min(1),
  prev: z.string().regex(/^[0-9a-f]{64}$/),
  /** `job:<number of the work order>` or `station`. */
  stream: z.string().min(1).max(60),
  n: z.int().min(1),
  /** Wall clock, UTC, milliseconds. */
  at: z.iso.datetime({ precision: 3 }),
  /** Monotonic clock of the session, whole microseconds. */
  monoUs: z.int().nonnegative(),
  /** Who or what made it: a technician's name, `station`. */
  by: z.string().min(1).max(80),
  event: jobEventSchema,
});
export type LogEntry = z.infer<typeof logEntrySchema>;

/** An event on its way into the log. */
export interface Draft {
  readonly by: string;
  readonly event: JobEvent;
}

export interface Stamp {
  readonly at: string;
  readonly monoUs: number;
}

/** The append-only log of one station. `append` returns only once the entries are on disk. */
export interface StationLog {
  append(stream: string, drafts: readonly Draft[], stamp: Stamp): readonly LogEntry[];
  entries(stream: string): readonly LogEntry[];
  streams(): readonly string[];
  close(): void;
}
