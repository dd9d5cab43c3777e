import { describe, expect, test } from 'vitest';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import { described } from '../../../drivers/profile/language.ts';
import type { BluetoothProfile } from '../../../drivers/profile/schema.ts';
import type { PeripheralDefinition } from '../../../sim/controller/index.ts';
import type { Reading } from '../../../src/reading.ts';
import { type Bench, good, onBench } from '../bench.ts';
import { gaugeProfile, wrenchProfile } from './example.ts';

const SECOND_US = 1_000_000;
const ADDRESS = 'c0:00:00:00:00:21';
const SERVICE = '3f8a0001-5c1d-4e2b-9a70-1b2c3d4e5f60';
const READINGS = '3f8a0002-5c1d-4e2b-9a70-1b2c3d4e5f60';
const START = '3f8a0003-5c1d-4e2b-9a70-1b2c3d4e5f60';
const GAUGE_SERVICE = '3f8a0011-5c1d-4e2b-9a70-1b2c3d4e5f60';
const GAUGE_VALUE = '3f8a0012-5c1d-4e2b-9a70-1b2c3d4e5f60';

type Service = PeripheralDefinition['services'][number];

function device(service: Service): PeripheralDefinition {
  return {
    address: ADDRESS,
    addressType: 'random',
    name: 'invented',
    appearance: 0,
    advertisedServices: [service.uuid],
    advertisingIntervalMs: 100,
    rssi: -60,
    mtu: 64,
    services: [
      service,
      {
        uuid: 0x180a,
        characteristics: [{ uuid: 0x2a25, properties: ['read'], value: Buffer.from('P-1') }],
      },
    ],
  };
}

function listen({ radio, scheduler }: Bench, profile: BluetoothProfile) {
  const tool = bluetoothTool({
    id: 'tool',
    language: described(profile),
    adopted: { address: ADDRESS, serial: 'P-1' },
    radio,
    clock: scheduler,
    after: scheduler.after,
    random: () => 0.5,
  });
  const readings: Reading[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  return { tool, readings };
}

const values = (readings: readonly Reading[]) =>
  readings.flatMap((reading) => (reading.kind === 'value' ? [reading.counts] : []));

describe('a wrench that a profile describes', () => {
  const packet = (counter: number, ...samples: readonly number[]) => {
    const bytes = Buffer.alloc(12);
    bytes.set([0xa5, 0x01]);
    bytes.writeUInt16BE(counter, 2);
    samples.forEach((sample, i) => void bytes.writeInt16BE(sample, 4 + 2 * i));
    return bytes;
  };
  const started: string[] = [];
  const wrench = () =>
    device({
      uuid: SERVICE,
      characteristics: [
        { uuid: READINGS, properties: ['notify'] },
        { uuid: START, properties: ['write'], write: (bytes) => void started.push(bytes.toString('hex')) },
      ],
    });

  test('is started, its samples are spread over time, and what its counter skips is a gap of known size', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      started.length = 0;
      const sender = controller.addPeripheral(wrench());
      const { tool, readings } = listen(bench, wrenchProfile());
      expect(good(await scheduler.runUntil(tool.connect()))).toMatchObject({
        quantity: 'torque',
        exponent: -2,
        resolutionCounts: 2,
        serial: 'P-1',
        link: { authenticated: false },
      });
      expect(started).toEqual(['01']);
      sender.notify(READINGS, packet(0xfffe, 1, 2, 3, 4));
      await scheduler.runFor(SECOND_US);
      const [first, ...rest] = readings;
      expect(first).toMatchObject({ kind: 'value', n: 1, counts: 2 });
      expect(rest.map((reading) => reading.atUs - (first?.atUs ?? 0))).toEqual([10_000, 20_000, 30_000]);
      sender.notify(READINGS, packet(2, 5, 5, 5, 5)); // the counter went round
      sender.notify(READINGS, packet(14, 6, 6, 6, 6)); // two packets are missing
      sender.notify(READINGS, Buffer.from('a5ff', 'hex'));
      await scheduler.runFor(SECOND_US);
      expect(values(readings)).toEqual([2, 4, 6, 8, 10, 10, 10, 10, 12, 12, 12, 12]);
      expect(readings.filter(({ kind }) => kind === 'missed')).toMatchObject([
        { n: 9, readings: 8, reason: 'counter-jumped' },
      ]);
      expect(readings.at(-1)).toMatchObject({ kind: 'raw', hex: 'a5ff' });
      expect(readings.map(({ n }) => n)).toEqual(readings.map((_, i) => i + 1));
      const stamps = readings.map(({ atUs }) => atUs);
      expect(stamps).toEqual(stamps.toSorted((a, b) => a - b));
      await scheduler.runUntil(tool.close());
    }));

  test('without a characteristic that the profile names it is refused', () =>
    onBench(async (bench) => {
      bench.controller.addPeripheral(
        device({ uuid: SERVICE, characteristics: [{ uuid: READINGS, properties: ['notify'] }] }),
      );
      const { tool } = listen(bench, wrenchProfile());
      expect(await bench.scheduler.runUntil(tool.connect())).toMatchObject({
        ok: false,
        error: { code: 'tool-not-as-described' },
      });
      await bench.scheduler.runUntil(tool.close());
    }));

  test('readings that it took while it was away are fetched from its memory, kept apart, and never taken for live ones', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const MEMORY = '3f8a0004-5c1d-4e2b-9a70-1b2c3d4e5f60';
      const REQUEST = '3f8a0005-5c1d-4e2b-9a70-1b2c3d4e5f60';
      let held: Buffer[] = [packet(0, 50, 51, 52, 53)];
      const sender = controller.addPeripheral(
        device({
          uuid: SERVICE,
          characteristics: [
            { uuid: READINGS, properties: ['notify'] },
            { uuid: START, properties: ['write'] },
            { uuid: MEMORY, properties: ['notify'] },
            {
              uuid: REQUEST,
              properties: ['write'],
              write: () => {
                for (const one of held) sender.notify(MEMORY, one);
                held = [];
              },
            },
          ],
        }),
      );
      const short = (uuid: string) => uuid.replaceAll('-', '');
      const memory = {
        service: short(SERVICE),
        characteristic: short(MEMORY),
        request: { service: short(SERVICE), characteristic: short(REQUEST), hex: '07' },
      };
      const { tool, readings } = listen(bench, {
        ...wrenchProfile(),
        link: { ...wrenchProfile().link, memory },
      });
      good(await scheduler.runUntil(tool.connect()));
      await scheduler.runFor(SECOND_US);
      expect(readings.map(({ kind }) => kind)).toEqual(['stored', 'stored', 'stored', 'stored']);
      sender.notify(READINGS, packet(4, 1, 1, 1, 1));
      await scheduler.runFor(SECOND_US);
      held = [packet(8, 60, 60, 60, 60)];
      sender.dropLink(0x08);
      await scheduler.runFor(5 * SECOND_US);
      expect(readings.map(({ kind }) => kind).slice(8)).toEqual([
        'missed',
        'stored',
        'stored',
        'stored',
        'stored',
      ]);
      expect(values(readings)).toEqual([2, 2, 2, 2]);
      await scheduler.runUntil(tool.close());
    }));
});

test('a gauge that is asked gives each figure once, however often it is asked', () =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    let value = '0100000000';
    controller.addPeripheral(
      device({
        uuid: GAUGE_SERVICE,
        characteristics: [{ uuid: GAUGE_VALUE, properties: ['read'], read: () => Buffer.from(value, 'hex') }],
      }),
    );
    const { tool, readings } = listen(bench, gaugeProfile());
    good(await scheduler.runUntil(tool.connect()));
    await scheduler.runFor(2 * SECOND_US);
    value = '021c0000fd'; // 0.028 in
    await scheduler.runFor(2 * SECOND_US);
    value = '031c0000fd'; // the same again, as the counter says
    await scheduler.runFor(2 * SECOND_US);
    value = '04ffff7f00'; // no number
    await scheduler.runFor(2 * SECOND_US);
    expect(readings.map(({ kind }) => kind)).toEqual(['value', 'value', 'value', 'not-known']);
    expect(values(readings)).toEqual([0, 71_120, 71_120]);
    await scheduler.runUntil(tool.close());
  }));
