/** A reading of a tool: samples of a wrench are kept until they are worth writing, a figure of a gauge is judged at once. */
import { gapCheckOf } from '../plug/gap.ts';
import { type Reading, scaled, type ToolId } from '../reading.ts';
import type { BenchState } from './bench-state.ts';
import { type Feed, notAValue } from './feed.ts';
import { oldPlugAtHand } from './fold-checklist.ts';
import { judgedReading } from './judging.ts';
import { phaseOf } from './phase.ts';
import { settleStroke, settlesUs, takePull } from './take-pull.ts';

/** How long samples may wait in memory: while a pull is under way, and at rest. */
const KEEP_PULLING_US = 500_000;
const KEEP_RESTING_US = 10_000_000;

type Value = Reading & { readonly kind: 'value' };

export function takeReading(bench: BenchState, tool: ToolId, reading: Reading): void {
  const feed = bench.feeds.get(tool);
  if (feed === undefined) throw new Error(`a reading of ${tool} came before its link`);
  if (reading.kind !== 'value') {
    bench.flush(tool, feed);
    bench.emit(notAValue(tool, reading));
    if (reading.kind === 'missed') {
      feed.detector.missed(reading.readings ?? 0);
      feed.arrived.missed += reading.readings ?? 0;
    }
    return;
  }
  if (feed.atUs.length === 0) feed.first = reading.n;
  if (feed.arrived.values === 0) feed.arrived.firstUs = reading.atUs;
  feed.arrived.lastUs = reading.atUs;
  feed.arrived.values++;
  feed.atUs.push(reading.atUs);
  feed.counts.push(reading.counts);
  if (feed.quantity === 'length') takeGap(bench, tool, feed, reading);
  else takeTorque(bench, tool, feed, reading);
}

function takeTorque(bench: BenchState, tool: ToolId, feed: Feed, { atUs, counts }: Value): void {
  const detected = feed.detector.push(atUs, scaled(counts, feed.exponent));
  const waitedUs = atUs - (feed.atUs[0] ?? atUs);
  const keepUs = feed.detector.live().pulling ? KEEP_PULLING_US : KEEP_RESTING_US;
  if (detected !== null || waitedUs >= keepUs) bench.flush(tool, feed);
  if (detected !== null) takePull(bench, tool, feed.source, detected);
  const { stroke } = bench;
  if (stroke === null || feed.detector.live().pulling || atUs < settlesUs(stroke)) return;
  bench.flush(tool, feed);
  settleStroke(bench);
}

/** Of a tool that sends no more than a figure a pull: that it is over, or that nothing followed a stroke, shows when nothing comes. */
export function takeSilence(bench: BenchState, tool: ToolId, atUs: number): void {
  const feed = bench.feeds.get(tool);
  if (feed === undefined) throw new Error(`${tool} is silent before its link`);
  bench.flush(tool, feed);
  bench.emit({ type: 'tool-silent', tool, atUs });
  const detected = feed.detector.silent(atUs);
  if (detected !== null) takePull(bench, tool, feed.source, detected);
  if (bench.stroke !== null && atUs >= settlesUs(bench.stroke)) settleStroke(bench);
}

export function waitsFor({ feeds, stroke }: BenchState): { tool: ToolId; untilUs: number } | null {
  for (const [tool, { detector, settings }] of feeds) {
    const untilUs = detector.endsUs() ?? (stroke === null ? null : settlesUs(stroke));
    if (settings.stream === 'maxima' && untilUs !== null) return { tool, untilUs };
  }
  return null;
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
