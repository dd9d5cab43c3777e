import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { attAnswer } from '../../../drivers/radio/att-answer.ts';
import { type Bench, good, onBench, WRENCH, wrench } from '../bench.ts';
import { att, connectedHandle } from './hostile.ts';

// PDUs as in Bluetooth Core 5.4, Vol 3 Part F, 3.4.

const bytes = (hex: string) => Buffer.from(hex, 'hex');
const [MTU, INFORMATION, BY_TYPE, READ, BY_GROUP] = [
  '02f700',
  '0405000900',
  '08010009000328',
  '0a0300',
  '100100ffff0028',
];

describe('an answer of a device', () => {
  test.each([
    ['to the MTU request', MTU, '031700'],
    ['a list of 16-bit descriptors', INFORMATION, '0501' + '05000229' + '06000129'],
    ['a list of characteristics', BY_TYPE, '0907' + '02001003000b2c'],
    ['a value', READ, '0b01020304'],
    ['an empty value', READ, '0b'],
    ['a list of services', BY_GROUP, '1106' + '010009005a18'],
    ['an error that names the request', READ, '010a030005'],
  ])('%s goes on', (_name, asked, pdu) => {
    expect(attAnswer(bytes(pdu), bytes(asked))).toBe('goes-on');
  });

  test.each([
    ['nothing', READ, ''],
    ['an answer to another request', READ, '031700'],
    ['an error that names another request', READ, '0108030005'],
  ])('%s is not taken for the answer', (_name, asked, pdu) => {
    expect(attAnswer(bytes(pdu), bytes(asked))).toBe('uncalled-for');
    expect(attAnswer(bytes(pdu), undefined)).toBe('uncalled-for');
  });

  test.each([
    ['an MTU below the least', MTU, '031600'],
    ['an MTU cut off', MTU, '0317'],
    ['services of length 0', BY_GROUP, '1100' + '010009005a18'],
    ['services of another length', BY_GROUP, '1105' + '0100090018'],
    ['no service at all', BY_GROUP, '1106'],
    ['a service cut off', BY_GROUP, '1106' + '010009005a'],
    ['characteristics of length 0', BY_TYPE, '0900' + '02001003000b2c'],
    ['descriptors of an unknown format', INFORMATION, '0503' + '05000229'],
    ['descriptors that lie before what was asked for', INFORMATION, '0501' + '04000229'],
    ['an error cut off', READ, '010a0300'],
  ])('%s cannot be', (_name, asked, pdu) => {
    expect(attAnswer(bytes(pdu), bytes(asked))).toBe('malformed');
  });

  test('what a device sends unasked, and what it asks, goes on whatever is waited for', () => {
    const unasked = fc.oneof(
      fc.constantFrom(0x1b, 0x1d),
      fc.nat(127).map((half) => 2 * half),
    );
    fc.assert(
      fc.property(unasked, fc.uint8Array({ maxLength: 8 }), fc.boolean(), (opcode, rest, asked) => {
        expect(attAnswer(Buffer.from([opcode, ...rest]), asked ? bytes(READ) : undefined)).toBe('goes-on');
      }),
    );
  });
});

describe('a list that says its entries have no length, while the services are looked for', () => {
  /** Answers before the device does, as soon as the request of that opcode is on the air. */
  const answering = ({ socket, scheduler }: Bench, opcode: number, pdu: Buffer) => {
    let handle = 0;
    socket.on('data', (packet: Buffer) => {
      handle = connectedHandle(packet) ?? handle;
    });
    const write = socket.write.bind(socket);
    socket.write = (packet: Buffer) => {
      write(packet);
      if (packet[0] === 0x02 && packet[9] === opcode)
        scheduler.after(0, () => socket.emit('data', att(handle, pdu)));
    };
  };

  test.each([
    ['services', 0x10, '1100' + '010009005a18'],
    ['characteristics', 0x08, '0900' + '02001003000b2c'],
  ])('%s: ends the link, and the memory stays as it is', (_name, opcode, pdu) =>
    onBench(async (bench) => {
      const { controller, radio, scheduler } = bench;
      controller.addPeripheral(wrench());
      answering(bench, opcode, bytes(pdu));
      const scan = radio.scan('185a').subscribe(() => {});
      await scheduler.runFor(1_000_000);
      scan.unsubscribe();
      const link = good(
        await scheduler.runUntil(radio.connect(WRENCH.address, 10_000, new AbortController().signal)),
      );
      const discovered = link.discover(['185a']);
      await scheduler.runFor(20_000_000);
      expect(await discovered).toMatchObject({ ok: false });
      expect((await link.down).reason).toBe('ended-by-station');
    }),
  );
});
