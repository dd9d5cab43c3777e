import { type Phase, phasesOf } from './phase.ts';
import type { JobState, StepState } from './state.ts';

const TORQUE: Record<StepState, string | null> = {
  todo: 'no torque yet',
  again: 'torque not proven',
  ask: 'open question about its torque',
  done: null,
  settled: null,
};
const GAP: Record<StepState, string | null> = {
  todo: 'gap not measured',
  again: 'gap not proven',
  ask: 'open question about its gap',
  done: null,
  settled: null,
};

const OPEN_PHASE: Partial<Record<Phase, string>> = {
  windows: 'windows not confirmed',
  'before-removal': 'steps before removal not confirmed',
  fitting: 'steps before fitting not confirmed',
  afterwards: 'steps after fitting not confirmed',
};

/** A plug that is to be replaced says why. */
function gapText(state: JobState, cylinder: number, gap: StepState): string | null {
  const step = state.plugs[cylinder]?.step;
  return gap !== 'done' && step?.do === 'replace' ? `plug to be replaced: ${step.because}` : GAP[gap];
}

/** What is missing around the torque. */
function openPlugChecks(state: JobState, cylinder: number): (string | null)[] {
  const { routine } = state;
  const checked = state.newPlugs[cylinder];
  const differs = (checked?.differs ?? []).map((feature) => feature.replace('-', ' ')).join(', ');
  return [
    routine?.oldPlugs === true && (state.oldPlugs[cylinder]?.read ?? null) === null
      ? 'old plug not read'
      : null,
    routine?.newPlugs === true && checked === undefined ? 'new plug not checked' : null,
    differs === '' ? null : `the new plug differs in ${differs}`,
  ];
}

/** What still stands between the job and its end, in words; empty when every cylinder is over and nothing is left to say. */
export function openItems(state: JobState): string[] {
  const inOrder = [...state.cylinders].sort((a, b) => a.cylinder - b.cylinder);
  return [
    ...inOrder.flatMap(({ cylinder, gap, torque }) =>
      [...openPlugChecks(state, cylinder), gapText(state, cylinder, gap), TORQUE[torque]].flatMap((text) =>
        text === null ? [] : [`cylinder ${cylinder}: ${text}`],
      ),
    ),
    ...phasesOf(state).flatMap(({ phase, done }) => (done ? [] : (OPEN_PHASE[phase] ?? []))),
    ...state.questions.map(({ pull }) => `pull ${pull}: question not answered`),
  ];
}
