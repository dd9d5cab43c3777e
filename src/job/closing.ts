import type { OpenItem } from './open-item.ts';
import { type Phase, phasesOf } from './phase.ts';
import { isOver, type JobState, type StepState } from './state.ts';

const TORQUE = {
  todo: 'no-torque',
  again: 'torque-not-proven',
  ask: 'torque-in-question',
} as const;

const OPEN_PHASE = {
  windows: 'windows-not-confirmed',
  'before-removal': 'before-removal-not-attested',
  fitting: 'fitting-not-attested',
  afterwards: 'afterwards-not-attested',
} as const satisfies Partial<Record<Phase, OpenItem['kind']>>;
const isListed = (phase: Phase): phase is keyof typeof OPEN_PHASE => Object.hasOwn(OPEN_PHASE, phase);

/** What is missing around the torque. */
function openPlugChecks({ routine, oldPlugs, newPlugs }: JobState, cylinder: number): OpenItem[] {
  const items: OpenItem[] = [];
  const checked = newPlugs[cylinder];
  if (routine?.oldPlugs === true && (oldPlugs[cylinder]?.read ?? null) === null)
    items.push({ kind: 'old-plug-not-read', cylinder });
  if (routine?.newPlugs === true && checked === undefined)
    items.push({ kind: 'new-plug-not-checked', cylinder });
  if (checked !== undefined && checked.differs.length > 0)
    items.push({ kind: 'new-plug-differs', cylinder, features: checked.differs });
  return items;
}

/** A plug that is to be replaced says why. */
function openGap(state: JobState, cylinder: number, gap: StepState): OpenItem[] {
  if (isOver(gap)) return [];
  const step = state.plugs[cylinder]?.step;
  if (step?.do !== 'replace')
    return [{ kind: gap === 'todo' ? 'gap-not-measured' : 'gap-not-proven', cylinder }];
  const { do: _do, ...replacement } = step;
  return [{ kind: 'plug-to-be-replaced', cylinder, ...replacement }];
}

const openTorque = (cylinder: number, torque: StepState): OpenItem[] =>
  torque === 'done' || torque === 'settled' ? [] : [{ kind: TORQUE[torque], cylinder }];

/** What still stands between the job and its end; empty when every cylinder is over and nothing is left to say. */
export function openItems(state: JobState): OpenItem[] {
  const inOrder = [...state.cylinders].sort((a, b) => a.cylinder - b.cylinder);
  return [
    ...inOrder.flatMap(({ cylinder, gap, torque }) => [
      ...openPlugChecks(state, cylinder),
      ...openGap(state, cylinder, gap),
      ...openTorque(cylinder, torque),
    ]),
    ...phasesOf(state).flatMap(({ phase, done }): OpenItem[] =>
      !done && isListed(phase) ? [{ kind: OPEN_PHASE[phase] }] : [],
    ),
    ...state.questions.map(({ pull }): OpenItem => ({ kind: 'question-not-answered', pull })),
  ];
}
