/** The projection `jobs`: which jobs the log holds and where they stand. Nothing rests on it but look-up. */
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import type { LogEntry } from '../src/evidence/log.ts';
import { readMigration } from './migrate.ts';

const jobRowSchema = z.strictObject({
  stream: z.string(),
  job: z.string(),
  vin: z.string().nullable(),
  plate: z.string().nullable(),
  openedAt: z.string(),
  lastAt: z.string(),
  state: z.enum(['open', 'complete', 'incomplete', 'void']),
});
/** `complete` and `incomplete` as the job said when it was closed; `void` once somebody declared it so. */
export type JobRow = z.infer<typeof jobRowSchema>;

/** Brings the projection up to date with one more entry; to be called in the entry's own transaction. */
export function createProjector(db: Database): (entry: LogEntry) => void {
  const open = db.prepare(
    `INSERT INTO jobs (stream, job, vin, plate, openedAt, lastAt, lastSeq, state)
     VALUES (:stream, :job, :vin, :plate, :at, :at, :seq, 'open')
     ON CONFLICT (stream) DO NOTHING`,
  );
  const touch = db.prepare('UPDATE jobs SET lastAt = :at, lastSeq = :seq WHERE stream = :stream');
  const close = db.prepare('UPDATE jobs SET state = :state WHERE stream = :stream');
  return ({ stream, at, seq, event }) => {
    if (event.type === 'job-opened') {
      const { job, vehicle } = event.order;
      open.run({ stream, at, seq, job, vin: vehicle.vin ?? null, plate: vehicle.plate ?? null });
    }
    touch.run({ stream, at, seq });
    if (event.type === 'job-closed') close.run({ stream, state: event.complete ? 'complete' : 'incomplete' });
    if (event.type === 'job-voided') close.run({ stream, state: 'void' });
  };
}

/** Drops the table and makes it anew from the log's streams. */
export function rebuildJobs(db: Database, streams: Iterable<readonly LogEntry[]>): void {
  db.transaction(() => {
    db.exec('DROP TABLE IF EXISTS jobs');
    db.exec(readMigration('0002-jobs.sql'));
    const project = createProjector(db);
    for (const entries of streams) entries.forEach(project);
  }).immediate();
}

/** The jobs that were worked on last, the latest first. */
export function lastJobs(db: Database, limit: number): readonly JobRow[] {
  const rows = db
    .prepare(
      'SELECT stream, job, vin, plate, openedAt, lastAt, state FROM jobs ORDER BY lastSeq DESC LIMIT ?',
    )
    .all(limit);
  return rows.map((row) => jobRowSchema.parse(row));
}
