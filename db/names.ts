/** Names for whoever types them: read beside a program that has the log open; nothing is written, renewed or waited for. */
import type { Database } from 'better-sqlite3';
import type { AnyEntry } from '../src/evidence/log.ts';

const MOST_JOBS = 300;
const WAIT_MS = 100;

/** Numbers of jobs, the latest first. */
export const jobNames = (path: string, which: 'all' | 'open'): Promise<readonly string[]> =>
  reading(path, (db) => {
    const where = which === 'open' ? "WHERE state = 'open'" : '';
    const rows = db.prepare(`SELECT job FROM jobs ${where} ORDER BY lastSeq DESC LIMIT ${MOST_JOBS}`).pluck();
    return rows.all().filter((job): job is string => typeof job === 'string');
  });

/** What happened to the station itself. */
export const stationEvents = async (path: string): Promise<readonly AnyEntry['event'][]> => {
  // Loaded late: numbers of jobs come without them.
  const { entryIn, entryTable } = await import('./entries.ts');
  const { STATION_STREAM } = await import('../src/evidence/log.ts');
  return reading(path, (db) =>
    entryTable(db)
      .ofStream(STATION_STREAM)
      .flatMap((stored) => entryIn(stored)?.event ?? []),
  );
};

async function reading<T>(path: string, work: (db: Database) => T): Promise<T> {
  const { default: Sqlite } = await import('better-sqlite3');
  const db = new Sqlite(path, { readonly: true, fileMustExist: true, timeout: WAIT_MS });
  try {
    return work(db);
  } finally {
    db.close();
  }
}
