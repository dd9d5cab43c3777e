import { describe, expect, test } from 'vitest';
import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import { imds } from '../../../drivers/imds/language.ts';
import { TORQUE } from '../../../drivers/imds/numbers.ts';
import type { PeripheralDefinition } from '../../../sim/controller/index.ts';
import type { Reading } from '../../../src/reading.ts';
import { type Bench, counts, good, onBench, WRENCH, wrench } from '../bench.ts';

const SECOND_US = 1_000_000;

/** A wrench that tells its serial number only over a link with the security given. */
function guarded(requires: 'encryption' | 'authentication', pairs: boolean): PeripheralDefinition {
  const plain = wrench();
  return {
    ...plain,
    ...(pairs && { pairs: 'just-works' as const }),
    services: plain.services.map((service) => ({
      ...service,
      characteristics: service.characteristics.map((one) =>
        one.uuid === 0x2a25 ? { ...one, requires } : one,
      ),
    })),
  };
}

function listen({ radio, scheduler }: Bench) {
  const tool = bluetoothTool({
    id: 'wrench',
    language: imds('torque'),
    adopted: WRENCH,
    radio,
    clock: scheduler,
    after: scheduler.after,
    random: () => 0.5,
  });
  const readings: Reading[] = [];
  const reasons: string[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  tool.link$.subscribe((link) => void (link.state === 'lost' && reasons.push(link.reason)));
  return { tool, readings, reasons };
}

describe('a tool that asks for encryption', () => {
  test('gets it where it pairs by Just Works, anew for every link; that is encrypted and never called authenticated', () =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(guarded('encryption', true));
      const { tool, readings } = listen(bench);
      const described: unknown[] = [];
      tool.link$.subscribe((link) => void (link.state === 'linked' && described.push(link.description.link)));
      good(await scheduler.runUntil(tool.connect()));
      sender.dropLink(0x08);
      await scheduler.runFor(5 * SECOND_US);
      sender.notify(0x2c0b, counts(TORQUE, 7));
      await scheduler.runFor(SECOND_US);
      const link = { kind: 'bluetooth-le', address: WRENCH.address, encrypted: true, authenticated: false };
      expect(described).toEqual([link, link]);
      expect(readings.filter(({ kind }) => kind === 'value')).toMatchObject([{ counts: 7 }]);
      await scheduler.runUntil(tool.close());
    }));

  test.each([
    ['and cannot pair', 'encryption', false, /asks for a pairing that did not come about/],
    ['that is more than Just Works can give', 'authentication', true, /only to whom it is paired with/],
  ] as const)('%s is not listened to, and it is said why', (_name, requires, pairs, reason) =>
    onBench(async (bench) => {
      const { scheduler, controller } = bench;
      const sender = controller.addPeripheral(guarded(requires, pairs));
      const { tool, readings, reasons } = listen(bench);
      void tool.connect();
      for (let i = 0; i < 20; i++) {
        sender.notify(0x2c0b, counts(TORQUE, i));
        await scheduler.runFor(SECOND_US);
      }
      expect(reasons.length).toBeGreaterThan(0);
      for (const said of reasons) expect(said).toMatch(reason);
      expect(readings).toEqual([]);
      await scheduler.runUntil(tool.close());
    }),
  );
});
