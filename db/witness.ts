/**
 * What a witness keeps (c2sp.org/tlog-witness): the newest checkpoint that it cosigned of each log. That it goes on from the
 * one before is looked at and written in one transaction, and it is on disk before anybody is told.
 */

import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import type { Deciding } from '../src/evidence/witness.ts';
import { ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';
import { assertFull, PATIENCE_MS } from './open.ts';

/** `PLMW`, at offset 68 of the file. */
const APPLICATION_ID = 0x504c4d57;
const VERSION = 2;
/** Proofs of a fork that are kept of a log: one is enough, and whoever has its key could send any number. */
const MOST_FORKS = 100;

const SCHEMA = `
  -- Who this witness is: the name under which it signs, and the thumbprint of its key.
  CREATE TABLE witness (one INTEGER PRIMARY KEY CHECK (one = 1), name TEXT NOT NULL, kid TEXT NOT NULL) STRICT;
  -- The verifier keys of the logs that it knows. A retired one stays, so that it cannot come back.
  CREATE TABLE logs (origin TEXT NOT NULL, vkey TEXT NOT NULL, added TEXT NOT NULL, retired TEXT,
    PRIMARY KEY (origin, vkey)) STRICT;
  CREATE UNIQUE INDEX one_key_signs ON logs (origin) WHERE retired IS NULL;
  -- The newest checkpoint that it cosigned of each log, with its cosignatures.
  CREATE TABLE newest (
    origin TEXT PRIMARY KEY,
    hash   TEXT NOT NULL UNIQUE,
    size   INTEGER NOT NULL,
    root   BLOB NOT NULL CHECK (length(root) = 32),
    note   TEXT NOT NULL,
    at     TEXT NOT NULL
  ) STRICT;
  -- Two checkpoints of one size that a log signed: they prove that it has two histories.
  CREATE TABLE forks (origin TEXT NOT NULL, cosigned TEXT NOT NULL, offered TEXT NOT NULL, at TEXT NOT NULL,
    PRIMARY KEY (origin, offered)) STRICT;
`;

const newestSchema = z.strictObject({
  origin: z.string(),
  size: z.int().nonnegative(),
  root: z.instanceof(Uint8Array),
  note: z.string(),
});
const rowSchema = z.strictObject({
  origin: z.string(),
  vkey: z.string(),
  keyAdded: z.string(),
  keysRetired: z.int().nonnegative(),
  size: z.int().nonnegative().nullable(),
  at: z.string().nullable(),
  forks: z.int().nonnegative(),
});
/** A log that the witness knows, with the one key that signs it now; `size` and `at` are null where it cosigned nothing of it. */
export type WitnessedLog = z.infer<typeof rowSchema>;
const identitySchema = z.strictObject({ name: z.string(), kid: z.string() });
export type WitnessIdentity = z.infer<typeof identitySchema>;

/** `new-key`: the key of before is retired. `retired`: nothing was added, for a newer key took the place of this one. */
export type LogAdded = 'new-log' | 'new-key' | 'there' | 'retired';

export interface WitnessFile {
  identity(): WitnessIdentity;
  /** From now on only this key signs the log; `at` is the time of now (ISO). */
  addLog(log: { readonly origin: string; readonly vkey: string; readonly at: string }): LogAdded;
  /** The one key that signs the log now; null for a log that the witness does not know. */
  verifierKey(origin: string): string | null;
  logs(): readonly WitnessedLog[];
  /** By the SHA-256 of the origin, in hex; null where no checkpoint of that log was cosigned. */
  noteOf(originHash: string): string | null;
  /** Decides on the newest checkpoint of each log, one after the other, while nobody else writes; on disk when it returns. */
  advance<T>(all: readonly Deciding<T>[]): readonly T[];
  close(): void;
}

/** Makes the file of a new witness. Problems: `file-exists`, `witness-data`. */
export async function createWitnessFile(path: string, { name, kid }: WitnessIdentity): Promise<void> {
  refuseSecond(path);
  const db = await opened(path, false);
  try {
    db.transaction(() => {
      db.exec(SCHEMA);
      db.pragma(`application_id = ${APPLICATION_ID}`);
      db.pragma(`user_version = ${VERSION}`);
      db.prepare('INSERT INTO witness VALUES (1, ?, ?)').run(name, kid);
    }).immediate();
  } finally {
    db.close();
  }
}

/** Problem: `file-exists`. */
export function refuseSecond(path: string): void {
  if (existsSync(path))
    throw new ProblemError({
      code: 'file-exists',
      where: path,
      message: w`a witness is here already`,
      next: w`Use it, or name another folder with --data.`,
    });
}

/** Opens the file of a witness. Problems: `no-witness`, `witness-data`. */
export async function openWitnessFile(path: string): Promise<WitnessFile> {
  if (!existsSync(path))
    throw new ProblemError({
      code: 'no-witness',
      where: path,
      message: w`there is no witness here`,
      next: w`Make one with "plugmark witness init", or name its folder with --data.`,
    });
  const db = await opened(path, true);
  try {
    return witnessFile(db, path);
  } catch (cause) {
    db.close();
    throw asProblem(cause, path);
  }
}

async function opened(path: string, isThere: boolean): Promise<Database> {
  const { default: Sqlite } = await import('better-sqlite3');
  let db: Database | undefined;
  try {
    db = new Sqlite(path, { timeout: PATIENCE_MS, fileMustExist: isThere });
    if (isThere && db.pragma('application_id', { simple: true }) !== APPLICATION_ID)
      throw new ProblemError({
        code: 'witness-data',
        where: path,
        message: w`this is not the file of a witness`,
        next: w`Name the folder of the witness with --data.`,
      });
    if (isThere && db.pragma('user_version', { simple: true }) !== VERSION)
      throw new ProblemError({
        code: 'witness-data',
        where: path,
        message: w`another version of the program made the file of this witness`,
        next: w`Use that version, or make a new witness in another folder.`,
      });
    db.pragma('journal_mode = WAL');
    db.pragma('synchronous = FULL');
    // Where the disk has a write cache that fsync leaves alone (macOS).
    db.pragma('fullfsync = ON');
    db.pragma('trusted_schema = OFF');
    assertFull(db);
    return db;
  } catch (cause) {
    db?.close();
    throw asProblem(cause, path);
  }
}

function witnessFile(db: Database, path: string): WitnessFile {
  const identity = db.prepare('SELECT name, kid FROM witness');
  const putKey = db.prepare('INSERT INTO logs (origin, vkey, added) VALUES (?, ?, ?)');
  const retireKey = db.prepare('UPDATE logs SET retired = ? WHERE origin = ? AND retired IS NULL');
  const isRetired = db.prepare('SELECT retired IS NOT NULL FROM logs WHERE origin = ? AND vkey = ?').pluck();
  const keyNow = db.prepare('SELECT vkey FROM logs WHERE origin = ? AND retired IS NULL').pluck();
  const newest = db.prepare('SELECT origin, size, root, note FROM newest WHERE origin = ?');
  const noteOf = db.prepare('SELECT note FROM newest WHERE hash = ?').pluck();
  const logs = db.prepare(
    `SELECT l.origin, l.vkey, l.added AS keyAdded, n.size, n.at,
       (SELECT count(*) FROM logs o WHERE o.origin = l.origin AND o.retired IS NOT NULL) AS keysRetired,
       (SELECT count(*) FROM forks f WHERE f.origin = l.origin) AS forks
     FROM logs l LEFT JOIN newest n ON n.origin = l.origin WHERE l.retired IS NULL ORDER BY l.origin`,
  );
  const put = db.prepare(
    `INSERT INTO newest (origin, hash, size, root, note, at) VALUES (?, ?, ?, ?, ?, ?)
     ON CONFLICT (origin) DO UPDATE SET size = excluded.size, root = excluded.root, note = excluded.note, at = excluded.at`,
  );
  const putFork = db.prepare(
    `INSERT INTO forks (origin, cosigned, offered, at) SELECT ?, ?, ?, ?
     WHERE (SELECT count(*) FROM forks WHERE origin = ?) < ${MOST_FORKS} ON CONFLICT DO NOTHING`,
  );
  const withProblems = <T>(work: () => T): T => {
    try {
      return work();
    } catch (cause) {
      throw asProblem(cause, path);
    }
  };
  const advance = <T>({ origin, decide }: Deciding<T>): T => {
    const row = newest.get(origin);
    const last = row === undefined ? null : newestSchema.parse(row);
    const { answer, keep } = decide(last === null ? null : { ...last, root: Buffer.from(last.root) });
    if (keep?.as === 'newest') {
      const { size, root } = keep.checkpoint;
      put.run(origin, originHash(origin), size, root, keep.note, keep.at);
    } else if (keep?.as === 'fork') {
      putFork.run(origin, last?.note ?? '', keep.note, keep.at, origin);
    }
    return answer;
  };
  const addLog = ({ origin, vkey, at }: Parameters<WitnessFile['addLog']>[0]): LogAdded => {
    const retired = isRetired.get(origin, vkey);
    if (retired !== undefined) return retired === 1 ? 'retired' : 'there';
    const { changes } = retireKey.run(at, origin);
    putKey.run(origin, vkey, at);
    return changes > 0 ? 'new-key' : 'new-log';
  };
  return {
    identity: () => withProblems(() => identitySchema.parse(identity.get())),
    addLog: (log) => withProblems(() => atOnce(db, () => addLog(log))),
    verifierKey: (origin) => withProblems(() => z.string().optional().parse(keyNow.get(origin)) ?? null),
    logs: () => withProblems(() => z.array(rowSchema).parse(logs.all())),
    noteOf: (hash) => withProblems(() => z.string().optional().parse(noteOf.get(hash)) ?? null),
    advance: (all) => withProblems(() => atOnce(db, () => all.map(advance))),
    close: () => {
      db.close();
    },
  };
}

function atOnce<T>(db: Database, work: () => T): T {
  let answer: { readonly of: T } | undefined;
  db.transaction(() => {
    answer = { of: work() };
  }).immediate();
  if (answer === undefined) throw new Error('a transaction that did nothing');
  return answer.of;
}

const originHash = (origin: string) => createHash('sha256').update(origin).digest('hex');

/** What SQLite refuses, as something that whoever runs the witness can act on; anything else is a bug. */
function asProblem(cause: unknown, where: string): unknown {
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
  if (!code.startsWith('SQLITE_')) return cause;
  return new ProblemError(
    {
      code: 'witness-data',
      where,
      message: w`the file of the witness cannot be used (${code})`,
      next: w`Check the disk and the rights on the file. Never put back an old copy: the witness would cosign a second history. Make a new witness instead.`,
    },
    { cause },
  );
}
