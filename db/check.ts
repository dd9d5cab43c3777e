/** Reads a whole log and finds the first place where it is not as it was written. */

import type { Database } from 'better-sqlite3';
import { signedBytes } from '../src/evidence/entry.ts';
import type { AnyEntry } from '../src/evidence/log.ts';
import { leafHash, nodeHash } from '../src/evidence/merkle.ts';
import { isSame } from '../src/evidence/platform/bytes.ts';
import { w } from '../src/words/catalogue.ts';
import type { Progress } from './attempts.ts';
import { type TextFault, textChecker } from './check-texts.ts';
import { entryIn, entryTable, type StoredEntry } from './entries.ts';
import { LOWEST_STORED, placeOf } from './tree.ts';

/** The first entry of the log that is not as it was written. */
export interface LogFault {
  readonly seq: number;
  readonly message: string;
}

/** What a log comes to once all of it was read. */
export interface LogCheck {
  readonly fault: LogFault | null;
  /** Of personal texts, on which no proof rests; empty where there is a fault before. */
  readonly texts: readonly TextFault[];
}

/** Takes one pass over the file. */
export function checkedLog(db: Database, watch?: Progress): LogCheck {
  const texts = textChecker(db);
  const fault = logFault(db, watch, texts.add);
  return { fault, texts: fault === null ? texts.faults() : [] };
}

/** The first fault in entries, numbering or tree; null when there is none. `seen` gets each entry that is as it was written. */
export function logFault(
  db: Database,
  watch: Progress = () => {},
  seen: (entry: AnyEntry) => void = () => {},
): LogFault | null {
  const lastOfStream = new Map<string, number>();
  const tree = treeChecker(db);
  const size = entryTable(db).size();
  let due = 1;
  for (const stored of entryTable(db).all()) {
    const { seq, hash } = stored;
    const entry = checkedEntry(stored, due, lastOfStream);
    const message = typeof entry === 'string' ? entry : tree.add(seq - 1, hash);
    if (typeof entry === 'string' || message !== null) {
      watch(size, size);
      return { seq: Math.min(seq, due), message: message ?? '' };
    }
    seen(entry);
    watch(due, size);
    due++;
  }
  const table = entryTable(db);
  if (table.size() !== due - 1) return { seq: due, message: w`entries are missing or out of order` };
  const idle = table.streams().find((stream) => !lastOfStream.has(stream));
  if (idle !== undefined) return { seq: due, message: w`the log names a stream without entries` };
  const extra = db.prepare('SELECT count(*) FROM subtrees').pluck().get();
  if (extra !== tree.seen()) return { seq: due, message: w`the hash tree has nodes after the last entry` };
  return null;
}

/** The entry, or what is wrong with it. */
function checkedEntry(
  stored: StoredEntry,
  due: number,
  lastOfStream: Map<string, number>,
): AnyEntry | string {
  const { seq, hash, body } = stored;
  if (seq !== due) return w`entry ${due} is missing`;
  if (body === null || !isSame(leafHash(body), hash)) return w`entry ${seq} is not what its hash was made of`;
  const entry = entryIn(stored);
  if (entry === null || !isSame(signedBytes(entry), body))
    return w`entry ${seq} is not written as an entry is`;
  const n = (lastOfStream.get(entry.stream) ?? 0) + 1;
  if (entry.n !== n) return w`entry ${seq} has n=${entry.n} in its stream where n=${n} is due`;
  lastOfStream.set(entry.stream, n);
  return entry;
}

/** Builds the tree once more beside the stored one; keeps O(log n) hashes. */
function treeChecker(db: Database) {
  const stored = db.prepare('SELECT hash FROM subtrees WHERE place = ?').pluck();
  /** By level: the whole subtree that waits for its right neighbour. */
  const waiting: (Uint8Array | undefined)[] = [];
  let seen = 0;
  return {
    seen: () => seen,
    /** Adds a leaf; the subtrees that it makes whole must be the stored ones. */
    add(index: number, leaf: Uint8Array): string | null {
      let hash = leaf;
      let level = 0;
      for (let left = waiting[0]; left !== undefined; left = waiting[level]) {
        waiting[level] = undefined;
        hash = nodeHash(left, hash);
        level++;
        if (level < LOWEST_STORED) continue;
        seen++;
        const there = stored.get(placeOf(level, Math.floor(index / 2 ** level)));
        if (!(there instanceof Uint8Array) || !isSame(hash, there))
          return w`entry ${index + 1} is not the one that the hash tree was made of, or one shortly before it`;
      }
      waiting[level] = hash;
      return null;
    },
  };
}
