/** What lies in the folder of a package: plain files only, for a link could lead anywhere and a device has no end. */

import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { lstat, readdir, stat } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { progress } from '../cli/terminal/progress.ts';
import { readCheckpoint } from '../evidence/checkpoint.ts';
import { readBytes } from '../files/input.ts';
import { ProblemError } from '../problem.ts';
import type { ProblemCode } from '../problem-code.ts';
import { orThrow } from '../result.ts';
import { type PackageLog, stationIn } from './checks.ts';
import {
  PACKAGE_FILES,
  type PackageFile,
  type PackageIndex,
  readProofs,
  readStationEntries,
} from './format.ts';

/** No index, proof or list of the station's entries is larger. */
export const MAX_BYTES = 256 << 20;
/** No checkpoint or signature is larger. */
export const MAX_NOTE_BYTES = 10_000;

/** Reads one file of a package. Problems: `file-unreadable`, `file-too-large`. */
export type Read = (name: string, maxBytes: number) => Promise<Uint8Array>;

export function reader(folder: string): Read {
  return async (name, maxBytes) => {
    const file = join(folder, name);
    const found = await lstat(file).catch(() => null);
    if (found !== null && !found.isFile()) throw problem('file-unreadable', file, 'it is no plain file');
    if (found !== null && found.size > maxBytes)
      throw problem(
        'file-too-large',
        file,
        `it has ${found.size} bytes, and no such file has more than ${maxBytes}`,
      );
    return readBytes(file, 'package', maxBytes);
  };
}

function problem(code: ProblemCode, where: string, why: string): ProblemError {
  return new ProblemError({
    code,
    where,
    message: `this file of the package is not read: ${why}`,
    next: 'Ask for the package again.',
  });
}

/** Everything in the folder but the index and its signature; what is no plain file has no digest and is named as well. */
export async function filesIn(folder: string, { files }: PackageIndex): Promise<readonly PackageFile[]> {
  const sizes = new Map(files.map(({ path, bytes }) => [path, bytes]));
  const found: PackageFile[] = [];
  const bar = progress('files', files.length);
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (entry.isDirectory()) continue;
    const place = join(entry.parentPath, entry.name);
    const path = relative(folder, place).split(sep).join('/');
    if (path === PACKAGE_FILES.index || path === PACKAGE_FILES.signature) continue;
    const { size } = entry.isFile() ? await stat(place) : { size: 0 };
    // A file of another size was changed, and need not be read.
    const sha256 = entry.isFile() && sizes.get(path) === size ? await digestOf(place) : '';
    found.push({ path, bytes: size, sha256 });
    bar.at(Math.min(found.length, files.length));
  }
  bar.end();
  return found;
}

async function digestOf(file: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(file)) hash.update(chunk);
  return hash.digest('hex');
}

/** The log that the package says it stands in; a sentence where that cannot be read. */
export async function logIn(read: Read): Promise<PackageLog | string> {
  try {
    const note = Buffer.from(await read(PACKAGE_FILES.checkpoint, MAX_NOTE_BYTES)).toString('utf8');
    const checkpoint = orThrow(readCheckpoint(note, PACKAGE_FILES.checkpoint));
    const proofs = orThrow(readProofs(await read(PACKAGE_FILES.proofs, MAX_BYTES)));
    const entries = orThrow(readStationEntries(await read(PACKAGE_FILES.station, MAX_BYTES)));
    return { checkpoint, proofs, entries, station: stationIn(entries) };
  } catch (cause) {
    if (!(cause instanceof ProblemError)) throw cause;
    return `What it says of the log cannot be read: ${cause.message}.`;
  }
}
