/** Requests and responses as octets, laid out by hand after Core, Vol 3 Part F 3.4. */
import { describe, expect, it } from 'vitest';
import { attServer } from '../../../sim/controller/att-server.ts';
import { gattTable } from '../../../sim/controller/gatt-table.ts';
import type { Uuid } from '../../../sim/controller/index.ts';
import { COMMAND, LOG_BYTES, TORQUE, wrench } from './wrench.ts';

/*
 * Handles of the table under test:
 *  1 service 1800    2 decl 3 2A00 name   4 decl 5 2A01 appearance
 *  6 service 1801
 *  7 service 185A    8 decl 9 torque 10 CCCD 11 format   12 decl 13 command 14 CCCD   15 decl 16 serial
 * 17 service (128)  18 decl 19 log
 */
function server(maxMtu = 185) {
  const written: Buffer[] = [];
  const subscriptions: [Uuid, boolean][] = [];
  const confirmations: string[] = [];
  const made = attServer(gattTable(wrench({}, written)), maxMtu, {
    onSubscription: (uuid, on) => void subscriptions.push([uuid, on]),
    onConfirmation: () => void confirmations.push('confirmed'),
  });
  const ask = (hex: string) => made.receive(Buffer.from(hex.replaceAll(' ', ''), 'hex'))?.toString('hex');
  return { ...made, ask, written, subscriptions, confirmations };
}

const hex = (text: string) => text.replaceAll(' ', '');
const COMMAND_ON_AIR = '84aa6074528a8b86d34cb71d1ddc538d';
const PRIVATE_ON_AIR = '401e9b6c2d0f539a6e4ba4772a1e0c5f';

describe('Exchange MTU', () => {
  it('answers with its own limit and uses the lesser of the two', () => {
    const { ask } = server(185);
    expect(ask('0a 1300')).toHaveLength(2 * 23);
    expect(ask('02 0001')).toBe(hex('03 b900'));
    expect(ask('0a 1300')).toHaveLength(2 * 185);
  });

  it('never goes below 23', () => {
    const { ask } = server();
    expect(ask('02 0500')).toBe(hex('03 b900'));
    expect(ask('0a 1300')).toHaveLength(2 * 23);
  });
});

describe('Find Information', () => {
  it('lists handles with types of one length', () => {
    expect(server().ask('04 0a00 0b00')).toBe(hex('05 01 0a00 0229 0b00 0429'));
    expect(server().ask('04 0d00 0e00')).toBe(hex(`05 02 0d00 ${COMMAND_ON_AIR}`));
  });

  it('stops at what fits', () => {
    expect(server().ask('04 0100 ffff')).toBe(hex('05 01 0100 0028 0200 0328 0300 002a 0400 0328 0500 012a'));
  });

  it('refuses a bad range and says when there is nothing', () => {
    expect(server().ask('04 0000 0500')).toBe(hex('01 04 0000 01'));
    expect(server().ask('04 0500 0400')).toBe(hex('01 04 0500 01'));
    expect(server().ask('04 1400 ffff')).toBe(hex('01 04 1400 0a'));
  });
});

describe('Find By Type Value', () => {
  it('finds a primary service with its group', () => {
    expect(server().ask('06 0100 ffff 0028 5a18')).toBe(hex('07 0700 1000'));
    expect(server().ask(`06 0100 ffff 0028 ${PRIVATE_ON_AIR}`)).toBe(hex('07 1100 1300'));
  });

  it('does not find what differs or may not be read', () => {
    expect(server().ask('06 0100 ffff 0028 5b18')).toBe(hex('01 06 0100 0a'));
    expect(server().ask('06 0100 ffff 252a 532d31')).toBe(hex('01 06 0100 0a'));
  });
});

describe('Read By Type', () => {
  it('lists declarations of one length', () => {
    expect(server().ask('08 0700 1000 0328')).toBe(hex('09 07 0800 12 0900 0b2c'));
    expect(server().ask('08 0c00 1000 0328')).toBe(hex(`09 15 0c00 2c 0d00 ${COMMAND_ON_AIR}`));
  });

  it('reads a configuration by its type', () => {
    expect(server().ask('08 0800 0b00 0229')).toBe(hex('09 04 0a00 0000'));
  });

  it('takes a 16-bit type in its 128-bit form too', () => {
    expect(server().ask('08 0800 0b00 fb349b5f80000080001000000229 0000')).toBe(hex('09 04 0a00 0000'));
  });

  it('cuts a long value to ATT_MTU - 4', () => {
    expect(server().ask('08 1200 ffff 282a')).toBe(
      hex(`09 15 1300 ${LOG_BYTES.subarray(0, 19).toString('hex')}`),
    );
  });

  it('reports the first match that may not be read, by its handle', () => {
    expect(server().ask('08 0100 ffff 252a')).toBe(hex('01 08 1000 0f'));
  });

  it('says when there is nothing, and refuses a bad range', () => {
    expect(server().ask('08 0100 ffff 0229')).toBe(hex('09 04 0a00 0000 0e00 0000'));
    expect(server().ask('08 0100 0900 0229')).toBe(hex('01 08 0100 0a'));
    expect(server().ask('08 0200 0100 0229')).toBe(hex('01 08 0200 01'));
  });
});

describe('Read By Group Type', () => {
  it('lists primary services, the 128-bit one in an answer of its own', () => {
    expect(server().ask('10 0100 ffff 0028')).toBe(hex('11 06 0100 0500 0018 0600 0600 0118 0700 1000 5a18'));
    expect(server().ask('10 1100 ffff 0028')).toBe(hex(`11 14 1100 1300 ${PRIVATE_ON_AIR}`));
    expect(server().ask('10 1200 ffff 0028')).toBe(hex('01 10 1200 0a'));
  });

  it('knows no secondary services and no other groups', () => {
    expect(server().ask('10 0100 ffff 0128')).toBe(hex('01 10 0100 0a'));
    expect(server().ask('10 0100 ffff 0328')).toBe(hex('01 10 0100 10'));
    expect(server().ask('10 0000 ffff 0028')).toBe(hex('01 10 0000 01'));
  });
});

describe('Read and Read Blob', () => {
  it('read values, declarations and configurations', () => {
    expect(server().ask('0a 0900')).toBe(hex('0b c4090000'));
    expect(server().ask('0a 0500')).toBe(hex('0b c814'));
    expect(server().ask('0a 0b00')).toBe(hex('0b 10fe4127010000'));
    expect(server().ask('0a 0a00')).toBe(hex('0b 0000'));
  });

  it('give a long value in parts, an empty part at its end, and an error beyond', () => {
    const { ask } = server();
    expect(ask('0a 1300')).toBe(`0b${LOG_BYTES.subarray(0, 22).toString('hex')}`);
    expect(ask('0c 1300 1600')).toBe(`0d${LOG_BYTES.subarray(22, 44).toString('hex')}`);
    expect(ask('0c 1300 2c01')).toBe('0d');
    expect(ask('0c 1300 2d01')).toBe(hex('01 0c 1300 07'));
  });

  it('refuse unknown handles and values that may not be read', () => {
    expect(server().ask('0a 1400')).toBe(hex('01 0a 1400 01'));
    expect(server().ask('0a 0000')).toBe(hex('01 0a 0000 01'));
    expect(server().ask('0a 0d00')).toBe(hex('01 0a 0d00 02'));
    expect(server().ask('0c 0d00 0000')).toBe(hex('01 0c 0d00 02'));
    expect(server().ask('0a 1000')).toBe(hex('01 0a 1000 0f'));
  });
});

describe('writes', () => {
  it('reach the responder, with and without response', () => {
    const { ask, written } = server();
    expect(ask('12 0d00 0102')).toBe('13');
    expect(ask('52 0d00 03')).toBeUndefined();
    expect(written).toEqual([Buffer.from([1, 2]), Buffer.from([3])]);
  });

  it('are refused as the protocol says, commands in silence', () => {
    const { ask, written } = server();
    expect(ask('12 0900 01')).toBe(hex('01 12 0900 03'));
    expect(ask('12 0800 01')).toBe(hex('01 12 0800 03'));
    expect(ask('12 1400 01')).toBe(hex('01 12 1400 01'));
    expect(ask('12 1000 01')).toBe(hex('01 12 1000 0f'));
    expect(ask(`12 0d00 ${'00'.repeat(513)}`)).toBe(hex('01 12 0d00 0d'));
    expect(ask('52 0900 01')).toBeUndefined();
    expect(ask('52 1400 01')).toBeUndefined();
    expect(written).toEqual([]);
  });
});

describe('subscriptions', () => {
  it('follow the configuration, and are told once for each change', () => {
    const { ask, subscriptions } = server();
    expect(ask('12 0a00 0100')).toBe('13');
    expect(ask('12 0a00 0100')).toBe('13');
    expect(ask('0a 0a00')).toBe(hex('0b 0100'));
    expect(ask('12 0a00 0000')).toBe('13');
    expect(subscriptions).toEqual([
      [TORQUE, true],
      [TORQUE, false],
    ]);
  });

  it('refuse a wrong length and a bit that the characteristic does not offer', () => {
    const { ask, subscriptions } = server();
    expect(ask('12 0a00 01')).toBe(hex('01 12 0a00 0d'));
    expect(ask('12 0a00 0200')).toBe(hex('01 12 0a00 13'));
    expect(subscriptions).toEqual([]);
  });

  it('make notifications, cut to ATT_MTU - 3', () => {
    const { ask, notification } = server();
    expect(notification(TORQUE, Buffer.from([1]))).toBeUndefined();
    ask('12 0a00 0100');
    expect(notification(TORQUE, Buffer.from([0x22, 0x0b, 0, 0]))?.toString('hex')).toBe(
      hex('1b 0900 220b0000'),
    );
    expect(notification(TORQUE, LOG_BYTES)).toHaveLength(23);
    ask('02 0001');
    expect(notification(TORQUE, LOG_BYTES)).toHaveLength(185);
  });

  it('make one indication at a time', () => {
    const { ask, indication, confirmations } = server();
    ask('12 0e00 0200');
    expect(indication(COMMAND, Buffer.from([7]))?.toString('hex')).toBe(hex('1d 0d00 07'));
    expect(indication(COMMAND, Buffer.from([8]))).toBeUndefined();
    expect(ask('1e')).toBeUndefined();
    expect(ask('1e')).toBeUndefined();
    expect(confirmations).toEqual(['confirmed']);
    expect(indication(COMMAND, Buffer.from([8]))?.toString('hex')).toBe(hex('1d 0d00 08'));
  });

  it('are a mistake of the simulation where there can be none', () => {
    expect(() => server().notification(0x2a00, Buffer.alloc(1))).toThrow(RangeError);
  });
});

describe('what is not supported or not well formed', () => {
  it.each([
    ['Read Multiple', '0e 0300 0500', '01 0e 0000 06'],
    ['Prepare Write', '16 0d00 0000 01', '01 16 0000 06'],
    ['Execute Write', '18 01', '01 18 0000 06'],
    ['an opcode nobody defined', '3f', '01 3f 0000 06'],
    ['a Read without its handle', '0a 09', '01 0a 0000 04'],
    ['a Read By Type with half a UUID', '08 0100 ffff 02', '01 08 0000 04'],
    ['an empty Write Request', '12', '01 12 0000 04'],
    ['an MTU request without the MTU', '02', '01 02 0000 04'],
  ])('%s gets an error', (_, request, response) => {
    expect(server().ask(request)).toBe(hex(response));
  });

  it.each([
    ['nothing', ''],
    ['a response', '0b 01'],
    ['an error response', '01 0a 0900 01'],
    ['a notification', '1b 0900 01'],
    ['an unknown command', '40 01'],
    ['a signed write command', 'd2 0d00 01'],
    ['a write command without a handle', '52 0d'],
    ['a confirmation of nothing', '1e'],
  ])('%s gets silence', (_, request) => {
    expect(server().ask(request)).toBeUndefined();
  });
});

describe('the table', () => {
  it('refuses values longer than 512 octets', () => {
    const value = Buffer.alloc(513);
    const services = [{ uuid: 0x185a, characteristics: [{ uuid: TORQUE, properties: [], value }] }];
    expect(() => gattTable(wrench({ services }))).toThrow('513 octets');
  });

  it('takes all forms of a UUID as one', () => {
    const forms = [0x185a, '185a', '185A', '0000185a-0000-1000-8000-00805f9b34fb'];
    const tables = forms.map((uuid) => gattTable(wrench({ services: [{ uuid, characteristics: [] }] })));
    for (const table of tables)
      expect(table.attributes.at(-1)?.content).toMatchObject({ value: Buffer.from([0x5a, 0x18]) });
  });

  it('refuses UUIDs that are none', () => {
    for (const uuid of [0x10000, -1, 1.5, '5a', '0000185a', 'not-a-uuid']) {
      expect(() => gattTable(wrench({ services: [{ uuid, characteristics: [] }] }))).toThrow(RangeError);
    }
  });
});
