import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import studentCdfOf from '@stdlib/stats-base-dists-t-cdf';
import studentQuantileOf from '@stdlib/stats-base-dists-t-quantile';
import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../src/metrology/normal.ts';
import { studentCdf, studentQuantile } from '../../src/metrology/student.ts';

/** Source: the @stdlib packages named above, a general-purpose library of numerical functions (read from their code). */
const grid = (from: number, to: number, steps: number) =>
  Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);
const DEGREES = [1, 2, 3, 4, 5, 8, 10, 16, 25, 30, 50, 100, 1000];
const SHARES = [0.001, 0.01, 0.025, 0.05, 0.1, 0.25, 0.4, 0.6, 0.75, 0.9, 0.95, 0.975, 0.99, 0.995, 0.999];

/** The largest difference relative to the size of the value. */
function worst(pairs: readonly (readonly [ours: number, theirs: number])[]): number {
  return Math.max(...pairs.map(([ours, theirs]) => Math.abs(ours - theirs) / Math.abs(theirs)));
}

describe('against a general-purpose library', () => {
  it('the normal distribution from -8 to 8 agrees within 1e-12', () => {
    expect(worst(grid(-8, 8, 400).map((z) => [normalCdf(z), normalCdfOf(z, 0, 1)]))).toBeLessThan(1e-12);
  });

  it('normal quantiles agree within 1e-9', () => {
    expect(worst(SHARES.map((p) => [normalQuantile(p), normalQuantileOf(p, 0, 1)]))).toBeLessThan(1e-9);
  });

  it('Student t for 1 to 1000 degrees of freedom agrees within 1e-11', () => {
    const pairs = DEGREES.flatMap((df) =>
      grid(-12, 12, 120).map((t): [number, number] => [studentCdf(t, df), studentCdfOf(t, df)]),
    );
    expect(worst(pairs)).toBeLessThan(1e-11);
  });

  it('t quantiles, from which coverage factors come, agree within 1e-9', () => {
    const pairs = DEGREES.flatMap((df) =>
      SHARES.map((p): [number, number] => [studentQuantile(p, df), studentQuantileOf(p, df)]),
    );
    expect(worst(pairs)).toBeLessThan(1e-9);
  });
});
