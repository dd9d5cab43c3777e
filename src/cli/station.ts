import { mkdirSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { makeKeyFile, readKeyFile, type StationKey } from '../../db/keyfile.ts';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import { parseTrustList, type TrustList } from '../evidence/trust.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';

/** A station at work: its log, its key, and the folder that its papers go to. */
export interface Station {
  readonly name: string;
  readonly folder: string;
  readonly log: StationLogFile;
  readonly key: StationKey;
  readonly trustFile: string;
}

export const TRUST_FILE = 'trusted-keys.json';

/**
 * Opens the station in `folder`, or sets it up: log, key, and a trust list that holds the key, for those who are to
 * verify its records. Problems of the file system and of the database are thrown.
 */
export async function openStation(name: string, folder: string): Promise<Station> {
  makeFolder(folder);
  const log = await openStationLog(join(folder, 'station.db'));
  const key = stationKey(join(folder, 'station-key.pem'));
  const trustFile = join(folder, TRUST_FILE);
  await offerTrust(trustFile, name, key);
  return { name, folder, log, key, trustFile };
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

function stationKey(path: string): StationKey {
  const made = makeKeyFile(path);
  return orThrow(made.ok || made.error.code !== 'key-exists' ? made : readKeyFile(path));
}

async function offerTrust(file: string, name: string, { jwk, kid }: StationKey): Promise<void> {
  const list = { keys: [{ ...jwk, kid, use: 'sig', alg: 'EdDSA', name, role: 'station' }] };
  try {
    await writeFile(file, `${JSON.stringify(list, null, 2)}\n`, { flag: 'wx' });
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause && cause.code === 'EEXIST')) throw cause;
  }
}

const isMissing = (cause: unknown) => cause instanceof Error && 'code' in cause && cause.code === 'ENOENT';
