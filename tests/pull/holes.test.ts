import { describe, expect, it } from 'vitest';
import { Holes } from '../../src/pull/holes.ts';
import type { PullStart } from '../../src/pull/pull-start.ts';
import { RecentSamples } from '../../src/pull/recent.ts';

const STEP_US = 10_000;

function started(packetUs = STEP_US): PullStart {
  return {
    startUs: 0,
    sign: 1,
    startNm: 2,
    zeroNm: 0,
    zeroSettled: true,
    zeroStandardNm: 0,
    beforeNm: 0,
    noiseNm: 0.001,
    arrivals: { intervalUs: STEP_US, packetUs, bunched: packetUs > STEP_US, even: true },
    frameSamples: 1,
    frameSigma: 0.001,
    sinceLastMs: null,
  };
}

/** Readings up to a hole at a pace of 50 N·m/s to 20 N·m, then others from 100 ms on. */
function holed(behind: readonly number[], packetUs?: number) {
  const recent = new RecentSamples();
  const holes = new Holes(recent, started(packetUs));
  let i = 0;
  const add = (us: number, nm: number) => {
    recent.add(us, nm, us, i);
    if (us === 400_000) holes.add(i);
    holes.packet(i);
    i++;
  };
  for (let us = 0; us <= 300_000; us += STEP_US) add(us, 5 + (50 * us) / 1e6);
  behind.forEach((nm, k) => {
    add(400_000 + k * STEP_US, nm);
  });
  return holes.all();
}

describe('what a stretch without readings may hide', () => {
  it('nothing, where the torque goes on as it came', () => {
    const [hole, ...more] = holed([25, 25.5, 26]);
    expect(more).toEqual([]);
    expect(hole).toMatchObject({ fromUs: 300_000, toUs: 400_000, seenNm: 25 });
    expect(hole?.mayBeNm).toBeCloseTo(25, 2);
  });

  it('as much as it would have come to at its pace, where it fell meanwhile', () => {
    const [hole] = holed([18, 17, 16]);
    expect(hole?.seenNm).toBe(20);
    expect(hole?.mayBeNm).toBeCloseTo(25, 1);
  });

  it('half of a fall behind it, where somebody tore', () => {
    // 60 N·m/s down, half of 100 ms.
    const [hole] = holed([35, 34.4, 33.8]);
    expect(hole?.seenNm).toBe(35);
    expect(hole?.mayBeNm).toBeCloseTo(35 + (60 * 0.1) / 2, 6);
    expect(holed([35, 35.5])[0]?.mayBeNm).toBe(35);
    expect(holed([35])[0]?.mayBeNm).toBe(35);
  });

  it('is none where the packets that seemed to be missing come all at once', () => {
    const recent = new RecentSamples();
    const holes = new Holes(recent, started(2 * STEP_US));
    const add = (i: number, us: number) => {
      recent.add(us, 20, us, i);
      if (i === 10) holes.add(i);
    };
    for (let i = 0; i < 13; i++) add(i, i < 10 ? i * STEP_US : 200_000);
    holes.packet(13);
    expect(holes.all()).toEqual([]);
  });

  it('is kept for the eight that may hide the most, highest first', () => {
    const recent = new RecentSamples();
    const holes = new Holes(recent, started());
    for (let i = 0; i < 24; i++) {
      recent.add(i * 50_000, i, i * 50_000, i);
      if (i % 2 === 1) holes.add(i);
      holes.packet(i);
    }
    const seen = holes.all().map(({ seenNm }) => seenNm);
    expect(seen).toEqual([23, 21, 19, 17, 15, 13, 11, 9]);
  });

  it('is nothing in front of the first reading', () => {
    const recent = new RecentSamples();
    const holes = new Holes(recent, started());
    recent.add(0, 20, 0, 0);
    holes.add(0);
    expect(holes.all()).toEqual([]);
  });
});
