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
const LAST = 1234;
/** ATT_HANDLE_VALUE_NTF. */
const NOTIFICATION = 0x1b;
/** Behind the headers of ACL and L2CAP. */
const ATT_AT = 9;

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
  const sent: Sent[] = [];
  let comesBack = false;
  /** Silent from a moment on: replies to requests are never sent. */
  const silent = random.chance(0.3) ? whole(random, 0, 60) : Number.POSITIVE_INFINITY;
  let replies = 0;
  let swallowed = 0;
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
        if (isReply && ++replies > silent && !comesBack) {
          if (packet[ATT_AT] === NOTIFICATION) swallowed++;
          return true;
        }
        return emit(name, ...args);
      };
      const joined = tool.connect();
      await scheduler.runFor(5 * SECOND_US);
      // No two alike, so that each is known again. False: it is not linked, or nobody listens; then nothing went out.
      const send = (value: number) => {
        if (sender.notify(0x2c0b, counts(TORQUE, value))) sent.push({ value, atUs: scheduler.nowUs() });
      };
      const sendNext = () => send(2000 + sent.length);
      for (let i = 0; i < 40; i++) {
        const bytes = Buffer.from(Array.from({ length: whole(random, 0, 60) }, () => whole(random, 0, 255)));
        const packet = pick(random, [
          () => att(handle, bytes),
          () => acl(handle, random.chance(0.5), bytes),
          () => Buffer.concat([Buffer.of(0x04, 0x3e, bytes.length), bytes]),
          () => bytes,
        ])();
        if (random.chance(0.7)) emit('data', packet);
        else sendNext();
        await scheduler.runFor(whole(random, 0, SECOND_US / 4));
        // With whatever is under way.
        if (random.chance(0.02)) {
          for (let more = whole(random, 1, 3); more > 0; more--) sendNext();
          sender.dropLink(0x08);
        }
      }
      comesBack = true;
      await scheduler.runFor(60 * SECOND_US);
      send(LAST);
      await scheduler.runFor(5 * SECOND_US);
      await scheduler.runUntil(tool.close());
      await scheduler.runUntil(joined);
    });
  } finally {
    Object.assign(console, { log, warn, error });
  }
  const { faults, arrived, told, unheard } = compared(sent, readings);
  return {
    faults: [
      ...faults,
      // What the test itself took out of the air, on a link that stays, nobody can tell.
      ...(unheard.length > swallowed
        ? [
            `${unheard.length} readings were lost without a word (${unheard.join(', ')}), ${swallowed} swallowed`,
          ]
        : []),
      ...(readings.some((reading) => reading.kind === 'value' && reading.counts === LAST)
        ? []
        : ['the tool did not come back']),
      ...(printed.length === 0 ? [] : [`something printed over the screen: ${printed[0]}`]),
    ],
    counted: {
      sent: sent.length,
      arrived,
      'told as missed': told,
      'swallowed on a link that stays': unheard.length,
      'never replied': silent === Number.POSITIVE_INFINITY ? 0 : 1,
    },
  };
}

interface Sent {
  readonly value: number;
  readonly atUs: number;
}

/** All that went out against all that came in: each once, in its order, or inside a gap that is stated as missed. */
function compared(sent: readonly Sent[], readings: readonly Reading[]) {
  const faults: string[] = [];
  const values = readings.flatMap((one) =>
    one.kind === 'value' || one.kind === 'stored' ? [one.counts] : [],
  );
  let from = 0;
  for (const value of values) {
    const at = sent.findIndex((one, i) => i >= from && one.value === value);
    if (at < 0) faults.push(`${value} was read, and was not sent, or not then, or only once`);
    else from = at + 1;
  }
  const numbers = readings.map(({ n }) => n);
  if (numbers.some((n, i) => n !== i + 1)) faults.push(`readings are numbered ${numbers.join(' ')}`);
  const lost = sent.filter(({ value }) => !values.includes(value));
  const isTold = ({ atUs }: Sent) =>
    readings.some((one) => one.kind === 'missed' && one.fromUs <= atUs && atUs <= one.atUs);
  return {
    faults,
    arrived: values.length,
    told: lost.filter(isTold).length,
    unheard: lost.filter((one) => !isTold(one)).map(({ value }) => value),
  };
}
