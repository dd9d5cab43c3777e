/** Where a station's log lies, and what tells that one was there which is gone. */

import { existsSync, readdirSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { type Problem, ProblemError } from '../../problem.ts';
import { phrases, w } from '../../words/catalogue.ts';

const LOG_FILE = 'station.db';
export const TRUST_FILE = 'trusted-keys.json';
export const KEYS_FOLDER = 'keys';
/** The checkpoint that the station signed last, outside the database. */
export const LAST_CHECKPOINT = 'last.checkpoint';
/** The newest checkpoint that witnesses cosigned, with their lines. */
export const COSIGNED_CHECKPOINT = 'cosigned.checkpoint';

/** Where a station keeps its data that names no folder: below the XDG data directory, under its own name. */
export function usualFolder(station: string): string {
  const home = process.env['XDG_DATA_HOME'] || join(homedir(), '.local', 'share');
  return join(
    home,
    'plugmark',
    station
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'station',
  );
}

export const logPath = (folder: string) => join(folder, LOG_FILE);

/** The log of a station that was set up before. Problems: `log-missing`, `no-station`. */
export function logThere(folder: string): string {
  const path = logPath(folder);
  const lost = lostLog(folder);
  if (lost !== null) throw new ProblemError(lost);
  if (!existsSync(path))
    throw new ProblemError({
      code: 'no-station',
      where: folder,
      message: w`there is no station log in this folder yet`,
      next: w`It begins with "plugmark setup" or the first job. Another station is named with --station, or by its folder with --data.`,
    });
  return path;
}

/**
 * A folder that holds what only a station with a log has, and no log or an empty one: a new log would take the name of the
 * old one, and its key the place of the old keys. Null for any other folder.
 */
export function lostLog(folder: string): Problem | null {
  const path = logPath(folder);
  const size = statSync(path, { throwIfNoEntry: false })?.size ?? null;
  // To SQLite a file of no or one byte is a new database.
  if (size !== null && size > 1) return null;
  const left = leftOf(folder);
  return left.length === 0 ? null : missing(path, size === null ? 'missing' : 'empty', left);
}

/** The same where a log is there that was begun and holds nothing: a beginning that was cut off leaves its files, and keys. */
export function lostBehindNew(folder: string): Problem | null {
  const left = leftOf(folder).filter((one) => one !== 'keys' && one !== 'newest');
  return left.length === 0 ? null : missing(logPath(folder), 'empty', left);
}

function missing(where: string, how: 'missing' | 'empty', left: readonly Left[]): Problem {
  const named = left.map((one) => LEFT[one]).join(', ');
  return {
    code: 'log-missing',
    where,
    message:
      how === 'missing'
        ? w`the log of this station is missing (${named} are still here)`
        : w`the log of this station is empty (${named} are still here)`,
    next: w`Restore a backup with "plugmark restore", or rebuild from exported records with "plugmark recover". To start a new log on purpose, name another folder.`,
  };
}

const LEFT = phrases({
  keys: 'keys',
  trust: 'a trust list',
  checkpoint: 'a checkpoint',
  certificates: 'certificates',
  bonds: 'Bluetooth bonds',
  setAside: 'a log that was set aside',
  newest: "the log's newest entries",
});
type Left = keyof typeof LEFT;

/** What is made only once a log is there. */
function leftOf(folder: string): readonly Left[] {
  const names = namesIn(folder);
  const signs: readonly (readonly [what: Left, isLeft: boolean])[] = [
    ['keys', namesIn(join(folder, KEYS_FOLDER)).some((name) => name.endsWith('.pem'))],
    ['trust', names.includes(TRUST_FILE)],
    ['checkpoint', names.includes(LAST_CHECKPOINT)],
    ['certificates', namesIn(join(folder, 'certificates')).length > 0],
    ['bonds', names.includes('bluetooth-bonds.json')],
    ['setAside', names.some((name) => name.startsWith(`${LOG_FILE}.before-`))],
    ['newest', (statSync(`${logPath(folder)}-wal`, { throwIfNoEntry: false })?.size ?? 0) > 0],
  ];
  return signs.flatMap(([what, isLeft]) => (isLeft ? [what] : []));
}

/** Thumbprints of the station keys whose files are here. */
export const stationKeysIn = (folder: string): readonly string[] =>
  namesIn(join(folder, KEYS_FOLDER)).flatMap((name) => /^station\.([\w-]{43})\.pem$/.exec(name)?.[1] ?? []);

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return []; // Not there, or no folder.
  }
}
