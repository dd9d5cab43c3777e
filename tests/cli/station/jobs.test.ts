import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { JobRow } from '../../../db/jobs.ts';
import { newKey } from '../../../db/keyfile.ts';
import { matchingJobs } from '../../../src/cli/station/job-filter.ts';
import {
  handOver,
  jobLines,
  listJobs,
  papersAgain,
  showJob,
  voidJob,
} from '../../../src/cli/station/jobs.ts';
import { openInLog, openStation, openStationFolder, stateOf } from '../../../src/cli/station/station.ts';
import { readTrust } from '../../../src/cli/station/trust-file.ts';
import { countersignRecord } from '../../../src/evidence/record.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { writerOf } from '../../../src/job/command-event.ts';
import type { JobEvent } from '../../../src/job/event.ts';
import { replay } from '../../../src/job/replay.ts';
import { logOf, seal, wholeJob } from '../../evidence/sample-job.ts';
import { exampleOrder, workshop } from '../../job/workshop.ts';
import { problemOf, said } from '../answers.ts';
import { folder } from '../program.ts';

const stamp = () => ({ at: '2026-05-04T09:30:00.000Z', monoUs: 3_600_000_000 });

/** A job with every plug done; closed unless told otherwise. */
function job(number: string, { closed = true }: { readonly closed?: boolean } = {}): readonly JobEvent[] {
  const shop = workshop({ ...exampleOrder(4), job: number });
  for (let plug = 0; plug < 4; plug++) shop.gap(0.75);
  for (let plug = 0; plug < 4; plug++) shop.pull(27);
  shop.give({ kind: 'flush' });
  if (closed) shop.give({ kind: 'command', command: { do: 'close' } });
  return shop.events;
}

async function put(data: string, number: string, events: readonly JobEvent[]): Promise<void> {
  const station = await openStation('Example bay', data, stamp);
  const [opening, ...rest] = events.map((event) => ({ by: writerOf(event), event }));
  if (opening === undefined) throw new Error('no events');
  await openInLog(station, [opening], stamp());
  station.log.append(`job:${number}`, rest, stamp());
  station.log.close();
}

/** Made once; each test has a copy of its own. */
let model = '';
beforeAll(async () => {
  model = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  await put(model, 'J-1', job('J-1'));
  await put(model, 'J-2', job('J-2', { closed: false }));
  return () => rmSync(model, { recursive: true, force: true });
});

let data = '';
let scope: { readonly station: string; readonly data: string };
beforeEach(() => {
  data = join(folder(), 'data');
  scope = { station: 'none.json', data };
  cpSync(model, data, { recursive: true });
});

const eventsOf = async (number: string): Promise<readonly JobEvent[]> => {
  const stationFolder = await openStationFolder(data);
  const events = stationFolder.log.entries(`job:${number}`).map(({ event }) => event);
  stationFolder.log.close();
  return events;
};
const recordIn = (place: string, number: string) => readFileSync(join(place, `${number}.record.json`));
const verified = async (place: string, number: string) =>
  verifyRecord(recordIn(place, number), await readTrust(join(data, 'trusted-keys.json')));

describe('the list of jobs', () => {
  it('shows where each stands, the latest first', async () => {
    const { value, text } = await said(() => listJobs(scope));
    expect(value).toBe(0);
    expect(text.split('\n').map((line) => line.split(/ {2,}/).slice(0, 3))).toEqual([
      ['job', 'state', 'opened (UTC)'],
      ['J-2', 'open', '2026-05-04 09:30'],
      ['J-1', 'complete', '2026-05-04 09:30'],
      [''],
    ]);
    expect((await said(() => listJobs({ ...scope, open: true }))).text).not.toContain('J-1');
    expect((await said(() => listJobs({ ...scope, job: 'X' }))).text).toBe('No job matches.\n');
  });

  const row = (change: Partial<JobRow>): JobRow => ({
    stream: 'job:J',
    job: 'J',
    vin: null,
    plate: null,
    fleet: null,
    openedAt: '2026-03-02T23:59:00.000Z',
    lastAt: '2026-03-03T01:00:00.000Z',
    state: 'open',
    sources: ['linked'],
    outOfOrder: [],
    ...change,
  });

  it('finds a vehicle however its numbers are typed, and a job by part of its number', () => {
    const rows = [
      row({ job: 'WO-77', vin: '1M8GDM9AXKP042788', plate: 'AB-12 CD', fleet: 'Bus 7' }),
      row({ job: 'WO-78' }),
    ];
    for (const filter of [
      { vin: 'xkp0 42788' },
      { plate: 'ab12cd' },
      { plate: '12-C' },
      { fleet: 'bus7' },
      { job: 'o-77' },
    ])
      expect(matchingJobs(rows, filter)).toEqual(rows.slice(0, 1));
    expect(matchingJobs(rows, { vin: '1M8', plate: 'ZZ' })).toEqual([]);
  });

  it('counts the first and the last day in, and refuses what is no day', async () => {
    const rows = ['01', '02', '03'].map((date) => row({ openedAt: `2026-03-${date}T12:00:00.000Z` }));
    expect(matchingJobs(rows, { from: '2026-03-02' })).toEqual(rows.slice(1));
    expect(matchingJobs(rows, { to: '2026-03-02' })).toEqual(rows.slice(0, 2));
    expect(matchingJobs(rows, { from: '2026-03-02', to: '2026-03-02' })).toHaveLength(1);
    for (const day of ['yesterday', '2026-02-30', '2026-3-2'])
      expect(await problemOf(() => matchingJobs(rows, { from: day }))).toMatchObject({ where: '--from' });
  });

  it('keeps no more than the filter lets through, in order, and all of it without one', () => {
    const rows = fc.array(
      fc
        .constantFrom<JobRow['state']>('open', 'complete', 'incomplete', 'void')
        .map((state) => row({ state })),
    );
    fc.assert(
      fc.property(rows, (all) => {
        expect(matchingJobs(all, {})).toEqual(all);
        expect(matchingJobs(all, { open: true })).toEqual(all.filter(({ state }) => state === 'open'));
      }),
    );
  });

  it('lets no plate move the cursor', () => {
    expect(jobLines([row({ plate: '\u001b[2Jevil\u202e' })]).join('')).not.toMatch(/[\u001b\u202e]/);
  });
});

describe('one job in plain lines', () => {
  it('says what is proven, since when, and who had it', async () => {
    await said(() => handOver('J-2', 'Technician Two', scope));
    const { text } = await said(() => showJob('J-2', scope));
    expect(text).toContain('job J-2');
    expect(text).toContain('the job is not closed yet');
    expect(text).toContain('opened 2026-05-04 09:30');
    expect(text).toMatch(/handed over .* from Technician One to Technician Two/);
  });

  it('is refused where there is none', async () => {
    expect(await problemOf(() => showJob('J-9', scope))).toMatchObject({ code: 'job-unknown' });
  });
});

describe('declaring a job void', () => {
  const words = { by: 'Foreman One', because: 'wrong vehicle' };
  const voided = { by: 'Foreman One', reason: 'wrong vehicle' };

  it('closes an open one as void: it leaves the open ones, and its papers are not complete', async () => {
    await said(() => voidJob('J-2', { ...scope, ...words }));
    expect((await eventsOf('J-2')).at(-1)).toEqual({ type: 'job-voided', ...voided });
    expect((await said(() => listJobs({ ...scope, job: 'J-2' }))).text).toContain('VOID');
    expect((await said(() => listJobs({ ...scope, open: true }))).text).toBe('No job matches.\n');
    const { value, text } = await said(() => papersAgain('J-2', scope));
    expect(value).toBe(6);
    expect(text).toContain('The job was declared VOID by Foreman One: wrong vehicle.');
    const report = await verified(data, 'J-2');
    expect(report.verdict).toBe('incomplete');
    expect(report.checks.filter(({ outcome }) => outcome === 'failed').map(({ name }) => name)).toEqual([
      'completeness',
    ]);
    expect(report.record?.summary.closed).toEqual({
      complete: false,
      open: [{ kind: 'declared-void' }],
    });
  });

  it('can come after closing: what was sealed before stays authentic, what is sealed after says void', async () => {
    const before = join(data, 'before');
    expect((await said(() => papersAgain('J-1', { ...scope, out: before }))).value).toBe(0);
    await said(() => voidJob('J-1', { ...scope, ...words }));
    expect((await said(() => papersAgain('J-1', scope))).value).toBe(6);
    expect((await verified(before, 'J-1')).verdict).toBe('authentic');
    const after = await verified(data, 'J-1');
    expect(after.verdict).toBe('incomplete');
    expect(after.checks.find(({ name }) => name === 'judged again')?.outcome).toBe('passed');
    expect(readFileSync(join(data, 'J-1.csv'), 'utf8')).toContain('J-1');
  });

  it('is final, needs a reason and a name, and replays like everything else', async () => {
    expect(await problemOf(() => voidJob('J-1', { ...scope, by: ' ', because: 'x' }))).toMatchObject({
      where: '--by',
    });
    expect(await problemOf(() => voidJob('J-1', { ...scope, by: 'A', because: '' }))).toMatchObject({
      where: '--because',
    });
    await said(() => voidJob('J-1', { ...scope, ...words }));
    expect(await problemOf(() => voidJob('J-1', { ...scope, ...words }))).toMatchObject({
      code: 'job-void',
    });
    const again = replay(await eventsOf('J-1'));
    expect(again.ok && again.value.state().voided).toEqual(voided);
    expect(again.ok && again.value.accept({ kind: 'command', command: { do: 'void', ...voided } }).ok).toBe(
      false,
    );
  });
});

describe('handing a job over', () => {
  it('makes somebody else answer for it, on the bench and in the record', async () => {
    await said(() => handOver('J-2', 'Technician Two', scope));
    const stationFolder = await openStationFolder(data);
    expect(stateOf(stationFolder).people.map(({ name }) => name)).toEqual([
      'Technician One',
      'Technician Two',
    ]);
    const resumed: readonly JobEvent[] = [
      { type: 'session-started', session: 2, program: 'test', platform: 'test' },
      { type: 'job-closed', complete: true, open: [] },
    ];
    const drafts = resumed.map((event) => ({ by: writerOf(event), event }));
    stationFolder.log.append('job:J-2', drafts, stamp());
    stationFolder.log.close();
    const again = replay(await eventsOf('J-2'));
    expect(again.ok && again.value.state().technician).toBe('Technician Two');
    expect((await said(() => papersAgain('J-2', scope))).value).toBe(0);
    const { record } = await verified(data, 'J-2');
    const people = record?.background.flatMap(({ event }) =>
      event.type === 'person-recorded' ? [event.person] : [],
    );
    expect(people).toEqual(['Technician Two']);
  });

  it('is refused for a closed job, and to the one who has it', async () => {
    expect(await problemOf(() => handOver('J-1', 'B', scope))).toMatchObject({
      code: 'job-closed',
    });
    expect(await problemOf(() => handOver('J-2', 'Technician One', scope))).toMatchObject({
      code: 'job-same-person',
    });
  });
});

describe('papers written again', () => {
  it('are whole and verified, in whatever folder', async () => {
    const out = join(data, 'some', 'where');
    expect((await said(() => papersAgain('J-1', { ...scope, out }))).value).toBe(0);
    expect((await verified(out, 'J-1')).verdict).toBe('authentic');
    expect(readFileSync(join(out, 'J-1.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect(readFileSync(join(out, 'J-1.csv'), 'utf8')).toContain('Technician One');
  });

  it('in another language need no new seal: the record and its fingerprint stay', async () => {
    await said(() => papersAgain('J-1', scope));
    const sealed = recordIn(data, 'J-1');
    const english = readFileSync(join(data, 'J-1.pdf'));
    const out = join(data, 'deutsch');
    await said(() => papersAgain('J-1', { ...scope, out, language: 'de' }));
    expect(recordIn(out, 'J-1').equals(sealed)).toBe(true);
    expect(readFileSync(join(out, 'J-1.pdf')).equals(english)).toBe(false);
    await said(() => papersAgain('J-1', { ...scope, language: 'fr' }));
    expect(recordIn(data, 'J-1').equals(sealed)).toBe(true);
  });

  it('are sealed anew where the record is not as it was sealed', async () => {
    await said(() => papersAgain('J-1', scope));
    const sealed = recordIn(data, 'J-1');
    const changed = Buffer.from(sealed);
    changed[changed.length >> 1] = (changed[changed.length >> 1] ?? 0) ^ 1;
    writeFileSync(join(data, 'J-1.record.json'), changed);
    await said(() => papersAgain('J-1', { ...scope, out: join(data, 'again') }));
    expect((await verified(join(data, 'again'), 'J-1')).verdict).toBe('authentic');
  });

  it('never go over a record that somebody countersigned', async () => {
    await said(() => papersAgain('J-1', scope));
    const signer = { privateKey: newKey().privateKey, signedAt: '2026-05-05T10:00:00.000Z' };
    const countersigned = countersignRecord(recordIn(data, 'J-1'), signer);
    if (!countersigned.ok) throw new Error('not countersigned');
    const other = join(data, 'countersigned');
    mkdirSync(other);
    writeFileSync(join(other, 'J-1.record.json'), countersigned.value);
    expect(await problemOf(() => papersAgain('J-1', { ...scope, out: other }))).toMatchObject({
      code: 'record-countersigned',
    });
    expect(recordIn(other, 'J-1').equals(countersigned.value)).toBe(true);
    expect((await said(() => papersAgain('J-1', scope))).value).toBe(0);
  });

  it('never go over a record of the job that is not from this log', async () => {
    const elsewhere = join(data, 'elsewhere');
    mkdirSync(elsewhere);
    const bytes = seal(logOf(wholeJob('J-1')));
    writeFileSync(join(elsewhere, 'J-1.record.json'), bytes);
    expect(await problemOf(() => papersAgain('J-1', { ...scope, out: elsewhere }))).toMatchObject({
      code: 'record-not-in-log',
      where: join(elsewhere, 'J-1.record.json'),
    });
    expect(recordIn(elsewhere, 'J-1').equals(bytes)).toBe(true);
  });

  it('are refused while the job is open, and where there is no station none is made', async () => {
    expect(await problemOf(() => papersAgain('J-2', scope))).toMatchObject({ code: 'job-open' });
    const nowhere = { ...scope, data: join(data, 'nowhere') };
    expect(await problemOf(() => papersAgain('J-1', nowhere))).toMatchObject({ code: 'no-station' });
  });
});
