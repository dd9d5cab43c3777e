/**
 * What else the shape of a rise tells: whether it was a plug at all, and how it went on from what the plug had held.
 *
 * `knock` tells low strokes from knocks by length, symmetry of rise and fall, and the share of the time near the top: a
 * logistic regression, fitted on simulated pulls (`npm run bench -- fit-kinds`, coefficients.ts); no published figures.
 */
import type { DetectedPull } from '../pull/pull.ts';
import { KNOCK } from './coefficients.ts';

/** What the model sees of a pull. */
export interface ShapeFeatures {
  readonly length: number;
  readonly fall: number;
  readonly atTop: number;
}

const LEAST_MS = 1;

export function shapeFeatures(pull: DetectedPull): ShapeFeatures {
  const at = (tenth: number) => pull.rise.reachedMs[tenth - 1] ?? 0;
  const length = Math.max(LEAST_MS, (pull.endUs - pull.startUs) / 1000);
  const up = Math.max(LEAST_MS, (pull.peakUs - pull.startUs) / 1000);
  const down = Math.max(LEAST_MS, (pull.endUs - pull.peakUs) / 1000);
  return {
    length: Math.log(length),
    fall: Math.log(down / up),
    atTop: Math.log(Math.max(LEAST_MS, up - at(5)) / length),
  };
}

/** Terms of the model, in the order of its coefficients. */
export const knockTerms = ({ length, fall, atTop }: ShapeFeatures): readonly number[] => [
  1,
  length,
  length * length,
  fall,
  fall * fall,
  atTop,
  atTop * atTop,
];

/** Probability that a low pull was a knock and not a stroke. */
export const knockProbability = (pull: DetectedPull): number =>
  logistic(dot(KNOCK, knockTerms(shapeFeatures(pull))));

/** How bent: ln(time from 20 to 50 % / time from 50 to 80 %). */
export function bendOf({ rise }: DetectedPull): number {
  const at = (tenth: number) => rise.reachedMs[tenth - 1] ?? 0;
  return Math.log(Math.max(LEAST_MS, at(5) - at(2)) / Math.max(LEAST_MS, at(8) - at(5)));
}

/** Milliseconds from 20 to 80 % of a torque below the first top. */
export const riseToMs = (pull: DetectedPull, heldNm: number): number =>
  reachedMs(pull, 0.8 * heldNm) - reachedMs(pull, 0.2 * heldNm);

/** Outside of these there is too little of a rise, below or beyond, to tell a pace from. */
const TOO_LITTLE_HELD = 0.3;
const TOO_NEAR_TOP = 0.85;
/** Nor where either part is over within so many readings. */
const READINGS_AT_LEAST = 4;
/** What lies nearer to what was held than this share is left out: the hand has its ramp below, and the knee is not sharp. */
const FROM = 0.3;
const UP_TO = 0.9;

/**
 * How much slower the torque rose beyond what the plug had held than up to there. A plug that held it is a spring up to
 * there and gives beyond: well above 1. One that is tight is the same spring all the way: 1. One that turns from loose
 * hardens: below 1. Null where it had held nearly all of it, or too little.
 */
export function slowdown(pull: DetectedPull, heldNm: number): number | null {
  const topNm = topOf(pull);
  if (heldNm < TOO_LITTLE_HELD * topNm || heldNm > TOO_NEAR_TOP * topNm) return null;
  const belowMs = reachedMs(pull, UP_TO * heldNm) - reachedMs(pull, FROM * heldNm);
  const beyondMs = reachedMs(pull, 0.9 * topNm) - reachedMs(pull, heldNm);
  const leastMs = (READINGS_AT_LEAST * pull.intervalUs) / 1000;
  if (belowMs < leastMs && beyondMs < leastMs) return null;
  const below = Math.max(belowMs, LEAST_MS) / ((UP_TO - FROM) * heldNm);
  return beyondMs / (0.9 * topNm - heldNm) / below;
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

export const logistic = (score: number): number => 1 / (1 + Math.exp(-score));

function dot(coefficients: readonly number[], terms: readonly number[]): number {
  return terms.reduce((sum, term, i) => sum + term * (coefficients[i] ?? 0), 0);
}
