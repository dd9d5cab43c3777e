import { notification } from '../../../sim/peripherals.ts';
import type { Reading } from '../../../src/reading.ts';
import { onBench } from '../../drivers/bench.ts';
import type { Measurement } from '../measurement.ts';
import { driverOf, wrenchNumber } from './wrench.ts';

/** Notifications that the controller delivered against readings that the driver gave, with links forced down. */
export const loss: Measurement = {
  name: 'radio-loss',
  what: 'readings lost with links forced down, in virtual time (notifications=1000000 disconnects=1000)',
  run: async ({ number, progress }) => {
    const notifications = number('notifications', 1_000_000);
    const disconnects = number('disconnects', 1_000);
    const each = Math.floor(notifications / (disconnects + 1));
    const got = { values: 0, missed: 0, wrongNumber: 0, backwards: 0, notInOrder: 0 };
    let counts = { sent: 0, delivered: 0, lost: 0 };
    let gaps = 0;
    await onBench(async ({ radio, controller, scheduler }) => {
      const sender = controller.addPeripheral(wrenchNumber(0).definition);
      const tool = driverOf(0, radio, scheduler);
      let last: Reading | undefined;
      let lastCounts = -1;
      let linked = false;
      tool.link$.subscribe(({ state }) => {
        linked = state === 'linked';
      });
      tool.readings$.subscribe((reading) => {
        if (reading.n !== (last?.n ?? 0) + 1) got.wrongNumber += 1;
        if (reading.atUs < (last?.atUs ?? 0)) got.backwards += 1;
        if (reading.kind === 'missed') got.missed += 1;
        if (reading.kind === 'value') {
          got.values += 1;
          if (reading.counts <= lastCounts) got.notInOrder += 1;
          lastCounts = reading.counts;
        }
        last = reading;
      });
      await scheduler.runUntil(tool.connect());
      for (let n = 0; n < notifications; n++) {
        sender.notify(0x2c0b, notification('torque', n));
        await scheduler.runFor(10_000);
        if (n % each === each - 1 && gaps < disconnects) {
          sender.dropLink([0x08, 0x13, 0x15][gaps % 3] ?? 0x08);
          gaps += 1;
          do await scheduler.runFor(50_000);
          while (!linked);
        }
        progress(n / notifications, `${n} sent`);
      }
      await scheduler.runFor(1_000_000);
      counts = sender.counts();
      await scheduler.runUntil(tool.close());
    });
    return [
      `notifications sent          ${counts.sent}`,
      `delivered by the controller ${counts.delivered}`,
      `under way when a link ended ${counts.lost}`,
      `readings of the driver      ${got.values}   (lost: ${counts.delivered - got.values}; goal 0)`,
      `links forced down           ${gaps}`,
      `gaps recorded               ${got.missed}   (goal ${gaps})`,
      `numbers out of step ${got.wrongNumber}, stamps going back ${got.backwards}, twice or out of order ${got.notInOrder}`,
    ];
  },
};
