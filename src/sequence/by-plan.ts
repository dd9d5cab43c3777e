/**
 * Where a pull goes of which the tool sends the highest torque and nothing else. There is no rise to tell a plug that turned
 * from a tight one, so nothing is claimed about it: the pull goes to the plug that is due by the order of work, and a
 * person confirms that with one key. Pulls that come before the key go to the plugs behind it.
 */
import type { DetectedPull } from '../pull/pull.ts';
import { asks, type Placement, type Situation } from './placement.ts';

/** What the rules for pulls with a shape say as well, because it rests on torque and time alone. */
interface Shared {
  /** Too little to have turned a plug. */
  readonly tooLittleNm: number;
  /** Nobody takes the wrench to another plug in less. */
  readonly samePlugMs: number;
}

/** For a pull that neither loosened a plug nor stood at the end of the scale. */
export function placeByPlan(
  { peakNm, startUs }: DetectedPull,
  at: Situation,
  { tooLittleNm, samePlugMs }: Shared,
): Placement {
  const { last, asking, confirming, planned, lowerNm, upperNm } = at;
  if (peakNm < tooLittleNm) return { cylinder: null, kind: 'handling', because: 'too-little-torque' };
  const reached = last !== null && (last.tight || last.asked === 'by-plan');
  if (reached && startUs - last.endUs < 1000 * samePlugMs)
    return { cylinder: last.cylinder, kind: 'rehit', because: 'at-once-again' };
  if (asking !== null && !confirming) return asks('held', asking, 'during-question');
  const due = planned ?? (confirming ? asking : null);
  if (due !== null)
    return peakNm < lowerNm ? { cylinder: due, kind: 'run-down', because: 'ended-low' } : toConfirm(due);
  if (peakNm > upperNm && at.lastTight !== null) return asks('held', at.lastTight, 'check-above-window');
  return { cylinder: at.chosen, kind: 'check', because: 'all-done' };
}

/** What a person is asked about such a pull. */
export const toConfirm = (cylinder: number): Placement => asks('by-plan', cylinder, 'by-plan');
