/** The phases of a job in the order of the work, and which of them is at hand. */
import { firstMissing } from './early.ts';
import { itemsOf, type ListPhase, type Routine } from './routine.ts';
import { isOver, type JobState } from './state.ts';
import { isTrialDue } from './trial.ts';

export type Phase =
  | 'windows'
  | 'before-removal'
  | 'old-plugs'
  | 'new-plugs'
  | 'gap'
  | 'fitting'
  | 'trial'
  | 'torque'
  | 'afterwards'
  | 'sign'
  | 'closed';

const LISTS: ReadonlySet<Phase> = new Set<ListPhase>(['before-removal', 'fitting', 'afterwards']);
const isList = (phase: Phase): phase is ListPhase => LISTS.has(phase);

const ORDER = [
  'windows',
  'before-removal',
  'old-plugs',
  'new-plugs',
  'gap',
  'fitting',
  'trial',
  'torque',
  'afterwards',
] as const satisfies readonly Phase[];

function belongs(phase: Phase, routine: Routine | null): boolean {
  if (phase === 'gap' || phase === 'torque') return true;
  if (routine === null) return false;
  if (isList(phase)) return itemsOf(routine, phase).length > 0;
  if (phase === 'trial') return routine.trialClick === true;
  if (phase === 'windows') return routine.confirmWindows;
  return phase === 'old-plugs' ? routine.oldPlugs : phase === 'new-plugs' && routine.newPlugs;
}

function isDone(phase: Phase, state: JobState): boolean {
  const every = (holds: (cylinder: number) => boolean) =>
    state.cylinders.every(({ cylinder }) => holds(cylinder));
  switch (phase) {
    case 'windows':
      return state.windowsConfirmed;
    case 'trial':
      return !isTrialDue(state);
    case 'old-plugs':
      return state.oldPlugTarget === null;
    case 'new-plugs':
      return every((cylinder) => state.newPlugs[cylinder]?.differs.length === 0);
    case 'gap':
      return state.cylinders.every(({ gap }) => isOver(gap));
    case 'torque':
      return state.cylinders.every(({ torque }) => isOver(torque));
    default:
      return isList(phase) && listDone(phase, state);
  }
}

const listDone = (phase: ListPhase, { routine, attested }: JobState): boolean =>
  routine === null || itemsOf(routine, phase).every(({ id }) => Object.hasOwn(attested, id));

/** The phases that this job has, in order, each with whether it is done; without signing. */
export function phasesOf(state: JobState): readonly { readonly phase: Phase; readonly done: boolean }[] {
  return ORDER.filter((phase) => belongs(phase, state.routine)).map((phase) => ({
    phase,
    done: isDone(phase, state),
  }));
}

/**
 * The phase at hand: the first that is not done. Once a plug has been pulled on, hands are at the wrench: until every
 * cylinder is over nothing is put in front of them but a step whose order is binding, and the rest that was passed over
 * comes back behind it.
 */
export function phaseOf(state: JobState): Phase {
  if (state.closed !== null) return 'closed';
  const open = phasesOf(state).filter(({ done }) => !done);
  const started = state.cylinders.some(({ pulls }) => pulls.length > 0);
  const atWork = started && open.some(({ phase }) => phase === 'gap' || phase === 'torque');
  if (!atWork) return open[0]?.phase ?? 'sign';
  if (state.questions.length > 0) return 'torque';
  return firstMissing(state, ['windows', 'before-removal', 'old-plugs', 'new-plugs', 'fitting']) ?? 'torque';
}
