import type { Peripheral } from '@abandonware/noble';
import { afterEach, describe, expect, it } from 'vitest';
import type {
  ControllerOptions,
  PeripheralDefinition,
  VirtualPeripheral,
} from '../../../sim/controller/index.ts';
import { type Bench, discoverAll, nobleIsInstalled, nobleNote, openBench } from './real-noble.ts';
import { COMMAND, LOG_BYTES, PRIVATE_SERVICE, TORQUE, TORQUE_FORMAT, wrench } from './wrench.ts';

const command = COMMAND.replaceAll('-', '');
const privateService = PRIVATE_SERVICE.replaceAll('-', '');

let bench: Bench | undefined;
afterEach(() => bench?.close());

interface Joined extends Bench {
  readonly remote: Peripheral;
  readonly device: VirtualPeripheral;
  readonly written: Buffer[];
}

async function joined(
  changes: Partial<PeripheralDefinition> = {},
  options: Partial<ControllerOptions> = {},
): Promise<Joined> {
  const opened = await openBench(options);
  bench = opened;
  const written: Buffer[] = [];
  const device = opened.controller.addPeripheral(wrench(changes, written));
  const remote = await opened.discover();
  await opened.live(remote.connectAsync());
  return { ...opened, remote, device, written };
}

const int32 = (value: number) => {
  const bytes = Buffer.alloc(4);
  bytes.writeInt32LE(value);
  return bytes;
};

describe.skipIf(!nobleIsInstalled)(`noble using a connected wrench${nobleNote}`, () => {
  it('learns the MTU a while after the connection', async () => {
    const { remote, live, scheduler } = await joined();
    // noble reports the connection before its MTU exchange
    expect(remote.mtu).toBeNull();
    await scheduler.runFor(100_000);
    expect(remote.mtu).toBe(185);
    expect(await live(remote.updateRssiAsync())).toBe(-57);
  });

  it('discovers services, characteristics and descriptors', async () => {
    const made = await joined();
    const { services, service, characteristic } = await discoverAll(made, made.remote);
    expect(services.map(({ uuid }) => uuid)).toEqual(['1800', '1801', '185a', privateService]);
    expect(service('185a').characteristics.map(({ uuid, properties }) => [uuid, properties])).toEqual([
      ['2c0b', ['read', 'notify']],
      [command, ['writeWithoutResponse', 'write', 'indicate']],
      ['2a25', ['read', 'write']],
    ]);
    const descriptors = characteristic('2c0b').descriptors;
    expect(descriptors.map(({ uuid }) => uuid)).toEqual(['2902', '2904']);
    expect(await made.live(descriptors[1]?.readValueAsync() ?? Promise.reject())).toEqual(TORQUE_FORMAT);
  });

  it.each([
    ['parts of 22 octets', { mtu: 23 }, {}],
    ['parts of 184 octets', { mtu: 185 }, {}],
    ['one part, in many small ACL packets', { mtu: 256 }, { acl: { length: 27, count: 2 } }],
  ])('reads a long value in %s', async (_, changes, options) => {
    const made = await joined(changes, options);
    const { characteristic } = await discoverAll(made, made.remote);
    expect(await made.live(characteristic('2a28').readAsync())).toEqual(LOG_BYTES);
    expect(await made.live(characteristic('2a00').readAsync())).toEqual(Buffer.from('W'));
    expect(await made.live(characteristic('2a01').readAsync())).toEqual(Buffer.from([0xc8, 0x14]));
  });

  it('cuts a long read short above an MTU of 256, by its own mistake', async () => {
    const made = await joined({ mtu: 512 });
    const { characteristic } = await discoverAll(made, made.remote);
    expect(made.remote.mtu).toBe(512);
    expect(await made.live(characteristic('2a28').readAsync())).toEqual(LOG_BYTES.subarray(0, 255));
  });

  it('writes with and without response, in pieces where the ACL buffers are small', async () => {
    const made = await joined({}, { acl: { length: 27, count: 2 } });
    const { characteristic } = await discoverAll(made, made.remote);
    const long = LOG_BYTES.subarray(0, 150);
    await made.live(characteristic(command).writeAsync(long, false));
    await made.live(characteristic(command).writeAsync(Buffer.from([1]), true));
    await made.scheduler.run();
    expect(made.written).toEqual([long, Buffer.from([1])]);
  });

  it('gets 1 000 notifications in order and whole', async () => {
    const made = await joined();
    const { scheduler, device, live } = made;
    const torque = (await discoverAll(made, made.remote)).characteristic('2c0b');
    const received: Buffer[] = [];
    torque.on('data', (bytes: Buffer, isNotification: boolean) => {
      if (isNotification) received.push(bytes);
    });
    expect(device.notify(TORQUE, int32(0))).toBe(false);
    await live(torque.subscribeAsync());
    const sent = Array.from({ length: 1_000 }, (_, index) => int32(index * 3 - 500));
    sent.forEach((bytes, index) => {
      scheduler.after(index * 2_500, () => device.notify(TORQUE, bytes));
    });
    await scheduler.run();
    expect(received).toEqual(sent);
    expect(device.counts()).toEqual({ sent: 1_000, delivered: 1_000, lost: 0 });
  });

  it('gets what the air does not lose, and the truth is counted', async () => {
    const made = await joined({}, { lose: (_, bytes) => bytes.readInt32LE(0) % 3 === 0 });
    const { scheduler, device, live } = made;
    const torque = (await discoverAll(made, made.remote)).characteristic('2c0b');
    const received: number[] = [];
    torque.on('data', (bytes: Buffer) => void received.push(bytes.readInt32LE(0)));
    await live(torque.subscribeAsync());
    for (let value = 1; value <= 9; value += 1) expect(device.notify(TORQUE, int32(value))).toBe(true);
    await scheduler.run();
    expect(received).toEqual([1, 2, 4, 5, 7, 8]);
    expect(device.counts()).toEqual({ sent: 9, delivered: 6, lost: 3 });
  });

  it('subscribes and unsubscribes, and the device is told', async () => {
    const made = await joined();
    const { device, live } = made;
    const told: unknown[] = [];
    device.onSubscribe((uuid) => void told.push(['on', uuid]));
    device.onUnsubscribe((uuid) => void told.push(['off', uuid]));
    const torque = (await discoverAll(made, made.remote)).characteristic('2c0b');
    await live(torque.subscribeAsync());
    expect(told).toEqual([['on', TORQUE]]);
    await live(torque.unsubscribeAsync());
    expect(told).toEqual([
      ['on', TORQUE],
      ['off', TORQUE],
    ]);
    expect(device.notify(TORQUE, int32(1))).toBe(false);
    expect(device.counts().sent).toBe(0);
  });

  it('confirms an indication before it gets the next', async () => {
    const made = await joined();
    const { device, live, scheduler } = made;
    const characteristic = (await discoverAll(made, made.remote)).characteristic(command);
    const received: Buffer[] = [];
    let confirmations = 0;
    characteristic.on('data', (bytes: Buffer) => void received.push(bytes));
    device.onConfirmation(() => {
      confirmations += 1;
    });
    await live(characteristic.subscribeAsync());
    expect(device.indicate(COMMAND, Buffer.from([1]))).toBe(true);
    expect(device.indicate(COMMAND, Buffer.from([2]))).toBe(false);
    await scheduler.run();
    expect(confirmations).toBe(1);
    expect(device.indicate(COMMAND, Buffer.from([2]))).toBe(true);
    await scheduler.run();
    expect(received).toEqual([Buffer.from([1]), Buffer.from([2])]);
  });

  it('cuts a notification to the MTU', async () => {
    const made = await joined({ mtu: 23 });
    const torque = (await discoverAll(made, made.remote)).characteristic('2c0b');
    await made.live(torque.subscribeAsync());
    const arrived = new Promise<Buffer>((resolve) => torque.once('data', resolve));
    made.device.notify(TORQUE, LOG_BYTES);
    expect(await made.live(arrived)).toEqual(LOG_BYTES.subarray(0, 20));
  });

  it('is refused pairing for a protected value, and never hears of it', async () => {
    const made = await joined();
    const serial = (await discoverAll(made, made.remote)).characteristic('2a25');
    let answered = false;
    serial.on('read', () => {
      answered = true;
    });
    serial.read();
    await made.scheduler.run();
    expect(answered).toBe(false);
    // SMP over ACL: Pairing Failed, pairing not supported
    const refusal = made.packets.find((packet) => packet[0] === 0x02 && packet.readUInt16LE(7) === 0x0006);
    expect(refusal?.subarray(9)).toEqual(Buffer.from([0x05, 0x05]));
  });
});
