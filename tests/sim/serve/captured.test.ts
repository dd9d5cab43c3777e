import { describe, expect, it } from 'vitest';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import { described } from '../../../drivers/profile/language.ts';
import { type Capture, parseCapture, recordingOf } from '../../../drivers/replay/capture.ts';
import { captureWriter } from '../../../drivers/replay/capture-writer.ts';
import { Sender } from '../../../sim/devices/device.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';
import { addressOf, busiest, capturedOnAir, playPackets, unlisted } from '../../../sim/serve/captured.ts';
import type { Reading } from '../../../src/reading.ts';
import { good, onBench } from '../../drivers/bench.ts';
import { wrenchProfile } from '../../drivers/profile/example.ts';

const ADDRESS = 'c2:00:00:00:00:11';

/** A second of a wrench, as "plugmark devices record" writes it. */
function captured(): Capture {
  const { link } = wrenchProfile();
  const of = { service: link.service, uuid: link.characteristic, properties: ['notify'] };
  const start = {
    service: link.service,
    uuid: link.start?.[0]?.characteristic ?? '',
    properties: ['write'],
  };
  let text = '';
  const writer = captureWriter({ address: ADDRESS, characteristics: [of, start] }, (line) => {
    text += line;
  });
  const sender = new Sender(wrenchProfile());
  for (let i = 0; i < 25; i++)
    writer.packet(of, sender.frame([0, 1, 2, 3].map((n) => ({ si: (4 * i + n) / 5 }))), 90_000 + 40_000 * i);
  writer.end();
  writer.packet(of, Buffer.of(1), 2_000_000);
  return good(parseCapture(text, 'x.capture.jsonl'));
}

describe('a capture that is played back', () => {
  it('gives a station the readings that its device gave, as far apart, whenever somebody joins', () =>
    onBench(async ({ controller, scheduler, radio }) => {
      const capture = captured();
      const said: string[] = [];
      const presented = { serial: 'W-9', advertised: wrenchProfile().link.advertised };
      const device = capturedOnAir(controller, capture, presented, scheduler, (what) => said.push(what));
      const values = (readings: readonly Reading[]) =>
        readings.flatMap((reading) => (reading.kind === 'value' ? [reading.counts] : []));
      const due = recordingOf(capture, { tool: 'wrench', quantity: 'torque', profile: wrenchProfile() });
      for (const _time of [1, 2]) {
        const tool = bluetoothTool({
          id: 'wrench',
          language: described(wrenchProfile()),
          adopted: { address: ADDRESS, serial: 'W-9' },
          radio,
          clock: scheduler,
          after: scheduler.after,
          random: () => 0.5,
        });
        const readings: Reading[] = [];
        tool.readings$.subscribe((reading) => readings.push(reading));
        good(await scheduler.runUntil(tool.connect()));
        await scheduler.runFor(3_000_000);
        expect(values(readings)).toEqual(values(due.readings));
        const lastUs = (of: readonly Reading[]) => (of.at(-1)?.atUs ?? 0) - (of[0]?.atUs ?? 0);
        expect(Math.abs(lastUs(readings) - lastUs(due.readings))).toBeLessThan(60_000);
        await scheduler.runUntil(tool.close());
        await scheduler.runFor(1_000_000);
      }
      expect(said).toEqual(['plays', 'over', 'plays', 'over']);
      device.close();
    }));

  it('is known for one from a serial port where its packets have no service', () => {
    expect(busiest(captured())).toMatchObject({ service: wrenchProfile().link.service });
    const serial = { ...captured(), packets: [{ atUs: 0, hex: '00' }] };
    expect(busiest(serial)).toBeNull();
  });

  it('ends where it is told to, and sends nothing more', async () => {
    const scheduler = virtualScheduler();
    let sent = 0;
    const stop = playPackets(captured(), scheduler, { send: () => sent++, over: () => {} });
    await scheduler.runFor(200_000);
    stop();
    const then = sent;
    await scheduler.runFor(5_000_000);
    expect(then).toBeGreaterThan(0);
    expect(sent).toBe(then);
  });
});

describe('a capture of anybody', () => {
  const of = (change: Partial<Capture['header']>, packets: Capture['packets'] = []): Capture => ({
    header: { ...captured().header, ...change },
    packets,
  });

  it.each([
    ['C2:00:00:00:00:11', 'c2:00:00:00:00:11'],
    ['0123456789abcdef0123456789abcdef', 'c0:67:89:ab:cd:ef'],
    ['nowhere', 'c0:00:00:00:00:ee'],
  ])('of a device with the address %s plays at %s', (address, plays) => {
    expect(addressOf(of({ address }))).toBe(plays);
  });

  it('says which characteristic sent, and is not listed as one that sends', () => {
    const [packet] = captured().packets;
    if (packet === undefined) throw new Error('no packet');
    expect(unlisted(captured())).toBeUndefined();
    expect(unlisted(of({}, [packet, { ...packet, characteristic: '2a19' }]))).toBe('2a19');
    const read = captured().header.characteristics.map((one) => ({ ...one, properties: ['read'] }));
    expect(unlisted(of({ characteristics: read }, [packet]))).toBe(packet.characteristic);
  });

  it('with a pause of years goes on within a day', () => {
    const scheduler = virtualScheduler();
    const [packet] = captured().packets;
    if (packet === undefined) throw new Error('no packet');
    let sent = 0;
    const packets = [packet, { ...packet, atUs: Number.MAX_SAFE_INTEGER }];
    playPackets(
      of({}, packets),
      {
        ...scheduler,
        after: (us, run) => {
          expect(us).toBeLessThan(2 ** 31 * 1_000);
          run();
          return () => {};
        },
      },
      { send: () => (sent += 1), over: () => {} },
    );
    expect(sent).toBe(2);
  });
});
