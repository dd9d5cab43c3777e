import { describe, expect, it } from 'vitest';
import { mean, momentsOf, standardDeviation } from '../../src/statistics/moments.ts';
import { normalityOf } from '../../src/statistics/normality.ts';
import { normals } from './generator.ts';

const tried = (readings: readonly number[]) => {
  const moments = momentsOf(readings);
  return normalityOf(readings, mean(moments), standardDeviation(moments));
};

describe('whether readings are near normal', () => {
  it('excludes normal readings about once in 200 times', () => {
    const next = normals(11);
    const excluded = Array.from({ length: 2000 }, () => tried(Array.from({ length: 100 }, next))).filter(
      (one) => one.excluded,
    ).length;
    // 10 expected, with a standard deviation of 3.2.
    expect(excluded).toBeGreaterThan(1);
    expect(excluded).toBeLessThan(21);
  });

  it('excludes readings that stand in three groups', () => {
    const next = normals(3);
    const readings = Array.from({ length: 120 }, (_, i) => 25 + 2 * (i % 3) + 0.2 * next());
    expect(tried(readings)).toMatchObject({ excluded: true });
  });

  it('has the statistic that is worked out by hand', () => {
    // n = 2k values in two places, one deviation apart from the mean: Φ(±z) with z = √((n-1)/n).
    const readings = [...Array<number>(10).fill(-1), ...Array<number>(10).fill(1)];
    const z = Math.sqrt(19 / 20);
    const phi = (1 + erf(z / Math.SQRT2)) / 2;
    let sum = 0;
    for (let i = 0; i < 20; i++) sum += (2 * i + 1) * (i < 10 ? 2 * Math.log(1 - phi) : 2 * Math.log(phi));
    const byHand = (-20 - sum / 20) * (1 + 0.75 / 20 + 2.25 / 400);
    expect(tried(readings).statistic).toBeCloseTo(byHand, 6);
  });

  it('stays finite with a reading that no normal distribution would have', () => {
    expect(tried([...Array.from({ length: 3000 }, (_, i) => i % 7), 1e9]).statistic).toBeLessThan(Infinity);
  });
});

/** Abramowitz and Stegun 7.1.5. */
function erf(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < 60; n++) {
    term *= (-x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}
