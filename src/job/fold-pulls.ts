/** Pulls in their places, folded into the job's state: one place a pull, and every cylinder's torque worked out behind it. */
import type { PullKind } from '../sequence/kind.ts';
import { earlyFor, gapCameLate, heldBy, removedEarly, undoneAt, withBootsOff } from './early.ts';
import type { JobEventOf } from './event.ts';
import { questionFor } from './question.ts';
import { type CylinderState, isOver, type JobState, type TorqueAttempt } from './state.ts';
import { lastTight, torqueStep } from './torque-step.ts';

/** The state after a pull was given its place, the first time or again. */
export function pullPlaced(state: JobState, event: JobEventOf<'pull-placed'>): JobState {
  const pull = state.lastPull?.pull === event.pull ? state.lastPull : findPull(state, event.pull);
  if (pull === null) throw new Error(`pull ${event.pull} was placed but never found`);
  const { cylinder, kind, because, judgement, turn, ask, evidence, otherPull, leftOut } = event;
  const earlier = findAttempt(state, event.pull);
  const cleared = withoutAttempt(state, event.pull);
  // As it was when it was pulled, wherever the pull is given later.
  const undone = earlier === undefined ? undoneAt(state, pull.pull) : (earlier.undone ?? []);
  const early = cylinder === null ? [] : earlyFor(cleared, cylinder, { pull, kind }, undone);
  const attempt: TorqueAttempt = {
    pull,
    technician: earlier?.technician ?? state.technician,
    kind,
    because,
    ...(otherPull === undefined ? {} : { otherPull }),
    ...(leftOut === undefined ? {} : { leftOut }),
    judgement,
    ...(turn === undefined ? {} : { turn }),
    ...(ask === undefined ? {} : { ask }),
    ...(evidence === undefined ? {} : { evidence }),
    ...(undone.length === 0 ? {} : { undone }),
    ...(early.length === 0 ? {} : { early }),
    ...(earlier?.given === true ? { given: true } : {}),
    answer: earlier?.answer ?? null,
  };
  const isNewAtPlug = earlier === undefined && AT_A_PLUG.has(kind);
  if (cylinder === null) {
    const stray = retighten({ ...withLoosening(cleared, attempt), strays: [...cleared.strays, attempt] });
    return isNewAtPlug ? withBootsOff(stray, { pull: pull.pull, early }) : stray;
  }
  const question = questionFor(attempt, cylinder, heldBy(state, attempt).length > 0);
  const isLate = early.includes('gap') || (kind !== 'loosening' && gapCameLate(cleared, cylinder, pull.pull));
  const given = withCylinder(cleared, cylinder, (was) => ({
    ...was,
    gap: isLate && isOver(was.gap) ? 'again' : was.gap,
    pulls: inOrder([...was.pulls, attempt]),
  }));
  const placed = retighten({
    ...(early.length === 0 ? given : { ...given, tooEarly: { what: 'pull', cylinder, steps: early } }),
    questions: question === null ? cleared.questions : [...cleared.questions, question],
  });
  const tightened = judgement !== null && judgement.side !== 'low' && kind !== 'check';
  const attemptAt = { cylinder, pull: pull.pull, early };
  const isDone = placed.cylinders.some((c) => c.cylinder === cylinder && isOver(c.torque));
  return {
    ...(tightened || isNewAtPlug ? withBootsOff(placed, attemptAt) : placed),
    refitting: tightened && placed.refitting === cylinder ? null : placed.refitting,
    // What came too early is no OK in large letters.
    lastVerdict: heldBy(state, attempt).length > 0 ? null : verdictAfter(placed, cylinder, attempt),
    chosen: isDone ? { ...placed.chosen, torque: null } : placed.chosen,
  };
}

/** The boots are off again, whatever the pull proves. */
const AT_A_PLUG: ReadonlySet<PullKind> = new Set<PullKind>([
  'tightening',
  'continuation',
  'run-down',
  'rehit',
  'check',
]);

/** An old plug that came loose before its turn. */
function withLoosening(state: JobState, { kind, pull }: TorqueAttempt): JobState {
  const isOld = kind === 'loosening' && state.cylinders.every(({ pulls }) => pulls.length === 0);
  if (!isOld || !removedEarly(state)) return state;
  return {
    ...state,
    tooEarly: { what: 'loosening' },
    outOfOrder: [...state.outOfOrder, { step: 'before-removal', what: 'loosening', pull: pull.pull }],
  };
}

/** Notes that a person placed this pull; what the rules make of it follows. */
export function withGiven(state: JobState, pull: number): JobState {
  const noted = (list: readonly TorqueAttempt[]) =>
    list.map((attempt) => (attempt.pull.pull === pull ? { ...attempt, given: true as const } : attempt));
  return {
    ...state,
    cylinders: state.cylinders.map((c) => ({ ...c, pulls: noted(c.pulls) })),
    strays: noted(state.strays),
  };
}

const inOrder = (pulls: readonly TorqueAttempt[]) => [...pulls].sort((a, b) => a.pull.pull - b.pull.pull);

/** Where every cylinder's torque stands after its pulls or its questions changed. */
export function retighten(state: JobState): JobState {
  const cylinders = state.cylinders.map((c) => ({ ...c, torque: torqueStep(c, state) }));
  return { ...state, cylinders, lastTight: lastTight({ ...state, cylinders }) };
}

/** The verdict in large letters. One of another cylinder goes away, lest it be taken for this one's. */
function verdictAfter(
  state: JobState,
  cylinder: number,
  { judgement, turn }: Pick<TorqueAttempt, 'judgement' | 'turn'>,
): JobState['lastVerdict'] {
  if (judgement !== null)
    return { quantity: 'torque', cylinder, judgement, ...(turn === undefined ? {} : { turn }) };
  return state.lastVerdict?.cylinder === cylinder ? state.lastVerdict : null;
}

const findPull = (state: JobState, pull: number) => findAttempt(state, pull)?.pull ?? null;

function findAttempt(state: JobState, pull: number): TorqueAttempt | undefined {
  return [...state.cylinders.flatMap((c) => c.pulls), ...state.strays].find(
    (attempt) => attempt.pull.pull === pull,
  );
}

/** A pull stands in one place only, and so does what was asked about it; where it stood before stays in the log. */
function withoutAttempt(state: JobState, pull: number): JobState {
  const others = (list: readonly TorqueAttempt[]) => list.filter((attempt) => attempt.pull.pull !== pull);
  return {
    ...state,
    cylinders: state.cylinders.map((c) => ({ ...c, pulls: others(c.pulls) })),
    strays: others(state.strays),
    questions: state.questions.filter((open) => open.pull !== pull),
  };
}

/** The state with one cylinder changed. */
export function withCylinder(
  state: JobState,
  cylinder: number,
  change: (was: CylinderState) => CylinderState,
): JobState {
  return { ...state, cylinders: state.cylinders.map((c) => (c.cylinder === cylinder ? change(c) : c)) };
}
