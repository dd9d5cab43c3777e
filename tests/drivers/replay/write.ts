import { recorder } from '../../../drivers/replay/recorder.ts';
import { FORM, type Header } from '../../../drivers/replay/schema.ts';
import type { Reading } from '../../../src/reading.ts';

export const HEADER: Header = {
  form: FORM,
  tool: 'wrench',
  timing: { stamps: 'arrival' },
  description: {
    quantity: 'torque',
    unit: 'N.m',
    exponent: -2,
    serial: 'W-1',
    samplingFunction: 'instantaneous',
    uncertainty: { kind: 'relative', percent: 4 },
    link: { kind: 'bluetooth-le', address: 'c0:00:00:00:00:01', authenticated: false },
  },
};

/** The whole file. */
export function write(readings: readonly Reading[], header: Header = HEADER): string {
  const lines: string[] = [];
  const { add, end } = recorder(header, (line) => lines.push(line));
  for (const reading of readings) add(reading);
  end();
  return lines.join('');
}
