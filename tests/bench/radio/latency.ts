import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { openStationLog } from '../../../db/log.ts';
import { openRadio } from '../../../drivers/radio/open.ts';
import { createController } from '../../../sim/controller/index.ts';
import { notification } from '../../../sim/peripherals.ts';
import { realScheduler } from '../../../sim/scheduler.ts';
import { encodeSamples } from '../../../src/pull/trace.ts';
import { orThrow } from '../../../src/result.ts';
import type { Measurement } from '../measurement.ts';
import { spread } from './figures.ts';
import { driverOf, wrenchNumber } from './wrench.ts';

/** A job writes samples at the latest so long after they came, while a pull is under way (src/job/bench.ts). */
const BATCH_US = 100_000;

/**
 * From the moment a notification is handed to noble's socket to the moment its event is on disk (synchronous=FULL), in
 * real time: each reading written by itself, as a gap is, and in the batches of a pull.
 */
export const latency: Measurement = {
  name: 'radio-latency',
  what: 'notification to durable event through noble, at 100 Hz with 1 and with 8 tools (seconds=20)',
  run: async ({ number, progress }) => {
    const seconds = number('seconds', 20);
    const lines: string[] = [];
    for (const [i, { tools, hz, batchUs }] of CASES.entries()) {
      const measured = await measure(tools, hz, batchUs, seconds, (share) =>
        progress((i + share) / CASES.length, `${tools} at ${hz} Hz`),
      );
      const how = batchUs === 0 ? 'each by itself' : `in batches of ${batchUs / 1_000} ms`;
      lines.push(`${tools} at ${hz} Hz, ${measured.sent} sent`);
      lines.push(`  packet to reading ${spread(measured.toReading)}`);
      lines.push(`  packet to disk    ${spread(measured.toDisk)}, ${how}`);
    }
    return lines;
  },
};

const CASES = [
  { tools: 1, hz: 10, batchUs: 0 },
  { tools: 1, hz: 100, batchUs: 0 },
  { tools: 1, hz: 100, batchUs: BATCH_US },
  { tools: 8, hz: 100, batchUs: BATCH_US },
];

interface Waiting {
  readonly first: number;
  readonly atUs: number[];
  readonly counts: number[];
  readonly fromUs: number[];
}

async function measure(
  tools: number,
  hz: number,
  batchUs: number,
  seconds: number,
  progress: (share: number) => void,
) {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
  const log = await openStationLog(join(folder, 'station.db'));
  const scheduler = realScheduler();
  const controller = createController({ scheduler, address: 'c0:ff:ee:00:00:00' });
  /** When the packet with these counts came out of the controller. */
  const handedUs = new Map<number, number>();
  class Stamped extends controller.HciSocket {
    override emit(event: string, ...args: unknown[]): boolean {
      const [packet] = args;
      if (event === 'data' && Buffer.isBuffer(packet) && packet[0] === 0x02 && packet[9] === 0x1b)
        handedUs.set(packet.readInt32LE(12), scheduler.nowUs());
      return super.emit(event, ...args);
    }
  }
  const radio = orThrow(await openRadio({ socket: Stamped, deviceId: 0 }));
  const toReading: number[] = [];
  const toDisk: number[] = [];
  const all = Array.from({ length: tools }, (_, n) => ({
    sender: controller.addPeripheral(wrenchNumber(n).definition),
    tool: driverOf(n, radio, scheduler),
  }));
  for (const { tool } of all) {
    let waiting: Waiting | undefined;
    tool.readings$.subscribe((reading) => {
      if (reading.kind !== 'value') return;
      const fromUs = handedUs.get(reading.counts);
      if (fromUs === undefined) return;
      handedUs.delete(reading.counts);
      toReading.push(scheduler.nowUs() - fromUs);
      waiting ??= { first: reading.n, atUs: [], counts: [], fromUs: [] };
      waiting.atUs.push(reading.atUs);
      waiting.counts.push(reading.counts);
      waiting.fromUs.push(fromUs);
      if (reading.atUs - (waiting.atUs[0] ?? reading.atUs) < batchUs) return;
      const { first, fromUs: since, ...samples } = waiting;
      waiting = undefined;
      const event = {
        type: 'readings' as const,
        tool: tool.id,
        first,
        ...encodeSamples(samples),
      };
      log.append('job:A', [{ by: 'station', event }], { at: new Date().toISOString(), monoUs: reading.atUs });
      for (const start of since) toDisk.push(scheduler.nowUs() - start);
    });
  }
  for (const joined of await Promise.all(all.map(({ tool }) => tool.connect()))) orThrow(joined);
  const startUs = scheduler.nowUs();
  let n = 0;
  for (let round = 0; round < seconds * hz; round++) {
    for (const { sender } of all) {
      n += 1;
      sender.notify(0x2c0b, notification('torque', n));
    }
    progress(round / (seconds * hz));
    // To the grid, so that the rate holds however long a round took.
    await sleep(Math.max(0, (startUs + ((round + 1) * 1_000_000) / hz - scheduler.nowUs()) / 1_000));
  }
  await Promise.all(all.map(({ tool }) => tool.close()));
  await radio.close();
  controller.close();
  log.close();
  rmSync(folder, { recursive: true });
  return { sent: n, toReading, toDisk };
}
