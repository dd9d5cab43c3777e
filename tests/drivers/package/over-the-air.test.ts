import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import { conformance } from '../../../drivers/package/conformance.ts';
import { packagedBluetooth } from '../../../drivers/package/language.ts';
import { type LoadedDriver, loadDriver } from '../../../drivers/package/load.ts';
import type { PeripheralDefinition } from '../../../sim/controller/index.ts';
import type { Reading } from '../../../src/reading.ts';
import { type Bench, good, onBench } from '../bench.ts';

// A driver of somebody else on a Bluetooth device, over the noble that ships and a virtual controller.

const NAME = 'plugmark-driver-example';
const EXAMPLE = fileURLToPath(new URL(`../../../sim/example/${NAME}`, import.meta.url));
const ADDRESS = 'c0:00:00:00:00:51';
const SERVICE = '5de00001-7c3e-4b7a-9d10-2a6b8c0d4e5f';
const READINGS = '5de00002-7c3e-4b7a-9d10-2a6b8c0d4e5f';
const START = '5de00003-7c3e-4b7a-9d10-2a6b8c0d4e5f';

let base: string;
beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), 'plugmark-driver-'));
});
afterEach(() => rmSync(base, { recursive: true }));

/** The example driver, for the same wrench on Bluetooth, which has to be told to send. */
function onBluetooth(): Promise<LoadedDriver> {
  const folder = join(base, 'node_modules', NAME);
  mkdirSync(folder, { recursive: true });
  cpSync(EXAMPLE, folder, { recursive: true });
  const file = join(folder, 'driver.js');
  const link = `link: { kind: 'bluetooth-le', advertised: '${SERVICE}', service: '${SERVICE}', characteristic: '${READINGS}',
    start: [{ service: '${SERVICE}', characteristic: '${START}', hex: '01' }] },`;
  writeFileSync(file, readFileSync(file, 'utf8').replace(/link: .*,/, link));
  return loadDriver(NAME, base);
}

type Characteristics = PeripheralDefinition['services'][number]['characteristics'];

const device = (characteristics: Characteristics): PeripheralDefinition => ({
  address: ADDRESS,
  addressType: 'random',
  name: 'masked wrench',
  appearance: 0,
  advertisedServices: [SERVICE],
  advertisingIntervalMs: 100,
  rssi: -60,
  mtu: 64,
  services: [
    { uuid: SERVICE, characteristics },
    { uuid: 0x180a, characteristics: [{ uuid: 0x2a25, properties: ['read'], value: Buffer.from('M-1') }] },
  ],
});

function listen({ radio, scheduler }: Bench, loaded: LoadedDriver) {
  const { link } = loaded.driver;
  if (link.kind !== 'bluetooth-le') throw new Error('the driver is for Bluetooth');
  const tool = bluetoothTool({
    id: 'wrench',
    language: packagedBluetooth(loaded, link),
    adopted: { address: ADDRESS, serial: 'M-1' },
    radio,
    clock: scheduler,
    after: scheduler.after,
    random: () => 0.5,
  });
  const readings: Reading[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  return { tool, readings };
}

/** A frame as the wrench makes it: masked by its number. */
function frame(number: number, counts: number): Buffer {
  const mask = ((number * 37) ^ 0x5c) & 0xff;
  const bytes = Buffer.of(0xa5, number, (counts & 0xff) ^ mask, ((counts >> 8) & 0xff) ^ mask, 0);
  bytes.writeUInt8(bytes.reduce((sum, byte) => sum + byte, 0) & 0xff, 4);
  return bytes;
}

describe('a driver package on Bluetooth', () => {
  it('passes the suite as it is', async () => {
    const { driver } = await onBluetooth();
    const faults = conformance({ ...driver, streams: false }).filter(({ fault }) => fault !== null);
    expect(faults).toEqual([]);
  });

  it('starts the device, reads it, is lost and joined again, and is named by version and digest', async () => {
    const loaded = await onBluetooth();
    await onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const started: string[] = [];
      const peripheral = controller.addPeripheral(
        device([
          { uuid: READINGS, properties: ['notify'] },
          { uuid: START, properties: ['write'], write: (bytes) => void started.push(bytes.toString('hex')) },
        ]),
      );
      const { tool, readings } = listen(bench, loaded);
      expect(tool.driver).toBe(loaded.purl);
      expect(good(await scheduler.runUntil(tool.connect()))).toMatchObject({
        quantity: 'torque',
        serial: 'M-1',
        link: { kind: 'bluetooth-le', authenticated: false },
      });
      peripheral.notify(READINGS, frame(1, 2_534));
      // One frame over two notifications, and one that was damaged.
      peripheral.notify(READINGS, frame(2, -641).subarray(0, 2));
      peripheral.notify(READINGS, frame(2, -641).subarray(2));
      const damaged = frame(3, 100);
      damaged.writeUInt8(damaged.readUInt8(2) ^ 1, 2);
      peripheral.notify(READINGS, damaged);
      peripheral.notify(READINGS, frame(4, 0x7fff));
      await scheduler.runFor(1_000_000);
      expect(readings.map((reading) => (reading.kind === 'value' ? reading.counts : reading.kind))).toEqual([
        2_534,
        -641,
        'raw',
        'not-known',
      ]);
      peripheral.dropLink(0x08);
      await scheduler.runFor(5_000_000);
      peripheral.notify(READINGS, frame(9, 12));
      await scheduler.runFor(1_000_000);
      expect(readings.slice(4).map(({ kind }) => kind)).toEqual(['missed', 'value']);
      expect(readings.map(({ n }) => n)).toEqual([1, 2, 3, 4, 5, 6]);
      expect(started).toEqual(['01', '01']);
      await scheduler.runUntil(tool.close());
    });
  });

  it('refuses a device without a characteristic that the driver names', async () => {
    const loaded = await onBluetooth();
    await onBench(async (bench) => {
      bench.controller.addPeripheral(device([{ uuid: READINGS, properties: ['notify'] }]));
      const { tool } = listen(bench, loaded);
      expect(await bench.scheduler.runUntil(tool.connect())).toMatchObject({
        ok: false,
        error: { code: 'tool-not-as-described' },
      });
      await bench.scheduler.runUntil(tool.close());
    });
  });
});
