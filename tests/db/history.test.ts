import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import type { AttemptRow } from '../../src/audit/attempt.ts';
import type { AttemptFilter } from '../../src/audit/records.ts';
import { generate } from '../bench/history/generate.ts';
import { AT, drafts, opening, wholeJob } from '../evidence/sample-job.ts';
import { withoutRules, withPlain } from './plain.ts';

let folder: string;
let path: string;
let log: StationLogFile;
let all: readonly AttemptRow[];
const stamp = { at: AT, monoUs: 1000 };

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'history-'));
  path = join(folder, 'station.db');
  await generate(path, 45, () => {});
  log = await openStationLog(path);
  all = log.history.attemptsOf({});
});
afterAll(() => {
  log.close();
  rmSync(folder, { recursive: true });
});

const some = () => all[200] ?? all[0];
const of = (filter: AttemptFilter) => log.history.attemptsOf(filter);

describe('the generated history', () => {
  it('is a log like any other, and holds an attempt for each that was placed', () => {
    expect(log.check()).toBeNull();
    const placed = log
      .streams()
      .flatMap((stream) => log.entries(stream))
      .filter(({ event }) => event.type === 'pull-placed' || event.type === 'gap-measured');
    expect(all).toHaveLength(placed.length);
    expect(new Set(all.map(({ seq }) => seq))).toEqual(new Set(placed.map(({ seq }) => seq)));
  });
});

describe('a question to the history', () => {
  const one = () => {
    const row = some();
    if (row === undefined) throw new Error('an empty history');
    return row;
  };
  const typed = (name: string) => ` ${name.toLowerCase().replaceAll('-', ' ')}`;
  const lotOf = () => all.find(({ lot, part }) => lot !== null && part === one().part)?.lot ?? '';
  const cases: readonly (readonly [string, () => AttemptFilter, (row: AttemptRow) => boolean])[] = [
    ['a vehicle', () => ({ vin: one().vin ?? '' }), (row) => row.vin === one().vin],
    ['a plate', () => ({ plate: one().plate ?? '' }), (row) => row.plate === one().plate],
    ['a technician', () => ({ technician: one().technician }), (row) => row.technician === one().technician],
    ['a serial number', () => ({ serial: one().serial ?? '' }), (row) => row.serial === one().serial],
    ['a tool by its name', () => ({ tool: 'gauge' }), (row) => row.tool === 'gauge'],
    [
      'a technician, as people type names',
      () => ({ technician: typed(one().technician) }),
      (row) => row.technician === one().technician,
    ],
    [
      'a tool by its serial number, as people type it',
      () => ({ tool: typed(one().serial ?? '') }),
      (row) => row.serial === one().serial,
    ],
    [
      'a part and a lot, as people type them',
      () => ({ part: typed(one().part), lot: typed(lotOf()) }),
      (row) => row.part === one().part && row.lot === lotOf(),
    ],
    [
      'a specification in capitals',
      () => ({ specification: one().specificationKey.toUpperCase() }),
      (row) => row.specificationKey === one().specificationKey,
    ],
    [
      'a tool by its serial number',
      () => ({ tool: one().serial ?? '' }),
      (row) => row.serial === one().serial,
    ],
    ['a part', () => ({ part: one().part }), (row) => row.part === one().part],
    ['a lot', () => ({ lot: 'L0002' }), (row) => row.lot === 'L0002'],
    [
      'a part and a lot',
      () => ({ part: one().part, lot: one().lot ?? '' }),
      (row) => row.part === one().part && row.lot === one().lot,
    ],
    [
      'a specification by the beginning of its key',
      () => ({ specification: one().specificationKey.slice(0, 8) }),
      (row) => row.specificationKey === one().specificationKey,
    ],
    ['one quantity', () => ({ quantity: 'length' }), (row) => row.quantity === 'length'],
    ['days, both ends included', () => ({ from: one().day, to: one().day }), (row) => row.day === one().day],
    [
      'a serial number in a period',
      () => ({ serial: one().serial ?? '', from: one().day }),
      (row) => row.serial === one().serial && row.day >= one().day,
    ],
    ['exceptions', () => ({ exceptionsOnly: true }), (row) => row.result !== 'OK' || row.early],
    ['a job', () => ({ job: one().job }), (row) => row.job === one().job],
  ];

  it.each(cases)(
    'about %s gives all that match, in the order of time, and nothing else',
    (_, filter, matches) => {
      const found = of(filter());
      expect(found).toEqual(all.filter(matches));
      expect(found.length).toBeGreaterThan(0);
      expect(found.map(({ at }) => at)).toEqual(found.map(({ at }) => at).sort());
    },
  );

  it('finds a vehicle however its number is typed', () => {
    const vin = one().vin ?? '';
    expect(of({ vin: ` ${vin.toLowerCase().slice(0, 5)}-${vin.slice(5)}` })).toEqual(of({ vin }));
  });

  it('takes what people type for text, whatever it looks like', () => {
    for (const text of [`' OR 1 = 1 --`, '%', '_', '"; DROP TABLE attempts; --'])
      for (const name of [
        'vin',
        'plate',
        'fleet',
        'tool',
        'serial',
        'technician',
        'part',
        'lot',
        'specification',
      ])
        expect(of({ [name]: text })).toEqual([]);
    expect(log.history.attemptsOf({})).toHaveLength(all.length);
  });

  it('about jobs gives those that hold such an attempt', () => {
    const { technician, serial } = one();
    const jobs = (filter: AttemptFilter) => log.history.jobsOf(filter).map(({ job }) => job);
    const expected = new Set(all.filter((row) => row.technician === technician).map(({ job }) => job));
    expect(new Set(jobs({ technician }))).toEqual(expected);
    expect(jobs({ serial: serial ?? '' })).toEqual([...jobs({ serial: serial ?? '' })].sort().reverse());
    const wrong = new Set(all.filter(({ result, early }) => result !== 'OK' || early).map(({ job }) => job));
    expect(new Set(jobs({ exceptionsOnly: true }))).toEqual(wrong);
    expect(log.history.jobsOf({}, 3)).toHaveLength(3);
  });

  it('counts the use of a tool since a day', () => {
    const { serial, day } = one();
    const used = all.filter((row) => row.serial === serial && row.day >= day);
    expect(log.history.useSince(serial ?? '', day)).toEqual({ count: used.length, lastAt: used.at(-1)?.at });
    expect(log.history.useSince('nobody', day)).toEqual({ count: 0, lastAt: null });
  });

  it('goes by an index where there may be many attempts', () => {
    const plan = (filter: AttemptFilter) => log.history.plan('attempts', filter).join('\n');
    expect(plan({ vin: 'X' })).toContain('jobs_by_vin');
    expect(plan({ serial: 'X', from: '2024-01-01', to: '2024-12-31' })).toContain(
      'attempts_by_tool (tool=? AND atMs',
    );
    expect(plan({ specification: 'X', from: '2024-01-01' })).toContain('jobs_by_setup');
    for (const filter of [
      { vin: 'X' },
      { serial: 'X' },
      { specification: 'X' },
      { technician: 'X' },
      { lot: 'X' },
    ])
      expect(plan(filter)).not.toMatch(/SCAN [aj]\b/);
  });
});

describe('the history', () => {
  it('is a projection: dropped, falsified or of another version, it is made again from the entries', async () => {
    for (const harm of [
      'DELETE FROM attempts; UPDATE jobs SET foldedSeq = 0',
      'DROP TABLE attempts',
      'DROP TABLE projection',
      'UPDATE projection SET version = 0; UPDATE attempts SET value = 1; DELETE FROM people',
    ]) {
      log.close();
      const db = new Sqlite(path);
      db.exec(harm);
      db.close();
      log = await openStationLog(path);
      expect(log.history.attemptsOf({})).toEqual(all);
    }
    log.rebuildProjections();
    expect(log.history.attemptsOf({})).toEqual(all);
  });

  it('follows a job while it is open, and when a person says later where a pull was', () => {
    const [first, ...rest] = drafts(wholeJob('OPEN-1')).filter(({ event }) => event.type !== 'job-closed');
    if (first === undefined) throw new Error('no job');
    const half = rest.findIndex(({ event }) => event.type === 'pull-placed') + 1;
    log.append('job:OPEN-1', [first, ...rest.slice(0, half)], stamp);
    const pulls = () => of({ job: 'OPEN-1', quantity: 'torque' });
    expect(pulls()).toHaveLength(1);
    log.append('job:OPEN-1', rest.slice(half), stamp);
    const [one, two] = pulls();
    expect([one?.cylinder, two?.cylinder]).toEqual([1, 2]);
    const placed = rest.find(({ event }) => event.type === 'pull-placed')?.event;
    if (placed?.type !== 'pull-placed') throw new Error('no pull');
    log.append('job:OPEN-1', drafts([{ ...placed, cylinder: 2 }]), stamp);
    expect(pulls().map(({ cylinder }) => cylinder)).toEqual([2, 2]);
    expect(log.history.jobsOf({ state: 'open' }).map(({ job }) => job)).toEqual(['OPEN-1']);
    log.append('job:OPEN-1', drafts([{ type: 'job-voided', by: 'Foreman One', reason: 'trial' }]), stamp);
    expect(pulls().every(({ voided }) => voided)).toBe(true);
  });

  it('of a job that cannot be read says which, and what to do', () => {
    const db = withoutRules(withPlain(new Sqlite(path)));
    log.append('job:BAD-1', drafts([opening('BAD-1')]), stamp);
    db.exec(
      `UPDATE entries SET body = packed(replace(plain(body, salt), '"type":"job-opened"', '"type":"job-closed"')) WHERE stream = (SELECT id FROM streams WHERE name = 'job:BAD-1')`,
    );
    db.close();
    expect(() => of({})).toThrow(
      expect.objectContaining({
        problem: expect.objectContaining({ code: 'log-damaged', where: 'job:BAD-1' }),
      }),
    );
  });
});
