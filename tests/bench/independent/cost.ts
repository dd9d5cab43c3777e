/** What a sample costs against a loop that only keeps the highest: at rest and in pulls. */
import { createBench } from '../../../src/job/bench.ts';
import { createPullDetector } from '../../../src/pull/detector.ts';
import { detectorSettings } from '../../../src/pull/settings.ts';
import type { Tape } from './lines.ts';
import { begin, opened } from './play.ts';
import { Rows } from './rows.ts';

const ROUNDS = 12;
const BATCH = 4096;
const LEAST = 300_000;
const AROUND_US = 125_000;

interface Samples {
  readonly atUs: Float64Array;
  readonly counts: Float64Array;
  readonly nm: Float64Array;
}

export function cost(): { add: (tape: Tape) => void; lines: () => string[] } {
  const rows = new Rows(() => ({ bare: 0, batch: 0, push: 0, bench: 0 }));
  return {
    add(tape) {
      const counts = tape.parts.flatMap((part) => ('t' in part ? part.c : []));
      const times = tape.parts.flatMap((part) => ('t' in part ? part.t : []));
      const pulling = times.map((us) =>
        tape.truth.some(({ fromUs, toUs }) => us >= fromUs - AROUND_US && us <= toUs + AROUND_US),
      );
      const settings = detectorSettings(tape.job.lowerNm, { stepNm: 0.01 });
      for (const [name, kept] of [
        ['rest', counts.filter((_, i) => !pulling[i])],
        ['pulls', counts.filter((_, i) => pulling[i])],
        ['job', counts],
      ] as const) {
        const samples = repeated(kept);
        const row = rows.row(name);
        row.bare = best(samples, () => bare(samples));
        row.batch = best(samples, () => {
          const detector = createPullDetector(settings);
          for (let i = 0; i < samples.nm.length; i += BATCH)
            detector.pushBatch(samples.atUs, samples.nm, i, Math.min(samples.nm.length, i + BATCH));
        });
        row.push = best(samples, () => {
          const detector = createPullDetector(settings);
          for (let i = 0; i < samples.nm.length; i++)
            detector.push(samples.atUs[i] ?? Number.NaN, samples.nm[i] ?? Number.NaN);
        });
        if (name !== 'pulls') row.bench = best(samples, () => throughBench(tape, samples));
      }
    },
    lines: () => {
      const ns = (of: 'batch' | 'push' | 'bench') => (row: Record<string, number>) =>
        row[of] === 0 ? '-' : `${row[of]?.toFixed(1)} (${((row[of] ?? 0) / (row['bare'] ?? 1)).toFixed(1)}x)`;
      return [
        'nanoseconds of processor time a sample at 1 kHz, best of several rounds (ratio to the bare maximum)',
        ...rows.table('', {
          'bare maximum': (row) => row.bare.toFixed(2),
          batches: ns('batch'),
          'one by one': ns('push'),
          'whole bench': ns('bench'),
        }),
      ];
    },
  };
}

function bare({ nm }: Samples): number {
  let highest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < nm.length; i++) {
    const x = nm[i] ?? Number.NaN;
    if (x > highest) highest = x;
  }
  return highest;
}

/** Questions stay open: the bench only takes samples in. */
function throughBench(tape: Tape, { atUs, counts }: Samples): void {
  const bench = createBench(opened(tape));
  begin((input) => bench.accept(input));
  for (let i = 0; i < counts.length; i++)
    bench.accept({
      kind: 'reading',
      tool: 'wrench',
      reading: { kind: 'value', n: i + 1, atUs: atUs[i] ?? Number.NaN, counts: counts[i] ?? Number.NaN },
    });
}

function repeated(kept: readonly number[]): Samples {
  const size = Math.max(LEAST, kept.length);
  const counts = Float64Array.from({ length: size }, (_, i) => kept[i % kept.length] ?? 0);
  return { atUs: Float64Array.from(counts, (_, i) => 1000 * i), counts, nm: counts.map((one) => one / 100) };
}

function best({ nm }: Samples, run: () => unknown): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (1000 * (user + system)) / nm.length);
  }
  return least;
}
