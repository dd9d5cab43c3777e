import { describe, expect, it } from 'vitest';
import { betaFront, gammaFront } from '../../src/metrology/saddle-point.ts';

describe('the fronts of the incomplete gamma and beta functions', () => {
  it('throw on what is no number, instead of summing for ever', () => {
    expect(() => gammaFront(2, Number.NaN)).toThrow(RangeError);
    expect(() => gammaFront(Number.NaN, 2)).toThrow(RangeError);
    expect(() => gammaFront(2, Number.POSITIVE_INFINITY)).toThrow(RangeError);
    expect(() => betaFront(Number.NaN, 0.5, 2, 3)).toThrow(RangeError);
    expect(() => betaFront(0.5, 0.5, Number.POSITIVE_INFINITY, 3)).toThrow(RangeError);
  });

  it('are plain powers where the parameters are small and whole', () => {
    // x² e⁻ˣ / 2 and, for a = b = 1, x y · Γ(3).
    expect(gammaFront(2, 3)).toBeCloseTo((9 * Math.exp(-3)) / 2, 14);
    expect(betaFront(0.3, 0.7, 1, 1)).toBeCloseTo(0.42, 14);
    expect([gammaFront(2, 0), betaFront(0, 1, 2, 3), betaFront(1, 0, 2, 3)]).toEqual([0, 0, 0]);
  });
});
