/** Where a command puts what it makes. Asked for before the log goes on: an entry is not to stand for papers that cannot be written. */

import {
  accessSync,
  constants,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  rmdirSync,
  statSync,
} from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { ProblemError } from '../problem.ts';
import { w } from '../words/catalogue.ts';
import { fileProblem } from './file-problem.ts';
import { type Prepared, preparedFile, type Rights, writeNewFile, writeWholeFile } from './whole-file.ts';

/**
 * Makes a folder, and those above it that are missing. Node's own `recursive` tries for ever where a file system takes no
 * folders and says that they are missing, as /proc does.
 */
export function makeFolder(folder: string, mode = 0o777): void {
  if (folder === '')
    throw new ProblemError({
      code: 'option-not-valid',
      where: '--out',
      message: w`the name of the folder is empty`,
      next: w`Name a folder.`,
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

/** Links that every system has, and that lead to what the program was started with. */
const STANDARD_OUTPUT: ReadonlySet<string> = new Set(['/dev/stdout', '/dev/fd/1', '/proc/self/fd/1']);

/**
 * Writes a file whole; a pipe or a device is written into. A link is followed only to those: behind any other may lie a
 * file that somebody else wants to see overwritten.
 */
export async function writeInPlace(path: string, content: Uint8Array | string): Promise<void> {
  const file = lstatSync(path, { throwIfNoEntry: false });
  const target = file?.isSymbolicLink() === true ? statSync(path, { throwIfNoEntry: false }) : file;
  const flows = target !== undefined && !target.isFile() && !target.isDirectory();
  if (flows || STANDARD_OUTPUT.has(path))
    await writeFile(path, content).catch((cause: unknown) => {
      throw asProblem(cause, path);
    });
  else if (file?.isSymbolicLink() === true)
    throw new ProblemError({
      code: 'file-not-written',
      where: path,
      message: w`this is a link, and no file is written through a link`,
      next: w`Name the file itself, or a new one.`,
    });
  else withProblem(path, () => writeWholeFile(path, content));
}

/** Writes a file that is not there yet. Problem: `file-not-written`. */
export function writeNew(path: string, bytes: Uint8Array | string): void {
  try {
    writeNewFile(path, bytes);
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause)) throw cause;
    const message = cause.code === 'EEXIST' ? w`a file is there already` : w`the file cannot be written`;
    throw new ProblemError(
      { code: 'file-not-written', where: path, message, next: w`Name another file with --out.` },
      { cause },
    );
  }
}

/** {@link preparedFile} with a Problem where the file system refuses it. */
export const prepared = (path: string, content: Uint8Array | string, rights?: Rights): Prepared =>
  withProblem(path, () => preparedFile(path, content, rights));

/** {@link writeWholeFile} with a Problem where the file system refuses it. */
export function writeWhole(path: string, content: Uint8Array | string, rights?: Rights): void {
  withProblem(path, () => writeWholeFile(path, content, rights));
}

function makeOne(folder: string, mode: number): void {
  try {
    mkdirSync(folder, { mode });
  } catch (cause) {
    // Somebody else may have made it meanwhile.
    if (!existsSync(folder)) throw cause;
  }
}

function withProblem<T>(where: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    throw asProblem(cause, where);
  }
}

function asProblem(cause: unknown, where: string): unknown {
  const problem = fileProblem(cause, where);
  return problem === null ? cause : new ProblemError(problem, { cause });
}

const refused = (code: 'EISDIR' | 'ENOTDIR') => Object.assign(new Error(code), { code, syscall: 'stat' });
