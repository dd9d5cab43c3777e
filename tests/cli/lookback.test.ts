import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { dispute } from '../../src/cli/dispute.ts';
import { lookBack } from '../../src/cli/lookback.ts';
import { closeLookBack, decideLookBack, listLookBacks, showLookBack } from '../../src/cli/lookback-desk.ts';
import { openArchive, openInLog, openStation } from '../../src/cli/station.ts';
import type { Certificate } from '../../src/instrument/certificate.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { CHECKED, certificate, eventsOf, type ShopJob, workIn, wrenchWith } from '../audit/shop.ts';
import { folder } from './program.ts';
import { problemOf, said } from './said.ts';

const VAN = { vin: 'ZZ9EXAMP1PM000104', plate: 'EXAMPLE 4', fleet: 'BUS-12' };
const JOBS: readonly ShopJob[] = [
  { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 29.2], vehicle: VAN },
  { job: 'J-2', on: '2026-03-11', peaks: [27, 27, 27, 27], vehicle: { plate: '=1+1' } },
  // Under the certificate of the calibration at which the errors were found: nothing of it is in question.
  {
    job: 'J-3',
    on: '2026-09-04',
    peaks: [29.2, 27, 27, 27],
    wrench: wrenchWith(certificate('CAL-2', '2026-09-01')),
  },
];

/** Made once; each test has a copy of its own. */
let model = '';
beforeAll(async () => {
  model = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  await workIn(model, JOBS);
  return () => rmSync(model, { recursive: true, force: true });
});

let data = '';
let whose: { readonly station: string; readonly data: string };
beforeEach(() => {
  data = join(folder(), 'data');
  whose = { station: 'none.json', data };
  cpSync(model, data, { recursive: true });
});

/** A file of what was found: reading 1.1 N·m too little throughout, unless told. */
const found = (given: Partial<Certificate> = {}, error = -1.1) => {
  const file = join(folder(), 'found.json');
  const asFound = { ...certificate('AF-1', '2026-09-01', { error }), ...given };
  writeFileSync(file, JSON.stringify({ form: 'plugmark/certificate/1', ...asFound }));
  return file;
};
const assess = (asFound: string, given = {}) =>
  said(() => lookBack('wrench', { ...whose, asFound, by: 'Quality One', out: join(data, 'out'), ...given }));
const eventsIn = async () => {
  const archive = await openArchive(data);
  const events = archive.log.stationEntries().map(({ event, by }) => ({ ...event, by }));
  const jobs = archive.log.streams().flatMap((stream) => archive.log.entries(stream));
  const fault = archive.log.check();
  archive.log.close();
  return { events, jobs, fault };
};
const decide = (jobs: readonly string[], as: string, given = {}) =>
  said(() =>
    decideLookBack('LB-1', jobs, { ...whose, as, because: 'plug too tight', by: 'Foreman One', ...given }),
  );
const close = () =>
  said(() => closeLookBack('LB-1', { ...whose, because: 'all seen to', by: 'Quality One' }));

describe('a look-back', () => {
  it('names the jobs whose proofs do not hold, and none that was measured after the calibration', async () => {
    const { value, text } = await assess(found());
    expect(value).toBe(1);
    expect(text).toContain('Of 8 proofs 7 still in, 0 doubtful, 1 out; 1 job touched, 1 open. Not closed.');
    expect(text).toMatch(/^J-1 .* ZZ9EXAMP1PM000104 .* BUS-12 .* OUT .* NOT DECIDED$/m);
    expect(text).not.toMatch(/^J-[23]/m);
  });

  it('adds to the log and leaves every entry of a job as it was', async () => {
    const before = await eventsIn();
    await assess(found());
    const { events, jobs, fault } = await eventsIn();
    expect(jobs).toEqual(before.jobs);
    expect(fault).toBeNull();
    expect(events.slice(before.events.length).map(({ type, by }) => [type, by])).toEqual([
      ['as-found-recorded', 'Quality One'],
      ['assessment-made', 'Quality One'],
    ]);
  });

  it('writes a paper, the vehicles to decide about, and every attempt with both verdicts', async () => {
    await assess(found());
    expect(readdirSync(join(data, 'out')).sort()).toEqual([
      'LB-1.attempts.csv',
      'LB-1.pdf',
      'LB-1.vehicles.csv',
    ]);
    const [head, ...vehicles] = readFileSync(join(data, 'out', 'LB-1.vehicles.csv'), 'utf8')
      .trim()
      .split('\r\n');
    expect(head).toContain('Fleet number');
    expect(vehicles).toEqual([
      'LB-1,no,wrench,EXAMPLE-W-1,J-1,2026-02-03,ZZ9EXAMP1PM000104,EXAMPLE 4,BUS-12,OUT,4,,NOT DECIDED,,,',
    ]);
    const attempts = readFileSync(join(data, 'out', 'LB-1.attempts.csv'), 'utf8')
      .trim()
      .split('\r\n');
    expect(attempts).toHaveLength(1 + 8);
    expect(attempts.filter((row) => row.includes(',OUT,'))).toHaveLength(1);
    // A plate that a spreadsheet would run as a formula.
    expect(attempts.filter((row) => row.includes(",'=1+1,"))).toHaveLength(4);
  });

  it('takes in what was measured under the old certificate after the finding, and says up to when', async () => {
    const { text } = await assess(found({ date: '2026-02-20' }));
    expect(text).toContain('2026-01-12 to 2026-03-11, 8 attempts');
  });

  it('closes by itself where every proof holds, and says that the tool had not moved', async () => {
    const { value, text } = await assess(found({}, 0));
    expect(value).toBe(0);
    expect(text).toContain('It had not moved since CAL-1 of 2026-01-12');
    expect(text).toContain('ALL PROOFS HOLD');
    expect((await said(() => listLookBacks({ ...whose, open: true }))).text).toBe('No look-back.\n');
  });

  it('keeps what is decided for each job, by whom, and closes when nothing is open', async () => {
    await assess(found());
    expect((await problemOf(close)).code).toBe('lookback-open');
    expect((await decide(['J-1'], 'recall')).text).toContain('1 of 1 still open');
    // Called back is not yet seen to.
    expect((await problemOf(close)).code).toBe('lookback-open');
    await decide(['J-1'], 'redone', { because: 'new plug in cylinder 4' });
    expect((await close()).value).toBe(0);
    expect((await problemOf(() => decide(['J-1'], 'accept'))).code).toBe('lookback-closed');
    const out = join(data, 'again');
    const { text } = await said(() => showLookBack('LB-1', { ...whose, out }));
    expect(text).toContain('Closed on');
    expect(readFileSync(join(out, 'LB-1.vehicles.csv'), 'utf8')).toContain(
      'done again,new plug in cylinder 4,Foreman One',
    );
  });

  it('decides about all that are open at once, once', async () => {
    await assess(found());
    expect((await decide([], 'inform', { all: 'any' })).text).toContain(
      'Job J-1 is decided. 0 of 1 still open.',
    );
    expect((await problemOf(() => decide([], 'inform', { all: 'any' }))).code).toBe('item-missing');
  });

  it('puts all proofs in doubt that lie beyond the points looked at', async () => {
    const { points } = certificate('AF-1', '2026-09-01');
    const { text } = await assess(found({ points: points.slice(0, 2) }));
    expect(text).toContain('0 still in, 8 doubtful, 0 out');
  });

  it('says on the paper and in the lists where tools were simulated', async () => {
    const titleOf = (file: string) => readFileSync(file, 'latin1').match(/SIMULATED/g)?.length ?? 0;
    await assess(found());
    expect(titleOf(join(data, 'out', 'LB-1.pdf'))).toBe(0);
    const peaks = [27, 27, 27, 29.2];
    const wrench = wrenchWith(certificate('CAL-2', '2026-09-01'));
    await workIn(data, [{ job: 'J-5', on: '2026-10-04', peaks, wrench, simulated: true }]);
    await assess(found({ number: 'AF-2', date: '2026-11-01' }));
    expect(titleOf(join(data, 'out', 'LB-2.pdf'))).toBeGreaterThan(1);
    expect(readFileSync(join(data, 'out', 'LB-2.vehicles.csv'), 'utf8')).toContain('LB-2,SIMULATED,');
  });
});

describe('a look-back on a job of two wrenches', () => {
  /** All proofs come from another wrench; behind them the one of the station clicks once more at 29.2 N·m. */
  async function workWithTwo() {
    const events = eventsOf({
      job: 'J-6',
      on: '2026-04-02',
      peaks: [27, 27, 27, 27],
      behind: (shop) => shop.again(29.2),
    }).map((event): JobEvent => {
      if (event.type === 'job-opened') {
        const other = { ...wrenchWith(CHECKED), id: 'other', serial: 'EXAMPLE-W-2' };
        return { ...event, instruments: [...event.instruments, other] };
      }
      return event.type === 'pull-found' && event.pull <= 4 ? { ...event, tool: 'other' } : event;
    });
    const stamp = () => ({ at: '2026-04-02T09:30:00.000Z', monoUs: 3_600_000_000 });
    const [opening, ...rest] = events.map((event) => ({ by: 'Technician One', event }));
    if (opening === undefined) throw new Error('no events');
    const station = await openStation('Example bay', data, stamp);
    await openInLog(station, [opening], stamp());
    station.log.append('job:J-6', rest, stamp());
    station.log.close();
  }

  it('does not close itself over a re-hit that went above what the other had proven', async () => {
    await workWithTwo();
    const { value, text } = await assess(found());
    expect(value).toBe(1);
    expect(text).toMatch(/^J-6 .* OUT .* NOT DECIDED$/m);
    expect(text).toContain('2 jobs touched, 2 open. Not closed.');
  });
});

describe('the file of a claim', () => {
  it('takes one VIN typed in two ways for one vehicle, and refuses two vehicles', async () => {
    const typed = { ...VAN, vin: VAN.vin.toLowerCase() };
    await workIn(data, [{ job: 'J-7', on: '2026-05-04', peaks: [27], vehicle: typed, closed: false }]);
    const out = join(data, 'claim');
    const make = () => said(() => dispute({ ...whose, claim: 'W-17', plate: VAN.plate, out }));
    expect((await make()).text).toContain('2 records');
    const another = { ...VAN, vin: 'ZZ9EXAMP9PM000108' };
    await workIn(data, [{ job: 'J-8', on: '2026-05-05', peaks: [27], vehicle: another, closed: false }]);
    const { code, message } = await problemOf(make);
    expect(code).toBe('vehicle-not-one');
    expect(message).toContain('2 vehicles');
  });
});

describe('a look-back that cannot be made', () => {
  const refused = async (asFound: string, given = {}) => {
    const before = (await eventsIn()).events.length;
    const problem = await problemOf(() => assess(asFound, given));
    expect((await eventsIn()).events).toHaveLength(before);
    return problem;
  };

  it.each([
    ['for another serial number', () => found({ serial: 'EXAMPLE-W-2' }), 'as-found-other-serial'],
    ['from the future', () => found({ date: '2199-01-01' }), 'certificate-in-future'],
    ['from before the first use', () => found({ date: '2025-01-01' }), 'as-found-too-early'],
    ['in another unit', () => found({ unit: 'mm' }), 'certificate-unit'],
  ])('says so of what was found %s, and writes nothing', async (_, file, code) => {
    expect((await refused(file())).code).toBe(code);
  });

  it('says so where the time holds no attempt with this tool', async () => {
    const wrench = wrenchWith(certificate('CAL-3', '2026-10-01'));
    await workIn(data, [{ job: 'J-4', on: '2026-10-10', peaks: [], wrench, closed: false }]);
    const { code, message, next } = await refused(found({ date: '2026-11-01' }));
    expect(code).toBe('lookback-no-data');
    expect(message).toContain('2026-10-01');
    expect(next).toContain('Nothing was written');
  });

  it('says so where certificates overlap, and goes on with the one that is named', async () => {
    const wrench = wrenchWith(certificate('CAL-2B', '2026-09-01'));
    await workIn(data, [{ job: 'J-4', on: '2026-10-10', peaks: [27], wrench, closed: false }]);
    const file = found({ date: '2026-11-01' });
    expect((await refused(file)).code).toBe('certificates-overlap');
    expect((await refused(file, { since: 'CAL-9' })).code).toBe('certificate-unknown');
    expect((await assess(file, { since: 'CAL-2' })).text).toContain('2026-09-01 to 2026-11-01');
  });

  it('says so where a newer certificate has the number of the old one, instead of leaving its jobs out', async () => {
    const wrench = wrenchWith(certificate('CAL-1', '2026-09-01'));
    await workIn(data, [{ job: 'J-4', on: '2026-10-10', peaks: [27], wrench, closed: false }]);
    const { code, message } = await refused(found());
    expect(code).toBe('certificates-overlap');
    expect(message).toContain('2026-01-12 and 2026-09-01 have the same number, CAL-1');
  });

  it('says so where the same file was looked back on before', async () => {
    const file = found();
    await assess(file);
    expect(await refused(file)).toMatchObject({ code: 'lookback-made', where: 'LB-1' });
  });

  it.each([
    ['a look-back that is not there', () => showLookBack('LB-7', whose), 'lookback-unknown'],
    ['a job that it does not touch', () => decide(['J-2'], 'recall'), 'item-unknown'],
    ['a decision that is none', () => decide(['J-1'], 'forget'), 'option-not-valid'],
    ['a sort that is none', () => decide([], 'recall', { all: 'some' }), 'option-not-valid'],
    ['nobody who decides', () => decide(['J-1'], 'recall', { by: ' ' }), 'option-not-valid'],
  ])('refuses %s', async (_, work, code) => {
    await assess(found());
    expect((await problemOf(work)).code).toBe(code);
  });
});
