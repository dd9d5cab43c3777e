import type { JobEvent, JobEventOf } from '../job/event.ts';
import { decodeSamples } from '../pull/trace.ts';
import { scaled } from '../reading.ts';
import type { Trace } from './plots.ts';

/** Shown before the start of a pull and after its end. */
const MARGIN_US = 200_000;

/** The samples of every pull, cut out of the readings of its tool; zero at the start of the pull, its zero taken off. */
export function tracesOf(events: readonly JobEvent[]): ReadonlyMap<number, Trace> {
  const traces = new Map<number, Trace>();
  let readings: JobEventOf<'readings'>[] = [];
  let sessionOver = false;
  for (const event of events) {
    // Clocks of two sessions cannot be compared; but a pull that a stop cut is found only once the next one began.
    if (event.type === 'session-started') sessionOver = true;
    if (event.type === 'readings') {
      if (sessionOver) readings = [];
      sessionOver = false;
      readings.push(event);
    }
    if (event.type === 'pull-detected') traces.set(event.pull, traceOf(event, readings));
  }
  return traces;
}

function traceOf(pull: JobEventOf<'pull-detected'>, readings: readonly JobEventOf<'readings'>[]): Trace {
  const tMs: number[] = [];
  const nm: number[] = [];
  for (const batch of readings) {
    if (batch.tool !== pull.tool) continue;
    const samples = decodeSamples(batch);
    if (!samples.ok) continue;
    samples.value.atUs.forEach((atUs, i) => {
      if (atUs < pull.startUs - MARGIN_US || atUs > pull.endUs + MARGIN_US) return;
      tMs.push((atUs - pull.startUs) / 1000);
      nm.push(scaled(samples.value.counts[i] ?? 0, batch.exponent) - pull.zeroNm);
    });
  }
  return { tMs, nm };
}
