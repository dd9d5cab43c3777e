import type { JobEvent, JobEventOf } from '../job/event.ts';
import { decodeSamples, type Samples } from '../pull/trace.ts';
import { scaled } from '../reading.ts';
import type { Trace } from './plots.ts';

/** Shown before the start of a pull and after its end. */
const MARGIN_US = 200_000;

/** Readings of one tool that came together, decoded once for all the pulls that they may belong to. */
interface Batch {
  readonly tool: string;
  readonly samples: Samples;
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
      const samples = decodeSamples(event);
      if (samples.ok)
        batches.push({
          tool: event.tool,
          samples: samples.value,
          exponent: exponents.get(event.tool) ?? 0,
        });
    }
    if (event.type === 'pull-detected') traces.set(event.pull, traceOf(event, batches));
  }
  return traces;
}

function traceOf(pull: JobEventOf<'pull-detected'>, batches: readonly Batch[]): Trace {
  const tMs: number[] = [];
  const nm: number[] = [];
  const [fromUs, toUs] = [pull.startUs - MARGIN_US, pull.endUs + MARGIN_US];
  for (const { tool, samples, exponent } of batches) {
    if (tool !== pull.tool) continue;
    // Times never fall within a batch.
    if ((samples.atUs[0] ?? 0) > toUs || (samples.atUs.at(-1) ?? 0) < fromUs) continue;
    samples.atUs.forEach((atUs, i) => {
      if (atUs < fromUs || atUs > toUs) return;
      tMs.push((atUs - pull.startUs) / 1000);
      nm.push(scaled(samples.counts[i] ?? 0, exponent) - pull.zeroNm);
    });
  }
  return { tMs, nm };
}
