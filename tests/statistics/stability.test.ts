/** Bounds and edges of the shop's statistics, against figures from printed tables and sums that are written out. */
import { describe, expect, it } from 'vitest';
import { capability } from '../../src/statistics/capability.ts';
import { proportion } from '../../src/statistics/proportion.ts';
import { runSignals, stabilityOf } from '../../src/statistics/run-rules.ts';
import { nextInterval } from '../../src/statistics/staircase.ts';
import { accepted, problemOf } from './outcome.ts';

/** To and fro about 0 within one sigma, with so many readings beyond three. */
const restless = (n: number, beyond: number): number[] =>
  Array.from({ length: n }, (_, i) => (i % 8 === 4 && i / 8 < beyond ? 4 : i % 2 === 0 ? 0.5 : -0.5));

/** P(N >= k) of a Poisson count, as a plain sum. */
function poissonTail(k: number, mean: number): number {
  let [term, below] = [Math.exp(-mean), 0];
  for (let i = 0; i < k; i += 1) {
    below += term;
    term *= mean / (i + 1);
  }
  return 1 - below;
}

describe('whether a process is stable', () => {
  it('is by how often chance brings so many signals: less than once in a hundred is no chance', () => {
    const mean = 92 / 91.75;
    for (const beyond of [0, 1, 2, 3, 4, 5, 6]) {
      const found = stabilityOf(restless(92, beyond), 0, 1);
      expect(found).toMatchObject({ readings: 92, signals: beyond });
      expect(found.byChance).toBeCloseTo(mean, 12);
      expect(found.unstable).toBe(poissonTail(beyond, mean) < 0.01);
    }
    expect([poissonTail(4, mean) < 0.01, poissonTail(5, mean) < 0.01]).toEqual([false, true]);
  });

  it('is never in doubt for having too few signals', () => {
    expect(stabilityOf(restless(2000, 3), 0, 1)).toMatchObject({ signals: 3, unstable: false });
  });

  it('begins anew behind a signal: nine on one side are one, sixteen are two', () => {
    const side = (n: number) => stabilityOf(Array(n).fill(0.5), 0, 1).signals;
    expect([7, 8, 9, 15, 16].map(side)).toEqual([0, 1, 1, 1, 2]);
  });

  it('counts a reading on a line as not beyond it, on either side', () => {
    const rules = (readings: number[]) =>
      runSignals(readings, 10, 2).map(({ rule, side }) => `${rule} ${side}`);
    expect(rules([16])).toEqual([]);
    expect(rules([16.01])).toEqual(['one-beyond-3 above']);
    expect(rules([4])).toEqual([]);
    expect(rules([3.99])).toEqual(['one-beyond-3 below']);
    expect(rules([14.1, 10, 14.1])).toEqual(['two-of-three-beyond-2 above']);
    expect(rules([14.1, 10, 10, 14.1])).toEqual([]);
    expect(rules([14, 10, 14.1])).toEqual([]);
    expect(rules([5.9, 14.1, 5.9])).toEqual(['two-of-three-beyond-2 below']);
    expect(rules([7.9, 7.9, 10, 7.9, 7.9])).toEqual(['four-of-five-beyond-1 below']);
    expect(rules([7.9, 7.9, 10, 10, 7.9, 7.9])).toEqual([]);
  });
});

describe('the interval of Pp', () => {
  it('has one degree of freedom less than readings: chi-square with 30 is 16.791 and 46.979 at its ends', () => {
    const readings = Array.from({ length: 31 }, (_, i) => 25 + Math.sin(7 * i));
    const { pp, ppk } = accepted(capability(readings, { lower: 20, upper: 30 }, 0.95));
    expect((pp?.from ?? 0) / (pp?.value ?? 1)).toBeCloseTo(Math.sqrt(16.791 / 30), 4);
    expect((pp?.to ?? 0) / (pp?.value ?? 1)).toBeCloseTo(Math.sqrt(46.979 / 30), 4);
    // Bissell, with 1.959964 for 95 %.
    expect(ppk.to - ppk.value).toBeCloseTo(1.959964 * Math.sqrt(1 / 279 + ppk.value ** 2 / 60), 6);
    expect(ppk.value - ppk.from).toBeCloseTo(ppk.to - ppk.value, 12);
  });
});

describe('a share', () => {
  it('of none or of all ends where a share ends', () => {
    expect(proportion(0, 10)).toMatchObject({ share: 0, from: 0 });
    expect(proportion(10, 10)).toMatchObject({ share: 1, to: 1 });
    expect(proportion(10, 10).from).toBeCloseTo(1 - proportion(0, 10).to, 12);
    expect(proportion(0, 0)).toMatchObject({ share: null, from: 0, to: 1 });
  });

  it('of more than all, or of parts, is none', () => {
    for (const [count, n] of [
      [11, 10],
      [-1, 10],
      [0.5, 10],
      [1, 10.5],
    ] as const)
      expect(() => proportion(count, n)).toThrow(RangeError);
  });
});

describe('what the next interval of a calibration is made from', () => {
  const sound = { days: 30, deviation: 1, permissible: 4, shortestDays: 30, longestDays: 365 };
  const asked = (change: Partial<typeof sound>) => {
    const { days, deviation, permissible, ...bounds } = { ...sound, ...change };
    return nextInterval(days, { deviation, permissible }, bounds);
  };
  it.each<[string, Partial<typeof sound>, boolean]>([
    ['both bounds', {}, true],
    ['the longest', { days: 365 }, true],
    ['a day', { days: 1, shortestDays: 1 }, true],
    ['less than a day', { days: 1, shortestDays: 0 }, false],
    ['shorter than the shortest', { days: 29 }, false],
    ['longer than the longest', { days: 366 }, false],
    ['part of a day', { days: 30.5 }, false],
    ['nothing permitted', { permissible: 0 }, false],
    ['a deviation that is none', { deviation: Number.NaN }, false],
  ])('%s', (_what, change, taken) => {
    if (taken) expect(asked(change).ok).toBe(true);
    else expect(problemOf(asked(change))).toMatchObject({ code: 'calibration-interval' });
  });
});
