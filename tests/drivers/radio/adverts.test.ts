import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { appearanceIn } from '../../../drivers/radio/adverts.ts';
import { loadNoble } from '../../../drivers/radio/load.ts';
import { tame } from '../../../drivers/radio/tame.ts';
import { createController, type HciSocketClass } from '../../../sim/controller/index.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';
import { report } from './hostile.ts';

describe('the appearance in an advertisement', () => {
  test.each<[string, string, number | undefined]>([
    ['among other data', '02010603195a14', 0x145a],
    ['at the beginning', '0319c814020106', 0x14c8],
    ['not there', '020106', undefined],
    ['of another length', '0219c8', undefined],
    ['behind an end', '00000319c814', undefined],
    ['cut', '0319c8', undefined],
    ['nothing', '', undefined],
  ])('%s', (_name, hex, appearance) => {
    expect(appearanceIn(Buffer.from(hex, 'hex'))).toBe(appearance);
  });

  test('no payload makes it throw or look beyond its end', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (payload) => {
        const found = appearanceIn(payload);
        if (found === undefined) return;
        const low = payload.findIndex(
          (_, i) => payload[i] === (found & 0xff) && payload[i + 1] === found >> 8,
        );
        expect(low).toBeGreaterThan(1);
      }),
    );
  });
});

test('of 20 000 devices heard, noble keeps little more than a thousand, and the one that is wanted', async () => {
  const scheduler = virtualScheduler();
  const controller = createController({ scheduler, address: 'c0:ff:ee:00:00:00' });
  const sockets: InstanceType<HciSocketClass>[] = [];
  class Kept extends controller.HciSocket {
    constructor() {
      super();
      sockets.push(this);
    }
  }
  const noble = loadNoble({ socket: Kept, deviceId: 0 });
  const tamed = tame(noble, scheduler.after);
  await scheduler.runFor(1_000_000);
  tamed.adverts.protect((address) => address === 'd0:00:00:00:00:00');
  noble.startScanning(['185a'], true);
  const offer = Buffer.from('03035a18', 'hex');
  for (let device = 0; device < 20_000; device++) {
    sockets[0]?.emit('data', report(0, device, offer));
    sockets[0]?.emit('data', report(4, device, Buffer.from('0319c814', 'hex')));
  }
  const bindings = noble._bindings;
  const kept = [
    noble._peripherals,
    noble._services,
    noble._characteristics,
    noble._descriptors,
    bindings._addresses,
    bindings._addresseTypes,
    bindings._connectable,
    bindings.scannable,
    bindings._gap?._discoveries,
  ].map((table) => Object.keys(table ?? {}).length);
  expect(Math.min(...kept)).toBeGreaterThan(0);
  expect(Math.max(...kept)).toBeLessThanOrEqual(1_025);
  expect(noble._peripherals['d00000000000']).toBeDefined();
  expect(tamed.adverts.appearance('d0:00:00:00:00:00')).toBe(0x14c8);
  tamed.release();
  controller.close();
});
