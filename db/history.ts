/**
 * Questions to the history: jobs and attempts by vehicle, tool, person, part, day. Every answer brings the projection up
 * to date first, so it stands on the entries as they are.
 */
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import type { AttemptRow, ProcessRow } from '../src/audit/attempt.ts';
import type { AttemptFilter, JobsFilter, SpecificationUse, UseOfTool } from '../src/audit/records.ts';
import { type Setup, setupSchema } from '../src/audit/setup.ts';
import { createFolding, type Progress } from './attempts.ts';
import { attemptsWhere, jobsWhere, LOOK_UP_KEY, type Sql, usedSince } from './history-filter.ts';
import { ATTEMPT_COLUMNS, createRowReading, PROCESS_COLUMNS } from './history-rows.ts';
import { JOB_COLUMNS, type JobRow, lookUpKey, readJobRow } from './jobs.ts';

/** How a tool was used: one row for each serial number and certificate that it had. */
export interface ToolUse {
  readonly tool: string;
  readonly serial: string | null;
  readonly certificate: string | null;
  readonly quantity: 'torque' | 'length';
  readonly attempts: number;
  /** ISO, of the first and the last attempt. */
  readonly firstAt: string;
  readonly lastAt: string;
}

export interface History {
  /** In the order of time. */
  attemptsOf(filter: AttemptFilter): readonly AttemptRow[];
  /** The same attempts, of each what `processGroups` asks. */
  processOf(filter: AttemptFilter): readonly ProcessRow[];
  /** Those that were worked on last in front. */
  jobsOf(filter: JobsFilter, limit?: number): readonly JobRow[];
  /** What was frozen with the jobs of this key: to judge their attempts again. */
  setupOf(setupKey: string): Setup;
  tools(): readonly ToolUse[];
  specifications(): readonly SpecificationUse[];
  technicians(): readonly string[];
  /** Attempts made with a tool, by its serial number or its name, on that ISO day or later. */
  useSince(tool: string, from: string): UseOfTool;
  /** Folds what went on since the last question; every question does so by itself. */
  bringUpToDate(progress?: Progress): void;
  /** How SQLite would look it up. */
  plan(of: 'attempts' | 'jobs', filter: AttemptFilter & JobsFilter): readonly string[];
}

const ATTEMPTS = (columns: string, where: string) =>
  `SELECT ${columns} FROM attempts a JOIN jobs j ON j.id = a.job WHERE ${where} ORDER BY a.atMs, a.seq`;
const JOBS = (where: string) =>
  `SELECT ${JOB_COLUMNS} FROM jobs j WHERE ${where} ORDER BY j.lastSeq DESC LIMIT :limit`;

/** `told` makes problems of what the database throws; `watch` hears of the folding that a question waits for. */
export function createHistory(
  db: Database,
  withProblems: <T>(work: () => T) => T,
  watch?: Progress,
): History {
  const bringUpToDate = createFolding(db);
  db.function(LOOK_UP_KEY, { deterministic: true }, (text) => lookUpKey(textOrNull.parse(text)));
  const reading = createRowReading(db);
  const setupBody = db.prepare('SELECT body FROM setups WHERE key = ?').pluck();
  const asked = <T>(answer: () => T): T =>
    withProblems(() => {
      bringUpToDate(watch);
      return answer();
    });
  const attempts = <T>(columns: string, filter: AttemptFilter, read: (row: unknown) => T): readonly T[] => {
    const { where, values } = attemptsWhere(filter);
    const rows: T[] = [];
    // One after the other: all rows as they come from SQLite weigh as much again as what is made of them.
    for (const row of db.prepare(ATTEMPTS(columns, where)).raw().iterate(values)) rows.push(read(row));
    return rows;
  };
  return {
    attemptsOf: (filter) => asked(() => attempts(ATTEMPT_COLUMNS, filter, reading.attempts())),
    processOf: (filter) => asked(() => attempts(PROCESS_COLUMNS, filter, reading.process())),
    jobsOf: (filter, limit = -1) =>
      asked(() => {
        const { where, values } = jobsWhere(filter);
        return db
          .prepare(JOBS(where))
          .all({ ...values, limit })
          .map(readJobRow);
      }),
    setupOf: (key) => asked(() => setupSchema.parse(JSON.parse(text.parse(setupBody.get(key))))),
    tools: () => asked(() => toolUses(db)),
    specifications: () => asked(() => specificationUses(db)),
    technicians: () =>
      asked(() =>
        z.array(z.string()).parse(db.prepare('SELECT name FROM people ORDER BY name').pluck().all()),
      ),
    useSince: (tool, from) =>
      asked(() => {
        const { where, values } = usedSince(tool, from);
        const row = db
          .prepare(`SELECT count(*) AS count, max(a.atMs) AS lastMs FROM attempts a WHERE ${where}`)
          .get(values);
        const { count, lastMs } = z.strictObject({ count: z.int(), lastMs: z.int().nullable() }).parse(row);
        return { count, lastAt: lastMs === null ? null : new Date(lastMs).toISOString() };
      }),
    bringUpToDate: (progress) => withProblems(() => bringUpToDate(progress)),
    plan: (of, filter) => {
      const { where, values }: Sql = of === 'jobs' ? jobsWhere(filter) : attemptsWhere(filter);
      const sql = of === 'jobs' ? JOBS(where) : ATTEMPTS(ATTEMPT_COLUMNS, where);
      return db
        .prepare<[Sql['values']], { detail: string }>(`EXPLAIN QUERY PLAN ${sql}`)
        .all(of === 'jobs' ? { ...values, limit: -1 } : values)
        .map(({ detail }) => detail);
    },
  };
}

const text = z.string();
const textOrNull = text.nullable();
const toolUseSchema = z.strictObject({
  tool: text,
  serial: text.nullable(),
  certificate: text.nullable(),
  length: z.int(),
  attempts: z.int(),
  firstMs: z.int(),
  lastMs: z.int(),
});

function toolUses(db: Database): readonly ToolUse[] {
  const rows = db
    .prepare(
      `SELECT t.tool, t.serial, t.certificate, a.length, count(*) AS attempts, min(a.atMs) AS firstMs,
         max(a.atMs) AS lastMs FROM attempts a JOIN tools t ON t.id = a.tool GROUP BY a.tool, a.length
       ORDER BY t.tool, t.serial, firstMs`,
    )
    .all();
  return rows.map((row) => {
    const { length, firstMs, lastMs, ...use } = toolUseSchema.parse(row);
    const [firstAt, lastAt] = [new Date(firstMs).toISOString(), new Date(lastMs).toISOString()];
    return { ...use, quantity: length === 1 ? 'length' : 'torque', firstAt, lastAt };
  });
}

const specificationUseSchema = z.strictObject({ specification: text, body: text, jobs: z.int() });

function specificationUses(db: Database): readonly SpecificationUse[] {
  const rows = db
    .prepare(
      `SELECT s.specification, s.body, count(*) AS jobs FROM jobs j JOIN setups s ON s.id = j.setup
       GROUP BY s.specification ORDER BY jobs DESC, s.specification`,
    )
    .all();
  return rows.map((row) => {
    const { specification, body, jobs } = specificationUseSchema.parse(row);
    return { specificationKey: specification, setup: setupSchema.parse(JSON.parse(body)), jobs };
  });
}
