/**
 * The snug point: where the parts are in firm contact and the torque begins to rise in earnest. The slope of the torque over
 * the angle from 50 to 90 % of the first top, carried back to no torque; what came before is run-down, what comes after it
 * tightens.
 */
import type { PlugTurn } from './pull.ts';

/** How far the plug was turned up to the snug point, and from there on. */
export interface Snug {
  readonly runDownDeg: number;
  readonly beyondDeg: number;
}

export function snugOf({ reachedDeg, turnedDeg }: PlugTurn): Snug {
  const [at50, at90] = [reachedDeg[4] ?? 0, reachedDeg[8] ?? 0];
  const perTenth = (at90 - at50) / 4;
  const runDownDeg = Math.min(Math.max(0, turnedDeg), Math.max(0, at50 - 5 * perTenth));
  return { runDownDeg, beyondDeg: turnedDeg - runDownDeg };
}
