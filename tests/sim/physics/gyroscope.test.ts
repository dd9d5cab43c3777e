import { describe, expect, it } from 'vitest';
import { Gyroscope } from '../../../sim/physics/gyroscope.ts';
import { Random } from '../../../sim/random.ts';
import { benchOf, GASKET, SWEEP } from './rig.ts';

describe('the gyroscope of the simulated wrench', () => {
  it('follows the handle within gain, drift and noise, in whole counts of 0.1°', () => {
    for (let seed = 0; seed < 20; seed++) {
      const gyroscope = new Gyroscope(new Random(seed));
      const zero = gyroscope.sample(0, 0);
      const counts = gyroscope.sample(200, 10_000_000);
      expect(Number.isInteger(counts)).toBe(true);
      // Gain 200 · 1 %, drift 10 s · 0.08°/s, and noise.
      expect(Math.abs((counts - zero) / 10 - 200)).toBeLessThan(3.5);
      expect(counts - zero).not.toBe(2000);
    }
  });

  it('is turned back with the ratchet between strokes, while the plug stays', () => {
    const bench = benchOf(GASKET, 5);
    const angles: number[] = [];
    for (const action of [
      { do: 'fit', cylinder: 1 } as const,
      { do: 'pull', cylinder: 1, style: { ...SWEEP, strokeDeg: 70 } } as const,
    ]) {
      bench.begin(action);
      for (let e = bench.next(); e !== null; e = bench.next()) angles.push(e.angleCounts / 10);
    }
    const strokes = bench.truth.pulls;
    expect(strokes.length).toBeGreaterThan(2);
    expect(strokes.every(({ rotationDeg }) => rotationDeg >= 0)).toBe(true);
    const most = angles.reduce((high, deg) => Math.max(high, deg), Number.NEGATIVE_INFINITY);
    const total = strokes.reduce((sum, { rotationDeg }) => sum + rotationDeg, 0);
    // The plug turned far more than the handle ever stood ahead of where it began.
    expect(total).toBeGreaterThan(1.5 * (most - (angles[0] ?? 0)));
  });
});
