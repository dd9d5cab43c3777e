import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { capability, indices } from '../../src/statistics/capability.ts';
import { normals } from './generator.ts';
import { accepted, problemOf } from './outcome.ts';

const WINDOW = { lower: 22.5, upper: 27.5 };
const torques = (n: number, mean: number, sigma: number, seed = 7) => {
  const next = normals(seed);
  return Array.from({ length: n }, () => mean + sigma * next());
};

describe('capability of readings', () => {
  it('names short-term and overall indices apart: a drift widens only the overall one', () => {
    const steady = torques(120, 25, 0.3);
    const drifting = steady.map((reading, i) => reading + (i - 60) / 60);
    const [before, after] = [accepted(capability(steady, WINDOW)), accepted(capability(drifting, WINDOW))];
    expect(after.pp?.value).toBeLessThan(0.7 * (before.pp?.value ?? 0));
    expect(after.cp?.value).toBeGreaterThan(0.95 * (before.cp?.value ?? 0));
  });

  it('counts what is outside and says what a normal distribution would put there', () => {
    const result = accepted(capability([...torques(99, 25, 0.5), 30], WINDOW));
    expect(result.counts).toEqual({ below: 0, within: 99, above: 1 });
    expect(result.outside.share).toBe(0.01);
    expect(result.outside.to).toBeGreaterThan(0.05);
    expect(result.expectedPercent.total).toBeCloseTo(
      result.expectedPercent.below + result.expectedPercent.above,
      12,
    );
    expect(result.fewerThanUsual).toBe(false);
  });

  it('works with one limit: no Cp, no k, and only one side', () => {
    const readings = torques(40, 25, 0.5);
    const result = accepted(capability(readings, { lower: null, upper: 27.5 }));
    expect([result.cp, result.pp, result.offCentre]).toEqual([null, null, null]);
    expect(result.ppk.value).toBeCloseTo((27.5 - result.mean) / (3 * result.sigmaOverall), 12);
    expect(result.expectedPercent.below).toBe(0);
    expect(result.fewerThanUsual).toBe(true);
  });

  it('refuses what no index can stand on', () => {
    const enough = torques(30, 25, 0.5);
    expect(problemOf(capability(enough.slice(1), WINDOW)).code).toBe('too-few');
    expect(problemOf(capability(enough, { lower: null, upper: null })).code).toBe('no-limits');
    expect(problemOf(capability(enough, { lower: Number.NaN, upper: 3 })).code).toBe('no-limits');
    expect(problemOf(capability(enough, { lower: 5, upper: 5 })).code).toBe('range-reversed');
    expect(problemOf(capability(enough.with(3, Number.NaN), WINDOW))).toEqual({
      code: 'not-a-number',
      where: 'readings[3]',
    });
    expect(problemOf(capability(Array(30).fill(25), WINDOW)).code).toBe('no-spread');
  });

  it('says where the readings show the steps of the instrument and not the process', () => {
    const gaps = torques(100, 0.75, 0.002).map((gap) => Math.round(gap * 100) / 100);
    const readings = [...gaps, 0.74, 0.76];
    const { coarse, cp } = accepted(capability(readings, { lower: 0.7, upper: 0.8 }));
    expect(cp?.value).toBeGreaterThan(10);
    expect(coarse?.values).toBe(3);
    expect(coarse?.step).toBeCloseTo(0.01, 12);
    const fine = torques(100, 0.75, 0.002).map((gap) => Math.round(gap * 1000) / 1000);
    expect(accepted(capability(fine, { lower: 0.7, upper: 0.8 })).coarse).toBeNull();
    // Five values, hardly ever another than the middle one.
    const rare = [...Array(300).fill(25), 25.1, 24.9, 25.2, 24.8];
    expect(accepted(capability(rare, WINDOW)).coarse?.values).toBe(5);
  });

  it('refuses readings whose mean and spread a double does not hold', () => {
    const enough = torques(30, 25, 0.5);
    for (const [a, b] of [
      [1e308, -1e308],
      [1e200, 0],
    ] as const)
      expect(problemOf(capability(enough.with(3, a).with(4, b), WINDOW)).code).toBe('not-a-number');
    expect(problemOf(capability([...Array(30).fill(0), 1e-200], WINDOW)).code).toBe('not-a-number');
  });

  const series = fc
    .array(fc.integer({ min: 20_000, max: 30_000 }), { minLength: 30, maxLength: 60 })
    .filter((xs) => new Set(xs).size > 5)
    .map((xs) => xs.map((x) => x / 1000));

  it('is the same in another unit', () => {
    fc.assert(
      fc.property(series, fc.constantFrom(0.5, 2, 1024), (readings, unit) => {
        const plain = accepted(capability(readings, WINDOW));
        const other = accepted(
          capability(
            readings.map((x) => x * unit),
            { lower: WINDOW.lower * unit, upper: WINDOW.upper * unit },
          ),
        );
        for (const key of ['cp', 'cpk', 'pp', 'ppk'] as const)
          expect(other[key]?.value).toBeCloseTo(plain[key]?.value ?? Number.NaN, 9);
        expect(other.expectedPercent.total).toBeCloseTo(plain.expectedPercent.total, 8);
      }),
    );
  });

  it('has overall indices that do not depend on the order', () => {
    fc.assert(
      fc.property(series, (readings) => {
        const [given, sorted] = [readings, [...readings].sort((a, b) => a - b)].map((xs) =>
          accepted(capability(xs, WINDOW)),
        );
        expect(sorted?.ppk.value).toBeCloseTo(given?.ppk.value ?? Number.NaN, 9);
        expect(sorted?.counts).toEqual(given?.counts);
      }),
    );
  });

  it('is never nearer than its spread allows, and equals it only in the middle', () => {
    const mean = fc.double({ min: 10, max: 40, noNaN: true });
    fc.assert(
      fc.property(mean, fc.double({ min: 0.01, max: 5, noNaN: true }), (centre, sigma) => {
        const { spread, nearest, offCentre } = indices(centre, sigma, WINDOW);
        expect(nearest).toBeLessThanOrEqual((spread ?? 0) * (1 + 1e-12));
        expect(nearest).toBeCloseTo((spread ?? 0) * (1 - (offCentre ?? 0)), 8);
      }),
    );
    expect(indices(25, 0.5, WINDOW).nearest).toBe(indices(25, 0.5, WINDOW).spread);
  });
});

describe('confidence intervals of capability', () => {
  it('of Cpk count the mean in too, which matters where the mean is near a limit', () => {
    const readings = torques(50, 27.4, 0.6);
    const { ppk } = accepted(capability(readings, WINDOW));
    const half = 1.959964 * Math.sqrt(1 / (9 * 50) + ppk.value ** 2 / (2 * 49));
    expect(ppk.to - ppk.value).toBeCloseTo(half, 6);
    expect(ppk.value - ppk.from).toBeCloseTo(half, 6);
    expect(ppk.value).toBeLessThan(0.2);
  });

  // Truth known, 2000 samples of 50: the share covered has a standard error of 0.5 %.
  const truth = indices(25.4, 0.6, WINDOW);
  const samples = Array.from({ length: 2000 }, (_, i) =>
    accepted(capability(torques(50, 25.4, 0.6, 1000 + i), WINDOW)),
  );
  const covered = (key: 'cp' | 'cpk' | 'pp' | 'ppk', value: number) =>
    samples.filter((sample) => {
      const estimate = sample[key];
      return estimate !== null && estimate.from <= value && value <= estimate.to;
    }).length / samples.length;

  it.each([
    ['pp', 0.015],
    ['ppk', 0.02],
    ['cp', 0.02],
    ['cpk', 0.02],
  ] as const)('of %s hold the truth 95 times in a hundred', (key, within) => {
    const value = key.endsWith('k') ? truth.nearest : (truth.spread ?? Number.NaN);
    expect(Math.abs(covered(key, value) - 0.95)).toBeLessThan(within);
  });
});
