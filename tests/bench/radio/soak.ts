import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { notification } from '../../../sim/peripherals.ts';
import { onBench } from '../../drivers/bench.ts';
import { report } from '../../drivers/radio/hostile.ts';
import type { Measurement } from '../measurement.ts';
import { driverOf, wrenchNumber } from './wrench.ts';

const HOUR_US = 3_600_000_000;

/** Memory of the radio, noble included, over a day in virtual time with strangers passing by and links lost. */
export const soak: Measurement = {
  name: 'radio-day',
  what: 'memory over a simulated day, a link lost every 5 minutes, strangers on the air (hours=24 perSecond=5)',
  run: async ({ number, progress }) => {
    const hours = number('hours', 24);
    const perSecond = number('perSecond', 5);
    setFlagsFromString('--expose_gc');
    const collect: unknown = runInNewContext('gc');
    const heapMb = () => {
      if (typeof collect === 'function') collect();
      return process.memoryUsage().heapUsed / 2 ** 20;
    };
    const lines = ['  hour    heap   readings     gaps'];
    await onBench(async ({ radio, controller, scheduler, socket }) => {
      const sender = controller.addPeripheral(wrenchNumber(0).definition);
      const tool = driverOf(0, radio, scheduler);
      const seen = { values: 0, missed: 0 };
      tool.readings$.subscribe(({ kind }) => {
        if (kind === 'value') seen.values += 1;
        if (kind === 'missed') seen.missed += 1;
      });
      await scheduler.runUntil(tool.connect());
      const originUs = scheduler.nowUs();
      let stranger = 0;
      for (let hour = 0; hour <= hours; hour++) {
        const mb = heapMb().toFixed(1).padStart(7);
        lines.push(
          `  ${String(hour).padStart(4)} ${mb} ${String(seen.values).padStart(10)} ${String(seen.missed).padStart(8)}`,
        );
        if (hour === hours) break;
        while (scheduler.nowUs() - originUs < (hour + 1) * HOUR_US) {
          sender.notify(0x2c0b, notification('torque', seen.values % 5_000));
          await scheduler.runFor(1_000_000 / perSecond);
          // A new stranger every time: telephones change their addresses.
          stranger += 1;
          if (stranger % (300 * perSecond) === 0) sender.dropLink(0x08);
          socket.emit('data', report(0, stranger, Buffer.from('03035a18', 'hex')));
          socket.emit('data', report(4, stranger, Buffer.from('0309414243', 'hex')));
          progress((scheduler.nowUs() - originUs) / (hours * HOUR_US), `hour ${hour}`);
        }
      }
      await scheduler.runUntil(tool.close());
    });
    return [...lines, 'heap in MB after a collection; goal: no growth'];
  },
};
