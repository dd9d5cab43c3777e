import { isUtf8 } from 'node:buffer';
import { createReadStream } from 'node:fs';
import { type Problem, problemFromZod } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { w } from '../../src/words/catalogue.ts';
import {
  type BluetoothProfile,
  isBluetooth,
  isSerial,
  type Profile,
  profileSchema,
  type SerialProfile,
} from './schema.ts';

/** No description of a device is longer. */
const MOST_BYTES = 1 << 16;

/** Reads and checks a profile; the problem names the file and the place in it. */
export async function readProfile(file: string): Promise<Result<Profile, Problem>> {
  let bytes: Buffer;
  try {
    bytes = await readSome(file);
  } catch (error) {
    return err(unreadable(file, error instanceof Error ? error.message : String(error)));
  }
  if (bytes.length > MOST_BYTES) return err(unreadable(file, w`it is longer than ${MOST_BYTES} bytes`));
  if (!isUtf8(bytes)) return err(unreadable(file, w`it is not UTF-8 text`));
  return parseProfile(bytes.toString('utf8'), file);
}

/** One byte more than a profile has at most: a device may have no end. */
async function readSome(file: string): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of createReadStream(file, { end: MOST_BYTES })) parts.push(Buffer.from(part));
  return Buffer.concat(parts);
}

/** `file` is only named in problems. */
export function parseProfile(text: string, file: string): Result<Profile, Problem> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return err(unreadable(file, error instanceof Error ? error.message : String(error)));
  }
  const parsed = profileSchema.safeParse(value);
  if (parsed.success) return ok(parsed.data);
  const next = w`Correct the place named; "plugmark manual profiles" describes every field.`;
  return err(problemFromZod(parsed.error, file, 'input-not-valid', next));
}

/** A profile of a Bluetooth tool, or why it is none. */
export const bluetoothProfile = (profile: Profile, file: string): Result<BluetoothProfile, Problem> =>
  isBluetooth(profile) ? ok(profile) : err(otherLink(profile, file, w`a Bluetooth tool`));

/** A profile of a tool on a serial port, or why it is none. */
export const serialProfile = (profile: Profile, file: string): Result<SerialProfile, Problem> =>
  isSerial(profile) ? ok(profile) : err(otherLink(profile, file, w`a tool on a serial port`));

function otherLink({ title, link }: Profile, where: string, wanted: string): Problem {
  return {
    code: 'profile-other-link',
    where: `${where}: link.kind`,
    message: w`the profile "${title}" describes a link "${link.kind}", not ${wanted}`,
    next: w`In the station file use "profile" for Bluetooth tools and "serial" for those on a serial port.`,
  };
}

function unreadable(file: string, reason: string): Problem {
  return {
    code: 'file-unreadable',
    where: file,
    message: w`the profile cannot be read: ${reason}`,
    next: w`Name a profile in JSON.`,
  };
}
