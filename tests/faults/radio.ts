/** A device, or somebody in its place, sends what it likes or nothing at all, while the whole stack listens. */
import { bluetoothTool } from '../../drivers/bluetooth/tool.ts';
import { imds } from '../../drivers/imds/language.ts';
import { TORQUE } from '../../drivers/imds/numbers.ts';
import type { Random } from '../../sim/random.ts';
import type { Reading } from '../../src/reading.ts';
import { counts, onBench, WRENCH, wrench } from '../drivers/bench.ts';
import { acl, att, connectedHandle } from '../drivers/radio/hostile.ts';
import { type Outcome, type Part, pick, whole } from './part.ts';

const SECOND_US = 1_000_000;

export const radio: Part = {
  name: 'radio',
  what: 'links with a device that misbehaves',
  cases: 400,
  short: 10,
  prepare: () => ({ one: (_number, random) => misbehaving(random) }),
};

async function misbehaving(random: Random): Promise<Outcome> {
  const printed: string[] = [];
  const readings: Reading[] = [];
  const sent: number[] = [];
  let comesBack = false;
  /** Silent from a moment on: replies to requests are never sent. */
  const silent = random.chance(0.3) ? whole(random, 0, 60) : Number.POSITIVE_INFINITY;
  let replies = 0;
  const { log, warn, error } = console;
  const hear = (...texts: unknown[]) => void printed.push(texts.join(' '));
  Object.assign(console, { log: hear, warn: hear, error: hear });
  try {
    await onBench(async ({ scheduler, controller, radio: air, socket }) => {
      const sender = controller.addPeripheral(wrench());
      const tool = bluetoothTool({
        id: 'wrench',
        language: imds('torque'),
        adopted: WRENCH,
        radio: air,
        clock: scheduler,
        after: scheduler.after,
        random: () => 0.5,
      });
      tool.readings$.subscribe((reading) => readings.push(reading));
      let handle = 0;
      socket.on('data', (packet: Buffer) => {
        handle = connectedHandle(packet) ?? handle;
      });
      const emit = socket.emit.bind(socket);
      socket.emit = (name: string | symbol, ...args: unknown[]) => {
        const [packet] = args;
        const isReply = name === 'data' && packet instanceof Buffer && packet[0] === 0x02;
        if (isReply && ++replies > silent && !comesBack) return true;
        return emit(name, ...args);
      };
      const joined = tool.connect();
      await scheduler.runFor(5 * SECOND_US);
      for (let i = 0; i < 40; i++) {
        const bytes = Buffer.from(Array.from({ length: whole(random, 0, 60) }, () => whole(random, 0, 255)));
        const packet = pick(random, [
          () => att(handle, bytes),
          () => acl(handle, random.chance(0.5), bytes),
          () => Buffer.concat([Buffer.of(0x04, 0x3e, bytes.length), bytes]),
          () => bytes,
        ])();
        if (random.chance(0.7)) emit('data', packet);
        else {
          const value = whole(random, 0, 2000);
          if (sender.notify(0x2c0b, counts(TORQUE, value))) sent.push(value);
        }
        await scheduler.runFor(whole(random, 0, SECOND_US / 4));
      }
      comesBack = true;
      await scheduler.runFor(60 * SECOND_US);
      sender.notify(0x2c0b, counts(TORQUE, 1234));
      sent.push(1234);
      await scheduler.runFor(5 * SECOND_US);
      await scheduler.runUntil(tool.close());
      await scheduler.runUntil(joined);
    });
  } finally {
    Object.assign(console, { log, warn, error });
  }
  const values = readings.flatMap((reading) => (reading.kind === 'value' ? [reading.counts] : []));
  return {
    faults: [
      ...(values.at(-1) === 1234 ? [] : ['the tool did not come back']),
      ...(printed.length === 0 ? [] : [`something printed over the screen: ${printed[0]}`]),
    ],
    counted: { readings: values.length, 'never replied': silent === Number.POSITIVE_INFINITY ? 0 : 1 },
  };
}
