import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ewmaChart } from '../../src/statistics/ewma.ts';
import { individualsChart, individualsLimits } from '../../src/statistics/individuals.ts';
import { movingRange } from '../../src/statistics/moving-range.ts';
import { runSignals } from '../../src/statistics/run-rules.ts';
import { normals } from './generator.ts';
import { accepted, problemOf } from './outcome.ts';

const rules = (readings: readonly number[]) =>
  runSignals(readings, 0, 1).map(({ index, rule, side }) => `${index} ${rule} ${side}`);

describe('run rules', () => {
  it('one reading beyond three sigma', () => {
    expect(rules([0.5, 3.01])).toEqual(['1 one-beyond-3 above']);
    expect(rules([0.5, -3.01])).toEqual(['1 one-beyond-3 below']);
  });

  it('two of three beyond two sigma, on one side', () => {
    expect(rules([2.1, 0, 2.1])).toEqual(['2 two-of-three-beyond-2 above']);
    expect(rules([2.1, 0, 0, 2.1])).toEqual([]);
    expect(rules([2.1, -2.1])).toEqual([]);
  });

  it('four of five beyond one sigma, on one side', () => {
    expect(rules([-1.1, -1.1, 0.2, -1.1, -1.1])).toEqual(['4 four-of-five-beyond-1 below']);
    expect(rules([-1.1, -1.1, 0.2, 0.2, -1.1, -1.1])).toEqual([]);
  });

  it('eight in a row on one side; one on the centre line breaks the row', () => {
    expect(rules(Array(8).fill(0.1))).toEqual(['7 eight-on-one-side above']);
    expect(rules([...Array(7).fill(0.1), 0, 0.1])).toEqual([]);
  });

  it('a reading exactly on a line is not beyond it', () => {
    expect(rules([3])).toEqual([]);
    expect(rules([2, 2])).toEqual([]);
    expect(rules([2.1, 2.1, 2])).toEqual(['1 two-of-three-beyond-2 above']);
  });

  it('mirror with the readings and do not know their unit', () => {
    const readings = fc.array(fc.integer({ min: -40, max: 40 }), { maxLength: 40 });
    fc.assert(
      fc.property(readings, fc.integer({ min: -50, max: 50 }), (tenths, centre) => {
        const plain = runSignals(tenths, 0, 10);
        const mirrored = runSignals(
          tenths.map((x) => -x),
          0,
          10,
        );
        expect(mirrored.map(({ index, rule }) => [index, rule])).toEqual(
          plain.map(({ index, rule }) => [index, rule]),
        );
        expect(mirrored.every(({ side }, i) => side !== plain[i]?.side)).toBe(true);
        expect(
          runSignals(
            tenths.map((x) => 4 * (x + centre)),
            4 * centre,
            40,
          ),
        ).toEqual(plain);
      }),
    );
  });
});

describe('a mean of several values on a chart of weighted means', () => {
  const settings = { lambda: 0.2, target: 25, sigma: 0.4, width: 3 };
  const charted = (readings: readonly number[], counts: readonly number[]) =>
    accepted(ewmaChart(readings, settings, { atDays: readings.map((_, i) => i), nominalDays: 1, counts }));

  it('has limits that are narrower by the root of how many', () => {
    const { points } = charted([25, 25], [4, 9]);
    // v1 = 0.2²/4; v2 = 0.8²·v1 + 0.2²/9.
    expect(points[0]?.upper).toBeCloseTo(25 + 3 * 0.4 * (0.2 / 2), 12);
    expect(points[1]?.upper).toBeCloseTo(25 + 3 * 0.4 * Math.sqrt(0.64 * 0.01 + 0.04 / 9), 12);
    expect(points[1]?.lower).toBeCloseTo(50 - (points[1]?.upper ?? 0), 12);
  });

  it('is cut off where a mean of so many would be', () => {
    const { points } = accepted(
      ewmaChart([35], { ...settings, clip: 3 }, { atDays: [0], nominalDays: 1, counts: [4] }),
    );
    expect(points[0]?.mean).toBeCloseTo(25 + 0.2 * 3 * 0.4 * 0.5, 12);
  });

  it('needs a count of one or more for each', () => {
    const spacing = (counts: readonly number[]) => ({ atDays: [0, 1], nominalDays: 1, counts });
    for (const counts of [[1], [1, 0], [1, Number.NaN], [1, 1, 1]])
      expect(problemOf(ewmaChart([25, 25], settings, spacing(counts))).code).toBe('reading-times');
  });
});

describe('an individuals chart', () => {
  const next = normals(11);
  const stable = Array.from({ length: 40 }, () => 25 + 0.4 * next());
  const limits = accepted(individualsLimits(stable));

  it('holds later readings against limits of a stable period', () => {
    const chart = accepted(individualsChart([25, 25.1, 27.5, 24.9], limits));
    expect(chart.signals).toContainEqual({ index: 2, rule: 'one-beyond-3', side: 'above' });
    expect(chart.ranges).toHaveLength(3);
    expect(chart.wideRanges).toEqual([2, 3]);
  });

  it('of nothing and of one reading is empty, not wrong', () => {
    expect(accepted(individualsChart([], limits)).signals).toEqual([]);
    expect(accepted(individualsChart([25], limits)).ranges).toEqual([]);
  });

  it('refuses a baseline that is too short, not finite or without spread', () => {
    expect(problemOf(individualsLimits(stable.slice(0, 7))).code).toBe('too-few');
    expect(problemOf(individualsLimits(stable.with(4, Number.POSITIVE_INFINITY)))).toEqual({
      code: 'not-a-number',
      where: 'readings[4]',
    });
    expect(problemOf(individualsLimits(Array(20).fill(1))).code).toBe('no-spread');
    expect(problemOf(individualsChart([Number.NaN], limits)).code).toBe('not-a-number');
  });

  it('has limits that move and grow with the readings, and the same backwards', () => {
    const series = fc
      .array(fc.integer({ min: -5000, max: 5000 }), { minLength: 8, maxLength: 50 })
      .filter((xs) => new Set(xs).size > 1);
    fc.assert(
      fc.property(series, fc.integer({ min: -100, max: 100 }), (readings, shift) => {
        const plain = accepted(individualsLimits(readings));
        const moved = accepted(individualsLimits(readings.map((x) => 3 * x + shift)));
        const back = accepted(individualsLimits([...readings].reverse()));
        expect(moved.upper).toBeCloseTo(3 * plain.upper + shift, 6);
        expect(moved.rangeUpper).toBeCloseTo(3 * plain.rangeUpper, 6);
        expect(back.lower).toBeCloseTo(plain.lower, 6);
      }),
    );
  });

  it('counts the degrees of freedom of its sigma as simulation shows them', () => {
    const draw = normals(5);
    const sigmas = Array.from({ length: 20_000 }, () => movingRange(Array.from({ length: 20 }, draw)).sigma);
    const mean = sigmas.reduce((a, b) => a + b, 0) / sigmas.length;
    const variance = sigmas.reduce((sum, s) => sum + (s - mean) ** 2, 0) / sigmas.length;
    const { degreesOfFreedom } = movingRange(Array.from({ length: 20 }, draw));
    // A standard deviation with ν degrees of freedom has relative variance 1/(2ν).
    expect(Math.abs(mean - 1)).toBeLessThan(0.01);
    expect((variance / mean ** 2) * 2 * degreesOfFreedom).toBeGreaterThan(0.96);
    expect((variance / mean ** 2) * 2 * degreesOfFreedom).toBeLessThan(1.04);
  });
});

describe('an EWMA chart', () => {
  it('refuses what leads to no finite mean or limit', () => {
    const ends = [1.7e308, -1.7e308];
    expect(problemOf(ewmaChart(ends, settings))).toEqual({ code: 'not-a-number', where: 'readings' });
    expect(problemOf(ewmaChart([1], { ...settings, sigma: 1e308 })).code).toBe('not-a-number');
    expect(accepted(ewmaChart([1e6, -1e6], settings)).points).toHaveLength(2);
  });

  const settings = { lambda: 0.2, target: 0, sigma: 1, width: 3 };
  const readings = fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 1, maxLength: 40 });

  it('has exact limits: the printed formula, growing to the asymptotic ones', () => {
    const chart = accepted(ewmaChart(Array(60).fill(0), settings));
    for (const [i, { upper, lower }] of chart.points.entries()) {
      const exact = 3 * Math.sqrt((0.2 / 1.8) * (1 - 0.8 ** (2 * (i + 1))));
      expect(upper).toBeCloseTo(exact, 12);
      expect(lower).toBeCloseTo(-exact, 12);
    }
    expect(chart.points.at(-1)?.upper).toBeCloseTo(chart.asymptotic.upper, 10);
    expect(chart.spacing).toBe('not given');
  });

  it('finds a small lasting shift that no single reading shows', () => {
    const shifted = accepted(ewmaChart(Array(20).fill(1.2), settings));
    expect(shifted.points[0]?.signal).toBeNull();
    expect(shifted.points.at(-1)?.signal).toBe('above');
  });

  it('with weight 1 is the readings themselves', () => {
    fc.assert(
      fc.property(readings, (xs) => {
        const chart = accepted(ewmaChart(xs, { ...settings, lambda: 1 }));
        expect(chart.points.map(({ mean }) => mean)).toEqual(xs.map((x) => expect.closeTo(x, 9)));
        expect(chart.points.every(({ upper }) => upper === 3)).toBe(true);
      }),
    );
  });

  it('with even times is the chart without times', () => {
    fc.assert(
      fc.property(readings, fc.integer({ min: 1, max: 90 }), (xs, nominalDays) => {
        const spacing = { atDays: xs.map((_, i) => 100 + i * nominalDays), nominalDays };
        const timed = accepted(ewmaChart(xs, settings, spacing));
        const plain = accepted(ewmaChart(xs, settings));
        for (const [i, point] of timed.points.entries()) {
          expect(point.mean).toBeCloseTo(plain.points[i]?.mean ?? Number.NaN, 9);
          expect(point.upper).toBeCloseTo(plain.points[i]?.upper ?? Number.NaN, 9);
        }
        expect(timed.spacing).toBe('regular');
      }),
    );
  });

  it('with uneven times lets the past fade with time, widens the limits and says so', () => {
    const xs = [0, 0, 1];
    const long = accepted(ewmaChart(xs, settings, { atDays: [0, 30, 300], nominalDays: 30 }));
    const short = accepted(ewmaChart(xs, settings, { atDays: [0, 30, 60], nominalDays: 30 }));
    expect(long.spacing).toBe('irregular');
    expect(long.points[2]?.mean).toBeCloseTo(1 - 0.8 ** 9, 12);
    expect(long.points[2]?.mean).toBeGreaterThan(short.points[2]?.mean ?? 1);
    expect(long.points[2]?.upper).toBeGreaterThan(short.points[2]?.upper ?? 3);
  });

  it('refuses impossible settings and times', () => {
    expect(problemOf(ewmaChart([1], { ...settings, lambda: 0 })).code).toBe('chart-settings');
    expect(problemOf(ewmaChart([1], { ...settings, lambda: 1.1 })).code).toBe('chart-settings');
    expect(problemOf(ewmaChart([1], { ...settings, sigma: 0 })).code).toBe('chart-settings');
    expect(problemOf(ewmaChart([1, Number.NaN], settings)).where).toBe('readings[1]');
    expect(problemOf(ewmaChart([1, 2], settings, { atDays: [1, 1], nominalDays: 30 })).code).toBe(
      'reading-times',
    );
    expect(problemOf(ewmaChart([1, 2], settings, { atDays: [1], nominalDays: 30 })).code).toBe(
      'reading-times',
    );
    expect(problemOf(ewmaChart([1], settings, { atDays: [1], nominalDays: 0 })).code).toBe('reading-times');
  });
});
