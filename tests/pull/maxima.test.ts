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

  it('tells of each cycle when it began, how it rose and how readings came', () => {
    // Rest below the start of 2 N·m, then a reading each 100 ms; the last comes 50 ms late.
    const detector = createPullDetector(SETTINGS);
    const sent: readonly (readonly [ms: number, nm: number])[] = [
      [0, 1.9],
      [100, 2],
      [200, 6],
      [300, 12],
      [400, 20],
      [500, 26],
      [600, 27],
      [750, 27],
    ];
    for (const [ms, nm] of sent) expect(detector.push(1000 * ms, nm)).toBeNull();
    expect(detector.endsUs()).toBe(1_200_000);
    expect(detector.silent(1_199_999)).toBeNull();
    const pull = detector.silent(1_200_000);
    expect(pull).toMatchObject({
      startUs: 100_000,
      peakUs: 600_000,
      endUs: 600_000,
      peakNm: 27,
      highestNm: 27,
      peakStandardNm: 0.01 / Math.sqrt(12),
      samples: 7,
      longestGapUs: 150_000,
      sinceLastMs: null,
      saturated: false,
      zeroNm: 0,
      noiseNm: 0,
      turn: null,
    });
    expect(pull?.intervalUs).toBeCloseTo(650_000 / 6, 6);
    // 10 to 90 % of 27 N·m are 2.7, 5.4, 8.1 ... 24.3: each reached at the first reading as high.
    expect(pull?.rise.reachedMs).toEqual([100, 100, 200, 200, 300, 300, 300, 400, 400]);
    expect(pull?.riseMs).toBe(300);
    expect([detector.endsUs(), detector.silent(5e6), detector.cut('stopped')]).toEqual([null, null, null]);
    detector.push(2_600_000, 9);
    expect(detector.cut('stopped')).toMatchObject({ sinceLastMs: 2000, intervalUs: 0, samples: 1 });
  });

  it.each([
    ['a tenth of the start lower: still the same cycle', 27 - 0.2, [27]],
    ['lower by more: the next one', 27 - 0.21, [27, 26.79]],
  ])('a value that is %s', (_what, nm, expected) => {
    expect(peaks(pullsIn([0, 20, 27, nm, nm]))).toEqual(expected);
  });

  it('begins a cycle behind a silence, and at a value higher than the one given by more than a step', () => {
    const { silentMs } = SETTINGS;
    const twice = (ms: number, nm = 27) => {
      const detector = createPullDetector(SETTINGS);
      detector.push(0, 27);
      detector.silent(700_000);
      detector.push(1000 * ms, nm);
      return detector.pulling;
    };
    expect([twice(silentMs - 1), twice(silentMs)]).toEqual([false, true]);
    expect([twice(800, 27.009), twice(800, 27.02)]).toEqual([false, true]);
  });

  it('takes a batch as it takes one by one, and reads nothing from outside of it', () => {
    const [atUs, nm] = [Float64Array.of(0, 1e6, 2e6, 3e6, 4e6), Float64Array.of(9, 27, 26, 0, 12)];
    const detector = createPullDetector(SETTINGS);
    expect(peaks(detector.pushBatch(atUs, nm, 1, 4))).toEqual([27, 26]);
    expect(detector.pulling).toBe(false);
    expect(detector.atRest()).toBeNull();
  });

  it('throws on a reading that is none, and on time that runs back', () => {
    const detector = createPullDetector(SETTINGS);
    detector.push(1000, 5);
    for (const [us, nm] of [
      [999, 5],
      [Number.NaN, 5],
      [Number.POSITIVE_INFINITY, 5],
      [2000, Number.NaN],
      [2000, Number.POSITIVE_INFINITY],
    ] as const)
      expect(() => detector.push(us, nm)).toThrow(RangeError);
    expect(detector.push(1000, 6)).toBeNull();
  });

  it('keeps the way up of a cycle that creeps for hours in bounded memory, and its peak all the same', () => {
    const pull = pullsIn(Array.from({ length: 600 }, (_, i) => 3 + 0.04 * i)).at(-1);
    expect(pull).toMatchObject({ peakNm: 3 + 0.04 * 599, samples: 600 });
    // 40 % of 26.96 N·m at the 196th reading, half of it at the 263rd; the first 256 steps were kept.
    expect(pull?.rise.reachedMs[3]).toBe(19_500);
    expect(pull?.rise.reachedMs[4]).toBe(59_900);
  });

  it('keeps the sign of loosening', () => {
    expect(peaks(pullsIn([0, -8, -19, -19, 0]))).toEqual([-19]);
  });
});
