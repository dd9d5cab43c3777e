import { expandedUncertainty } from '../instrument/uncertainty.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import { judge } from '../metrology/window.ts';
import { createPullDetector, detectorSettings, type PullDetector } from '../pull/detector.ts';
import type { FoundPull, Pull } from '../pull/pull.ts';
import { encodeSamples } from '../pull/trace.ts';
import { type LinkState, type Reading, scaled, type ToolDescription, type ToolId } from '../reading.ts';
import { err, ok, type Result } from '../result.ts';
import type { PullKind } from '../sequence/kind.ts';
import { type Placement, place } from '../sequence/place.ts';
import { openItems } from './closing.ts';
import type { Command } from './command.ts';
import type { Answer, JobEvent } from './event.ts';
import { fold } from './fold.ts';
import type { JobState, TorqueAttempt } from './state.ts';

/** Names the rules below and those they call; a record names it, so that judging again uses the same. */
export const RULES = 'plugmark/rules/1';

/** How long samples may wait in memory: while a pull is under way, and at rest. */
const KEEP_PULLING_US = 100_000;
const KEEP_RESTING_US = 1_000_000;

/** What comes to the bench from outside: the tools, and people. */
export type BenchInput =
  | {
      readonly kind: 'session';
      readonly program: string;
      readonly platform: string;
      readonly simulated: boolean;
    }
  | { readonly kind: 'link'; readonly tool: ToolId; readonly driver: string; readonly link: LinkState }
  | { readonly kind: 'reading'; readonly tool: ToolId; readonly reading: Reading }
  | { readonly kind: 'command'; readonly command: Command }
  /** Nothing came, but time went on; also sent before the program ends. */
  | { readonly kind: 'flush' };

interface Feed {
  readonly exponent: number;
  readonly quantity: 'torque' | 'length';
  readonly detector: PullDetector;
  first: number;
  atUs: number[];
  counts: number[];
}

export interface Bench {
  /** The events that the input leads to, in order; `state` has already taken them in. Refused commands say why. */
  accept(input: BenchInput): Result<readonly JobEvent[]>;
  readonly state: () => JobState;
  /** The torque wrench as it is now; null until one is linked. */
  readonly live: () => ReturnType<PullDetector['live']> | null;
}

/**
 * One job on the bench: readings, links and commands in, events out. It keeps samples until they are worth writing,
 * finds pulls, gives them to cylinders and judges them. Deterministic: the same inputs give the same events.
 */
export function createBench(opened: JobState): Bench {
  let state = opened;
  const feeds = new Map<ToolId, Feed>();

  const emit = (out: JobEvent[], event: JobEvent) => {
    out.push(event);
    state = fold(state, event);
  };

  const flush = (out: JobEvent[], tool: ToolId, feed: Feed) => {
    if (feed.atUs.length === 0) return;
    const coded = encodeSamples(feed);
    emit(out, { type: 'readings', tool, first: feed.first, exponent: feed.exponent, ...coded });
    feed.atUs = [];
    feed.counts = [];
  };

  const pulling = () => [...feeds.values()].some((feed) => feed.detector.live().pulling);

  const flushAll = (out: JobEvent[]) => {
    for (const [tool, feed] of feeds) flush(out, tool, feed);
  };

  /** No more samples come from this tool: a pull under way will never be whole. */
  const cut = (out: JobEvent[], tool: ToolId, feed: Feed | undefined, reason: 'link-lost' | 'stopped') => {
    const found = feed?.detector.cut(reason) ?? null;
    if (found !== null) pullFound(out, tool, found);
  };

  // What the bench makes of an input always stands behind it in the log: replay relies on that order.
  const session = (out: JobEvent[], { program, platform, simulated }: BenchInput & { kind: 'session' }) => {
    const before = [...feeds];
    feeds.clear();
    emit(out, { type: 'session-started', session: state.session + 1, program, platform, simulated });
    for (const [tool, feed] of before) cut(out, tool, feed, 'stopped');
  };

  const pullFound = (out: JobEvent[], tool: ToolId, found: FoundPull) => {
    const pull: Pull = { ...found, pull: state.pullCount + 1, tool };
    emit(out, { type: 'pull-found', ...pull });
    placed(out, pull, place(pull, situation(state)));
  };

  const placed = (out: JobEvent[], pull: Pull, { cylinder, kind, because }: Placement) => {
    const judgement = judgedPull(state, pull, kind);
    emit(out, { type: 'pull-placed', pull: pull.pull, cylinder, kind, because, judgement });
  };

  const reading = (out: JobEvent[], tool: ToolId, value: Reading) => {
    const feed = feeds.get(tool);
    if (feed === undefined) throw new Error(`a reading of ${tool} came before its link`);
    if (value.kind !== 'value') {
      flush(out, tool, feed);
      emit(out, notAValue(tool, value));
      return;
    }
    if (feed.atUs.length === 0) feed.first = value.n;
    feed.atUs.push(value.atUs);
    feed.counts.push(value.counts);
    if (feed.quantity === 'length') return gap(out, tool, feed, value);
    const found = feed.detector.push(value.atUs, scaled(value.counts, feed.exponent));
    const waitedUs = value.atUs - (feed.atUs[0] ?? value.atUs);
    const keepUs = feed.detector.live().pulling ? KEEP_PULLING_US : KEEP_RESTING_US;
    if (found !== null || waitedUs >= keepUs) flush(out, tool, feed);
    if (found !== null) pullFound(out, tool, found);
  };

  const gap = (out: JobEvent[], tool: ToolId, feed: Feed, value: Reading & { kind: 'value' }) => {
    flush(out, tool, feed);
    if (state.gapTarget === null) return;
    const gapMm = scaled(value.counts, feed.exponent + 3);
    const judgement = judged(state, tool, gapMm, state.gapWindow);
    emit(out, {
      type: 'gap-measured',
      tool,
      reading: value.n,
      atUs: value.atUs,
      cylinder: state.gapTarget,
      judgement,
    });
  };

  const link = (out: JobEvent[], tool: ToolId, driver: string, to: LinkState) => {
    if (to.state !== 'linked' && to.state !== 'lost') return;
    const before = feeds.get(tool);
    // A device that was sought and could not be joined has not been lost.
    if (to.state === 'lost' && before === undefined) return;
    flushAll(out);
    feeds.delete(tool);
    if (to.state === 'linked') {
      feeds.set(tool, newFeed(to.description, state.torqueWindow));
      emit(out, { type: 'tool-linked', tool, driver, description: to.description });
    } else {
      emit(out, { type: 'tool-lost', tool, reason: to.reason });
    }
    cut(out, tool, before, 'link-lost');
  };

  const command = (out: JobEvent[], given: Command): Result<readonly JobEvent[]> => {
    const refusal = refused(state, given, pulling());
    if (refusal !== null)
      return err({ code: 'command-refused', message: refusal, next: 'Look at the screen and choose again.' });
    flushAll(out);
    switch (given.do) {
      case 'choose-cylinder':
        emit(out, { type: 'cylinder-chosen', quantity: given.quantity, cylinder: given.cylinder });
        break;
      case 'answer':
        answer(out, given.pull, given.answer);
        break;
      case 'close': {
        const open = openItems(state);
        emit(out, { type: 'job-closed', complete: open.length === 0, open });
      }
    }
    return ok(out);
  };

  const answer = (out: JobEvent[], number: number, given: Answer) => {
    const question = state.questions.find((open) => open.pull === number);
    const attempt = attemptOf(state, number);
    if (question === undefined || attempt === undefined) return;
    emit(out, { type: 'question-answered', pull: number, answer: given });
    const because = `said by the technician (${given})`;
    if (given === 'fresh')
      placed(out, attempt.pull, { cylinder: question.cylinder, kind: 'tightening', because });
    if (given === 'rehit')
      placed(out, attempt.pull, { cylinder: state.lastTight ?? question.cylinder, kind: 'rehit', because });
    if (given === 'handling') placed(out, attempt.pull, { cylinder: null, kind: 'handling', because });
    if ((given === 'refit' || given === 'replace') && question.kind === 'loosened')
      placed(out, attempt.pull, { cylinder: question.cylinder, kind: 'loosening', because });
  };

  return {
    accept(input) {
      const out: JobEvent[] = [];
      switch (input.kind) {
        case 'session':
          session(out, input);
          break;
        case 'link':
          link(out, input.tool, input.driver, input.link);
          break;
        case 'reading':
          reading(out, input.tool, input.reading);
          break;
        case 'command':
          return command(out, input.command);
        case 'flush':
          flushAll(out);
      }
      return ok(out);
    },
    state: () => state,
    live: () => [...feeds.values()].find((feed) => feed.quantity === 'torque')?.detector.live() ?? null,
  };
}

function newFeed({ exponent, quantity }: ToolDescription, window: Window): Feed {
  const detector = createPullDetector(detectorSettings(window.lowerLimit));
  return { exponent, quantity, detector, first: 0, atUs: [], counts: [] };
}

function notAValue(tool: ToolId, reading: Exclude<Reading, { kind: 'value' }>): JobEvent {
  switch (reading.kind) {
    case 'not-known':
      return { type: 'value-not-known', tool, reading: reading.n, atUs: reading.atUs };
    case 'raw':
      return { type: 'raw-value', tool, atUs: reading.atUs, source: reading.source, hex: reading.hex };
    case 'missed':
      return {
        type: 'readings-missed',
        tool,
        fromUs: reading.fromUs,
        toUs: reading.atUs,
        reason: reading.reason,
      };
  }
}

const situation = (state: JobState) => ({
  target: state.torqueTarget,
  targetStarted: started(state),
  refitting: refitting(state),
  lastTight: state.lastTight,
  asking: state.questions.length > 0,
  clicks: state.instruments.some(({ type }) => type === 'setting'),
  lowerNm: state.torqueWindow.lowerLimit,
  upperNm: state.torqueWindow.upperLimit,
});

/** How the last pull on the cylinder that is due ended. */
function started({ cylinders, torqueTarget }: JobState): 'run-down' | 'short' | null {
  const last = cylinders.find(({ cylinder }) => cylinder === torqueTarget)?.pulls.at(-1);
  if (last === undefined || last.answer === 'refit' || last.answer === 'replace') return null;
  if (last.kind === 'run-down') return 'run-down';
  return last.judgement?.side === 'low' ? 'short' : null;
}

/** The cylinder whose plug is to come out: as answered, or as the question that is open asks for. */
function refitting(state: JobState): number | null {
  const asked = state.questions.find(({ kind }) => kind === 'over-window' || kind === 'cut');
  return state.refitting ?? asked?.cylinder ?? null;
}

function judgedPull(state: JobState, pull: Pull, kind: PullKind): Judgement | null {
  if (kind !== 'tightening' && kind !== 'continuation' && kind !== 'rehit') return null;
  const judgement = judged(state, pull.tool, pull.peakNm, state.torqueWindow);
  return kind === 'rehit' && judgement.side !== 'high' ? null : judgement;
}

function judged(state: JobState, tool: ToolId, value: number, window: Window): Judgement {
  const instrument = state.instruments.find(({ id }) => id === tool);
  if (instrument === undefined) throw new Error(`${tool} is not an instrument of this job`);
  return judge(value, expandedUncertainty(instrument, value), window);
}

function attemptOf(state: JobState, pull: number): TorqueAttempt | undefined {
  return [...state.cylinders.flatMap((c) => c.pulls), ...state.strays].find(
    (attempt) => attempt.pull.pull === pull,
  );
}

function refused(state: JobState, command: Command, pulling: boolean): string | null {
  if (state.closed !== null) return 'The job is closed.';
  if (command.do === 'close' && pulling) return 'A pull is under way.';
  if (command.do === 'choose-cylinder' && command.quantity === 'torque' && pulling)
    return 'A pull is under way and belongs to the cylinder that was due.';
  if (command.do === 'choose-cylinder')
    return state.cylinders.some((c) => c.cylinder === command.cylinder)
      ? null
      : `This engine has no cylinder ${command.cylinder}.`;
  if (command.do === 'answer') {
    const question = state.questions.find((open) => open.pull === command.pull);
    if (question === undefined) return `No question is open about pull ${command.pull}.`;
    return question.answers.includes(command.answer)
      ? null
      : `"${command.answer}" does not answer this question.`;
  }
  return null;
}
