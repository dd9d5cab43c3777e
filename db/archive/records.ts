/** Questions over all logs of a tenant: the same rows as one station's history gives (db/history.ts). */
import { z } from 'zod';
import { entryFrom } from '../../src/archive/entries.ts';
import { TooMuch } from '../../src/archive/readers.ts';
import type { AttemptRow, ProcessRow } from '../../src/audit/attempt.ts';
import type { AskedJob } from '../../src/audit/questions.ts';
import type { AttemptFilter, JobsFilter, Records, StationOfRecords } from '../../src/audit/records.ts';
import { type Setup, setupSchema } from '../../src/audit/setup.ts';
import { isStationEntry } from '../../src/evidence/entry.ts';
import type { StationEntry } from '../../src/evidence/log.ts';
import { outOfOrderSchema } from '../../src/job/out-of-order.ts';
import { FLAG, KINDS, RESULTS, SIDES, SOURCES } from '../attempts.ts';
import { censoredOf, stageOf } from '../history-rows.ts';
import { sourcesIn } from '../jobs.ts';
import type { Query, Sql, Value } from './sql.ts';
import {
  type KeyName,
  type Keys,
  keysWanted,
  type Scope,
  SHARED,
  whereAttempts,
  whereJobs,
  whereUsed,
} from './where.ts';

/** What an answer may have at most: more is no answer that anybody reads, and would take the memory of all others. */
const MOST_ROWS = 500_000;

export function archiveRecords(sql: Sql, scope: Scope): Records {
  const inScope = <T>(work: (query: Query) => Promise<T>) => sql.transaction(scope.tenant, work);
  const setups = (query: Query, names: readonly string[]) => setupsNamed(query, scope, names);
  const attempts = <T>(
    filter: AttemptFilter,
    columns: string,
    read: (shared: Shared) => (row: unknown) => T,
  ) =>
    inScope(async (query) => {
      const keys = await keysOf(query, scope, filter);
      const { where, values } = whereAttempts(scope, filter, keys);
      const rows = await rowsOf(query, ATTEMPTS(where, columns), values);
      return rows.map(read(await sharedBy(query, scope, rows)));
    });
  return {
    stations: () => inScope((query) => stationsOf(query, scope)),
    attemptsOf: (filter) => attempts(filter, WHOLE_ROW, attemptReader),
    attemptsIn: (jobs) =>
      inScope(async (query) => {
        const { where, values } = whereAttempts(scope, {}, {});
        const rows: unknown[] = [];
        // Each once: whoever names one job many times would get its rows as often.
        for (const stream of new Set(jobs.map((one) => one.stream))) {
          const of = `${where} AND j.log = ? AND j.stream = ?`;
          const own = await rowsOf(query, ATTEMPTS(of, WHOLE_ROW), [...values, ...placeOf(stream)]);
          for (const row of own) rows.push(row);
          if (rows.length > MOST_ROWS) throw new TooMuch();
        }
        return rows
          .map(attemptReader(await sharedBy(query, scope, rows)))
          .sort((a, b) => Date.parse(a.at) - Date.parse(b.at) || a.seq - b.seq);
      }),
    processOf: (filter) => attempts(filter, PROCESS, processReader),
    jobsOf: (filter) =>
      inScope(async (query) => {
        const keys = await keysOf(query, scope, filter);
        const { where, values } = whereJobs(scope, filter, keys);
        const names = await namesOf(query, scope);
        const rows = await rowsOf(
          query,
          `SELECT ${JOB} FROM jobs j WHERE ${where} ORDER BY j.last_at DESC, j.log, j.last DESC`,
          values,
        );
        return rows.map((row) => askedJob(row, names));
      }),
    setupsOf: (keys) => inScope((query) => setups(query, [...keys])),
    specifications: () =>
      inScope(async (query) => {
        const { where, values } = ofScope(scope, 's');
        const rows = z.array(useRow).parse(
          await rowsOf(
            query,
            `SELECT s.specification, min(s.name) AS name, count(*) AS jobs FROM jobs j
             JOIN setups s ON s.log = j.log AND s.setup = j.setup WHERE ${where}
             GROUP BY s.specification ORDER BY count(*) DESC, s.specification`,
            values,
          ),
        );
        const names = rows.map(({ name }) => name);
        const bodies = await setups(query, names);
        return rows.flatMap(({ specification, name, jobs }) => {
          const setup = bodies.get(name);
          return setup === undefined ? [] : [{ specificationKey: specification, setup, jobs }];
        });
      }),
    toolUse: (tool, from) =>
      inScope(async (query) => {
        const { where, values } = whereUsed(scope, tool, from);
        const [row] = await query(
          `SELECT count(*) AS count, max(a.at_ms) AS last_ms FROM attempts a WHERE ${where}`,
          ...values,
        );
        const { count, last_ms: lastMs } = usedRow.parse(row);
        return { count, lastAt: lastMs === null ? null : new Date(lastMs).toISOString() };
      }),
  };
}

async function rowsOf(query: Query, text: string, values: readonly Value[]): Promise<readonly unknown[]> {
  const rows = await query(`${text} LIMIT ${MOST_ROWS + 1}`, ...values);
  if (rows.length > MOST_ROWS) throw new TooMuch();
  return rows;
}

/** No question names more: a part of a specification's key that is that short is a question for all of them. */
const MOST_KEYS = 10_000;

async function keysOf(query: Query, scope: Scope, filter: JobsFilter): Promise<Keys> {
  const keys: { [N in KeyName]?: readonly number[] } = {};
  for (const [name, { where, values }] of keysWanted(scope, filter)) {
    const text = `SELECT DISTINCT ${name} AS key FROM ${SHARED[name]} WHERE ${where} LIMIT ${MOST_KEYS + 1}`;
    const rows = z.array(keyRow).parse(await query(text, ...values));
    if (rows.length > MOST_KEYS) throw new TooMuch();
    keys[name] = rows.map(({ key }) => key);
  }
  return keys;
}

async function setupsNamed(
  query: Query,
  scope: Scope,
  names: readonly string[],
): Promise<ReadonlyMap<string, Setup>> {
  const found = new Map<string, Setup>();
  const { where, values } = ofScope(scope, 's');
  for (const name of names) {
    const text = `SELECT s.body FROM setups s WHERE s.name = ? AND ${where} LIMIT 1`;
    const [row] = await query(text, name, ...values);
    if (row !== undefined) found.set(name, setupSchema.parse(JSON.parse(bodyRow.parse(row).body)));
  }
  return found;
}

/** The names of the stations, by their logs. */
async function namesOf(query: Query, scope: Scope): Promise<ReadonlyMap<string, string>> {
  const { where, values } = ofScope(scope, 'l');
  const rows = await query(`SELECT l.log, l.station FROM logs l WHERE ${where}`, ...values);
  return new Map(
    z
      .array(stationRow)
      .parse(rows)
      .map(({ log, station }) => [log, station]),
  );
}

/** What the rows of an answer share, by its keys. */
interface Shared {
  readonly stations: ReadonlyMap<string, string>;
  readonly of: (name: KeyName, cells: Cells) => Cells;
}

const KEYS_AT_ONCE = 1000;

/**
 * A key is a hash of what it stands for, so any log's row of it does: all of them are the same. Joined here and not in the
 * database: each is read once, and the plan stays one of two tables.
 */
async function sharedBy(query: Query, scope: Scope, rows: readonly unknown[]): Promise<Shared> {
  const all = new Map<string, Cells>();
  const { where, values } = ofScope(scope, 's');
  const cells = rows.map((row) => new Cells(row));
  for (const [name, table] of KEY_TABLES) {
    const keys = [...new Set(cells.map((one) => one.number(name)))];
    for (let from = 0; from < keys.length; from += KEYS_AT_ONCE) {
      const some = keys.slice(from, from + KEYS_AT_ONCE);
      const found = await query(
        `SELECT ${COLUMNS[name]} FROM ${table} s WHERE s.${name} IN (${some.map(() => '?').join(', ')}) AND ${where}`,
        ...some,
        ...values,
      );
      for (const row of found) {
        const one = new Cells(row);
        all.set(`${name} ${one.number(name)}`, one);
      }
    }
  }
  return {
    stations: await namesOf(query, scope),
    of: (name, one) => {
      const found = all.get(`${name} ${one.number(name)}`);
      if (found === undefined) throw new Error(`the history lacks a row of ${name}`);
      return found;
    },
  };
}

const KEY_TABLES = [
  ['setup', SHARED.setup],
  ['tool', SHARED.tool],
  ['person', SHARED.person],
  ['part', SHARED.part],
] as const;
const COLUMNS: Readonly<Record<KeyName, string>> = {
  setup:
    's.setup, s.name, s.specification, s.engine, s.lower, s.upper, s.first_lower, s.first_upper, s.gap_lower, s.gap_upper',
  tool: 's.tool, s.id, s.serial, s.certificate',
  person: 's.person, s.name',
  part: 's.part, s.number, s.lot',
};

/** A job is named by its log and its stream: two stations may have jobs of one number. */
const streamOf = (log: string, stream: string) => `${log} ${stream}`;
function placeOf(stream: string): readonly [log: string, stream: string] {
  const at = stream.indexOf(' ');
  return [stream.slice(0, at), stream.slice(at + 1)];
}

const ofScope = ({ tenant, log }: Scope, table: string) => ({
  where: `${table}.tenant = ?${log === null ? '' : ` AND ${table}.log = ?`}`,
  values: log === null ? [tenant] : [tenant, log],
});

const number = z.coerce.number();
const keyRow = z.object({ key: number });
const bodyRow = z.object({ body: z.string() });
const useRow = z.object({ specification: z.string(), name: z.string(), jobs: number });
const usedRow = z.object({ count: number, last_ms: number.nullable() });

const JOB = `j.log, j.stream, j.job, j.vin, j.plate, j.fleet, j.opened_at, j.last_at, j.state, j.sources, j.out_of_order`;
const text = z.string();
const jobRow = z.object({
  log: text,
  stream: text,
  job: text,
  vin: text.nullable(),
  plate: text.nullable(),
  fleet: text.nullable(),
  opened_at: text,
  last_at: text,
  state: z.enum(['open', 'complete', 'incomplete', 'void']),
  sources: sourcesIn,
  out_of_order: text.nullable(),
});

function askedJob(row: unknown, names: ReadonlyMap<string, string>): AskedJob {
  const {
    log,
    stream,
    opened_at: openedAt,
    last_at: lastAt,
    out_of_order: early,
    ...rest
  } = jobRow.parse(row);
  return {
    ...rest,
    stream: streamOf(log, stream),
    station: names.get(log) ?? '',
    openedAt,
    lastAt,
    outOfOrder: z.array(outOfOrderSchema).parse(JSON.parse(early ?? '[]')),
  };
}

/** Of an attempt all that `ProcessRow` has. */
const PROCESS = `a.log, a.at_ms, a.quantity, a.cylinder, a.result, a.flags, a.value, a.expanded, a.source, a.setup, a.tool, a.person,
  a.part, j.stream, j.state`;
const WHOLE_ROW = `${PROCESS}, a.seq, a.number, a.kind, a.side, a.reading, a.peak, j.job, j.vin, j.plate, j.fleet, j.day`;
const ATTEMPTS = (where: string, columns: string) =>
  `SELECT ${columns} FROM attempts a JOIN jobs j ON j.log = a.log AND j.opened = a.opened
   WHERE ${where} ORDER BY a.at_ms, a.log, a.seq`;

/** The columns are checked by hand: a schema would cost more than all the rest. */
class Cells {
  readonly #row: object;
  constructor(row: unknown) {
    if (typeof row !== 'object' || row === null) throw new TypeError('a row of the history is missing');
    this.#row = row;
  }
  textOrNull(column: string): string | null {
    const cell: unknown = Reflect.get(this.#row, column);
    if (cell === null || typeof cell === 'string') return cell;
    throw new TypeError(`column ${column} of the history is no text`);
  }
  text(column: string): string {
    const cell = this.textOrNull(column);
    if (cell === null) throw new TypeError(`column ${column} of the history is empty`);
    return cell;
  }
  /** PostgreSQL gives a large whole number as text. */
  numberOrNull(column: string): number | null {
    const cell: unknown = Reflect.get(this.#row, column);
    if (cell === null || typeof cell === 'number') return cell;
    const value = typeof cell === 'string' ? Number(cell) : Number.NaN;
    if (Number.isFinite(value)) return value;
    throw new TypeError(`column ${column} of the history is no number`);
  }
  number(column: string): number {
    const cell = this.numberOrNull(column);
    if (cell === null) throw new TypeError(`column ${column} of the history is empty`);
    return cell;
  }
  one<T>(list: readonly T[], column: string): T {
    const found = list[this.number(column)];
    if (found === undefined) throw new RangeError(`column ${column} of the history stands for nothing`);
    return found;
  }
  oneOrNull<T>(list: readonly T[], column: string): T | null {
    return this.numberOrNull(column) === null ? null : this.one(list, column);
  }
}

function processReader(shared: Shared): (row: unknown) => ProcessRow {
  const days = new Map<number, string>();
  return (row) => processOf(new Cells(row), shared, days);
}

const DAY_MS = 86_400_000;

function processOf(cells: Cells, shared: Shared, days: Map<number, string>): ProcessRow {
  const setup = shared.of('setup', cells);
  const tool = shared.of('tool', cells);
  const flags = cells.number('flags');
  const quantity = cells.number('quantity') === 1 ? 'length' : 'torque';
  const stage = stageOf(flags);
  const limits = quantity === 'length' ? 'gap_' : stage === 'first' ? 'first_' : '';
  const day = Math.floor(cells.number('at_ms') / DAY_MS);
  const iso = days.get(day) ?? new Date(day * DAY_MS).toISOString().slice(0, 10);
  days.set(day, iso);
  const state = cells.text('state');
  return {
    stream: streamOf(cells.text('log'), cells.text('stream')),
    day: iso,
    quantity,
    cylinder: cells.number('cylinder'),
    tool: tool.text('id'),
    serial: tool.textOrNull('serial'),
    technician: shared.of('person', cells).text('name'),
    result: cells.oneOrNull(RESULTS, 'result'),
    valueSi: cells.numberOrNull('value'),
    expanded: cells.numberOrNull('expanded'),
    stage,
    censored: censoredOf(flags),
    first: (flags & FLAG.first) !== 0,
    last: (flags & FLAG.last) !== 0,
    // Nothing is within limits that there are none of.
    lowerLimit: setup.numberOrNull(`${limits}lower`) ?? Number.NaN,
    upperLimit: setup.numberOrNull(`${limits}upper`) ?? Number.NaN,
    specificationKey: setup.text('specification'),
    engine: setup.textOrNull('engine'),
    source: cells.one(SOURCES, 'source'),
    voided: state === 'void',
    open: state === 'open',
  };
}

function attemptReader(shared: Shared): (row: unknown) => AttemptRow {
  const days = new Map<number, string>();
  return (row) => {
    const cells = new Cells(row);
    const part = shared.of('part', cells);
    const flags = cells.number('flags');
    return {
      ...processOf(cells, shared, days),
      seq: cells.number('seq'),
      at: new Date(cells.number('at_ms')).toISOString(),
      number: cells.number('number'),
      kind: cells.one(KINDS, 'kind'),
      side: cells.oneOrNull(SIDES, 'side'),
      readingSi: cells.numberOrNull('reading'),
      peakStandardSi: cells.numberOrNull('peak'),
      early: (flags & FLAG.early) !== 0,
      held: (flags & FLAG.held) !== 0,
      part: part.text('number'),
      lot: part.textOrNull('lot'),
      job: cells.text('job'),
      on: cells.text('day'),
      certificate: shared.of('tool', cells).textOrNull('certificate'),
      setupKey: shared.of('setup', cells).text('name'),
      vin: cells.textOrNull('vin'),
      plate: cells.textOrNull('plate'),
      fleet: cells.textOrNull('fleet'),
      station: shared.stations.get(cells.text('log')) ?? '',
    };
  };
}

const stationRow = z.object({ log: text, station: text });
const entryRow = z.object({
  log: text,
  seq: number,
  body: text,
  disclosures: text.transform((list) => z.array(text).parse(JSON.parse(list))),
});

async function stationsOf(query: Query, scope: Scope): Promise<readonly StationOfRecords[]> {
  const logs = ofScope(scope, 'l');
  const stations = z
    .array(stationRow)
    .parse(
      await rowsOf(
        query,
        `SELECT l.log, l.station FROM logs l WHERE ${logs.where} ORDER BY l.station, l.log`,
        logs.values,
      ),
    );
  const of = ofScope(scope, 'e');
  const rows = await rowsOf(
    query,
    `SELECT e.log, e.seq, e.body, e.disclosures FROM station_entries e WHERE ${of.where} ORDER BY e.log, e.seq`,
    of.values,
  );
  const entries = new Map(stations.map(({ log }) => [log, [] as StationEntry[]]));
  for (const row of rows) {
    const { log, ...kept } = entryRow.parse(row);
    const entry = entryFrom(kept);
    if (entry !== null && isStationEntry(entry)) entries.get(log)?.push(entry);
  }
  return stations.map(({ log, station }) => ({ log, name: station, entries: entries.get(log) ?? [] }));
}
