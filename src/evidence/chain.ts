/** The hash chain of the station log: each entry holds the hash of the one before it. */
import { createHash } from 'node:crypto';
import { canonicalBytes } from './canonical.ts';
import { type Draft, type LogEntry, logEntrySchema, NO_ENTRY, type Stamp } from './log.ts';

/** RFC 9162, 2.1.1: the byte before a leaf, so that a Merkle tree can be put over the same hashes. */
const LEAF = Buffer.of(0x00);

/** Where a log ends: number and hash of its last entry. */
export interface Head {
  readonly seq: number;
  readonly hash: string;
}

export const EMPTY_HEAD: Head = { seq: 0, hash: NO_ENTRY };

/** An entry together with the bytes that stand for it. */
export interface Link {
  readonly entry: LogEntry;
  readonly hash: string;
  readonly body: string;
}

/** SHA-256(0x00 || canonical bytes), hexadecimal: the leaf hash of RFC 9162. */
export function entryHash(entry: LogEntry): string {
  return hashOfBody(canonicalBytes(entry));
}

/** The same from the canonical bytes. */
export function hashOfBody(body: Uint8Array): string {
  return createHash('sha256').update(LEAF).update(body).digest('hex');
}

/**
 * Makes log entries of drafts: numbered on from `head` in the log and from `n` in the stream. The entry given back is
 * what its bytes say, so -0 comes back as 0. Throws for a draft that the log's schema would not read again.
 */
export function chain(
  head: Head,
  stream: string,
  n: number,
  drafts: readonly Draft[],
  { at, monoUs }: Stamp,
): readonly Link[] {
  let { seq, hash } = head;
  return drafts.map(({ by, event }, i) => {
    seq += 1;
    const draft = { v: 1, seq, prev: hash, stream, n: n + 1 + i, at, monoUs, by, event };
    const body = canonicalBytes(draft);
    hash = hashOfBody(body);
    return {
      entry: logEntrySchema.parse(JSON.parse(body.toString('utf8'))),
      hash,
      body: body.toString('utf8'),
    };
  });
}
