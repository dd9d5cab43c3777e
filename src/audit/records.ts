/**
 * The records that questions are asked of, be they of one station or of all stations whose logs an archive keeps. Whoever
 * answers has them brought up to date first.
 */
import { z } from 'zod';
import type { StationEntry } from '../evidence/log.ts';
import type { AttemptRow, ProcessRow } from './attempt.ts';
import type { AskedJob } from './questions.ts';
import type { Setup } from './setup.ts';

const text = z.string().max(200).exactOptional();
const asked = {
  job: text,
  /** As people type them, like `technician`, `tool`, `part` and `lot`: spaces, hyphens and small letters make no difference. */
  vin: text,
  plate: text,
  fleet: text,
  /** Days on which a job was opened, or an attempt was made. */
  from: z.iso.date().exactOptional(),
  to: z.iso.date().exactOptional(),
  /** Key of the engine's specification, or the beginning of one. */
  specification: text,
  /** Id of a tool, or its serial number. */
  tool: text,
  /** As it was recorded. */
  serial: text,
  technician: text,
  part: text,
  lot: text,
  /** Jobs that are not complete or hold an attempt that is not OK; attempts that are not OK or have no value. */
  exceptionsOnly: z.boolean().exactOptional(),
  /** Of this log alone, as an archive names it; where there is one log, all that there is. */
  log: text,
};

/** What is left out matches everything. Days are ISO dates in UTC, as the log is, and both belong to the range. */
export const jobsFilterSchema = z
  .strictObject({ ...asked, state: z.enum(['open', 'complete', 'incomplete', 'void']).exactOptional() })
  .readonly();
export type JobsFilter = z.infer<typeof jobsFilterSchema>;

export const attemptFilterSchema = z
  .strictObject({
    ...asked,
    quantity: z.enum(['torque', 'length']).exactOptional(),
    /** Entered into the log behind this entry. */
    afterSeq: z.int().nonnegative().exactOptional(),
  })
  .readonly();
export type AttemptFilter = z.infer<typeof attemptFilterSchema>;

export interface SpecificationUse {
  readonly specificationKey: string;
  readonly setup: Setup;
  readonly jobs: number;
}

/** How often a tool was used, and when last (ISO). */
export interface UseOfTool {
  readonly count: number;
  readonly lastAt: string | null;
}

/** A station, and what its log holds of the station itself. */
export interface StationOfRecords {
  /** As {@link JobsFilter} names it; null where there is one log. */
  readonly log: string | null;
  readonly name: string;
  readonly entries: readonly StationEntry[];
}

export interface Records {
  stations(): Promise<readonly StationOfRecords[]>;
  /** In the order of time. */
  attemptsOf(filter: AttemptFilter): Promise<readonly AttemptRow[]>;
  /** All attempts of these jobs, in the order of time. */
  attemptsIn(jobs: readonly Pick<AskedJob, 'stream'>[]): Promise<readonly AttemptRow[]>;
  /** Of the attempts, what `processGroups` asks. */
  processOf(filter: AttemptFilter): Promise<readonly ProcessRow[]>;
  /** Those that were worked on last in front. */
  jobsOf(filter: JobsFilter): Promise<readonly AskedJob[]>;
  /** What was frozen with the jobs of these keys: to judge their attempts again. */
  setupsOf(keys: Iterable<string>): Promise<ReadonlyMap<string, Setup>>;
  specifications(): Promise<readonly SpecificationUse[]>;
  /** Attempts made with a tool, by its serial number or its name, on that ISO day or later. */
  toolUse(tool: string, from: string): Promise<UseOfTool>;
}
