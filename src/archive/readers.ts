/** Who may ask an archive, and that it was asked. */
import type { Records } from '../audit/records.ts';

/** Thrown for a question whose answer has more rows than anybody reads. */
export class TooMuch extends Error {}

/** Whoever has the token of a reader sees the records of one tenant, or of one log of it, and nothing else. */
export interface Reader {
  readonly tenant: string;
  /** This log alone; null for all of the tenant. */
  readonly log: string | null;
  /** Whom it was given to. */
  readonly name: string;
}

/** What a reader asked, and when (ISO). */
export interface Read {
  readonly tenant: string;
  readonly at: string;
  readonly reader: string;
  readonly question: string;
}

export interface ReaderStore {
  /** Keeps a token by its hash until `until` (ISO). */
  add(hash: string, reader: Reader, until: string): Promise<void>;
  /** Null for a token that is not there, or whose time is over. */
  of(hash: string, now: string): Promise<Reader | null>;
  /** All that were given out and whose time is not over, without their tokens. */
  all(now: string): Promise<readonly (Reader & { readonly until: string })[]>;
  /** Takes back all tokens of that name; how many there were. */
  remove(tenant: string, name: string): Promise<number>;
  /** Is on disk before the answer goes out. */
  noteRead(read: Read): Promise<void>;
  /** The newest first. */
  reads(limit: number): Promise<readonly Read[]>;
  /** What this reader may see. Throws {@link TooMuch}. */
  records(reader: Pick<Reader, 'tenant' | 'log'>): Records;
}
