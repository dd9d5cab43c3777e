import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { openStationLog } from '../../db/log.ts';
import { FORMATS } from '../../drivers/imds/numbers.ts';
import { decodeValue, encodeValue } from '../../drivers/imds/value.ts';
import { Random } from '../../sim/random.ts';
import { SIMULATED_INSTRUMENTS } from '../../sim/station.ts';
import type { StationLog } from '../../src/evidence/log.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { type Bench, type BenchInput, createBench } from '../../src/job/bench.ts';
import { writerOf } from '../../src/job/command-event.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { workOrderSchema } from '../../src/job/order.ts';
import { orThrow } from '../../src/result.ts';
import { drawCase } from './campaign/case.ts';
import { quantile } from './campaign/tally.ts';
import { worked } from './campaign/work.ts';
import type { Measurement } from './measurement.ts';

const TICK_MS = 2;
const RATE_HZ = 1000;

interface Took {
  readonly acceptMs: number;
  readonly appendMs: number;
}

interface Verdict extends Took {
  readonly lateMs: number;
}

interface Station {
  readonly bench: Bench;
  readonly stream: string;
  readonly atMs: Float64Array;
  readonly bytes: readonly Uint8Array[];
  next: number;
}

/** From the bytes of a notification to the verdict on disk, with many wrenches at once, in real time. */
export const endToEnd: Measurement = {
  name: 'end-to-end',
  what: 'bytes to durable verdict in real time, one log for all (tools=16 seconds=80)',
  run: async ({ number, progress }) => {
    const tools = number('tools', 16);
    const lastMs = 1000 * number('seconds', 80);
    const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
    const log = await openStationLog(join(folder, 'station.db'));
    try {
      const stations = Array.from({ length: tools }, (_, n) => stationOf(n, log));
      const verdicts: Verdict[] = [];
      let samples = 0;
      const busy = process.cpuUsage();
      const startMs = performance.now();
      for (let nowMs = 0; nowMs < lastMs; nowMs = performance.now() - startMs) {
        for (const station of stations)
          samples += upTo(station, nowMs, log, (dueMs, { acceptMs, appendMs }) =>
            verdicts.push({ lateMs: performance.now() - startMs - dueMs, acceptMs, appendMs }),
          );
        progress(nowMs / lastMs, `${samples} samples, ${verdicts.length} verdicts`);
        await sleep(TICK_MS);
      }
      const spentMs = performance.now() - startMs;
      const { user, system } = process.cpuUsage(busy);
      const spread = (of: (verdict: Verdict) => number) => {
        const at = (share: number) => `${quantile(verdicts.map(of), share).toFixed(1).padStart(6)} ms`;
        return `median ${at(0.5)}, 99 % ${at(0.99)}, longest ${at(1)}`;
      };
      return [
        `${tools} wrenches, ${(samples / spentMs).toFixed(1)} samples a millisecond in all, ${verdicts.length} verdicts`,
        `last sample of a pull due to verdict on disk   ${spread(({ lateMs }) => lateMs)} (goal: 99 % within 50 ms)`,
        `  of it finding, placing and judging           ${spread(({ acceptMs }) => acceptMs)}`,
        `  of it writing and syncing                    ${spread(({ appendMs }) => appendMs)}`,
        `  of it waiting for a turn (other tools, ${TICK_MS} ms)${spread(({ lateMs, acceptMs, appendMs }) => lateMs - acceptMs - appendMs)}`,
        `processor: ${((user + system) / 10 / spentMs).toFixed(0)} % of one core`,
      ];
    } finally {
      log.close();
      rmSync(folder, { recursive: true });
    }
  },
};

function stationOf(n: number, log: StationLog): Station {
  const stream = { rateHz: RATE_HZ, noiseShare: 0.001, lossShare: 0, jitterShare: 0.05, bunchUs: 0 };
  const engine = worked(drawCase(`end to end ${n}`, stream, new Random(`end to end ${n}`)));
  const example = new URL('../../sim/example/order-8.json', import.meta.url);
  const order = workOrderSchema.parse(JSON.parse(readFileSync(example, 'utf8')));
  const opening = { on: '2026-01-15', decision: USUAL_DECISION, overrides: [] };
  const opened = orThrow(openJob({ ...order, job: `E-${n}` }, SIMULATED_INSTRUMENTS, opening));
  const state = foldAll(opened);
  if (state === null) throw new Error('the job did not open');
  const station: Station = {
    bench: createBench(state),
    stream: `job:E-${n}`,
    atMs: engine.atUs.map((us) => us / 1000),
    bytes: [...engine.nm].map((nm) =>
      orThrow(encodeValue(FORMATS.torque, { kind: 'value', counts: Math.round(nm * 100) })),
    ),
    next: 0,
  };
  put(log, station.stream, opened);
  give(station, { kind: 'session', program: 'measurement', platform: 'simulation', simulated: true }, log);
  const description = {
    quantity: 'torque',
    unit: 'N.m',
    exponent: -2,
    samplingFunction: 'instantaneous',
    link: { kind: 'direct', authenticated: false },
  } as const;
  give(
    station,
    { kind: 'link', tool: 'wrench', driver: 'measurement', link: { state: 'linked', description } },
    log,
  );
  return station;
}

/** Delivers what is due; tells of each verdict when its last sample was. */
function upTo(
  station: Station,
  nowMs: number,
  log: StationLog,
  verdict: (dueMs: number, took: Took) => void,
): number {
  const first = station.next;
  for (; (station.atMs[station.next] ?? Number.POSITIVE_INFINITY) <= nowMs; station.next++) {
    const dueMs = station.atMs[station.next] ?? 0;
    const value = decodeValue(FORMATS.torque, station.bytes[station.next] ?? new Uint8Array());
    if (!value.ok || value.value.kind !== 'value') throw new Error('bytes that are no torque');
    const reading = {
      kind: 'value',
      n: station.next + 1,
      atUs: Math.round(dueMs * 1000),
      counts: value.value.counts,
    } as const;
    const took = give(station, { kind: 'reading', tool: 'wrench', reading }, log);
    if (took !== null) verdict(dueMs, took);
  }
  return station.next - first;
}

/** How long it took, where the input led to a verdict; all it led to is on disk then. */
function give({ bench, stream }: Station, input: BenchInput, log: StationLog): Took | null {
  const fromMs = performance.now();
  const events = orThrow(bench.accept(input));
  const acceptedMs = performance.now();
  if (events.length > 0) put(log, stream, events);
  if (!events.some(({ type }) => type === 'pull-placed')) return null;
  return { acceptMs: acceptedMs - fromMs, appendMs: performance.now() - acceptedMs };
}

function put(log: StationLog, stream: string, events: readonly JobEvent[]): void {
  log.append(
    stream,
    events.map((event) => ({ by: writerOf(event), event })),
    { at: new Date().toISOString(), monoUs: Math.round(performance.now() * 1000) },
  );
}
