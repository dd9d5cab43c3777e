import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ImpactAssessment } from '../../src/audit/impact-state.ts';
import type { AskedJob } from '../../src/audit/questions.ts';
import { byYear, keptOf } from '../../src/audit/retention.ts';

const TODAY = '2026-11-25';
const job = (number: string, lastOn: string, state: AskedJob['state'] = 'complete'): AskedJob => ({
  stream: `job:${number}`,
  job: number,
  state,
  openedAt: `${lastOn}T08:00:00.000Z`,
  lastAt: `${lastOn}T09:00:00.000Z`,
  vin: null,
  plate: null,
  fleet: null,
  sources: ['linked'],
  outOfOrder: [],
});
const standing = (one: AskedJob, years = 3, impacts: readonly ImpactAssessment[] = []) =>
  keptOf([one], { years }, impacts, TODAY)[0];

const impactOn = (number: string, closed: ImpactAssessment['closed']): ImpactAssessment => ({
  assessment: 'IA-1',
  seq: 100,
  assessed: {
    type: 'assessment-made',
    assessment: 'IA-1',
    tool: 'wrench',
    serial: 'EXAMPLE-W-1',
    asFound: 'AF-1',
    digest: '0'.repeat(64),
    lastGood: null,
    foundOn: '2021-01-01',
    from: '2020-01-01',
    to: '2021-01-01',
    sources: ['linked'],
    attempts: 1,
    stillIn: 0,
    doubtful: 1,
    out: 0,
    items: [],
  },
  at: '2021-01-02T08:00:00.000Z',
  by: 'Quality One',
  asFound: null,
  lastGood: null,
  items: [
    {
      job: number,
      on: '2020-06-01',
      vin: null,
      plate: null,
      fleet: null,
      sort: 'doubtful',
      attempts: [],
      decided: [],
      open: true,
    },
  ],
  closed,
});

describe('what a retention time says of a job', () => {
  it('must be kept up to and including the last day of the time', () => {
    expect(standing(job('J-1', '2023-11-25'))).toMatchObject({ until: '2026-11-25', standing: 'must' });
    expect(standing(job('J-1', '2023-11-24'))).toMatchObject({ until: '2026-11-24', standing: 'may' });
  });

  it('ends on the last day of February where the job did on a leap day', () => {
    expect(standing(job('J-1', '2024-02-29'))?.until).toBe('2027-02-28');
  });

  it('is held while the job is open, or an impact assessment on it is not closed', () => {
    const old = job('J-1', '2020-06-01');
    expect(standing(job('J-1', '2020-06-01', 'open'))).toMatchObject({ standing: 'held' });
    expect(standing(old, 3, [impactOn('J-1', null)])).toMatchObject({
      standing: 'held',
      because: 'impact assessment IA-1 is not closed',
    });
    const closed = { at: '2021-02-01T08:00:00.000Z', by: 'Quality One', because: 'seen to' };
    expect(standing(old, 3, [impactOn('J-1', closed)])?.standing).toBe('may');
    expect(standing(old, 3, [impactOn('J-2', null)])?.standing).toBe('may');
  });

  it('never becomes shorter with a longer time, and every job is counted once', () => {
    const day = fc
      .date({ min: new Date('2010-01-01'), max: new Date('2026-11-25'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    fc.assert(
      fc.property(fc.array(day), fc.integer({ min: 1, max: 20 }), (days, years) => {
        const jobs = days.map((on, i) => job(`J-${i}`, on));
        const kept = keptOf(jobs, { years }, [], TODAY);
        const longer = keptOf(jobs, { years: years + 1 }, [], TODAY);
        kept.forEach(({ standing: was }, i) => {
          if (was === 'must') expect(longer[i]?.standing).toBe('must');
        });
        const counted = byYear(kept);
        expect(counted.reduce((sum, one) => sum + one.jobs, 0)).toBe(days.length);
        expect(counted.map(({ year }) => year)).toEqual(
          [...new Set(days.map((on) => on.slice(0, 4)))].sort(),
        );
      }),
    );
  });
});
