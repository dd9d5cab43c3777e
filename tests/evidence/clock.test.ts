import { describe, expect, it } from 'vitest';
import { checkClock } from '../../src/evidence/clock.ts';
import type { LogEntry } from '../../src/evidence/log.ts';
import { logOf, wholeJob } from './sample-job.ts';

const { entries } = logOf(wholeJob());
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
    expect(checkClock(back).fault).toMatch(/runs back|after it was written/);
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
    expect(checkClock([forged]).fault).toContain('after it was written');
  });
});
