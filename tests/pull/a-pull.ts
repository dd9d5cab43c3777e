import type { DetectedPull } from '../../src/pull/pull.ts';

/** An unexceptional pull of 27 N·m on a new gasket, for tests that care about a few of its figures only. */
export const A_PULL: DetectedPull = {
  startUs: 0,
  endUs: 900_000,
  peakNm: 27,
  peakUs: 700_000,
  peakStandardNm: 0.02,
  highestNm: 27,
  release: 'seen',
  releaseNm: 27,
  releaseUs: 700_000,
  dropShare: 0.25,
  riseMs: 600,
  rise: {
    reachedMs: [20, 60, 180, 340, 460, 540, 600, 660, 680],
    slopeAtTopNmPerS: 120,
    impulseNms: 7,
    setbackNm: 0,
  },
  turn: null,
  sinceLastMs: 15_000,
  zeroNm: 0,
  zeroSettled: true,
  noiseNm: 0.02,
  samples: 90,
  intervalUs: 10_000,
  longestGapUs: 10_000,
  saturated: false,
  stream: 'samples',
  cut: null,
};
