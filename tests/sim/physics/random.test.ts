import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Random } from '../../../sim/random.ts';

const take = (random: Random, count: number) => Array.from({ length: count }, () => random.word());

describe('Random', () => {
  it('gives the same stream for the same seed and another for another', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        expect(take(new Random(seed), 50)).toEqual(take(new Random(seed), 50));
        expect(take(new Random(seed), 50)).not.toEqual(take(new Random(seed + 1), 50));
      }),
    );
  });

  it('forks by label alone: what the parent or a sister drew changes nothing', () => {
    fc.assert(
      fc.property(fc.integer(), fc.nat(100), fc.string(), (seed, drawn, label) => {
        const untouched = take(new Random(seed).fork(label), 20);
        const parent = new Random(seed);
        take(parent, drawn);
        take(parent.fork(`${label} sister`), drawn);
        expect(take(parent.fork(label), 20)).toEqual(untouched);
        expect(take(parent.fork(`${label} sister`), 20)).not.toEqual(untouched);
      }),
    );
  });

  it('tells nested forks apart from a fork whose label looks the same', () => {
    const root = new Random(1);
    expect(take(root.fork('a').fork('b'), 5)).not.toEqual(take(root.fork('a/b'), 5));
  });

  it('spreads evenly and normally', () => {
    const random = new Random('spread');
    const n = 100_000;
    const uniform = Array.from({ length: n }, () => random.uniform(2, 4));
    const normal = Array.from({ length: n }, () => random.normal(5, 2));
    const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(uniform.every((value) => value >= 2 && value < 4)).toBe(true);
    expect(Math.abs(mean(uniform) - 3)).toBeLessThan(0.01);
    // Five standard errors each: 5·2/√n for the mean, 5·2/√(2n) for the deviation.
    const centre = mean(normal);
    expect(Math.abs(centre - 5)).toBeLessThan(0.032);
    expect(Math.abs(Math.sqrt(mean(normal.map((value) => (value - centre) ** 2))) - 2)).toBeLessThan(0.023);
    expect(normal.filter((value) => value < 5 - 0.6745 * 2).length / n).toBeCloseTo(0.25, 2);
  });

  it('keeps a tolerance within its ends', () => {
    const random = new Random(3);
    for (let i = 0; i < 5000; i++) expect(Math.abs(random.within(10, 1, 2) - 10)).toBeLessThanOrEqual(2);
  });
});
