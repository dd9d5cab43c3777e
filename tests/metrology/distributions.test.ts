import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalBetween, normalCdf, normalDensity, normalQuantile } from '../../src/metrology/normal.ts';
import { studentCdf, studentQuantile } from '../../src/metrology/student.ts';

const simpson = (f: (x: number) => number, from: number, to: number, steps = 4000): number => {
  const h = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
};

describe('the normal distribution', () => {
  // Computed with mpmath at 50 digits.
  it.each([
    [-37, 5.725571222524577e-300],
    [-20, 2.7536241186062337e-89],
    [-8, 6.220960574271784e-16],
    [-3, 0.0013498980316300946],
    [-2.0000001, 0.022750126549083104],
    [-2, 0.02275013194817921],
    [-1.9999, 0.022755531584767185],
    [-1, 0.15865525393145705],
    [0.3, 0.6179114221889527],
    [1.96, 0.9750021048517795],
    [5, 0.9999997133484281],
  ])('Φ(%d) to thirteen figures', (z, p) => {
    expect(Math.abs(normalCdf(z) / p - 1)).toBeLessThan(1e-13);
  });

  it('is the integral of its density', () => {
    for (const z of [-3, -1.2, 0.4, 2, 2.5, 4])
      expect(Math.abs(normalCdf(z) - normalCdf(-4) - simpson(normalDensity, -4, z))).toBeLessThan(1e-12);
  });

  it('has a quantile that undoes it', () => {
    fc.assert(
      fc.property(fc.double({ min: -36, max: 5, noNaN: true }), (z) => {
        expect(Math.abs(normalQuantile(normalCdf(z)) - z)).toBeLessThan(
          z > 0 ? 1e-9 : 1e-12 * Math.max(1, -z),
        );
      }),
    );
    expect(normalQuantile(0.5)).toBeCloseTo(0, 15);
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([
      Number.NEGATIVE_INFINITY,
      Number.POSITIVE_INFINITY,
    ]);
    expect(() => normalQuantile(1.5)).toThrow(RangeError);
  });

  it('gives the share between two points without loss in either tail', () => {
    expect(Math.abs(normalBetween(8, 9) / normalBetween(-9, -8) - 1)).toBeLessThan(1e-13);
    expect(normalBetween(8, 9)).toBeGreaterThan(0);
    expect(normalBetween(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)).toBe(1);
    expect(normalBetween(Number.NEGATIVE_INFINITY, 0)).toBeCloseTo(0.5, 15);
  });

  it('is symmetric and rises', () => {
    const z = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(z, z, (a, b) => {
        expect(Math.abs(normalCdf(a) + normalCdf(-a) - 1)).toBeLessThan(1e-15);
        expect(normalCdf(Math.min(a, b))).toBeLessThanOrEqual(normalCdf(Math.max(a, b)) + 1e-15);
      }),
    );
  });
});

describe("Student's t", () => {
  /** Density up to its constant; the constant is taken from the integral, so that this check shares no code with the code. */
  const shape = (df: number) => (t: number) => (1 + (t * t) / df) ** (-(df + 1) / 2);

  it('is the integral of its density', () => {
    for (const df of [3, 4.5, 10, 16.75, 100]) {
      // t = tan(x) brings the whole line into a finite interval.
      const folded = (x: number) => shape(df)(Math.tan(x)) / Math.cos(x) ** 2;
      const edge = Math.PI / 2 - 1e-9;
      const whole = simpson(folded, -edge, edge, 20_000);
      for (const t of [-5, -1, 0.5, 2.92])
        expect(
          Math.abs(studentCdf(t, df) - simpson(folded, -edge, Math.atan(t), 20_000) / whole),
        ).toBeLessThan(1e-9);
    }
  });

  // Computed with mpmath at 50 digits.
  it.each([
    [-5, 1, 0.06283295818900118],
    [-1, 1, 0.25],
    [1.5, 1, 0.8128329581890011],
    [2.92, 1, 0.8949745786521575],
    [-5, 3, 0.007696219036651151],
    [-1, 3, 0.19550110947788532],
    [1.5, 3, 0.8847080673775884],
    [2.92, 3, 0.969251936606615],
    [-5, 4.5, 0.0027381791797599503],
    [-1, 4.5, 0.1840025419400943],
    [1.5, 4.5, 0.8998904571719233],
    [2.92, 4.5, 0.9812627225561206],
    [-5, 16, 6.543384904039166e-5],
    [-1, 16, 0.16609749232648974],
    [1.5, 16, 0.9234561741075596],
    [2.92, 16, 0.9949918732923788],
    [-5, 16.75, 5.7209589924511795e-5],
    [-1, 16.75, 0.16576940937827805],
    [1.5, 16.75, 0.9238863905275951],
    [2.92, 16.75, 0.9951701960773504],
    [-5, 100, 1.2250867067519001e-6],
    [-1, 100, 0.1598620778920617],
    [1.5, 100, 0.9316174709376556],
    [2.92, 100, 0.9978371809950498],
    [-5, 12345.6, 2.9058697161696777e-7],
    [-1, 12345.6, 0.15866505361006783],
    [1.5, 12345.6, 0.9331800130401927],
    [2.92, 12345.6, 0.9982466781272253],
    [-5, 1e6, 2.866998935445371e-7],
    [-1, 1e6, 0.15865537491678908],
    [1.5, 1e6, 0.9331926408816036],
    [2.92, 1e6, 0.9982498040160235],
  ])('F(%d; %d)', (t, df, p) => {
    expect(Math.abs(studentCdf(t, df) - p)).toBeLessThan(1e-12);
  });

  it('has closed forms for 1 and 2 degrees of freedom', () => {
    const t = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(t, (x) => {
        expect(Math.abs(studentCdf(x, 1) - (0.5 + Math.atan(x) / Math.PI))).toBeLessThan(1e-13);
        expect(Math.abs(studentCdf(x, 2) - 0.5 * (1 + x / Math.sqrt(2 + x * x)))).toBeLessThan(1e-13);
      }),
    );
  });

  it('becomes the normal distribution', () => {
    for (const t of [-3, -1, 0.5, 2]) {
      expect(studentCdf(t, Number.POSITIVE_INFINITY)).toBe(normalCdf(t));
      expect(Math.abs(studentCdf(t, 999_999) - studentCdf(t, 1_000_001))).toBeLessThan(1e-11);
    }
  });

  it('has a quantile that undoes it', () => {
    const df = fc.double({ min: 0.5, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), df, (p, nu) => {
        expect(Math.abs(studentCdf(studentQuantile(p, nu), nu) - p)).toBeLessThan(1e-12);
      }),
    );
    expect(studentQuantile(0.5, 3)).toBe(0);
    for (const p of [0, 1, -0.1, 1.1, Number.NaN]) expect(() => studentQuantile(p, 3)).toThrow(RangeError);
    expect(() => studentCdf(1, 0)).toThrow(RangeError);
  });

  it('needs a wider interval the fewer the degrees of freedom', () => {
    const df = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(df, fc.double({ min: 0.6, max: 0.999, noNaN: true }), (nu, p) => {
        expect(studentQuantile(p, nu)).toBeGreaterThan(studentQuantile(p, nu + 1));
        expect(studentQuantile(p, nu)).toBeGreaterThan(normalQuantile(p));
      }),
    );
  });
});
