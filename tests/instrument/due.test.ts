/** When an instrument may no longer be relied on: each bound by itself, on the day, the day before and the day after. */
import { describe, expect, it } from 'vitest';
import { monthsLater, yearsBetween } from '../../src/instrument/dates.ts';
import { dueDate } from '../../src/instrument/fitness.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { offBy, problemOf, type Refusal, unfit, unitOf } from '../../src/instrument/unfit.ts';

const WRENCH: Instrument = {
  id: 'wrench',
  quantity: 'torque',
  serial: 'W-1',
  resolution: 0.01,
  basis: 'certificate',
  certificate: {
    number: 'C-7',
    laboratory: 'Example laboratory',
    serial: 'W-1',
    date: '2026-01-31',
    unit: 'N.m',
    points: [
      { reading: 60, error: 0.3, expanded: 0.4, k: 2 },
      { reading: 10, error: 0.05, expanded: 0.1, k: 2 },
    ],
  },
};
const dated = (due: string | null, months: number | null): Instrument => ({
  ...WRENCH,
  ...(WRENCH.certificate === undefined || due === null
    ? {}
    : { certificate: { ...WRENCH.certificate, due } }),
  ...(months === null ? {} : { interval: { months } }),
});
const codes = (instrument: Instrument, on = '2026-06-01', from = 25, to = 30) =>
  unfit(instrument, { on, from, to }).map(({ code }) => code);

describe('the day on which a certificate ends', () => {
  it.each<[due: string | null, months: number | null, ends: string | null]>([
    [null, null, null],
    ['2026-12-31', null, '2026-12-31'],
    [null, 6, '2026-07-31'],
    ['2026-12-31', 6, '2026-07-31'],
    ['2026-05-31', 6, '2026-05-31'],
    ['2026-07-31', 6, '2026-07-31'],
  ])('due %s and an interval of %s months: %s', (due, months, ends) => {
    expect(dueDate(dated(due, months))).toBe(ends);
  });

  it('is none without a certificate, whatever the interval', () => {
    const { certificate: _, ...bare } = dated(null, 6);
    expect(dueDate(bare)).toBeNull();
    expect(codes(bare, '2030-01-01')).toEqual([]);
  });

  it("ends the tool's use on the day after, by the shop's shorter interval as well", () => {
    const shorter = dated('2026-12-31', 4);
    expect(codes(shorter, '2026-05-31')).toEqual([]);
    expect(unfit(shorter, { on: '2026-06-01', from: 25, to: 30 })).toEqual([
      { code: 'calibration-expired', due: '2026-05-31' },
    ]);
  });
});

describe('what a tool is used for', () => {
  it.each<[string, Partial<Instrument>, number, number, string[]]>([
    ['at both ends of its points', {}, 10, 60, []],
    ['below its points', {}, 9.99, 60, ['outside-calibration']],
    ['above its points', {}, 10, 60.01, ['outside-calibration']],
    ['at both ends of its range', { range: { from: 25, to: 30 } }, 25, 30, []],
    ['below its range', { range: { from: 25.01, to: 30 } }, 25, 30, ['out-of-range']],
    ['above its range', { range: { from: 25, to: 29.99 } }, 25, 30, ['out-of-range']],
    [
      'with as many cycles as permitted',
      { interval: { months: 60, cycles: 5000 }, cyclesUsed: 5000 },
      25,
      30,
      [],
    ],
    [
      'with one more',
      { interval: { months: 60, cycles: 5000 }, cyclesUsed: 5001 },
      25,
      30,
      ['cycles-used-up'],
    ],
    ['with an interval in months alone', { interval: { months: 60 }, cyclesUsed: 9999 }, 25, 30, []],
    ['with cycles that nobody counts', { interval: { months: 60, cycles: 1 } }, 25, 30, []],
  ])('%s', (_what, change, from, to, expected) => {
    expect(codes({ ...WRENCH, ...change }, '2026-06-01', from, to)).toEqual(expected);
  });

  it('all that is wrong is said at once, what matters most first', () => {
    const outOfTolerance = { impact: 'IA-1', on: '2026-05-01', reading: 30, error: -1.1 };
    const worn: Instrument = {
      ...dated(null, 1),
      outOfTolerance,
      interval: { months: 1, cycles: 10 },
      cyclesUsed: 11,
      range: { from: 1, to: 20 },
    };
    expect(codes(worn, '2026-06-01', 25, 70)).toEqual([
      'out-of-tolerance',
      'calibration-expired',
      'cycles-used-up',
      'out-of-range',
      'outside-calibration',
    ]);
    expect(unfit(worn, { on: '2026-02-01', from: 12, to: 15 })[0]).toEqual({
      code: 'out-of-tolerance',
      unit: 'N.m',
      ...outOfTolerance,
    });
  });

  it('is told without the noise of binary numbers', () => {
    const [refusal] = unfit(WRENCH, { on: '2026-06-01', from: 0.1 + 0.2, to: 20 });
    expect(refusal).toMatchObject({ neededFrom: 0.3, neededTo: 20, from: 10, to: 60 });
  });
});

describe('the problem that a refusal is', () => {
  const gauge = { unit: 'mm', from: 0.5, to: 1.5, neededFrom: 0.4, neededTo: 0.80001 } as const;
  it.each<[Refusal, string, RegExp]>([
    [
      { code: 'out-of-tolerance', unit: 'N.m', impact: 'IA-1', on: '2026-05-01', reading: 30, error: 1.1 },
      'certificate',
      /2026-05-01 \(IA-1\): off by \+1\.1 N·m at 30 N·m/,
    ],
    [{ code: 'calibration-expired', due: '2026-05-31' }, 'certificate.due', /expired on 2026-05-31/],
    [{ code: 'cycles-used-up', used: 11, permitted: 10 }, 'cyclesUsed', /11 cycles .* 10 are allowed/],
    [{ code: 'out-of-range', ...gauge }, 'range', /from 0\.5 to 1\.5 mm; this job asks for 0\.4 to 0\.8 mm/],
    [{ code: 'outside-calibration', ...gauge }, 'certificate.points', /calibrated from 0\.5 to 1\.5 mm/],
  ])('%o is about its field', (refusal, field, words) => {
    expect(problemOf(refusal)).toMatchObject({ code: refusal.code, where: field });
    expect(problemOf(refusal).message).toMatch(words);
  });

  it('names the unit of the tool, and the sign of an error', () => {
    expect(unitOf(WRENCH)).toBe('N.m');
    expect(unitOf({ ...WRENCH, quantity: 'length' })).toBe('mm');
    const off = (error: number) => offBy({ impact: 'IA-1', on: '2026-05-01', reading: 0.8, error }, 'mm');
    expect([off(0.02), off(-0.02), off(0)]).toEqual([
      'off by +0.02 mm at 0.8 mm',
      'off by -0.02 mm at 0.8 mm',
      'off by 0 mm at 0.8 mm',
    ]);
  });
});

describe('calendar', () => {
  it.each([
    ['2024-01-31', 1, '2024-02-29'],
    ['2026-12-31', 0, '2026-12-31'],
    ['2026-11-30', 3, '2027-02-28'],
    ['2026-02-28', 12, '2027-02-28'],
    ['2026-01-01', 11, '2026-12-01'],
    ['2026-01-01', 120, '2036-01-01'],
  ])('%s and %d months: %s', (from, months, to) => {
    expect(monthsLater(from, months)).toBe(to);
  });

  it('has years of 365.25 days', () => {
    expect(yearsBetween('2024-01-01', '2028-01-01')).toBe(4);
    expect(yearsBetween('2026-01-01', '2026-01-01')).toBe(0);
    expect(yearsBetween('2026-01-02', '2026-01-01')).toBeCloseTo(-1 / 365.25, 12);
  });
});
