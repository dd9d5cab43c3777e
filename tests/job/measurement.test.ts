/** What a reading is worth at the plug, against figures worked out by hand. */
import { describe, expect, it } from 'vitest';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { type Circumstances, measured, readingFor } from '../../src/job/measurement.ts';

const WRENCH: Instrument = {
  id: 'wrench',
  quantity: 'torque',
  serial: 'W-1',
  resolution: 0.01,
  basis: 'certificate',
  certificate: {
    number: 'C-1',
    laboratory: 'Example laboratory',
    serial: 'W-1',
    date: '2026-01-01',
    unit: 'N.m',
    points: [
      { reading: 10, error: 0.1, expanded: 0.2, k: 2 },
      { reading: 60, error: 0.6, expanded: 0.2, k: 2 },
    ],
  },
};
const GAUGE: Instrument = {
  id: 'gauge',
  quantity: 'length',
  resolution: 0.01,
  basis: 'data sheet',
  permissibleDeviation: { kind: 'absolute', amount: 0.02 },
};
const ON = '2026-01-01';
const STRAIGHT: Circumstances = { on: ON, adapter: undefined };
/** 40 mm at 60° on 200 mm: the plug gets (200 + 40/2)/200 = 1.1 of what the wrench reads. */
const ADAPTER = { armMm: 200, offsetMm: 40, angleDeg: 60, within: { armMm: 3, offsetMm: 2, angleDeg: 5 } };
const U = (at: Circumstances, peak: number | null = null) => measured(WRENCH, 20, at, peak).budget.expanded;

describe('a reading of 20 N·m', () => {
  it('straight on the plug: certificate, error left in, step and peak', () => {
    // 2·√(0.1² + 0.2² + (0.005/√3)² + 0.05²)
    expect(measured(WRENCH, 20, STRAIGHT, 0.05).value).toBe(20);
    expect(U(STRAIGHT, 0.05)).toBeCloseTo(2 * Math.sqrt(0.01 + 0.04 + 0.000025 / 3 + 0.0025), 12);
  });

  it('through an adapter is 22 N·m, with all that counted 1.1 times and the geometry beside it', () => {
    const { value, budget } = measured(WRENCH, 20, { on: ON, adapter: ADAPTER }, null);
    expect(value).toBeCloseTo(22, 12);
    // By hand: arm 20·20/200²·3/√3, offset 20·0.5/200·2/√3, angle 20·40·sin 60°/200·(π/36)/√3.
    const parts = [
      ['calibration', 1.1 * 0.1],
      ['uncorrected-error', 1.1 * 0.2],
      ['resolution', (1.1 * 0.005) / Math.sqrt(3)],
      ['adapter-arm', 0.03 / Math.sqrt(3)],
      ['adapter-offset', 0.1 / Math.sqrt(3)],
      ['adapter-angle', (2 * Math.sqrt(3) * (Math.PI / 36)) / Math.sqrt(3)],
    ] as const;
    expect(budget.rows.map(({ cause, contribution }) => [cause, contribution])).toEqual(
      parts.map(([cause, contribution]) => [cause, expect.closeTo(contribution, 12)]),
    );
    expect(budget.expanded).toBeCloseTo(2 * Math.hypot(...parts.map(([, contribution]) => contribution)), 12);
  });

  it('through a universal joint bent by 10° may be off by 1/cos 10° - 1 at its worst', () => {
    const bent: Circumstances = {
      on: ON,
      adapter: ADAPTER,
      flexJoint: { kind: 'universal-joint', bentDeg: 10 },
    };
    const { budget } = measured(WRENCH, 20, bent, null);
    expect(budget.rows.at(-1)).toMatchObject({
      cause: 'flex-joint',
      source: { kind: 'bend' },
      contribution: expect.closeTo((22 * 0.0154266) / Math.sqrt(2), 5),
    });
    expect(budget.expanded).toBeCloseTo(Math.hypot(U({ on: ON, adapter: ADAPTER }), 2 * 0.2399835), 5);
  });

  it('through a joint that somebody measured may be off by as much as he states', () => {
    const stated = { percent: 3, basis: 'bench, 20 pulls' };
    const flexJoint = { kind: 'wobble-extension', bentDeg: 5, stated } as const;
    const row = measured(WRENCH, 20, { ...STRAIGHT, flexJoint }, null).budget.rows.at(-1);
    expect(row).toMatchObject({
      cause: 'flex-joint',
      source: { kind: 'work-order', basis: 'bench, 20 pulls' },
      contribution: expect.closeTo(0.6 / Math.sqrt(3), 12),
    });
  });

  it('less the error of its certificate where the shop corrects, before the adapter', () => {
    const correct = { ...WRENCH, correct: true };
    expect(measured(correct, 20, STRAIGHT, null).value).toBeCloseTo(19.8, 12);
    const { value, budget } = measured(correct, 20, { on: ON, adapter: ADAPTER }, null);
    expect(value).toBeCloseTo(1.1 * 19.8, 12);
    expect(budget.rows.some(({ cause }) => cause === 'uncorrected-error')).toBe(false);
    // The sensitivity to the arm is that of the corrected torque.
    expect(budget.rows.find(({ cause }) => cause === 'adapter-offset')?.contribution).toBeCloseTo(
      (19.8 * 0.5 * 2) / 200 / Math.sqrt(3),
      12,
    );
  });
});

describe('what the wrench must read', () => {
  it('is the other direction: through adapter and correction to the plug and back', () => {
    for (const instrument of [WRENCH, { ...WRENCH, correct: true }])
      for (const adapter of [undefined, ADAPTER])
        for (const target of [12, 25, 30]) {
          const at = { on: ON, adapter };
          const reading = readingFor(instrument, target, at);
          expect(measured(instrument, reading, at, null).value).toBeCloseTo(target, 9);
        }
    // 1 % of error taken off: 25 at the plug is 25/0.99 on the wrench.
    expect(readingFor({ ...WRENCH, correct: true }, 25, STRAIGHT)).toBeCloseTo(25 / 0.99, 9);
    expect(readingFor(WRENCH, 22, { on: ON, adapter: ADAPTER })).toBeCloseTo(20, 12);
  });
});

describe('a gap', () => {
  it('is what the gauge reads, whatever is on the wrench', () => {
    const bent: Circumstances = {
      on: ON,
      adapter: ADAPTER,
      flexJoint: { kind: 'universal-joint', bentDeg: 10 },
    };
    expect(measured(GAUGE, 0.75, bent, null)).toEqual(measured(GAUGE, 0.75, STRAIGHT, null));
    expect(measured(GAUGE, 0.75, bent, null).value).toBe(0.75);
    expect(readingFor(GAUGE, 0.75, bent)).toBe(0.75);
  });
});
