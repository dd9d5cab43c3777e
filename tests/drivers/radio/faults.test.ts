import { firstValueFrom } from 'rxjs';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Link } from '../../../drivers/radio/radio.ts';
import type { HciSocketClass } from '../../../sim/controller/index.ts';
import type { LinkEnd } from '../../../src/reading.ts';
import { type Bench, GAUGE, gauge, good, onBench, WRENCH, wrench } from '../bench.ts';
import { acl, att, connectedHandle, report } from './hostile.ts';

// Each of these ends a program that uses noble as it comes, or keeps it waiting for ever.

const SECOND_US = 1_000_000;
const never = () => new AbortController().signal;

async function seen({ radio, scheduler }: Bench, address: string): Promise<void> {
  await scheduler.runUntil(
    new Promise<void>((resolve) => {
      const scan = radio.scan('185a').subscribe((sighting) => {
        if (sighting.address !== address) return;
        resolve();
        queueMicrotask(() => scan.unsubscribe());
      });
    }),
  );
}

async function connected(bench: Bench, address: string): Promise<Link> {
  await seen(bench, address);
  return good(await bench.scheduler.runUntil(bench.radio.connect(address, 10_000, never())));
}

/** A socket that swallows the commands of one opcode. */
const deafTo =
  (opcode: number) =>
  (socket: HciSocketClass): HciSocketClass =>
    class extends socket {
      override write(packet: Buffer): void {
        if (packet[0] !== 0x01 || packet.readUInt16LE(1) !== opcode) super.write(packet);
      }
    };

describe('hostile packets', () => {
  test.each<[string, readonly number[], string | undefined]>([
    ['a notification without a handle', [0x1b], 'ended-by-station'],
    ['an indication cut in its handle', [0x1d, 0x01], 'ended-by-station'],
    ['an empty packet', [], undefined],
  ])('%s ends that link at most: not the other one, not the program', (_name, pdu, reason) =>
    onBench(async (bench) => {
      bench.controller.addPeripheral(wrench());
      bench.controller.addPeripheral(gauge());
      const handles: number[] = [];
      bench.socket.on('data', (packet: Buffer) => {
        const handle = connectedHandle(packet);
        if (handle !== undefined) handles.push(handle);
      });
      const hostile = await connected(bench, WRENCH.address);
      const other = await connected(bench, GAUGE.address);
      let ended: LinkEnd | undefined;
      void hostile.down.then((why) => {
        ended = why;
      });
      expect(handles).toHaveLength(2);
      bench.socket.emit('data', att(handles[0] ?? Number.NaN, Uint8Array.from(pdu)));
      await bench.scheduler.runFor(SECOND_US);
      expect(ended?.reason).toBe(reason);
      expect(good(await bench.scheduler.runUntil(other.discover(['185a'])))).toMatchObject([
        { uuid: '2c0a' },
      ]);
    }),
  );

  test('scraps of events are survived', () =>
    onBench(async (bench) => {
      bench.controller.addPeripheral(wrench());
      const link = await connected(bench, WRENCH.address);
      for (const scrap of [
        [],
        [0x04],
        [0x04, 0x05],
        [0x04, 0x3e, 1],
        [0x04, 0x13, 9, 9],
        [0x02, 0x00],
        [0x04, 0x0e, 0],
      ]) {
        bench.socket.emit('data', Buffer.from(scrap));
      }
      expect(good(await bench.scheduler.runUntil(link.discover(['185a'])))).toMatchObject([{ uuid: '2c0b' }]);
    }));
});

test("the end of a link that another program has on the same adapter is nobody's business, least of all the screen's", () =>
  onBench(async (bench) => {
    const said = vi.spyOn(console, 'warn').mockImplementation(() => {});
    bench.controller.addPeripheral(wrench());
    const link = await connected(bench, WRENCH.address);
    bench.socket.emit('data', Buffer.from([0x04, 0x05, 4, 0, 0x99, 0x09, 0x13]));
    expect(good(await bench.scheduler.runUntil(link.discover(['185a'])))).toMatchObject([{ uuid: '2c0b' }]);
    expect(said).not.toHaveBeenCalled();
    said.mockRestore();
  }));

describe('steps on a link', () => {
  test('a link that goes down under a step ends it with the reason', () =>
    onBench(async (bench) => {
      const sender = bench.controller.addPeripheral(wrench());
      const link = await connected(bench, WRENCH.address);
      const step = link.discover(['185a']);
      await bench.scheduler.runFor(20_000);
      sender.dropLink(0x13);
      expect(await bench.scheduler.runUntil(step)).toMatchObject({
        ok: false,
        error: { code: 'link-lost', message: expect.stringContaining('ended by the tool') },
      });
      expect(await link.down).toEqual({ reason: 'ended-by-tool', controllerReason: 0x13 });
      expect(await link.discover(['185a'])).toMatchObject({ ok: false, error: { code: 'link-lost' } });
    }));

  test('a device that falls silent ends the step at its time-out, and closing the link does not hang', () =>
    onBench(async (bench) => {
      const sender = bench.controller.addPeripheral(wrench());
      const link = await connected(bench, WRENCH.address);
      sender.dropLink('silent');
      const startUs = bench.scheduler.nowUs();
      expect(await bench.scheduler.runUntil(link.discover(['185a']))).toMatchObject({
        ok: false,
        error: { code: 'link-timeout' },
      });
      expect(bench.scheduler.nowUs() - startUs).toBe(5 * SECOND_US);
      await bench.scheduler.runUntil(link.close());
      expect(await link.down).toMatchObject({ reason: expect.any(String) });
    }));

  test('a link dropped at any moment of a discovery ends it with its outcome, never in silence', () =>
    onBench(async (bench) => {
      const sender = bench.controller.addPeripheral(wrench());
      const outcomes = new Set<string>();
      for (let ms = 0; ms < 1_000; ms += 29) {
        const link = await connected(bench, WRENCH.address);
        const steps = link.discover(['185a', '180a', '180f']);
        await bench.scheduler.runFor(ms * 1_000);
        sender.dropLink(0x08);
        const outcome = await bench.scheduler.runUntil(steps);
        outcomes.add(outcome.ok ? 'found' : outcome.error.code);
        await bench.scheduler.runUntil(link.down);
      }
      expect([...outcomes].toSorted()).toEqual(['found', 'link-lost']);
    }));

  test('a link that goes down in the same turn as an answer ends the step, not the program', () => {
    let armed = false;
    /** Follows the first answer to a discovery of services with the end of its link. */
    const abrupt = (socket: HciSocketClass): HciSocketClass =>
      class extends socket {
        override emit(event: string, ...args: unknown[]): boolean {
          const heard = super.emit(event, ...args);
          const [packet] = args;
          if (armed && Buffer.isBuffer(packet) && packet[0] === 0x02 && packet[9] === 0x11) {
            armed = false;
            super.emit(
              'data',
              Buffer.from([0x04, 0x05, 4, 0, packet[1] ?? 0, (packet[2] ?? 0) & 0x0f, 0x08]),
            );
          }
          return heard;
        }
      };
    return onBench(async (bench) => {
      bench.controller.addPeripheral(wrench());
      const link = await connected(bench, WRENCH.address);
      armed = true;
      expect(await bench.scheduler.runUntil(link.discover(['185a']))).toMatchObject({
        ok: false,
        error: { code: 'link-lost' },
      });
      await bench.scheduler.runFor(SECOND_US);
      expect(armed).toBe(false);
    }, abrupt);
  });

  test('what was found on one link is not taken for another one', () =>
    onBench(async (bench) => {
      const sender = bench.controller.addPeripheral(wrench());
      const first = await connected(bench, WRENCH.address);
      const [torque] = good(await bench.scheduler.runUntil(first.discover(['185a'])));
      if (torque === undefined) throw new Error('no torque characteristic');
      sender.dropLink(0x08);
      await bench.scheduler.runUntil(first.down);
      const second = await connected(bench, WRENCH.address);
      expect(await bench.scheduler.runUntil(second.read(torque))).toMatchObject({
        ok: false,
        error: { code: 'link-failed' },
      });
    }));
});

describe('making a connection', () => {
  const connect = (bench: Bench, address: string, timeoutMs = 3_000) =>
    bench.scheduler.runUntil(bench.radio.connect(address, timeoutMs, never()));

  test('to a device that nobody has seen is a problem at once', () =>
    onBench(async (bench) => {
      expect(await bench.radio.connect(WRENCH.address, 3_000, never())).toMatchObject({
        ok: false,
        error: {
          code: 'link-not-made',
          where: WRENCH.address,
          message: expect.stringContaining('not been seen'),
        },
      });
    }));

  test('a device that has gone keeps its time and no more, and the next one is not blocked by it', () =>
    onBench(async (bench) => {
      const gone = bench.controller.addPeripheral(wrench());
      bench.controller.addPeripheral(gauge());
      await seen(bench, WRENCH.address);
      await seen(bench, GAUGE.address);
      gone.stopAdvertising();
      const both = Promise.all([
        bench.radio.connect(WRENCH.address, 3_000, never()),
        bench.radio.connect(GAUGE.address, 3_000, never()),
      ]);
      const [first, second] = await bench.scheduler.runUntil(both);
      expect(first).toMatchObject({
        ok: false,
        error: { message: expect.stringContaining('no answer within 3 s') },
      });
      expect(good(second).address).toBe(GAUGE.address);
    }));

  test('a link that comes up after it was given up is ended, and the device can be had again', () =>
    onBench(async (bench) => {
      const sender = bench.controller.addPeripheral(wrench());
      await seen(bench, WRENCH.address);
      sender.stopAdvertising();
      const attempt = bench.radio.connect(WRENCH.address, 3_000, never());
      await bench.scheduler.runFor(4 * SECOND_US);
      sender.startAdvertising();
      expect(await bench.scheduler.runUntil(attempt)).toMatchObject({
        ok: false,
        error: { code: 'link-not-made' },
      });
      await bench.scheduler.runFor(SECOND_US);
      expect(sender.connected()).toBe(false);
      expect(good(await connect(bench, WRENCH.address)).address).toBe(WRENCH.address);
    }, deafTo(0x200e)));

  test('an adapter that does not take back an attempt does not keep the others waiting for ever', () =>
    onBench(async (bench) => {
      const gone = bench.controller.addPeripheral(wrench());
      bench.controller.addPeripheral(gauge());
      await seen(bench, WRENCH.address);
      await seen(bench, GAUGE.address);
      gone.stopAdvertising();
      expect(await connect(bench, WRENCH.address)).toMatchObject({ ok: false });
      // It was reset and is opened anew.
      expect(await firstValueFrom(bench.radio.powered$)).toBe(false);
      await seen(bench, GAUGE.address);
      expect(good(await connect(bench, GAUGE.address)).address).toBe(GAUGE.address);
      expect(bench.scheduler.nowUs()).toBeLessThan(30 * SECOND_US);
    }, deafTo(0x200e)));

  test('a device that another tool holds is waited for, then refused', () =>
    onBench(async (bench) => {
      bench.controller.addPeripheral(wrench());
      const held = await connected(bench, WRENCH.address);
      expect(await connect(bench, WRENCH.address)).toMatchObject({
        ok: false,
        error: {
          code: 'link-held',
          message: expect.stringContaining('another tool of this station is connected to it'),
        },
      });
      const next = bench.radio.connect(WRENCH.address, 3_000, never());
      await bench.scheduler.runUntil(held.close());
      expect(good(await bench.scheduler.runUntil(next)).address).toBe(WRENCH.address);
    }));
});

test('a scan that another program ends goes on by itself', () =>
  onBench(async ({ radio, scheduler, controller, socket }) => {
    controller.addPeripheral(wrench());
    let sightings = 0;
    const scan = radio.scan('185a').subscribe(() => {
      sightings += 1;
    });
    await scheduler.runFor(SECOND_US);
    socket.write(Buffer.from([0x01, 0x0c, 0x20, 2, 0, 1])); // LE Set Scan Enable: off
    await scheduler.runFor(200_000);
    const before = sightings;
    await scheduler.runFor(500_000);
    expect(sightings).toBe(before);
    await scheduler.runFor(2 * SECOND_US);
    expect(sightings).toBeGreaterThan(before);
    scan.unsubscribe();
  }));

describe('an adapter that is not what it was', () => {
  /** A socket that keeps packets from the host while `hold` says so. */
  const keeping =
    (hold: (packet: Buffer) => boolean) =>
    (socket: HciSocketClass): HciSocketClass =>
      class extends socket {
        override emit(event: string, ...args: unknown[]): boolean {
          const [packet] = args;
          if (event === 'data' && Buffer.isBuffer(packet) && hold(packet)) return true;
          return super.emit(event, ...args);
        }
      };
  const isDisconnection = (packet: Buffer) => packet[0] === 0x04 && packet[1] === 0x05;

  test('one that missed the end of a link is reset and opened anew once the link is closed; the device can be had again', () => {
    let deaf = false;
    return onBench(
      async (bench) => {
        const sender = bench.controller.addPeripheral(wrench());
        const link = await connected(bench, WRENCH.address);
        deaf = true;
        sender.dropLink(0x08);
        await bench.scheduler.runFor(SECOND_US);
        const asked = await bench.scheduler.runUntil(link.discover(['185a']));
        expect(asked).toMatchObject({ ok: false, error: { code: 'link-timeout' } });
        await bench.scheduler.runUntil(link.close());
        expect(await link.down).toMatchObject({ reason: expect.any(String) });
        deaf = false;
        const again = await connected(bench, WRENCH.address);
        expect(good(await bench.scheduler.runUntil(again.discover(['185a'])))).toMatchObject([
          { uuid: '2c0b' },
        ]);
      },
      keeping((packet) => deaf && isDisconnection(packet)),
    );
  });

  test('one that is unplugged takes its links with it, and is found again when it is plugged in', () => {
    let plugged = true;
    const gone = () => Object.assign(new Error('No such device'), { code: 'ENODEV' });
    const pluggable = (socket: HciSocketClass): HciSocketClass =>
      class extends socket {
        override bindRaw(deviceId?: number): number {
          if (!plugged) throw gone();
          return super.bindRaw(deviceId);
        }
        override isDevUp(): boolean {
          return plugged && super.isDevUp();
        }
        override write(packet: Buffer): void {
          if (!plugged) throw gone();
          super.write(packet);
        }
      };
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    return onBench(async (bench) => {
      const sender = bench.controller.addPeripheral(wrench());
      const link = await connected(bench, WRENCH.address);
      plugged = false;
      vi.advanceTimersByTime(1_000);
      expect(await bench.scheduler.runUntil(link.down)).toMatchObject({ reason: expect.any(String) });
      sender.dropLink(0x08); // the device hears nothing any more
      await bench.scheduler.runFor(60 * SECOND_US);
      expect(await firstValueFrom(bench.radio.powered$)).toBe(false);
      plugged = true;
      const again = await connected(bench, WRENCH.address);
      expect(good(await bench.scheduler.runUntil(again.discover(['185a'])))).toMatchObject([
        { uuid: '2c0b' },
      ]);
    }, pluggable).finally(() => void vi.useRealTimers());
  });

  test('closing the radio while it is being looked for ends the search', () => {
    let up = true;
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    return onBench(
      async ({ radio, scheduler }) => {
        up = false;
        vi.advanceTimersByTime(1_000);
        await scheduler.runFor(2 * SECOND_US);
        await scheduler.runUntil(radio.close());
        await scheduler.run(); // returns only when nothing is left to do
      },
      (socket) =>
        class extends socket {
          override isDevUp(): boolean {
            return up && super.isDevUp();
          }
        },
    ).finally(() => void vi.useRealTimers());
  });
});

describe('more than a station should be sent', () => {
  const OFFER = Buffer.from('03035a18', 'hex');

  test('10 000 devices on the air do not hide the tool that is wished for', () =>
    onBench(async (bench) => {
      const { radio, scheduler, controller, socket } = bench;
      const addresses = new Set<string>();
      const scan = radio.scan('185a', WRENCH.address).subscribe(({ address, name }) => {
        addresses.add(address);
        expect(name?.length ?? 0).toBeLessThanOrEqual(31);
      });
      controller.addPeripheral(wrench());
      await scheduler.runFor(300_000);
      const name = Buffer.concat([
        Buffer.from([30, 0x09]),
        Buffer.from('\u001b[2J\u0007'.padEnd(29, '\u009b'), 'latin1'),
      ]);
      for (let device = 0; device < 10_000; device++) {
        socket.emit('data', report(0, device, OFFER));
        socket.emit('data', report(4, device, name));
        if (device % 100 === 0) await scheduler.runFor(10_000);
      }
      expect(addresses.size).toBeGreaterThan(9_900);
      const link = good(
        await scheduler.runUntil(radio.connect(WRENCH.address, 5_000, new AbortController().signal)),
      );
      expect(link.address).toBe(WRENCH.address);
      scan.unsubscribe();
    }));

  test('a frame that goes on and on beyond its own length ends its link', () =>
    onBench(async (bench) => {
      bench.controller.addPeripheral(wrench());
      const handles: number[] = [];
      bench.socket.on('data', (packet: Buffer) => {
        const handle = connectedHandle(packet);
        if (handle !== undefined) handles.push(handle);
      });
      const link = await connected(bench, WRENCH.address);
      const [handle = 0] = handles;
      bench.socket.emit('data', acl(handle, true, Buffer.from('20000400', 'hex')));
      for (let i = 0; i < 1_000; i++) bench.socket.emit('data', acl(handle, false, Buffer.alloc(200)));
      expect(await bench.scheduler.runUntil(link.down)).toEqual({
        reason: 'ended-by-station',
        controllerReason: 0x16,
      });
    }));
});

describe('an adapter that noble has for itself', () => {
  beforeEach(() => void vi.stubEnv('HCI_CHANNEL_USER', '1'));
  afterEach(() => void vi.unstubAllEnvs());

  test('is asked how much it can take, without which noble sends nothing', () =>
    onBench(async (bench) => {
      bench.controller.addPeripheral(wrench());
      const link = await connected(bench, WRENCH.address);
      expect(good(await bench.scheduler.runUntil(link.discover(['185a'])))).toMatchObject([{ uuid: '2c0b' }]);
    }));
});

describe('the adapter is switched off and on', () => {
  beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
  afterEach(() => void vi.useRealTimers());

  test('every link goes down, scanning waits, and both come back with the adapter', () => {
    let up = true;
    const switched = (socket: HciSocketClass): HciSocketClass =>
      class extends socket {
        override isDevUp(): boolean {
          return up && super.isDevUp();
        }
      };
    return onBench(async (bench) => {
      const { radio, scheduler, controller } = bench;
      controller.addPeripheral(wrench());
      const link = await connected(bench, WRENCH.address);
      up = false;
      vi.advanceTimersByTime(1_000);
      expect(await scheduler.runUntil(link.down)).toMatchObject({ reason: expect.any(String) });
      expect(await firstValueFrom(radio.powered$)).toBe(false);
      expect(await radio.connect(WRENCH.address, 1_000, never())).toMatchObject({
        ok: false,
        error: { code: 'radio-off' },
      });
      let sightings = 0;
      const scan = radio.scan('185a').subscribe(() => {
        sightings += 1;
      });
      controller.addPeripheral(gauge());
      await scheduler.runFor(5 * SECOND_US);
      expect(sightings).toBe(0);

      up = true;
      vi.advanceTimersByTime(1_000);
      await scheduler.runFor(5 * SECOND_US);
      expect(await firstValueFrom(radio.powered$)).toBe(true);
      expect(sightings).toBeGreaterThan(0);
      scan.unsubscribe();
      expect(good(await scheduler.runUntil(radio.connect(GAUGE.address, 3_000, never()))).address).toBe(
        GAUGE.address,
      );
    }, switched);
  });
});
