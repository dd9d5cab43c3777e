import { describe, expect, test } from 'vitest';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import { imds } from '../../../drivers/imds/language.ts';
import { TORQUE } from '../../../drivers/imds/numbers.ts';
import type { Reading } from '../../../src/reading.ts';
import { type Bench, counts, good, onBench, WRENCH, wrench } from '../bench.ts';

const MS = 1_000;
const SECOND_US = 1_000_000;

function listen({ radio, scheduler }: Bench, adopted = WRENCH as { address: string; serial: string }) {
  const tool = bluetoothTool({
    id: adopted.serial,
    language: imds('torque'),
    adopted,
    radio,
    clock: scheduler,
    after: scheduler.after,
  });
  const readings: Reading[] = [];
  const states: string[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  tool.link$.subscribe(({ state }) => states.push(state));
  return { tool, readings, states };
}

/** Microseconds until the tool is subscribed. */
async function untilLinked({ scheduler }: Bench, states: readonly string[]): Promise<number> {
  const fromUs = scheduler.nowUs();
  while (states.at(-1) !== 'linked' && scheduler.nowUs() - fromUs < 10 * SECOND_US)
    await scheduler.runFor(5 * MS);
  return scheduler.nowUs() - fromUs;
}

describe('a wrench that wakes is subscribed within 3 s', () => {
  test.each([100, 500, 1_000])(
    'advertising every %d ms, whatever the station waits for',
    (advertisingIntervalMs) =>
      onBench(async (bench) => {
        const { scheduler, controller } = bench;
        const sender = controller.addPeripheral({ ...wrench(), advertisingIntervalMs });
        const { tool, states } = listen(bench);
        good(await scheduler.runUntil(tool.connect()));
        for (let i = 0; i < 12; i++) {
          sender.stopAdvertising();
          sender.dropLink(i % 2 === 0 ? 0x13 : 0x08);
          await scheduler.runFor((i * 713 + 50) * MS);
          expect(states.at(-1)).toBe('asleep');
          sender.startAdvertising();
          // From its first advertisement on, which comes up to an interval later.
          expect((await untilLinked(bench, states)) - advertisingIntervalMs * MS).toBeLessThan(3 * SECOND_US);
        }
        await scheduler.runUntil(tool.close());
      }),
  );

  test('also after many failed attempts, at any moment of the wait that they led to', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(wrench());
      const { tool, states } = listen(bench);
      // Falls asleep each time as soon as it has been heard.
      let sleepy = true;
      tool.link$.subscribe(
        ({ state }) => void (sleepy && state === 'connecting' && sender.stopAdvertising()),
      );
      void tool.connect();
      for (let i = 0; i < 8; i++) {
        sender.startAdvertising();
        const failed = () => states.filter((state) => state === 'not-joined').length;
        const before = failed();
        while (failed() === before) await scheduler.runFor(5 * MS);
        await scheduler.runFor(i * 200 * MS);
      }
      sleepy = false;
      sender.startAdvertising();
      expect(await untilLinked(bench, states)).toBeLessThan(3 * SECOND_US);
      await scheduler.runUntil(tool.close());
    }));

  test('although another adopted tool keeps falling asleep while it is called', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sleeper = { address: 'c0:00:00:00:00:31', name: 'sleeper', serial: 'S-1' };
      const other = controller.addPeripheral(wrench(sleeper));
      const sender = controller.addPeripheral(wrench());
      sender.stopAdvertising();
      const first = listen(bench, sleeper);
      const second = listen(bench);
      first.tool.link$.subscribe(({ state }) => {
        if (state === 'connecting') other.stopAdvertising();
        if (state === 'asleep') other.startAdvertising();
      });
      void first.tool.connect();
      void second.tool.connect();
      const took: number[] = [];
      for (let i = 0; i < 8; i++) {
        await scheduler.runFor((1_000 + i * 377) * MS);
        sender.startAdvertising();
        took.push(await untilLinked(bench, second.states));
        sender.stopAdvertising();
        sender.dropLink(0x13);
      }
      expect(Math.max(...took)).toBeLessThan(6 * SECOND_US);
      await scheduler.runUntil(Promise.all([first.tool.close(), second.tool.close()]));
    }));
});

test.each([2, 8])('%d tools that are switched on in the same moment are all subscribed within 3 s', (count) =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    const all = Array.from({ length: count }, (_, i) => {
      const adopted = { address: `c0:00:00:00:01:0${i}`, name: `wrench ${i}`, serial: `W-${i}` };
      const sender = controller.addPeripheral(wrench(adopted));
      sender.stopAdvertising();
      return { sender, ...listen(bench, adopted) };
    });
    for (const { tool } of all) void tool.connect();
    await scheduler.runFor(20 * SECOND_US);
    for (const { sender } of all) sender.startAdvertising();
    await scheduler.runFor(3 * SECOND_US);
    expect(all.map(({ states }) => states.at(-1))).toEqual(all.map(() => 'linked'));
    await scheduler.runUntil(Promise.all(all.map(({ tool }) => tool.close())));
  }),
);

test('eight tools at once are all subscribed, and each gets its own readings and no others', () =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    const all = Array.from({ length: 8 }, (_, i) => {
      const adopted = { address: `c0:00:00:00:01:0${i}`, name: `wrench ${i}`, serial: `W-${i}` };
      return { sender: controller.addPeripheral(wrench(adopted)), ...listen(bench, adopted) };
    });
    const joined = await scheduler.runUntil(Promise.all(all.map(({ tool }) => tool.connect())));
    expect(joined.map((one) => good(one).serial)).toEqual(all.map((_, i) => `W-${i}`));
    for (let n = 0; n < 100; n++) {
      all.forEach(({ sender }, i) => void sender.notify(0x2c0b, counts(TORQUE, i * 1_000 + n)));
      await scheduler.runFor(10 * MS);
    }
    await scheduler.runFor(SECOND_US);
    all.forEach(({ readings }, i) => {
      const got = readings.flatMap((one) => (one.kind === 'value' ? [one.counts] : []));
      expect(got).toEqual(Array.from({ length: 100 }, (_, n) => i * 1_000 + n));
    });
    await scheduler.runUntil(Promise.all(all.map(({ tool }) => tool.close())));
  }));

test('a device that vanishes without a word, and an adapter that does not notice, are noticed by the station', () =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    const sender = controller.addPeripheral(wrench());
    const { tool, states, readings } = listen(bench);
    good(await scheduler.runUntil(tool.connect()));
    sender.notify(0x2c0b, counts(TORQUE, 1));
    await scheduler.runFor(SECOND_US);
    sender.dropLink('silent');
    const fromUs = scheduler.nowUs();
    while (!states.includes('lost')) await scheduler.runFor(100 * MS);
    expect(scheduler.nowUs() - fromUs).toBeLessThan(10 * SECOND_US);
    await scheduler.runFor(15 * SECOND_US);
    expect(states.at(-1)).toBe('linked');
    sender.notify(0x2c0b, counts(TORQUE, 2));
    await scheduler.runFor(SECOND_US);
    expect(readings.map(({ kind }) => kind).filter((kind) => kind !== 'raw')).toEqual([
      'value',
      'missed',
      'value',
    ]);
    await scheduler.runUntil(tool.close());
  }));
