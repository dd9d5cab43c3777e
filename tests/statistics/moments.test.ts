import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  lag1,
  type Moments,
  mean,
  merge,
  momentsOf,
  NO_MOMENTS,
  standardDeviation,
} from '../../src/statistics/moments.ts';

const reading = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => n / 1000);
const series = fc.array(reading, { minLength: 2, maxLength: 60 });

/** Equal up to what doubles of this size can tell. */
function expectClose(ours: Moments, other: Moments): void {
  const size = Math.max(1, other.squares);
  expect(ours.n).toBe(other.n);
  expect(Math.abs(mean(ours) - mean(other))).toBeLessThan(1e-10);
  expect(Math.abs(ours.squares - other.squares)).toBeLessThan(1e-11 * size);
  expect(Math.abs(ours.products - other.products)).toBeLessThan(1e-11 * size);
}

/** The definitions, in two passes. */
function twoPass(readings: readonly number[]) {
  const m = readings.reduce((sum, x) => sum + x, 0) / readings.length;
  const off = readings.map((x) => x - m);
  const squares = off.reduce((sum, d) => sum + d * d, 0);
  const products = off.slice(1).reduce((sum, d, i) => sum + d * (off[i] ?? 0), 0);
  return { m, squares, products };
}

describe('moments of a series', () => {
  it('are those of the definitions', () => {
    fc.assert(
      fc.property(series, (readings) => {
        const { m, squares, products } = twoPass(readings);
        const ours = momentsOf(readings);
        expect(Math.abs(mean(ours) - m)).toBeLessThan(1e-9);
        expect(Math.abs(ours.squares - squares)).toBeLessThan(1e-10 * Math.max(1, squares));
        expect(Math.abs(ours.products - products)).toBeLessThan(1e-10 * Math.max(1, squares));
      }),
    );
  });

  it('of two parts merge into those of the whole, wherever it is cut', () => {
    fc.assert(
      fc.property(series, fc.nat(60), (readings, cut) => {
        const parts = merge(momentsOf(readings.slice(0, cut)), momentsOf(readings.slice(cut)));
        expectClose(parts, momentsOf(readings));
      }),
    );
  });

  it('merge in any grouping', () => {
    fc.assert(
      fc.property(series, series, series, (a, b, c) => {
        const [x, y, z] = [momentsOf(a), momentsOf(b), momentsOf(c)];
        expectClose(merge(merge(x, y), z), merge(x, merge(y, z)));
      }),
    );
  });

  it('of nothing change nothing', () => {
    fc.assert(
      fc.property(series, (readings) => {
        const whole = momentsOf(readings);
        expect(merge(NO_MOMENTS, whole)).toEqual(whole);
        expect(merge(whole, NO_MOMENTS)).toEqual(whole);
      }),
    );
  });

  it('move with a shift and grow with a scale', () => {
    fc.assert(
      fc.property(series, reading, fc.integer({ min: 1, max: 64 }), (readings, shift, scale) => {
        const before = momentsOf(readings);
        const after = momentsOf(readings.map((x) => scale * x + shift));
        expect(Math.abs(mean(after) - scale * mean(before) - shift)).toBeLessThan(1e-8);
        const s = standardDeviation(before);
        expect(Math.abs(standardDeviation(after) - scale * s)).toBeLessThan(1e-8 * Math.max(1, scale * s));
        if (s > 0.01) expect(Math.abs((lag1(after) ?? 9) - (lag1(before) ?? -9))).toBeLessThan(1e-6);
      }),
    );
  });

  it('but for the autocorrelation do not depend on the order', () => {
    fc.assert(
      fc.property(series, (readings) => {
        const [ours, turned] = [momentsOf(readings), momentsOf([...readings].sort((a, b) => a - b))];
        expect(Math.abs(mean(ours) - mean(turned))).toBeLessThan(1e-10);
        expect(Math.abs(ours.squares - turned.squares)).toBeLessThan(1e-11 * Math.max(1, ours.squares));
      }),
    );
  });

  it('know an autocorrelation that is the same backwards', () => {
    fc.assert(
      fc.property(series, (readings) => {
        const [ahead, back] = [momentsOf(readings), momentsOf([...readings].reverse())];
        expect(Math.abs(ahead.products - back.products)).toBeLessThan(1e-10 * Math.max(1, ahead.squares));
      }),
    );
  });

  it('say so when there is too little to tell', () => {
    expect(mean(NO_MOMENTS)).toBeNaN();
    const one = add(NO_MOMENTS, 5);
    expect(mean(one)).toBe(5);
    expect(standardDeviation(one)).toBeNaN();
    expect(lag1(one)).toBeNull();
    expect(lag1(momentsOf([3, 3, 3]))).toBeNull();
    expect(standardDeviation(momentsOf([3, 3, 3]))).toBe(0);
  });
});
