/** The station log in SQLite: appends under the rules of the chain, reads back, checks itself. */
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { canonical } from '../src/evidence/canonical.ts';
import { chain, EMPTY_HEAD, type Head, hashOfBody } from '../src/evidence/chain.ts';
import { checkLog } from '../src/evidence/check-chain.ts';
import {
  type Draft,
  type LogEntry,
  logEntrySchema,
  type Stamp,
  type StationLog,
} from '../src/evidence/log.ts';
import { parseStrictJson } from '../src/evidence/strict-json.ts';
import { ProblemError } from '../src/problem.ts';
import { createProjector, type JobRow, lastJobs, rebuildJobs } from './jobs.ts';
import { assertFull, openDatabase } from './open.ts';
import { problemOf } from './problems.ts';

/** The first entry of the log that is not as it was written. */
export interface LogFault {
  readonly seq: number;
  readonly message: string;
}

/** The log together with what only a database can do. */
export interface StationLogFile extends StationLog {
  /** The end of the log: whoever keeps it elsewhere can tell later whether anything was taken off. */
  head(): Head;
  /** Reads all of it and finds the first entry that was tampered with; null when there is none. */
  check(): LogFault | null;
  /** The jobs that were worked on last, the latest first. */
  lastJobs(limit?: number): readonly JobRow[];
  /** Makes the tables for look-up anew from the entries. */
  rebuildProjections(): void;
}

/**
 * Opens or makes the log at `path`; problems are those of {@link openDatabase}. `append` throws `log-busy`, `log-disk`,
 * and `log-other-writer` when another program added to a stream after this one read it.
 */
export async function openStationLog(path: string): Promise<StationLogFile> {
  return stationLog(await openDatabase(path), path);
}

const bodySchema = z.string();
const headSchema = z.strictObject({ seq: z.int(), hash: z.string() });
const rowSchema = z.strictObject({ seq: z.int(), hash: z.string(), body: z.string() });

function stationLog(db: Database, path: string): StationLogFile {
  const lastEntry = db.prepare('SELECT seq, hash FROM entries ORDER BY seq DESC LIMIT 1');
  const lastOfStream = db.prepare('SELECT coalesce(max(n), 0) FROM entries WHERE stream = ?').pluck();
  const insert = db.prepare('INSERT INTO entries (seq, stream, n, hash, body) VALUES (?, ?, ?, ?, ?)');
  const bodies = db.prepare('SELECT body FROM entries WHERE stream = ? ORDER BY n').pluck();
  const allBodies = db.prepare('SELECT body FROM entries ORDER BY seq').pluck();
  const allRows = db.prepare('SELECT seq, hash, body FROM entries ORDER BY seq');
  const allStreams = db.prepare('SELECT stream FROM entries GROUP BY stream ORDER BY min(seq)').pluck();
  const project = createProjector(db);
  /** How far this program has read or written each stream. */
  const known = new Map<string, number>();

  const head = (): Head => {
    const row = lastEntry.get();
    return row === undefined ? EMPTY_HEAD : headSchema.parse(row);
  };
  const append = db.transaction((stream: string, drafts: readonly Draft[], stamp: Stamp) => {
    const n = z.int().parse(lastOfStream.get(stream));
    if (known.has(stream) && known.get(stream) !== n) throw otherWriter(path, stream);
    return chain(head(), stream, n, drafts, stamp).map(({ entry, hash, body }) => {
      insert.run(entry.seq, stream, entry.n, hash, body);
      project(entry);
      return entry;
    });
  });
  const read = (stream: string) => bodies.all(stream).map((body) => readEntry(body, path));
  const streams = () => allStreams.all().map((stream) => z.string().parse(stream));
  const told = <T>(work: () => T): T => {
    try {
      return work();
    } catch (cause) {
      throw problemOf(cause, path);
    }
  };

  return {
    append: (stream, drafts, stamp) =>
      told(() => {
        const entries = append.immediate(stream, drafts, stamp);
        assertFull(db);
        const last = entries.at(-1);
        if (last !== undefined) known.set(stream, last.n);
        return entries;
      }),
    entries: (stream) =>
      told(() => {
        const entries = read(stream);
        known.set(stream, entries.length);
        return entries;
      }),
    streams: () => told(streams),
    head: () => told(head),
    check: () => told(() => rowFault(allRows.iterate()) ?? chainFault(allBodies.iterate())),
    lastJobs: (limit = 20) => told(() => lastJobs(db, limit)),
    rebuildProjections: () => told(() => rebuildJobs(db, streams().map(read))),
    close: () => {
      db.close();
    },
  };
}

function rowFault(rows: Iterable<unknown>): LogFault | null {
  for (const row of rows) {
    const { seq, hash, body } = rowSchema.parse(row);
    if (hashOfBody(Buffer.from(body, 'utf8')) !== hash)
      return { seq, message: `entry ${seq} is not what its hash was made of` };
    if (!isCanonicalEntry(body)) return { seq, message: `entry ${seq} is not written as an entry is` };
  }
  return null;
}

function isCanonicalEntry(body: string): boolean {
  const json = parseStrictJson(Buffer.from(body, 'utf8'), 'entry');
  return json.ok && canonical(json.value) === body && logEntrySchema.safeParse(json.value).success;
}

function chainFault(bodies: Iterable<unknown>): LogFault | null {
  const found = checkLog(entriesOf(bodies));
  return found === null ? null : { seq: found.index + 1, message: found.message };
}

function* entriesOf(bodies: Iterable<unknown>): Iterable<LogEntry> {
  for (const body of bodies) yield logEntrySchema.parse(JSON.parse(bodySchema.parse(body)));
}

function readEntry(body: unknown, path: string): LogEntry {
  const json = parseStrictJson(Buffer.from(bodySchema.parse(body), 'utf8'), path);
  const entry = json.ok ? logEntrySchema.safeParse(json.value) : null;
  if (entry?.success === true) return entry.data;
  throw new ProblemError({
    code: 'log-damaged',
    where: path,
    message: 'an entry of the station log cannot be read',
    next: 'Keep the file as it is and restore the log from a backup.',
  });
}

function otherWriter(path: string, stream: string): ProblemError {
  return new ProblemError({
    code: 'log-other-writer',
    where: path,
    message: `another program has added to ${stream} since this one read it`,
    next: 'Close the other program, then open the job again.',
  });
}
