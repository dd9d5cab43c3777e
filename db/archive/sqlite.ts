/** An archive in one SQLite file, for a shop without a server of its own. */
import { chmodSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { ProblemError } from '../../src/problem.ts';
import { assertFull, PATIENCE_MS } from '../open.ts';
import { tablesFor } from './schema.ts';
import type { Query, Sql, Value } from './sql.ts';

/** `PLMA`, at offset 68 of the file. */
const APPLICATION_ID = 0x504c4d41;

const TYPES = { BYTES: 'BLOB', WHOLE: 'INTEGER', SMALL: 'INTEGER', AMOUNT: 'REAL' } as const;

export async function openSqlite(path: string): Promise<Sql> {
  const { default: Sqlite } = await import('better-sqlite3');
  const db = new Sqlite(path, { timeout: PATIENCE_MS });
  try {
    prepare(db, path);
  } catch (cause) {
    db.close();
    throw cause;
  }
  return sqlOf(db);
}

function prepare(db: Database, path: string): void {
  const id = db.pragma('application_id', { simple: true });
  const isNew = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0;
  if (!isNew && id !== APPLICATION_ID)
    throw new ProblemError({
      code: 'archive-data',
      where: path,
      message: 'this is not the file of an archive',
      next: 'Name the folder of the archive with --data.',
    });
  // Plates and names lie in it.
  chmodSync(path, 0o600);
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  // Where the disk has a write cache that fsync leaves alone (macOS).
  db.pragma('fullfsync = ON');
  db.pragma('trusted_schema = OFF');
  // What is deleted is overwritten: texts are forgotten here as well.
  db.pragma('secure_delete = ON');
  assertFull(db);
  if (!isNew) return;
  db.transaction(() => {
    for (const statement of tablesFor(TYPES))
      db.exec(statement.startsWith('CREATE TABLE') ? `${statement} STRICT` : statement);
    db.pragma(`application_id = ${APPLICATION_ID}`);
  }).immediate();
}

const LONGEST_KEPT = 4000;

function sqlOf(db: Database): Sql {
  const statements = new Map<string, ReturnType<Database['prepare']>>();
  const prepared = (text: string) => {
    const statement = statements.get(text) ?? db.prepare(text);
    // Those of many rows are as many as there are numbers of rows.
    if (text.length < LONGEST_KEPT) statements.set(text, statement);
    return statement;
  };
  const rowsOf = (text: string, values: readonly Value[]): readonly unknown[] => {
    const statement = prepared(text);
    if (statement.reader) return statement.all(...values);
    statement.run(...values);
    return [];
  };
  const query: Query = (text, ...values) => new Promise((resolve) => resolve(rowsOf(text, values)));
  /** One transaction after the other: there is one connection. */
  let before: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const mine = before.then(work, work);
    before = mine.catch(() => undefined);
    return mine;
  };
  return {
    forUpdate: '',
    transaction: (_tenant, work) => {
      const run = async () => {
        db.exec('BEGIN IMMEDIATE');
        try {
          const result = await work(query);
          db.exec('COMMIT');
          return result;
        } catch (cause) {
          if (db.inTransaction) db.exec('ROLLBACK');
          throw cause;
        }
      };
      return inTurn(run);
    },
    // The file beside it, too, has pages of before.
    sweep: () => inTurn(async () => void db.pragma('wal_checkpoint(TRUNCATE)')),
    close: async () => {
      await before;
      db.close();
    },
  };
}
