import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { z } from 'zod';
import { backUpLog } from '../../../db/backup.ts';
import { openStationLog, type StationLogFile } from '../../../db/log.ts';
import { processGroups } from '../../../src/audit/capability.ts';
import { judgeAgain } from '../../../src/audit/impact.ts';
import type { Certificate } from '../../../src/instrument/certificate.ts';
import type { Measurement } from '../measurement.ts';
import { generate, PULLS_A_JOB } from './generate.ts';
import { DAY_MS, START_MS, vinAt, WRENCH_SERIALS, YEARS } from './station.ts';

const REPEATS = 7;
/** The wrench and the year that are looked back upon. */
const WRENCH = WRENCH_SERIALS[6] ?? '';
const YEAR = { from: '2024-01-01', to: '2024-12-31' };

/** What questions to the records cost as they grow, on an invented station of five years and 40 wrenches. */
export const history: Measurement = {
  name: 'history',
  what: 'questions to the records from 10^4 pulls on [most=100000 backup=0]',
  async run({ number, progress }) {
    const most = number('most', 100_000);
    const lines: string[] = [];
    for (let pulls = 10_000; pulls <= most; pulls *= 10) {
      const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
      try {
        lines.push(...(await one(join(folder, 'station.db'), pulls, number('backup', 0) === 1, progress)));
      } finally {
        rmSync(folder, { recursive: true });
      }
    }
    return lines;
  },
};

async function one(
  path: string,
  pulls: number,
  withBackup: boolean,
  progress: (share: number, note: string) => void,
): Promise<readonly string[]> {
  const made = await timed(() => generate(path, pulls / PULLS_A_JOB, progress));
  const listed = await timed(async () => (await openStationLog(path)).close());
  let log = await openStationLog(path);
  const folded = await timed(() =>
    log.history.bringUpToDate((done, of) => progress(done / of, `${done} of ${of} jobs folded`)),
  );
  log.close();
  const open = await median(async () => {
    log = await openStationLog(path);
    todaysJobs(log);
    log.close();
  });
  log = await openStationLog(path);
  try {
    const { history } = log;
    const key = history.specifications()[0]?.specificationKey ?? '';
    const engine = { specification: key, quantity: 'torque' } as const;
    const byWrench = { serial: WRENCH, ...YEAR, quantity: 'torque' } as const;
    const vins = log.lastJobs(50).flatMap(({ vin }) => (vin === null ? [] : [vin]));
    let found = 0;
    const byVin = await median(() => {
      for (const vin of vins) found += history.attemptsOf({ vin }).length;
    });
    const rows = await median(() => void history.attemptsOf(byWrench));
    const impact = await median(() => void judgedAgain(log, byWrench));
    const capable = await median(() => void processGroups(history.processOf(engine), 'specification'));
    const counts = { wrench: history.attemptsOf(byWrench).length, engine: history.attemptsOf(engine).length };
    const backup = withBackup ? await timed(() => backUpLog(path, `${path}.copy`)) : null;
    return [
      `${pulls} pulls asked for: ${made.value.jobs} V8 jobs, ${made.value.entries} entries, ${megabytes(path)}`,
      row('generated', made.ms),
      row('list of jobs made again from the entries', listed.ms),
      row('all attempts folded from the entries', folded.ms),
      row("opened, and today's jobs listed", open, 100),
      row(`look-up by VIN (${(found / vins.length / REPEATS).toFixed(0)} attempts)`, byVin / vins.length, 20),
      row(`a wrench over a year, rows (${counts.wrench} attempts)`, rows),
      row('the same, judged again', impact, 2000),
      row(`capability of one engine (${counts.engine} attempts)`, capable, 300),
      ...(backup === null ? [] : [row('backed up and read through', backup.ms)]),
      ...sizes(path),
      ...plans(log, key),
      '',
    ];
  } finally {
    log.close();
  }
}

function todaysJobs(log: StationLogFile): number {
  const today = new Date(START_MS + (YEARS * 365 - 1) * DAY_MS).toISOString().slice(0, 10);
  return log.history.jobsOf({ from: today, to: today }).length;
}

/** What the laboratory found: 3 % too high everywhere. */
const FOUND: Certificate = {
  number: 'EXAMPLE-AS-FOUND',
  laboratory: 'Example Calibration Laboratory',
  serial: WRENCH,
  date: '2025-01-02',
  unit: 'N.m',
  points: [10, 20, 30, 40, 60].map((reading) => ({ reading, error: 0.03 * reading, expanded: 0.2, k: 2 })),
};

function judgedAgain(
  { history: asked }: StationLogFile,
  filter: Parameters<StationLogFile['history']['attemptsOf']>[0],
): number {
  const rows = asked.attemptsOf(filter);
  const keys = new Set(rows.map(({ setupKey }) => setupKey));
  const setups = new Map([...keys].map((key) => [key, asked.setupOf(key)]));
  return judgeAgain(rows, { certificate: FOUND, setups }).length;
}

const sizeSchema = z.array(z.strictObject({ name: z.string(), bytes: z.int() }));
const LOG_TABLES = [
  'entries',
  'sqlite_autoindex_packed_1',
  'subtrees',
  'checkpoints',
  'streams',
  'sqlite_autoindex_streams_1',
  'dictionaries',
];

function sizes(path: string): readonly string[] {
  const db = new Sqlite(path, { readonly: true });
  try {
    const all = sizeSchema.parse(
      db.prepare('SELECT name, sum(pgsize) AS bytes FROM dbstat GROUP BY name ORDER BY bytes DESC').all(),
    );
    const rows = Number(db.prepare('SELECT count(*) FROM attempts').pluck().get());
    const bodies = Number(db.prepare('SELECT sum(length(body)) FROM entries').pluck().get());
    const sum = (some: typeof all) => some.reduce((total, { bytes }) => total + bytes, 0);
    const isLog = ({ name }: (typeof all)[number]) => LOG_TABLES.includes(name);
    const each = (bytes: number) => `${(bytes / rows).toFixed(0).padStart(6)} B an attempt`;
    return [
      `  ${rows} attempts (pulls and gap readings); bytes of the database for each:`,
      `    all of it, goal below 1000              ${each(sum(all))}`,
      `    the log, which every record rests on    ${each(sum(all.filter(isLog)))}, of which text ${(bodies / rows).toFixed(0)} B, deflated`,
      `    the history                             ${each(sum(all.filter((one) => !isLog(one))))}`,
      ...all.slice(0, 8).map(({ name, bytes }) => `      ${name.padEnd(36)}${each(bytes)}`),
    ];
  } finally {
    db.close();
  }
}

function plans({ history }: StationLogFile, specification: string): readonly string[] {
  const plan = (title: string, steps: readonly string[]) => [
    `  ${title}`,
    ...steps.map((step) => `    ${step}`),
  ];
  return [
    ...plan('plan: attempts by VIN', history.plan('attempts', { vin: vinAt(0) })),
    ...plan('plan: attempts of a wrench over a year', history.plan('attempts', { serial: WRENCH, ...YEAR })),
    ...plan('plan: attempts of one engine', history.plan('attempts', { specification, quantity: 'torque' })),
    ...plan("plan: today's jobs", history.plan('jobs', { from: YEAR.to, to: YEAR.to })),
  ];
}

async function timed<T>(work: () => T | Promise<T>): Promise<{ readonly value: T; readonly ms: number }> {
  const started = performance.now();
  const value = await work();
  return { value, ms: performance.now() - started };
}

async function median(work: () => unknown): Promise<number> {
  const times = [];
  for (let i = 0; i < REPEATS; i++) times.push((await timed(work)).ms);
  return times.sort((a, b) => a - b)[REPEATS >> 1] ?? Number.NaN;
}

const row = (what: string, ms: number, goal?: number) =>
  `  ${what.padEnd(52)} ${ms.toFixed(1).padStart(10)} ms${goal === undefined ? '' : `  (goal ${goal})`}`;
const megabytes = (path: string) => `${(statSync(path).size / 1e6).toFixed(0)} MB`;
