/** Opens the database file of a station log so that a commit means "on disk", and refuses files that are not one. */

import { existsSync, type Stats, statSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Database } from 'better-sqlite3';
import { type Problem, ProblemError } from '../src/problem.ts';
import type { ProblemCode } from '../src/problem-code.ts';
import { w } from '../src/words/catalogue.ts';
import { entryTable } from './entries.ts';
import { mendHistory } from './mend.ts';
import { migrate, readMigrations, versionOf } from './migrate.ts';
import { damagedNext, notReadableAsLog, problemOf } from './problems.ts';
import { hasPages, logIsSound, looksSound } from './sound.ts';
import { refuseDamagedWal } from './wal.ts';

/** `PLMK`, at offset 68 of every station log file. */
const APPLICATION_ID = 0x504c4d4b;
/** SQLite's number for synchronous = FULL. */
const FULL = 2;
/** Longer than any program of ours holds the log. The wait stops the whole program: a job at work waits in another way. */
export const PATIENCE_MS = 5000;

export interface Opened {
  /** How long to wait for a program that writes. */
  readonly patienceMs?: number;
  /** Hears that tables for look-up were damaged, and are made again. */
  readonly mended?: () => void;
  /** Hears that the last write before a power cut never became whole, and of how many entries it was as far as can be seen. */
  readonly cutOff?: (entries: number) => void;
}

/** Problems: `log-empty`, `log-not-a-log`, `log-newer`, `log-damaged`, `log-busy`, `log-disk`, `log-path`. */
export async function openDatabase(path: string, opened: Opened = {}): Promise<Database> {
  await refuseEmptyFile(path);
  const cutOff = refuseDamagedWal(path);
  const { default: Sqlite } = await import('better-sqlite3');
  const isThere = existsSync(path);
  let db: Database | undefined;
  try {
    db = new Sqlite(path, { timeout: opened.patienceMs ?? PATIENCE_MS });
    const toMend = inspect(db, path) === 'history-damaged';
    configure(db);
    migrate(db, readMigrations());
    assertFull(db);
    if (toMend) {
      mendHistory(db);
      opened.mended?.();
    }
    if (cutOff !== null) {
      const size = entryTable(db).size();
      opened.cutOff?.(cutOff.filter((seq) => seq > size).length);
    }
    return db;
  } catch (cause) {
    db?.close();
    throw damagedOr(cause, path, isThere);
  }
}

/**
 * A log whose first page was hit is no database to SQLite, or one of another program; or it has another form than it says,
 * and what every log takes fails in it.
 */
function damagedOr(cause: unknown, path: string, isThere: boolean): unknown {
  const problem = problemOf(cause, path);
  const fails = cause instanceof Error && 'code' in cause && cause.code === 'SQLITE_ERROR';
  if (fails && isThere) return damaged(path, w`the database file is damaged`);
  const isNone = problem instanceof ProblemError && problem.problem.code === 'log-not-a-log';
  return isNone && problem.cause !== undefined && hasPages(path)
    ? damaged(path, notReadableAsLog())
    : problem;
}

const damaged = (path: string, message: string) =>
  new ProblemError(refusal('log-damaged', path, message, damagedNext()));

/**
 * SQLite builds with a lower default for WAL fall back to it on their own; then a commit could be lost with the power.
 * Throws: that would be a bug here, not something a user can mend.
 */
export function assertFull(db: Database): void {
  const level = db.pragma('synchronous', { simple: true });
  if (level !== FULL) throw new Error(`the station log is at synchronous=${String(level)}, not FULL`);
}

/** A file that is so new may be the log that another program is beginning just now. */
const BEGUN_MS = 1_000;

/** To SQLite a file of no or one byte is a new database; here it may be all that is left of a log. */
async function refuseEmptyFile(path: string): Promise<void> {
  const empty = () => {
    const found = statSync(path, { throwIfNoEntry: false });
    return found !== undefined && found.size <= 1 ? found : null;
  };
  const isNew = ({ mtimeMs }: Stats) => Math.abs(Date.now() - mtimeMs) < BEGUN_MS;
  for (let found = empty(); found !== null; found = empty()) {
    if (isNew(found)) await sleep(20);
    else
      throw new ProblemError(
        refusal(
          'log-empty',
          path,
          w`the file is empty; a station log never is`,
          w`Restore a backup. If the log was never used, delete the file and start again.`,
        ),
      );
  }
}

/** Looks before anything is written, so that a foreign file is left as it is. */
function inspect(db: Database, path: string): 'sound' | 'history-damaged' {
  const version = versionOf(db);
  const id = db.pragma('application_id', { simple: true });
  const tables = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get();
  if (version === 0 && tables === 0) return 'sound';
  if (id !== APPLICATION_ID)
    throw new ProblemError(
      refusal(
        'log-not-a-log',
        path,
        w`this is a database, but not a station log`,
        w`Name the station log, or a new file.`,
      ),
    );
  const latest = readMigrations().length;
  if (version > latest)
    throw new ProblemError(
      refusal(
        'log-newer',
        path,
        w`a newer version of the program wrote this log (form ${version}; this one knows ${latest})`,
        w`Use the newer version of the program.`,
      ),
    );
  if (looksSound(db, path)) return 'sound';
  if (!logIsSound(db)) throw damaged(path, w`the database file is damaged`);
  return 'history-damaged';
}

function configure(db: Database): void {
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  // Where the disk has a write cache that fsync leaves alone (macOS).
  db.pragma('fullfsync = ON');
  db.pragma('foreign_keys = ON');
  db.pragma('recursive_triggers = ON');
  db.pragma('trusted_schema = OFF');
  db.pragma('journal_size_limit = 4194304');
}

function refusal(code: ProblemCode, where: string, message: string, next: string): Problem {
  return { code, where, message, next };
}
