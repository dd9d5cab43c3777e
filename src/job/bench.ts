import type { Judgement } from '../metrology/judgement.ts';
import { gapCheckOf } from '../plug/gap.ts';
import { crowfootOf, leverage } from '../plug/geometry.ts';
import type { Problem } from '../problem.ts';
import type { FoundPull, Pull } from '../pull/pull.ts';
import type { PullDetector } from '../pull/pull-detector.ts';
import { encodeSamples } from '../pull/trace.ts';
import { type LinkState, type Reading, scaled, type ToolId } from '../reading.ts';
import { err, ok, type Result } from '../result.ts';
import { type Placement, place, SETTLED_MS, settle } from '../sequence/place.ts';
import { openItems } from './closing.ts';
import type { Command } from './command.ts';
import type { Answer, JobEvent } from './event.ts';
import { type Feed, newFeed, notAValue } from './feed.ts';
import { fold } from './fold.ts';
import { declared, judgedReading, judgedWires } from './judging.ts';
import { refused } from './refusal.ts';
import { attemptOf, grip, leftOut, situation, stoppedShort } from './situation.ts';
import { torqueWindowOf } from './stage.ts';
import type { JobState } from './state.ts';
import { torqueStep } from './torque-step.ts';
import { asWrenchReads } from './windows.ts';

/** Names the rules below and those they call; a record names it, so that judging again uses the same. */
export const RULES = 'plugmark/rules/1';

/** How long samples may wait in memory: while a pull is under way, and at rest. */
const KEEP_PULLING_US = 500_000;
const KEEP_RESTING_US = 10_000_000;
const SETTLED_US = 1000 * SETTLED_MS;

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
  /** A device looked like the tool and was not taken for it. */
  | { readonly kind: 'refusal'; readonly tool: ToolId; readonly problem: Problem }
  | { readonly kind: 'command'; readonly command: Command }
  /** Nothing came, but time went on; also sent before the program ends. */
  | { readonly kind: 'flush' };

export interface Bench {
  /** The events that the input leads to, in order; `state` has already taken them in. Refused commands say why. */
  accept(input: BenchInput): Result<readonly JobEvent[]>;
  readonly state: () => JobState;
  /** Torque as the plug sees it now, by the lever alone; null until a wrench is linked. */
  readonly live: () => ReturnType<PullDetector['live']> | null;
}

/**
 * One job on the bench: readings, links and commands in, events out. It keeps samples until they are worth writing,
 * finds pulls, gives them to cylinders and judges them. Deterministic: the same inputs give the same events.
 */
export function createBench(opened: JobState): Bench {
  let state = opened;
  const feeds = new Map<ToolId, Feed>();
  /** Pulls before this session: their times are on another clock. */
  let pullsBefore = 0;
  /** A stroke that may be on the way, or the last one. */
  let stroke: { readonly pull: number; readonly endUs: number } | null = null;

  const emit = (out: JobEvent[], made: JobEvent) => {
    const event = asLogged(made);
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
    settleStroke(out);
    pullsBefore = state.pullCount;
  };

  const pullFound = (out: JobEvent[], tool: ToolId, found: FoundPull) => {
    const pull: Pull = { ...found, pull: state.pullCount + 1, tool };
    if (stroke !== null && pull.startUs - stroke.endUs >= SETTLED_US) settleStroke(out);
    emit(out, { type: 'pull-found', ...pull });
    const at = situation(state, pullsBefore);
    const placement = place(pull, at);
    // A question goes over to the stroke that went on from the one that raised it.
    const before =
      at.last?.asked == null || placement.ask !== at.last.asked ? undefined : attemptOf(state, pull.pull - 1);
    if (before?.kind === 'unsure')
      placed(out, before.pull, {
        cylinder: before.cylinder,
        kind: 'run-down',
        because: `pull ${pull.pull} went on from it`,
      });
    placed(out, pull, placement);
    if (placement.kind === 'run-down') stroke = { pull: pull.pull, endUs: pull.endUs };
    else if (placement.kind !== 'handling') stroke = null;
  };

  /** Nothing followed the last stroke: it was not on the way to anything. */
  const settleStroke = (out: JobEvent[]) => {
    const attempt = stroke === null ? undefined : attemptOf(state, stroke.pull);
    stroke = null;
    if (attempt === undefined || attempt.cylinder === null || attempt.kind !== 'run-down') return;
    const { pull, cylinder, evidence } = attempt;
    const { lowerNm } = asWrenchReads(state, torqueWindowOf(state, cylinder));
    const at = { lowerNm, short: stoppedShort(state, cylinder, pull.pull) };
    placed(out, pull, settle(pull, cylinder, evidence, at));
  };

  const placed = (out: JobEvent[], pull: Pull, placement: Placement) => {
    const judgement = judgedPull(state, pull, placement);
    emit(out, { type: 'pull-placed', pull: pull.pull, judgement, ...placement });
  };

  /** A person said where a pull was: the strokes before it and the re-hits behind it, all at one grip, go with it. */
  const placedByHand = (out: JobEvent[], pull: Pull, placement: Placement) => {
    const with_ = grip(state, pull.pull).filter((other) => other.pull.pull !== pull.pull);
    placed(out, pull, placement);
    const because = `with pull ${pull.pull}`;
    for (const { pull: other, kind } of with_)
      placed(out, other, { cylinder: placement.cylinder, kind, because });
  };

  const reading = (out: JobEvent[], tool: ToolId, value: Reading) => {
    const feed = feeds.get(tool);
    if (feed === undefined) throw new Error(`a reading of ${tool} came before its link`);
    if (value.kind !== 'value') {
      flush(out, tool, feed);
      emit(out, notAValue(tool, value, feed.exponent));
      // What it saw in between nobody knows, so a pull under way will never be whole.
      if (value.kind === 'missed') cut(out, tool, feed, 'link-lost');
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
    if (stroke === null || feed.detector.live().pulling || value.atUs - stroke.endUs < SETTLED_US) return;
    flush(out, tool, feed);
    settleStroke(out);
  };

  const gap = (out: JobEvent[], tool: ToolId, feed: Feed, value: Reading & { kind: 'value' }) => {
    flush(out, tool, feed);
    const { gapTarget, gapWindow, order } = state;
    if (gapTarget === null || gapWindow === null || gapCheckOf(order.specification) !== 'gauge') return;
    const gapMm = scaled(value.counts, feed.exponent + 3);
    const judgement = judgedReading(state, tool, gapMm, gapWindow, null);
    emit(out, {
      type: 'gap-measured',
      tool,
      reading: value.n,
      atUs: value.atUs,
      cylinder: gapTarget,
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
      feeds.set(tool, newFeed(to.description, state));
      emit(out, { type: 'tool-linked', tool, driver, description: to.description });
      const wider = declared(state, tool, to.description);
      if (wider !== null) emit(out, wider);
    } else {
      emit(out, { type: 'tool-lost', tool, reason: to.reason });
    }
    cut(out, tool, before, 'link-lost');
    if (before?.quantity === 'torque') settleStroke(out);
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
      case 'give-pull':
        give(out, given);
        break;
      case 'left-out': {
        const { pull: number, cylinder, on, why } = given;
        emit(out, { type: 'cylinder-left-out', pull: number, cylinder, on, why });
        for (const { pull, ...placement } of leftOut(state, given)) placed(out, pull, placement);
        break;
      }
      case 'start-again':
        emit(out, {
          type: 'cylinder-restarted',
          cylinder: given.cylinder,
          newPlug: given.newPlug,
          why: given.why,
        });
        break;
      case 'gap-seen':
        emit(out, { type: 'gap-seen', cylinder: given.cylinder, sound: given.sound });
        break;
      case 'gap-wire':
        wires(out, given);
        break;
      case 'scrap-plug':
        emit(out, { type: 'plug-scrapped', cylinder: given.cylinder, reason: given.reason });
        break;
      case 'hand-over':
        emit(out, { type: 'job-handed-over', to: given.to });
        break;
      case 'void':
        emit(out, { type: 'job-voided', by: given.by, reason: given.reason });
        break;
      case 'close': {
        const open = openItems(state);
        emit(out, { type: 'job-closed', complete: open.length === 0, open });
      }
    }
    return ok(out);
  };

  const wires = (out: JobEvent[], { cylinder, outcome }: Command & { do: 'gap-wire' }) => {
    const judgement = judgedWires(state, outcome);
    const tried = state.cylinders.find((c) => c.cylinder === cylinder)?.gaps.length ?? 0;
    emit(out, { type: 'wire-tried', cylinder, outcome });
    emit(out, { type: 'gap-measured', tool: WIRES, reading: tried + 1, atUs: 0, cylinder, judgement });
  };

  const answer = (out: JobEvent[], number: number, given: Answer) => {
    const question = state.questions.find((open) => open.pull === number);
    const attempt = attemptOf(state, number);
    if (question === undefined || attempt === undefined) return;
    emit(out, { type: 'question-answered', pull: number, answer: given });
    const because = `said by the technician (${given})`;
    const { pull } = attempt;
    if (given === 'fresh') {
      const kind = stoppedShort(state, question.cylinder, number) ? 'continuation' : 'tightening';
      placedByHand(out, pull, { cylinder: question.cylinder, kind, because });
    }
    if (given === 'rehit')
      placedByHand(out, pull, { cylinder: state.lastTight ?? question.cylinder, kind: 'rehit', because });
    if (given === 'handling') placedByHand(out, pull, { cylinder: null, kind: 'handling', because });
    if (given === 'unfinished')
      placedByHand(out, pull, { cylinder: question.cylinder, kind: 'run-down', because });
    if ((given === 'refit' || given === 'replace') && question.kind === 'loosened')
      placed(out, pull, { cylinder: question.cylinder, kind: 'loosening', because });
  };

  const give = (out: JobEvent[], { pull: number, cylinder, why }: Command & { do: 'give-pull' }) => {
    const attempt = attemptOf(state, number);
    if (attempt === undefined) return;
    emit(out, { type: 'pull-given', pull: number, cylinder, why });
    const { pull } = attempt;
    const proven = state.cylinders.some(
      (c) => c.cylinder === cylinder && torqueStep(c, { ...state, questions: [] }) === 'done',
    );
    const short = stoppedShort(state, cylinder, number);
    const kind = pull.peakNm < 0 ? 'loosening' : proven ? 'check' : short ? 'continuation' : 'tightening';
    placedByHand(out, pull, { cylinder, kind, because: 'given to this cylinder by the technician' });
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
        case 'refusal':
          emit(out, {
            type: 'device-refused',
            tool: input.tool,
            address: input.problem.where ?? '',
            reason: input.problem.message,
          });
          break;
        case 'command':
          return command(out, input.command);
        case 'flush':
          flushAll(out);
      }
      return ok(out);
    },
    state: () => state,
    live: () => {
      const live = [...feeds.values()].find((feed) => feed.quantity === 'torque')?.detector.live() ?? null;
      const gain = leverage(crowfootOf(state.order.adapter));
      return live && { ...live, nowNm: gain * live.nowNm, peakNm: gain * live.peakNm };
    },
  };
}

/** Stands as the tool of a gap that was found by go/no-go wires; such a reading has a number, but no time of its own. */
const WIRES = 'wire';

/**
 * As the log gives it back: JSON knows no minus zero, and an event must be the same before it was written and after. Samples
 * are whole numbers and text, and by far the most of it.
 */
function asLogged(event: JobEvent): JobEvent {
  return event.type === 'readings' ? event : JSON.parse(JSON.stringify(event));
}

function judgedPull(state: JobState, pull: Pull, { kind, cylinder }: Placement): Judgement | null {
  if (kind === 'run-down' || kind === 'loosening' || kind === 'handling' || kind === 'unsure') return null;
  const judgement = judgedReading(
    state,
    pull.tool,
    pull.peakNm,
    torqueWindowOf(state, cylinder),
    pull.peakStandardNm,
  );
  const tries = kind === 'rehit' || kind === 'check';
  return tries && judgement.side !== 'high' ? null : judgement;
}
