/**
 * Whether the open log is still what its path leads to. A file that is deleted, moved or replaced while it is open goes on
 * taking entries that nobody will ever find. Then all that it holds is written into a new file that can be found.
 */

import { accessSync, constants, existsSync, rmSync, statSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import type { Database } from 'better-sqlite3';
import { putInPlace, syncFile, unfinishedName } from '../src/files/whole-file.ts';
import { ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';

const ENDS = ['', '-wal', '-shm'] as const;

/** Throws `log-moved` once a file of the log is not the one that was opened; where a copy lies is in it. */
export function inPlace(db: Database, name: string): () => void {
  const path = db.name;
  const opened = ENDS.map((end) => identityOf(`${path}${end}`));
  let saved: string | null = null;
  return () => {
    if (ENDS.every((end, i) => opened[i] === null || identityOf(`${path}${end}`) === opened[i])) return;
    saved = savedBeside(db, path, saved);
    throw new ProblemError(moved(name, saved));
  };
}

/** Null where no file has the name. */
function identityOf(path: string): string | null {
  const file = statSync(path, { bigint: true, throwIfNoEntry: false });
  return file === undefined ? null : `${file.dev}:${file.ino}`;
}

/** All of the log in one file, in the nearest place that takes it; null where none does. `before`: the file of an earlier try. */
function savedBeside(db: Database, path: string, before: string | null): string | null {
  const places = before === null ? placesFor(path) : [before];
  for (const to of places) {
    const part = unfinishedName(to);
    try {
      // The files are gone from their folder, and can still be read by who has them open.
      db.prepare('VACUUM INTO ?').run(part);
      syncFile(part);
      putInPlace(part, to);
      return to;
    } catch {
      rmSync(part, { force: true });
    }
  }
  return before;
}

function placesFor(path: string): readonly string[] {
  const name = `${basename(path, '.db')}.saved`;
  const folders: string[] = [];
  for (let at = dirname(path); dirname(at) !== at; at = dirname(at)) folders.push(at);
  return [...folders, homedir(), tmpdir()].filter(isWritable).map((folder) => freeName(join(folder, name)));
}

function isWritable(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

function freeName(start: string): string {
  let free = `${start}.db`;
  for (let i = 2; existsSync(free); i++) free = `${start}-${i}.db`;
  return free;
}

const moved = (where: string, saved: string | null) => ({
  code: 'log-moved' as const,
  where,
  message: w`the station log was deleted, moved or replaced while it was in use; nothing more is written to it`,
  next:
    saved === null
      ? w`It could not be saved elsewhere either. Keep this screen: what was shown last is not on disk.`
      : w`All of it, to the last reading, is in ${saved}. Find out what happened, then put it in place with "plugmark restore".`,
});
