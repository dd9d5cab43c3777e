/** The Merkle tree of the log in SQLite: leaves in `entries`, whole subtrees of 32 leaves and more in `subtrees`. */
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { completedBy, type Subtrees, treeOf, treeRoot } from '../src/evidence/merkle.ts';
import { ProblemError } from '../src/problem.ts';
import { damagedNext } from './problems.ts';

const hashSchema = z.instanceof(Uint8Array).refine((hash) => hash.length === 32);

/** The stored tree, and a way to let it grow by one leaf within the transaction that writes the entry. */
export interface StoredTree extends Subtrees {
  grow(index: number, leaf: Uint8Array): void;
}

/** Smaller subtrees are made again when they are asked for: they would take fifteen times the room of all others. */
export const LOWEST_STORED = 5;

/** Asking for a subtree that is not there throws `log-damaged`. */
export function storedTree(db: Database, path: string): StoredTree {
  const leaves = db.prepare('SELECT hash FROM entries WHERE seq BETWEEN ? AND ? ORDER BY seq').pluck();
  const above = db.prepare('SELECT hash FROM subtrees WHERE place = ?').pluck();
  const insert = db.prepare('INSERT INTO subtrees (place, hash) VALUES (?, ?)');
  const hole = (level: number, index: number) =>
    new ProblemError({
      code: 'log-damaged',
      where: path,
      message: `the hash tree of the station log has a hole (level ${level}, place ${index})`,
      next: damagedNext(),
    });
  /** From its leaves, which are read at once. */
  const madeAgain = (level: number, index: number): Uint8Array => {
    const first = index * 2 ** level;
    const rows = leaves.all(first + 1, first + 2 ** level);
    const hashes = rows.flatMap((row) => hashSchema.safeParse(row).data ?? []);
    if (hashes.length < 2 ** level) throw hole(0, first);
    return treeRoot(treeOf(hashes), hashes.length);
  };
  const node = (level: number, index: number): Uint8Array => {
    if (level < LOWEST_STORED) return madeAgain(level, index);
    const hash = hashSchema.safeParse(above.get(placeOf(level, index)));
    if (!hash.success) throw hole(level, index);
    return hash.data;
  };
  return {
    node,
    grow: (index, hash) => {
      for (const subtree of completedBy({ node }, index, hash))
        if (subtree.level >= LOWEST_STORED) insert.run(placeOf(subtree.level, subtree.index), subtree.hash);
    },
  };
}

/** Where a subtree lies; see the migration. */
export function placeOf(level: number, index: number): number {
  return index * 2 ** (level + 1) + 2 ** level - 1;
}
