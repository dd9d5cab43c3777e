import { existsSync, mkdirSync } from 'node:fs';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { newKey, readKeyFile, type StationKey, writeKeyFile } from '../../db/keyfile.ts';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import { type PublicJwk, thumbprint } from '../evidence/jwk.ts';
import type { Draft, Stamp } from '../evidence/log.ts';
import { newsOf, type StationState, stationOf } from '../evidence/station.ts';
import type { StationEvent } from '../evidence/station-event.ts';
import { parseTrustList, type TrustList } from '../evidence/trust.ts';
import type { JobEvent } from '../job/event.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';
import { askSecret, SECRETS } from './secret.ts';

/** A station's folder: its log, its keys, and the list of them for those who verify. */
export interface Archive {
  readonly folder: string;
  readonly log: StationLogFile;
  readonly trustFile: string;
}

/** A station at work: it can sign. */
export interface Station extends Archive {
  readonly name: string;
  readonly key: StationKey;
}

export const TRUST_FILE = 'trusted-keys.json';

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
 * verify its records. Problems of the file system, the database and the key are thrown.
 */
export async function openStation(name: string, folder: string, stamp: () => Stamp): Promise<Station> {
  makeFolder(folder);
  const log = await openStationLog(join(folder, 'station.db'));
  try {
    const archive = { folder, log, trustFile: join(folder, TRUST_FILE) };
    const state = stationOf(log.stationEntries());
    const key = state === null ? await setUp(archive, name, stamp()) : await currentKey(folder, state);
    return { ...archive, name, key };
  } catch (cause) {
    log.close();
    throw cause;
  }
}

/** Opens the log of a station that was set up before; its key is left alone. */
export async function openArchive(folder: string): Promise<Archive> {
  const path = join(folder, 'station.db');
  if (!existsSync(path))
    throw new ProblemError({
      code: 'no-station',
      where: folder,
      message: 'there is no station log in this folder',
      next: 'Name the station file with --station, or the folder of its data with --data.',
    });
  return { folder, log: await openStationLog(path), trustFile: join(folder, TRUST_FILE) };
}

/** The station as its log has it now. */
export function stateOf({ log, folder }: Archive): StationState {
  const state = stationOf(log.stationEntries());
  if (state !== null) return state;
  throw new ProblemError({
    code: 'no-station',
    where: folder,
    message: 'this station was never set up',
    next: 'Open a job with it first.',
  });
}

/** Puts events into the station's stream and brings the trust list up to date. */
export async function recordStation(
  archive: Archive,
  events: readonly StationEvent[],
  stamp: Stamp,
  by = 'station',
) {
  archive.log.appendStation(
    events.map((event) => ({ by, event })),
    stamp,
  );
  await writeTrust(archive.trustFile, stateOf(archive));
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
  join(folder, 'keys', `${role}.${kid}.pem`);

/** Makes a key in the station's folder. */
export function makeKey(
  folder: string,
  role: 'station' | 'technician',
  passphrase: string | null,
): StationKey {
  makeFolder(join(folder, 'keys'));
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
  return await unlocked(path, 'passphrase', "Passphrase of the station's key: ");
}

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

async function setUp(archive: Archive, name: string, stamp: Stamp): Promise<StationKey> {
  const passphrase = process.env[SECRETS.passphrase] || null;
  const key = makeKey(archive.folder, 'station', passphrase);
  await recordStation(archive, [{ type: 'station-set-up', station: name, key: key.jwk }], stamp);
  return key;
}

function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch (cause) {
    throw new ProblemError(
      {
        code: 'station-folder',
        where: folder,
        message: 'the folder cannot be made',
        next: 'Name a folder that you may write to.',
      },
      { cause },
    );
  }
}

/** The keys of the station and of its people as a trust list; a projection of the log, written anew with every change. */
async function writeTrust(file: string, state: StationState): Promise<void> {
  const common = { use: 'sig', alg: 'EdDSA' };
  const revoked = (kid: string) => {
    const found = state.revoked.get(kid);
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
  await writeFile(`${file}.part`, `${JSON.stringify({ keys }, null, 2)}\n`);
  await rename(`${file}.part`, file);
}

const isMissing = (cause: unknown) => cause instanceof Error && 'code' in cause && cause.code === 'ENOENT';
