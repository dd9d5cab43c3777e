import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COVERAGE } from '../../src/metrology/coverage.ts';
import {
  type Certified,
  coverageFactor,
  firstDayOutside,
  fitDrift,
  fitPeriods,
  predict,
} from '../../src/statistics/drift.ts';
import { nextInterval } from '../../src/statistics/staircase.ts';
import { normals } from './generator.ts';
import { accepted, problemOf } from './outcome.ts';

const line = (perDay: number, noise: number, n = 10, seed = 1) => {
  const next = normals(seed);
  return Array.from({ length: n }, (_, i) => ({
    atDays: 30 * i,
    deviation: perDay * 30 * i + noise * next(),
  }));
};

describe('drift between calibrations', () => {
  it('is the slope of the line, without uncertainty when all points lie on it', () => {
    const drift = accepted(fitDrift(line(0.01, 0)));
    expect(drift.perDay).toBeCloseTo(0.01, 14);
    expect(drift.perDayUncertainty).toBeLessThan(1e-15);
    expect(predict(drift, 400, 0.95).value).toBeCloseTo(4, 10);
  });

  it('predicts the next finding as often as it says', () => {
    const hits = Array.from({ length: 2000 }, (_, seed) => {
      const [next, ...known] = line(0.002, 0.1, 9, seed + 50).reverse();
      if (next === undefined) throw new Error('no point');
      const { from, to } = predict(accepted(fitDrift(known)), next.atDays, 0.9);
      return from <= next.deviation && next.deviation <= to;
    }).filter(Boolean).length;
    // Standard error 0.7 %.
    expect(Math.abs(hits / 2000 - 0.9)).toBeLessThan(0.02);
  });

  it('has an interval that is narrowest at the middle of what is known', () => {
    const drift = accepted(fitDrift(line(0.001, 0.05)));
    const width = (day: number) => {
      const { from, to } = predict(drift, day, 0.95);
      return to - from;
    };
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1000, noNaN: true }),
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        (off, more) => {
          expect(width(drift.meanAtDays + off + more)).toBeGreaterThan(width(drift.meanAtDays + off));
          expect(width(drift.meanAtDays - off)).toBeCloseTo(width(drift.meanAtDays + off), 9);
        },
      ),
    );
  });

  it('moves and grows with its points, and does not know their order', () => {
    const points = fc
      .array(
        fc.record({
          atDays: fc.integer({ min: 0, max: 2000 }),
          deviation: fc.integer({ min: -90, max: 90 }),
        }),
        {
          minLength: 3,
          maxLength: 20,
        },
      )
      .filter((found) => new Set(found.map(({ atDays }) => atDays)).size > 1);
    fc.assert(
      fc.property(points, fc.integer({ min: -500, max: 500 }), (found, shift) => {
        const plain = accepted(fitDrift(found));
        const later = accepted(
          fitDrift(
            found.map(({ atDays, deviation }) => ({ atDays: atDays + shift, deviation: 2 * deviation + 7 })),
          ),
        );
        const turned = accepted(fitDrift([...found].reverse()));
        expect(later.perDay).toBeCloseTo(2 * plain.perDay, 9);
        expect(later.perDayUncertainty).toBeCloseTo(2 * plain.perDayUncertainty, 8);
        expect(turned.perDay).toBeCloseTo(plain.perDay, 10);
        expect(turned.scatter).toBeCloseTo(plain.scatter, 8);
      }),
    );
  });

  it('refuses too few calibrations, and calibrations of one day', () => {
    expect(problemOf(fitDrift(line(0, 1, 2))).code).toBe('too-few');
    expect(problemOf(fitDrift(line(0, 1).map((found) => ({ ...found, atDays: 5 })))).code).toBe('one-day');
    expect(problemOf(fitDrift([...line(0, 1), { atDays: 1, deviation: Number.NaN }])).where).toBe(
      'deviations[10]',
    );
  });
});

describe('the first day outside', () => {
  const drift = accepted(fitDrift(line(0.01, 0.05)));
  const period = { fromDays: 270, toDays: 635 };

  it('is where the prediction reaches the limit, not before', () => {
    const day = firstDayOutside(drift, { lower: -5, upper: 5 }, period, 0.95) ?? Number.NaN;
    expect(predict(drift, day, 0.95).to).toBeCloseTo(5, 9);
    expect(predict(drift, day - 1, 0.95).to).toBeLessThan(5);
    expect(day).toBeLessThan(500);
  });

  it('is the same for a drift the other way and a lower limit', () => {
    const down = accepted(
      fitDrift(line(0.01, 0.05).map(({ atDays, deviation }) => ({ atDays, deviation: -deviation }))),
    );
    expect(firstDayOutside(down, { lower: -5, upper: null }, period, 0.95)).toBeCloseTo(
      firstDayOutside(drift, { lower: null, upper: 5 }, period, 0.95) ?? Number.NaN,
      6,
    );
  });

  it('is the first of the period when it is outside already, and null when it never is', () => {
    expect(firstDayOutside(drift, { lower: null, upper: 1 }, period, 0.95)).toBe(270);
    expect(firstDayOutside(drift, { lower: -5, upper: 50 }, period, 0.95)).toBeNull();
    expect(firstDayOutside(drift, { lower: -5, upper: null }, period, 0.95)).toBeNull();
  });

  it('is earlier the more confidence is asked for', () => {
    const upper = fc.double({ min: 3.5, max: 6, noNaN: true });
    fc.assert(
      fc.property(upper, fc.double({ min: 0.5, max: 0.95, noNaN: true }), (limit, confidence) => {
        const day = (p: number) => firstDayOutside(drift, { lower: null, upper: limit }, period, p) ?? 1e9;
        expect(day(confidence + 0.04)).toBeLessThanOrEqual(day(confidence));
      }),
    );
  });
});

describe('drift seen by certificates', () => {
  const at = (atDays: number, deviation: number, standard = 0.1): Certified => ({
    atDays,
    deviation,
    standard,
  });

  it('rests on the stated uncertainties where the findings lie on the line, as worked out by hand', () => {
    const drift = accepted(fitPeriods([[at(0, 0), at(365, 0.3), at(730, 0.6)]]));
    expect(drift).toMatchObject({ fit: 'fits', spare: 1, scatter: 1, n: 3 });
    expect(drift.perDay).toBeCloseTo(0.3 / 365, 14);
    expect(drift.perDayUncertainty).toBeCloseTo(0.1 / (365 * Math.SQRT2), 14);
    // u² = 0.1²·(1 + 1/3 + 730²/(2·365²)) = 0.1²·10/3, and k = 2.
    const { value, from, to } = predict(drift, 1095, COVERAGE);
    expect(value).toBeCloseTo(0.9, 12);
    expect((to - from) / 2).toBeCloseTo(0.2 * Math.sqrt(10 / 3), 9);
  });

  it('has an interval from two findings, and says that nothing is left over to try it', () => {
    const drift = accepted(fitPeriods([[at(0, 0), at(365, 0.3)]]));
    expect(drift).toMatchObject({ fit: 'untried', spare: 0 });
    const { from, to } = predict(drift, 730, COVERAGE);
    expect((to - from) / 2).toBeCloseTo(0.2 * Math.sqrt(1 + 0.5 + 4.5), 9);
  });

  it('rests on the scatter, with very few degrees of freedom, where they lie on no line', () => {
    const jumpy = accepted(fitPeriods([[at(0, 0), at(365, 0.6), at(730, 0)]]));
    expect(jumpy).toMatchObject({ fit: 'does-not-fit', degreesOfFreedom: 1 });
    expect(jumpy.chiSquare).toBeCloseTo(0.24 / 0.01, 9);
    expect(jumpy.scatter).toBeCloseTo(Math.sqrt(24), 9);
    expect(coverageFactor(jumpy, COVERAGE)).toBeGreaterThan(13);
  });

  it('never runs across an adjustment: each period has its level, all have one slope', () => {
    // Drifts by 0.4 a year and is set back to zero each time: one line through all would be flat.
    const periods = [[at(0, 0), at(365, 0.4)], [at(365, 0), at(730, 0.4)], [at(730, 0)]];
    const drift = accepted(fitPeriods(periods));
    expect(drift.perDay).toBeCloseTo(0.4 / 365, 14);
    expect(drift).toMatchObject({ fit: 'fits', spare: 1, meanAtDays: 730, meanDeviation: 0 });
    expect(predict(drift, 1095, COVERAGE).value).toBeCloseTo(0.4, 12);
    expect(drift.levels).toHaveLength(3);
    const across = accepted(fitPeriods([periods.flat()]));
    expect(Math.abs(across.perDay)).toBeLessThan(0.2 / 365);
  });

  it('lets the better certificate count for more', () => {
    const good = accepted(fitPeriods([[at(0, 0, 0.01), at(365, 0.3, 0.01), at(730, 0, 1)]]));
    expect(good.perDay * 365).toBeCloseTo(0.3, 2);
  });

  it('takes the next finding to be as uncertain as the newest one, in whatever order they come', () => {
    const points = [at(730, 0, 0.1), at(0, 0, 0.3), at(365, 0, 0.2)];
    for (const order of [points, [...points].reverse()])
      expect(accepted(fitPeriods([order])).nextVariance).toBeCloseTo(0.01, 12);
  });

  it('predicts the next finding as often as it says, for a steady drift', () => {
    for (const [seed, count] of [
      [1, 2],
      [2, 3],
      [3, 5],
    ] as const) {
      const next = normals(seed);
      const hits = Array.from({ length: 1200 }, () => {
        const points = Array.from({ length: count + 1 }, (_, i) => at(365 * i, 0.2 * i + 0.1 * next()));
        const drift = accepted(fitPeriods([points.slice(0, -1)]));
        const { from, to } = predict(drift, 365 * count, COVERAGE);
        const found = points[count]?.deviation ?? Number.NaN;
        return from <= found && found <= to;
      }).filter(Boolean).length;
      // Standard error 0.6 %; what fits badly by chance gets an interval that is too wide.
      expect(hits / 1200).toBeGreaterThan(COVERAGE - 0.018);
      expect(hits / 1200).toBeLessThan(COVERAGE + 0.03);
    }
  });

  it('moves with time, unit and sign, and a level of its own for a period changes nothing', () => {
    const point = fc.record({
      atDays: fc.integer({ min: 0, max: 3000 }),
      deviation: fc.integer({ min: -90, max: 90 }),
      standard: fc.integer({ min: 1, max: 20 }),
    });
    const periods = fc
      .array(fc.array(point, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 4 })
      .filter((all) => all.some((one) => new Set(one.map(({ atDays }) => atDays)).size > 1));
    fc.assert(
      fc.property(
        periods,
        fc.integer({ min: -5000, max: 5000 }),
        fc.constantFrom(-3, -1, 0.5, 10),
        (all, days, unit) => {
          const plain = accepted(fitPeriods(all));
          const moved = accepted(
            fitPeriods(
              all.map((one, level) =>
                one.map(({ atDays, deviation, standard }) =>
                  at(atDays + days, unit * (deviation + 7 * level), Math.abs(unit) * standard),
                ),
              ),
            ),
          );
          expect(moved.perDay).toBeCloseTo(unit * plain.perDay, 7);
          expect(moved.perDayUncertainty).toBeCloseTo(Math.abs(unit) * plain.perDayUncertainty, 7);
          expect(moved.chiSquare).toBeCloseTo(plain.chiSquare, 5);
          expect(moved.meanAtDays).toBeCloseTo(plain.meanAtDays + days, 6);
        },
      ),
    );
  });

  it('refuses what no line follows from', () => {
    const code = (...periods: readonly (readonly Certified[])[]) => problemOf(fitPeriods(periods)).code;
    expect(code()).toBe('too-few');
    expect(code([at(0, 0)], [at(365, 1)])).toBe('too-few');
    expect(code([at(5, 0), at(5, 1)], [at(9, 1)])).toBe('one-day');
    expect(code([at(0, 0, 0), at(365, 1)])).toBe('uncertainty-missing');
    expect(code([at(0, 0), at(Number.NaN, 1)])).toBe('not-a-number');
  });
});

describe('the staircase of calibration intervals', () => {
  const bounds = { shortestDays: 30, longestDays: 365 };
  const next = (days: number, deviation: number) =>
    accepted(nextInterval(days, { deviation, permissible: 4 }, bounds));

  it('goes up when found well inside, stays near the limit, and down when found outside', () => {
    expect(next(180, 3.2)).toEqual({ days: 225, step: 'longer', share: 0.8 });
    expect(next(180, -3.3)).toMatchObject({ days: 180, step: 'kept' });
    expect(next(180, 4)).toMatchObject({ days: 180, step: 'kept' });
    expect(next(180, -4.1)).toMatchObject({ days: 90, step: 'shorter' });
  });

  it('never leaves its bounds, and never goes up with a larger deviation', () => {
    const days = fc.integer({ min: 30, max: 365 });
    const deviation = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(days, deviation, deviation, (now, a, b) => {
        const [small, large] = [next(now, Math.min(a, b)), next(now, -Math.max(a, b))];
        expect(large.days).toBeLessThanOrEqual(small.days);
        expect(small.days).toBeLessThanOrEqual(365);
        expect(large.days).toBeGreaterThanOrEqual(30);
      }),
    );
    expect(next(365, 0)).toMatchObject({ days: 365, step: 'kept' });
    expect(next(30, 9)).toMatchObject({ days: 30, step: 'kept' });
  });

  it('refuses what does not go together', () => {
    const code = (days: number, deviation: number, permissible = 4) =>
      problemOf(nextInterval(days, { deviation, permissible }, bounds)).code;
    expect([code(20, 0), code(400, 0), code(90.5, 0), code(90, Number.NaN), code(90, 0, 0)]).toEqual(
      Array(5).fill('calibration-interval'),
    );
  });
});
