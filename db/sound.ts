/**
 * Whether a database file is as it was written. Opening may not take longer as the log grows, so a large file is looked at
 * where damage is likeliest; every entry is held against its hash again when it is read, and all of it by a check.
 */
import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { entryIn, entryTable } from './entries.ts';

/** Read whole in well under 100 ms. */
const WHOLE_UP_TO_BYTES = 16 << 20;
/** What a power cut in the middle of a write would have hit. */
const NEWEST = 100;

/**
 * What opening looks at: all of a small file; of a large one its tables and its newest entries. SQLite itself throws
 * where the end of the file is missing.
 */
export function looksSound(db: Database, path: string, wholeUpToBytes = WHOLE_UP_TO_BYTES): boolean {
  return mayBeDamaged(() => {
    return statSync(path).size <= wholeUpToBytes ? isSound(db) : newestAreSound(db);
  });
}

const PAGE_BYTES = 4096;
/** How many pages behind the first are looked at. */
const PAGES_LOOKED_AT = 16;
/** First byte of a page that holds a part of a table or an index (fileformat2.html, 1.6). */
const TREE_PAGE: ReadonlySet<number | undefined> = new Set([2, 5, 10, 13]);

/** Whether a file that SQLite does not take for a database has the pages of one: then its beginning is damaged. */
export function hasPages(path: string): boolean {
  const { size } = statSync(path);
  if (size % PAGE_BYTES !== 0) return false;
  const file = openSync(path, 'r');
  try {
    const bytes = Buffer.alloc(PAGES_LOOKED_AT * PAGE_BYTES);
    const read = readSync(file, bytes, 0, bytes.length, PAGE_BYTES);
    let count = 0;
    for (let at = 0; at < read; at += PAGE_BYTES) if (isTreePage(bytes, at)) count++;
    return count >= 2;
  } finally {
    closeSync(file);
  }
}

/** What its head says of its cells must fit into it. */
function isTreePage(bytes: Buffer, at: number): boolean {
  const cells = bytes.readUInt16BE(at + 3);
  const content = bytes.readUInt16BE(at + 5);
  return TREE_PAGE.has(bytes[at]) && content <= PAGE_BYTES && 8 + 2 * cells <= content;
}

/** Reads every page of the file. */
export function isSound(db: Database): boolean {
  return mayBeDamaged(() => db.pragma('quick_check(1)', { simple: true }) === 'ok');
}

const LOG_TABLES = [
  'sqlite_schema',
  'dictionaries',
  'streams',
  'entries',
  'disclosures',
  'subtrees',
  'checkpoints',
] as const;

/** The same of the tables of the log alone, whatever became of those for look-up. */
export function logIsSound(db: Database): boolean {
  return mayBeDamaged(() =>
    LOG_TABLES.every((table) => db.pragma(`quick_check('${table}')`, { simple: true }) === 'ok'),
  );
}

function newestAreSound(db: Database): boolean {
  const tables = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get();
  return (
    tables !== 0 &&
    entryTable(db)
      .newest(NEWEST)
      .every((stored) => entryIn(stored) !== null)
  );
}

/** A damaged page may also make the schema's own checks of an entry fail to run, which is an error without a name. */
function mayBeDamaged(look: () => boolean): boolean {
  try {
    return look();
  } catch (cause) {
    if (cause instanceof Error && 'code' in cause && /^SQLITE_(ERROR|CORRUPT)/.test(String(cause.code)))
      return false;
    throw cause;
  }
}
