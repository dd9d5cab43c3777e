/** What an archive makes of the logs that it keeps: the same rows as each station has, over all of them, and each job judged again. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OF_HISTORY } from '../../db/archive/history-schema.ts';
import { openPostgres } from '../../db/archive/postgres.ts';
import type { Sql } from '../../db/archive/sql.ts';
import { openSqlite } from '../../db/archive/sqlite.ts';
import { archiveStore } from '../../db/archive/store.ts';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import type { ShippedEntry } from '../../src/archive/bundle.ts';
import { bringUpToDate, judgeWaiting } from '../../src/archive/read-history.ts';
import type { ArchiveStore } from '../../src/archive/store.ts';
import type { AttemptRow } from '../../src/audit/attempt.ts';
import type { AttemptFilter, JobsFilter, Records } from '../../src/audit/records.ts';
import { recordsOf } from '../../src/cli/audit/records.ts';
import { digestOf } from '../../src/evidence/disclosures.ts';
import { type ShopJob, workIn } from '../audit/shop.ts';
import { keepEntries, keepStation } from './kept-station.ts';
import { postgresPrograms, startPostgres, type TestPostgres } from './postgres.ts';

const bin = postgresPrograms();
if (bin === null && process.env['ALL_TESTS'] === '1')
  throw new Error('PostgreSQL is missing: apt-get install postgresql');

const VAN = { vin: 'ZZ9EXAMP1PM000104', plate: 'EXAMPLE 4', fleet: 'BUS-12' };
const CAR = { vin: 'ZZ9EXAMP9PM000108', plate: 'EXAMPLE 8' };
const BAY_1: readonly ShopJob[] = [
  { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 29.2], vehicle: VAN },
  { job: 'J-2', on: '2026-03-11', peaks: [27, 27, 27, 27], vehicle: CAR, technician: 'Technician Two' },
  { job: 'J-4', on: '2026-06-01', peaks: [27], vehicle: { fleet: 'BUS-12' }, closed: false },
];
// The same wrench, lent to the bay next door; a job of the same number on the same van.
const BAY_2: readonly ShopJob[] = [
  { job: 'J-1', on: '2026-04-03', peaks: [27, 26, 24, 27], vehicle: VAN },
  { job: 'J-9', on: '2026-05-11', peaks: [27, 27, 27, 27], vehicle: { plate: 'EXAMPLE 9' } },
];

let folder = '';
let server: TestPostgres | null = null;
const logs: StationLogFile[] = [];
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  for (const [name, jobs] of [
    ['bay-1', BAY_1],
    ['bay-2', BAY_2],
    ['other', BAY_2],
  ] as const) {
    await workIn(join(folder, name), jobs);
    logs.push(await openStationLog(join(folder, name, 'station.db')));
  }
  if (bin !== null) server = await startPostgres(bin);
}, 120_000);
afterAll(async () => {
  for (const log of logs) log.close();
  await server?.stop();
  rmSync(folder, { recursive: true, force: true });
});

const KINDS: readonly (readonly [string, () => Promise<Sql>])[] = [
  ['SQLite', () => openSqlite(join(folder, 'archive.db'))],
  ...(bin === null ? [] : [['PostgreSQL', () => openPostgres(server?.url ?? '')] as const]),
];

const ATTEMPT_QUESTIONS: readonly AttemptFilter[] = [
  {},
  { vin: 'zz9-examp 1pm000104' },
  { plate: 'example8' },
  { fleet: 'bus 12' },
  { technician: 'technician two' },
  { tool: 'example-w-1', quantity: 'torque' },
  { serial: 'EXAMPLE-W-1', from: '2026-03-01' },
  { part: 'EXAMPLE-14G', to: '2026-03-11' },
  { exceptionsOnly: true },
  { quantity: 'length', from: '2026-02-03', to: '2026-02-03' },
  { job: 'J-1' },
  { specification: '0' },
  { tool: 'nobody' },
];
const JOB_QUESTIONS: readonly JobsFilter[] = [
  ...ATTEMPT_QUESTIONS.map(({ quantity: _quantity, ...filter }) => filter),
  { state: 'open' },
  { state: 'complete', technician: 'Technician One' },
];

/** Rows without what only records of several stations have, or the archive names in its own way. */
const bare = <T extends { readonly stream: string; readonly station?: string }>(rows: readonly T[]) =>
  rows.map(({ station: _station, stream: _stream, ...row }) => row);
const byTime = (a: AttemptRow, b: AttemptRow) => Date.parse(a.at) - Date.parse(b.at) || a.seq - b.seq;

describe.each(KINDS)('the history of an archive in %s', (_name, open) => {
  let store: ArchiveStore;
  let bays: readonly string[] = [];
  let fleet: Records;
  beforeAll(async () => {
    store = archiveStore(await open());
    bays = [
      await keepStation(store, join(folder, 'bay-1'), { tenant: 'north', name: 'Bay 1' }),
      await keepStation(store, join(folder, 'bay-2'), { tenant: 'north', name: 'Bay 2' }),
    ];
    const other = await keepStation(store, join(folder, 'other'), { tenant: 'south', name: 'Other' });
    for (const log of [...bays, other]) await bringUpToDate(store, log);
    fleet = store.readers.records({ tenant: 'north', log: null });
  });
  afterAll(() => store.close());

  const stations = () => logs.map((log) => recordsOf(log));
  const own = (): readonly Records[] => stations().slice(0, 2);

  it.each(ATTEMPT_QUESTIONS)('has the attempts of all bays, as each bay has them: %o', async (filter) => {
    const each = await Promise.all(own().map((one) => one.attemptsOf(filter)));
    const rows = await fleet.attemptsOf(filter);
    expect(bare([...rows].sort(byTime))).toEqual(bare(each.flat().sort(byTime)));
    const process = await Promise.all(own().map((one) => one.processOf(filter)));
    expect(bare(await fleet.processOf(filter))).toHaveLength(process.flat().length);
  });

  it.each(JOB_QUESTIONS)('has the jobs of all bays, as each bay has them: %o', async (filter) => {
    const each = await Promise.all(own().map((one) => one.jobsOf(filter)));
    const jobs = await fleet.jobsOf(filter);
    const sorted = (all: readonly { readonly job: string; readonly openedAt: string }[]) =>
      [...all].sort((a, b) => (a.openedAt < b.openedAt ? -1 : 1));
    expect(sorted(bare(jobs))).toEqual(sorted(bare(each.flat())));
    const attempts = await fleet.attemptsIn(jobs);
    expect(new Set(attempts.map(({ stream }) => stream)).size).toBeLessThanOrEqual(jobs.length);
  });

  it('tells two jobs of one number apart, and says whose each is', async () => {
    const jobs = await fleet.jobsOf({ job: 'J-1' });
    expect(jobs.map(({ station, openedAt }) => [station, openedAt.slice(0, 10)])).toEqual([
      ['Bay 2', '2026-04-03'],
      ['Bay 1', '2026-02-03'],
    ]);
    const rows = await fleet.attemptsIn(jobs.slice(0, 1));
    expect(new Set(rows.map(({ station }) => station))).toEqual(new Set(['Bay 2']));
    expect(rows).toHaveLength(8);
  });

  it('follows a wrench from bay to bay, and has what jobs were opened with', async () => {
    const rows = await fleet.attemptsOf({ serial: 'EXAMPLE-W-1' });
    expect([...new Set(rows.map(({ station }) => station))]).toEqual(['Bay 1', 'Bay 2']);
    const [one, two] = await Promise.all(own().map((bay) => bay.toolUse('EXAMPLE-W-1', '2026-01-01')));
    const use = await fleet.toolUse('EXAMPLE-W-1', '2026-01-01');
    expect(use.count).toBe((one?.count ?? 0) + (two?.count ?? 0));
    const keys = new Set(rows.map(({ setupKey }) => setupKey));
    const setups = await fleet.setupsOf(keys);
    expect(setups).toEqual(await own()[0]?.setupsOf(keys));
    const [specification, ...others] = await fleet.specifications();
    expect([specification?.jobs, others]).toEqual([5, []]);
  });

  it('has what each station says of itself', async () => {
    const there = await fleet.stations();
    expect(there.map(({ name }) => name)).toEqual(['Bay 1', 'Bay 2']);
    expect(there.map(({ entries }) => entries)).toEqual(logs.slice(0, 2).map((log) => log.stationEntries()));
  });

  it('shows a tenant nothing of another, and one log nothing of the others', async () => {
    for (const scope of [
      { tenant: 'nobody', log: null },
      { tenant: 'south', log: bays[0] ?? '' },
    ]) {
      const records = store.readers.records(scope);
      expect(await records.attemptsOf({})).toEqual([]);
      expect(await records.processOf({})).toEqual([]);
      expect(await records.jobsOf({})).toEqual([]);
      expect(await records.stations()).toEqual([]);
      expect(await records.specifications()).toEqual([]);
      expect(await records.toolUse('EXAMPLE-W-1', '2026-01-01')).toEqual({ count: 0, lastAt: null });
      const jobs = await fleet.jobsOf({});
      expect(await records.attemptsIn(jobs)).toEqual([]);
      const keys = (await fleet.attemptsOf({})).map(({ setupKey }) => setupKey);
      expect((await records.setupsOf(keys)).size).toBe(0);
    }
    const bay = store.readers.records({ tenant: 'north', log: bays[1] ?? '' });
    expect(new Set((await bay.attemptsOf({})).map(({ station }) => station))).toEqual(new Set(['Bay 2']));
    expect((await bay.stations()).map(({ name }) => name)).toEqual(['Bay 2']);
    expect(await bay.attemptsOf({ log: bays[0] ?? '' })).toEqual([]);
  });

  it('judges again each job that was closed, once, and keeps how it came out', async () => {
    const [first = ''] = bays;
    const done = await judgeWaiting(store, first);
    expect(done.map(({ stream, judged }) => [stream, judged])).toEqual([
      ['job:J-1', { as: 'same', pulls: 4, lacks: [] }],
      ['job:J-2', { as: 'same', pulls: 4, lacks: [] }],
    ]);
    expect(await judgeWaiting(store, first)).toEqual([]);
    expect(await store.history.judged(first)).toEqual(
      done.map(({ stream, opened, judged }) => ({ stream, opened, judged })),
    );
  });
});

describe.runIf(bin !== null)('the tables of a history in PostgreSQL', () => {
  it('show a tenant nothing of another, though nobody asks for its name', async () => {
    const sql = await openPostgres(server?.url ?? '');
    const store = archiveStore(sql);
    const until = '2999-01-01T00:00:00.000Z';
    const read = { at: until, reader: 'Auditor', question: 'jobs' };
    await store.readers.add('hash', { tenant: 'north', log: null, name: 'Auditor' }, until);
    await store.readers.noteRead({ ...read, tenant: 'north' });
    for (const table of ['judged', 'readers', 'reads', ...OF_HISTORY]) {
      const rowsFor = (tenant: string) =>
        sql.transaction(tenant, (query) => query(`SELECT DISTINCT tenant FROM ${table}`));
      expect(await rowsFor('north'), table).toEqual([{ tenant: 'north' }]);
      expect(await rowsFor('nobody'), table).toEqual([]);
    }
    await store.close();
  });
});

describe.each(KINDS)('an archive in %s that is shipped little by little', (name, open) => {
  let store: ArchiveStore;
  beforeAll(async () => {
    store = archiveStore(await open());
  });
  afterAll(() => store.close());

  const shipped = (): readonly ShippedEntry[] => logs[0]?.signedAfter(0, 100_000) ?? [];
  const enrolled = async (id: string) => {
    await store.enrol({ id, tenant: `slow-${name}`, origin: `example.com/${id}`, station: 'Slow', vkey: id });
    return id;
  };

  it('comes to the same as one that got all of it at once', async () => {
    const id = await enrolled('00000000-0000-8000-8000-00000000aa01');
    const entries = shipped();
    for (const size of [1, 2, 40, 41, 300, entries.length]) {
      await keepEntries(store, id, entries.slice(0, Math.min(size, entries.length)));
      await bringUpToDate(store, id);
    }
    const records = store.readers.records({ tenant: `slow-${name}`, log: null });
    expect(bare(await records.attemptsOf({}))).toEqual(
      bare(await recordsOf(logs[0] as StationLogFile).attemptsOf({})),
    );
    expect((await records.stations())[0]?.entries).toEqual(logs[0]?.stationEntries());
  });

  it('judges a job whose samples were changed under the station key as one that parts', async () => {
    const id = await enrolled('00000000-0000-8000-8000-00000000aa02');
    const entries = shipped().map((entry) =>
      entry.body.includes('"pull":4,') && entry.body.includes('"type":"pull-placed"')
        ? { ...entry, body: entry.body.replace('"result":"OK"', '"result":"NotOK"') }
        : entry,
    );
    expect(entries).not.toEqual(shipped());
    await keepEntries(store, id, entries);
    const [first] = await judgeWaiting(store, id);
    expect(first?.judged).toMatchObject({ as: 'parted', event: 'pull-placed' });
  });

  it('goes on past entries that are no job and no entry at all', async () => {
    const id = await enrolled('00000000-0000-8000-8000-00000000aa03');
    const entries = [...shipped()];
    const size = entries.length;
    const odd = [
      '{"seq":1,"stream":"job:J-1"}',
      'not JSON',
      `{"event":{"type":"job-opened"},"n":1,"seq":${size + 3},"stream":"job:ODD","v":1}`,
      `{"event":{"type":"job-closed"},"n":1,"seq":${size + 4},"stream":"station","v":1}`,
    ].map((body) => ({ body, disclosures: [] }));
    await keepEntries(store, id, [...entries, ...odd]);
    const done = await judgeWaiting(store, id);
    expect(done.map(({ stream, judged }) => `${stream} ${judged.as}`)).toEqual([
      'job:J-1 same',
      'job:J-2 same',
      'job:ODD unreadable',
    ]);
    const records = store.readers.records({ tenant: `slow-${name}`, log: id });
    expect((await records.jobsOf({})).map(({ job }) => job).sort()).toEqual(['J-1', 'J-2', 'J-4']);
  });

  it('does not take up a job that is longer than a record may be, whatever its key signed', async () => {
    const id = await enrolled('00000000-0000-8000-8000-00000000aa06');
    const long = Array.from({ length: 36 }, (_, i) => ({
      body: `{"event":{"type":"noted","words":"${'x'.repeat(1 << 20)}"},"n":${i + 1},"seq":${i + 1},"stream":"job:LONG","v":1}`,
      disclosures: [],
    }));
    await keepEntries(store, id, long.slice(0, 34));
    await bringUpToDate(store, id);
    await keepEntries(store, id, long);
    const [done, ...more] = await judgeWaiting(store, id);
    expect([done?.stream, done?.judged, more]).toEqual(['job:LONG', { as: 'too-long' }, []]);
    expect(await store.readers.records({ tenant: `slow-${name}`, log: id }).jobsOf({})).toEqual([]);
  });

  it('is not stopped by what a database cannot hold', async () => {
    const id = await enrolled('00000000-0000-8000-8000-00000000aa05');
    const plate = JSON.stringify('EXAMPLE 8');
    const entries = shipped().map(({ body, disclosures }) => {
      const odd = disclosures.map((one) => {
        const text = Buffer.from(one, 'base64url').toString('utf8');
        return text.includes(plate)
          ? Buffer.from(text.replace(plate, '"EXAMPLE \\u00008"')).toString('base64url')
          : one;
      });
      const changed = disclosures.flatMap((one, i) => (one === odd[i] ? [] : [[one, odd[i] ?? '']]));
      const signed = changed.reduce(
        (text, [from = '', to = '']) => text.replace(digestOf(from), digestOf(to)),
        body.replaceAll('"pull":4,', '"pull":4294967296,'),
      );
      return { body: signed, disclosures: odd };
    });
    await keepEntries(store, id, entries);
    await bringUpToDate(store, id);
    const records = store.readers.records({ tenant: `slow-${name}`, log: id });
    expect((await records.jobsOf({})).map(({ job }) => job)).toContain('J-4');
    expect((await store.history.mark(id))?.read).toBe(entries.length);
  });

  it('has nothing of a text that the log forgot, however it was asked before', async () => {
    const id = await enrolled('00000000-0000-8000-8000-00000000aa04');
    const entries = shipped();
    await keepEntries(store, id, entries);
    await judgeWaiting(store, id);
    const records = store.readers.records({ tenant: `slow-${name}`, log: id });
    expect(await records.jobsOf({ plate: CAR.plate })).toHaveLength(1);
    const index = entries.findIndex(({ disclosures }) =>
      disclosures.some((one) => Buffer.from(one, 'base64url').toString('utf8').includes(CAR.plate)),
    );
    const forgotten = [0, 1, 2, 3, 4].map((text) => ({ index, text }));
    const stale = await store.history.mark(id);
    await store.change(id, () => ({ answer: 0, writes: { forgotten } }));
    expect(await records.jobsOf({})).toEqual([]);
    // What was read before the text was forgotten is not written any more.
    if (stale === null) throw new Error('nothing is cosigned');
    const part = { read: stale.size, jobs: [], station: [] };
    expect(await store.history.write(id, stale, part)).toBe(false);
    expect(await store.history.write(id, { ...stale, read: 0 }, part)).toBe(false);
    expect(await judgeWaiting(store, id)).toEqual([]);
    expect(await records.jobsOf({ plate: CAR.plate })).toEqual([]);
    const rows = await records.attemptsOf({ job: 'J-2' });
    expect(rows).toHaveLength(8);
    expect(JSON.stringify(rows)).not.toContain(CAR.plate);
    expect(JSON.stringify(rows)).not.toContain('Technician Two');
  });
});
