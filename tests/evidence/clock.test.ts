import { describe, expect, it } from 'vitest';
import { reportLines } from '../../src/cli/evidence/report-lines.ts';
import { checkClock } from '../../src/evidence/clock.ts';
import type { LogEntry } from '../../src/evidence/log.ts';
import { daysOutOfPlaceAmong } from '../../src/evidence/order-of-time.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { logOf, seal, station as sealer, trusting, wholeJob } from './sample-job.ts';

const log = logOf(wholeJob());
const { entries, station } = log;
const from = (n: number, change: (entry: LogEntry) => Partial<LogEntry>) =>
  entries.map((entry) => (entry.n >= n ? { ...entry, ...change(entry) } : entry));
const later = (seconds: number) => (entry: LogEntry) => ({
  at: new Date(Date.parse(entry.at) + seconds * 1000).toISOString(),
});

describe('the two clocks of a job', () => {
  it('agree in an honest record', () => {
    expect(checkClock(entries)).toEqual({ fault: null, jumps: [] });
  });

  it.each([3600, -3600, 3, -3])('a wall clock set by %i s is shown, and where', (seconds) => {
    expect(checkClock(from(9, later(seconds)))).toEqual({ fault: null, jumps: [{ n: 9, seconds }] });
  });

  it('small corrections are not', () => {
    expect(checkClock(from(9, later(-1))).jumps).toEqual([]);
  });

  it('a monotonic clock that runs back cannot be', () => {
    const back = entries.map((entry) => (entry.n === 9 ? { ...entry, monoUs: 1 } : entry));
    expect(checkClock(back).fault?.()).toMatch(/runs back|after it was written/);
  });

  it('hold no reading from after it was written, but for a recording, which has times of its own', () => {
    const early = (source: 'replayed' | 'linked') =>
      entries.map((entry) =>
        entry.event.type === 'tool-linked'
          ? { ...entry, event: { ...entry.event, source } }
          : { ...entry, monoUs: entries.find(({ event }) => event.type === 'tool-linked')?.monoUs ?? 0 },
      );
    expect(checkClock(early('linked')).fault?.()).toContain('a sample from after it was written');
    expect(checkClock(early('replayed')).fault).toBeNull();
  });

  it('starts anew with a session; a wall clock behind that of the last one is shown', () => {
    const [first] = entries;
    const session = entries.find(({ event }) => event.type === 'session-started');
    if (first === undefined || session === undefined) throw new Error('no session in the sample');
    const next = (seconds: number) => ({ ...session, n: 3, monoUs: 5, ...later(seconds)(session) });
    expect(checkClock([first, { ...session, monoUs: 99_000 }, next(86_400)])).toEqual({
      fault: null,
      jumps: [],
    });
    expect(checkClock([first, session, next(-60)]).jumps).toEqual([{ n: 3, seconds: -60 }]);
  });

  it('a job with an earlier date than what stands before it in the log is shown', () => {
    expect(checkClock(entries, station).jumps).toEqual([]);
    const dated = checkClock(from(1, later(-30 * 86_400)), station);
    expect(dated.fault).toBeNull();
    // The sample's station was set up an hour and a half before the job was opened.
    expect(dated.jumps).toEqual([{ n: 1, seconds: -(30 * 86_400 - 5400) }]);
    const file = seal({ ...log, entries: from(1, later(-2 * 3600)) });
    const { verdict, checks } = verifyRecord(file, trusting(sealer));
    expect(verdict).toBe('authentic');
    expect(checks.find(({ name }) => name === 'clock')?.detail).toContain('-1800 s before entry n=1');
  });

  it('a job dated weeks before what stands in front of it is named in front of everything else', () => {
    const weeks = -21 * 86_400;
    const dated = from(1, later(weeks)).map((entry) =>
      entry.event.type === 'job-opened'
        ? {
            ...entry,
            event: { ...entry.event, basis: { ...entry.event.basis, on: entry.at.slice(0, 10) } },
          }
        : entry,
    );
    const report = verifyRecord(seal({ ...log, entries: dated }), trusting(sealer));
    expect(report.verdict).toBe('authentic');
    expect(report.checks.find(({ name }) => name === 'clock')).toMatchObject({
      outcome: 'doubtful',
      detail: expect.stringContaining('TIMES IN DOUBT: it is dated 20 days before'),
    });
    const [headline] = reportLines('x.record.json', report);
    expect(headline).toContain('TIMES IN DOUBT');
  });

  it.each([
    ['in its place', [3, 4], 0],
    ['before what stands in front of it', [0, 1], -2],
    ['after what stands behind it', [6, 8], 3],
  ] as const)('a job %s', (_what, [firstDay, lastDay], days) => {
    const at = (day: number) => new Date(Date.UTC(2026, 2, 10 + day)).toISOString();
    const neighbours = [1, 2].map((day, i) => ({ seq: i + 1, at: at(day) }));
    const behind = [5, 9].map((day, i) => ({ seq: i + 20, at: at(day) }));
    const outOfPlace = daysOutOfPlaceAmong([...behind, ...neighbours]);
    expect(outOfPlace({ first: { seq: 10, at: at(firstDay) }, last: { seq: 15, at: at(lastDay) } })).toBe(
      days,
    );
  });

  it('a key that changed while the job ran hides no jump', () => {
    const [first] = station;
    if (first === undefined) throw new Error('no station in the sample');
    const eighth = entries[7];
    const between = { ...first, seq: (eighth?.seq ?? 0) + 1, at: eighth?.at ?? '' };
    const moved = from(9, (entry) => ({ seq: entry.seq + 1, ...later(3600)(entry) }));
    expect(checkClock(moved, [...station, between]).jumps).toEqual([{ n: 9, seconds: 3600 }]);
  });

  it('a record from the future is seen to be one, by whose clock and how far', () => {
    const last = entries.at(-1)?.at ?? '';
    const said = (secondsBefore: number) =>
      verifyRecord(
        seal(log),
        trusting(sealer),
        null,
        new Date(Date.parse(last) - secondsBefore * 1000).toISOString(),
      ).checks.find(({ name }) => name === 'clock');
    expect(said(3600)).toMatchObject({ outcome: 'passed' });
    expect(said(3600)?.detail).toContain('3600 s ahead of the clock of this computer');
    for (const seconds of [30, 0, -86_400])
      expect(said(seconds)?.detail).toBe('Wall clock and monotonic clock agree throughout.');
  });

  it('an entry from a command of its own, on another monotonic clock, accuses nobody', () => {
    const last = entries.at(-1);
    if (last === undefined) throw new Error('an empty sample');
    const made = { ...last, n: last.n + 1, monoUs: 1, ...later(86_400)(last) };
    for (const event of [
      { type: 'job-voided', by: 'Foreman One', reason: 'wrong vehicle' },
      { type: 'job-handed-over', to: 'Technician Two' },
    ] as const)
      expect(checkClock([...entries, { ...made, event }])).toEqual({ fault: null, jumps: [] });
  });

  it('a sample that was taken after it was written cannot be', () => {
    const readings = entries.find(({ event }) => event.type === 'readings');
    if (readings?.event.type !== 'readings') throw new Error('no readings in the sample');
    const { event } = readings;
    const forged = {
      ...readings,
      event: { ...event, startUs: readings.monoUs + 1, count: 1, times: '', counts: 'AA==' },
    };
    expect(checkClock([forged]).fault?.()).toContain('after it was written');
  });
});
