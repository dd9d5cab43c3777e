/** Where a command puts what it makes. Asked for before the log goes on: an entry is not to stand for papers that cannot be written. */
import { accessSync, constants, existsSync, mkdirSync, mkdtempSync, rmdirSync, statSync } from 'node:fs';
import { open, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { ProblemError } from '../problem.ts';
import { fileProblem } from './file-problem.ts';

/**
 * Makes a folder, and those above it that are missing. Node's own `recursive` tries for ever where a file system takes no
 * folders and says that they are missing, as /proc does.
 */
export function makeFolder(folder: string, mode = 0o777): void {
  if (folder === '')
    throw new ProblemError({
      code: 'option-not-valid',
      where: '--out',
      message: 'the name of the folder is empty',
      next: 'Name a folder.',
    });
  withProblem(folder, () => {
    const missing: string[] = [];
    for (let at = folder; !existsSync(at) && dirname(at) !== at; at = dirname(at)) missing.unshift(at);
    for (const one of missing) makeOne(one, mode);
    if (!statSync(folder).isDirectory()) throw refused('ENOTDIR');
  });
}

/** Makes a folder where it is not there, and tries whether something can be put into it. */
export function outputFolder(folder: string): void {
  makeFolder(folder);
  withProblem(folder, () => rmdirSync(mkdtempSync(join(folder, '.plugmark-'))));
}

/** Looks whether a file can be written here; what is there already is left as it is. */
export function outputFile(file: string): void {
  withProblem(file, () => {
    const there = statSync(file, { throwIfNoEntry: false });
    if (there?.isDirectory() === true) throw refused('EISDIR');
    if (there !== undefined) accessSync(file, constants.W_OK);
    else rmdirSync(mkdtempSync(join(dirname(file), '.plugmark-')));
  });
}

/** Writes a file in its place, which may be a pipe or a device. */
export async function writeInPlace(path: string, content: Uint8Array | string): Promise<void> {
  await writeFile(path, content).catch((cause: unknown) => {
    throw asProblem(cause, path);
  });
}

/** Writes a file that is not there yet. Problem: `file-not-written`. */
export async function writeNew(path: string, bytes: Uint8Array): Promise<void> {
  try {
    const file = await open(path, 'wx');
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause)) throw cause;
    const message = cause.code === 'EEXIST' ? 'a file is there already' : 'the file cannot be written';
    throw new ProblemError(
      { code: 'file-not-written', where: path, message, next: 'Name another file with --out.' },
      { cause },
    );
  }
}

/** A reader never sees half a file: it appears under its name only once it is on disk. */
export async function writeWhole(path: string, content: Uint8Array | string): Promise<void> {
  const part = `${path}.part`;
  try {
    const file = await open(part, 'w');
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(part, path);
  } catch (cause) {
    await rm(part, { force: true }).catch(() => {});
    throw asProblem(cause, path);
  }
}

function makeOne(folder: string, mode: number): void {
  try {
    mkdirSync(folder, { mode });
  } catch (cause) {
    // Somebody else may have made it meanwhile.
    if (!existsSync(folder)) throw cause;
  }
}

function withProblem(where: string, work: () => void): void {
  try {
    work();
  } catch (cause) {
    throw asProblem(cause, where);
  }
}

function asProblem(cause: unknown, where: string): unknown {
  const problem = fileProblem(cause, where);
  return problem === null ? cause : new ProblemError(problem, { cause });
}

const refused = (code: 'EISDIR' | 'ENOTDIR') => Object.assign(new Error(code), { code, syscall: 'stat' });
