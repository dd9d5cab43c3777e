import { describe, expect, test } from 'vitest';
import { TORQUE } from '../../../drivers/imds/numbers.ts';
import { counts, good, onBench, WRENCH, wrench } from '../bench.ts';
import { guarded, listen } from './guarded.ts';

const SECOND_US = 1_000_000;

describe('a tool that asks for encryption, where nothing is kept of it', () => {
  test.each(['just-works', 'bonding'] as const)(
    'gets it by Just Works, anew for every link (%s); that is encrypted and never called authenticated',
    (pairs) =>
      onBench(async (bench) => {
        const { scheduler, controller } = bench;
        const sender = controller.addPeripheral(guarded('encryption', pairs));
        const { tool, readings, linked } = listen(bench);
        good(await scheduler.runUntil(tool.connect()));
        sender.dropLink(0x08);
        await scheduler.runFor(5 * SECOND_US);
        sender.notify(0x2c0b, counts(TORQUE, 7));
        await scheduler.runFor(SECOND_US);
        const link = { kind: 'bluetooth-le', address: WRENCH.address, encrypted: true, authenticated: false };
        expect(linked).toEqual([link, link]);
        expect(readings.filter(({ kind }) => kind === 'value')).toMatchObject([{ counts: 7 }]);
        await scheduler.runUntil(tool.close());
      }),
  );

  test.each([
    ['and cannot pair', 'encryption', undefined, /asks for pairing, and pairing failed/],
    [
      'that is more than Just Works can give',
      'authentication',
      'just-works',
      /gives no serial number before pairing/,
    ],
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

test('a kernel that answers a device by pairing with it is not disturbed, and nothing is asked for twice', () =>
  onBench(async ({ scheduler, controller, radio, socket }) => {
    controller.addPeripheral(wrench());
    const { tool, linked } = listen({ radio, scheduler });
    const sent: Buffer[] = [];
    const write = socket.write.bind(socket);
    socket.write = (packet) => {
      sent.push(Buffer.from(packet));
      write(packet);
    };
    const fromDevice = (...command: readonly number[]) =>
      socket.emit(
        'data',
        Buffer.from([2, 0x40, 0x20, command.length + 4, 0, command.length, 0, 6, 0, ...command]),
      );
    tool.link$.subscribe(({ state }) => {
      if (state !== 'discovering') return;
      fromDevice(0x0b, 0x09);
      fromDevice(0x02, 3, 0, 9, 16, 5, 5);
      fromDevice(0x0c, ...Buffer.alloc(64));
      socket.emit('data', Buffer.from([4, 0x08, 4, 0, 0x40, 0, 1]));
    });
    good(await scheduler.runUntil(tool.connect()));
    expect(linked).toMatchObject([{ encrypted: true, authenticated: false }]);
    const onSecurityChannel = sent.filter((packet) => packet[0] === 2 && packet.readUInt16LE(7) === 6);
    expect(onSecurityChannel).toEqual([]);
    const exchanges = sent.filter((packet) => packet[0] === 2 && packet[9] === 0x02);
    expect(exchanges).toHaveLength(1);
    await scheduler.runUntil(tool.close());
  }));
