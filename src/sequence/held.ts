/** How a pull went on from what the due plug had held before: by the angle where it is measured, else by the rise. */
import type { DetectedPull } from '../pull/pull.ts';
import type { Evidence } from './evidence.ts';
import { gave, plugTurnOf, type UsualTurns } from './measured-turn.ts';
import { STOOD, surelyTurned } from './odds.ts';

/** A pull, and the highest torque that the due plug had held. */
export interface GoingOn {
  readonly pull: DetectedPull;
  readonly at: { readonly startedNm: number; readonly usualTurns: UsualTurns };
  readonly evidence: Evidence;
}

/**
 * Beyond what it held a plug gives, and the torque rises slower by so much; on any other plug by less. The nearer that was
 * to the click, the more a hand that feels for it slows down by itself. Simulated and by the independent generator: plugs
 * that went on from 1.42, others up to 1.40 at 60 % and 2.3 at 85 %.
 */
const TURNS_ON = 1.42;
const TURNS_ON_NEAR_CLICK = 2.3;
const FAR_SHARE = 0.65;
const NEAR_SHARE = 0.85;
/** As much of a turn may seem to come below what a plug had held, by the angle. Assumptions. */
const STOOD_WITHIN_DEG = 2;
const STOOD_SHARE = 0.35;

/** It turned a plug from loose, not the one of the stroke before, which had nearly been tight. */
export function fromLoose({ pull, at, evidence }: GoingOn): boolean {
  if (!surelyTurned(evidence)) return false;
  return evidence.belowHeldDeg === undefined
    ? at.startedNm > NEAR_SHARE * pull.peakNm
    : !stoodUntilHeld(evidence);
}

/** Measured: it stood, though the due plug would have had to turn on to come so far. */
export function stoodThough({ pull, at, evidence: { plugDeg, turned } }: GoingOn): boolean {
  return plugDeg !== undefined && turned < STOOD && at.startedNm < NEAR_SHARE * pull.peakNm;
}

/** Up to what the plug had held it was a spring, and gave beyond. */
export function turnedOn({ pull, at, evidence }: GoingOn): boolean {
  const plug = plugTurnOf(pull);
  if (plug !== null && evidence.belowHeldDeg !== undefined)
    return gave(plug, at.usualTurns) && stoodUntilHeld(evidence);
  const { slowdown } = evidence;
  if (slowdown === null) return false;
  const share = at.startedNm / Math.abs(pull.releaseNm ?? pull.peakNm);
  const near = Math.min(1, Math.max(0, (share - FAR_SHARE) / (NEAR_SHARE - FAR_SHARE)));
  return slowdown >= TURNS_ON + near * (TURNS_ON_NEAR_CLICK - TURNS_ON);
}

/** Measured: up to what the plug had held it did not turn. */
function stoodUntilHeld({ plugDeg = 0, belowHeldDeg }: Evidence): boolean {
  return belowHeldDeg !== undefined && belowHeldDeg <= Math.max(STOOD_WITHIN_DEG, STOOD_SHARE * plugDeg);
}
