/** Reads a whole log and finds the first place where it is not as it was written. */
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { canonical } from '../src/evidence/canonical.ts';
import { type AnyEntry, readEntry } from '../src/evidence/log.ts';
import { leafHash, nodeHash } from '../src/evidence/merkle.ts';
import { parseStrictJson } from '../src/evidence/strict-json.ts';
import { placeOf } from './tree.ts';

/** The first entry of the log that is not as it was written. */
export interface LogFault {
  readonly seq: number;
  readonly message: string;
}

const rowSchema = z.strictObject({ seq: z.int(), hash: z.instanceof(Uint8Array), body: z.string() });

/** The first fault in entries, numbering or tree; null when there is none. Takes one pass over the file. */
export function logFault(db: Database): LogFault | null {
  const lastOfStream = new Map<string, number>();
  const tree = treeChecker(db);
  let due = 1;
  for (const row of db.prepare('SELECT seq, hash, body FROM entries ORDER BY seq').iterate()) {
    const { seq, hash, body } = rowSchema.parse(row);
    const message = entryFault(seq, hash, body, due, lastOfStream) ?? tree.add(seq - 1, hash);
    if (message !== null) return { seq: Math.min(seq, due), message };
    due++;
  }
  const extra = db.prepare('SELECT count(*) FROM subtrees').pluck().get();
  if (extra !== tree.seen()) return { seq: due, message: 'the hash tree goes on behind the last entry' };
  return null;
}

function entryFault(
  seq: number,
  hash: Uint8Array,
  body: string,
  due: number,
  lastOfStream: Map<string, number>,
): string | null {
  if (seq !== due) return `entry ${due} is missing`;
  if (!leafHash(Buffer.from(body, 'utf8')).equals(hash))
    return `entry ${seq} is not what its hash was made of`;
  const entry = canonicalEntry(body);
  if (entry === null || entry.seq !== seq) return `entry ${seq} is not written as an entry is`;
  const n = (lastOfStream.get(entry.stream) ?? 0) + 1;
  if (entry.n !== n) return `entry ${seq} has n=${entry.n} in its stream where n=${n} is due`;
  lastOfStream.set(entry.stream, n);
  return null;
}

function canonicalEntry(body: string): AnyEntry | null {
  const json = parseStrictJson(Buffer.from(body, 'utf8'), 'entry');
  if (!json.ok || canonical(json.value) !== body) return null;
  const entry = readEntry(json.value);
  return entry.success ? entry.data : null;
}

/** Builds the tree once more beside the stored one; keeps O(log n) hashes. */
function treeChecker(db: Database) {
  const stored = db.prepare('SELECT hash FROM subtrees WHERE place = ?').pluck();
  /** By level: the whole subtree that waits for its right neighbour. */
  const waiting: (Buffer | undefined)[] = [];
  let seen = 0;
  return {
    seen: () => seen,
    /** Adds a leaf; the subtrees that it makes whole must be the stored ones. */
    add(index: number, leaf: Uint8Array): string | null {
      let hash: Buffer = Buffer.from(leaf);
      let level = 0;
      for (let left = waiting[0]; left !== undefined; left = waiting[level]) {
        waiting[level] = undefined;
        hash = nodeHash(left, hash);
        level++;
        seen++;
        const there = stored.get(placeOf(level, Math.floor(index / 2 ** level)));
        if (!(there instanceof Uint8Array) || !hash.equals(there))
          return `entry ${index + 1} is not the one that the hash tree was made of, or an entry shortly before it`;
      }
      waiting[level] = hash;
      return null;
    },
  };
}
