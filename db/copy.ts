import { constants, existsSync } from 'node:fs';
import { chmod, copyFile } from 'node:fs/promises';
import { ProblemError } from '../src/problem.ts';
import { problemOf } from './problems.ts';
import { refuseDamagedWal } from './wal.ts';

/**
 * Copies a station log as it stands, so that it can be looked at without anything in its own folder being touched: even
 * a reader's connection leaves files beside a log. One that another program has open is copied page by page through
 * SQLite, which keeps the copy whole; where SQLite may make no files beside it, both of its files are copied. Problems as
 * of `openDatabase`.
 */
export async function copyLog(path: string, to: string): Promise<void> {
  refuseDamagedWal(path);
  if (!existsSync(`${path}-wal`)) return copyOwn(path, to);
  try {
    await copyThroughSqlite(path, to);
  } catch (cause) {
    const problem = problemOf(cause, path);
    if (!(problem instanceof ProblemError) || problem.problem.code !== 'log-path') throw problem;
    await copyOwn(path, to);
    await copyOwn(`${path}-wal`, `${to}-wal`);
  }
}

/** A copy that may be written, whatever the rights on the file. */
async function copyOwn(path: string, to: string): Promise<void> {
  await copyFile(path, to, constants.COPYFILE_EXCL);
  await chmod(to, 0o600);
}

async function copyThroughSqlite(path: string, to: string): Promise<void> {
  const { default: Sqlite } = await import('better-sqlite3');
  const db = new Sqlite(path, { readonly: true, fileMustExist: true });
  try {
    await db.backup(to);
  } finally {
    db.close();
  }
}
