/**
 * What the plug did under a pull, told from the shape of its rise alone; and whether it was a plug at all.
 *
 * `turned` is a logistic regression over r = ln(rise from 20 to 80 % of the first top, in ms) and the bend
 * b = ln(time from 20 to 50 % / time from 50 to 80 %). A wrench on a plug that stands still is a spring: straight, and
 * as fast as the hand (b near 0). A seat that is pressed hardens: slow, and steeper towards the top (b above 0).
 * `knock` tells low strokes from knocks by length, symmetry of rise and fall, and the share of the time near the top.
 * Both were fitted on simulated pulls (`npm run bench -- fit-kinds`, coefficients.ts); no published figures exist.
 */
import type { DetectedPull } from '../pull/pull.ts';
import { KNOCK, TURNED } from './coefficients.ts';

/** What the models see of a pull. */
export interface ShapeFeatures {
  readonly rise: number;
  readonly bend: number;
  readonly length: number;
  readonly fall: number;
  readonly atTop: number;
}

const LEAST_MS = 1;

export function shapeFeatures(pull: DetectedPull): ShapeFeatures {
  const at = (tenth: number) => pull.rise.reachedMs[tenth - 1] ?? 0;
  const lower = Math.max(LEAST_MS, at(5) - at(2));
  const upper = Math.max(LEAST_MS, at(8) - at(5));
  const length = Math.max(LEAST_MS, (pull.endUs - pull.startUs) / 1000);
  const up = Math.max(LEAST_MS, (pull.peakUs - pull.startUs) / 1000);
  const down = Math.max(LEAST_MS, (pull.endUs - pull.peakUs) / 1000);
  return {
    rise: Math.log(lower + upper),
    bend: Math.log(lower / upper),
    length: Math.log(length),
    fall: Math.log(down / up),
    atTop: Math.log(Math.max(LEAST_MS, up - at(5)) / length),
  };
}

/** Terms of the models, in the order of their coefficients. */
export const turnedTerms = ({ rise, bend }: ShapeFeatures): readonly number[] => [1, rise, bend];
export const knockTerms = ({ length, fall, atTop }: ShapeFeatures): readonly number[] => [
  1,
  length,
  length * length,
  fall,
  fall * fall,
  atTop,
  atTop * atTop,
];

/** Probability that the plug turned from where fingers left it, and was not one that stood still. */
export const turnedProbability = (pull: DetectedPull): number =>
  logistic(dot(TURNED, turnedTerms(shapeFeatures(pull))));

/** Probability that a low pull was a knock and not a stroke. */
export const knockProbability = (pull: DetectedPull): number =>
  logistic(dot(KNOCK, knockTerms(shapeFeatures(pull))));

/**
 * Milliseconds from 20 to 80 % of a torque below the first top. A plug that held that torque already lets it rise as
 * fast as the wrench bends, whatever comes beyond.
 */
export const riseToMs = (pull: DetectedPull, heldNm: number): number =>
  reachedMs(pull, 0.8 * heldNm) - reachedMs(pull, 0.2 * heldNm);

/** Outside of these there is too little of a rise, below or beyond, to tell a pace from. */
const TOO_LITTLE_HELD = 0.3;
const TOO_NEAR_TOP = 0.85;

/**
 * How much slower the torque rose beyond what the plug had held than up to there: about 1 on a plug that stands still,
 * more on one that turns on. Null where it had held nearly all of it, or too little.
 */
export function slowdown(pull: DetectedPull, heldNm: number): number | null {
  const topNm = topOf(pull);
  if (heldNm < TOO_LITTLE_HELD * topNm || heldNm > TOO_NEAR_TOP * topNm) return null;
  const below = riseToMs(pull, heldNm) / (0.6 * heldNm);
  const beyond = (reachedMs(pull, 0.9 * topNm) - reachedMs(pull, heldNm)) / (0.9 * topNm - heldNm);
  return beyond / Math.max(below, LEAST_MS / topNm);
}

const topOf = (pull: DetectedPull): number => Math.abs(pull.releaseNm ?? pull.peakNm);

/** When a torque was first reached, between the tenths of the first top that the pull tells. */
function reachedMs(pull: DetectedPull, nm: number): number {
  const tenths = Math.min(9, Math.max(0, (10 * nm) / topOf(pull)));
  const below = Math.floor(tenths);
  const from = below === 0 ? 0 : (pull.rise.reachedMs[below - 1] ?? 0);
  const to = pull.rise.reachedMs[below] ?? from;
  return from + (tenths - below) * (to - from);
}

const logistic = (score: number): number => 1 / (1 + Math.exp(-score));

function dot(coefficients: readonly number[], terms: readonly number[]): number {
  return terms.reduce((sum, term, i) => sum + term * (coefficients[i] ?? 0), 0);
}
