/** What an archive knows of a log, and what it writes of it. Where that lies is for the store to say. */
import type { Checkpoint } from '../evidence/checkpoint.ts';
import { leafHash } from '../evidence/merkle.ts';
import { isSame, utf8 } from '../evidence/platform/bytes.ts';
import { ENTRIES_A_BUNDLE, entriesIn, entriesText, type ShippedEntry } from './bundle.ts';
import { disclosesItsOwn, type ForgottenPlace, withoutTexts } from './texts.ts';

/** `frozen`: the log showed two histories, and nothing more is taken of it. */
export type LogStanding = 'open' | 'frozen';

export interface SignedNote extends Checkpoint {
  readonly note: string;
}

export interface LogKey {
  /** C2SP verifier key. */
  readonly vkey: string;
  /** By which the key before it named it; null for the first one, and for one that somebody took in by hand. */
  readonly statement: string | null;
}

export interface KeptLog {
  readonly id: string;
  readonly tenant: string;
  readonly origin: string;
  readonly station: string;
  /** The keys by which its checkpoints were signed one after the other; the newest, the last one, signs now. */
  readonly keys: readonly LogKey[];
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

/**
 * Why two notes are kept beside each other. `rewritten`: one size, two roots. `not-extending`: no proof leads from one to the
 * other. `two-successors`: one key named two that follow it.
 */
export const FAULT_KINDS = ['rewritten', 'not-extending', 'two-successors'] as const;
export type FaultKind = (typeof FAULT_KINDS)[number];

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
  /** Signs from now on. */
  readonly key?: LogKey;
  readonly bundles?: readonly KeptBundle[];
  /** Texts that the log has forgotten: they go from what is kept, whenever it was shipped. */
  readonly forgotten?: readonly ForgottenPlace[];
  readonly fault?: Fault;
  readonly standing?: LogStanding;
}

/** The entries of a bundle; null where what is kept is no such text. */
export const entriesKept = ({ hashes, text }: KeptBundle): readonly ShippedEntry[] | null =>
  entriesIn(text, hashes.length);

/** Which entry of a kept bundle is not what its hash was made of, or has a text that is not its own; null for none. */
export function keptFault(bundle: KeptBundle): number | null {
  const entries = entriesKept(bundle);
  if (entries === null) return 0;
  const at = entries.findIndex(
    (entry, i) =>
      !isSame(leafHash(utf8(entry.body)), bundle.hashes[i] ?? new Uint8Array()) || !disclosesItsOwn(entry),
  );
  return at < 0 ? null : at;
}

/** The bundle without texts that the log has forgotten. Throws where the bundle cannot be read. */
export function bundleWithout(bundle: KeptBundle, forgotten: readonly ForgottenPlace[]): KeptBundle {
  const entries = entriesKept(bundle);
  if (entries === null) throw new Error(`bundle ${bundle.number} cannot be read`);
  const texts = new Map<number, Set<number>>();
  for (const { index, text } of forgotten) {
    const at = index - bundle.number * ENTRIES_A_BUNDLE;
    texts.set(at, (texts.get(at) ?? new Set()).add(text));
  }
  return {
    ...bundle,
    text: entriesText(entries.map((entry, at) => withoutTexts(entry, texts.get(at) ?? new Set()))),
  };
}
