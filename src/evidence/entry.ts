/** Entries of the station log: from drafts to the bytes that are hashed and stored, and back. */
import type { JobEvent } from '../job/event.ts';
import { canonicalBytes } from './canonical.ts';
import { type AnyEntry, type Draft, readEntry, type Stamp } from './log.ts';
import { leafHash } from './merkle.ts';
import type { StationEvent } from './station-event.ts';

/** An entry together with the bytes that stand for it. */
export interface Written {
  readonly entry: AnyEntry;
  /** The leaf in the Merkle tree. */
  readonly hash: Buffer;
  /** Canonical JSON. */
  readonly body: string;
}

/** Where a log and one stream of it end. */
export interface End {
  readonly seq: number;
  readonly n: number;
}

/** The leaf of an entry in the tree: RFC 9162's hash of its canonical bytes. */
export function entryHash(entry: AnyEntry): Buffer {
  return leafHash(canonicalBytes(entry));
}

/**
 * Makes entries of drafts, numbered on from `end`. The entry given back is what its bytes say, so that -0 comes back as 0.
 * Throws for a draft that the log's schema would not read again.
 */
export function written(
  end: End,
  stream: string,
  drafts: readonly Draft<JobEvent | StationEvent>[],
  { at, monoUs }: Stamp,
): readonly Written[] {
  return drafts.map(({ by, event }, i) => {
    const draft = { v: 1, seq: end.seq + 1 + i, n: end.n + 1 + i, stream, at, monoUs, by, event };
    const bytes = canonicalBytes(draft);
    const body = bytes.toString('utf8');
    const entry = readEntry(JSON.parse(body));
    if (!entry.success) throw entry.error;
    return { entry: entry.data, hash: leafHash(bytes), body };
  });
}
