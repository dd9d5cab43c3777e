/**
 * The tables of an archive, in the SQL that SQLite and PostgreSQL both read, and those that are distributed behind the
 * PostgreSQL protocol: `log` stands first in every key, and there is no trigger, sequence, foreign key or advisory lock.
 * `BYTES`, `WHOLE`, `SMALL` and `AMOUNT` stand for what the two call a row of bytes, a large and a small whole number, and a
 * number of double precision.
 */
import { HISTORY_TABLES } from './history-schema.ts';

export const TABLES = [
  `CREATE TABLE logs (
    log TEXT PRIMARY KEY, tenant TEXT NOT NULL, origin TEXT NOT NULL, station TEXT NOT NULL,
    standing TEXT NOT NULL, entries WHOLE NOT NULL,
    pending_size WHOLE, pending_root BYTES, pending_note TEXT,
    head_size WHOLE, head_root BYTES, head_note TEXT, history_epoch WHOLE NOT NULL, history_read WHOLE NOT NULL)`,
  // The keys that signed the log one after the other.
  'CREATE TABLE log_keys (log TEXT NOT NULL, n WHOLE NOT NULL, tenant TEXT NOT NULL, vkey TEXT NOT NULL, statement TEXT, PRIMARY KEY (log, n))',
  // Hashes apart from bodies: a text can be forgotten while every proof holds.
  `CREATE TABLE bundles (
    log TEXT NOT NULL, number WHOLE NOT NULL, tenant TEXT NOT NULL, hashes BYTES NOT NULL, body BYTES NOT NULL,
    PRIMARY KEY (log, number))`,
  `CREATE TABLE faults (
    log TEXT NOT NULL, offered_hash TEXT NOT NULL, tenant TEXT NOT NULL, kind TEXT NOT NULL, kept TEXT NOT NULL,
    offered TEXT NOT NULL, at TEXT NOT NULL, PRIMARY KEY (log, offered_hash))`,
  'CREATE TABLE tokens (hash TEXT PRIMARY KEY, used_for TEXT NOT NULL, about TEXT NOT NULL, origin TEXT, until TEXT NOT NULL)',
  // What became of each job that was judged again. It names nobody, and stays when a text is forgotten.
  'CREATE TABLE judged (log TEXT NOT NULL, opened WHOLE NOT NULL, tenant TEXT NOT NULL, stream TEXT NOT NULL, last WHOLE NOT NULL, outcome TEXT NOT NULL, PRIMARY KEY (log, opened))',
  // Who may ask, by the hash of the token.
  'CREATE TABLE readers (hash TEXT PRIMARY KEY, tenant TEXT NOT NULL, log TEXT, name TEXT NOT NULL, until TEXT NOT NULL)',
  'CREATE TABLE reads (tenant TEXT NOT NULL, at TEXT NOT NULL, id TEXT NOT NULL, reader TEXT NOT NULL, question TEXT NOT NULL, PRIMARY KEY (tenant, at, id))',
  ...HISTORY_TABLES,
] as const;

/** Proofs of a fork that are kept of a log: one is enough, and whoever has its key could send any number. */
export const MOST_FAULTS = 100;

export interface TypeNames {
  readonly BYTES: string;
  readonly WHOLE: string;
  readonly SMALL: string;
  readonly AMOUNT: string;
}

export const tablesFor = ({ BYTES, WHOLE, SMALL, AMOUNT }: TypeNames): readonly string[] =>
  TABLES.map((statement) =>
    statement
      .replaceAll('BYTES', BYTES)
      .replaceAll('WHOLE', WHOLE)
      .replaceAll('SMALL', SMALL)
      .replaceAll('AMOUNT', AMOUNT),
  );
