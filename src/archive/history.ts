/**
 * What an archive makes of the entries that it keeps, so that questions can be asked over all stations: jobs with their
 * attempts, and what each station says of itself. It follows from the entries and can be made again at any time.
 */
import type { JobHistory } from '../audit/attempt-walk.ts';
import { type AskedJob, jobIn } from '../audit/questions.ts';
import { jobEntriesFrom, type NumberedEntry } from './entries.ts';
import type { JobJudged } from './judged.ts';

/** How far the history of a log goes. */
export interface HistoryMark {
  /** Rises when the log forgets texts: what was read before may hold them. */
  readonly epoch: number;
  /** So many of its entries are in the history. */
  readonly read: number;
  /** So many of them are cosigned. */
  readonly size: number;
}

/** Where the entries of a job lie. */
export interface JobPlace {
  readonly stream: string;
  /** Number of the entry that opened it: by that the job is found within its log. */
  readonly opened: number;
  /** Number of its newest entry. */
  readonly last: number;
  /** The bundles that have its entries, in their order. */
  readonly bundles: readonly number[];
}

export interface KeptJob extends JobPlace {
  /** Null where its entries cannot be read by this version of the program, or are no job. */
  readonly job: { readonly asked: AskedJob; readonly history: JobHistory } | null;
}

/** The next part of a history, in the order of the log. */
export interface HistoryPart {
  /** How far the history goes with it. */
  readonly read: number;
  readonly jobs: readonly KeptJob[];
  readonly station: readonly NumberedEntry[];
}

/** Where an archive keeps the histories of its logs. */
export interface HistoryStore {
  /** Null for a log that is not there, or of which nothing is cosigned. */
  mark(log: string): Promise<HistoryMark | null>;
  /** The logs of a tenant whose history is behind what is cosigned of them. */
  behind(tenant: string): Promise<readonly string[]>;
  /** Where the jobs of these streams lie that the history has already. */
  places(log: string, streams: readonly string[]): Promise<readonly JobPlace[]>;
  /** False, and nothing is written, where the history is not what it was at `from`. */
  write(log: string, from: HistoryMark, part: HistoryPart): Promise<boolean>;
  /** Jobs that were closed or declared void and went on since they were judged, or never were. */
  toJudge(log: string, limit: number): Promise<readonly JobPlace[]>;
  putJudged(log: string, place: JobPlace, judged: JobJudged): Promise<void>;
  /** How each job came out that was judged again, the oldest first. */
  judged(
    log: string,
  ): Promise<readonly (Pick<JobPlace, 'stream' | 'opened'> & { readonly judged: JobJudged })[]>;
}

/** The job that these entries tell, those of samples left out. */
export function keptJob(place: JobPlace, entries: readonly NumberedEntry[]): KeptJob {
  const read = jobEntriesFrom(entries);
  try {
    const job = read === null ? null : jobIn(read);
    return { ...place, job: job !== null && isPlausible(job.history) ? job : null };
  } catch {
    // Whoever has the key of a log may sign what no bench ever wrote.
    return { ...place, job: null };
  }
}

/** No engine has more cylinders, and no job more pulls, than a database counts in 32 bits. */
const isPlausible = ({ attempts }: JobHistory): boolean =>
  attempts.every(({ cylinder, number }) => cylinder < MOST && number < MOST);
const MOST = 2 ** 31;
