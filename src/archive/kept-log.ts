/** What an archive knows of a log, and what it writes of it. Where that lies is for the store to say. */
import type { Checkpoint } from '../evidence/checkpoint.ts';

/** `frozen`: the log showed two histories, and nothing more is taken of it. */
export type LogStanding = 'open' | 'frozen';

export interface SignedNote extends Checkpoint {
  readonly note: string;
}

export interface KeptLog {
  readonly id: string;
  readonly tenant: string;
  readonly origin: string;
  readonly station: string;
  /** The verifier keys by which its checkpoints are signed, the newest last. */
  readonly vkeys: readonly string[];
  readonly standing: LogStanding;
  /** So many of its entries are kept, from the first one on. */
  readonly entries: number;
  /** A checkpoint that was taken and whose entries are not all here yet. */
  readonly pending: SignedNote | null;
  /** The newest one whose entries are all kept, with the archive's cosignatures. */
  readonly head: SignedNote | null;
}

/** A bundle as it is kept: hashes apart from bodies, so that a text can be forgotten while every proof holds. */
export interface KeptBundle {
  readonly number: number;
  readonly hashes: readonly Uint8Array[];
  /** The lines of its entries, as they were shipped. */
  readonly text: string;
}

/** Why two notes are kept beside each other. `rewritten`: one size, two roots. `not-extending`: no proof leads from one to the other. */
export type FaultKind = 'rewritten' | 'not-extending';

export interface Fault {
  readonly kind: FaultKind;
  readonly kept: string;
  readonly offered: string;
  readonly at: string;
}

/** What follows from a request; all of it is written in one transaction. */
export interface Writes {
  readonly pending?: SignedNote | null;
  readonly head?: SignedNote;
  readonly entries?: number;
  readonly bundles?: readonly KeptBundle[];
  readonly fault?: Fault;
  readonly standing?: LogStanding;
}
