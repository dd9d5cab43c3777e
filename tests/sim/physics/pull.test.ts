import { describe, expect, it } from 'vitest';
import type { TruePull } from '../../../sim/physics/truth.ts';
import { Random } from '../../../sim/random.ts';
import { drawStyle } from '../../../sim/technician/habits.ts';
import {
  benchOf,
  CONICAL,
  fitAndPull,
  GASKET,
  lastPull,
  median,
  PERFECT,
  perform,
  pullAgain,
  riseMs,
  type Sample,
  SEEDS,
  SWEEP,
} from './rig.ts';

/** Depth of the fall after the click as a share of it, and the time to nine tenths of the fall. */
function fallOf(
  samples: readonly Sample[],
  { releaseUs, releaseNm }: TruePull,
): { drop: number; ms: number } {
  if (releaseUs === null || releaseNm === null) throw new Error('the pull did not click');
  const after = samples.filter(({ atUs }) => atUs >= releaseUs && atUs <= releaseUs + 30_000);
  const lowest = Math.min(...after.map(({ counts }) => counts / 100));
  const bottom = after.find(({ counts }) => counts / 100 <= releaseNm - 0.9 * (releaseNm - lowest));
  return { drop: 1 - lowest / releaseNm, ms: ((bottom?.atUs ?? Number.NaN) - releaseUs) / 1000 };
}

describe('a pull to the click', () => {
  it('falls by 5 to 50 % within 5 to 30 ms after the click, in every manner of pulling', () => {
    for (const seed of SEEDS)
      for (const manner of ['careful', 'hurried', 'lean'] as const) {
        const bench = benchOf(seed % 2 === 0 ? GASKET : CONICAL, seed, PERFECT);
        const style = drawStyle(manner, new Random(seed));
        for (const { samples, pull } of [fitAndPull(bench, style), pullAgain(bench, style)]) {
          const { drop, ms } = fallOf(samples, pull);
          expect(drop).toBeGreaterThan(0.05);
          expect(drop).toBeLessThan(0.5);
          expect(ms).toBeGreaterThanOrEqual(5);
          expect(ms).toBeLessThanOrEqual(30);
        }
      }
  });

  it('overshoots the more the quicker the hand on a plug already tight', () => {
    const overshoot = (speedDegPerS: number, seed: number) => {
      const bench = benchOf(CONICAL, seed, PERFECT);
      fitAndPull(bench, { ...SWEEP, strokeDeg: 300 });
      return (pullAgain(bench, { ...SWEEP, easeFromShare: null, speedDegPerS }).pull.releaseNm ?? 0) / 17.5;
    };
    for (const seed of SEEDS) {
      const [slow, middling, quick] = [overshoot(20, seed), overshoot(70, seed), overshoot(160, seed)];
      expect(middling).toBeGreaterThan(slow);
      expect(quick).toBeGreaterThan(middling);
      expect(quick - slow).toBeGreaterThan(0.02);
      expect(quick - slow).toBeLessThan(0.12);
    }
  });

  it('rises again when the arm goes on pushing, and stays below the click when it does not', () => {
    for (const seed of SEEDS) {
      const soft = fitAndPull(benchOf(CONICAL, seed, PERFECT), { ...SWEEP, effortAfterShare: 0.85 }).pull;
      expect(soft.peakNm).toBeLessThan(1.03 * (soft.releaseNm ?? 0));
      const hard = fitAndPull(benchOf(CONICAL, seed, PERFECT), { ...SWEEP, leanToShare: 1.3 }).pull;
      expect(hard.peakNm / 17.5).toBeGreaterThan(1.25);
      expect(hard.peakUs).toBeGreaterThan(hard.releaseUs ?? Number.POSITIVE_INFINITY);
    }
  });

  it('never clicks when the hand stops short by feel', () => {
    for (const seed of SEEDS) {
      const { pull } = fitAndPull(benchOf(GASKET, seed, PERFECT), { ...SWEEP, stopAtShare: 0.7 });
      expect(pull.releaseNm).toBeNull();
      expect(pull.peakNm / 27.5).toBeGreaterThan(0.69);
      expect(pull.peakNm / 27.5).toBeLessThan(0.82);
    }
  });

  it('is made in several strokes where there is no room, with the torque back at zero between them', () => {
    const bench = benchOf(GASKET, 11, PERFECT);
    const { samples } = fitAndPull(bench, { ...SWEEP, strokeDeg: 70 });
    const { pulls } = bench.truth;
    expect(pulls.length).toBeGreaterThanOrEqual(3);
    expect(pulls.map(({ kind }) => kind)).toEqual([
      'tightening',
      ...pulls.slice(1).map(() => 'continuation'),
    ]);
    expect(pulls.slice(0, -1).every(({ releaseNm }) => releaseNm === null)).toBe(true);
    expect(lastPull(bench).releaseNm).not.toBeNull();
    for (const [i, { endUs }] of pulls.slice(0, -1).entries()) {
      const pause = samples.filter(({ atUs }) => atUs > endUs && atUs < (pulls[i + 1]?.startUs ?? 0));
      expect(pause.length).toBeGreaterThan(100);
      expect(pause.every(({ counts }) => counts === 0)).toBe(true);
    }
  });
});

describe('a second click', () => {
  it('turns a tight plug by less than 3° and rises at least three times as fast', () => {
    for (const seed of SEEDS) {
      const style = drawStyle('careful', new Random(seed));
      const bench = benchOf(GASKET, seed, PERFECT);
      const fresh = fitAndPull(bench, { ...style, strokeDeg: 300 });
      const again = pullAgain(bench, style);
      expect(again.pull.kind).toBe('rehit');
      expect(again.pull.rotationDeg).toBeLessThan(3);
      expect(riseMs(fresh.samples, fresh.pull) / riseMs(again.samples, again.pull)).toBeGreaterThan(3);
    }
  });

  it('takes the time that the spring of wrench and extension gives it', () => {
    const rises = (plug: typeof GASKET) =>
      SEEDS.map((seed) => {
        const bench = benchOf(plug, seed, PERFECT);
        fitAndPull(bench, { ...SWEEP, strokeDeg: 300 });
        const { samples, pull } = pullAgain(bench, drawStyle('careful', new Random(seed)));
        return riseMs(samples, pull);
      });
    expect(median(rises(GASKET))).toBeGreaterThan(30);
    expect(median(rises(GASKET))).toBeLessThan(120);
  });
});

describe('the time of a rise', () => {
  it('tells soft from hard seats', () => {
    const rise = (plug: typeof GASKET) =>
      median(
        SEEDS.map((seed) => {
          const { samples, pull } = fitAndPull(benchOf(plug, seed, PERFECT), { ...SWEEP, strokeDeg: 300 });
          return riseMs(samples, pull);
        }),
      );
    expect(rise(GASKET)).toBeGreaterThan(800);
    expect(rise(CONICAL)).toBeGreaterThan(150);
    expect(rise(CONICAL)).toBeLessThan(500);
  });
});

describe('loosening', () => {
  it('shows as negative torque in the wrench, and not at all when a plain ratchet is used', () => {
    for (const tool of ['wrench', 'ratchet'] as const) {
      const bench = benchOf(CONICAL, 2, PERFECT);
      fitAndPull(bench, SWEEP);
      const samples = perform(bench, { do: 'loosen', cylinder: 1, with: tool });
      const lowest = Math.min(...samples.map(({ counts }) => counts / 100));
      const loosened = bench.truth.pulls.filter(({ kind }) => kind === 'loosening');
      expect(Math.min(...loosened.map(({ peakNm }) => peakNm))).toBeLessThan(-0.6 * 17.5);
      expect(loosened.every(({ measured }) => measured === (tool === 'wrench'))).toBe(true);
      if (tool === 'wrench') expect(lowest).toBeCloseTo(Math.min(...loosened.map(({ peakNm }) => peakNm)), 2);
      else expect(lowest).toBe(0);
      expect(lastPull(bench).clampN).toBe(0);
    }
  });
});
