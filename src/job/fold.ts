import type { Judgement } from '../metrology/judgement.ts';
import { answered } from './answered.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import { firstGapState, gapStepOf, withGapStep, withNewPlug } from './plugs.ts';
import { questionFor } from './question.ts';
import type { CylinderState, JobState, StepState, TorqueAttempt } from './state.ts';
import { lastTight, torqueStep } from './torque-step.ts';

/** A job's state before its first event. */
type Before = JobState | null;

/**
 * The state after one more event. Pure: the same events give the same state, on the bench, after a restart, and years
 * later from a record. Throws when the first event is not `job-opened`, which only a bug or a forged record can bring.
 */
export function fold(before: Before, event: JobEvent): JobState {
  if (event.type === 'job-opened') return retarget(opened(event));
  if (before === null) throw new Error(`a job starts with job-opened, not ${event.type}`);
  return retarget(next(before, event));
}

/** Folds a whole job; null for no events. */
export function foldAll(events: Iterable<JobEvent>): JobState | null {
  let state: Before = null;
  for (const event of events) state = fold(state, event);
  return state;
}

function opened(event: JobEventOf<'job-opened'>): JobState {
  return {
    order: event.order,
    technician: event.order.technician,
    instruments: event.instruments,
    torqueWindow: event.torqueWindow,
    gapWindow: event.gapWindow,
    basis: event.basis,
    rules: event.rules,
    session: 0,
    simulated: false,
    cylinders: event.order.engine.serviceOrder.map((cylinder) => ({
      cylinder,
      gap: firstGapState(event.order),
      torque: 'todo',
      gaps: [],
      pulls: [],
    })),
    plugs: {},
    gapTarget: null,
    torqueTarget: null,
    chosen: { torque: null, length: null },
    refitting: null,
    lastTight: null,
    tools: Object.fromEntries(
      event.instruments.map(({ id }) => [id, { tool: id, link: 'seeking' as const }]),
    ),
    strays: [],
    pullCount: 0,
    lastPull: null,
    lastVerdict: null,
    questions: [],
    closed: null,
    voided: null,
  };
}

function next(state: JobState, event: Exclude<JobEvent, { type: 'job-opened' }>): JobState {
  switch (event.type) {
    case 'session-started':
      return {
        ...state,
        session: event.session,
        simulated: state.simulated || event.simulated,
        tools: unlinked(state),
      };
    case 'tool-linked':
      return withTool(state, event.tool, {
        tool: event.tool,
        link: 'linked',
        description: event.description,
      });
    case 'uncertainty-declared':
      return uncertaintyDeclared(state, event);
    case 'tool-lost':
      return withTool(state, event.tool, { tool: event.tool, link: 'lost', reason: event.reason });
    case 'gap-measured':
      return gapMeasured(state, event);
    case 'gap-seen':
      return gapSeen(state, event);
    case 'plug-scrapped':
      return plugScrapped(state, event.cylinder);
    case 'pull-found': {
      const { type: _type, ...pull } = event;
      return { ...state, pullCount: pull.pull, lastPull: pull };
    }
    case 'pull-placed':
      return pullPlaced(state, event);
    case 'cylinder-chosen':
      return { ...state, chosen: { ...state.chosen, [event.quantity]: event.cylinder } };
    case 'pull-given':
      return withGiven(state, event.pull);
    case 'cylinder-restarted':
      return restarted(state, event);
    case 'question-answered':
      return questionAnswered(state, event);
    case 'job-closed':
      return { ...state, closed: { complete: event.complete, open: event.open } };
    case 'job-handed-over':
      return { ...state, technician: event.to };
    case 'job-voided':
      return voided(state, event);
    case 'instrument-overridden': // stands on the record
    case 'wire-tried': // the gap that it tells follows
    case 'cylinder-left-out': // what the rules make of it follows
    case 'readings':
    case 'readings-missed':
    case 'value-stored':
    case 'device-refused':
    case 'value-not-known':
    case 'raw-value':
      return state;
  }
}

function voided(state: JobState, { by, reason }: JobEventOf<'job-voided'>): JobState {
  return {
    ...state,
    voided: { by, reason },
    closed: { complete: false, open: [`declared void by ${by}: ${reason}`] },
  };
}

function unlinked(state: JobState): JobState['tools'] {
  return Object.fromEntries(state.instruments.map(({ id }) => [id, { tool: id, link: 'seeking' as const }]));
}

function withTool(state: JobState, tool: string, value: JobState['tools'][string]): JobState {
  return { ...state, tools: { ...state.tools, [tool]: value } };
}

function gapMeasured(state: JobState, event: JobEventOf<'gap-measured'>): JobState {
  const { cylinder, judgement, reading, tool } = event;
  const measured = withCylinder(state, cylinder, (was) => ({
    ...was,
    gaps: [...was.gaps, { reading, tool, judgement }],
  }));
  const c = measured.cylinders.find((one) => one.cylinder === cylinder);
  const step = c === undefined ? null : gapStepOf(measured, c);
  const gap: StepState = step?.do === 'fit' ? 'done' : 'again';
  return {
    ...withGapStep(
      withCylinder(measured, cylinder, (was) => ({ ...was, gap })),
      cylinder,
      step,
    ),
    lastVerdict: { quantity: 'length', cylinder, judgement },
    chosen: gap === 'done' ? { ...state.chosen, length: null } : state.chosen,
  };
}

function gapSeen(state: JobState, { cylinder, sound }: JobEventOf<'gap-seen'>): JobState {
  const step = sound
    ? ({ do: 'fit', because: 'it looks sound' } as const)
    : ({ do: 'replace', because: 'it does not look sound' } as const);
  const seen = withCylinder(state, cylinder, (was) => ({ ...was, gap: sound ? 'done' : 'again' }));
  return { ...withGapStep(seen, cylinder, step), chosen: { ...state.chosen, length: null } };
}

/** Another plug for a cylinder: one that was tightened comes out first. */
function plugScrapped(state: JobState, cylinder: number): JobState {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  const fitted = c !== undefined && c.pulls.length > 0;
  return fitted ? restarted(state, { cylinder, newPlug: true }) : withNewPlug(state, cylinder);
}

function questionAnswered(state: JobState, event: JobEventOf<'question-answered'>): JobState {
  const about = state.questions.find(({ pull }) => pull === event.pull);
  const after = retighten(answered(state, event.pull, event.answer));
  return event.answer === 'replace' && about !== undefined ? withNewPlug(after, about.cylinder) : after;
}

/** The device may be off by more than it was listed with: judged by that from here on. */
function uncertaintyDeclared(state: JobState, event: JobEventOf<'uncertainty-declared'>): JobState {
  const { tool, permissibleDeviation, window, firstWindow } = event;
  const basis = 'published by the device itself';
  return {
    ...state,
    instruments: state.instruments.map((one) =>
      one.id === tool ? { ...one, permissibleDeviation, basis } : one,
    ),
    ...(window.unit === 'mm' ? { gapWindow: window } : { torqueWindow: window }),
    ...(firstWindow === null ? {} : { basis: { ...state.basis, firstTorqueWindow: firstWindow } }),
  };
}

function pullPlaced(state: JobState, event: JobEventOf<'pull-placed'>): JobState {
  const pull = state.lastPull?.pull === event.pull ? state.lastPull : findPull(state, event.pull);
  if (pull === null) throw new Error(`pull ${event.pull} was placed but never found`);
  const { cylinder, kind, because, judgement, ask, evidence } = event;
  const earlier = findAttempt(state, event.pull);
  const attempt: TorqueAttempt = {
    pull,
    kind,
    because,
    judgement,
    ...(ask === undefined ? {} : { ask }),
    ...(evidence === undefined ? {} : { evidence }),
    ...(earlier?.given === true ? { given: true } : {}),
    answer: earlier?.answer ?? null,
  };
  const cleared = withoutAttempt(state, event.pull);
  if (cylinder === null) return retighten({ ...cleared, strays: [...cleared.strays, attempt] });
  const question = questionFor(attempt, cylinder, state.order.engine);
  const placed = retighten({
    ...withCylinder(cleared, cylinder, (was) => ({ ...was, pulls: inOrder([...was.pulls, attempt]) })),
    questions: question === null ? cleared.questions : [...cleared.questions, question],
  });
  const tightened = judgement !== null && judgement.side !== 'low' && kind !== 'check';
  const isDone = placed.cylinders.some((c) => c.cylinder === cylinder && c.torque === 'done');
  return {
    ...placed,
    refitting: tightened && placed.refitting === cylinder ? null : placed.refitting,
    lastVerdict: verdictAfter(placed, cylinder, judgement),
    chosen: isDone ? { ...placed.chosen, torque: null } : placed.chosen,
  };
}

/** Notes that a person placed this pull; what the rules make of it follows. */
function withGiven(state: JobState, pull: number): JobState {
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
function retighten(state: JobState): JobState {
  const cylinders = state.cylinders.map((c) => ({ ...c, torque: torqueStep(c, state) }));
  return { ...state, cylinders, lastTight: lastTight({ ...state, cylinders }) };
}

/** A plug is backed off to start again: what it had proven counts no more, and it is due at once. */
function restarted(
  state: JobState,
  { cylinder, newPlug }: Pick<JobEventOf<'cylinder-restarted'>, 'cylinder' | 'newPlug'>,
): JobState {
  const back = withCylinder(newPlug ? withNewPlug(state, cylinder) : state, cylinder, (was) => ({
    ...was,
    restartedAfter: state.pullCount,
  }));
  return {
    ...retighten(back),
    refitting: cylinder,
    chosen: { ...state.chosen, torque: cylinder },
  };
}

/** The verdict in large letters. One of another cylinder goes away, lest it be taken for this one's. */
function verdictAfter(
  state: JobState,
  cylinder: number,
  judgement: Judgement | null,
): JobState['lastVerdict'] {
  if (judgement !== null) return { quantity: 'torque', cylinder, judgement };
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

function withCylinder(
  state: JobState,
  cylinder: number,
  change: (was: CylinderState) => CylinderState,
): JobState {
  return { ...state, cylinders: state.cylinders.map((c) => (c.cylinder === cylinder ? change(c) : c)) };
}

/** The cylinder that is due: the one a person chose, while it is open, else the first open one in service order. */
function retarget(state: JobState): JobState {
  const due = (step: 'gap' | 'torque', chosen: number | null) => {
    const open = state.cylinders.filter((c) => c[step] !== 'done');
    return (open.find((c) => c.cylinder === chosen) ?? open[0])?.cylinder ?? null;
  };
  return {
    ...state,
    gapTarget: due('gap', state.chosen.length),
    torqueTarget: due('torque', state.chosen.torque),
  };
}
