/** The key files of a station: its own keys and those of its technicians. */
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { newKey, readKeyFile, type StationKey, writeKeyFile } from '../../../db/keyfile.ts';
import { type PublicJwk, thumbprint } from '../../evidence/jwk.ts';
import type { StationState } from '../../evidence/station.ts';
import { makeFolder } from '../../files/output.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { askSecret } from '../terminal/secret.ts';
import { KEYS_FOLDER } from './station-log.ts';

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

/** What is done with new keys comes about, or their files go again. */
export async function orNoKeys<T>(folder: string, work: () => Promise<T>): Promise<T> {
  const before = keyFiles(folder);
  try {
    return await work();
  } catch (cause) {
    for (const file of keyFiles(folder)) if (!before.includes(file)) rmSync(file, { force: true });
    throw cause;
  }
}

function keyFiles(folder: string): readonly string[] {
  const keys = join(folder, KEYS_FOLDER);
  return existsSync(keys) ? readdirSync(keys).map((name) => join(keys, name)) : [];
}

/** The key that signs for the station now; asks for its passphrase where it has one. */
export async function currentKey(folder: string, state: StationState): Promise<StationKey> {
  const kid = state.keys.at(-1)?.kid ?? '';
  const path = keyPath(folder, 'station', kid);
  if (state.revoked.has(kid))
    throw new ProblemError({
      code: 'key-revoked',
      where: path,
      message: "the station's key is revoked and cannot sign",
      next: 'Make a new one with "plugmark keys rotate --lost".',
    });
  if (!existsSync(path)) throw new ProblemError(keyMissing(path));
  return await unlocked(path, 'passphrase', "Passphrase of the station's key: ");
}

/** The log names a key, and its file is not there. */
export const keyMissing = (where: string): Problem => ({
  code: 'key-missing',
  where,
  message: 'the file of the station key is missing',
  next: 'Put it back from your copy of the folder keys; a backup of the log does not contain it. If there is no copy: "plugmark keys rotate --lost".',
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
