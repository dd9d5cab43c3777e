import { describe, expect, it } from 'vitest';
import { Random } from '../../sim/random.ts';
import { crestTop } from '../../src/pull/crest.ts';
import { RecentSamples } from '../../src/pull/recent.ts';
import type { Top } from '../../src/pull/top.ts';

/** What a torque may do about its top, in N·m at so many seconds from it. */
const SHAPES = {
  'breaks off within 15 ms': (s: number) => (s < 0 ? 27 + 30 * s : 27 - 6 * (1 - Math.exp(-s / 0.005))),
  'breaks off within 60 ms': (s: number) => (s < 0 ? 27 + 30 * s : 27 - 6 * (1 - Math.exp(-s / 0.02))),
  'is torn up and breaks off': (s: number) => (s < 0 ? 27 + 300 * s : 27 - 6 * (1 - Math.exp(-s / 0.01))),
  'is let go at the end of the arm': (s: number) => (s < 0 ? 27 + 40 * s : 27 - 27 * (s / 0.2) ** 2),
  'slips and sticks on its way': (s: number) =>
    s < 0 ? 27 + 25 * s - 0.2 * (1 - Math.cos(250 * s)) : 27 - 6 * (1 - Math.exp(-s / 0.008)),
  trembles: (s: number) => 26.9 + 0.1 * Math.cos(45 * s),
  'is held': () => 27,
} as const;

/** The bias that stays at 100 Hz, where it is more than 0.1 N·m. */
const HARD_NM: { readonly [shape in keyof typeof SHAPES]?: number } = {
  'is torn up and breaks off': 0.3,
  'slips and sticks on its way': 0.2,
};

function tops(shape: keyof typeof SHAPES, rateHz: number, sigma: number, count: number): Top[] {
  const random = new Random(`${shape} ${rateHz}`);
  return Array.from({ length: count }, () => {
    const samples = new RecentSamples();
    const step = 1 / rateHz;
    const phase = random.uniform() * step;
    let at = 0;
    for (let i = 0; i * step < 0.4; i++) {
      const s = i * step + phase - 0.3;
      samples.add((s + 0.3) * 1e6, SHAPES[shape](s) + random.normal(0, sigma), i * step * 1e6, i);
      if (s <= 0) at = i;
    }
    return crestTop(samples, at, sigma, false);
  });
}

describe('a top', () => {
  const cases = (Object.keys(SHAPES) as (keyof typeof SHAPES)[]).flatMap((shape) =>
    [100, 200, 500, 1000].map((rateHz) => [shape, rateHz] as const),
  );

  it.each(cases)(
    'that %s, at %d Hz, is known as well as it is said to be, and without bias',
    (shape, rateHz) => {
      const found = tops(shape, rateHz, 0.06, 60);
      const off = found.map(({ nm }) => nm - 27);
      const bias = off.reduce((sum, nm) => sum + nm, 0) / off.length;
      const within = found.filter(({ nm, standardNm }) => Math.abs(nm - 27) <= 2 * standardNm).length;
      // Of 60; a sound uncertainty leaves 57, and each shape is harder or easier than the mean of them.
      expect(within).toBeGreaterThanOrEqual(48);
      expect(Math.abs(bias)).toBeLessThan(HARD_NM[shape] ?? 0.1);
    },
  );

  it('is known better the more readings there are', () => {
    const middle = (rateHz: number) =>
      tops('breaks off within 15 ms', rateHz, 0.06, 31)
        .map(({ standardNm }) => standardNm)
        .sort((a, b) => a - b)[15] ?? Number.NaN;
    expect(middle(1000)).toBeLessThan(middle(200));
    expect(middle(200)).toBeLessThan(middle(100));
  });
});
