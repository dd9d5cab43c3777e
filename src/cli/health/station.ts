/** The station's log and key, looked at on a copy: nothing in the station's folder is touched. */
import { existsSync, statfsSync, statSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { copyLog } from '../../../db/copy.ts';
import { readKeyFile } from '../../../db/keyfile.ts';
import { openStationLog, type StationLogFile } from '../../../db/log.ts';
import { type StationState, stationOf } from '../../evidence/station.ts';
import { ProblemError } from '../../problem.ts';
import { keyPath } from '../station.ts';
import { bad, type Finding, fromProblem, good, warning } from './finding.ts';

const MB = 1e6;
/** Read through in about half a minute. */
const MOST_BYTES = 500 * MB;

export interface StationHealth {
  readonly findings: readonly Finding[];
  /** When the newest entry was made; null where there is none. */
  readonly lastEntry: string | null;
}

/** Opens a new log in an empty folder, which asserts WAL and synchronous=FULL and shows that the native package loads. */
export function databaseFinding(): Promise<Finding> {
  return inScratch(async (scratch) => {
    try {
      const log = await openStationLog(join(scratch, 'station.db'));
      log.close();
      return good('database', 'SQLite loads; a commit is on disk (synchronous FULL)');
    } catch (error) {
      if (error instanceof ProblemError) return fromProblem('database', error.problem);
      const text = error instanceof Error ? error.message : String(error);
      return bad(
        'database',
        `SQLite does not work: ${text}`,
        'Install again with a C++ compiler present: npm ci',
      );
    }
  });
}

export function stationHealth(folder: string): Promise<StationHealth> {
  const path = join(folder, 'station.db');
  if (!existsSync(path)) {
    const found = `no station log yet in ${folder}`;
    const next = 'It is made when the station is first opened: plugmark setup, or the first job.';
    return Promise.resolve({ findings: [warning('log', found, next)], lastEntry: null });
  }
  const large = tooLarge(bytesOf(path), freeIn(tmpdir()));
  if (large !== null) {
    const found = `${large}; its entries and its key were not looked at`;
    const next = 'Have it read where it lies: plugmark log check';
    return Promise.resolve({ findings: [warning('log', found, next)], lastEntry: null });
  }
  return inScratch(async (scratch) => {
    const copy = join(scratch, 'station.db');
    try {
      await copyLog(path, copy);
      const log = await openStationLog(copy);
      try {
        return lookedAt(log, folder);
      } finally {
        log.close();
      }
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      return { findings: [fromProblem('log', { ...error.problem, where: path })], lastEntry: null };
    }
  });
}

/**
 * Why a log of this size is not copied; null where it may be. It cannot be read where it lies without touching its folder:
 * SQLite makes two files beside a log for any reader, and one that may only read cannot take them away again. A copy needs
 * room for itself and as much again for being brought up to date, and the folder for it is often in memory.
 */
export function tooLarge(bytes: number, freeBytes: number): string | null {
  const size = `${Math.ceil(bytes / MB)} MB`;
  if (bytes > MOST_BYTES)
    return `${size}, more than the ${MOST_BYTES / MB} MB that are looked through on a copy`;
  if (2 * bytes > freeBytes) return `${size}, too large for a copy in ${tmpdir()}`;
  return null;
}

/** With what another program wrote and has not yet put into the file itself. */
function bytesOf(path: string): number {
  const files = [path, `${path}-wal`].filter((file) => existsSync(file));
  return files.reduce((sum, file) => sum + statSync(file).size, 0);
}

function freeIn(folder: string): number {
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize;
}

function lookedAt(log: StationLogFile, folder: string): StationHealth {
  const fault = log.check();
  if (fault !== null) {
    const next =
      'Keep the file as it is, restore it from a backup, and hold that against a checkpoint (plugmark log check).';
    return { findings: [bad('log', `entry ${fault.seq}: ${fault.message}`, next)], lastEntry: null };
  }
  const whole = good('log', `opens, whole; all ${log.size()} entries are as they were written`);
  const entries = log.stationEntries();
  const [at = null] = [entries.at(-1)?.at, log.lastJobs(1)[0]?.lastAt]
    .flatMap((one) => one ?? [])
    .sort()
    .reverse();
  return { findings: [whole, keyFinding(stationOf(entries), folder)], lastEntry: at };
}

function keyFinding(state: StationState | null, folder: string): Finding {
  const kid = state?.keys.at(-1)?.kid;
  if (state === null || kid === undefined)
    return warning(
      'key',
      'the log names none yet',
      'It is made when the station is first opened: plugmark setup, or the first job.',
    );
  if (state.revoked.has(kid))
    return bad('key', `${kid} was revoked`, 'Make a new one: plugmark keys rotate --lost');
  const read = readKeyFile(keyPath(folder, 'station', kid));
  if (read.ok) return good('key', `${kid}, readable by its owner only`);
  return read.error.code === 'key-locked'
    ? good('key', `${kid}, under a passphrase, readable by its owner only`)
    : fromProblem('key', read.error);
}

async function inScratch<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'plugmark-doctor-'));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
