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

/** A plug that is to be replaced says why. */
function gapText(state: JobState, cylinder: number, gap: StepState): string | null {
  const step = state.plugs[cylinder]?.step;
  return gap !== 'done' && step?.do === 'replace' ? `plug to be replaced: ${step.because}` : GAP[gap];
}

/** What still stands between the job and its end, in words; empty when every cylinder is proven and no question is open. */
export function openItems(state: JobState): string[] {
  const inOrder = [...state.cylinders].sort((a, b) => a.cylinder - b.cylinder);
  return [
    ...inOrder.flatMap(({ cylinder, gap, torque }) =>
      [gapText(state, cylinder, gap), TORQUE[torque]].flatMap((text) =>
        text === null ? [] : [`cylinder ${cylinder}: ${text}`],
      ),
    ),
    ...state.questions.map(({ pull }) => `pull ${pull}: question not answered`),
  ];
}
