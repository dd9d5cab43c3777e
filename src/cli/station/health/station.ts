/** The station's log and key, looked at on a copy: nothing in the station's folder is touched. */

import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { copyLog } from '../../../../db/copy.ts';
import { deviceProblem, readDeviceKey } from '../../../../db/hardware-key.ts';
import { isLockedKeyFile, readKeyFile } from '../../../../db/keyfile.ts';
import { openStationLog, type StationLogFile } from '../../../../db/log.ts';
import { damagedNext, notReadableAsLog } from '../../../../db/problems.ts';
import { bytesOf, tooLargeToCopy } from '../../../../db/read-only.ts';
import { type StationState, stationOf } from '../../../evidence/station.ts';
import { parseTrustList } from '../../../evidence/trust.ts';
import { ProblemError } from '../../../problem.ts';
import { plural, w } from '../../../words/catalogue.ts';
import { devicePath, keyMissing, keyPath } from '../station-keys.ts';
import { logPath, lostBehindNew, lostLog, stationKeysIn, TRUST_FILE } from '../station-log.ts';
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
      return good(w`database`, w`SQLite loads; a commit is on disk (synchronous FULL)`);
    } catch (error) {
      if (error instanceof ProblemError) return fromProblem(w`database`, error.problem);
      const text = error instanceof Error ? error.message : String(error);
      return bad(
        w`database`,
        w`SQLite does not work: ${text}`,
        w`Install plugmark again; its npm package brings SQLite for Linux, macOS and Windows on x64 and arm64.`,
      );
    }
  });
}

export function stationHealth(folder: string): Promise<StationHealth> {
  const path = logPath(folder);
  const lost = lostLog(folder);
  if (lost !== null) return Promise.resolve({ findings: [fromProblem(w`log`, lost)], lastEntry: null });
  if (!existsSync(path)) {
    const text = w`no station log yet in ${folder}`;
    const next = w`Run "plugmark setup", or open the first job.`;
    return Promise.resolve({ findings: [warning(w`log`, text, next)], lastEntry: null });
  }
  const large = tooLarge(path);
  if (large !== null) {
    const text = w`${large}; entries and key not checked`;
    const next = w`Check it: plugmark log check`;
    return Promise.resolve({ findings: [warning(w`log`, text, next)], lastEntry: null });
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
      const problem =
        error.problem.code === 'log-not-a-log'
          ? { ...error.problem, message: notReadableAsLog(), next: damagedNext() }
          : error.problem;
      return { findings: [fromProblem(w`log`, { ...problem, where: path })], lastEntry: null };
    }
  });
}

/** Why a log is not looked through on a copy; null where it is. It is not read where it lies: that leaves files beside it. */
export function tooLarge(path: string, freeBytes?: number): string | null {
  const bytes = bytesOf(path);
  if (bytes > MOST_BYTES)
    return w`${Math.ceil(bytes / MB)} MB, more than the ${MOST_BYTES / MB} MB that are checked on a copy`;
  return tooLargeToCopy(path, freeBytes);
}

function lookedAt(log: StationLogFile, folder: string): StationHealth {
  const { fault, texts } = log.checkAll();
  if (fault !== null) {
    const next = w`Keep the file as it is. Restore a backup and check it against a checkpoint (plugmark log check).`;
    return { findings: [bad(w`log`, w`entry ${fault.seq}: ${fault.message}`, next)], lastEntry: null };
  }
  const whole = good(
    w`log`,
    plural(log.size(), {
      one: 'complete; its # entry is unchanged',
      other: 'complete; all # entries are unchanged',
    }),
  );
  const entries = log.stationEntries();
  const lost = entries.length === 0 ? lostBehindNew(folder) : null;
  if (lost !== null) return { findings: [fromProblem(w`log`, lost)], lastEntry: null };
  const [at = null] = [entries.at(-1)?.at, log.lastJobs(1)[0]?.lastAt]
    .flatMap((one) => one ?? [])
    .sort()
    .reverse();
  const state = stationOf(entries);
  return {
    findings: [
      whole,
      ...textFinding(texts.length),
      keyFinding(state, folder),
      ...openOldKeys(state, folder),
      trustFinding(state, folder),
      ...strangeKeys(state, folder),
    ],
    lastEntry: at,
  };
}

function textFinding(faults: number): readonly Finding[] {
  if (faults === 0) return [];
  const text = w`${faults} not as the log says; every verdict and every proof holds`;
  return [warning(w`personal texts`, text, w`See which with "plugmark log check".`)];
}

/** A key that was replaced is destroyed, or locked where the shop keeps it. */
function openOldKeys(state: StationState | null, folder: string): readonly Finding[] {
  const old = (state?.keys ?? [])
    .slice(0, -1)
    .filter(({ kid }) => isLockedKeyFile(keyPath(folder, 'station', kid)) === false);
  return old.map(({ kid }) =>
    bad(
      w`old key`,
      w`${kid} signs no more, and lies here without a passphrase`,
      w`Destroy it: plugmark keys destroy ${kid}. To keep it, lock it: plugmark keys lock`,
    ),
  );
}

/** Records are verified with it, the station's own among them. */
function trustFinding(state: StationState | null, folder: string): Finding {
  const file = join(folder, TRUST_FILE);
  const kid = state?.keys.at(-1)?.kid;
  if (kid === undefined) return warning(w`trust list`, w`none yet`, w`It is made with the first key.`);
  const next = w`It is made again from the log when a job is opened or a key is changed.`;
  if (!existsSync(file)) return bad(w`trust list`, w`${file} is missing`, next);
  const read = parseTrustList(readFileSync(file), file);
  if (!read.ok) return bad(w`trust list`, w`${file} cannot be read: ${read.error.message}`, next);
  if (read.value.keys.every((key) => key.kid !== kid))
    return bad(w`trust list`, w`${file} does not have the station's key ${kid}`, next);
  return good(
    w`trust list`,
    plural(read.value.keys.length, {
      one: "# key, the station's own",
      other: "# keys, the station's own among them",
    }),
  );
}

/** Keys of a station are made with a log, and stay in it. */
function strangeKeys(state: StationState | null, folder: string): readonly Finding[] {
  const strange = stationKeysIn(folder).filter((kid) => state?.keys.every((key) => key.kid !== kid));
  if (strange.length === 0) return [];
  const text = w`${strange.join(', ')}: a key file that the log does not name`;
  const next = w`Another log was here, or a change of the key was cut short. Look for a backup of that log first ("plugmark restore" compares the two). If there is none: plugmark keys destroy KID`;
  return [warning(w`other keys`, text, next)];
}

function keyFinding(state: StationState | null, folder: string): Finding {
  const kid = state?.keys.at(-1)?.kid;
  if (state === null || kid === undefined)
    return warning(w`key`, w`none yet`, w`Run "plugmark setup", or open the first job.`);
  if (state.revoked.has(kid))
    return bad(w`key`, w`${kid} was revoked`, w`Make a new one: plugmark keys rotate --lost`);
  const path = keyPath(folder, 'station', kid);
  const device = devicePath(folder, kid);
  if (existsSync(device)) return deviceFinding(device, kid);
  if (!existsSync(path)) return fromProblem(w`key`, keyMissing(path));
  const read = readKeyFile(path);
  if (read.ok) return good(w`key`, w`${kid}, readable by its owner only`);
  return read.error.code === 'key-locked'
    ? good(w`key`, w`${kid}, under a passphrase, readable by its owner only`)
    : fromProblem(w`key`, read.error);
}

/** Nobody logs in for it: a few wrong PINs lock a device. */
function deviceFinding(file: string, kid: string): Finding {
  try {
    const device = readDeviceKey(file);
    const problem = deviceProblem(device);
    return problem === null
      ? good(w`key`, w`${kid}, in the token ${device.token}`)
      : fromProblem(w`key`, problem);
  } catch (cause) {
    if (cause instanceof ProblemError) return fromProblem(w`key`, cause.problem);
    throw cause;
  }
}

async function inScratch<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'plugmark-doctor-'));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
