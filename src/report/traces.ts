import type { JobEvent, JobEventOf } from '../job/event.ts';
import { decodeSamples } from '../pull/trace.ts';
import { scaled } from '../reading.ts';
import type { Trace } from './plots.ts';

/** Shown before the start of a pull and after its end. */
const MARGIN_US = 200_000;

interface Batch {
  readonly coded: JobEventOf<'readings'>;
  /** A figure of the tool is counts · 10^exponent, as it described itself when it joined. */
  readonly exponent: number;
}

/** The samples of every pull, cut out of the readings of its tool; zero at the start of the pull, its zero taken off. */
export function tracesOf(events: readonly JobEvent[]): ReadonlyMap<number, Trace> {
  const traces = new Map<number, Trace>();
  let batches: Batch[] = [];
  const exponents = new Map<string, number>();
  let sessionOver = false;
  for (const event of events) {
    // Clocks of two sessions cannot be compared; but a pull that a stop cut is found only once the next one began.
    if (event.type === 'session-started') sessionOver = true;
    if (event.type === 'tool-linked') exponents.set(event.tool, event.description.exponent);
    if (event.type === 'readings') {
      if (sessionOver) batches = [];
      sessionOver = false;
      batches.push({ coded: event, exponent: exponents.get(event.tool) ?? 0 });
    }
    if (event.type === 'pull-detected') traces.set(event.pull, traceOf(event, batches));
  }
  return traces;
}

function traceOf(pull: JobEventOf<'pull-detected'>, batches: readonly Batch[]): Trace {
  const tMs: number[] = [];
  const nm: number[] = [];
  for (const { coded, exponent } of batches) {
    if (coded.tool !== pull.tool) continue;
    const samples = decodeSamples(coded);
    if (!samples.ok) continue;
    samples.value.atUs.forEach((atUs, i) => {
      if (atUs < pull.startUs - MARGIN_US || atUs > pull.endUs + MARGIN_US) return;
      tMs.push((atUs - pull.startUs) / 1000);
      nm.push(scaled(samples.value.counts[i] ?? 0, exponent) - pull.zeroNm);
    });
  }
  return { tMs, nm };
}
