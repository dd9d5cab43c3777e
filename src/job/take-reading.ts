/** A reading of a tool: samples of a wrench are kept until they are worth writing, a figure of a gauge is judged at once. */
import { type Reading, scaled, type ToolId } from '../reading.ts';
import type { BenchState } from './bench-state.ts';
import { type Feed, notAValue } from './feed.ts';
import { gapPlace } from './gap-place.ts';
import { judgedReading } from './judging.ts';
import { SETTLED_US, settleStroke, takePull } from './take-pull.ts';
import { takeTypedTorque } from './take-typed.ts';

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
  if (feed.source === 'typed') {
    bench.flush(tool, feed);
    takeTypedTorque(bench, tool, feed, { atUs, nm: scaled(counts, feed.exponent) });
    return;
  }
  const detected = feed.detector.push(atUs, scaled(counts, feed.exponent));
  const waitedUs = atUs - (feed.atUs[0] ?? atUs);
  const keepUs = feed.detector.live().pulling ? KEEP_PULLING_US : KEEP_RESTING_US;
  if (detected !== null || waitedUs >= keepUs) bench.flush(tool, feed);
  if (detected !== null) takePull(bench, tool, feed.source, detected);
  const { stroke } = bench;
  if (stroke === null || feed.detector.live().pulling || atUs - stroke.endUs < SETTLED_US) return;
  bench.flush(tool, feed);
  settleStroke(bench);
}

function takeGap(bench: BenchState, tool: ToolId, feed: Feed, { n, atUs, counts }: Value): void {
  bench.flush(tool, feed);
  const state = bench.state();
  const gapMm = scaled(counts, feed.exponent + 3);
  const measured = { tool, reading: n, atUs, source: feed.source };
  const place = gapPlace(state, gapMm);
  if (place === null) return;
  switch (place.of) {
    case 'none':
      bench.emit({ type: 'gap-out-of-turn', ...measured, gapMm, because: place.because });
      break;
    case 'old-plug':
      bench.emit({ type: 'old-gap-measured', ...measured, cylinder: place.cylinder, gapMm });
      break;
    case 'new-plug': {
      if (state.gapWindow === null) return;
      const judgement = judgedReading(state, tool, gapMm, state.gapWindow, null);
      bench.emit({ type: 'gap-measured', ...measured, cylinder: place.cylinder, judgement });
    }
  }
}
