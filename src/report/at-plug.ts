import type { JobState, TorqueAttempt } from '../job/state.ts';
import { crowfootOf, leverage } from '../plug/geometry.ts';
import type { Trace } from './plots.ts';

/** Pulls and traces as the plug saw them: through an adapter the wrench reads another torque than the window is in. */
export function atPlug<T extends { readonly state: JobState; readonly traces: ReadonlyMap<number, Trace> }>(
  input: T,
): T {
  const { state, traces } = input;
  if (state.order.adapter === undefined) return input;
  const gain = leverage(crowfootOf(state.order.adapter));
  const seen = (attempt: TorqueAttempt): TorqueAttempt => {
    const { pull } = attempt;
    const releaseNm = pull.releaseNm === null ? null : gain * pull.releaseNm;
    return { ...attempt, pull: { ...pull, peakNm: gain * pull.peakNm, releaseNm } };
  };
  return {
    ...input,
    state: {
      ...state,
      cylinders: state.cylinders.map((c) => ({ ...c, pulls: c.pulls.map(seen) })),
      strays: state.strays.map(seen),
    },
    traces: new Map(
      [...traces].map(([pull, trace]) => [pull, { ...trace, nm: trace.nm.map((nm) => gain * nm) }]),
    ),
  };
}
