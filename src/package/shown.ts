/** What a record shows of the log that it is from, for holding it against others. */
import { readCheckpoint } from '../evidence/checkpoint.ts';
import { entryHash } from '../evidence/entry.ts';
import { hashesOf, rootOfSet } from '../evidence/merkle.ts';
import { joined } from '../evidence/platform/bytes.ts';
import type { JobRecord } from '../evidence/record.ts';

/** What a record shows of its log: little enough to be handed from thread to thread. */
export interface Shown {
  /** Numbers of whole subtrees, and 32 bytes of hash for each. */
  readonly places: Float64Array<ArrayBuffer>;
  readonly hashes: Uint8Array<ArrayBuffer>;
  /** 32 bytes for each entry of the job. */
  readonly entries: Uint8Array<ArrayBuffer>;
}

/** So that the number of a subtree is a whole number that a double holds. */
const MAX_SIZE = 2 ** 50;

/** Everything that a record's leaves and its proof say of whole subtrees of the log. */
export function shownBy({ background, entries, log }: JobRecord): Shown {
  const leaves = [...background, ...entries]
    .map((entry) => ({ index: entry.seq - 1, hash: entryHash(entry) }))
    .sort((a, b) => a.index - b.index);
  const checkpoint = readCheckpoint(log.checkpoint, 'checkpoint');
  const size = checkpoint.ok && checkpoint.value.size <= MAX_SIZE ? checkpoint.value.size : 0;
  const places: number[] = [];
  const hashes: Uint8Array[] = [];
  rootOfSet(leaves, size, hashesOf(log.proof), (from, to, hash) => {
    const level = Math.log2(to - from);
    if (!Number.isInteger(level)) return;
    places.push(placeOf(level, from / (to - from)));
    hashes.push(hash);
  });
  return {
    places: Float64Array.from(places),
    hashes: Uint8Array.from(joined(...hashes)),
    entries: Uint8Array.from(joined(...entries.map(entryHash))),
  };
}

/** One number for each subtree, counted from left to right as they become whole. */
const placeOf = (level: number, index: number) => index * 2 ** (level + 1) + 2 ** level - 1;
