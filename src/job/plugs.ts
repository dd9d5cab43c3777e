/** The plug in a cylinder: the readings of its own gap, and what they ask for. */
import { adjustingOf, type GapInspected, type GapStep, gapCheckOf, gapStep } from '../plug/gap.ts';
import { orThrow } from '../result.ts';
import type { CylinderState, GapAttempt, JobState, PlugState, StepState } from './state.ts';

const NEW: PlugState = { gapsBefore: 0, step: null };

/** The plug that is in a cylinder now, or on its way into it. */
const plugOf = (state: JobState, cylinder: number): PlugState => state.plugs[cylinder] ?? NEW;

/** The state with what the plug's gap asks for. */
export function withGapStep(state: JobState, cylinder: number, step: GapStep | null): JobState {
  return { ...state, plugs: { ...state.plugs, [cylinder]: { ...plugOf(state, cylinder), step } } };
}

/** Another plug takes the place of the one in a cylinder: nothing is known of its gap. */
export function withNewPlug(state: JobState, cylinder: number): JobState {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  if (c === undefined) return state;
  const gap = firstGapState(state.order) === 'done' ? 'done' : 'again';
  const { [cylinder]: _gone, ...newPlugs } = state.newPlugs;
  return {
    ...state,
    newPlugs,
    plugs: { ...state.plugs, [cylinder]: { gapsBefore: c.gaps.length, step: null } },
    cylinders: state.cylinders.map((one) => (one === c ? { ...c, gap } : one)),
  };
}

/** What the plug of this cylinder asks for after the last of its readings; null while there is none. */
export function gapStepOf(state: JobState, { cylinder, gaps }: CylinderState): GapStep | null {
  const { gapWindow, order, basis } = state;
  const { gapsBefore, step } = plugOf(state, cylinder);
  const counting = gaps.slice(gapsBefore).filter(({ takenBack }) => takenBack !== true);
  const [last, reading] = counting.slice(-2).map(seen);
  if (gapWindow === null || last === undefined) return null;
  const rules = {
    adjusting: {
      ...orThrow(adjustingOf(order.specification, order.plug)),
      allowed: basis.gap.adjustable,
      bendMostMm: basis.gap.bendMostMm,
    },
    // Two readings of one gap may differ by the root of two of what one may be off.
    noticeableMm: Math.SQRT2 * gapWindow.expandedAtUpper,
    middleMm: (gapWindow.acceptLower + gapWindow.acceptUpper) / 2,
  };
  return reading === undefined
    ? gapStep({ last: null, step }, last, rules)
    : gapStep({ last, step }, reading, rules);
}

const seen = ({ judgement }: GapAttempt): GapInspected => ({
  valueMm: judgement.value,
  proven: judgement.result === 'OK',
});

/** The gap of a cylinder before anybody looked: nothing is due where the specification forbids to measure. */
export const firstGapState = (order: JobState['order']): StepState =>
  gapCheckOf(order.specification) === 'not-permitted' ? 'done' : 'todo';
