/** Questions over all logs of a tenant: the same rows as one station's history gives (db/history.ts). */
import { z } from 'zod';
import { entryFrom } from '../../src/archive/entries.ts';
import { TooMuch } from '../../src/archive/readers.ts';
import type { AttemptRow, ProcessRow } from '../../src/audit/attempt.ts';
import type { AskedJob } from '../../src/audit/questions.ts';
import type { Records, StationOfRecords } from '../../src/audit/records.ts';
import { type Setup, setupSchema } from '../../src/audit/setup.ts';
import { isStationEntry } from '../../src/evidence/entry.ts';
import type { StationEntry } from '../../src/evidence/log.ts';
import { outOfOrderSchema } from '../../src/job/out-of-order.ts';
import { FLAG, KINDS, RESULTS, SIDES, SOURCES } from '../attempts.ts';
import { censoredOf, stageOf } from '../history-rows.ts';
import { sourcesIn } from '../jobs.ts';
import type { Query, Sql, Value } from './sql.ts';
import { type Scope, whereAttempts, whereJobs, whereUsed } from './where.ts';

/** What an answer may have at most: more is no answer that anybody reads, and would take the memory of all others. */
const MOST_ROWS = 500_000;

export function archiveRecords(sql: Sql, scope: Scope): Records {
  const asked = async (text: string, values: readonly Value[]): Promise<readonly unknown[]> => {
    const rows = await sql.transaction(scope.tenant, (query: Query) =>
      query(`${text} LIMIT ${MOST_ROWS + 1}`, ...values),
    );
    if (rows.length > MOST_ROWS) throw new TooMuch();
    return rows;
  };
  const setups = async (names: readonly string[]): Promise<ReadonlyMap<string, Setup>> => {
    const found = new Map<string, Setup>();
    for (const name of names) {
      const { where, values } = ofScope(scope, 's');
      const [row] = await asked(`SELECT s.body FROM setups s WHERE s.name = ? AND ${where}`, [
        name,
        ...values,
      ]);
      if (row !== undefined) found.set(name, setupSchema.parse(JSON.parse(bodyRow.parse(row).body)));
    }
    return found;
  };
  return {
    stations: () => stationsOf(asked, scope),
    attemptsOf: async (filter) => {
      const { where, values } = whereAttempts(scope, filter);
      return (await asked(ATTEMPTS(where), values)).map(attemptReader());
    },
    attemptsIn: async (jobs) => {
      const rows: AttemptRow[] = [];
      for (const { stream } of jobs) {
        const { where, values } = whereAttempts(scope, {});
        const of = `${where} AND j.log = ? AND j.stream = ?`;
        rows.push(...(await asked(ATTEMPTS(of), [...values, ...placeOf(stream)])).map(attemptReader()));
      }
      return rows.sort((a, b) => Date.parse(a.at) - Date.parse(b.at) || a.seq - b.seq);
    },
    processOf: async (filter) => {
      const { where, values } = whereAttempts(scope, filter);
      return (await asked(ATTEMPTS(where, PROCESS), values)).map(processReader());
    },
    jobsOf: async (filter) => {
      const { where, values } = whereJobs(scope, filter);
      const rows = await asked(
        `SELECT ${JOB}, l.station FROM jobs j JOIN logs l ON l.log = j.log WHERE ${where} ORDER BY j.last_at DESC, j.log, j.last DESC`,
        values,
      );
      return rows.map(askedJob);
    },
    setupsOf: (keys) => setups([...keys]),
    specifications: async () => {
      const { where, values } = ofScope(scope, 's');
      const rows = z.array(useRow).parse(
        await asked(
          `SELECT s.specification, min(s.name) AS name, count(*) AS jobs FROM jobs j
           JOIN setups s ON s.log = j.log AND s.setup = j.setup WHERE ${where}
           GROUP BY s.specification ORDER BY count(*) DESC, s.specification`,
          values,
        ),
      );
      const bodies = await setups(rows.map(({ name }) => name));
      return rows.flatMap(({ specification, name, jobs }) => {
        const setup = bodies.get(name);
        return setup === undefined ? [] : [{ specificationKey: specification, setup, jobs }];
      });
    },
    toolUse: async (tool, from) => {
      const { where, values } = whereUsed(scope, tool, from);
      const [row] = await asked(
        `SELECT count(*) AS count, max(a.at_ms) AS last_ms FROM attempts a WHERE ${where}`,
        values,
      );
      const { count, last_ms: lastMs } = usedRow.parse(row);
      return { count, lastAt: lastMs === null ? null : new Date(lastMs).toISOString() };
    },
  };
}

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
const bodyRow = z.object({ body: z.string() });
const useRow = z.object({ specification: z.string(), name: z.string(), jobs: number });
const usedRow = z.object({ count: number, last_ms: number.nullable() });

const JOB = `j.log, j.stream, j.job, j.vin, j.plate, j.fleet, j.opened_at, j.last_at, j.state, j.sources, j.out_of_order`;
const text = z.string();
const jobRow = z.object({
  log: text,
  station: text,
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

function askedJob(row: unknown): AskedJob {
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
    openedAt,
    lastAt,
    outOfOrder: z.array(outOfOrderSchema).parse(JSON.parse(early ?? '[]')),
  };
}

/** Of an attempt all that `ProcessRow` has. */
const PROCESS = `a.log, a.at_ms, a.quantity, a.cylinder, a.result, a.flags, a.value, a.expanded, a.source, j.stream, j.state,
  t.id AS tool, t.serial, p.name AS technician, s.specification, s.engine, s.lower, s.upper, s.first_lower, s.first_upper,
  s.gap_lower, s.gap_upper`;
const WHOLE_ROW = `${PROCESS}, a.seq, a.number, a.kind, a.side, a.reading, a.peak, j.job, j.vin, j.plate, j.fleet, j.day,
  t.certificate, b.number AS part, b.lot, s.name AS setup, l.station`;
const ATTEMPTS = (where: string, columns = WHOLE_ROW) =>
  `SELECT ${columns} FROM attempts a
   JOIN jobs j ON j.log = a.log AND j.opened = a.opened JOIN tools t ON t.log = a.log AND t.tool = a.tool
   JOIN people p ON p.log = a.log AND p.person = a.person JOIN parts b ON b.log = a.log AND b.part = a.part
   JOIN setups s ON s.log = a.log AND s.setup = a.setup JOIN logs l ON l.log = a.log
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

function processReader(): (row: unknown) => ProcessRow {
  const days = new Map<number, string>();
  return (row) => processOf(new Cells(row), days);
}

const DAY_MS = 86_400_000;

function processOf(cells: Cells, days: Map<number, string>): ProcessRow {
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
    tool: cells.text('tool'),
    serial: cells.textOrNull('serial'),
    technician: cells.text('technician'),
    result: cells.oneOrNull(RESULTS, 'result'),
    valueSi: cells.numberOrNull('value'),
    expanded: cells.numberOrNull('expanded'),
    stage,
    censored: censoredOf(flags),
    first: (flags & FLAG.first) !== 0,
    last: (flags & FLAG.last) !== 0,
    // Nothing is within limits that there are none of.
    lowerLimit: cells.numberOrNull(`${limits}lower`) ?? Number.NaN,
    upperLimit: cells.numberOrNull(`${limits}upper`) ?? Number.NaN,
    specificationKey: cells.text('specification'),
    engine: cells.textOrNull('engine'),
    source: cells.one(SOURCES, 'source'),
    voided: state === 'void',
    open: state === 'open',
  };
}

function attemptReader(): (row: unknown) => AttemptRow {
  const days = new Map<number, string>();
  return (row) => {
    const cells = new Cells(row);
    const flags = cells.number('flags');
    return {
      ...processOf(cells, days),
      seq: cells.number('seq'),
      at: new Date(cells.number('at_ms')).toISOString(),
      number: cells.number('number'),
      kind: cells.one(KINDS, 'kind'),
      side: cells.oneOrNull(SIDES, 'side'),
      readingSi: cells.numberOrNull('reading'),
      peakStandardSi: cells.numberOrNull('peak'),
      early: (flags & FLAG.early) !== 0,
      held: (flags & FLAG.held) !== 0,
      part: cells.text('part'),
      lot: cells.textOrNull('lot'),
      job: cells.text('job'),
      on: cells.text('day'),
      certificate: cells.textOrNull('certificate'),
      setupKey: cells.text('setup'),
      vin: cells.textOrNull('vin'),
      plate: cells.textOrNull('plate'),
      fleet: cells.textOrNull('fleet'),
      station: cells.text('station'),
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

async function stationsOf(
  asked: (text: string, values: readonly Value[]) => Promise<readonly unknown[]>,
  scope: Scope,
): Promise<readonly StationOfRecords[]> {
  const logs = ofScope(scope, 'l');
  const stations = z
    .array(stationRow)
    .parse(
      await asked(
        `SELECT l.log, l.station FROM logs l WHERE ${logs.where} ORDER BY l.station, l.log`,
        logs.values,
      ),
    );
  const of = ofScope(scope, 'e');
  const rows = await asked(
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
