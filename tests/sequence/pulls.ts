import type { DetectedPull, PlugTurn } from '../../src/pull/pull.ts';
import type { Situation } from '../../src/sequence/place.ts';

/** Tenths of a rise that takes `riseMs` from 20 to 80 %; `bend` below 0 is soft at the top, above 0 hard. */
export function tenths(riseMs: number, bend = 0): number[] {
  const upper = riseMs / (1 + Math.exp(bend));
  const lower = riseMs - upper;
  return Array.from({ length: 9 }, (_, i) => {
    const tenth = i + 1;
    return tenth <= 5 ? (tenth * lower) / 3 : (5 * lower) / 3 + ((tenth - 5) * upper) / 3;
  });
}

/** A rise by its tenths; the rest of it decides nothing. */
export const riseBy = (reachedMs: number[]): DetectedPull['rise'] => ({
  reachedMs,
  slopeAtTopNmPerS: 40,
  impulseNms: 8,
  setbackNm: 0,
});

/** A pull that turned a plug to the click at 27 N·m, ten seconds after the start of the clock; `change` what differs. */
export function pullOf(change: Partial<DetectedPull> = {}): DetectedPull {
  const riseMs = change.riseMs ?? 400;
  return {
    startUs: 10_000_000,
    endUs: 11_200_000,
    peakNm: 27,
    peakUs: 10_800_000,
    peakStandardNm: 0.02,
    highestNm: 27,
    release: 'seen',
    releaseNm: 27,
    releaseUs: 10_800_000,
    dropShare: 0.3,
    riseMs,
    rise: riseBy(tenths(riseMs, 0.2)),
    turn: null,
    sinceLastMs: null,
    zeroNm: 0,
    zeroSettled: true,
    noiseNm: 0.02,
    samples: 120,
    intervalUs: 10_000,
    longestGapUs: 10_000,
    saturated: false,
    stream: 'samples',
    cut: null,
    ...change,
  };
}

/** A pull on a plug that stood still. */
export const tightPull = (change: Partial<DetectedPull> = {}): DetectedPull =>
  pullOf({ riseMs: 60, rise: riseBy(tenths(60)), ...change });

/** A stroke that ended without a click. */
export const strokeTo = (peakNm: number, change: Partial<DetectedPull> = {}): DetectedPull =>
  pullOf({
    peakNm,
    highestNm: peakNm,
    release: 'none',
    releaseNm: null,
    releaseUs: null,
    dropShare: null,
    ...change,
  });

/** A plug that turned so far; `from`: the share of the torque up to which it stood. */
export function turn(deg: number, from = 0, windUpDeg = 12): { turn: NonNullable<DetectedPull['turn']> } {
  const plugAt = (share: number) => (share <= from ? 0 : (deg * (share - from)) / (1 - from));
  const plug: PlugTurn = {
    turnedDeg: deg,
    standardDeg: 0.3,
    fromNm: 2,
    windUpDeg,
    reachedDeg: [1, 2, 3, 4, 5, 6, 7, 8, 9].map(
      (tenth) => plugAt(tenth / 10) + (windUpDeg * (2.7 * tenth - 2)) / 25,
    ),
  };
  const whole = deg + windUpDeg;
  return {
    turn: { startToPeakDeg: whole, from10PercentDeg: whole, from50PercentDeg: whole / 2, workJ: 10, plug },
  };
}

/** A click wrench at a window of 25 to 30 N·m; nothing was pulled yet. */
export const FIRST: Situation = {
  target: 1,
  lastOpen: false,
  started: null,
  startedNm: 0,
  startedTurning: false,
  refitted: false,
  next: null,
  earlier: [],
  usualTurns: [],
  last: null,
  refitting: null,
  lastTight: null,
  asking: null,
  confirming: false,
  planned: 1,
  chosen: null,
  trial: false,
  slightDrop: null,
  clicks: true,
  lowerNm: 25,
  upperNm: 30,
};

/** Cylinder 1 was brought to the window and 2 is due; the last pull ended `pauseMs` before {@link pullOf} begins. */
export const second = (pauseMs = 6000): Situation => ({
  ...FIRST,
  target: 2,
  lastTight: 1,
  last: { cylinder: 1, endUs: 10_000_000 - 1000 * pauseMs, asked: null, tight: true, short: false, knock: 0 },
});

/** Cylinder 2 is due and was pulled to `heldNm` without a click, `pauseMs` ago. */
export const halfway = (started: 'stroke' | 'short', heldNm: number, pauseMs: number): Situation => ({
  ...second(),
  started,
  startedNm: heldNm,
  startedTurning: true,
  last: { cylinder: 2, endUs: 10_000_000 - 1000 * pauseMs, asked: null, tight: false, short: true, knock: 0 },
});
