import { gapCheckOf } from '../plug/gap.ts';
import { crowfootOf, leverage } from '../plug/geometry.ts';
import type { Problem } from '../problem.ts';
import type { DetectedPull, Pull } from '../pull/pull.ts';
import type { PullDetector } from '../pull/pull-detector.ts';
import { roundedPull } from '../pull/rounded.ts';
import { encodeSamples } from '../pull/trace.ts';
import { type LinkState, type Reading, scaled, type ToolId } from '../reading.ts';
import { err, ok, type Result } from '../result.ts';
import { place, SETTLED_MS, settle } from '../sequence/place.ts';
import type { Command } from './command.ts';
import { eventOf } from './command-event.ts';
import type { JobEvent } from './event.ts';
import { type Feed, newFeed, notAValue } from './feed.ts';
import { fold } from './fold.ts';
import { oldPlugAtHand } from './fold-checklist.ts';
import { follow } from './following.ts';
import { declared, judgedReading } from './judging.ts';
import { phaseOf } from './phase.ts';
import { type BenchContext, placed } from './placing.ts';
import { refused } from './refusal.ts';
import { attemptOf, situation, stoppedShort } from './situation.ts';
import { torqueWindowOf } from './stage.ts';
import type { JobState } from './state.ts';
import { asWrenchReads } from './windows.ts';

/** Names the rules below and those they call; a record names it, so that judging again uses the same. */
export const RULES = 'plugmark/rules/3';

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

  /** What the input at hand has led to so far. */
  let out: JobEvent[] = [];
  const emit = (made: JobEvent) => {
    const event = asLogged(made);
    out.push(event);
    state = fold(state, event);
  };
  const desk: BenchContext = { state: () => state, emit };

  const flush = (tool: ToolId, feed: Feed) => {
    if (feed.atUs.length === 0) return;
    const coded = encodeSamples(feed);
    emit({ type: 'readings', tool, first: feed.first, exponent: feed.exponent, ...coded });
    feed.atUs = [];
    feed.counts = [];
  };

  const pulling = () => [...feeds.values()].some((feed) => feed.detector.live().pulling);

  const flushAll = () => {
    for (const [tool, feed] of feeds) flush(tool, feed);
  };

  /** No more samples come from this tool: a pull under way will never be whole. */
  const cut = (tool: ToolId, feed: Feed | undefined, reason: 'link-lost' | 'stopped') => {
    const found = feed?.detector.cut(reason) ?? null;
    if (found !== null) pullDetected(tool, found);
  };

  // What the bench makes of an input always stands behind it in the log: replay relies on that order.
  const session = ({ program, platform, simulated }: BenchInput & { kind: 'session' }) => {
    const before = [...feeds];
    feeds.clear();
    emit({ type: 'session-started', session: state.session + 1, program, platform, simulated });
    for (const [tool, feed] of before) cut(tool, feed, 'stopped');
    settleStroke();
    pullsBefore = state.pullCount;
  };

  const pullDetected = (tool: ToolId, found: DetectedPull) => {
    const pull: Pull = { ...roundedPull(found), pull: state.pullCount + 1, tool };
    if (stroke !== null && pull.startUs - stroke.endUs >= SETTLED_US) settleStroke();
    emit({ type: 'pull-detected', ...pull });
    const at = situation(state, pullsBefore);
    const placement = place(pull, at);
    // A question goes over to the stroke that went on from the one that raised it.
    const before =
      at.last?.asked == null || placement.ask !== at.last.asked ? undefined : attemptOf(state, pull.pull - 1);
    if (before?.kind === 'unsure')
      placed(desk, before.pull, {
        cylinder: before.cylinder,
        kind: 'run-down',
        because: `pull ${pull.pull} went on from it`,
      });
    placed(desk, pull, placement);
    const old = oldPlugAtHand(state);
    if (placement.kind === 'loosening' && old !== null)
      emit({ type: 'removal-felt', cylinder: old, pull: pull.pull });
    if (placement.kind === 'run-down') stroke = { pull: pull.pull, endUs: pull.endUs };
    else if (placement.kind !== 'handling') stroke = null;
  };

  /** Nothing followed the last stroke: it was not on the way to anything. */
  const settleStroke = () => {
    const attempt = stroke === null ? undefined : attemptOf(state, stroke.pull);
    stroke = null;
    if (attempt === undefined || attempt.cylinder === null || attempt.kind !== 'run-down') return;
    const { pull, cylinder, evidence } = attempt;
    const { lowerNm } = asWrenchReads(state, torqueWindowOf(state, cylinder));
    const at = { lowerNm, short: stoppedShort(state, cylinder, pull.pull) };
    placed(desk, pull, settle(pull, cylinder, evidence, at));
  };

  const reading = (tool: ToolId, value: Reading) => {
    const feed = feeds.get(tool);
    if (feed === undefined) throw new Error(`a reading of ${tool} came before its link`);
    if (value.kind !== 'value') {
      flush(tool, feed);
      emit(notAValue(tool, value, feed.exponent));
      // What it saw in between nobody knows, so a pull under way will never be whole.
      if (value.kind === 'missed') cut(tool, feed, 'link-lost');
      return;
    }
    if (feed.atUs.length === 0) feed.first = value.n;
    feed.atUs.push(value.atUs);
    feed.counts.push(value.counts);
    if (feed.quantity === 'length') return gap(tool, feed, value);
    const found = feed.detector.push(value.atUs, scaled(value.counts, feed.exponent));
    const waitedUs = value.atUs - (feed.atUs[0] ?? value.atUs);
    const keepUs = feed.detector.live().pulling ? KEEP_PULLING_US : KEEP_RESTING_US;
    if (found !== null || waitedUs >= keepUs) flush(tool, feed);
    if (found !== null) pullDetected(tool, found);
    if (stroke === null || feed.detector.live().pulling || value.atUs - stroke.endUs < SETTLED_US) return;
    flush(tool, feed);
    settleStroke();
  };

  const gap = (tool: ToolId, feed: Feed, value: Reading & { kind: 'value' }) => {
    flush(tool, feed);
    const { gapTarget, gapWindow, order, routine } = state;
    const old = oldPlugAtHand(state);
    if (old !== null) {
      const gapMm = scaled(value.counts, feed.exponent + 3);
      emit({
        type: 'old-gap-measured',
        tool,
        reading: value.n,
        atUs: value.atUs,
        cylinder: old,
        gapMm,
      });
      return;
    }
    // An old plug measured late, or a new one early: nobody can tell.
    if (routine?.oldPlugs === true && phaseOf(state) === 'new-plugs') return;
    if (gapTarget === null || gapWindow === null || gapCheckOf(order.specification) !== 'gauge') return;
    const gapMm = scaled(value.counts, feed.exponent + 3);
    const judgement = judgedReading(state, tool, gapMm, gapWindow, null);
    emit({
      type: 'gap-measured',
      tool,
      reading: value.n,
      atUs: value.atUs,
      cylinder: gapTarget,
      judgement,
    });
  };

  const link = (tool: ToolId, driver: string, to: LinkState) => {
    if (to.state !== 'linked' && to.state !== 'lost') return;
    const before = feeds.get(tool);
    // A device that was sought and could not be joined has not been lost.
    if (to.state === 'lost' && before === undefined) return;
    flushAll();
    feeds.delete(tool);
    if (to.state === 'linked') {
      feeds.set(tool, newFeed(to.description, state));
      emit({ type: 'tool-linked', tool, driver, description: to.description });
      const wider = declared(state, tool, to.description);
      if (wider !== null) emit(wider);
    } else {
      emit({ type: 'tool-lost', tool, reason: to.reason });
    }
    cut(tool, before, 'link-lost');
    if (before?.quantity === 'torque') settleStroke();
  };

  const command = (given: Command): Result<readonly JobEvent[]> => {
    const refusal = refused(state, given, pulling());
    if (refusal !== null)
      return err({ code: 'command-refused', message: refusal, next: 'Look at the screen and choose again.' });
    flushAll();
    const said = eventOf(given);
    if (said !== null) emit(said);
    else follow(desk, given);
    return ok(out);
  };

  return {
    accept(input) {
      out = [];
      switch (input.kind) {
        case 'session':
          session(input);
          break;
        case 'link':
          link(input.tool, input.driver, input.link);
          break;
        case 'reading':
          reading(input.tool, input.reading);
          break;
        case 'refusal':
          emit({
            type: 'device-refused',
            tool: input.tool,
            address: input.problem.where ?? '',
            reason: input.problem.message,
          });
          break;
        case 'command':
          return command(input.command);
        case 'flush':
          flushAll();
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

/**
 * As the log gives it back: JSON knows no minus zero, and an event must be the same before it was written and after. Samples
 * are whole numbers and text, and by far the most of it.
 */
function asLogged(event: JobEvent): JobEvent {
  return event.type === 'readings' ? event : JSON.parse(JSON.stringify(event));
}
