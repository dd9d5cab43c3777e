/** Where a gap reading belongs: to an old plug, to a new one, or to none, and then why. */
import { gapCheckOf } from '../plug/gap.ts';
import { firstMissing, isFitted } from './early.ts';
import { oldPlugAtHand } from './fold-checklist.ts';
import type { OutOfTurn } from './out-of-order.ts';
import { phaseOf } from './phase.ts';
import { isOver, type JobState } from './state.ts';

export type GapPlace =
  | { readonly of: 'old-plug' | 'new-plug'; readonly cylinder: number }
  | { readonly of: 'none'; readonly because: OutOfTurn }
  /** This job measures no gaps. */
  | null;

const BEFORE_GAPS = ['windows', 'before-removal', 'old-plugs', 'new-plugs'] as const;

/** No plug of an engine has a gap beyond these, old or new; a reading there is a slip. Assumption. */
const POSSIBLE_MM = { from: 0.15, to: 4 } as const;

const none = (because: OutOfTurn): GapPlace => ({ of: 'none', because });

/** A plug was pulled before its gap was known, and it is asked what became of it: this may be its gap, or that of the next one. */
const isAskedAbout = ({ questions, cylinders }: JobState): boolean =>
  questions.some(
    ({ kind, cylinder }) =>
      kind === 'early' && cylinders.some((c) => c.cylinder === cylinder && !isOver(c.gap)),
  );

/** The place of the next gap reading. No reading goes to a plug that the screen does not ask for. */
export function gapPlace(state: JobState, gapMm: number): GapPlace {
  if (gapMm < POSSIBLE_MM.from || gapMm > POSSIBLE_MM.to) return none('not-possible');
  const phase = phaseOf(state);
  const old = oldPlugAtHand(state);
  if (old !== null && phase === 'old-plugs')
    return state.oldPlugs[old]?.gap == null ? { of: 'old-plug', cylinder: old } : none('old-gap-known');
  if (state.gapWindow === null || gapCheckOf(state.order.specification) !== 'gauge') return null;
  const first = firstMissing(state, BEFORE_GAPS);
  const missing = BEFORE_GAPS.find((step) => step === first);
  if (missing !== undefined) return none(missing);
  if (old !== null) return none('old-plugs');
  // An old plug measured late, or a new one early: nobody can tell.
  if (state.routine?.oldPlugs === true && phase === 'new-plugs') return none('new-plugs');
  if (isAskedAbout(state)) return none('pulled-early');
  if (state.gapTarget !== null) return { of: 'new-plug', cylinder: state.gapTarget };
  const isLate = state.cylinders.some((c) => !isOver(c.gap) && isFitted(c));
  return none(isLate ? 'plug-fitted' : 'none-due');
}
