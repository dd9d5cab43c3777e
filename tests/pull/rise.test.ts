import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Random } from '../../sim/random.ts';
import { RecentSamples } from '../../src/pull/recent.ts';
import { riseTo } from '../../src/pull/rise.ts';

/** A rise at a steady pace to 27 N·m, ten milliseconds a sample. */
function rise(nmPerS: number, sigma: number, count: number, random: Random): RecentSamples {
  const samples = new RecentSamples();
  for (let i = 0; i < count; i++) {
    const nm = 27 - nmPerS * 0.01 * (count - 1 - i);
    const us = i * 10_000;
    samples.add(us, nm + (sigma > 0 ? random.normal(0, sigma) : 0), us, i);
  }
  return samples;
}

describe('the rise carried on', () => {
  it('goes on as it came, at any pace', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 200, noNaN: true }), (nmPerS) => {
        const end = riseTo(rise(nmPerS, 0, 20, new Random(1)), 19, 195_000, 0.001);
        expect(Math.abs((end?.nm ?? 0) - 27 - 0.005 * nmPerS)).toBeLessThan(0.01);
      }),
    );
  });

  it('is known better than a single reading, and as well as it says', () => {
    const random = new Random('rise');
    const errors = Array.from({ length: 400 }, () => {
      const end = riseTo(rise(20, 0.2, 30, random), 29, 290_000, 0.2);
      return { off: (end?.nm ?? 0) - 27, standardNm: end?.standardNm ?? 0 };
    });
    const rms = Math.sqrt(errors.reduce((sum, { off }) => sum + off * off, 0) / errors.length);
    expect(rms).toBeLessThan(0.15);
    expect(errors.filter(({ off, standardNm }) => Math.abs(off) > 2 * standardNm).length).toBeLessThan(30);
  });

  it('is nothing where too few samples came before', () => {
    expect(riseTo(rise(20, 0, 2, new Random(1)), 1, 15_000, 0.1)).toBeNull();
  });
});
