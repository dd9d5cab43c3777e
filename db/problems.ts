import { closeSync, openSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileProblem } from '../src/files/file-problem.ts';
import { ProblemError } from '../src/problem.ts';
import type { ProblemCode } from '../src/problem-code.ts';
import { w } from '../src/words/catalogue.ts';

/** What there is to do about a damaged log. */
export const damagedNext = (): string =>
  w`Keep the file as it is. Restore a backup with "plugmark restore". If you have none, save what can be read with "plugmark recover".`;

/** Of a file that has the pages of a log, or lies where one was, and is none any more. */
export const notReadableAsLog = (): string =>
  w`this file cannot be read as a station log: its start is damaged, or it is another file`;

/** What SQLite's result codes mean to the person at the bench; by the beginning of the extended code. */
const MEANINGS: readonly (readonly [
  prefix: string,
  code: ProblemCode,
  message: () => string,
  next: () => string,
])[] = [
  [
    'SQLITE_BUSY',
    'log-busy',
    () => w`another program is writing to the station log`,
    () => w`Close the other program, then try again.`,
  ],
  [
    'SQLITE_LOCKED',
    'log-busy',
    () => w`another program is writing to the station log`,
    () => w`Close the other program, then try again.`,
  ],
  [
    'SQLITE_NOTADB',
    'log-not-a-log',
    () => w`this is not a station log`,
    () => w`Name the station log, or a new file.`,
  ],
  ['SQLITE_CORRUPT', 'log-damaged', () => w`the database file is damaged`, damagedNext],
  [
    'SQLITE_CANTOPEN',
    'log-path',
    () => w`the file cannot be opened`,
    () => w`Check that the folder exists and may be written to.`,
  ],
  [
    'SQLITE_READONLY',
    'log-path',
    () => w`the file cannot be written to`,
    () => w`Check the rights on the file and its folder.`,
  ],
  [
    'SQLITE_PERM',
    'log-path',
    () => w`the file cannot be written to`,
    () => w`Check the rights on the file and its folder.`,
  ],
  [
    'SQLITE_FULL',
    'log-disk',
    () => w`the disk is full`,
    () => w`Free some space and try again. The last step was not saved.`,
  ],
  // The file ends where a page should be.
  ['SQLITE_IOERR_SHORT_READ', 'log-damaged', () => w`the database file is damaged`, damagedNext],
  [
    'SQLITE_IOERR',
    'log-disk',
    () => w`the disk did not accept the data`,
    () => w`Check the disk. The last step was not saved.`,
  ],
];

/** The cause as a {@link ProblemError} where a person can do something about it, else the cause itself. */
export function problemOf(cause: unknown, path: string): unknown {
  if (!(cause instanceof Error)) return cause;
  const sqlite = 'code' in cause ? String(cause.code) : '';
  // better-sqlite3 throws a plain TypeError, without a code, for a folder that does not exist.
  const name = cause instanceof TypeError && /directory/.test(cause.message) ? 'SQLITE_CANTOPEN' : sqlite;
  const meaning = MEANINGS.find(([prefix]) => name.startsWith(prefix));
  if (meaning === undefined) return cause;
  const limit = name.startsWith('SQLITE_CANTOPEN') ? noMoreFiles(path) : null;
  if (limit !== null) return limit;
  const [, code, message, next] = meaning;
  return new ProblemError({ code, where: path, message: message(), next: next() }, { cause });
}

/** SQLite does not say that it was the number of open files that kept it from opening one more. */
function noMoreFiles(path: string): ProblemError | null {
  try {
    closeSync(openSync(dirname(path), 'r'));
    return null;
  } catch (cause) {
    const isLimit = cause instanceof Error && 'code' in cause && /^E[MN]FILE$/.test(String(cause.code));
    const problem = isLimit ? fileProblem(cause, path) : null;
    return problem === null ? null : new ProblemError(problem, { cause });
  }
}
