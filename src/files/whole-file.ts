/**
 * Files that appear whole or not at all, and are still there after a power cut. What is unfinished lies beside them under a
 * name that nobody can foresee and that was free: a link that was put there beforehand is never followed.
 */
import { randomBytes } from 'node:crypto';
import {
  closeSync,
  fchmodSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

export interface Rights {
  /** Exactly these, whatever the umask; without it the umask of the shop decides who may read the file. */
  readonly mode?: number;
}

/** A name for what is to become the file at `path`, in its folder. */
export const unfinishedName = (path: string): string =>
  join(dirname(path), `.plugmark-${randomBytes(9).toString('hex')}.part`);

/** Puts the content in the place of whatever file or link has that name. Throws what the file system throws. */
export function writeWholeFile(path: string, content: Uint8Array | string, rights: Rights = {}): void {
  preparedFile(path, content, rights).put();
}

/** A file that is on disk and has no name yet: what is left to do hardly fails. */
export interface Prepared {
  readonly put: () => void;
  readonly drop: () => void;
}

export function preparedFile(path: string, content: Uint8Array | string, rights: Rights = {}): Prepared {
  const part = unfinishedName(path);
  const drop = () => rmSync(part, { force: true });
  const orDrop = (work: () => void) => {
    try {
      work();
    } catch (cause) {
      drop();
      throw cause;
    }
  };
  orDrop(() => writeExclusive(part, content, rights));
  return { put: () => orDrop(() => putInPlace(part, path)), drop };
}

/** Writes a file under a name that is free, `EEXIST` else; one that could not be finished goes again. */
export function writeNewFile(path: string, content: Uint8Array | string, rights: Rights = {}): void {
  writeExclusive(path, content, rights);
  syncFolder(dirname(path));
}

/** Gives a finished file its name, for good. */
export function putInPlace(part: string, path: string): void {
  renameSync(part, path);
  syncFolder(dirname(path));
}

/** Brings a file that somebody else wrote to the disk. */
export function syncFile(path: string): void {
  const file = openSync(path, 'r');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** A name is on disk only with its folder. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  try {
    syncFile(folder);
  } catch (cause) {
    // File systems that know no such thing say so: there is nothing to be done about it.
    if (!(cause instanceof Error && 'code' in cause && cause.code === 'EINVAL')) throw cause;
  }
}

function writeExclusive(path: string, content: Uint8Array | string, { mode }: Rights): void {
  const file = openSync(path, 'wx', mode);
  try {
    if (mode !== undefined && process.platform !== 'win32') fchmodSync(file, mode);
    writeFileSync(file, content);
    fsyncSync(file);
  } catch (cause) {
    unlinkSync(path);
    throw cause;
  } finally {
    closeSync(file);
  }
}
