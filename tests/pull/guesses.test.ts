import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Guesses } from '../../src/pull/guesses.ts';

const guess = fc.record({
  nm: fc.double({ min: 1, max: 60, noNaN: true }),
  variance: fc.double({ min: 0, max: 4, noNaN: true }),
  atUs: fc.integer({ min: 0, max: 1e6 }),
  evidence: fc.double({ min: -900, max: 900, noNaN: true }),
});

describe('guesses averaged', () => {
  it('weigh by their likelihood, in whatever order they come', () => {
    fc.assert(
      fc.property(fc.array(guess, { minLength: 1, maxLength: 20 }), (all) => {
        const most = Math.max(...all.map(({ evidence }) => evidence));
        const weights = all.map(({ evidence }) => Math.exp(evidence - most));
        const total = weights.reduce((sum, weight) => sum + weight, 0);
        const mean = (of: (one: (typeof all)[number]) => number) =>
          all.reduce((sum, one, i) => sum + (weights[i] ?? 0) * of(one), 0) / total;
        const nm = mean((one) => one.nm);
        const guesses = new Guesses();
        for (const one of all) guesses.add(one.nm, one.variance, one.atUs, one.evidence);
        expect(guesses.nm).toBeCloseTo(nm, 6);
        expect(guesses.variance).toBeCloseTo(
          mean((one) => one.variance + (one.nm - nm) ** 2),
          6,
        );
        expect(guesses.atUs).toBeCloseTo(
          mean((one) => one.atUs),
          3,
        );
      }),
    );
  });

  it('keep the spread of those that lie close together, however far from zero', () => {
    const guesses = new Guesses();
    for (const nm of [1e6, 1e6 + 0.001]) guesses.add(nm, 0, 0, 0);
    expect(guesses.nm - 1e6).toBeCloseTo(0.0005, 9);
    expect(guesses.variance).toBeCloseTo(2.5e-7, 9);
  });

  it('come to the one that leaves the others far behind', () => {
    const guesses = new Guesses();
    guesses.add(10, 1, 100, -800);
    guesses.add(27, 0.01, 500, 0);
    guesses.add(60, 9, 900, -800);
    expect(guesses.nm).toBeCloseTo(27, 9);
    expect(guesses.variance).toBeCloseTo(0.01, 9);
    expect(guesses.atUs).toBe(500);
  });
});
