import type { Database } from 'better-sqlite3';
import { packingOf } from '../../db/packing.ts';

/** Gives SQL `plain(body, salt)`, so that a test can change a stored body as text, and `packed(text)` for the way back. */
export function withPlain(db: Database): Database {
  const { pack, unpack } = packingOf(db);
  db.function('plain', (body, salt) => unpack(body, salt)?.toString('utf8') ?? null);
  db.function('packed', (text) => pack(String(text)));
  return db;
}

/** What only somebody who means harm does: takes the rules out of the file that refuse every change. */
export function withoutRules(db: Database): Database {
  const triggers = db.prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'").pluck().all();
  for (const name of triggers) db.exec(`DROP TRIGGER "${String(name)}"`);
  db.pragma('ignore_check_constraints = ON');
  db.pragma('foreign_keys = OFF');
  return db;
}
