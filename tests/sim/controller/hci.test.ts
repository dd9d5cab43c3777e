/** The controller as a host sees it: HCI packets as octets, laid out by hand after Core, Vol 4 Part E. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ControllerOptions, createController } from '../../../sim/controller/index.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';
import { TORQUE, wrench } from './wrench.ts';

const PEER = '0100000000c0';

function host(options: Partial<ControllerOptions> = {}) {
  const scheduler = virtualScheduler();
  const controller = createController({ scheduler, address: '00:00:5e:00:53:01', ...options });
  const socket = new controller.HciSocket();
  const received: string[] = [];
  socket.on('data', (packet: Buffer) => void received.push(packet.toString('hex')));
  socket.bindRaw(0);
  socket.start();
  const write = (hex: string) => socket.write(Buffer.from(hex.replaceAll(' ', ''), 'hex'));
  return {
    scheduler,
    controller,
    socket,
    write,
    /** Sends one packet and gives what came within 150 ms. */
    ask: async (hex: string) => {
      received.length = 0;
      write(hex);
      await scheduler.runFor(150_000);
      return [...received];
    },
    received,
  };
}

const spaced = (...packets: string[]) => packets.map((packet) => packet.replaceAll(' ', ''));
const createConnection = (peer = PEER, type = '01', timing = '0600 1200 0000 2a00') =>
  `01 0d20 19 6000 3000 00 ${type} ${peer} 00 ${timing} 0400 0600`;

/** A host with a link to the wrench, handle 0x0040, interval 22.5 ms. */
async function linked(options: Partial<ControllerOptions> = {}) {
  const made = host(options);
  const device = made.controller.addPeripheral(wrench());
  expect(await made.ask(createConnection())).toEqual(
    spaced('040f 04 00 01 0d20', `043e 13 01 00 4000 00 01 ${PEER} 1200 0000 2a00 00`),
  );
  return { ...made, device };
}

describe('commands', () => {
  it.each([
    ['Reset', '01 030c 00', '040e 04 01 030c 00'],
    ['Set Event Mask', '01 010c 08 fffffbff07f8bf3d', '040e 04 01 010c 00'],
    ['LE Set Event Mask', '01 0120 08 1f00000000000000', '040e 04 01 0120 00'],
    ['Read Local Version', '01 0110 00', '040e 0c 01 0110 00 09 0000 09 ffff 0000'],
    ['Read BD_ADDR', '01 0910 00', '040e 0a 01 0910 00 0153005e0000'],
    ['Write LE Host Support', '01 6d0c 02 0100', '040e 04 01 6d0c 00'],
    ['Read LE Host Support', '01 6c0c 00', '040e 06 01 6c0c 00 01 00'],
    ['LE Read Buffer Size', '01 0220 00', '040e 07 01 0220 00 fb00 08'],
    ['Read Buffer Size', '01 0510 00', '040e 0b 01 0510 00 fb00 00 0800 0000'],
    ['LE Read Local Supported Features', '01 0320 00', '040e 0c 01 0320 00 0000000000000000'],
    ['LE Set Random Address', '01 0520 06 050403020100', '040e 04 01 0520 00'],
    ['LE Set Scan Parameters', '01 0b20 07 01 1200 1200 00 00', '040e 04 01 0b20 00'],
    ['LE Set Scan Enable', '01 0c20 02 00 01', '040e 04 01 0c20 00'],
    ['Read RSSI of no link', '01 0514 02 4000', '040e 07 01 0514 02 4000 00'],
    ['LE Create Connection Cancel of none', '01 0e20 00', '040e 04 01 0e20 0c'],
    ['Disconnect of no link', '01 0604 03 4000 13', '040f 04 02 01 0604'],
    ['LE Read Remote Features of no link', '01 1620 02 4000', '040f 04 02 01 1620'],
    ['an extended scan', '01 4120 0d 00000501120012000112001200', '040f 04 01 01 4120'],
    ['a command with a missing parameter', '01 0c20 01 01', '040f 04 12 01 0c20'],
    [
      'a connection with a filter list',
      '01 0d20 19 6000300001010100000000c0000600120000002a0004000600',
      '040f 04 11 01 0d20',
    ],
    [
      'a connection that times out between two events',
      createConnection(PEER, '01', '0600 800c 0000 2a00'),
      '040f 04 12 01 0d20',
    ],
  ])('%s', async (_, command, event) => {
    expect(await host().ask(command)).toEqual(spaced(event));
  });

  it('are never answered within write()', async () => {
    const { write, received, scheduler } = host();
    write('01 030c 00');
    expect(received).toEqual([]);
    await scheduler.run();
    expect(received).toHaveLength(1);
  });

  it('get exactly one answer, whatever they are', async () => {
    const parameters = fc.uint8Array({ maxLength: 30 });
    const opcodes = fc.oneof(
      fc.nat(0xffff),
      fc.integer({ min: 0x2001, max: 0x2020 }),
      fc.constantFrom(0x0406, 0x1405),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(opcodes, parameters), { maxLength: 10 }), async (commands) => {
        const { socket, received, scheduler, controller } = host();
        for (const [opcode, bytes] of commands) {
          socket.write(Buffer.from([1, opcode & 0xff, opcode >> 8, bytes.length, ...bytes]));
        }
        await scheduler.runFor(1_000);
        controller.close();
        const answered = received
          .filter((packet) => packet.startsWith('040e') || packet.startsWith('040f'))
          .map((packet) => (packet.startsWith('040e') ? packet.slice(8, 12) : packet.slice(10, 14)));
        const asked = commands.map(([opcode]) => Buffer.from([opcode & 0xff, opcode >> 8]).toString('hex'));
        expect(answered).toEqual(asked);
      }),
      { numRuns: 200 },
    );
  });

  it.each([
    ['no packet', ''],
    ['an event', '040e0401030c00'],
    ['a short command', '01030c01'],
    ['short ACL data', '0240000500'],
  ])('are not mixed up with %s', (_, packet) => {
    expect(() => host().write(packet)).toThrow(RangeError);
  });
});

describe('scanning', () => {
  it('may not change its parameters while it runs', async () => {
    const { ask } = host();
    await ask('01 0c20 02 01 00');
    expect(await ask('01 0b20 07 01 1200 1200 00 00')).toEqual(spaced('040e 04 01 0b20 0c'));
  });

  it('asks for scan responses only when active', async () => {
    const { ask, controller } = host();
    controller.addPeripheral(wrench());
    await ask('01 0b20 07 00 1200 1200 00 00');
    const passive = await ask('01 0c20 02 01 00');
    expect(passive).toEqual(
      spaced('040e 04 01 0c20 00', `043e 1a 02 01 00 01 ${PEER} 0e 020106 03035a18 0319c814 020957 c7`),
    );
  });
});

describe('connections', () => {
  it('one at a time is being made, and one to each peer', async () => {
    const { ask, write, scheduler, received } = await linked();
    expect(await ask(createConnection())).toEqual(spaced('040f 04 0b 01 0d20'));
    write(createConnection('0200000000c0'));
    await scheduler.run();
    received.length = 0;
    expect(await ask(createConnection('0300000000c0'))).toEqual(spaced('040f 04 0c 01 0d20'));
    expect(await ask('01 0e20 00')).toEqual(spaced('040e 04 01 0e20 00', `043e 13 01 02 ${'00'.repeat(17)}`));
  });

  it('need the right type of address', async () => {
    const { ask, controller } = host();
    const device = controller.addPeripheral(wrench());
    expect(await ask(createConnection(PEER, '00'))).toEqual(spaced('040f 04 00 01 0d20'));
    expect(device.connected()).toBe(false);
  });

  it('tell their signal strength, features and new timing, and refuse encryption by a key that nobody agreed on', async () => {
    const { ask } = await linked();
    expect(await ask('01 0514 02 4000')).toEqual(spaced('040e 07 01 0514 00 4000 c7'));
    expect(await ask('01 1620 02 4000')).toEqual(
      spaced('040f 04 00 01 1620', '043e 0c 04 00 4000 0000000000000000'),
    );
    expect(await ask('01 1320 0e 4000 0600 0800 0000 6400 0000 0000')).toEqual(
      spaced('040f 04 00 01 1320', '043e 0a 03 00 4000 0800 0000 6400'),
    );
    expect(await ask(`01 1920 1c 4000 ${'00'.repeat(26)}`)).toEqual(
      spaced('040f 04 00 01 1920', '0408 04 06 4000 00'),
    );
  });

  it('end without a word on Reset', async () => {
    const { ask, device } = await linked();
    expect(await ask('01 030c 00')).toEqual(spaced('040e 04 01 030c 00'));
    expect(device.connected()).toBe(false);
  });

  it.each([
    { mtu: 22 },
    { mtu: 518 },
    { rssi: 21 },
    { advertisingIntervalMs: 0 },
    { advertisingIntervalMs: Number.NaN },
  ])('refuse a peripheral that no radio could be: %o', (changes) => {
    expect(() => host().controller.addPeripheral(wrench(changes))).toThrow(RangeError);
  });

  it('refuse a second peripheral of the same address', async () => {
    const { controller } = await linked();
    expect(() => controller.addPeripheral(wrench({ address: 'C0:00:00:00:00:01' }))).toThrow(RangeError);
    expect(() => controller.addPeripheral(wrench({ address: 'c0:00' }))).toThrow(RangeError);
  });
});

describe('ACL data', () => {
  const readTorque = '02 4000 0700 0300 0400 0a 0900';

  it('crosses the air at connection events, is acknowledged and answered', async () => {
    const { ask, scheduler, write, received } = await linked();
    expect(await ask(readTorque)).toEqual(
      spaced('0413 05 01 4000 0100', '02 4020 0900 0500 0400 0b c4090000'),
    );
    received.length = 0;
    const times: number[] = [];
    const openedAtUs = 100_000;
    write(readTorque);
    while (received.length < 2) {
      await scheduler.runFor(500);
      if (received.length > times.length) times.push(scheduler.nowUs() - openedAtUs);
    }
    expect(times.map((us) => us % 22_500)).toEqual([0, 0]);
    expect((times[1] ?? 0) - (times[0] ?? 0)).toBe(22_500);
  });

  it('comes in pieces that fit the buffers, and goes in pieces of any size', async () => {
    const { ask, device } = await linked({ acl: { length: 27, count: 3 } });
    await ask('02 4000 0500 0500 0400 12');
    expect(await ask('02 4010 0400 0a00 0100')).toEqual(
      spaced('0413 05 01 4000 0100', '02 4020 0500 0100 0400 13'),
    );
    await ask('02 4000 0700 0300 0400 02 0001');
    expect(device.notify(TORQUE, Buffer.from('00'.repeat(40), 'hex'))).toBe(true);
    const pieces = await ask('01 6c0c 00');
    expect(pieces.filter((packet) => packet.startsWith('02')).map((packet) => packet.slice(0, 10))).toEqual(
      spaced('02 4020 1b00', '02 4010 1400'),
    );
  });

  it('must respect the buffers', async () => {
    const { write } = await linked({ acl: { length: 27, count: 2 } });
    expect(() => write(`02 4000 1c00 ${'00'.repeat(28)}`)).toThrow('27');
    write(readTorque);
    write(readTorque);
    expect(() => write(readTorque)).toThrow('2 ACL buffers are full');
  });

  it('for a link that has just ended is dropped', async () => {
    const { ask, device } = await linked();
    device.dropLink(0x13);
    expect(await ask(readTorque)).toEqual(spaced('0405 04 00 4000 13'));
  });

  it('of signalling and security gets an answer, of other channels none', async () => {
    const { ask } = await linked();
    const acknowledged = '0413 05 01 4000 0100';
    expect(await ask('02 4000 0c00 0800 0500 0601 0400 4000 4100')).toEqual(
      spaced(acknowledged, '02 4020 0a00 0600 0500 0101 0200 0000'),
    );
    expect(await ask('02 4000 0b00 0700 0600 01 0300 0110 0001')).toEqual(
      spaced(acknowledged, '02 4020 0600 0200 0600 0505'),
    );
    expect(await ask('02 4000 0500 0100 4000 00')).toEqual(spaced(acknowledged));
  });
});

describe('the socket', () => {
  it('passes only what its filter wants', async () => {
    const { socket, ask } = host();
    const filter = Buffer.alloc(16);
    filter.writeUInt32LE(1 << 0x04, 0);
    filter.writeUInt32LE(1 << 0x0f, 4);
    socket.setFilter(filter);
    expect(await ask('01 030c 00')).toEqual([]);
    expect(await ask('01 ff0f 00')).toEqual(spaced('040f 04 01 01 ff0f'));
    filter.writeUInt32LE(1 << 0x0e, 4);
    socket.setFilter(filter);
    expect(await ask('01 030c 00')).toHaveLength(1);
  });

  it('gives the controller to whoever started last, and back to nobody', async () => {
    const { controller, socket, ask } = host();
    const second = new controller.HciSocket();
    second.start();
    expect(await ask('01 030c 00')).toEqual([]);
    socket.start();
    second.stop();
    expect(await ask('01 030c 00')).toHaveLength(1);
    socket.stop();
    expect(await ask('01 030c 00')).toEqual([]);
  });

  it('copies what it is given', async () => {
    const { socket, scheduler, received } = host();
    const packet = Buffer.from('01030c00', 'hex');
    socket.write(packet);
    packet.fill(0xff);
    await scheduler.run();
    expect(received).toEqual(spaced('040e 04 01 030c 00'));
  });
});
