/** Backups of a station log: made while others write to it, and looked through whole before they take its place. */

import { closeSync, constants, existsSync, lstatSync, openSync, renameSync, rmSync, statSync } from 'node:fs';
import { chmod, copyFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { STATION_STREAM } from '../src/evidence/log.ts';
import { fileProblem } from '../src/files/file-problem.ts';
import { putInPlace, syncFile, syncFolder, unfinishedName } from '../src/files/whole-file.ts';
import { type Problem, ProblemError } from '../src/problem.ts';
import type { ProblemCode } from '../src/problem-code.ts';
import { w } from '../src/words/catalogue.ts';
import type { Progress } from './attempts.ts';
import { logFault } from './check.ts';
import { type Courses, coursesOf } from './courses.ts';
import { entryIn, entryTable } from './entries.ts';
import { openDatabase } from './open.ts';
import { problemOf } from './problems.ts';
import { isSound } from './sound.ts';
import { refuseDamagedWal } from './wal.ts';

/** Pages a step; between steps the program may draw and stop. */
const PAGES_A_STEP = 4096;

/** What a copy of a log holds, once all of it was read. */
export interface Checked {
  readonly entries: number;
  readonly jobs: number;
  /** Root of its hash tree is that of the entries; the time of the last one, ISO, null for an empty log. */
  readonly lastAt: string | null;
}

/**
 * Copies the log as it stands now, whatever others write meanwhile, and reads the copy through. Problems: `file-exists`,
 * `log-damaged`, and those of the database.
 */
export async function backUpLog(
  path: string,
  to: string,
  { copied = () => {}, checked: watch }: { readonly copied?: Progress; readonly checked?: Progress } = {},
): Promise<Checked> {
  if (lstatSync(to, { throwIfNoEntry: false }) !== undefined)
    throw new ProblemError({
      code: 'file-exists',
      where: to,
      message: w`the file exists; a backup never overwrites a file`,
      next: w`Name a new file.`,
    });
  const part = unfinishedName(to);
  try {
    refuseDamagedWal(path);
    makeEmpty(part, to);
    const { default: Sqlite } = await import('better-sqlite3');
    const db = new Sqlite(path, { fileMustExist: true, timeout: 2000 });
    try {
      // A snapshot: without it every entry that a job adds would start the copy anew.
      db.exec('BEGIN; SELECT count(*) FROM sqlite_schema');
      await db
        .backup(part, {
          progress: ({ totalPages, remainingPages }) => {
            copied(totalPages - remainingPages, totalPages);
            return PAGES_A_STEP;
          },
        })
        .catch((cause: unknown) => {
          throw isOfCopy(cause) ? problemOf(cause, to) : cause;
        });
    } finally {
      db.close();
    }
    const checked = await checkLog(part, watch);
    syncFile(part);
    putInPlace(part, to);
    return checked;
  } catch (cause) {
    throw problemOf(cause, path);
  } finally {
    for (const end of ['', '-wal', '-shm', '-journal']) rmSync(`${part}${end}`, { force: true });
  }
}

/** Made here, so that SQLite follows no link that somebody put there. */
function makeEmpty(part: string, to: string): void {
  try {
    closeSync(openSync(part, 'wx'));
  } catch (cause) {
    const problem = fileProblem(cause, to);
    throw problem === null ? cause : new ProblemError(problem, { cause });
  }
}

/** By then the log is open and only read: what cannot be opened or written is the copy. better-sqlite3 gives no code for a missing folder. */
const isOfCopy = (cause: unknown): boolean =>
  cause instanceof TypeError ||
  (cause instanceof Error &&
    'code' in cause &&
    /^SQLITE_(FULL|CANTOPEN|READONLY|PERM|IOERR_(WRITE|FSYNC|TRUNCATE))/.test(String(cause.code)));

/** Reads a log through: pages, entries, numbers and hash tree. Problem `log-damaged` names the first fault. */
export async function checkLog(path: string, watch?: Progress): Promise<Checked> {
  const db = await openDatabase(path);
  try {
    const fault = isSound(db) ? logFault(db, watch) : { message: w`its pages do not fit together` };
    if (fault !== null)
      throw new ProblemError({
        code: 'log-damaged',
        where: path,
        message: w`this copy is damaged: ${fault.message}`,
        next: w`Use another backup.`,
      });
    const table = entryTable(db);
    const [newest] = table.newest(1);
    return {
      entries: table.size(),
      jobs: table.streams().filter((stream) => stream !== STATION_STREAM).length,
      lastAt: newest === undefined ? null : (entryIn(newest)?.at ?? null),
    };
  } catch (cause) {
    throw problemOf(cause, path);
  } finally {
    db.close();
  }
}

export interface Restoring {
  /** What is put behind the name of the log that was there, until a name is free. */
  readonly suffix: string;
  /** Thumbprints of keys that are known to be this station's. */
  readonly keys: readonly string[];
  /** Hears before anything is replaced how the two logs stand to each other; throws where it is not to be. */
  readonly agree: (courses: Courses) => Promise<void> | void;
  /** Hears how the copy of the backup is checked. */
  readonly checked?: Progress;
}

export interface Restored extends Checked {
  /** Where the log that was there lies now; null where there was none. */
  readonly before: string | null;
  readonly courses: Courses;
}

/**
 * Puts a backup in the place of a log. The backup is copied, with the write-ahead log beside it if there is one, read
 * through, and held against the log that is there; that is kept beside it under a name that was free. Problems: `log-busy`
 * while a program has the log open or adds to it, `log-damaged`, `file-unreadable`, `file-unreadable`,
 * `restore-other-station`, and what `agree` throws.
 */
export async function restoreLog(
  backup: string,
  path: string,
  { suffix, keys, agree, checked: watch }: Restoring,
): Promise<Restored> {
  refuseNoFile(backup);
  const part = unfinishedName(path);
  const remove = () => {
    for (const end of ENDS) rmSync(`${part}${end}`, { force: true });
  };
  try {
    const checked = await copiedAndChecked(backup, part, watch);
    const courses = await coursesOf({ copy: part, name: backup }, path, keys);
    await agree(courses);
    const before = isTaken(path) ? freeName(`${path}.${suffix}`) : null;
    if (before !== null) await setAside(path, before, courses.kind === 'unreadable' ? null : courses.size);
    syncFile(part);
    putInPlace(part, path);
    return { ...checked, before, courses };
  } finally {
    remove();
  }
}

function refuseNoFile(backup: string): void {
  const stats = statSync(backup, { throwIfNoEntry: false });
  if (stats?.isFile() === true) return;
  throw new ProblemError({
    code: 'file-unreadable',
    where: backup,
    message: stats === undefined ? w`there is no such file` : w`this is a folder or a device, not a backup`,
    next: w`Name the file that "plugmark backup" made.`,
  });
}

/** Whatever is wrong with the copy is wrong with the backup that was named. */
async function copiedAndChecked(backup: string, part: string, watch?: Progress): Promise<Checked> {
  try {
    await copyOver(backup, part);
    // Of a log that was copied by hand the newest entries may be there alone; reading the copy takes them in.
    if (hasContent(`${backup}-wal`)) await copyOver(`${backup}-wal`, `${part}-wal`);
    return await checkLog(part, watch);
  } catch (cause) {
    if (!(cause instanceof ProblemError)) throw cause;
    const { problem } = cause;
    const next = BAD_BACKUP[problem.code]?.() ?? problem.next;
    throw new ProblemError({ ...problem, where: backup, next }, { cause });
  }
}

const another = () =>
  w`Use another backup. If you have none, save what can be read of the log with "plugmark recover".`;
const BAD_BACKUP: { readonly [code in ProblemCode]?: () => string } = {
  'log-damaged': another,
  'log-empty': another,
  'log-not-a-log': () => w`Name the file that "plugmark backup" made.`,
};

async function copyOver(from: string, to: string): Promise<void> {
  try {
    await copyFile(from, to, constants.COPYFILE_EXCL);
    // A backup that is kept safe from writing makes a log that is not.
    await chmod(to, (statSync(from).mode & 0o777) | 0o600);
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
    const isFull = code === 'ENOSPC' || code === 'EDQUOT';
    if (!isFull && !code.startsWith('E')) throw cause;
    const problem: Problem = isFull
      ? {
          code: 'log-disk',
          message: w`the disk is full`,
          next: w`Free some space on that disk, then try again.`,
        }
      : {
          code: 'file-unreadable',
          message: w`it cannot be copied beside the station log (${code})`,
          next: w`Check the rights on it, and on the folder of the station's data.`,
        };
    throw new ProblemError({ ...problem, where: from }, { cause });
  }
}

const ENDS = ['', '-wal', '-shm'] as const;
const isTaken = (path: string) => ENDS.some((end) => existsSync(`${path}${end}`));
const hasContent = (path: string) => (statSync(path, { throwIfNoEntry: false })?.size ?? 0) > 0;

/** The name, or the first of name-2, name-3 … under which nothing lies. */
function freeName(name: string): string {
  let free = name;
  for (let i = 2; isTaken(free); i++) free = `${name}-${i}`;
  return free;
}

/** Moves a log away with all that belongs to it; refused while another program has it open, or if it went on from `size`. */
async function setAside(path: string, to: string, size: number | null): Promise<void> {
  try {
    // SQLite would throw away a write-ahead log whose file is gone.
    const db = existsSync(path) ? await openDatabase(path) : null;
    try {
      // Leaving the write-ahead log takes the whole file for oneself, and empties it into the file.
      db?.pragma('journal_mode = DELETE');
      if (db !== null && size !== null && entryTable(db).size() !== size)
        throw new ProblemError(wentOn(path));
    } finally {
      db?.close();
    }
  } catch (cause) {
    const problem = problemOf(cause, path);
    if (!(problem instanceof ProblemError) || problem.problem.code === 'log-busy') throw problem;
    // It cannot serve as a log any more, so nothing has it open, and it moves as it is.
  }
  for (const end of ENDS) if (existsSync(`${path}${end}`)) renameSync(`${path}${end}`, `${to}${end}`);
  syncFolder(dirname(path));
}

const wentOn = (where: string): Problem => ({
  code: 'log-busy',
  where,
  message: w`another program wrote to the station log`,
  next: w`Close the other program, then try again.`,
});
