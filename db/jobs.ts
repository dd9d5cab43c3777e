/** The projection `jobs`: which jobs the log holds and where they stand. Nothing rests on it but look-up. */
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { isJobEntry } from '../src/evidence/entry.ts';
import { type LogEntry, STATION_STREAM } from '../src/evidence/log.ts';
import { outOfOrderSchema } from '../src/job/out-of-order.ts';
import { normalVin } from '../src/job/vin.ts';
import { isWithheld } from '../src/personal.ts';
import { figureSourceSchema } from '../src/reading.ts';
import type { Progress } from './attempts.ts';
import { type EntryTable, entryIn, entryOf, entryTable } from './entries.ts';
import { readMigration } from './migrate.ts';

/** Rises with every change of what the history holds: an older one is made again from the entries. */
const HISTORY_VERSION = 5;

/** From bits; no sources where nobody folded the job yet. */
export const sourcesIn = z
  .int()
  .nullable()
  .transform((bits) => figureSourceSchema.options.filter((_, at) => ((bits ?? 0) & (1 << at)) !== 0));
const outOfOrderIn = z
  .string()
  .nullable()
  .transform((text) => z.array(outOfOrderSchema).parse(JSON.parse(text ?? '[]')));

const jobRowSchema = z.strictObject({
  stream: z.string(),
  job: z.string(),
  vin: z.string().nullable(),
  plate: z.string().nullable(),
  fleet: z.string().nullable(),
  openedAt: z.string(),
  lastAt: z.string(),
  state: z.enum(['open', 'complete', 'incomplete', 'void']),
  /** These two come from folding the job: empty where nobody asked since it was opened. */
  sources: sourcesIn,
  outOfOrder: outOfOrderIn,
});
/** `complete` and `incomplete` as the job said when it was closed; `void` once somebody declared it so. */
export type JobRow = z.infer<typeof jobRowSchema>;

export const JOB_COLUMNS =
  'j.stream, j.job, j.vin, j.plate, j.fleet, j.openedAt, j.lastAt, j.state, j.sources, j.outOfOrder';
export const readJobRow = (row: unknown): JobRow => jobRowSchema.parse(row);

/** Brings the projection up to date with one more entry; to be called in the entry's own transaction. */
export function createProjector(db: Database): (entry: LogEntry) => void {
  const open = db.prepare(
    `INSERT INTO jobs (stream, job, vin, plate, fleet, vinKey, plateKey, fleetKey, openedAt, lastAt, lastSeq, state)
     VALUES (:stream, :job, :vin, :plate, :fleet, :vinKey, :plateKey, :fleetKey, :at, :at, :seq, 'open')
     ON CONFLICT (stream) DO NOTHING`,
  );
  const touch = db.prepare('UPDATE jobs SET lastAt = :at, lastSeq = :seq WHERE stream = :stream');
  const close = db.prepare('UPDATE jobs SET state = :state WHERE stream = :stream');
  return ({ stream, at, seq, event }) => {
    if (event.type === 'job-opened') {
      const { job, vehicle } = event.order;
      const { vin = null, plate = null, fleet = null } = vehicle;
      const keys = { vinKey: keyOf(vin), plateKey: keyOf(plate), fleetKey: keyOf(fleet) };
      open.run({ stream, at, seq, job, vin, plate, fleet, ...keys });
    }
    touch.run({ stream, at, seq });
    if (event.type === 'job-closed') close.run({ stream, state: event.complete ? 'complete' : 'incomplete' });
    if (event.type === 'job-voided') close.run({ stream, state: 'void' });
  };
}

/** Null for what was forgotten as well: nothing is looked up by that. */
const keyOf = (text: string | null): string | null =>
  text === null || isWithheld(text) ? null : lookUpKey(text);

/** As a number is looked up, whichever way somebody typed it. */
export function lookUpKey(text: string): string;
export function lookUpKey(text: string | null): string | null;
export function lookUpKey(text: string | null): string | null {
  return text === null ? null : normalVin(text);
}

export const HISTORY_TABLES = [
  'projection',
  'jobs',
  'attempts',
  'setups',
  'tools',
  'people',
  'parts',
] as const;

/**
 * Makes the history anew where another version of the program made it, where nothing did yet, or where it is gone;
 * `progress` hears of each job.
 */
export function renewHistory(db: Database, progress?: Progress): void {
  const isThere = db.prepare(`SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = ?`);
  const isWhole = HISTORY_TABLES.every((name) => isThere.get(name) !== undefined);
  if (isWhole && db.prepare('SELECT version FROM projection').pluck().get() === HISTORY_VERSION) return;
  rebuildHistory(db, progress);
}

/**
 * Drops all tables of the history and makes the list of jobs anew from the entries; attempts follow when somebody asks
 * for them.
 */
export function rebuildHistory(db: Database, progress?: Progress): void {
  db.transaction(() => {
    db.exec(readMigration('history.sql'));
    const table = entryTable(db);
    const project = createProjector(db);
    const streams = table.streams();
    const jobs = streams.filter((stream) => stream !== STATION_STREAM).length;
    let opened = 0;
    for (const entry of standingEntries(table, db.name)) {
      project(entry);
      if (entry.event.type === 'job-opened') progress?.(++opened, jobs);
    }
    const touch = db.prepare('UPDATE jobs SET lastSeq = ?, lastAt = ? WHERE stream = ?');
    for (const stream of streams) {
      const newest = table.newestOf(stream);
      const entry = newest === null ? null : entryIn(newest);
      if (entry !== null) touch.run(entry.seq, entry.at, stream);
    }
    db.prepare('INSERT INTO projection (version) VALUES (?)').run(HISTORY_VERSION);
  }).immediate();
}

/** The entries that say which jobs there are and where they stand; read in pages, for nothing is written during a read. */
function* standingEntries(table: EntryTable, where: string): Generator<LogEntry> {
  for (let after = 0; ; ) {
    const page = table.statusAfter(after, 1000);
    const last = page.at(-1);
    if (last === undefined) return;
    for (const stored of page) {
      const entry = entryOf(stored, where);
      if (isJobEntry(entry)) yield entry;
    }
    after = last.seq;
  }
}

/** The jobs that were worked on last, the latest first. */
export function lastJobs(db: Database, limit: number): readonly JobRow[] {
  const rows = db.prepare(`SELECT ${JOB_COLUMNS} FROM jobs j ORDER BY j.lastSeq DESC LIMIT ?`).all(limit);
  return rows.map(readJobRow);
}
