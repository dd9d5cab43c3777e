import { describe, expect, it } from 'vitest';
import { monthsLater, yearsBetween } from '../../src/instrument/dates.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { instrumentTerms } from '../../src/instrument/uncertainty.ts';
import { budgetOf } from '../../src/metrology/budget.ts';

const WRENCH: Instrument = {
  id: 'wrench',
  quantity: 'torque',
  serial: 'W-1',
  resolution: 0.01,
  basis: 'data sheet',
  permissibleDeviation: { kind: 'relative', percent: 4 },
};
const CERTIFIED: Instrument = {
  ...WRENCH,
  certificate: {
    number: 'C-7',
    laboratory: 'Example laboratory',
    serial: 'W-1',
    date: '2026-01-01',
    unit: 'N.m',
    points: [
      { reading: 20, error: 0.2, expanded: 0.2, k: 2 },
      { reading: 40, error: 0.4, expanded: 0.4, k: 2 },
    ],
  },
};
const names = (instrument: Instrument, reading = 30, on = '2026-07-01') =>
  instrumentTerms(instrument, reading, on, null).terms.map(({ cause }) => cause);

describe('what is known of a reading', () => {
  it('rests on the certificate where there is one, else on the limits of the class', () => {
    expect(names(WRENCH)).toEqual(['permissible-deviation', 'class-laboratory', 'resolution']);
    expect(names(CERTIFIED)).toEqual(['calibration', 'uncorrected-error', 'resolution']);
    expect(instrumentTerms(WRENCH, 30, '2026-07-01', null).terms[0]).toMatchObject({
      amount: 1.2,
      source: { kind: 'station-file', basis: 'data sheet' },
    });
  });

  it('takes the error off where the shop corrects, and keeps it in the uncertainty where it does not', () => {
    const corrected = instrumentTerms({ ...CERTIFIED, correct: true }, 30, '2026-07-01', null);
    expect(corrected.correction).toBeCloseTo(0.3, 12);
    expect(corrected.terms.map(({ cause }) => cause)).toEqual(['calibration', 'resolution']);
    const kept = instrumentTerms(CERTIFIED, 30, '2026-07-01', null);
    expect(kept.correction).toBe(0);
    expect(budgetOf(kept.terms).expanded).toBeGreaterThan(budgetOf(corrected.terms).expanded);
  });

  it('lets drift grow with the time since the calibration', () => {
    const drifting: Instrument = {
      ...CERTIFIED,
      driftPerYear: { within: { kind: 'relative', percent: 1 }, basis: 'data sheet' },
    };
    const drift = (on: string) =>
      instrumentTerms(drifting, 30, on, null).terms.find(({ cause }) => cause === 'drift')?.amount ?? 0;
    expect(drift('2026-01-01')).toBe(0);
    expect(drift('2027-01-01')).toBeCloseTo(0.3, 3);
    expect(drift('2028-01-01')).toBeCloseTo(0.6, 3);
    // No line of zero on the day itself, and none that a date in front of it would make.
    for (const on of ['2026-01-01', '2025-12-31']) expect(names(drifting, 30, on)).not.toContain('drift');
    expect(names(drifting, 30, '2026-01-02')).toContain('drift');
    expect(instrumentTerms(drifting, 30, '2027-01-01', null).terms.at(-2)?.source).toEqual({
      kind: 'station-file',
      basis: 'data sheet',
    });
  });

  it('says no error that a certificate does not have', () => {
    const { certificate } = CERTIFIED;
    const points = certificate?.points.map((point) => ({ ...point, error: 0 })) ?? [];
    const exact: Instrument = {
      ...CERTIFIED,
      certificate: { ...certificate, points } as typeof certificate & object,
    };
    expect(names(exact)).toEqual(['calibration', 'resolution']);
  });

  it('names the certificate, the device or the station file as what a line rests on', () => {
    const sources = (instrument: Instrument & { promiseOfDevice?: true }) =>
      instrumentTerms(instrument, 30, '2026-07-01', null).terms.map(({ source }) => source);
    expect(sources(CERTIFIED).slice(0, 2)).toEqual(
      Array(2).fill({ kind: 'certificate', number: 'C-7', laboratory: 'Example laboratory' }),
    );
    expect(sources({ ...WRENCH, promiseOfDevice: true })[0]).toEqual({ kind: 'device' });
  });

  it('throws where nothing says how far a tool may be off', () => {
    const { permissibleDeviation: _, ...bare } = WRENCH;
    expect(() => instrumentTerms(bare, 30, '2026-07-01', null)).toThrow(RangeError);
  });

  it('has few degrees of freedom where repeatability rules, and a wider factor for it', () => {
    const readings = [24.5, 25.5, 25, 24.8, 25.2];
    const rough: Instrument = { ...CERTIFIED, correct: true, repeatability: { readings, basis: 'bench' } };
    const { coverageFactor, degreesOfFreedom } = budgetOf(
      instrumentTerms(rough, 25, '2026-01-01', null).terms,
    );
    expect(degreesOfFreedom).toBeGreaterThan(4);
    expect(degreesOfFreedom).toBeLessThan(7);
    expect(coverageFactor).toBeGreaterThan(2.4);
    expect(budgetOf(instrumentTerms(CERTIFIED, 25, '2026-01-01', null).terms).coverageFactor).toBe(2);
  });

  it('counts in what the pull says of its own peak', () => {
    expect(instrumentTerms(WRENCH, 30, '2026-07-01', 0.05).terms.at(-1)).toMatchObject({
      cause: 'peak',
      amount: 0.05,
    });
    expect(instrumentTerms(WRENCH, 30, '2026-07-01', 0).terms).toHaveLength(3);
  });

  it('leaves to whoever held it against its class a quarter of the limit as U, or what is stated', () => {
    const share = (change: Partial<Instrument>) =>
      instrumentTerms({ ...WRENCH, ...change }, 30, '2026-07-01', null).terms[1];
    expect(share({})).toMatchObject({
      cause: 'class-laboratory',
      source: { kind: 'usual-share' },
      amount: 0.3,
      distribution: { kind: 'normal', k: 2 },
    });
    const classUncertainty = { within: { kind: 'relative', percent: 0.5 }, basis: 'test report' } as const;
    expect(share({ classUncertainty })).toMatchObject({
      cause: 'class-laboratory',
      source: { kind: 'station-file', basis: 'test report' },
      amount: expect.closeTo(0.15, 12),
    });
    // ±4 % of 30 N·m: U² = (2·1.2/√3)² + 0.3² + (0.01/√3)².
    const { terms } = instrumentTerms(WRENCH, 30, '2026-07-01', null);
    expect(budgetOf(terms).expanded).toBeCloseTo(Math.sqrt(1.92 + 0.09 + 0.0001 / 3), 9);
  });

  it('adds what the shop states beside them, spread as it is stated, each with its basis', () => {
    const further: Instrument = {
      ...CERTIFIED,
      furtherTerms: [
        { cause: 'temperature', within: { kind: 'relative', percent: 0.5 }, basis: 'cold yard' },
        { cause: 'drive', within: { kind: 'absolute', amount: 0.06 }, spread: 'arcsine', basis: 'tried' },
        {
          cause: 'hand-position',
          within: { kind: 'absolute', amount: 0.12 },
          spread: 'normal',
          basis: 'tried',
        },
        { cause: 'joint', within: { kind: 'absolute', amount: 0.24 }, spread: 'triangular', basis: 'tried' },
      ],
    };
    const rows = budgetOf(instrumentTerms(further, 30, '2026-07-01', null).terms).rows.slice(-4);
    expect(rows.map(({ cause, standard }) => [cause, standard])).toEqual([
      ['temperature', expect.closeTo(0.15 / Math.sqrt(3), 12)],
      ['drive', expect.closeTo(0.06 / Math.sqrt(2), 12)],
      ['hand-position', expect.closeTo(0.06, 12)],
      ['joint', expect.closeTo(0.24 / Math.sqrt(6), 12)],
    ]);
    expect(rows[0]?.source).toEqual({ kind: 'station-file', basis: 'cold yard' });
  });
});

describe('calendar', () => {
  it('counts months to the same day, or to the last of a shorter month', () => {
    expect(monthsLater('2026-03-16', 12)).toBe('2027-03-16');
    expect(monthsLater('2026-01-31', 1)).toBe('2026-02-28');
    expect(monthsLater('2027-12-31', 2)).toBe('2028-02-29');
    expect(yearsBetween('2026-01-01', '2026-07-02')).toBeCloseTo(0.498, 3);
  });
});
