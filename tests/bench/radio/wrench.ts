import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import type { Tool } from '../../../drivers/driver.ts';
import { imds } from '../../../drivers/imds/language.ts';
import type { Radio } from '../../../drivers/radio/radio.ts';
import { peripheralOf } from '../../../sim/peripherals.ts';
import type { Scheduler } from '../../../sim/scheduler.ts';

/** The n-th of several wrenches, as a peripheral and as it was adopted. */
export function wrenchNumber(n: number) {
  const adopted = {
    address: `c2:00:00:00:01:${n.toString(16).padStart(2, '0')}`,
    name: `wrench ${n}`,
    serial: `W-${n}`,
  };
  const definition = peripheralOf({
    ...adopted,
    quantity: 'torque',
    batteryPercent: 80,
    updateIntervalMs: 10,
    resolutionCounts: 1,
    samplingFunction: 'instantaneous',
    uncertaintyPermille: 20,
    rangeCounts: [-6_000, 6_000],
  });
  return { adopted, definition };
}

/** The shipped driver of the n-th wrench. */
export function driverOf(n: number, radio: Radio, scheduler: Scheduler): Tool {
  const { adopted } = wrenchNumber(n);
  return bluetoothTool({
    id: `wrench-${n}`,
    language: imds('torque'),
    adopted,
    radio,
    clock: scheduler,
    after: scheduler.after,
  });
}
