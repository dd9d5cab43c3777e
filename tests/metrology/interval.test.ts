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

  it('takes a bound within ±a as rectangular', () => {
    expect(spreadWithin(0.003).expanded).toBeCloseTo(0.003464, 6);
    expect(() => judgeInterval({ lower: 0.8, upper: 0.7 }, window)).toThrow(RangeError);
  });
});
