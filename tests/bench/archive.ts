/**
 * What questions to an archive cost over many stations, on PostgreSQL of this machine with rows that are made up in it: no
 * entries lie behind them, so shipping and folding are not measured here.
 */
import { openPostgres } from '../../db/archive/postgres.ts';
import type { Query } from '../../db/archive/sql.ts';
import { archiveStore } from '../../db/archive/store.ts';
import { processGroups } from '../../src/audit/capability.ts';
import type { Records } from '../../src/audit/records.ts';
import { canonical } from '../../src/evidence/canonical.ts';
import { postgresPrograms, startPostgres } from '../archive/postgres.ts';
import type { Measurement } from './measurement.ts';

const REPEATS = 5;
const ATTEMPTS_A_JOB = 16;
const TENANTS = 10;
const FROM_MS = Date.parse('2024-01-01T06:00:00.000Z');
const YEARS = 2;
const DAY_MS = 86_400_000;

export const archive: Measurement = {
  name: 'archive',
  what: 'questions over all stations of an archive in PostgreSQL [attempts=1000000 stations=1000]',
  async run({ number, progress }) {
    const bin = postgresPrograms();
    if (bin === null) return ['PostgreSQL is not installed: apt-get install postgresql'];
    const attempts = number('attempts', 1_000_000);
    const stations = number('stations', 1000);
    const server = await startPostgres(bin);
    const sql = await openPostgres(server.url);
    const store = archiveStore(sql);
    try {
      const generated = await timed(() =>
        generate((work) => sql.transaction(null, work), { attempts, stations, progress }),
      );
      // As the server does by itself.
      await sql.transaction(null, (query) => query('ANALYZE'));
      const records = store.readers.records({ tenant: 'tenant-3', log: null });
      const bytes = await bytesOf((work) => sql.transaction(null, work));
      return [
        `${attempts} attempts, ${stations} stations, ${TENANTS} tenants, ${YEARS} years`,
        row('made up in the database', generated, null, 0),
        ...(await questions(records)),
        `${'bytes an attempt, tables and indexes of the history'.padEnd(60)} ${(bytes / attempts).toFixed(0)}`,
      ];
    } finally {
      await store.close();
      await server.stop();
    }
  },
};

type Transaction = <T>(work: (query: Query) => Promise<T>) => Promise<T>;

const STEP = 200_000;

/** The tenth station of each ten belongs to the tenth tenant; the wrench W-7 of a tenant goes round its stations. */
async function generate(
  transaction: Transaction,
  {
    attempts,
    stations,
    progress,
  }: {
    readonly attempts: number;
    readonly stations: number;
    readonly progress: (share: number, note: string) => void;
  },
): Promise<void> {
  const log = "lpad(to_hex(s), 8, '0') || '-0000-8000-8000-000000000000'";
  const tenant = `'tenant-' || (s % ${TENANTS})`;
  const setup = canonical({ made: 'up' });
  await transaction(async (query) => {
    await query(
      `INSERT INTO logs SELECT ${log}, ${tenant}, 'example.com/' || s, 'Bay ' || s, 'open', 0, NULL, NULL, NULL, NULL, NULL, NULL, 0, 0
       FROM generate_series(0, ${stations - 1}) s`,
    );
    await query(
      `INSERT INTO setups SELECT ${log}, k, ${tenant}, 'setup-' || k, lpad(to_hex(k), 4, '0'), 'Engine ' || k, 25, 30, NULL, NULL, 0.7, 0.8, '${setup}'
       FROM generate_series(0, ${stations - 1}) s, generate_series(0, 19) k`,
    );
    await query(
      `INSERT INTO tools SELECT ${log}, k, ${tenant}, 'wrench', 'W-' || k, 'CAL-' || k, 'WRENCH', 'W' || k
       FROM generate_series(0, ${stations - 1}) s, generate_series(0, 39) k`,
    );
    await query(
      `INSERT INTO people SELECT ${log}, k, ${tenant}, 'Technician ' || k, 'TECHNICIAN' || k
       FROM generate_series(0, ${stations - 1}) s, generate_series(0, 9) k`,
    );
    await query(
      `INSERT INTO parts SELECT ${log}, k, ${tenant}, 'EXAMPLE-14G', 'L-' || k, 'EXAMPLE14G', 'L' || k
       FROM generate_series(0, ${stations - 1}) s, generate_series(0, 39) k`,
    );
  });
  // Jobs of a station come one after the other; a number spreads what jobs differ in.
  const spread = '((j * 2654435761) % 4294967296)';
  const jobs = Math.floor(attempts / ATTEMPTS_A_JOB);
  const place = `(SELECT j, j % ${stations} AS s, (j / ${stations}) * 400 + 1 AS opened, ${spread} AS r,
    ${FROM_MS} + (j * ${YEARS * 365} / ${jobs}) * ${DAY_MS} + (j % 36000) * 1000 AS ms`;
  const iso = (ms: string) =>
    `to_char(to_timestamp(${ms} / 1000.0) AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;
  for (let from = 0; from < jobs; from += STEP / ATTEMPTS_A_JOB) {
    const to = Math.min(jobs, from + STEP / ATTEMPTS_A_JOB) - 1;
    const of = `${place} FROM generate_series(${from}::bigint, ${to}) j) p`;
    await transaction(async (query) => {
      await query(
        `INSERT INTO jobs SELECT ${log}, opened, ${tenant}, 'job:J-' || j, opened + 399, '[0]', 'J-' || j, 'complete', ${iso('ms')},
           ${iso('ms')}, 'ZZ9EXAMP' || (j % 100000), NULL, NULL, 'ZZ9EXAMP' || (j % 100000), NULL, NULL, left(${iso('ms')}, 10), r % 20, 1, NULL
         FROM ${of}`,
      );
      await query(
        `INSERT INTO attempts SELECT ${log}, opened + 10 + 20 * a, ${tenant}, opened, r % 20, ms + a * 30000, a % 2, a / 2 + 1, a + 1,
           r % 40, r % 10, r % 40, CASE a % 2 WHEN 1 THEN 8 ELSE 0 END, 0, CASE WHEN (r + a) % 100 = 0 THEN 1 ELSE 0 END,
           CASE WHEN (r + a) % 100 = 0 THEN 1 ELSE 0 END, 3, CASE WHEN (r + a) % 100 = 0 THEN 1 ELSE 0 END,
           27 + (r % 100) / 100.0, 27 + (r % 100) / 100.0, 0.6, 0.03
         FROM ${of}, generate_series(0, ${ATTEMPTS_A_JOB - 1}) a`,
      );
    });
    progress(to / jobs, `${to} of ${jobs} jobs`);
  }
}

/** The aims are those for 10^7 attempts. */
async function questions(records: Records): Promise<readonly string[]> {
  const lines: string[] = [];
  const ask = async (what: string, aimMs: number, work: () => Promise<{ readonly length: number }>) => {
    const found = (await work()).length;
    const times: number[] = [];
    for (let i = 0; i < REPEATS; i++) times.push(await timed(work));
    lines.push(row(what, times.sort((a, b) => a - b)[REPEATS >> 1] ?? 0, aimMs, found));
  };
  const monthAgo = new Date(FROM_MS + (YEARS * 365 - 30) * DAY_MS).toISOString().slice(0, 10);
  await ask('a vehicle', 20, () => records.attemptsOf({ vin: 'ZZ9EXAMP33' }));
  await ask('its jobs', 20, () => records.jobsOf({ vin: 'ZZ9EXAMP33' }));
  await ask('a lot', 50, () => records.attemptsOf({ lot: 'L-33' }));
  await ask('exceptions of 30 days', 50, () => records.attemptsOf({ exceptionsOnly: true, from: monthAgo }));
  await ask('capability of one specification', 400, async () =>
    processGroups(await records.processOf({ specification: '0003', quantity: 'torque' }), 'specification'),
  );
  await ask('a wrench over a year', 1000, () =>
    records.attemptsOf({ serial: 'W-7', from: '2025-01-01', to: '2025-12-31' }),
  );
  return lines;
}

async function bytesOf(transaction: Transaction): Promise<number> {
  const rows = await transaction((query) =>
    query(
      "SELECT sum(pg_total_relation_size(t::regclass)) AS bytes FROM unnest(ARRAY['jobs', 'attempts', 'setups', 'tools', 'people', 'parts']) t",
    ),
  );
  return Number(Reflect.get(Object(rows[0]), 'bytes'));
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const startedMs = performance.now();
  await work();
  return performance.now() - startedMs;
}

const row = (what: string, ms: number, aimMs: number | null, found: number) =>
  `${`${what}${found === 0 ? '' : ` (${found} rows)`}`.padEnd(60)} ${ms.toFixed(1).padStart(9)} ms${aimMs === null ? '' : `  (at 10^7: ${aimMs})`}`;
