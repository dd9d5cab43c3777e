import { describe, expect, test } from 'vitest';
import type { Adopted } from '../../../drivers/bluetooth/adopted.ts';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import type { LinkState } from '../../../drivers/driver.ts';
import { imds } from '../../../drivers/imds/language.ts';
import { LENGTH, TORQUE } from '../../../drivers/imds/numbers.ts';
import type { Reading } from '../../../src/reading.ts';
import { type Bench, counts, GAUGE, gauge, good, onBench, WRENCH, wrench } from '../bench.ts';

// The whole of the shipped stack, noble included, over a virtual controller in virtual time.

/** A tool of the bench with everything that it says written down. */
function listen({ radio, scheduler }: Bench, quantity: 'torque' | 'length', adopted: Adopted) {
  const tool = bluetoothTool({
    id: quantity,
    language: imds(quantity),
    adopted,
    radio,
    clock: scheduler,
    after: scheduler.after,
    random: () => 0.5,
  });
  const readings: Reading[] = [];
  const links: LinkState[] = [];
  const refusals: string[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  tool.link$.subscribe((link) => links.push(link));
  tool.refusals$?.subscribe(({ reason }) => refusals.push(reason));
  return { tool, readings, links, refusals, states: () => links.map((link) => link.state) };
}

const listenToWrench = (bench: Bench, adopted: Adopted = WRENCH) => listen(bench, 'torque', adopted);

const values = (readings: readonly Reading[]) =>
  readings.flatMap((reading) => (reading.kind === 'value' ? [reading.counts] : []));

const SECOND_US = 1_000_000;

describe('a wrench and a gauge on one radio', () => {
  test('both are described, and both streams arrive whole, in order and numbered', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = { wrench: controller.addPeripheral(wrench()), gauge: controller.addPeripheral(gauge()) };
      const first = listenToWrench(bench);
      const second = listen(bench, 'length', GAUGE);
      const joined = await scheduler.runUntil(Promise.all([first.tool.connect(), second.tool.connect()]));

      expect(joined.map(good)).toEqual([
        {
          quantity: 'torque',
          unit: 'N.m',
          exponent: -2,
          maker: 'Example Tools',
          model: 'wrench-model',
          serial: 'W-1',
          firmware: '1.2.3',
          batteryPercent: 83,
          samplingFunction: 'instantaneous',
          updateIntervalMs: 10,
          resolutionCounts: 1,
          uncertainty: { kind: 'relative', percent: 4 },
          validRange: { lowerCounts: 0, upperCounts: 20_000 },
          link: { kind: 'bluetooth-le', address: WRENCH.address, authenticated: false },
        },
        expect.objectContaining({ quantity: 'length', unit: 'm', exponent: -7, serial: GAUGE.serial }),
      ]);
      expect(first.states()).toEqual(['asleep', 'seen', 'connecting', 'discovering', 'linked']);

      for (let i = 0; i < 500; i++) {
        sender.wrench.notify(0x2c0b, counts(TORQUE, i * 7 - 1_000));
        sender.gauge.notify(0x2c0a, counts(LENGTH, 8_000 + i));
        await scheduler.runFor(10_000);
      }
      await scheduler.runFor(100_000);
      expect(values(first.readings)).toEqual(Array.from({ length: 500 }, (_, i) => i * 7 - 1_000));
      expect(values(second.readings)).toEqual(Array.from({ length: 500 }, (_, i) => 8_000 + i));
      expect(first.readings.map((reading) => reading.n)).toEqual(first.readings.map((_, i) => i + 1));
      const stamps = first.readings.map((reading) => reading.atUs);
      expect(stamps).toEqual(stamps.toSorted((a, b) => a - b));
      await scheduler.runUntil(Promise.all([first.tool.close(), second.tool.close()]));
      expect(sender.wrench.connected()).toBe(false);
    }));

  test('a link that is dropped comes back by itself; the gap is one missed reading and the numbers go on', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(wrench());
      const { tool, readings, links, states } = listenToWrench(bench);
      good(await scheduler.runUntil(tool.connect()));
      sender.notify(0x2c0b, counts(TORQUE, 1));
      await scheduler.runFor(SECOND_US);
      const before = readings.at(-1);

      sender.dropLink(0x08);
      await scheduler.runFor(5 * SECOND_US);
      expect(states().slice(-6)).toEqual(['lost', 'asleep', 'seen', 'connecting', 'discovering', 'linked']);
      expect(links.find((link) => link.state === 'lost')).toEqual({
        state: 'lost',
        reason: 'out-of-reach',
        controllerReason: 0x08,
      });

      sender.notify(0x2c0b, counts(TORQUE, 2));
      sender.notify(0x2c0b, counts(TORQUE, 3));
      await scheduler.runFor(SECOND_US);
      const after = readings.slice(readings.findIndex((reading) => reading.kind === 'missed'));
      expect(after[0]).toMatchObject({
        kind: 'missed',
        fromUs: before?.atUs,
        reason: 'out-of-reach',
      });
      expect(values(readings)).toEqual([1, 2, 3]);
      expect(readings.filter((reading) => reading.kind === 'missed')).toHaveLength(1);
      expect(readings.map((reading) => reading.n)).toEqual(readings.map((_, i) => i + 1));
      await scheduler.runUntil(tool.close());
      expect(states().at(-1)).toBe('closed');
    }));

  test('twenty drops in a row leave one subscription and no packet twice', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(wrench());
      const { tool, readings } = listenToWrench(bench);
      good(await scheduler.runUntil(tool.connect()));
      for (let i = 0; i < 20; i++) {
        sender.notify(0x2c0b, counts(TORQUE, i));
        await scheduler.runFor(SECOND_US);
        sender.dropLink(i % 2 === 0 ? 0x08 : 0x13);
        await scheduler.runFor(5 * SECOND_US);
      }
      expect(values(readings)).toEqual(Array.from({ length: 20 }, (_, i) => i));
      await scheduler.runUntil(tool.close());
    }));
});

describe('packets that are no torque', () => {
  test('are kept as they came: not known, too short, and a descriptor without a public layout', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(wrench());
      const { tool, readings } = listenToWrench(bench);
      good(await scheduler.runUntil(tool.connect()));
      await scheduler.runFor(SECOND_US);
      sender.notify(0x2c0b, Uint8Array.of(0xff, 0xff, 0xff, 0x7f));
      sender.notify(0x2c0b, Uint8Array.of(0xc4, 0x09));
      await scheduler.runFor(SECOND_US);
      expect(readings).toEqual([
        { kind: 'raw', n: 1, atUs: expect.any(Number), source: '2913', hex: 'dead' },
        { kind: 'not-known', n: 2, atUs: expect.any(Number) },
        { kind: 'raw', n: 3, atUs: expect.any(Number), source: '2c0b', hex: 'c409' },
      ]);
      await scheduler.runUntil(tool.close());
    }));
});

test('what a device sends the moment it is subscribed to comes after the tool is announced, with its own stamp', () =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    const sender = controller.addPeripheral(wrench());
    sender.onSubscribe(() => {
      for (let i = 0; i < 5; i++) sender.notify(0x2c0b, counts(TORQUE, i));
    });
    const { tool, readings, links } = listenToWrench(bench);
    const statesAt: string[] = [];
    tool.readings$.subscribe(() => statesAt.push(links.at(-1)?.state ?? 'none'));
    good(await scheduler.runUntil(tool.connect()));
    await scheduler.runFor(SECOND_US);
    expect(values(readings)).toEqual([0, 1, 2, 3, 4]);
    expect(new Set(statesAt)).toEqual(new Set(['linked']));
    await scheduler.runUntil(tool.close());
  }));

test('a part of the description that cannot be read is left out of it and kept as it came', () =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    const plain = wrench();
    const spoilt = {
      ...plain,
      services: plain.services.map((service) => ({
        ...service,
        characteristics: service.characteristics.map((characteristic) =>
          characteristic.uuid === 0x2a19 ? { ...characteristic, value: Uint8Array.of(200) } : characteristic,
        ),
      })),
    };
    controller.addPeripheral(spoilt);
    const { tool, readings } = listenToWrench(bench);
    const description = good(await scheduler.runUntil(tool.connect()));
    expect(description).not.toHaveProperty('batteryPercent');
    expect(description).toMatchObject({ serial: 'W-1', resolutionCounts: 1 });
    expect(readings[0]).toMatchObject({ kind: 'raw', n: 1, source: '2a19', hex: 'c8' });
    await scheduler.runUntil(tool.close());
  }));

describe('a tool that must not be used is refused', () => {
  const refused = (change: Parameters<typeof wrench>[0]) => async (bench: Bench) => {
    const { scheduler, controller } = bench;
    const sender = controller.addPeripheral(wrench(change));
    const { tool, states } = listenToWrench(bench);
    const outcome = await scheduler.runUntil(tool.connect());
    expect(states().slice(-2)).toEqual(['not-joined', 'closed']);
    await scheduler.runFor(SECOND_US);
    expect(sender.connected()).toBe(false);
    return outcome;
  };

  test.each([
    ['an exponent', { exponent: -3 }, /exponent -3 where -2 is defined/],
    ['a unit', { unitCode: 0x2725 }, /unit 0x2725 where 0x2741 is defined/],
    ['a number format', { formatCode: 0x0e }, /format sint16 where sint32 is defined/],
  ])('when it presents %s that contradicts the characteristic', (_name, presentation, message) =>
    onBench(async (bench) => {
      const outcome = await refused({ presentation })(bench);
      expect(outcome).toMatchObject({
        ok: false,
        error: { code: 'imds-format-contradiction', message: expect.stringMatching(message) },
      });
    }),
  );

  test('when its address answers with another serial number', () =>
    onBench(async (bench) => {
      const outcome = await refused({ serial: 'W-9' })(bench);
      expect(outcome).toMatchObject({ ok: false, error: { code: 'tool-other-serial' } });
    }));

  test('when it measures something else', () =>
    onBench(async ({ scheduler, controller, radio, ...rest }) => {
      controller.addPeripheral(gauge());
      const { tool } = listenToWrench({ scheduler, controller, radio, ...rest }, GAUGE);
      const outcome = await scheduler.runUntil(tool.connect());
      expect(outcome).toMatchObject({
        ok: false,
        error: { code: 'tool-not-measuring', where: GAUGE.address },
      });
    }));
});

test('only the device that was adopted is listened to; another one of its name is refused and said', () =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    const own = controller.addPeripheral(wrench());
    const { tool, states, refusals } = listenToWrench(bench);
    good(await scheduler.runUntil(tool.connect()));
    own.stopAdvertising();
    own.dropLink(0x08);
    const other = controller.addPeripheral(wrench({ address: 'c0:00:00:00:00:09', serial: 'W-2' }));
    await scheduler.runFor(60 * SECOND_US);
    expect(states().at(-1)).toBe('asleep');
    expect(other.connected()).toBe(false);
    expect(refusals).toEqual(['same-name']);
    own.startAdvertising();
    await scheduler.runFor(5 * SECOND_US);
    expect(states().at(-1)).toBe('linked');
    expect(own.connected()).toBe(true);
    await scheduler.runUntil(tool.close());
  }));

describe('a tool that does not get through', () => {
  test('switched off between the scan and the connection, it is tried again until it answers', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(wrench());
      const { tool, states, links } = listenToWrench(bench);
      tool.link$.subscribe((link) => {
        if (link.state === 'connecting') sender.stopAdvertising();
      });
      const connected = tool.connect();
      await scheduler.runFor(12 * SECOND_US);
      expect(links.at(-1)).toMatchObject({ state: expect.stringMatching(/not-joined|asleep/) });
      expect(links.find((link) => link.state === 'not-joined')).toMatchObject({
        problem: { message: expect.stringMatching(/no answer within 3 s/) },
      });
      tool.link$.subscribe(() => sender.startAdvertising());
      sender.startAdvertising();
      expect(good(await scheduler.runUntil(connected))).toMatchObject({ serial: 'W-1' });
      expect(states().at(-1)).toBe('linked');
      await scheduler.runUntil(tool.close());
    }));

  test('one that goes silent while it is asked does not keep the other from its link', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const silent = controller.addPeripheral(wrench());
      controller.addPeripheral(gauge());
      const first = listenToWrench(bench);
      const second = listen(bench, 'length', GAUGE);
      const connected = first.tool.connect();
      while (!silent.connected()) await scheduler.runFor(1_000);
      silent.dropLink('silent');
      expect(good(await scheduler.runUntil(second.tool.connect()))).toMatchObject({ serial: 'G-1' });
      expect(good(await scheduler.runUntil(connected))).toMatchObject({ serial: 'W-1' });
      expect(first.links).toContainEqual({
        state: 'not-joined',
        problem: expect.objectContaining({ message: expect.stringMatching(/within 5 s while finding/) }),
      });
      await scheduler.runUntil(Promise.all([first.tool.close(), second.tool.close()]));
    }));

  test('closed while connecting, it lets go at once and leaves nothing connected', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(wrench());
      const { tool, states } = listenToWrench(bench);
      const connected = tool.connect();
      while (!states().includes('connecting')) await scheduler.runFor(1_000);
      const startUs = scheduler.nowUs();
      await scheduler.runUntil(tool.close());
      expect(scheduler.nowUs() - startUs).toBeLessThan(2 * SECOND_US);
      expect(await connected).toMatchObject({ ok: false, error: { code: 'tool-closed' } });
      await scheduler.runFor(SECOND_US);
      expect(sender.connected()).toBe(false);
      await tool.close();
      expect(states().filter((state) => state === 'closed')).toHaveLength(1);
    }));
});
