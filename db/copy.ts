import { existsSync } from 'node:fs';
import { copyFile } from 'node:fs/promises';
import { problemOf } from './problems.ts';

/**
 * Copies a station log as it stands, so that it can be looked at without anything in its own folder being touched: even
 * a reader's connection leaves files beside a log. One that another program has open is copied page by page through
 * SQLite, which keeps the copy whole. Problems as of `openDatabase`.
 */
export async function copyLog(path: string, to: string): Promise<void> {
  if (!existsSync(`${path}-wal`)) return copyFile(path, to);
  const { default: Sqlite } = await import('better-sqlite3');
  try {
    const db = new Sqlite(path, { readonly: true, fileMustExist: true });
    try {
      await db.backup(to);
    } finally {
      db.close();
    }
  } catch (cause) {
    throw problemOf(cause, path);
  }
}
