/** A reading of a tool: samples of a wrench are kept until they are worth writing, a figure of a gauge is judged at once. */
import { CEASED_US } from '../pull/detector.ts';
import type { DetectedPull } from '../pull/pull.ts';
import type { Samples } from '../pull/trace.ts';
import { type Reading, scaled, type ToolId } from '../reading.ts';
import { w } from '../words/catalogue.ts';
import type { BenchState } from './bench-state.ts';
import { type Feed, notAValue } from './feed.ts';
import { gapPlace } from './gap-place.ts';
import { judgedReading } from './judging.ts';
import { cutPull, settleStroke, settlesUs, takeInHand, takePull } from './take-pull.ts';
import { takeTypedTorque } from './take-typed.ts';

/** How long samples may wait in memory: while a pull is under way, and at rest. */
const KEEP_PULLING_US = 500_000;
const KEEP_RESTING_US = 10_000_000;

type Value = Omit<Reading & { readonly kind: 'value' }, 'kind'>;

export function takeReading(bench: BenchState, tool: ToolId, reading: Reading): void {
  const feed = feedOf(bench, tool);
  if (reading.kind !== 'value') {
    bench.flush(tool, feed);
    bench.emit(notAValue(tool, reading));
    if (reading.kind === 'contradicted') contradicted(bench, tool, feed);
    if (reading.kind === 'missed') {
      feed.detector.missed(reading.readings ?? 0);
      feed.arrived.missed += reading.readings ?? 0;
    }
    return;
  }
  const { angleCounts } = reading;
  if (feed.angles.length > 0 !== (angleCounts !== undefined)) bench.flush(tool, feed);
  if (feed.atUs.length === 0) feed.first = reading.n;
  if (feed.arrived.values === 0) feed.arrived.firstUs = reading.atUs;
  feed.arrived.lastUs = reading.atUs;
  feed.arrived.values++;
  feed.atUs.push(reading.atUs);
  feed.counts.push(reading.counts);
  if (angleCounts !== undefined) feed.angles.push(angleCounts);
  if (isStopped(bench, tool, feed)) keepOnly(bench, tool, feed, reading.atUs);
  else if (feed.quantity === 'length') takeGap(bench, tool, feed, reading);
  else takeTorque(bench, tool, feed, reading);
}

/** Nothing counts any more of what this driver makes of what the tool sends. */
const isStopped = ({ state }: BenchState, tool: ToolId, { driver }: Feed): boolean =>
  state().stopped[tool] === driver;

/** No reading is dropped, but nothing is looked for in those of a tool that was stopped. */
function keepOnly(bench: BenchState, tool: ToolId, feed: Feed, atUs: number): void {
  if (atUs - (feed.atUs[0] ?? atUs) >= KEEP_RESTING_US) bench.flush(tool, feed);
}

/** A pull under way will never be whole. */
function contradicted(bench: BenchState, tool: ToolId, feed: Feed): void {
  cutPull(bench, tool, feed, 'tool-stopped');
  if (bench.stroke?.tool === tool) settleStroke(bench);
}

function takeTorque(bench: BenchState, tool: ToolId, feed: Feed, reading: Value): void {
  const { atUs, counts, angleCounts } = reading;
  if (feed.source === 'typed') {
    bench.flush(tool, feed);
    takeTypedTorque(bench, tool, feed, { atUs, nm: scaled(counts, feed.exponent) });
    return;
  }
  const detected = seen(feed, atUs, counts, angleCounts);
  const waitedUs = atUs - (feed.atUs[0] ?? atUs);
  const keepUs = feed.detector.pulling ? KEEP_PULLING_US : KEEP_RESTING_US;
  if (detected !== null || waitedUs >= keepUs) bench.flush(tool, feed);
  looked(bench, tool, feed, detected, atUs);
}

/** The sample as the detector takes it. */
function seen(
  { exponent, angleExponent, detector }: Feed,
  atUs: number,
  counts: number,
  angleCounts: number | undefined,
): DetectedPull | null {
  const nm = scaled(counts, exponent);
  return angleCounts === undefined || angleExponent === null
    ? detector.push(atUs, nm)
    : detector.push(atUs, nm, scaled(angleCounts, angleExponent));
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
  // By its own tool alone: what another one sends may stand in the log in front of what this one sent before.
  if (stroke === null || stroke.tool !== tool || feed.detector.pulling || atUs < settlesUs(stroke)) return;
  bench.flush(tool, feed);
  settleStroke(bench);
}

/**
 * Samples that the log holds already, of a job that is played back: the same follows from them as when they came, and they
 * are not written a second time.
 */
export function takeWritten(
  bench: BenchState,
  tool: ToolId,
  first: number,
  { atUs, counts, angles }: Samples,
): void {
  const feed = feedOf(bench, tool);
  if (isStopped(bench, tool, feed)) return;
  for (let i = 0; i < counts.length; i++) {
    const us = atUs[i] ?? 0;
    const count = counts[i] ?? 0;
    if (feed.quantity === 'length') takeGap(bench, tool, feed, { n: first + i, atUs: us, counts: count });
    else if (feed.source === 'typed')
      takeTypedTorque(bench, tool, feed, { atUs: us, nm: scaled(count, feed.exponent) });
    else looked(bench, tool, feed, seen(feed, us, count, angles?.[i]), us);
  }
}

/** A tool that sends only what changes, or one figure a pull, shows by nothing else that a pull is over, or a stroke the last. */
export function takeSilence(bench: BenchState, tool: ToolId, atUs: number): void {
  const feed = feedOf(bench, tool);
  if (isStopped(bench, tool, feed)) return;
  const endsUs = feed.detector.endsUs();
  const isSettled = () => bench.stroke?.tool === tool && atUs >= settlesUs(bench.stroke);
  const settles = isSettled();
  if (!settles && (endsUs === null || atUs < endsUs)) return;
  bench.flush(tool, feed);
  bench.emit({ type: 'tool-silent', tool, atUs });
  const detected = feed.detector.silent(atUs);
  if (detected !== null) takePull(bench, tool, feed.source, detected);
  if (isSettled()) settleStroke(bench);
}

export function waitsFor({ feeds, stroke, state }: BenchState): { tool: ToolId; untilUs: number } | null {
  for (const [tool, { detector, driver, quantity, settings, arrived }] of feeds) {
    if (quantity !== 'torque' || state().stopped[tool] === driver) continue;
    // A tool that goes on sending settles a stroke by its readings; they may be under way still.
    const settledUs =
      stroke === null || stroke.tool !== tool || detector.pulling
        ? null
        : Math.max(settlesUs(stroke), settings.stream === 'maxima' ? 0 : arrived.lastUs + CEASED_US);
    const untilUs = detector.endsUs() ?? settledUs;
    if (untilUs !== null) return { tool, untilUs };
  }
  return null;
}

function feedOf(bench: BenchState, tool: ToolId): Feed {
  const feed = bench.feeds.get(tool);
  if (feed === undefined) throw new Error(w`a reading of ${tool} came before its link`);
  return feed;
}

function takeGap(bench: BenchState, tool: ToolId, feed: Feed, { n, atUs, counts }: Value): void {
  bench.flush(tool, feed);
  takeInHand(bench, tool);
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
