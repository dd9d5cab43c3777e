/** A reading of a tool: samples of a wrench are kept until they are worth writing, a figure of a gauge is judged at once. */
import { gapCheckOf } from '../plug/gap.ts';
import type { DetectedPull } from '../pull/pull.ts';
import type { Samples } from '../pull/trace.ts';
import { type Reading, scaled, type ToolId } from '../reading.ts';
import type { BenchState } from './bench-state.ts';
import { type Feed, notAValue } from './feed.ts';
import { oldPlugAtHand } from './fold-checklist.ts';
import { judgedReading } from './judging.ts';
import { phaseOf } from './phase.ts';
import { SETTLED_US, settleStroke, takePull } from './take-pull.ts';

/** How long samples may wait in memory: while a pull is under way, and at rest. */
const KEEP_PULLING_US = 500_000;
const KEEP_RESTING_US = 10_000_000;

type Value = Omit<Reading & { readonly kind: 'value' }, 'kind'>;

export function takeReading(bench: BenchState, tool: ToolId, reading: Reading): void {
  const feed = feedOf(bench, tool);
  if (reading.kind !== 'value') {
    bench.flush(tool, feed);
    bench.emit(notAValue(tool, reading));
    if (reading.kind === 'missed') feed.detector.missed(reading.readings ?? 0);
    return;
  }
  if (feed.atUs.length === 0) feed.first = reading.n;
  feed.atUs.push(reading.atUs);
  feed.counts.push(reading.counts);
  if (feed.quantity === 'length') takeGap(bench, tool, feed, reading);
  else takeTorque(bench, tool, feed, reading);
}

function takeTorque(bench: BenchState, tool: ToolId, feed: Feed, { atUs, counts }: Value): void {
  const detected = feed.detector.push(atUs, scaled(counts, feed.exponent));
  const waitedUs = atUs - (feed.atUs[0] ?? atUs);
  const keepUs = feed.detector.pulling ? KEEP_PULLING_US : KEEP_RESTING_US;
  if (detected !== null || waitedUs >= keepUs) bench.flush(tool, feed);
  looked(bench, tool, feed, detected, atUs);
}

/** What follows once the detector has seen a sample. */
function looked(
  bench: BenchState,
  tool: ToolId,
  feed: Feed,
  detected: DetectedPull | null,
  atUs: number,
): void {
  if (detected !== null) takePull(bench, tool, feed.source, detected);
  const { stroke } = bench;
  if (stroke === null || feed.detector.pulling || atUs - stroke.endUs < SETTLED_US) return;
  bench.flush(tool, feed);
  settleStroke(bench);
}

/**
 * Samples that the log holds already, of a job that is played back: the same follows from them as when they came, and they
 * are not written a second time.
 */
export function takeWritten(bench: BenchState, tool: ToolId, first: number, { atUs, counts }: Samples): void {
  const feed = feedOf(bench, tool);
  const { detector, exponent, quantity } = feed;
  for (let i = 0; i < counts.length; i++) {
    const us = atUs[i] ?? 0;
    const count = counts[i] ?? 0;
    if (quantity === 'length') takeGap(bench, tool, feed, { n: first + i, atUs: us, counts: count });
    else looked(bench, tool, feed, detector.push(us, scaled(count, exponent)), us);
  }
}

function feedOf(bench: BenchState, tool: ToolId): Feed {
  const feed = bench.feeds.get(tool);
  if (feed === undefined) throw new Error(`a reading of ${tool} came before its link`);
  return feed;
}

function takeGap(bench: BenchState, tool: ToolId, feed: Feed, { n, atUs, counts }: Value): void {
  bench.flush(tool, feed);
  const state = bench.state();
  const { gapTarget, gapWindow, order, routine } = state;
  const gapMm = scaled(counts, feed.exponent + 3);
  const measured = { tool, reading: n, atUs, source: feed.source };
  const old = oldPlugAtHand(state);
  if (old !== null) {
    bench.emit({ type: 'old-gap-measured', ...measured, cylinder: old, gapMm });
    return;
  }
  // An old plug measured late, or a new one early: nobody can tell.
  if (routine?.oldPlugs === true && phaseOf(state) === 'new-plugs') return;
  if (gapTarget === null || gapWindow === null || gapCheckOf(order.specification) !== 'gauge') return;
  const judgement = judgedReading(state, tool, gapMm, gapWindow, null);
  bench.emit({ type: 'gap-measured', ...measured, cylinder: gapTarget, judgement });
}
