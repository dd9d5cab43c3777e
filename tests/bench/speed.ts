import { from, lastValueFrom, map, tap } from 'rxjs';
import { Random } from '../../sim/random.ts';
import { PEOPLE } from '../../sim/technician/people.ts';
import { createPullDetector } from '../../src/pull/detector.ts';
import { detectorSettings } from '../../src/pull/settings.ts';
import { decodeSamples } from '../../src/pull/trace.ts';
import { orThrow } from '../../src/result.ts';
import { drawCase } from './campaign/case.ts';
import { worked } from './campaign/work.ts';
import { workJob } from './kinds/jobs.ts';
import { JOINTS } from './kinds/joints.ts';
import type { Measurement } from './measurement.ts';

const ROUNDS = 7;
const BATCH = 4096;

interface Samples {
  readonly atUs: Float64Array;
  readonly nm: Float64Array;
}

/** How many samples a second one core takes, against a loop that only finds the maximum, and against one at a time. */
export const speed: Measurement = {
  name: 'speed',
  what: 'samples a second of the detector against a bare maximum and against RxJS one by one: samples=2000000 most=100000000',
  run: async ({ number, progress }) => {
    const count = number('samples', 2_000_000);
    const engine = drawCase(
      'speed',
      { rateHz: 1000, noiseShare: 0.001, lossShare: 0, jitterShare: 0.05, bunchUs: 0 },
      new Random('speed'),
    );
    const job = worked(engine);
    const settings = detectorSettings(engine.bench.plug.lowerNm, { stepNm: 0.01 });
    const whole = repeated(job, count);
    const rest = resting(count);
    const pulls = onlyPulls(job, settings, count);
    const lines = ['nanoseconds a sample, best of several rounds; ratio to the bare maximum', ''];
    for (const [name, samples] of [
      ['plug to plug', whole],
      ['job, with gaps', repeated(wholeJob(), count)],
      ['rest only', rest],
      ['pulls only', pulls],
    ] as const) {
      progress(0.1, name);
      const bare = best(() => bareMaximum(samples.nm), samples.nm.length);
      const batch = best(() => inBatches(samples, settings), samples.nm.length);
      const single = best(() => oneByOne(samples, settings), samples.nm.length);
      const text = (ns: number) => `${ns.toFixed(2).padStart(7)} ns (${(ns / bare).toFixed(1).padStart(5)}x)`;
      lines.push(
        `${name.padEnd(16)} bare ${bare.toFixed(2)} ns   batches ${text(batch)}   push ${text(single)}`,
      );
    }
    progress(0.4, 'rxjs');
    const few = { atUs: whole.atUs.subarray(0, 300_000), nm: whole.nm.subarray(0, 300_000) };
    const started = process.hrtime.bigint();
    await throughRx(few, settings);
    const rx = Number(process.hrtime.bigint() - started) / few.nm.length;
    lines.push(
      `${'job, RxJS'.padEnd(16)} one value a sample through map and tap: ${rx.toFixed(1)} ns`,
      '',
      'cost a sample and heap as the stream grows (job at 1000 Hz, batches):',
    );
    for (let n = 1000; n <= number('most', 100_000_000); n *= 10) {
      progress(0.5 + Math.log10(n) / 20, `${n} samples`);
      lines.push(long(whole, settings, n));
    }
    return lines;
  },
};

/** What the wrench of a whole job sends at 1000 Hz: eight plugs, gaps measured and bent, each gone to and fitted by hand. */
function wholeJob(): Samples {
  const plug = JOINTS['M14 new gasket'];
  const person = { habits: PEOPLE.careful, cylinders: 8, rateHz: 1000, noiseShare: 0.001 };
  const { events } = workJob({ seed: 'speed', plug, ...person });
  const sent = events
    .filter((event) => event.type === 'readings')
    .filter(({ tool }) => tool === 'wrench')
    .map((event) => orThrow(decodeSamples(event)));
  return {
    atUs: Float64Array.from(sent.flatMap(({ atUs }) => atUs)),
    nm: Float64Array.from(sent.flatMap(({ counts }) => counts.map((count) => count / 100))),
  };
}

function bareMaximum(nm: Float64Array): number {
  let highest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < nm.length; i++) {
    const x = nm[i] ?? Number.NaN;
    if (x > highest) highest = x;
  }
  return highest;
}

function inBatches({ atUs, nm }: Samples, settings: Parameters<typeof createPullDetector>[0]): number {
  const detector = createPullDetector(settings);
  let found = 0;
  for (let i = 0; i < nm.length; i += BATCH)
    found += detector.pushBatch(atUs, nm, i, Math.min(nm.length, i + BATCH)).length;
  return found;
}

function oneByOne({ atUs, nm }: Samples, settings: Parameters<typeof createPullDetector>[0]): number {
  const detector = createPullDetector(settings);
  let found = 0;
  for (let i = 0; i < nm.length; i++)
    if (detector.push(atUs[i] ?? Number.NaN, nm[i] ?? Number.NaN) !== null) found++;
  return found;
}

function throughRx(
  { atUs, nm }: Samples,
  settings: Parameters<typeof createPullDetector>[0],
): Promise<unknown> {
  const detector = createPullDetector(settings);
  return lastValueFrom(
    from(nm).pipe(
      map((value, i) => ({ atUs: atUs[i] ?? Number.NaN, nm: value })),
      map((sample) => ({ ...sample, pull: detector.push(sample.atUs, sample.nm) })),
      tap(() => {}),
    ),
  );
}

/** The job again and again for `n` samples, without holding them. */
function long(job: Samples, settings: Parameters<typeof createPullDetector>[0], n: number): string {
  const detector = createPullDetector(settings);
  const spanUs = (job.atUs.at(-1) ?? 0) + 1000;
  const part = { atUs: new Float64Array(BATCH), nm: new Float64Array(BATCH) };
  let ns = 0;
  let pulls = 0;
  for (let done = 0; done < n; ) {
    const size = Math.min(BATCH, n - done);
    for (let i = 0; i < size; i++) {
      const at = (done + i) % job.nm.length;
      part.atUs[i] = (job.atUs[at] ?? 0) + spanUs * Math.floor((done + i) / job.nm.length);
      part.nm[i] = job.nm[at] ?? 0;
    }
    const started = process.hrtime.bigint();
    pulls += detector.pushBatch(part.atUs, part.nm, 0, size).length;
    ns += Number(process.hrtime.bigint() - started);
    done += size;
  }
  const heap = process.memoryUsage().heapUsed / 2 ** 20;
  return `  10^${Math.log10(n)} samples  ${(ns / n).toFixed(2).padStart(7)} ns   ${String(pulls).padStart(7)} pulls   heap ${heap.toFixed(0)} MB`;
}

function best(run: () => number, samples: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    const started = process.hrtime.bigint();
    run();
    least = Math.min(least, Number(process.hrtime.bigint() - started) / samples);
  }
  return least;
}

function repeated({ atUs, nm }: Samples, count: number): Samples {
  const spanUs = (atUs.at(-1) ?? 0) + 1000;
  return {
    atUs: Float64Array.from(
      { length: count },
      (_, i) => (atUs[i % nm.length] ?? 0) + spanUs * Math.floor(i / nm.length),
    ),
    nm: Float64Array.from({ length: count }, (_, i) => nm[i % nm.length] ?? 0),
  };
}

function resting(count: number): Samples {
  const random = new Random('rest');
  return {
    atUs: Float64Array.from({ length: count }, (_, i) => i * 1000),
    nm: Float64Array.from({ length: count }, () => Math.round(random.normal(0, 3)) / 100),
  };
}

/** The pulls of a job with a quarter second of rest between them. */
function onlyPulls(job: Samples, settings: Parameters<typeof createPullDetector>[0], count: number): Samples {
  const found = createPullDetector(settings).pushBatch(job.atUs, job.nm, 0, job.nm.length);
  const kept = [...job.nm].filter((_, i) =>
    found.some(
      ({ startUs, endUs }) =>
        (job.atUs[i] ?? 0) >= startUs - 125_000 && (job.atUs[i] ?? 0) <= endUs + 125_000,
    ),
  );
  return repeated({ atUs: Float64Array.from(kept, (_, i) => i * 1000), nm: Float64Array.from(kept) }, count);
}
