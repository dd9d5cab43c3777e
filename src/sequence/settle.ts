/** What a stroke comes to that nothing followed: it stopped short, was no stroke at all, or somebody has to say. */
import type { DetectedPull } from '../pull/pull.ts';
import { toConfirm } from './by-plan.ts';
import type { Evidence } from './evidence.ts';
import { surelyTurned } from './odds.ts';
import { HANDLING_BELOW, KNOCK_BELOW, SURELY_KNOCK, SURELY_STROKE } from './place.ts';
import { asks, type Placement, type Situation } from './placement.ts';

/** The arm takes longer to its first top; what gets there sooner was struck, whatever swings on behind it. Assumption. */
const STRUCK_US = 70_000;
/**
 * A stroke that ended below this share of the lower limit may as well have been a wrench that was leaned on or turned in the
 * fist. First strokes of those who tighten in two go to half of the torque and more.
 */
const SURELY_PULLED = 0.45;
/** And this far up, where it came down as it went up: a fist lets go as it took hold, a hand at the wrench at once. */
const LIKELY_PULLED = 0.7;
const AS_IT_WENT_UP = [0.6, 1.6] as const;

/** A stroke that was taken to be on the way, once nothing followed it. `short`: the cylinder had stopped short before. */
export function settle(
  pull: DetectedPull,
  cylinder: number,
  evidence: Evidence | undefined,
  at: Pick<Situation, 'lowerNm'> & { readonly short: boolean },
): Placement {
  if (pull.stream === 'maxima') return toConfirm(cylinder);
  const withEvidence = evidence === undefined ? {} : { evidence };
  const kind = at.short ? 'continuation' : 'tightening';
  // By the angle a plug turned: that was no knock, however low the torque.
  if (evidence?.plugDeg !== undefined && surelyTurned(evidence) && pull.peakNm < at.lowerNm)
    return { cylinder, kind, because: 'stopped-short', ...withEvidence };
  const nobody = { cylinder: null, kind: 'handling', ...withEvidence } as const;
  if (pull.peakNm < HANDLING_BELOW * at.lowerNm) return { ...nobody, because: 'too-little-torque' };
  const knock = pull.peakNm < KNOCK_BELOW * at.lowerNm ? (evidence?.knock ?? 0) : 0;
  if (knock >= SURELY_KNOCK || wasStruck(pull, at)) return { ...nobody, because: 'knock' };
  if (knock > SURELY_STROKE || maybeHandled(pull, at))
    return { ...asks('which', cylinder, 'knock-or-short'), ...withEvidence };
  if (pull.peakNm >= at.lowerNm)
    return { ...asks('no-click', cylinder, 'no-click-and-nothing-followed'), ...withEvidence };
  return { cylinder, kind, because: 'stopped-short', ...withEvidence };
}

type Lower = Pick<Situation, 'lowerNm'>;

/** A blow, with the wrench swinging behind it so that it looks long. */
const wasStruck = ({ peakNm, peakUs, startUs }: DetectedPull, { lowerNm }: Lower): boolean =>
  peakNm < lowerNm && peakUs - startUs < STRUCK_US;

/** It may have been no more than a wrench at rest that something pressed on. */
function maybeHandled({ peakNm, peakUs, startUs, endUs }: DetectedPull, { lowerNm }: Lower): boolean {
  if (peakNm < SURELY_PULLED * lowerNm) return true;
  const [least, most] = AS_IT_WENT_UP;
  const down = (endUs - peakUs) / Math.max(1, peakUs - startUs);
  return peakNm < LIKELY_PULLED * lowerNm && down > least && down < most;
}
