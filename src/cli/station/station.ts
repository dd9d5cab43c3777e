import { existsSync } from 'node:fs';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { newKey, readKeyFile, type StationKey, writeKeyFile } from '../../../db/keyfile.ts';
import { type Opening, openStationLog, type StationLogFile } from '../../../db/log.ts';
import { DAMAGED_NEXT, NOT_READABLE_AS_LOG } from '../../../db/problems.ts';
import { openLogToRead } from '../../../db/read-only.ts';
import { type PublicJwk, thumbprint } from '../../evidence/jwk.ts';
import type { Draft, Stamp } from '../../evidence/log.ts';
import { newsOf, type StationState, stationOf } from '../../evidence/station.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { parseTrustList, type TrustList } from '../../evidence/trust.ts';
import { makeFolder } from '../../files/output.ts';
import type { JobEvent } from '../../job/event.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { safeLine } from '../terminal/exit.ts';
import { progress } from '../terminal/progress.ts';
import { askSecret, SECRETS } from '../terminal/secret.ts';
import { KEYS_FOLDER, logPath, logThere, lostBehindNew, lostLog, TRUST_FILE } from './station-log.ts';

/** A station's folder: its log, its keys, and the list of them for those who verify. */
export interface StationFolder {
  readonly folder: string;
  readonly log: StationLogFile;
  readonly trustFile: string;
}

/** A station at work: it can sign. */
export interface Station extends StationFolder {
  readonly name: string;
  readonly key: StationKey;
}

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

/**
 * Opens the station in `folder`, or sets it up: log, key, and a trust list that holds the key, for those who are to
 * verify its records. Problems of the file system, the database and the key are thrown, and `log-missing` where what is
 * there tells of a log that is gone.
 */
export async function openStation(name: string, folder: string, stamp: () => Stamp): Promise<Station> {
  makeFolder(folder, 0o700);
  refuse(lostLog(folder));
  const path = logPath(folder);
  const log = await openStationLog(path, shown()).catch(inLogsPlace(path));
  try {
    if (log.size() === 0) refuse(lostBehindNew(folder));
    const stationFolder = { folder, log, trustFile: join(folder, TRUST_FILE) };
    const state = stationOf(log.stationEntries());
    const key = state === null ? await setUp(stationFolder, name, stamp()) : await currentKey(folder, state);
    return { ...stationFolder, name, key };
  } catch (cause) {
    log.close();
    throw cause;
  }
}

/**
 * Opens the log of a station that was set up before; its key is left alone. Where it may only be read, a copy answers, and
 * a line on the error output says so.
 */
export async function openStationFolder(folder: string): Promise<StationFolder> {
  const path = logThere(folder);
  const { log, copied } = await openLogToRead(path, shown()).catch(inLogsPlace(path));
  if (copied) process.stderr.write(`${safeLine(path)} may only be read from here; a copy of it answers.\n`);
  return { folder, log, trustFile: join(folder, TRUST_FILE) };
}

function refuse(problem: Problem | null): void {
  if (problem !== null) throw new ProblemError(problem);
}

/** Bars for what opening and asking a large log may take. */
const shown = (): Opening => ({ jobs: bar('jobs listed anew'), history: bar('jobs read for the history') });

function bar(what: string): (done: number, of: number) => void {
  let shown: ReturnType<typeof progress> | null = null;
  return (done, of) => {
    shown ??= progress(what, of);
    shown.at(done);
    if (done < of) return;
    shown.end();
    shown = null;
  };
}

/** At the station's own path a file that is no log was one. */
export const inLogsPlace = (path: string) => (cause: unknown) => {
  if (!(cause instanceof ProblemError) || cause.problem.code !== 'log-not-a-log') throw cause;
  const problem = { code: 'log-damaged', where: path, message: NOT_READABLE_AS_LOG, next: DAMAGED_NEXT };
  throw new ProblemError(problem, { cause });
};

/** The station as its log has it now. */
export function stateOf({ log, folder }: StationFolder): StationState {
  const state = stationOf(log.stationEntries());
  if (state !== null) return state;
  refuse(lostBehindNew(folder));
  throw new ProblemError({
    code: 'no-station',
    where: folder,
    message: 'this station was never set up',
    next: 'Open a job with it first.',
  });
}

/** Puts events into the station's stream and brings the trust list up to date. */
export async function recordStation(
  stationFolder: StationFolder,
  events: readonly StationEvent[],
  stamp: Stamp,
  by = 'station',
) {
  // A list that cannot be read is told before anything is written.
  const before = await readTrust(stationFolder.trustFile);
  stationFolder.log.appendStation(
    events.map((event) => ({ by, event })),
    stamp,
  );
  await writeTrust(stationFolder.trustFile, stateOf(stationFolder), before);
}

/** Brings the trust list up to what the log says. */
export async function renewTrust(stationFolder: StationFolder): Promise<void> {
  await writeTrust(stationFolder.trustFile, stateOf(stationFolder), await readTrust(stationFolder.trustFile));
}

/** Opens a job in the log, behind everything about people, instruments and figures that the log did not know yet. */
export async function openInLog(
  station: Station,
  drafts: readonly Draft[],
  stamp: Stamp,
): Promise<readonly JobEvent[]> {
  const opening = drafts[0]?.event;
  if (opening?.type !== 'job-opened') throw new Error('a job is opened by its opening');
  const { technician, specification, job } = opening.order;
  const { instruments } = opening;
  const news = newsOf(stateOf(station), { station: station.name, technician, instruments, specification });
  if (news.length > 0) await recordStation(station, news, stamp);
  return station.log.append(`job:${job}`, drafts, stamp).map(({ event }) => event);
}

/** The file of a key in a station's folder. */
export const keyPath = (folder: string, role: 'station' | 'technician', kid: string) =>
  join(folder, KEYS_FOLDER, `${role}.${kid}.pem`);

/** Makes a key in the station's folder. */
export function makeKey(
  folder: string,
  role: 'station' | 'technician',
  passphrase: string | null,
): StationKey {
  makeFolder(join(folder, KEYS_FOLDER), 0o700);
  const key = newKey();
  orThrow(writeKeyFile(keyPath(folder, role, key.kid), key, passphrase));
  return key;
}

/** The key that signs for the station now; asks for its passphrase where it has one. */
export async function currentKey(folder: string, state: StationState): Promise<StationKey> {
  const kid = state.keys.at(-1)?.kid ?? '';
  const path = keyPath(folder, 'station', kid);
  if (state.revoked.has(kid))
    throw new ProblemError({
      code: 'key-revoked',
      where: path,
      message: "the station's key was revoked, so it signs nothing any more",
      next: 'Make a new one with "plugmark keys rotate --lost".',
    });
  if (!existsSync(path)) throw new ProblemError(keyMissing(path));
  return await unlocked(path, 'passphrase', "Passphrase of the station's key: ");
}

/** The log names a key, and its file is not there. */
export const keyMissing = (where: string): Problem => ({
  code: 'key-missing',
  where,
  message: "the log names this key as the station's, and its file is missing",
  next: 'Put it there from your copy of the folder keys; a backup of the log does not hold it. Only where no copy is left: "plugmark keys rotate --lost".',
});

/** The technician's own key, if there is one and the PIN is given; null for one who does not sign. */
export async function technicianKey(
  folder: string,
  name: string,
  jwk: PublicJwk | null,
): Promise<StationKey | null> {
  if (jwk === null) return null;
  const path = keyPath(folder, 'technician', thumbprint(jwk));
  const pin = await askSecret('pin', `${name}, your PIN to sign (Enter: do not sign): `);
  return pin === null ? null : orThrow(readKeyFile(path, pin));
}

/** A key from its file; its passphrase is asked for only where it has one. */
export async function unlocked(
  path: string,
  which: 'passphrase' | 'pin',
  prompt: string,
): Promise<StationKey> {
  const read = readKeyFile(path);
  if (read.ok || read.error.code !== 'key-locked') return orThrow(read);
  return orThrow(readKeyFile(path, await askSecret(which, prompt)));
}

/** Reads a trust list; a file that is not there trusts nobody. */
export async function readTrust(file: string): Promise<TrustList> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (cause) {
    if (isMissing(cause)) return { keys: [] };
    throw new ProblemError(
      {
        code: 'trust-list',
        where: file,
        message: 'the trust list cannot be read',
        next: 'Check the path and the rights on it.',
      },
      { cause },
    );
  }
  return orThrow(parseTrustList(bytes, file));
}

async function setUp(stationFolder: StationFolder, name: string, stamp: Stamp): Promise<StationKey> {
  const passphrase = process.env[SECRETS.passphrase] || null;
  const key = makeKey(stationFolder.folder, 'station', passphrase);
  await recordStation(stationFolder, [{ type: 'station-set-up', station: name, key: key.jwk }], stamp);
  return key;
}

/**
 * The keys of the station as a trust list: what the log says of each, and every other key that the list had before. A
 * revocation stays, though a log that was restored may not know of it.
 */
async function writeTrust(file: string, state: StationState, before: TrustList): Promise<void> {
  const common = { use: 'sig', alg: 'Ed25519' };
  const revoked = (kid: string) => {
    const found = state.revoked.get(kid) ?? before.keys.find((key) => key.kid === kid)?.revoked;
    return found === undefined ? {} : { revoked: { from: found.from, reason: found.reason } };
  };
  const keys = state.keys.map(({ kid, jwk, since }, i) => {
    const next = state.keys[i + 1];
    const until = next === undefined ? {} : { validUntil: next.since };
    return {
      ...jwk,
      kid,
      ...common,
      name: state.name,
      role: 'station',
      validFrom: since,
      ...until,
      ...revoked(kid),
    };
  });
  const others = before.keys.filter(({ kid }) => keys.every((key) => key.kid !== kid));
  await writeFile(`${file}.part`, `${JSON.stringify({ keys: [...keys, ...others] }, null, 2)}\n`);
  await rename(`${file}.part`, file);
}

const isMissing = (cause: unknown) => cause instanceof Error && 'code' in cause && cause.code === 'ENOENT';
