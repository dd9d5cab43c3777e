/**
 * Did the plug turn? Measured, where the tool sends an angle: the turn of the plug without the wind-up of the tools
 * (pull/turning.ts), against what a plug that is tight already may still give.
 *
 * A tight plug pulled again creeps by what the click scatters: a fraction of a degree on a hard seat, more on a gasket, which
 * takes many degrees for the same torque. How many this joint takes, the plugs show that turned in this job.
 *
 * All spreads are assumptions, held against simulated joints and the independent generator; no published figures.
 */
import type { DetectedPull, PlugTurn } from '../pull/pull.ts';

/** What a tight plug gives, in degrees and as a share of the usual turn of a plug in this job; a standard deviation. */
const CREEP_DEG = 0.6;
const CREEP_SHARE = 0.02;
/** What the angle of any tool may be off beside step and drift. Assumption. */
const TOOL_DEG = 0.3;
/** A plug that turns gives anything up to a full turn and a bit; hardly less than the least. */
const MOST_DEG = 400;
const LEAST_DEG = 4;
const LEAST_SOFT_DEG = 1;
/** More than this many standard deviations is no creep. */
const SURELY = 3.5;

/** Degrees of plugs that turned under one pull in this job. */
export type UsualTurns = readonly number[];

export const plugTurnOf = ({ turn }: DetectedPull): PlugTurn | null => turn?.plug ?? null;

/** ln of the odds that the plug turned, by the angle alone: what is likely beforehand comes on top. */
export function measuredLogOdds(plug: PlugTurn, usual: UsualTurns): number {
  const softly = -Math.log1p(Math.exp(-(plug.turnedDeg - LEAST_DEG) / LEAST_SOFT_DEG));
  return softly - Math.log(MOST_DEG) - logStood(plug.turnedDeg, creepDeg(plug, usual));
}

/** It turned by more than a tight plug gives. */
export const gave = (plug: PlugTurn, usual: UsualTurns): boolean =>
  plug.turnedDeg > SURELY * creepDeg(plug, usual);

function creepDeg({ standardDeg }: PlugTurn, usual: UsualTurns): number {
  return Math.hypot(standardDeg, TOOL_DEG, CREEP_DEG, CREEP_SHARE * median(usual));
}

/**
 * How far the plug had turned by the time that the torque came to `nm`: the wind-up by then is its share of that at the
 * top. Null where it cannot be said.
 */
export function turnedBelow(plug: PlugTurn, topNm: number, nm: number): number | null {
  if (plug.windUpDeg === null || !(topNm > plug.fromNm)) return null;
  if (nm >= topNm) return plug.turnedDeg;
  const share = Math.max(0, (nm - plug.fromNm) / (topNm - plug.fromNm));
  return reachedDeg(plug, topNm, nm) - share * plug.windUpDeg;
}

function reachedDeg({ reachedDeg: deg, turnedDeg, windUpDeg }: PlugTurn, topNm: number, nm: number): number {
  const tenths = Math.min(10, Math.max(0, (10 * nm) / topNm));
  const below = Math.floor(tenths);
  const topDeg = turnedDeg + (windUpDeg ?? 0);
  const at = (tenth: number) => (tenth === 0 ? 0 : tenth === 10 ? topDeg : (deg[tenth - 1] ?? topDeg));
  return at(below) + (tenths - below) * (at(Math.min(10, below + 1)) - at(below));
}

/** Student's t with 6 degrees of freedom; its constant is Γ(3.5)/(Γ(3)·√(6π)). */
const T6 = 0.382733;
const logStood = (deg: number, spread: number): number =>
  Math.log(T6 / spread) - 3.5 * Math.log1p((Math.max(0, deg) / spread) ** 2 / 6);

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? 0;
}
