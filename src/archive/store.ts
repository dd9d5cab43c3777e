import type { HistoryStore } from './history.ts';
import type { Fault, KeptBundle, KeptLog, Writes } from './kept-log.ts';
import type { ReaderStore } from './readers.ts';

/**
 * What a one-time token allows: to enrol a station with a tenant, of one log alone where it is named; or to fetch back all that
 * the archive has of one log.
 */
export type TokenUse =
  | { readonly use: 'enrol'; readonly tenant: string; readonly origin: string | null }
  | { readonly use: 'restore'; readonly log: string };

export interface NewLog {
  readonly id: string;
  readonly tenant: string;
  readonly origin: string;
  readonly station: string;
  readonly vkey: string;
}

export interface Decided<T> {
  readonly answer: T;
  readonly writes: Writes | null;
}

/** Where an archive keeps what it was shipped. What a method has written is on disk when it resolves. */
export interface ArchiveStore {
  /** Keeps a token by its hash until `until` (ISO). */
  addToken(hash: string, use: TokenUse, until: string): Promise<void>;
  /** What the token is for, once: it is gone afterwards. Null for one that is not there, or whose time is over. */
  takeToken(hash: string, now: string): Promise<TokenUse | null>;
  /** False where the log was enrolled before; then nothing changes. */
  enrol(log: NewLog): Promise<boolean>;
  log(id: string): Promise<KeptLog | null>;
  logs(): Promise<readonly KeptLog[]>;
  faults(id: string): Promise<readonly Fault[]>;
  /** Decides on a log and writes what follows, while nobody else writes to it; null for a log that is not there. */
  change<T>(id: string, decide: (log: KeptLog) => Decided<T>): Promise<T | null>;
  /** The bundles of a log from this number on, in their order. */
  bundles(id: string, from: number): AsyncIterable<KeptBundle>;
  /** Of these numbers those that are there, in their order. */
  bundlesOf(id: string, numbers: readonly number[]): Promise<readonly KeptBundle[]>;
  readonly history: HistoryStore;
  readonly readers: ReaderStore;
  close(): Promise<void>;
}
