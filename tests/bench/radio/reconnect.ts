import { onBench } from '../../drivers/bench.ts';
import type { Measurement } from '../measurement.ts';
import { spread } from './figures.ts';
import { driverOf, wrenchNumber } from './wrench.ts';

const INTERVALS_MS = [100, 500, 1_000];

/** How long a wrench that wakes needs until it is subscribed, in virtual time, through the real noble. */
export const reconnect: Measurement = {
  name: 'radio-wake',
  what: 'first advertisement to subscription of a wrench that wakes (cycles=200)',
  run: async ({ number, progress }) => {
    const cycles = number('cycles', 200);
    const lines: string[] = [];
    for (const [i, advertisingIntervalMs] of INTERVALS_MS.entries()) {
      const took: number[] = [];
      await onBench(async ({ radio, controller, scheduler }) => {
        const { definition } = wrenchNumber(0);
        const sender = controller.addPeripheral({ ...definition, advertisingIntervalMs });
        const tool = driverOf(0, radio, scheduler);
        let linkedUs = 0;
        let seenUs = 0;
        tool.link$.subscribe(({ state }) => {
          if (state === 'seen') seenUs = scheduler.nowUs();
          if (state === 'linked') linkedUs = scheduler.nowUs();
        });
        await scheduler.runUntil(tool.connect());
        for (let cycle = 0; cycle < cycles; cycle++) {
          sender.stopAdvertising();
          sender.dropLink(cycle % 2 === 0 ? 0x08 : 0x13);
          await scheduler.runFor((100 + ((cycle * 7_919) % 30_000)) * 1_000);
          linkedUs = 0;
          sender.startAdvertising();
          while (linkedUs === 0) await scheduler.runFor(5_000);
          took.push(linkedUs - seenUs);
          progress((i + cycle / cycles) / INTERVALS_MS.length, `${advertisingIntervalMs} ms`);
        }
        await scheduler.runUntil(tool.close());
      });
      lines.push(`advertising every ${String(advertisingIntervalMs).padStart(4)} ms: ${spread(took)}`);
    }
    return [
      ...lines,
      'goal: below 3 s; virtual time, the real noble, connection interval as noble asks for it',
    ];
  },
};
