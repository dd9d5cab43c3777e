import { gzipSync } from 'node:zlib';
import { disclosuresOf, signedBytes } from '../../../src/evidence/entry.ts';
import type { LogEntry } from '../../../src/evidence/log.ts';
import { openRecord } from '../../../src/evidence/record.ts';
import { decodeSamples, encodeSamples } from '../../../src/pull/trace.ts';
import type { Measurement } from '../measurement.ts';
import { demoRecord } from './made.ts';

const GOAL_BYTES = 7000;
/** What stays of a trace where resting samples are left out: this long before and behind each pull. */
const AROUND_US = 300_000;

/** How large a record is for each cylinder, with all samples and as it would be with those around the pulls only. */
export const recordSize: Measurement = {
  name: 'record-size',
  what: 'size of a record a cylinder, with and without the samples at rest [seeds=3]',
  run({ number, progress }) {
    const seeds = [...Array(number('seeds', 3)).keys()].map((i) => i + 1);
    const rows = seeds.map((seed) => {
      progress(seed / seeds.length, `seed ${seed}`);
      return row(seed);
    });
    return [
      'bytes a cylinder in the file (base64url of the JSON, 4/3 of it); samples at about 100 Hz',
      ' seed  attempts  seconds   whole  of which samples  without rest  3 s trace, one pull   gzip of the file',
      ...rows,
      `goal with one pull and 3 s of trace: below ${GOAL_BYTES}`,
    ];
  },
};

function row(seed: number): string {
  const made = demoRecord(seed);
  try {
    const opened = openRecord(made.bytes);
    if (!opened.ok) throw new Error(opened.error.problem.message);
    const { entries, summary } = opened.value.record;
    const cylinders = summary.cylinders.length;
    const inFile = (bytes: number) => Math.round((bytes * 4) / 3 / cylinders);
    const pulls = entries.filter(({ event }) => event.type === 'pull-detected');
    const attempts = pulls.length / cylinders;
    const wrench = entries.filter(({ event }) => event.type === 'readings' && event.tool === 'wrench');
    const sampleBytes = sum(
      wrench.map(({ event }) => (event.type === 'readings' ? event.times.length + event.counts.length : 0)),
    );
    const kept = sum(wrench.map((entry) => withoutRest(entry, pulls)));
    const all = sum(wrench.map(lengthOf));
    const last = entries.at(-1)?.monoUs ?? 0;
    const samples = sum(wrench.map(({ event }) => (event.type === 'readings' ? event.count : 0)));
    // Everything that one pull brings, in one attempt, with three seconds of the average coding in six batches.
    const perPull =
      sum(entries.map((entry) => (/pull-/.test(entry.event.type) ? lengthOf(entry) : 0))) / pulls.length;
    const batch = (wrench[0] === undefined ? 0 : lengthOf(wrench[0])) - batchBytes(wrench[0]);
    const gauge = sum(entries.map((entry) => (isGauge(entry) ? lengthOf(entry) : 0))) / cylinders;
    const typical = perPull + 6 * batch + (300 * sampleBytes) / samples + gauge;
    return [
      String(seed).padStart(5),
      attempts.toFixed(1).padStart(9),
      (last / 1e6).toFixed(0).padStart(8),
      String(Math.round(made.bytes.length / cylinders)).padStart(7),
      String(inFile(sampleBytes)).padStart(17),
      String(Math.round(made.bytes.length / cylinders) - inFile(all - kept)).padStart(13),
      String(Math.round((typical * 4) / 3)).padStart(20),
      String(Math.round(gzipSync(made.bytes, { level: 9 }).length / cylinders)).padStart(18),
    ].join(' ');
  } finally {
    made.remove();
  }
}

/** Of its JSON, whose base64url is in the file; its disclosures are in that already. */
const lengthOf = (entry: LogEntry): number =>
  signedBytes(entry).length + sum(disclosuresOf(entry).map(({ length }) => (length * 3) / 4));

const isGauge = ({ event }: LogEntry) =>
  event.type === 'gap-measured' || (event.type === 'readings' && event.tool === 'gauge');
const batchBytes = (entry: LogEntry | undefined) =>
  entry?.event.type === 'readings' ? entry.event.times.length + entry.event.counts.length : 0;
const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);

/** Size of a batch when only the samples around pulls stay; nothing where none does. */
function withoutRest(entry: LogEntry, pulls: readonly LogEntry[]): number {
  if (entry.event.type !== 'readings') return 0;
  const samples = decodeSamples(entry.event);
  if (!samples.ok) throw new Error(samples.error.message);
  const { atUs, counts } = samples.value;
  const near = (at: number) =>
    pulls.some(
      ({ event }) =>
        event.type === 'pull-detected' && at >= event.startUs - AROUND_US && at <= event.endUs + AROUND_US,
    );
  const stays = atUs.map(near);
  if (!stays.includes(true)) return 0;
  const coded = encodeSamples({
    atUs: atUs.filter((_, i) => stays[i]),
    counts: counts.filter((_, i) => stays[i]),
  });
  return lengthOf({ ...entry, event: { ...entry.event, ...coded } });
}
