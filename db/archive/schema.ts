/**
 * The tables of an archive, in the SQL that SQLite and PostgreSQL both read, and those that are distributed behind the
 * PostgreSQL protocol: `log` stands first in every key, and there is no trigger, sequence, foreign key or advisory lock.
 * `BYTES` and `WHOLE` stand for what the two call a row of bytes and a large whole number.
 */
export const TABLES = [
  `CREATE TABLE logs (
    log TEXT PRIMARY KEY, tenant TEXT NOT NULL, origin TEXT NOT NULL, station TEXT NOT NULL,
    standing TEXT NOT NULL, entries WHOLE NOT NULL,
    pending_size WHOLE, pending_root BYTES, pending_note TEXT,
    head_size WHOLE, head_root BYTES, head_note TEXT)`,
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
] as const;

/** Proofs of a fork that are kept of a log: one is enough, and whoever has its key could send any number. */
export const MOST_FAULTS = 100;

export const tablesFor = (types: { readonly bytes: string; readonly whole: string }): readonly string[] =>
  TABLES.map((table) => table.replaceAll('BYTES', types.bytes).replaceAll('WHOLE', types.whole));
