import { describe, expect, it } from 'vitest';
import { RestingAngle } from '../../src/pull/resting-angle.ts';

const STEP_US = 10_000;

/** A tool at rest for some seconds whose angle runs by `degPerS`; each behind a pull. */
function rested(
  rests: readonly { readonly s: number; readonly degPerS: number; readonly wavesDeg?: number }[],
  stepDeg = 0,
) {
  const angle = new RestingAngle(stepDeg);
  let us = 5_000_000;
  for (const { s, degPerS, wavesDeg = 0 } of rests) {
    angle.interrupted();
    const count = Math.round((s * 1e6) / STEP_US);
    const atUs = Float64Array.from({ length: count }, (_, i) => us + i * STEP_US);
    const deg = atUs.map((at) => 30 + ((at - us) / 1e6) * degPerS + wavesDeg * Math.sin((at - us) / 300_000));
    angle.run(atUs, deg, 0, count);
    us += 1e6 * s + 3_000_000;
  }
  return angle.driftDegPerS;
}
const still = (s: number, degPerS: number) => [{ s, degPerS }];

describe('an angle that runs by itself', () => {
  it('is known once six blocks of a quarter of a second lie in a line, and not before', () => {
    expect(rested(still(1.5, 0.4))).toBe(0);
    expect(rested(still(1.52, 0.4))).toBeCloseTo(0.4, 9);
    expect(rested(still(10, -0.4))).toBeCloseTo(0.4, 9);
    expect(rested([])).toBe(0);
  });

  it('is known by so much less as one step of the angle leaves open', () => {
    // Six blocks: their middles lie 1.25 s apart.
    expect(rested(still(1.52, 0.4), 0.1)).toBeCloseTo(0.4 - 0.1 / 1.25, 9);
    expect(rested(still(1.52, 0.05), 0.1)).toBe(0);
  });

  it('is the least that the last three rests agree on', () => {
    const rests = (...degPerS: number[]) => rested(degPerS.map((one) => ({ s: 2, degPerS: one })));
    expect(rests(0.5, 0.3)).toBeCloseTo(0.3, 9);
    expect(rests(0.2, 0.5, 0.4)).toBeCloseTo(0.2, 9);
    expect(rests(0.2, 0.5, 0.4, 0.6)).toBeCloseTo(0.4, 9);
    expect(rests(0.5, -0.5)).toBe(0);
    expect(rests(-0.5, -0.2)).toBeCloseTo(0.2, 9);
    expect(rests(0, 0.5)).toBe(0);
  });

  it('is not what somebody turns by hand', () => {
    expect(rested([{ s: 4, degPerS: 0.4, wavesDeg: 3 }])).toBe(0);
    expect(rested([{ s: 4, degPerS: 0.4, wavesDeg: 0.02 }])).toBeCloseTo(0.4, 1);
  });

  it('starts anew where it was moved: what lay before says nothing of what comes', () => {
    const angle = new RestingAngle(0);
    const run = (fromUs: number, count: number, deg: (i: number) => number) => {
      const atUs = Float64Array.from({ length: count }, (_, i) => fromUs + i * STEP_US);
      angle.run(
        atUs,
        Float64Array.from(atUs, (_, i) => deg(i)),
        0,
        count,
      );
    };
    run(0, 100, (i) => 0.01 * i);
    run(1_000_000, 200, (i) => 40 + 0.003 * i);
    expect(angle.driftDegPerS).toBeCloseTo(0.3, 6);
  });

  it('is not put together from two short rests, though the second goes on where the first left off', () => {
    const line = (interrupt: boolean) => {
      const angle = new RestingAngle(0);
      const atUs = Float64Array.from({ length: 200 }, (_, i) => i * STEP_US);
      const deg = atUs.map((us) => us * 1e-6);
      angle.run(atUs, deg, 0, 100);
      if (interrupt) angle.interrupted();
      angle.run(atUs, deg, 100, 200);
      return angle.driftDegPerS;
    };
    expect(line(false)).toBeCloseTo(1, 9);
    expect(line(true)).toBe(0);
  });
});
