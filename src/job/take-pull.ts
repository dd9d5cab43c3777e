/** A pull that was detected: it gets its cylinder, or waits as a stroke on the way until the next pull or the pause after it. */
import type { DetectedPull, Pull } from '../pull/pull.ts';
import { roundedPull } from '../pull/rounded.ts';
import type { FigureSource, ToolId } from '../reading.ts';
import { type LastPull, type Placement, place, SETTLED_MS } from '../sequence/place.ts';
import { settle } from '../sequence/settle.ts';
import type { BenchState } from './bench-state.ts';
import type { Feed } from './feed.ts';
import { oldPlugAtHand } from './fold-checklist.ts';
import { placed } from './placing.ts';
import { attemptOf, situation, stoppedShort } from './situation.ts';
import { torqueWindowOf } from './stage.ts';
import { taken } from './tool-in-use.ts';
import { asWrenchReads } from './windows.ts';

/** After this pause nobody goes on from a stroke. */
const SETTLED_US = 1000 * SETTLED_MS;
/** A figure comes at the end of its stroke, so that the next one comes later by a whole stroke. Assumption. */
const SETTLED_BY_MAXIMA_US = 6_000_000;

/** From when on nothing will follow the stroke that may be on the way. */
export const settlesUs = ({ endUs, stream }: NonNullable<BenchState['stroke']>): number =>
  endUs + (stream === 'maxima' ? SETTLED_BY_MAXIMA_US : SETTLED_US);

export function takePull(
  bench: BenchState,
  tool: ToolId,
  source: FigureSource,
  detected: DetectedPull,
): void {
  takeInHand(bench, tool);
  const pull: Pull = { ...roundedPull(detected), pull: bench.state().pullCount + 1, tool, source };
  if (bench.stroke !== null && pull.startUs >= settlesUs(bench.stroke)) settleStroke(bench);
  bench.emit({ type: 'pull-detected', ...pull });
  const at = situation(bench.state(), bench.pullsBefore, tool);
  const placement = place(pull, at);
  const { ask } = placement;
  if (ask !== undefined && ask === at.last?.asked && goesOn(pull, placement, at.last))
    handOverQuestion(bench, pull);
  // Nothing will follow the stroke before: it was on another plug.
  if (placement.because === 'turned-from-loose') settleStroke(bench);
  placed(bench, pull, placement);
  const old = oldPlugAtHand(bench.state());
  if (placement.kind === 'loosening' && old !== null)
    bench.emit({ type: 'removal-felt', cylinder: old, pull: pull.pull });
  bench.stroke = strokeAfter(bench, pull, placement);
}

/**
 * Whether the pull goes on from the one in question. By the order of work alone only the cylinder tells; of a pull that
 * broke off, only that the next piece came at once.
 */
function goesOn(pull: Pull, { ask, cylinder }: Placement, last: LastPull): boolean {
  if (ask === 'by-plan') return cylinder === last.cylinder;
  return ask !== 'cut' || pull.startUs - last.endUs < SETTLED_US;
}

/** Its reading shows which tool is in hand. */
export function takeInHand(bench: BenchState, tool: ToolId): void {
  const event = taken(bench.state(), tool);
  if (event !== null) bench.emit({ type: 'tool-in-use', ...event });
}

/** A question goes over to the stroke that went on from the one that raised it. */
function handOverQuestion(bench: BenchState, pull: Pull): void {
  const before = attemptOf(bench.state(), pull.pull - 1);
  if (before?.kind !== 'unsure') return;
  const { cylinder } = before;
  const because = 'other-pull-went-on';
  placed(bench, before.pull, { cylinder, kind: 'run-down', because, otherPull: pull.pull });
}

function strokeAfter(bench: BenchState, pull: Pull, { kind }: Placement): BenchState['stroke'] {
  if (kind === 'run-down')
    return { pull: pull.pull, tool: pull.tool, endUs: pull.endUs, stream: pull.stream };
  return kind === 'handling' ? bench.stroke : null;
}

/** Nothing followed the last stroke: it was not on the way to anything. */
export function settleStroke(bench: BenchState): void {
  const attempt = bench.stroke === null ? undefined : attemptOf(bench.state(), bench.stroke.pull);
  bench.stroke = null;
  if (attempt === undefined || attempt.cylinder === null || attempt.kind !== 'run-down') return;
  const { pull, cylinder, evidence } = attempt;
  const state = bench.state();
  const { lowerNm } = asWrenchReads(state, torqueWindowOf(state, cylinder));
  const at = { lowerNm, short: stoppedShort(state, cylinder, pull.pull) };
  placed(bench, pull, settle(pull, cylinder, evidence, at));
}

/** No more samples come from this tool: a pull under way will never be whole. */
export function cutPull(
  bench: BenchState,
  tool: ToolId,
  feed: Feed | undefined,
  reason: 'link-lost' | 'stopped' | 'tool-stopped',
): void {
  if (feed === undefined) return;
  const detected = feed.detector.cut(reason);
  if (detected !== null) takePull(bench, tool, feed.source, detected);
}
