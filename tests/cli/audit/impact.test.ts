import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { dispute } from '../../../src/cli/audit/dispute.ts';
import { listImpacts, showImpact } from '../../../src/cli/audit/impact-decisions.ts';
import { openInLog, openStation, openStationFolder } from '../../../src/cli/station/station.ts';
import { writerOf } from '../../../src/job/command-event.ts';
import type { JobEvent } from '../../../src/job/event.ts';
import { CHECKED, certificate, eventsOf, workIn, wrenchWith } from '../../audit/shop.ts';
import { problemOf, said } from '../answers.ts';
import { found, impactStation, VAN } from './impact-station.ts';

const reads = vi.hoisted(() => ({ ofStation: 0 }));
vi.mock('../../../db/log.ts', async (original) => {
  const real = await original<typeof import('../../../db/log.ts')>();
  return {
    ...real,
    openStationLog: async (path: string) => {
      const log = await real.openStationLog(path);
      const stationEntries = () => {
        reads.ofStation += 1;
        return log.stationEntries();
      };
      return { ...log, stationEntries };
    },
  };
});

const at = impactStation();
const { assess, eventsIn, decide, close } = at;

describe('an impact assessment', () => {
  it('names the jobs whose proofs do not hold, and none that was measured after the calibration', async () => {
    const { value, text } = await assess(found());
    expect(value).toBe(1);
    expect(text).toContain('Of 8 proofs 7 still in, 0 doubtful, 1 out; 1 job touched, 1 open. Not closed.');
    expect(text).toMatch(/^ *J-1 .* ZZ9EXAMP1PM000104 .* BUS-12 .* OUT .* NOT DECIDED$/m);
    expect(text).not.toMatch(/^ *J-[23]/m);
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

  it('reads the station’s own entries once a command', async () => {
    const countOf = async (work: () => unknown) => {
      const before = reads.ofStation;
      await work();
      return reads.ofStation - before;
    };
    const out = join(at.data, 'again');
    expect(await countOf(() => assess(found()))).toBe(1);
    expect(await countOf(() => decide(['J-1'], 'inform'))).toBe(1);
    expect(await countOf(() => said(() => showImpact('IA-1', { ...at.scope(), out })))).toBe(1);
    expect(await countOf(close)).toBe(1);
  });

  it('is signed by a checkpoint over all of it, after every step', async () => {
    const steps = [() => assess(found()), () => decide(['J-1'], 'inform'), close];
    for (const step of steps) {
      await step();
      const { log } = await openStationFolder(at.data);
      const [note] = log.checkpoints().slice(-1);
      expect(note?.split('\n')[1]).toBe(String(log.size()));
      log.close();
    }
  });

  it('writes nothing where nobody can sign: not what is decided, either', async () => {
    await assess(found());
    const { events } = await eventsIn();
    rmSync(join(at.data, 'keys'), { recursive: true });
    await problemOf(() => decide(['J-1'], 'inform'));
    await problemOf(() => assess(found({ number: 'AF-2' })));
    expect((await eventsIn()).events).toEqual(events);
  });

  it('writes a paper, the vehicles to decide about, and every attempt with both verdicts', async () => {
    await assess(found());
    expect(readdirSync(join(at.data, 'out')).sort()).toEqual([
      'IA-1.attempts.csv',
      'IA-1.pdf',
      'IA-1.vehicles.csv',
    ]);
    const [head, ...vehicles] = readFileSync(join(at.data, 'out', 'IA-1.vehicles.csv'), 'utf8')
      .trim()
      .split('\r\n');
    expect(head).toContain('Fleet number');
    expect(vehicles).toEqual([
      'IA-1,no,wrench,EXAMPLE-W-1,J-1,2026-02-03,ZZ9EXAMP1PM000104,EXAMPLE 4,BUS-12,OUT,4,,NOT DECIDED,,,',
    ]);
    const attempts = readFileSync(join(at.data, 'out', 'IA-1.attempts.csv'), 'utf8')
      .trim()
      .split('\r\n');
    expect(attempts).toHaveLength(1 + 8);
    expect(attempts.filter((row) => row.includes(',OUT,'))).toHaveLength(1);
    // A plate that a spreadsheet would run as a formula.
    expect(attempts.filter((row) => row.includes(",'=1+1,"))).toHaveLength(4);
  });

  it('lists no vehicle in a way that a spreadsheet would run, break or spell wrong', async () => {
    const vehicle = { plate: '=cmd()|"x"\r\n, ü', fleet: '\t@SUM(A1)' };
    await workIn(at.data, [{ job: 'J-4', on: '2026-04-10', peaks: [29.2], vehicle, closed: false }]);
    await assess(found({ date: '2026-08-31' }));
    const csv = readFileSync(join(at.data, 'out', 'IA-1.vehicles.csv'), 'utf8');
    expect(csv.startsWith('\uFEFFImpact assessment,')).toBe(true);
    expect(csv.split('\r\n')).toContain(
      `IA-1,no,wrench,EXAMPLE-W-1,J-4,2026-04-10,,"'=cmd()|""x"" , ü",'@SUM(A1),OUT,1,,NOT DECIDED,,,`,
    );
    expect(csv.split('\r\n')).toHaveLength(1 + 2 + 1);
  });

  it('closes by itself where every proof holds, and says that the tool had not moved', async () => {
    const { value, text } = await assess(found({}, 0));
    expect(value).toBe(0);
    expect(text).toContain('It did not move since CAL-1 of 2026-01-12');
    expect(text).toContain('ALL PROOFS HOLD');
    expect((await said(() => listImpacts({ ...at.scope(), open: true }))).text).toBe(
      'No impact assessment.\n',
    );
  });

  it('keeps what is decided for each job, by whom, and closes when nothing is open', async () => {
    await assess(found());
    expect((await problemOf(close)).code).toBe('impact-open');
    expect((await decide(['J-1'], 'recall')).text).toContain(
      'Job J-1: recall; it stays open until it is redone. 1 of 1 still open.',
    );
    // Called back is not yet seen to.
    expect((await problemOf(close)).code).toBe('impact-open');
    const wrench = wrenchWith(certificate('CAL-2', '2026-09-01'));
    const peaks = [27, 27, 27, 27];
    await workIn(at.data, [{ job: 'J-9', on: '2026-09-07', peaks, vehicle: VAN, wrench }]);
    await decide(['J-1'], 'redone', { because: 'new plug in cylinder 4', in: 'J-9' });
    expect((await close()).value).toBe(0);
    expect((await problemOf(() => decide(['J-1'], 'accept'))).code).toBe('impact-closed');
    const out = join(at.data, 'again');
    const { text } = await said(() => showImpact('IA-1', { ...at.scope(), out }));
    expect(text).toContain('Closed on');
    expect(readFileSync(join(out, 'IA-1.vehicles.csv'), 'utf8')).toContain(
      'redone in J-9,new plug in cylinder 4,Foreman One',
    );
  });

  it('decides about all that are open at once, once', async () => {
    await assess(found());
    expect((await decide([], 'inform', { undecided: 'any' })).text).toContain(
      'Job J-1: inform. 0 of 1 still open.',
    );
    expect((await problemOf(() => decide([], 'inform', { undecided: 'any' }))).code).toBe('item-missing');
  });

  it('puts all proofs in doubt that lie beyond the points looked at', async () => {
    const { points } = certificate('AF-1', '2026-09-01');
    const { text } = await assess(found({ points: points.slice(0, 2) }));
    expect(text).toContain('0 still in, 8 doubtful, 0 out');
    const why =
      '8 of the doubtful ones were read beyond the points that the laboratory tested, 10.00 to 20.00 N·m';
    expect(text).toContain(why);
    expect((await said(() => showImpact('IA-1', at.scope()))).text).toContain(why);
  });

  it('says on the paper and in the lists where tools were simulated', async () => {
    const titleOf = (file: string) => readFileSync(file, 'latin1').match(/SIMULATED/g)?.length ?? 0;
    await assess(found());
    expect(titleOf(join(at.data, 'out', 'IA-1.pdf'))).toBe(0);
    const peaks = [27, 27, 27, 29.2];
    const wrench = wrenchWith(certificate('CAL-2', '2026-09-01'));
    await workIn(at.data, [{ job: 'J-5', on: '2026-10-04', peaks, wrench, simulated: true }]);
    await assess(found({ number: 'AF-2', date: '2026-11-01' }));
    expect(titleOf(join(at.data, 'out', 'IA-2.pdf'))).toBeGreaterThan(1);
    expect(readFileSync(join(at.data, 'out', 'IA-2.vehicles.csv'), 'utf8')).toContain('IA-2,SIMULATED,');
  });
});

describe('an impact assessment on a job of two wrenches', () => {
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
      return event.type === 'pull-detected' && event.pull <= 4 ? { ...event, tool: 'other' } : event;
    });
    const stamp = () => ({ at: '2026-04-02T09:30:00.000Z', monoUs: 3_600_000_000 });
    const [opening, ...rest] = events.map((event) => ({ by: writerOf(event), event }));
    if (opening === undefined) throw new Error('no events');
    const station = await openStation('Example bay', at.data, stamp);
    await openInLog(station, [opening], stamp());
    station.log.append('job:J-6', rest, stamp());
    station.log.close();
  }

  it('does not close itself over a re-hit that went above what the other had proven', async () => {
    await workWithTwo();
    const { value, text } = await assess(found());
    expect(value).toBe(1);
    expect(text).toMatch(/^ *J-6 .* OUT .* NOT DECIDED$/m);
    expect(text).toContain('2 jobs touched, 2 open. Not closed.');
  });
});

describe('the file of a claim', () => {
  it('takes one VIN typed in two ways for one vehicle, and refuses two vehicles', async () => {
    const typed = { ...VAN, vin: VAN.vin.toLowerCase() };
    await workIn(at.data, [{ job: 'J-7', on: '2026-05-04', peaks: [27], vehicle: typed }]);
    const out = join(at.data, 'claim');
    const make = () => said(() => dispute({ ...at.scope(), claim: 'W-17', plate: VAN.plate, out }));
    expect((await make()).text).toContain('2 records');
    const another = { ...VAN, vin: 'ZZ9EXAMP9PM000108' };
    await workIn(at.data, [{ job: 'J-8', on: '2026-05-05', peaks: [27], vehicle: another, closed: false }]);
    const { code, message } = await problemOf(make);
    expect(code).toBe('vehicle-not-one');
    expect(message).toContain('2 vehicles');
  });
});
