/** Rows of the history as attempts: what many share is read once a question, so that each costs no more than its own row. */
import type { Database, Statement } from 'better-sqlite3';
import type { AttemptRow, Censored, ProcessRow } from '../src/audit/attempt.ts';
import { CENSORED, FLAG, KINDS, RESULTS, SIDES, SOURCES } from './attempts.ts';

/** Of `attempts a`, in the order in which they are read below. */
export const ATTEMPT_COLUMNS = `a.seq, a.atMs, a.length, a.cylinder, a.number, a.tool, a.person, a.part, a.kind, a.result,
  a.side, a.flags, a.reading, a.value, a.expanded, a.peak, a.job, a.source`;
/** The same for `ProcessRow`: every column and every name left out is time saved, and there are many rows. */
export const PROCESS_COLUMNS =
  'a.atMs, a.length, a.cylinder, a.tool, a.person, a.result, a.flags, a.value, a.job, a.expanded, a.source';

type Cells = readonly unknown[];

export interface RowReading {
  readonly attempts: () => (row: unknown) => AttemptRow;
  readonly process: () => (row: unknown) => ProcessRow;
}

/** A reader of rows for each question; the tables are STRICT and checked by hand, because a schema would cost more than all the rest. */
export function createRowReading(db: Database): RowReading {
  const job = db.prepare('SELECT stream, job, vin, plate, fleet, day, state, setup FROM jobs WHERE id = ?');
  const setup = db.prepare(
    'SELECT key, specification, engine, lower, upper, firstLower, firstUpper, gapLower, gapUpper FROM setups WHERE id = ?',
  );
  const tool = db.prepare('SELECT tool, serial, certificate FROM tools WHERE id = ?');
  const person = db.prepare('SELECT name FROM people WHERE id = ?');
  const part = db.prepare('SELECT part, lot FROM parts WHERE id = ?');
  const shared = (): Shared => {
    const setupOf = remembered(setup, setupFrom);
    return {
      job: remembered(job, (cells) => jobFrom(cells, setupOf)),
      tool: remembered(tool, (cells) => ({
        tool: text(cells, 0),
        serial: textOrNull(cells, 1),
        certificate: textOrNull(cells, 2),
      })),
      person: remembered(person, (cells) => text(cells, 0)),
      part: remembered(part, (cells) => ({ part: text(cells, 0), lot: textOrNull(cells, 1) })),
    };
  };
  return { attempts: () => attemptReader(shared()), process: () => processReader(shared()) };
}

type Job = ReturnType<typeof jobFrom>;
type Setup = ReturnType<typeof setupFrom>;

interface Shared {
  readonly job: (id: number) => Job;
  readonly tool: (id: number) => Pick<AttemptRow, 'tool' | 'serial' | 'certificate'>;
  readonly person: (id: number) => string;
  readonly part: (id: number) => Pick<AttemptRow, 'part' | 'lot'>;
}

function remembered<T>(statement: Statement, from: (cells: Cells) => T): (id: number) => T {
  const raw = statement.raw(true);
  const cache = new Map<number, T>();
  return (id) => {
    const there = cache.get(id);
    if (there !== undefined) return there;
    const value = from(cellsOf(raw.get(id)));
    cache.set(id, value);
    return value;
  };
}

const setupFrom = (cells: Cells) => ({
  key: text(cells, 0),
  specification: text(cells, 1),
  engine: textOrNull(cells, 2),
  final: limits(cells, 3),
  first: limits(cells, 5),
  gap: limits(cells, 7),
});

/** NaN where such a thing was not to be measured, so that nothing is ever within. */
const limits = (cells: Cells, at: number) => ({
  lower: realOrNull(cells, at) ?? Number.NaN,
  upper: realOrNull(cells, at + 1) ?? Number.NaN,
});

const jobFrom = (cells: Cells, setupOf: (id: number) => Setup) => ({
  stream: text(cells, 0),
  job: text(cells, 1),
  vin: textOrNull(cells, 2),
  plate: textOrNull(cells, 3),
  fleet: textOrNull(cells, 4),
  on: text(cells, 5),
  voided: text(cells, 6) === 'void',
  open: text(cells, 6) === 'open',
  setup: setupOf(int(cells, 7)),
});

const CENSORED_FLAGS: readonly (readonly [Censored, number])[] = (
  ['cut', 'saturated', 'undecided', 'bounded'] as const
).map((reason) => [reason, CENSORED[reason]]);

function attemptReader(shared: Shared): (row: unknown) => AttemptRow {
  return (row) => {
    const cells = cellsOf(row);
    const job = shared.job(int(cells, 16));
    const { setup } = job;
    const { tool, serial, certificate } = shared.tool(int(cells, 5));
    const { part, lot } = shared.part(int(cells, 7));
    const flags = int(cells, 11);
    const quantity = int(cells, 2) === 1 ? 'length' : 'torque';
    const stage = stageOf(flags);
    const { lower, upper } = quantity === 'length' ? setup.gap : setup[stage];
    const at = new Date(int(cells, 1)).toISOString();
    // Name by name: an object that is spread together takes twenty times as long.
    return {
      stream: job.stream,
      job: job.job,
      vin: job.vin,
      plate: job.plate,
      fleet: job.fleet,
      on: job.on,
      voided: job.voided,
      open: job.open,
      tool,
      serial,
      certificate,
      part,
      lot,
      seq: int(cells, 0),
      at,
      day: at.slice(0, 10),
      quantity,
      cylinder: int(cells, 3),
      number: int(cells, 4),
      technician: shared.person(int(cells, 6)),
      kind: one(KINDS, int(cells, 8)),
      source: one(SOURCES, int(cells, 17)),
      result: oneOrNull(RESULTS, cells, 9),
      side: oneOrNull(SIDES, cells, 10),
      readingSi: realOrNull(cells, 12),
      valueSi: realOrNull(cells, 13),
      expanded: realOrNull(cells, 14),
      peakStandardSi: realOrNull(cells, 15),
      stage,
      censored: censoredOf(flags),
      lowerLimit: lower,
      upperLimit: upper,
      first: (flags & FLAG.first) !== 0,
      last: (flags & FLAG.last) !== 0,
      early: (flags & FLAG.early) !== 0,
      held: (flags & FLAG.held) !== 0,
      specificationKey: setup.specification,
      setupKey: setup.key,
      engine: setup.engine,
    };
  };
}

const DAY_MS = 86_400_000;

function processReader(shared: Shared): (row: unknown) => ProcessRow {
  const days = new Map<number, string>();
  const dayOf = (atMs: number) => {
    const number = Math.floor(atMs / DAY_MS);
    const day = days.get(number) ?? new Date(atMs).toISOString().slice(0, 10);
    days.set(number, day);
    return day;
  };
  return (row) => {
    const cells = cellsOf(row);
    const { stream, setup, voided, open } = shared.job(int(cells, 8));
    const { tool, serial } = shared.tool(int(cells, 3));
    const flags = int(cells, 6);
    const quantity = int(cells, 1) === 1 ? 'length' : 'torque';
    const stage = stageOf(flags);
    const { lower, upper } = quantity === 'length' ? setup.gap : setup[stage];
    return {
      stream,
      day: dayOf(int(cells, 0)),
      quantity,
      cylinder: int(cells, 2),
      tool,
      serial,
      technician: shared.person(int(cells, 4)),
      result: oneOrNull(RESULTS, cells, 5),
      valueSi: realOrNull(cells, 7),
      expanded: realOrNull(cells, 9),
      stage,
      censored: censoredOf(flags),
      first: (flags & FLAG.first) !== 0,
      last: (flags & FLAG.last) !== 0,
      lowerLimit: lower,
      upperLimit: upper,
      specificationKey: setup.specification,
      engine: setup.engine,
      source: one(SOURCES, int(cells, 10)),
      voided,
      open,
    };
  };
}

export const stageOf = (flags: number) => ((flags & FLAG.firstStage) === 0 ? 'final' : 'first');
export const censoredOf = (flags: number) =>
  CENSORED_FLAGS.find(([, bit]) => (flags & bit) !== 0)?.[0] ?? null;

function cellsOf(row: unknown): Cells {
  if (Array.isArray(row)) return row;
  throw new TypeError('a row of the history is missing');
}

function int(cells: Cells, at: number): number {
  const cell = cells[at];
  if (typeof cell === 'number') return cell;
  throw new TypeError(`column ${at} of the history is no number`);
}

function realOrNull(cells: Cells, at: number): number | null {
  return cells[at] === null ? null : int(cells, at);
}

function text(cells: Cells, at: number): string {
  const cell = cells[at];
  if (typeof cell === 'string') return cell;
  throw new TypeError(`column ${at} of the history is no text`);
}

function textOrNull(cells: Cells, at: number): string | null {
  return cells[at] === null ? null : text(cells, at);
}

function one<T>(list: readonly T[], at: number): T {
  const found = list[at];
  if (found === undefined)
    throw new RangeError(`the history holds the number ${at}, which stands for nothing`);
  return found;
}

function oneOrNull<T>(list: readonly T[], cells: Cells, at: number): T | null {
  return cells[at] === null ? null : one(list, int(cells, at));
}
