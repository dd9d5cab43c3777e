import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeInterval, spreadWithin } from '../../src/metrology/interval.ts';
import { judgementSchema } from '../../src/metrology/judgement.ts';
import { normalSpread } from '../../src/metrology/spread.ts';
import { windowOf } from '../../src/metrology/window.ts';

const window = windowOf({
  unit: 'mm',
  lowerLimit: 0.7,
  upperLimit: 0.8,
  guardBandFactor: 1,
  spreadAt: () => normalSpread(0.005),
});
const grade = (lower: number | null, upper: number | null) => judgeInterval({ lower, upper }, window).result;

describe('a value known only between bounds', () => {
  it('is OK when all of it lies in the acceptance zone, its ends among it', () => {
    expect(grade(0.72, 0.78)).toBe('OK');
    expect(grade(0.705, 0.795)).toBe('OK');
    expect(grade(0.704, 0.78)).toBe('NotDecidable');
  });

  it('is not OK when all of it lies beyond a limit by the guard band', () => {
    expect(grade(null, 0.695)).toBe('NotOK');
    expect(grade(null, 0.696)).toBe('NotDecidable');
    expect(grade(0.805, null)).toBe('NotOK');
    expect(grade(0.804, 0.9)).toBe('NotDecidable');
  });

  it('lies within with the share of the interval that does', () => {
    expect(judgeInterval({ lower: 0.75, upper: 0.85 }, window).conformanceProbability).toBeCloseTo(0.5, 12);
    expect(judgeInterval({ lower: 0.6, upper: 1.0 }, window).conformanceProbability).toBeCloseTo(0.25, 12);
    expect(judgeInterval({ lower: 0.9, upper: null }, window).conformanceProbability).toBe(0);
  });

  it('never claims more than a judgement may, and an OK never with a doubt', () => {
    const bound = fc.double({ min: 0.1, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(
        bound,
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        fc.constantFrom(0, 1, 2),
        (at, width, open) => {
          const interval = { lower: open === 1 ? null : at, upper: open === 2 ? null : at + width };
          const judgement = judgeInterval(interval, window);
          expect(judgementSchema.parse(judgement)).toEqual(judgement);
          if (judgement.result === 'OK') expect(judgement.conformanceProbability).toBe(1);
          if (judgement.result === 'NotOK') expect(judgement.conformanceProbability).toBe(0);
        },
      ),
    );
  });

  // Limits 0.7 to 0.8, guard bands of 0.005: proven from 0.705 to 0.795, beyond from 0.695 and 0.805.
  it.each<
    [
      lower: number | null,
      upper: number | null,
      result: string,
      side: string,
      grade: string,
      value: number,
      within: number,
    ]
  >([
    [0.705, 0.795, 'OK', 'inside', 'pass', 0.75, 1],
    [0.7049, 0.795, 'NotDecidable', 'low', 'conditional-pass', 0.74995, 1],
    [0.705, 0.7951, 'NotDecidable', 'high', 'conditional-pass', 0.75005, 1],
    [0.68, 0.74, 'NotDecidable', 'low', 'conditional-pass', 0.71, 2 / 3],
    [0.65, 0.74, 'NotDecidable', 'low', 'conditional-fail', 0.695, 4 / 9],
    [0.78, 0.84, 'NotDecidable', 'high', 'conditional-fail', 0.81, 1 / 3],
    [0.6, 0.695, 'NotOK', 'low', 'fail', 0.6475, 0],
    [0.6, 0.6951, 'NotDecidable', 'low', 'conditional-fail', 0.64755, 0],
    [0.805, 0.9, 'NotOK', 'high', 'fail', 0.8525, 0],
    [0.8049, 0.9, 'NotDecidable', 'high', 'conditional-fail', 0.85245, 0],
    // One bound alone: below it 0 is as far as it goes, above it twice the limit.
    [null, 0.78, 'NotDecidable', 'low', 'conditional-fail', 0.78, 0.08 / 0.78],
    [0.72, null, 'NotDecidable', 'high', 'conditional-fail', 0.72, 0.08 / 0.88],
    [null, 0.695, 'NotOK', 'low', 'fail', 0.695, 0],
    [0.805, null, 'NotOK', 'high', 'fail', 0.805, 0],
    [2, null, 'NotOK', 'high', 'fail', 2, 0],
    // Nothing is known of it.
    [null, null, 'NotDecidable', 'low', 'conditional-fail', 0, 0.1 / 1.6],
  ])('between %s and %s: %s', (lower, upper, result, side, grade, value, within) => {
    const judgement = judgeInterval({ lower, upper }, window);
    expect(judgement).toMatchObject({ result, side, grade, value: expect.closeTo(value, 12) });
    expect(judgement.conformanceProbability).toBeCloseTo(within, 12);
    // Half of what lies between the bounds, and what the bounds leave open.
    const half = lower === null || upper === null ? 0 : (upper - lower) / 2;
    expect(judgement.expandedUncertainty).toBeCloseTo(half + 0.005, 12);
  });

  it('that hold nothing are refused', () => {
    for (const [lower, upper] of [
      [0.8, 0.7],
      [0.75, 0.75],
      [-0.1, 0.75],
    ] as const)
      expect(() => judgeInterval({ lower, upper }, window)).toThrow(RangeError);
    expect(() => judgeInterval({ lower: null, upper: 0 }, window)).toThrow(RangeError);
  });

  it('takes a bound within ±a as rectangular', () => {
    expect(spreadWithin(0.003).expanded).toBeCloseTo(0.003464, 6);
    expect(() => judgeInterval({ lower: 0.8, upper: 0.7 }, window)).toThrow(RangeError);
  });
});
