import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { impactsOf } from '../../../src/audit/impact-state.ts';
import { withFindings } from '../../../src/audit/out-of-tolerance.ts';
import { showCalendar } from '../../../src/cli/audit/calendar.ts';
import {
  closeImpact,
  decideImpact,
  listImpacts,
  showImpact,
} from '../../../src/cli/audit/impact-decisions.ts';
import { stationHistory } from '../../../src/cli/bench/earlier-orders.ts';
import { type JobOptions, job } from '../../../src/cli/bench/job.ts';
import { toolRows } from '../../../src/cli/bench/order-summary.ts';
import { listJobs, showJob } from '../../../src/cli/station/jobs.ts';
import { openStation, openStationFolder } from '../../../src/cli/station/station.ts';
import type { Instrument } from '../../../src/instrument/instrument.ts';
import { replay } from '../../../src/job/replay.ts';
import { CHECKED, certificate, type ShopJob, workIn, wrenchWith } from '../../audit/shop.ts';
import { exampleOrder } from '../../job/workshop.ts';
import { problemOf, said } from '../answers.ts';
import { found, impactStation, VAN } from './impact-station.ts';

// Nobody works on a job here: it is opened, and left.
vi.mock('../../../src/cli/bench/run.ts', async (original) => ({
  ...(await original<typeof import('../../../src/cli/bench/run.ts')>()),
  runWork: () => Promise.resolve('left'),
}));

const at = impactStation();
const { assess, decide } = at;

const calendarOf = (given = {}) =>
  said(() => showCalendar({ ...at.scope(), soon: 30, shortest: 30, longest: 365, ...given }));

async function asItStands(tool: Instrument): Promise<Instrument> {
  const { log } = await openStationFolder(at.data);
  const [one] = withFindings([tool], impactsOf(log.stationEntries()));
  log.close();
  if (one === undefined) throw new Error('no tool');
  return one;
}

/** A station file with a wrench that was calibrated so, and an order for it. */
function benchWith(wrench: Instrument, vehicle: ShopJob['vehicle'] = {}): JobOptions {
  const { certificate: checked, ...tool } = wrench;
  const write = (name: string, value: unknown) => {
    const path = join(at.data, name);
    writeFileSync(path, JSON.stringify(value));
    return path;
  };
  if (checked !== undefined) write('checked.json', { form: 'plugmark/certificate/1', ...checked });
  const gauge = {
    id: 'gauge',
    quantity: 'length',
    serial: 'EXAMPLE-G-1',
    resolution: 0.001,
    basis: 'invented',
  };
  const within = { kind: 'absolute', amount: 0.01 };
  const station = write('station.json', {
    form: 'plugmark/station/1',
    station: 'Example bay',
    data: '.',
    routine: 'none',
    tools: [
      { ...tool, ...(checked && { certificate: 'checked.json' }), driver: { use: 'typed', unit: 'N·m' } },
      { ...gauge, permissibleDeviation: within, driver: { use: 'typed', unit: 'mm' } },
    ],
  });
  const order = write('order.json', { ...exampleOrder(4), job: 'J-50', vehicle });
  return { order, station, plain: true, quiet: true };
}

const ANSWERED = { override: 'wrench', by: 'Foreman One', because: 'the other one is away' };

describe('a wrench that a laboratory found out of tolerance', () => {
  it('opens no job until somebody answers for it by name, and none less after a look at its old certificate', async () => {
    const bench = benchWith(wrenchWith(CHECKED));
    await assess(found());
    const refused = await problemOf(() => job(bench));
    expect(refused.code).toBe('out-of-tolerance');
    expect(refused.message).toContain('was out of tolerance on 2026-09-01 (IA-1): off by -1.1 N·m at 10 N·m');
    expect(refused.next).toContain('--override wrench');
  });

  it('stands on the record with who answered for it, and the job is opened again the same from its log', async () => {
    await assess(found());
    await said(() => job({ ...benchWith(wrenchWith(CHECKED)), ...ANSWERED }));
    const { log } = await openStationFolder(at.data);
    const events = log.entries('job:J-50').map(({ event }) => event);
    log.close();
    const [opened, answered] = events;
    expect(opened?.type === 'job-opened' && opened.instruments[0]?.outOfTolerance).toMatchObject({
      impact: 'IA-1',
      on: '2026-09-01',
      error: -1.1,
    });
    expect(answered).toMatchObject({
      type: 'instrument-overridden',
      refusal: { code: 'out-of-tolerance', impact: 'IA-1', on: '2026-09-01', unit: 'N.m', error: -1.1 },
      by: 'Foreman One',
    });
    expect(replay(events).ok).toBe(true);
    // Who leaves the answer out cannot make it the same.
    const without = events.filter(({ type }) => type !== 'instrument-overridden');
    expect(replay(without)).toMatchObject({ ok: false, error: { code: 'judged-otherwise' } });
  });

  it('is fit again with a certificate of that day or later, of that serial number only', async () => {
    await assess(found());
    const { outOfTolerance } = await asItStands(wrenchWith(CHECKED));
    expect(outOfTolerance?.impact).toBe('IA-1');
    for (const day of ['2026-09-01', '2026-09-20']) {
      const anew = wrenchWith(certificate('CAL-2', day));
      expect((await asItStands(anew)).outOfTolerance).toBeUndefined();
    }
    const other = wrenchWith(certificate('CAL-9', '2026-01-12', { serial: 'EXAMPLE-W-2' }));
    expect((await asItStands({ ...other, serial: 'EXAMPLE-W-2' })).outOfTolerance).toBeUndefined();
  });

  it('is not out of tolerance by what lies within what is permitted, while every proof holds', async () => {
    const limit = (amount: number): Instrument => ({
      ...wrenchWith(CHECKED),
      permissibleDeviation: { kind: 'absolute', amount },
    });
    await assess(found({}, -0.3));
    expect((await asItStands(limit(0.4))).outOfTolerance).toBeUndefined();
    expect((await asItStands(limit(0.25))).outOfTolerance).toMatchObject({ error: -0.3 });
    // Nobody says what is permitted: it moved by more than the uncertainty of both certificates.
    expect((await asItStands(wrenchWith(CHECKED))).outOfTolerance).toMatchObject({ error: -0.3 });
    await assess(found({ number: 'AF-2' }));
    // A proof does not hold: a class that permits more is no excuse.
    expect((await asItStands(limit(2))).outOfTolerance).toMatchObject({ impact: 'IA-2', error: -1.1 });
  });

  it('says so on the order, in place of the days that are left', async () => {
    await assess(found());
    const tool = await asItStands(wrenchWith({ ...CHECKED, due: '2027-01-12' }));
    const [[, text] = []] = toolRows([tool], '2026-11-25', true);
    expect(text).toContain('OUT OF TOLERANCE (IA-1, 2026-09-01): off by -1.1 N·m at 10 N·m');
    expect(text).not.toContain('in date');
  });

  it('is due now on the calendar, with the reason, and its interval is halved', async () => {
    const due: Instrument = {
      ...wrenchWith({ ...CHECKED, due: '2199-01-12' }),
      permissibleDeviation: { kind: 'absolute', amount: 1 },
    };
    await workIn(at.data, [{ job: 'J-4', on: '2026-08-04', peaks: [27], wrench: due, closed: false }]);
    const { station } = benchWith(due);
    const calendar = () =>
      said(() => showCalendar({ station, soon: 1, shortest: 30, longest: 365, staircase: true }));
    expect((await calendar()).text).toMatch(/^ *in date .*EXAMPLE-W-1.* 365 days \(unchanged\)$/m);
    await assess(found());
    const { value, text } = await calendar();
    expect(value).toBe(1);
    const today = new Date().toISOString().slice(0, 10);
    expect(text).toMatch(
      new RegExp(`^! OUT OF TOLERANCE \\(IA-1\\) +${today}, now .*182 days \\(shorter\\)$`, 'm'),
    );
    expect(text).toContain('Out of tolerance: wrench (EXAMPLE-W-1) on 2026-09-01, off by -1.1 N·m at 10 N·m');
  });
});

describe('jobs with a wrench after it was out of tolerance', () => {
  /** Under the certificate from before, entered behind the impact assessment: same day, later, and with an earlier day. */
  const LATER: readonly ShopJob[] = [
    { job: 'J-21', on: '2026-09-01', peaks: [27, 27, 27, 29.2] },
    { job: 'J-22', on: '2026-10-05', peaks: [27, 29.2, 27, 27] },
    { job: 'J-23', on: '2026-04-05', peaks: [27, 27, 27, 27] },
  ];

  it('are shown wherever somebody looks, until an impact assessment on the same file holds them', async () => {
    const file = found();
    await assess(file);
    expect((await said(() => showImpact('IA-1', at.scope()))).text).not.toContain('Since IA-1');
    await workIn(at.data, LATER);
    const since =
      'Since IA-1: 3 jobs with wrench (EXAMPLE-W-1) as it was found, in no impact assessment: J-23, J-21, J-22.';
    expect((await said(() => showImpact('IA-1', at.scope()))).text).toContain(since);
    expect((await said(() => listImpacts(at.scope()))).text).toContain(since);
    expect((await calendarOf()).text).toContain(since);
    const { text } = await said(() => job({ ...benchWith(wrenchWith(CHECKED)), ...ANSWERED }));
    expect(text).toContain(`Note: ${since}`);
    const station = await openStation('Example bay', at.data, () => ({
      at: '2026-11-25T09:00:00.000Z',
      monoUs: 1,
    }));
    expect((await stationHistory(station)).notices).toEqual([expect.stringContaining(since)]);
    station.log.close();

    const again = await assess(file);
    expect(again.text).toContain('12 attempts from 2026-04-05 to 2026-10-05');
    expect(again.text).toContain('IA-2 goes on from IA-1 on the same file');
    expect(again.text).toMatch(/^ *J-21 .*OUT/m);
    expect(again.text).toMatch(/^ *J-22 .*OUT/m);
    // It stands in IA-1, and is decided there.
    expect(again.text).not.toMatch(/^ *J-1 /m);
    expect((await said(() => listImpacts(at.scope()))).text).not.toContain('Since');
    expect((await problemOf(() => assess(file))).code).toBe('impact-exists');
  });

  it('that went on since are in both, and a decision in one counts in the other', async () => {
    await workIn(at.data, [{ job: 'J-24', on: '2026-08-05', peaks: [29.2], closed: false }]);
    const file = found();
    await assess(file);
    const { log } = await openStationFolder(at.data);
    const entries = log.entries('job:J-24');
    const pull = entries.findLast(({ event }) => event.type === 'pull-placed');
    if (pull?.event.type !== 'pull-placed') throw new Error('no pull');
    const stamp = { at: '2026-11-20T09:30:00.000Z', monoUs: 9_000_000_000 };
    // Somebody puts it on another cylinder: the job is not the one that was judged.
    log.append('job:J-24', [{ by: 'Technician One', event: { ...pull.event, cylinder: 2 } }], stamp);
    log.close();
    const again = await assess(file);
    expect(again.text).toContain('Jobs that went on since are in both: J-24.');
    await said(() =>
      decideImpact('IA-2', ['J-24'], { ...at.scope(), as: 'inform', because: 'told', by: 'Foreman One' }),
    );
    expect((await said(() => showImpact('IA-1', at.scope()))).text).toMatch(/^ *J-24 .* inform$/m);
  });
});

describe('a vehicle that an impact assessment wants back', () => {
  it('is so in the list of jobs, on the job itself, and when it is there again', async () => {
    await assess(found());
    const shown = async () => (await said(() => showJob('J-1', at.scope()))).text;
    expect(await shown()).toMatch(
      /^! IA-1 NOT DECIDED: wrench \(EXAMPLE-W-1\) was out of tolerance on 2026-09-01; out on cylinder 4\.\nAs it was judged then:/,
    );
    await decide(['J-1'], 'recall');
    expect(await shown()).toContain('! IA-1 RECALL, not redone yet');
    const list = (await said(() => listJobs(at.scope()))).text;
    expect(list).toMatch(/^ *J-1 .* IA-1 RECALL, not redone yet$/m);
    expect(list).toMatch(/^ *J-2 .* -$/m);
    const bench = benchWith(wrenchWith(certificate('CAL-2', '2026-09-01')), { plate: 'example-4' });
    const note = 'Note: IA-1 RECALL, not redone yet: of its job J-1 of 2026-02-03, out on cylinder 4.';
    expect((await said(() => job(bench))).text).toContain(note);
    const station = await openStation('Example bay', at.data, () => ({
      at: '2026-11-25T09:00:00.000Z',
      monoUs: 1,
    }));
    expect((await stationHistory(station)).vehicle('vin', VAN.vin)?.questioned).toEqual([
      expect.stringContaining('RECALL'),
    ]);
    station.log.close();
  });

  describe('is redone', () => {
    const anew = wrenchWith(certificate('CAL-2', '2026-09-01'));
    const redone: ShopJob = {
      job: 'J-30',
      on: '2026-11-21',
      peaks: [27, 27, 27, 27],
      vehicle: VAN,
      wrench: anew,
    };
    const refused = (given = {}) => problemOf(() => decide(['J-1'], 'redone', given));

    it('only by a later job, which the log has to hold', async () => {
      await assess(found());
      expect(await refused()).toMatchObject({
        code: 'not-redone',
        message: expect.stringContaining('no later job on that vehicle'),
        next: expect.stringContaining('--in'),
      });
      expect((await refused({ in: 'J-99' })).message).toContain('no later job J-99 on that vehicle');
      // Of another vehicle, however late.
      expect((await refused({ in: 'J-3' })).message).toContain('no later job J-3 on that vehicle');
    });

    it.each<[string, Partial<ShopJob>, string]>([
      ['is not complete', { peaks: [27, 27, 27] }, 'is not complete'],
      [
        'used the same wrench while it was out of tolerance',
        { wrench: wrenchWith(CHECKED) },
        'used wrench, which was out of tolerance',
      ],
      ['was simulated', { source: 'simulated' }, 'rests on simulated figures'],
      ['was replayed', { source: 'replayed' }, 'rests on replayed figures'],
      ['was typed, where an instrument had proven it', { source: 'typed' }, 'has no proof of'],
    ])('not by one that %s', async (_, given, why) => {
      await assess(found());
      await workIn(at.data, [{ ...redone, ...given }]);
      expect((await refused()).message).toContain(why);
      expect((await refused({ in: 'J-30' })).message).toContain(why);
    });

    it('by one that proves the same cylinders, found or named, whose number stands there from then on', async () => {
      await assess(found());
      await workIn(at.data, [redone]);
      expect((await decide(['J-1'], 'redone')).text).toContain('Job J-1: redone in J-30. 0 of 1 still open.');
      expect((await said(() => showImpact('ia-1', at.scope()))).text).toMatch(/^ *J-1 .* redone in J-30$/m);
      const closed = { ...at.scope(), because: 'all seen to', by: 'Quality One' };
      expect((await said(() => closeImpact('1', closed))).value).toBe(0);
    });
  });
});

describe('the numbers that a decision is given', () => {
  it('are understood in small letters and in part, and not where they may mean several', async () => {
    await workIn(at.data, [{ job: 'J-11', on: '2026-04-02', peaks: [29.2], closed: false }]);
    await assess(found());
    const by = { ...at.scope(), as: 'recall', because: 'too tight', by: 'Foreman One' };
    expect((await problemOf(() => decideImpact('ia-1', ['j-'], by))).message).toContain('J-1 or J-11');
    expect((await said(() => decideImpact('ia-1', ['11'], by))).text).toContain(
      'Job J-11: recall; it stays open until it is redone. 2 of 2 still open.',
    );
    // The whole number of one is meant, though it begins another.
    expect((await said(() => decideImpact('1', ['J-1'], by))).text).toContain('Job J-1: recall');
  });
});
