/** Tables for look-up that were damaged while the log itself is whole: they are made again from the entries. */
import type { Database } from 'better-sqlite3';
import { ProblemError } from '../src/problem.ts';
import { HISTORY_TABLES, rebuildHistory } from './jobs.ts';
import { isSound, logIsSound } from './sound.ts';

/** What a damaged page leads to; `any`: also what cannot be in a table that nobody damaged. */
export function isOfHistory(cause: unknown, sign: 'corrupt' | 'any'): boolean {
  if (!(cause instanceof Error) || cause instanceof ProblemError) return false;
  const code = 'code' in cause ? String(cause.code) : '';
  if (code.startsWith('SQLITE_CORRUPT')) return true;
  return sign === 'any' && (code === '' || /^SQLITE_(CONSTRAINT|MISMATCH|ERROR)/.test(code));
}

/** False where it is the log that is damaged: nothing is done then. */
export function mendHistory(db: Database): boolean {
  if (!isSound(db)) {
    if (!logIsSound(db)) return false;
    leaveOut(db);
  }
  rebuildHistory(db);
  return true;
}

/**
 * Takes the tables out of the schema without going through their pages: a damaged page may point into the log, and dropping
 * the table would give pages of the log away. Writing the file anew leaves the old pages behind.
 */
function leaveOut(db: Database): void {
  db.unsafeMode(true);
  try {
    db.pragma('writable_schema = ON');
    const names = HISTORY_TABLES.map(() => '?').join(', ');
    db.prepare(`DELETE FROM sqlite_schema WHERE tbl_name IN (${names})`).run(...HISTORY_TABLES);
    db.pragma('writable_schema = RESET');
  } finally {
    db.unsafeMode(false);
  }
  db.exec('VACUUM');
}
