import { describe, expect, test } from 'vitest';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import { bluetoothProfile } from '../../../drivers/profile/file.ts';
import { described } from '../../../drivers/profile/language.ts';
import { CATALOGUE, type DeviceName } from '../../../sim/devices/catalogue.ts';
import { dashed, peripheralOf, type Seen, Sender } from '../../../sim/devices/device.ts';
import { type Reading, scaled } from '../../../src/reading.ts';
import { type Bench, good, onBench } from '../bench.ts';
import { changed } from './example.ts';

// Every kind of device over the whole of the shipped stack: a virtual controller, noble, the driver.

const SECOND_US = 1_000_000;
const PRESENTED = { address: 'c0:00:00:00:00:31', name: 'invented', serial: 'D-1' };

async function joined({ radio, scheduler, controller }: Bench, given: ReturnType<typeof changed>) {
  const profile = good(bluetoothProfile(given, 'catalogue'));
  const written: string[] = [];
  const peripheral = controller.addPeripheral(
    peripheralOf(profile, PRESENTED, (_, hex) => void written.push(hex)),
  );
  const tool = bluetoothTool({
    id: 'wrench',
    language: described(profile),
    adopted: PRESENTED,
    radio,
    clock: scheduler,
    after: scheduler.after,
    random: () => 0.5,
  });
  const readings: Reading[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  const description = good(await scheduler.runUntil(tool.connect()));
  // A device that streams has begun somewhere: a first frame counts where its beginning shows, or behind a pause.
  await scheduler.runFor(2 * SECOND_US);
  const notify = async (bytes: Uint8Array) => {
    peripheral.notify(dashed(profile.link.characteristic), bytes);
    await scheduler.runFor(20_000);
  };
  const end = async () => {
    await scheduler.runFor(2 * SECOND_US);
    await scheduler.runUntil(tool.close());
  };
  return { description, readings, notify, end, written };
}

const NM = [0, 12.3, -4.5, 25.35, 40];

/** Of a reading: its value in N·m and its angle, or its kind. */
const told = (readings: readonly Reading[], exponent: number) =>
  readings.map((reading) => (reading.kind === 'value' ? scaled(reading.counts, exponent) : reading.kind));

describe('devices of the catalogue, live', () => {
  test.each(Object.keys(CATALOGUE) as DeviceName[])('%s', (name) =>
    onBench(async (bench) => {
      const profile = CATALOGUE[name];
      const { description, readings, notify, end } = await joined(bench, profile);
      const sender = new Sender(profile);
      const samples = name === 'checksum behind the samples' ? 4 : name === 'torque and angle' ? 3 : 1;
      const units = name.startsWith('unit by') ? [0, 1] : [0];
      const sent: number[] = [];
      for (const unit of units)
        for (const nm of NM) {
          const seen: Seen[] = Array.from({ length: samples }, (_, i) => ({ si: nm, angleDeg: 10 * i }));
          for (const packet of sender.packets(seen, unit)) await notify(packet);
          for (let i = 0; i < samples; i++) sent.push(nm);
        }
      const rest = sender.rest();
      if (rest.length > 0) await notify(rest);
      await end();
      const read = told(readings, description.exponent);
      expect(read).toHaveLength(sent.length);
      const step = scaled(description.resolutionCounts ?? 0, description.exponent);
      for (const [i, nm] of sent.entries())
        expect(Math.abs(Number(read[i]) - nm), `${name}: ${read[i]} for ${nm}`).toBeLessThanOrEqual(
          0.501 * step,
        );
      const stamps = readings.map(({ atUs }) => atUs);
      expect(stamps).toEqual(stamps.toSorted((a, b) => a - b));
      if (name === 'torque and angle')
        expect(readings.slice(0, 3)).toMatchObject([
          { angleCounts: 0 },
          { angleCounts: 100 },
          { angleCounts: 200 },
        ]);
    }),
  );

  test('a valid bit that is clear, and a checksum that is wrong, never become a value', () =>
    onBench(async (bench) => {
      const profile = CATALOGUE['status behind the value'];
      const { readings, notify, end, description } = await joined(bench, profile);
      const sender = new Sender(profile);
      await notify(sender.frame([{ si: null }]));
      await notify(sender.frame([{ si: 25 }]));
      await notify(Buffer.concat([sender.frame([{ si: 25 }]), Buffer.of(0)]));
      await end();
      expect(told(readings, description.exponent)).toEqual(['not-known', 25, 'raw']);
    }));

  test('spoilt, cut and doubled frames of a stream: what is whole is read, the rest is kept as it came', () =>
    onBench(async (bench) => {
      const profile = CATALOGUE['frames over several packets'];
      const { readings, notify, end, description } = await joined(bench, profile);
      const sender = new Sender(profile);
      const [first, second, third] = [10, 20, 30].map((si) => sender.frame([{ si }])) as [
        Buffer,
        Buffer,
        Buffer,
      ];
      second[5] = (second[5] ?? 0) ^ 1;
      await notify(Buffer.concat([first, second, third, third.subarray(0, 4)]));
      await end();
      expect(told(readings, description.exponent)).toEqual([10, 'raw', 30, 'raw']);
    }));
});

describe('what is written to a device', () => {
  const service = '5d200001-7c3e-4b7a-9d10-2a6b8c0d4e5f';
  const command = { service, characteristic: '5d210001-7c3e-4b7a-9d10-2a6b8c0d4e5f' };
  const link = {
    kind: 'bluetooth-le',
    advertised: service,
    service,
    characteristic: '5d220001-7c3e-4b7a-9d10-2a6b8c0d4e5f',
    start: [{ ...command, hex: '01' }],
    keepAlive: { ...command, hex: 'aa', everyMs: 400 },
  };

  test('it is started, kept alive and asked, and each answer that says something new is a reading', () =>
    onBench(async (bench) => {
      const by = { how: 'ask', everyMs: 500, request: { ...command, hex: '3f' } };
      const { readings, notify, end, written } = await joined(bench, changed({ link: { ...link, by } }));
      const packet = Buffer.from('a50100000064006400640064', 'hex');
      await notify(packet);
      await notify(packet);
      expect(readings.map(({ kind }) => kind)).toEqual(['value', 'value', 'value', 'value']);
      await end();
      expect(written[0]).toBe('01');
      // Four seconds, and what the link takes for each.
      expect(written.filter((hex) => hex === '3f').length).toBeGreaterThan(5);
      expect(written.filter((hex) => hex === 'aa').length).toBeGreaterThan(7);
    }));
});
