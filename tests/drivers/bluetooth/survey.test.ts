import { describe, expect, test } from 'vitest';
import { kindOf } from '../../../drivers/bluetooth/kind.ts';
import { candidates, heard, introduce, visit } from '../../../drivers/bluetooth/survey.ts';
import { GAUGE, gauge, good, onBench, WRENCH, wrench } from '../bench.ts';

test('looking around shows what is there, the strongest first, with kind and serial number', () =>
  onBench(async ({ radio, controller, scheduler }) => {
    controller.addPeripheral({ ...wrench(), rssi: -70 });
    controller.addPeripheral({ ...gauge(), addressType: 'random', address: '40:00:00:00:00:07' });
    const found = await scheduler.runUntil(candidates(radio.scan('185a'), 3_000, scheduler.after));
    expect(found).toEqual([
      {
        address: '40:00:00:00:00:07',
        name: 'gauge',
        kind: 'caliper',
        rssi: -50,
        services: ['185a'],
        lasting: false, // resolvable private: it will have another one soon
      },
      {
        address: WRENCH.address,
        name: 'wrench',
        kind: 'torque wrench',
        rssi: -70,
        services: ['185a'],
        lasting: true,
      },
    ]);
    const about = good(await scheduler.runUntil(visit(radio, WRENCH.address, introduce)));
    expect(about).toMatchObject({ serial: WRENCH.serial, link: { authenticated: false } });
    expect(about.link).not.toHaveProperty('encrypted');
  }));

test('waiting for one device ends when it is heard, or with the problem that it was not', () =>
  onBench(async ({ radio, controller, scheduler }) => {
    const late = controller.addPeripheral(gauge());
    late.stopAdvertising();
    const waiting = heard(radio, GAUGE.address.toUpperCase(), 5_000, scheduler.after);
    await scheduler.runFor(2_000_000);
    late.startAdvertising();
    expect(good(await scheduler.runUntil(waiting))).toMatchObject({ address: GAUGE.address });
    expect(await scheduler.runUntil(heard(radio, WRENCH.address, 2_000, scheduler.after))).toMatchObject({
      ok: false,
      error: { code: 'device-not-heard', where: WRENCH.address },
    });
  }));

describe('what kind of device it is', () => {
  test.each<[number | undefined, readonly string[], string]>([
    [0x1481, [], 'torque testing device'],
    [0x14c8, [], 'torque wrench'],
    [0x1482, ['185a'], 'caliper'],
    [undefined, ['185a'], 'measurement device'],
    [0x0340, ['185a'], 'measurement device'],
    [0x0340, [], 'appearance 0x0340'],
    [undefined, [], 'unknown'],
  ])('appearance %s, services %j: %s', (appearance, services, kind) => {
    expect(kindOf({ services, ...(appearance !== undefined && { appearance }) })).toBe(kind);
  });
});
