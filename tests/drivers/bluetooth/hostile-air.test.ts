import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { TORQUE } from '../../../drivers/imds/numbers.ts';
import type { Reading } from '../../../src/reading.ts';
import { type Bench, counts, good, onBench, wrench } from '../bench.ts';
import { acl, att, connectedHandle } from '../radio/hostile.ts';
import { listen } from './guarded.ts';

// Everything that a device, or somebody in its place, can put on the air while the whole shipped stack listens.

const SECOND_US = 1_000_000;

function listenAndHandle(bench: Bench) {
  let handle = 0;
  bench.socket.on('data', (packet: Buffer) => {
    handle = connectedHandle(packet) ?? handle;
  });
  return { ...listen(bench), handle: () => handle };
}

const valuesOf = (readings: readonly Reading[]) =>
  readings.flatMap((reading) => (reading.kind === 'value' ? [reading.counts] : []));

/** The handle of the torque value, as the peripheral's table has it, found by what a notification carries. */
async function torqueHandle(bench: Bench, sender: { notify: (uuid: number, bytes: Uint8Array) => boolean }) {
  let found = 0;
  const look = (packet: Buffer) => {
    if (packet[0] === 0x02 && packet[9] === 0x1b) found = packet.readUInt16LE(10);
  };
  bench.socket.on('data', look);
  sender.notify(0x2c0b, counts(TORQUE, 1));
  await bench.scheduler.runFor(SECOND_US);
  bench.socket.off('data', look);
  return found;
}

describe('whatever is put on the air', () => {
  const bytes = (maxLength: number) => fc.uint8Array({ maxLength });
  const pdu = fc.oneof(
    bytes(30),
    fc
      .tuple(fc.constantFrom(0x01, 0x02, 0x03, 0x05, 0x09, 0x0b, 0x0d, 0x11, 0x13, 0x1b, 0x1d), bytes(40))
      .map(([opcode, rest]) => Uint8Array.of(opcode, ...rest)),
    bytes(512).map((rest) => Uint8Array.of(0x1b, ...rest)),
  );
  const hostile = fc.oneof(
    fc.record({ do: fc.constant('att' as const), pdu }),
    fc.record({ do: fc.constant('notify' as const), wrongHandle: fc.boolean(), value: bytes(8) }),
    fc.record({ do: fc.constant('channel' as const), cid: fc.constantFrom(4, 5, 6, 0x40), data: bytes(24) }),
    fc.record({ do: fc.constant('piece' as const), first: fc.boolean(), data: bytes(40) }),
    fc.record({ do: fc.constant('event' as const), data: bytes(24) }),
    fc.record({ do: fc.constant('wait' as const), ms: fc.nat(400) }),
  );

  test('a reading comes only from four bytes of the torque characteristic, nothing crashes, and the tool comes back', async () => {
    const bugs: unknown[] = [];
    const note = (bug: unknown) => void bugs.push(bug);
    process.on('unhandledRejection', note);
    await fc.assert(
      fc.asyncProperty(fc.nat(600), fc.array(hostile, { maxLength: 25 }), (afterMs, steps) =>
        onBench(async (bench) => {
          const { scheduler, controller, socket } = bench;
          const sender = controller.addPeripheral(wrench());
          const { tool, readings, states, handle } = listenAndHandle(bench);
          const connected = tool.connect();
          connected.catch(note);
          const probe = await valueHandle();
          await scheduler.runFor(afterMs * 1_000);
          const carried = new Set<number>([7_777]);
          for (const step of steps) {
            if (step.do === 'wait') await scheduler.runFor(step.ms * 1_000);
            else socket.emit('data', packetOf(step, handle(), probe, carried));
          }
          await scheduler.runFor(60 * SECOND_US);
          expect(states.at(-1)).toBe('linked');
          sender.notify(0x2c0b, counts(TORQUE, 7_777));
          await scheduler.runFor(SECOND_US);
          expect(valuesOf(readings).at(-1)).toBe(7_777);
          for (const value of valuesOf(readings)) expect(carried).toContain(value);
          expect(readings.map(({ n }) => n)).toEqual(readings.map((_, i) => i + 1));
          await scheduler.runUntil(tool.close());
        }),
      ),
      { numRuns: 40 },
    );
    process.off('unhandledRejection', note);
    expect(bugs).toEqual([]);
  });

  let known: number | undefined;
  /** The same on every bench, because the peripheral is. */
  async function valueHandle(): Promise<number> {
    if (known !== undefined) return known;
    await onBench(async (bench) => {
      const sender = bench.controller.addPeripheral(wrench());
      const { tool } = listen(bench);
      good(await bench.scheduler.runUntil(tool.connect()));
      known = await torqueHandle(bench, sender);
      await bench.scheduler.runUntil(tool.close());
    });
    return known ?? 0;
  }

  type Step = typeof hostile extends fc.Arbitrary<infer S> ? Exclude<S, { do: 'wait' }> : never;

  function packetOf(step: Step, handle: number, probe: number, carried: Set<number>): Buffer {
    switch (step.do) {
      case 'att':
        noteCarried(step.pdu, probe, carried);
        return att(handle, step.pdu);
      case 'notify': {
        const to = step.wrongHandle ? probe + 1 : probe;
        const notified = Uint8Array.of(0x1b, to & 0xff, to >> 8, ...step.value);
        noteCarried(notified, probe, carried);
        return att(handle, notified);
      }
      case 'channel':
        return acl(handle, true, Buffer.from([step.data.length, 0, step.cid & 0xff, 0, ...step.data]));
      case 'piece':
        return acl(handle, step.first, step.data);
      case 'event':
        return Buffer.from([0x04, ...step.data]);
    }
  }

  /** A notification or indication of exactly four bytes from the right handle is a reading, whoever sent it. */
  function noteCarried(given: Uint8Array, probe: number, carried: Set<number>): void {
    const sent = Buffer.from(given);
    if (sent.length === 7 && (sent[0] === 0x1b || sent[0] === 0x1d) && sent.readUInt16LE(1) === probe)
      carried.add(sent.readInt32LE(3));
  }
});

test('a thousand notifications a second are taken as they come, none lost, none twice', () =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    const sender = controller.addPeripheral(wrench());
    const { tool, readings } = listen(bench);
    good(await scheduler.runUntil(tool.connect()));
    for (let i = 0; i < 5_000; i++) {
      sender.notify(0x2c0b, counts(TORQUE, i));
      await scheduler.runFor(1_000);
    }
    await scheduler.runFor(SECOND_US);
    expect(valuesOf(readings)).toEqual(Array.from({ length: 5_000 }, (_, i) => i));
    await scheduler.runUntil(tool.close());
  }));

test('what a device says of itself is cut and cleaned, be it 248 bytes of escape sequences', () =>
  onBench(async (bench) => {
    const { scheduler, controller } = bench;
    const plain = wrench();
    const nasty = Buffer.from('\u001b]0;owned\u0007\u202e'.repeat(30), 'utf8').subarray(0, 248);
    controller.addPeripheral({
      ...plain,
      name: '\u001b[2Jwrench',
      services: plain.services.map((service) => ({
        ...service,
        characteristics: service.characteristics.map((one) =>
          one.uuid === 0x2a29 ? { ...one, value: nasty } : one,
        ),
      })),
    });
    const { tool, states } = listen(bench);
    const said: string[] = [];
    tool.link$.subscribe((link) => void ('name' in link && said.push(link.name)));
    const description = good(await scheduler.runUntil(tool.connect()));
    const texts = [...said, description.maker ?? ''];
    for (const text of texts) {
      expect(text).not.toMatch(/[\p{Cc}\p{Cf}]/u);
      expect(text.length).toBeLessThanOrEqual(64);
    }
    expect(states).toContain('linked');
    await scheduler.runUntil(tool.close());
  }));

test('a report that is cut short prints nothing over the screen', async () => {
  const prints = (['log', 'warn', 'error'] as const).map((name) =>
    vi.spyOn(console, name).mockImplementation(() => {}),
  );
  try {
    await onBench(async ({ scheduler, socket }) => {
      // LE Advertising Report and its extended form, each of five reports of which none is there.
      socket.emit('data', Buffer.from([0x04, 0x3e, 3, 0x02, 5, 0]));
      socket.emit('data', Buffer.from([0x04, 0x3e, 3, 0x0d, 5, 0]));
      await scheduler.runFor(SECOND_US);
    });
    for (const print of prints) expect(print).not.toHaveBeenCalled();
  } finally {
    for (const print of prints) print.mockRestore();
  }
});
