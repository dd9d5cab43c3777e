import { describe, expect, it } from 'vitest';
import { createPullDetector } from '../../src/pull/detector.ts';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { detectorSettings } from '../../src/pull/settings.ts';

const SETTINGS = detectorSettings(25, { stream: 'maxima', stepNm: 0.01 });

/** What a tool sends every `stepMs` that reports the maximum of its work cycle. */
function pullsIn(values: readonly number[], stepMs = 100): DetectedPull[] {
  const detector = createPullDetector(SETTINGS);
  const found = values.flatMap((nm, i) => detector.push(i * stepMs * 1000, nm) ?? []);
  const last = detector.cut('stopped');
  return last === null ? found : [...found, last];
}

const peaks = (pulls: readonly DetectedPull[]) => pulls.map(({ peakNm }) => peakNm);

describe('a wrench that only tells the highest torque of its work cycle', () => {
  it('gives one pull for a maximum that grows, stands and is cleared, and claims no click', () => {
    const [pull, ...more] = pullsIn([0, 3, 12, 22, 27, 27.1, ...Array(20).fill(27.1), 0, 0]);
    expect(more).toEqual([]);
    expect(pull).toMatchObject({ peakNm: 27.1, release: 'not-visible', stream: 'maxima', cut: null });
  });

  it('takes a lower value as the next cycle', () => {
    expect(peaks(pullsIn([0, 27.1, 26.4, 26.4, 26.4, 0]))).toEqual([27.1, 26.4]);
  });

  it('takes one value a pull, far apart, as one pull each', () => {
    expect(peaks(pullsIn([27.1, 26.4, 27.3, 27.3], 15_000))).toEqual([27.1, 26.4, 27.3, 27.3]);
  });

  it('gives it 0.6 s after its last rise, at the first reading behind that', () => {
    const detector = createPullDetector(SETTINGS);
    for (const [i, nm] of [0, 12, 27].entries()) detector.push(i * 500_000, nm);
    expect(detector.push(1_500_000, 27)).toBeNull();
    expect(detector.push(1_600_000, 27)).toMatchObject({ peakNm: 27, endUs: 1_000_000 });
  });

  it('says no torque of now between its pulls: the maximum of the last one is none', () => {
    const detector = createPullDetector(SETTINGS);
    expect(detector.live()).toMatchObject({ nowNm: null, pulling: false });
    detector.push(0, 27.1);
    expect(detector.live()).toMatchObject({ nowNm: 27.1, pulling: true });
    expect(detector.silent(700_000)).toMatchObject({ peakNm: 27.1 });
    expect(detector.live()).toMatchObject({ nowNm: null, pulling: false });
  });

  it('tells of a maximum that grew again after it had been given', () => {
    expect(peaks(pullsIn([0, 27, ...Array(10).fill(27), 28.5, ...Array(10).fill(28.5), 0]))).toEqual([
      27, 28.5,
    ]);
  });

  it('loses no rise behind a pull that was given, however small, and nothing that fell by less than noise', () => {
    expect(peaks(pullsIn([0, 27, ...Array(10).fill(27), 27.02, ...Array(10).fill(27), 0]))).toEqual([
      27, 27.02,
    ]);
  });

  it('says so where the maximum stands at the end of the scale', () => {
    const range = { lowerNm: -60, upperNm: 27 };
    const detector = createPullDetector({ ...SETTINGS, range });
    for (const [i, nm] of [0, 12, 27].entries()) detector.push(i * 1e5, nm);
    expect(detector.cut('stopped')?.saturated).toBe(true);
  });

  it('keeps the sign of loosening', () => {
    expect(peaks(pullsIn([0, -8, -19, -19, 0]))).toEqual([-19]);
  });
});
