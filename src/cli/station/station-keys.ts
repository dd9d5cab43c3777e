/** The key files of a station: its own keys and those of its technicians. */

import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type FileKey, newKey, readKeyFile, type StationKey, writeKeyFile } from '../../../db/keyfile.ts';
import { type PublicJwk, thumbprint } from '../../evidence/jwk.ts';
import type { StationState } from '../../evidence/station.ts';
import { makeFolder } from '../../files/output.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { askSecret, SECRETS } from '../terminal/secret.ts';
import { KEYS_FOLDER } from './station-log.ts';

/** The file of a key in a station's folder. */
export const keyPath = (folder: string, role: 'station' | 'technician', kid: string) =>
  join(folder, KEYS_FOLDER, `${role}.${kid}.pem`);

/** What says that a key of the station is in a device. */
export const devicePath = (folder: string, kid: string) =>
  join(folder, KEYS_FOLDER, `station.${kid}.device.json`);

/** Whether the station can sign with this key: its file is here, or one that names its device. */
export const isKeyHere = (folder: string, kid: string): boolean =>
  existsSync(keyPath(folder, 'station', kid)) || existsSync(devicePath(folder, kid));

/** Makes a key for the station in a device. */
export async function makeKeyInDevice(
  folder: string,
  place: { readonly module: string; readonly token: string },
): Promise<StationKey> {
  makeFolder(join(folder, KEYS_FOLDER), 0o700);
  const { makeDeviceKey, writeDeviceKey } = await import('../../../db/hardware-key.ts');
  const { key, device } = makeDeviceKey(place, await tokenPin(place.token));
  writeDeviceKey(devicePath(folder, key.kid), device);
  return key;
}

/** Each program asks once; a token wants its PIN of whoever uses it. */
async function tokenPin(token: string): Promise<string> {
  const pin = await askSecret('token', w`PIN of the token ${safeLine(token)}: `);
  if (pin !== null) return pin;
  throw new ProblemError({
    code: 'key-locked',
    where: token,
    message: w`the device with the key needs its PIN`,
    next: w`Type it, or put it into ${SECRETS.token}.`,
  });
}

async function keyInDevice(path: string, kid: string): Promise<StationKey> {
  const { openDeviceKey, readDeviceKey } = await import('../../../db/hardware-key.ts');
  const key = openDeviceKey(path, await tokenPin(readDeviceKey(path).token));
  if (key.kid === kid) return key;
  throw new ProblemError({
    code: 'key-form',
    where: path,
    message: w`the key in the device is not the one that the log names`,
    next: w`Plug in the device that this station was given.`,
  });
}

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
      message: w`the station's key is revoked and cannot sign`,
      next: w`Make a new one with "plugmark keys rotate --lost".`,
    });
  const device = devicePath(folder, kid);
  if (existsSync(device)) return keyInDevice(device, kid);
  if (!existsSync(path)) throw new ProblemError(keyMissing(path));
  return await unlocked(path, 'passphrase', w`Passphrase of the station's key: `);
}

/** The log names a key, and its file is not there. */
export const keyMissing = (where: string): Problem => ({
  code: 'key-missing',
  where,
  message: w`the file of the station key is missing`,
  next: w`Put it back from your copy of the folder keys; a backup of the log does not contain it. If there is no copy: "plugmark keys rotate --lost".`,
});

/** The technician's own key, if there is one and the PIN is given; null for one who does not sign. */
export async function technicianKey(
  folder: string,
  name: string,
  jwk: PublicJwk | null,
): Promise<StationKey | null> {
  if (jwk === null) return null;
  const path = keyPath(folder, 'technician', thumbprint(jwk));
  const pin = await askSecret('pin', w`${name}, your PIN to sign (Enter: do not sign): `);
  return pin === null ? null : orThrow(readKeyFile(path, pin));
}

/** A key from its file; its passphrase is asked for only where it has one. */
export async function unlocked(path: string, which: 'passphrase' | 'pin', prompt: string): Promise<FileKey> {
  const read = readKeyFile(path);
  if (read.ok || read.error.code !== 'key-locked') return orThrow(read);
  return orThrow(readKeyFile(path, await askSecret(which, prompt)));
}
