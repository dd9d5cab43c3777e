/** The distributions of causes by themselves, against their closed forms (JCGM 100:2008, 4.3; Irwin and Hall for sums). */
import { describe, expect, it } from 'vitest';
import { budgetOf, combine, degreesOfFreedomFor } from '../../src/metrology/budget.ts';
import { windowBy } from '../../src/metrology/decision.ts';
import { falseAcceptanceOnEdge } from '../../src/metrology/edge-risk.ts';
import { normalCdf } from '../../src/metrology/normal.ts';
import { normalSpread } from '../../src/metrology/spread.ts';
import type { Distribution, Term } from '../../src/metrology/term.ts';

const term = (amount: number, distribution: Distribution, sensitivity = 1): Term => ({
  cause: 'other',
  source: { kind: 'station-file', basis: 'invented' },
  type: 'B',
  amount,
  distribution,
  sensitivity,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});
/** P(X > guard). */
const beyond = (terms: readonly Term[], guard: number) =>
  falseAcceptanceOnEdge(terms, { guardLower: guard, guardUpper: guard }).lower;

describe('how often a cause lies beyond a bound', () => {
  it.each([
    ['triangular', 2, 1, (1 - 1 / 2) ** 2 / 2],
    ['triangular', 2, -1, 1 - (1 - 1 / 2) ** 2 / 2],
    ['triangular', 2, 2.1, 0],
    ['arcsine', 2, 2 * Math.SQRT1_2, 1 / 4],
    ['arcsine', 2, -2 * Math.SQRT1_2, 3 / 4],
    ['rectangular', 2, 1, 1 / 4],
    ['rectangular', 2, -3, 1],
  ] as const)('%s on ±%d, beyond %d', (kind, half, guard, share) => {
    expect(beyond([term(half, { kind })], guard)).toBeCloseTo(share, 4);
    expect(beyond([term(half / 4, { kind }, -4)], guard)).toBeCloseTo(share, 4);
  });

  it('two rectangles, all the way from one end to the other', () => {
    const two = [term(1, { kind: 'rectangular' }), term(1, { kind: 'rectangular' })];
    for (const x of [-1.9, -1.5, -0.5, 0, 0.5, 1.5, 1.9]) {
      const above = (2 - Math.abs(x)) ** 2 / 8;
      expect(beyond(two, x)).toBeCloseTo(x < 0 ? 1 - above : above, 5);
    }
  });

  it('a narrow one beside a wide one hardly counts, in whatever order they come', () => {
    const wide = term(1, { kind: 'rectangular' });
    const narrow = term(0.001, { kind: 'triangular' });
    for (const pair of [
      [wide, narrow],
      [narrow, wide],
    ]) {
      expect(beyond(pair, 0.5)).toBeCloseTo(0.25, 3);
      expect(beyond(pair, -0.999)).toBeCloseTo(0.9995, 3);
    }
  });

  it('a rectangle and a bell of a tenth of its width, in the tail', () => {
    const sigma = 0.1;
    const steps = 40_000;
    const exact = (x: number) => {
      let sum = 0;
      for (let i = 0; i < steps; i += 1)
        sum += (1 - normalCdf((x - (-1 + (2 * (i + 0.5)) / steps)) / sigma)) / steps;
      return sum;
    };
    for (const x of [-1.1, -0.9, 0.2, 0.9, 1.1, 1.2])
      expect(beyond([term(1, { kind: 'rectangular' }), term(sigma, { kind: 'standard' })], x)).toBeCloseTo(
        exact(x),
        4,
      );
  });
});

describe('a budget', () => {
  it('is never better than its laboratory, whichever way the result moves with it', () => {
    const stated = term(0.6, { kind: 'normal', k: 3 }, -2);
    expect(combine([stated], { k: 2 }).expanded).toBeCloseTo(1.2, 12);
    expect(budgetOf([stated]).expanded).toBeCloseTo(1.2, 12);
  });

  it('takes a k that is printed as 2.00 or 2.01 for certain, and 2.02 not', () => {
    expect(degreesOfFreedomFor(1.65)).toBe(Number.POSITIVE_INFINITY);
    expect(degreesOfFreedomFor(2.0049)).toBe(Number.POSITIVE_INFINITY);
    expect(degreesOfFreedomFor(2.0052)).toBe(Number.POSITIVE_INFINITY);
    // EA-4/02 M:2022, table E.1: 2.05 with 50 degrees of freedom, 2.13 with 20, 2.28 with 10.
    expect(degreesOfFreedomFor(2.05)).toBeGreaterThanOrEqual(50);
    expect(degreesOfFreedomFor(2.05)).toBeLessThan(60);
    expect(degreesOfFreedomFor(2.02)).toBeLessThan(10_000);
    expect(Math.abs(degreesOfFreedomFor(2.13) - 20)).toBeLessThanOrEqual(1);
    expect(degreesOfFreedomFor(2.28)).toBe(10);
  });
});

describe('a rule by probability that leaves no room', () => {
  it('has its acceptance zone shrunk to the middle of the limits', () => {
    const window = windowBy(
      { kind: 'probability', atLeast: 0.99 },
      { unit: 'N.m', lowerLimit: 20, upperLimit: 26, spreadAt: () => normalSpread(8) },
    );
    expect(window).toMatchObject({ decidable: false, acceptLower: 23, acceptUpper: 23 });
  });
});
