import type { Judgement } from '../metrology/judgement.ts';
import { answered } from './answered.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import type { CylinderState, JobState, Question, StepState, TorqueAttempt } from './state.ts';

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
    instruments: event.instruments,
    torqueWindow: event.torqueWindow,
    gapWindow: event.gapWindow,
    rules: event.rules,
    session: 0,
    simulated: false,
    cylinders: event.order.engine.serviceOrder.map((cylinder) => ({
      cylinder,
      gap: 'todo',
      torque: 'todo',
      gaps: [],
      pulls: [],
    })),
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
    case 'tool-lost':
      return withTool(state, event.tool, { tool: event.tool, link: 'lost', reason: event.reason });
    case 'gap-measured':
      return gapMeasured(state, event);
    case 'pull-found': {
      const { type: _type, ...pull } = event;
      return { ...state, pullCount: pull.pull, lastPull: pull };
    }
    case 'pull-placed':
      return pullPlaced(state, event);
    case 'cylinder-chosen':
      return { ...state, chosen: { ...state.chosen, [event.quantity]: event.cylinder } };
    case 'question-answered':
      return answered(state, event.pull, event.answer);
    case 'job-closed':
      return { ...state, closed: { complete: event.complete, open: event.open } };
    case 'readings':
    case 'readings-missed':
    case 'value-not-known':
    case 'raw-value':
      return state;
  }
}

function unlinked(state: JobState): JobState['tools'] {
  return Object.fromEntries(state.instruments.map(({ id }) => [id, { tool: id, link: 'seeking' as const }]));
}

function withTool(state: JobState, tool: string, value: JobState['tools'][string]): JobState {
  return { ...state, tools: { ...state.tools, [tool]: value } };
}

function gapMeasured(state: JobState, event: JobEventOf<'gap-measured'>): JobState {
  const { cylinder, judgement, reading, tool } = event;
  const gap: StepState = judgement.result === 'OK' ? 'done' : 'again';
  return {
    ...withCylinder(state, cylinder, (was) => ({
      ...was,
      gap,
      gaps: [...was.gaps, { reading, tool, judgement }],
    })),
    lastVerdict: { quantity: 'length', cylinder, judgement },
    chosen: gap === 'done' ? { ...state.chosen, length: null } : state.chosen,
  };
}

function pullPlaced(state: JobState, event: JobEventOf<'pull-placed'>): JobState {
  const pull = state.lastPull?.pull === event.pull ? state.lastPull : findPull(state, event.pull);
  if (pull === null) throw new Error(`pull ${event.pull} was placed but never found`);
  const earlier = findAttempt(state, event.pull);
  const attempt: TorqueAttempt = {
    pull,
    kind: event.kind,
    because: event.because,
    judgement: event.judgement,
    answer: earlier?.answer ?? null,
  };
  const cleared = withoutAttempt(state, event.pull);
  if (event.cylinder === null) return { ...cleared, strays: [...cleared.strays, attempt] };
  const torque = stepAfter(attempt, stepOf(cleared, event.cylinder));
  const placed = withCylinder(cleared, event.cylinder, (was) => ({
    ...was,
    torque,
    pulls: [...was.pulls, attempt],
  }));
  const question = questionFor(attempt, event.cylinder);
  const tight = event.judgement !== null && event.judgement.side !== 'low';
  return {
    ...placed,
    questions: question === null ? placed.questions : [...placed.questions, question],
    lastTight: tight ? event.cylinder : placed.lastTight,
    refitting: tight && placed.refitting === event.cylinder ? null : placed.refitting,
    lastVerdict: verdictAfter(placed, event.cylinder, event.judgement),
    chosen: torque === 'done' ? { ...placed.chosen, torque: null } : placed.chosen,
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

/** What a pull does to the cylinder that it was given to. Only an OK tightening ever makes it `done`. */
function stepAfter(attempt: TorqueAttempt, was: StepState): StepState {
  if (attempt.kind === 'unsure') return 'ask';
  if (attempt.kind === 'loosening') return 'again';
  const judgement = attempt.judgement;
  if (judgement === null) return was;
  if (judgement.side === 'high') return 'ask';
  if (attempt.kind === 'rehit') return was;
  return judgement.result === 'OK' ? 'done' : 'again';
}

function questionFor(attempt: TorqueAttempt, cylinder: number): Question | null {
  const { pull, kind, judgement } = attempt;
  if (kind === 'unsure' && pull.peakNm < 0)
    return {
      pull: pull.pull,
      cylinder,
      kind: 'loosened',
      text: `A plug was loosened (${attempt.because}). Was it cylinder ${cylinder}?`,
      answers: ['refit', 'replace', 'handling'],
    };
  if (kind === 'unsure' && pull.cut !== null)
    return {
      pull: pull.pull,
      cylinder,
      kind: 'cut',
      text: `The readings broke off in the middle of a pull on cylinder ${cylinder}. What it saw is not known.`,
      answers: ['refit', 'replace', 'handling'],
    };
  if (kind === 'unsure')
    return {
      pull: pull.pull,
      cylinder,
      kind: 'unsure',
      text: `What was this pull? (${attempt.because}.)`,
      answers: ['fresh', 'rehit', 'handling'],
    };
  if (judgement?.side === 'high')
    return {
      pull: pull.pull,
      cylinder,
      kind: 'over-window',
      text:
        judgement.result === 'NotOK'
          ? `Cylinder ${cylinder} went above the window. Back the plug out and look at its threads.`
          : `Cylinder ${cylinder} went too near the upper limit to be proven. Back the plug out and look at its threads.`,
      answers: ['refit', 'replace'],
    };
  return null;
}

const findPull = (state: JobState, pull: number) => findAttempt(state, pull)?.pull ?? null;

function findAttempt(state: JobState, pull: number): TorqueAttempt | undefined {
  return [...state.cylinders.flatMap((c) => c.pulls), ...state.strays].find(
    (attempt) => attempt.pull.pull === pull,
  );
}

/** A pull stands in one place only; where it stood before stays in the log. */
function withoutAttempt(state: JobState, pull: number): JobState {
  const others = (list: readonly TorqueAttempt[]) => list.filter((attempt) => attempt.pull.pull !== pull);
  return {
    ...state,
    cylinders: state.cylinders.map((c) => ({ ...c, pulls: others(c.pulls) })),
    strays: others(state.strays),
  };
}

const stepOf = (state: JobState, cylinder: number): StepState =>
  state.cylinders.find((c) => c.cylinder === cylinder)?.torque ?? 'todo';

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
