import { type FigureSource, sourcesOf } from '../reading.ts';
import { commandOf } from './command-event.ts';
import { earlyFor, isFitted, undoneAt, withBootsOff, withStepsDone } from './early.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import { answered } from './fold-answer.ts';
import { foldChecklist, isChecklistEvent, oldPlugDue } from './fold-checklist.ts';
import { pullPlaced, retighten, withCylinder, withGiven } from './fold-pulls.ts';
import { firstGapState, gapStepOf, withGapStep, withNewPlug } from './plugs.ts';
import { type GapAttempt, isOver, type JobState, type Settlement, type StepState } from './state.ts';
import { beforeAnswer, takenBack, withScrappedForGood, withStatement } from './statements.ts';
import { firstInUse, windowsIn, withToolInUse } from './tool-in-use.ts';

/** A job's state before its first event. */
type Before = JobState | null;

/**
 * The state after one more event. Pure: the same events give the same state, on the bench, after a restart, and years
 * later from a record. Throws when the first event is not `job-opened`, which only a bug or a forged record can bring.
 */
export function fold(before: Before, event: JobEvent): JobState {
  if (event.type === 'job-opened') return retarget(withStepsDone(opened(event)));
  if (before === null) throw new Error(`a job starts with job-opened, not ${event.type}`);
  const after = next(withInHand(isNews(event) ? withoutLast(before, event) : before, event), event);
  return after === before ? before : retarget(withStepsDone(withStatement(before, after, event)));
}

/** Something that a person did, or a tool measured: what was told of the thing before is over. */
const isNews = (event: JobEvent): boolean =>
  event.type === 'gap-measured' ||
  event.type === 'old-gap-measured' ||
  event.type === 'pull-detected' ||
  commandOf(event) !== null;

/** What was told of the thing before is over, and an answer that work went on from is not taken back any more. */
function withoutLast(before: JobState, event: JobEvent): JobState {
  const isTakingBack = event.type === 'taken-back';
  const answer = event.type === 'question-answered' ? beforeAnswer(before) : null;
  return { ...before, tooEarly: null, beforeAnswer: isTakingBack ? before.beforeAnswer : answer };
}

/** With the tool that the event shows in somebody's hand. */
function withInHand(state: JobState, event: JobEvent): JobState {
  switch (event.type) {
    case 'gap-measured':
    case 'gap-out-of-turn':
    case 'old-gap-measured':
    case 'pull-detected':
    case 'tool-in-use':
      return state.inHand === event.tool ? state : { ...state, inHand: event.tool };
    default:
      return state;
  }
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
    windows: windowsIn(event),
    inUse: firstInUse(event),
    inHand: null,
    toolsOf: Object.fromEntries((event.toolsOf ?? []).map(({ tool, technician }) => [tool, technician])),
    basis: event.basis,
    rules: event.rules,
    session: 0,
    routine: event.routine ?? null,
    windowsConfirmed: false,
    trialSkipped: false,
    attested: {},
    oldPlugs: {},
    newPlugs: {},
    oldPlugTarget: null,
    sources: [],
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
    chosen: { torque: null, length: null, 'old-plug': null },
    refitting: null,
    lastTight: null,
    stopped: {},
    tools: Object.fromEntries(
      event.instruments.map(({ id }) => [id, { tool: id, link: 'seeking' as const }]),
    ),
    strays: [],
    pullCount: 0,
    lastPull: null,
    lastVerdict: null,
    tooEarly: null,
    doneAfter: {},
    keptGap: null,
    statements: [],
    beforeAnswer: null,
    outOfOrder: [],
    questions: [],
    closed: null,
    voided: null,
  };
}

function next(state: JobState, event: Exclude<JobEvent, { type: 'job-opened' }>): JobState {
  if (isChecklistEvent(event)) return foldChecklist(state, event);
  switch (event.type) {
    case 'session-started':
      return {
        ...state,
        session: event.session,
        tools: unlinked(state),
      };
    case 'tool-linked':
      return withTool(withSource(state, event.source), event.tool, {
        tool: event.tool,
        link: 'linked',
        description: event.description,
        driver: event.driver,
        source: event.source,
        ...(state.stopped[event.tool] === event.driver && { stopped: true }),
      });
    case 'tool-in-use': {
      const technician = state.toolsOf[event.tool] ?? state.technician;
      return { ...withToolInUse(state, event.tool), technician };
    }
    case 'technician-at-work':
      return { ...state, technician: event.person };
    case 'uncertainty-declared':
      return uncertaintyDeclared(state, event);
    case 'tool-lost': {
      const { type: _type, tool, ...end } = event;
      return withTool(state, tool, { tool, link: 'lost', end });
    }
    case 'profile-contradicted':
      return contradicted(state, event.tool);
    case 'gap-measured':
      return gapMeasured(state, event);
    case 'gap-out-of-turn':
      return outOfTurn(state, event);
    case 'taken-back':
      return takenBack(state, event);
    case 'gap-kept': {
      const { step, cylinder } = event;
      return {
        ...state,
        keptGap: event,
        outOfOrder: [...state.outOfOrder, { step, what: 'gap', cylinder }],
      };
    }
    case 'gap-inspected':
      return gapInspected(state, event);
    case 'plug-scrapped':
      return plugScrapped(state, event.cylinder);
    case 'pull-detected': {
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
      return restarted(withScrappedForGood(state, event.cylinder), event);
    case 'question-answered':
      return questionAnswered(state, event);
    case 'pull-accepted':
      return accepted(state, event);
    case 'fitted-by-angle': {
      const { cylinder, turn, why } = event;
      return settled(byAngle(state, cylinder), cylinder, { kind: 'by-angle', turn, why });
    }
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
    case 'tool-silent':
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
    closed: { complete: false, open: [{ kind: 'declared-void' }] },
  };
}

/** With this driver, for the rest of the job. */
function contradicted(state: JobState, tool: string): JobState {
  const was = state.tools[tool];
  if (was?.driver === undefined) throw new Error(`the profile of ${tool} was contradicted before its link`);
  const stopped = { ...state.stopped, [tool]: was.driver };
  return { ...withTool(state, tool, { ...was, stopped: true }), stopped };
}

/** Figures of one more source. */
function withSource(state: JobState, source: FigureSource): JobState {
  return { ...state, sources: sourcesOf([...state.sources, source]) };
}

function unlinked(state: JobState): JobState['tools'] {
  return Object.fromEntries(state.instruments.map(({ id }) => [id, { tool: id, link: 'seeking' as const }]));
}

function withTool(state: JobState, tool: string, value: JobState['tools'][string]): JobState {
  return { ...state, tools: { ...state.tools, [tool]: value } };
}

function gapMeasured(state: JobState, event: JobEventOf<'gap-measured'>): JobState {
  const { cylinder, judgement, reading, tool, source } = event;
  const { technician } = state;
  const measured = withCylinder(withSource(state, source), cylinder, (was) => ({
    ...was,
    gaps: [...was.gaps, { reading, tool, source, technician, judgement, ...keptBy(state) }],
  }));
  const c = measured.cylinders.find((one) => one.cylinder === cylinder);
  const step = c === undefined ? null : gapStepOf(measured, c);
  const gap: StepState = step?.do !== 'fit' ? 'again' : state.keptGap === null ? 'done' : 'settled';
  return {
    ...withGapStep(
      withCylinder(measured, cylinder, (was) => ({ ...was, gap })),
      cylinder,
      step,
    ),
    lastVerdict: { quantity: 'length', cylinder, judgement },
    keptGap: null,
    chosen: isOver(gap) ? { ...state.chosen, length: null } : state.chosen,
  };
}

/** Whoever answers for a gap that came too early. */
const keptBy = ({ keptGap }: JobState): Pick<GapAttempt, 'kept'> =>
  keptGap === null ? {} : { kept: { by: keptGap.by, reason: keptGap.reason } };

/** It is the figure of no plug, and hides no verdict of one. */
function outOfTurn(state: JobState, event: JobEventOf<'gap-out-of-turn'>): JobState {
  const { type: _type, ...held } = event;
  return { ...withSource(state, held.source), tooEarly: { what: 'gap', ...held }, lastVerdict: null };
}

/** A plug that is turned by an angle goes in as well. */
function byAngle(state: JobState, cylinder: number): JobState {
  const next = state.pullCount + 1;
  const asPull = { pull: { pull: next }, kind: 'tightening' } as const;
  const early = earlyFor(state, cylinder, asPull, undoneAt(state, next));
  const said = early.map((step) => ({ step, what: 'by-angle', cylinder }) as const);
  return withBootsOff({ ...state, outOfOrder: [...state.outOfOrder, ...said] });
}

function gapInspected(state: JobState, { cylinder, sound }: JobEventOf<'gap-inspected'>): JobState {
  const step = sound ? ({ do: 'fit' } as const) : ({ do: 'replace', because: 'not-sound' } as const);
  const seen = withCylinder(state, cylinder, (was) => ({ ...was, gap: sound ? 'done' : 'again' }));
  return { ...withGapStep(seen, cylinder, step), chosen: { ...state.chosen, length: null } };
}

/** Another plug for a cylinder: one that was tightened comes out first. */
function plugScrapped(state: JobState, cylinder: number): JobState {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  const fitted = c !== undefined && (c.pulls.length > 0 || c.settlement !== undefined);
  return fitted ? restarted(state, { cylinder, newPlug: true }) : withNewPlug(state, cylinder);
}

function questionAnswered(state: JobState, event: JobEventOf<'question-answered'>): JobState {
  const about = state.questions.find(({ pull }) => pull === event.pull);
  const comesOut = event.answer === 'refit' || event.answer === 'replace';
  const before = comesOut && about !== undefined ? unsettled(state, about.cylinder) : state;
  const after = retighten(answered(before, event.pull, event.answer));
  return event.answer === 'replace' && about !== undefined ? withNewPlug(after, about.cylinder) : after;
}

/** Somebody answers for a pull over the window: it stays, and nobody is asked about it any more. */
function accepted(state: JobState, { pull, cylinder, by, reason }: JobEventOf<'pull-accepted'>): JobState {
  const questions = state.questions.filter((open) => open.pull !== pull);
  return settled({ ...state, questions }, cylinder, { kind: 'accepted', pull, by, reason });
}

/** A cylinder is left as it is: not proven, and not due any more. */
function settled(state: JobState, cylinder: number, settlement: Settlement): JobState {
  const after = retighten(withCylinder(state, cylinder, (was) => ({ ...was, settlement })));
  return {
    ...after,
    refitting: after.refitting === cylinder ? null : after.refitting,
    chosen: { ...after.chosen, torque: null },
  };
}

/** Another plug, or the same one anew: whoever answered for how it stood answers for it no more. */
const unsettled = (state: JobState, cylinder: number): JobState =>
  withCylinder(state, cylinder, ({ settlement: _gone, ...was }) => was);

/** The device may be off by more than it was listed with: judged by that from here on. */
function uncertaintyDeclared(state: JobState, event: JobEventOf<'uncertainty-declared'>): JobState {
  const { tool, permissibleDeviation, window, firstWindow } = event;
  const windows = { ...state.windows, [tool]: { window, firstWindow } };
  const instruments = state.instruments.map((one) =>
    one.id === tool ? { ...one, permissibleDeviation, promiseOfDevice: true as const } : one,
  );
  const quantity = window.unit === 'mm' ? 'length' : 'torque';
  // What was confirmed were other windows.
  const known = { ...state, windows, instruments, windowsConfirmed: false };
  return state.inUse[quantity] === tool ? withToolInUse(known, tool) : known;
}

/** A plug is backed off to start again: what it had proven counts no more, and it is due at once. */
function restarted(
  state: JobState,
  { cylinder, newPlug }: Pick<JobEventOf<'cylinder-restarted'>, 'cylinder' | 'newPlug'>,
): JobState {
  const back = withCylinder(
    withBootsOff(unsettled(newPlug ? withNewPlug(state, cylinder) : state, cylinder)),
    cylinder,
    (was) => ({ ...was, restartedAfter: state.pullCount }),
  );
  return {
    ...retighten(back),
    refitting: cylinder,
    chosen: { ...state.chosen, torque: cylinder },
  };
}

/** The cylinder that is due: the one a person chose, while it is open, else the first open one in service order. */
function retarget(state: JobState): JobState {
  const due = (step: 'gap' | 'torque', chosen: number | null) => {
    const open = state.cylinders.filter((c) => !isOver(c[step]) && (step === 'torque' || !isFitted(c)));
    return (open.find((c) => c.cylinder === chosen) ?? open[0])?.cylinder ?? null;
  };
  return {
    ...state,
    gapTarget: due('gap', state.chosen.length),
    torqueTarget: due('torque', state.chosen.torque),
    oldPlugTarget: oldPlugDue(state),
  };
}
