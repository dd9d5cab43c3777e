/** A station log in a place that may only be read: SQLite makes files beside a log for any reader, so a copy is read instead. */

import {
  closeSync,
  existsSync,
  fstatSync,
  mkdtempSync,
  openSync,
  rmSync,
  statfsSync,
  statSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Problem, ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';
import { copyLog } from './copy.ts';
import { type Opening, openStationLog, type StationLogFile } from './log.ts';

/** A log that was opened to be read. `copied`: it may not be written, and answers as it stood when it was copied. */
export interface ReadLog {
  readonly log: StationLogFile;
  readonly copied: boolean;
}

/**
 * Opens a log where it lies if it may be written, else a copy that goes when it is closed; the copy refuses to be added to.
 * Problems as of `openStationLog`, and `log-no-room`, `log-read-only`.
 */
export async function openLogToRead(path: string, opening: Opening = {}): Promise<ReadLog> {
  if (opens(path, 'r+') || !opens(path, 'r'))
    try {
      return { log: await openStationLog(path, opening), copied: false };
    } catch (cause) {
      // The file may be written, and its folder not.
      const isPlace = cause instanceof ProblemError && cause.problem.code === 'log-path';
      if (!isPlace || !opens(path, 'r')) throw cause;
    }
  return { log: await openCopy(path, opening), copied: true };
}

async function openCopy(path: string, opening: Opening): Promise<StationLogFile> {
  const room = tooLargeToCopy(path);
  if (room !== null) throw new ProblemError(noRoom(path, room));
  const scratch = mkdtempSync(join(tmpdir(), 'plugmark-'));
  const remove = () => rmSync(scratch, { recursive: true, force: true });
  process.once('exit', remove);
  try {
    const copy = join(scratch, 'station.db');
    await copyLog(path, copy);
    const log = await openStationLog(copy, { ...opening, name: path });
    const refuse = () => {
      throw new ProblemError(readOnly(path));
    };
    return {
      ...log,
      append: refuse,
      appendStation: refuse,
      forget: refuse,
      sweep: refuse,
      keepCheckpoint: refuse,
      close: () => {
        log.close();
        remove();
      },
    };
  } catch (cause) {
    remove();
    if (cause instanceof ProblemError) throw new ProblemError({ ...cause.problem, where: path }, { cause });
    throw cause;
  }
}

const MB = 1e6;

/**
 * Why a log is not copied; null where it may be. A copy needs room for itself and as much again for being brought up to
 * date, and the folder for it is often in memory.
 */
export function tooLargeToCopy(path: string, freeBytes = freeIn(tmpdir())): string | null {
  const bytes = bytesOf(path);
  return 2 * bytes > freeBytes ? w`${Math.ceil(bytes / MB)} MB, too large for a copy in ${tmpdir()}` : null;
}

/** With what another program wrote and has not yet put into the file itself. */
export function bytesOf(path: string): number {
  const files = [path, `${path}-wal`].filter((file) => existsSync(file));
  return files.reduce((sum, file) => sum + statSync(file).size, 0);
}

function freeIn(folder: string): number {
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize;
}

/** Tried rather than asked for: rights are the least of what may keep a file from being written. */
function opens(path: string, flags: 'r' | 'r+'): boolean {
  try {
    const file = openSync(path, flags);
    try {
      return fstatSync(file).isFile();
    } finally {
      closeSync(file);
    }
  } catch {
    return false;
  }
}

const noRoom = (where: string, why: string): Problem => ({
  code: 'log-no-room',
  where,
  message: w`this log is read-only, and there is no room for the copy that reading needs: ${why}`,
  next: w`Free some space, set TMPDIR to a folder with space, or get the right to write.`,
});

const readOnly = (where: string): Problem => ({
  code: 'log-read-only',
  where,
  message: w`this log is read-only here, and the command must write to it`,
  next: w`Get the right to write to the file and its folder, or run the command at the station.`,
});
