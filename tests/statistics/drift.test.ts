import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beforeDue } from '../../src/statistics/before-due.ts';
import { firstDayOutside, fitDrift, predict } from '../../src/statistics/drift.ts';
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

describe('the warning before a calibration is due', () => {
  const settings = {
    permissible: { lower: -4, upper: 4 },
    untilDue: { fromDays: 280, toDays: 365 },
    confidence: 0.95,
    ewma: { lambda: 0.3, target: 0, sigma: 0.2, width: 3 },
    nominalDays: 30,
  };

  it('is not given for a steady instrument', () => {
    const result = accepted(beforeDue(line(0, 0.2), settings));
    expect(result).toMatchObject({ outsideAtDays: null, shifted: false, warn: false });
  });

  it('is given for a slow drift before it leaves its limits', () => {
    const result = accepted(beforeDue(line(0.011, 0.1), settings));
    expect(result.warn).toBe(true);
    expect(result.outsideAtDays).toBeGreaterThan(280);
    expect(result.drift.perDay).toBeCloseTo(0.011, 2);
  });

  it('is given for a shift that is far from the limits still', () => {
    const moved = line(0, 0.1).map((found, i) =>
      i < 5 ? found : { ...found, deviation: found.deviation + 0.6 },
    );
    const result = accepted(beforeDue(moved, settings));
    expect(result).toMatchObject({ outsideAtDays: null, shifted: true, warn: true });
  });

  it('passes on what is wrong with its input', () => {
    expect(problemOf(beforeDue(line(0, 1).reverse(), settings)).code).toBe('times');
    expect(problemOf(beforeDue(line(0, 1, 2), settings)).code).toBe('too-few');
    expect(
      problemOf(beforeDue(line(0, 1), { ...settings, permissible: { lower: null, upper: null } })).code,
    ).toBe('no-limits');
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
      Array(5).fill('interval'),
    );
  });
});
