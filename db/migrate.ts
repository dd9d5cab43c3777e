/** Brings a station log to the form that this program writes: migrations/NNNN-name.sql in order, `user_version` as counter. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Database } from 'better-sqlite3';

/** The build copies this folder beside the compiled module. */
const FOLDER = new URL('./migrations/', import.meta.url);

export interface Migration {
  readonly version: number;
  readonly sql: string;
}

/** All migrations, numbered from 1 without a hole. */
export function readMigrations(): readonly Migration[] {
  const files = readdirSync(FOLDER)
    .filter((name) => /^\d+-.*\.sql$/.test(name))
    .sort();
  return files.map((name, i) => {
    if (Number.parseInt(name, 10) !== i + 1) throw new Error(`migration ${name} is not number ${i + 1}`);
    return { version: i + 1, sql: readMigration(name) };
  });
}

export function readMigration(name: string): string {
  return readFileSync(new URL(name, FOLDER), 'utf8');
}

/** The version of a database file; 0 for one that is still empty. */
export function versionOf(db: Database): number {
  return Number(db.pragma('user_version', { simple: true }));
}

/** Applies what is missing, all or nothing; asks for no lock when nothing is. */
export function migrate(db: Database, migrations: readonly Migration[]): void {
  if (versionOf(db) >= migrations.length) return;
  db.transaction(() => {
    // Read inside the transaction: another program may have migrated in the meantime.
    const from = versionOf(db);
    for (const { version, sql } of migrations.slice(from)) {
      db.exec(sql);
      db.pragma(`user_version = ${version}`);
    }
  }).immediate();
}
