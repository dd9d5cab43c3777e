import type { JobState, StepState } from './state.ts';

const TORQUE: Record<StepState, string | null> = {
  todo: 'no torque yet',
  again: 'torque not proven',
  ask: 'a question about its torque is open',
  done: null,
};
const GAP: Record<StepState, string | null> = {
  todo: 'gap not measured',
  again: 'gap not proven',
  ask: 'a question about its gap is open',
  done: null,
};

/** What still stands between the job and its end, in words; empty when every cylinder is proven and no question is open. */
export function openItems(state: JobState): string[] {
  const inOrder = [...state.cylinders].sort((a, b) => a.cylinder - b.cylinder);
  return [
    ...inOrder.flatMap(({ cylinder, gap, torque }) =>
      [GAP[gap], TORQUE[torque]].flatMap((text) => (text === null ? [] : [`cylinder ${cylinder}: ${text}`])),
    ),
    ...state.questions.map(({ pull }) => `pull ${pull}: question not answered`),
  ];
}
