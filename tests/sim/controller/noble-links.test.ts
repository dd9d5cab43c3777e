import type { Peripheral } from '@abandonware/noble';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { type Bench, discoverAll, nobleIsInstalled, nobleNote, openBench } from './real-noble.ts';
import { TORQUE, wrench } from './wrench.ts';

let bench: Bench | undefined;
afterEach(() => {
  bench?.close();
  vi.unstubAllEnvs();
});
async function open(...options: Parameters<typeof openBench>): Promise<Bench> {
  bench = await openBench(...options);
  return bench;
}

/** Connects, discovers and subscribes to torque; what arrives goes to `received`. */
async function subscribe(made: Bench, remote: Peripheral, received: number[]): Promise<void> {
  await made.live(remote.connectAsync());
  const torque = (await discoverAll(made, remote)).characteristic('2c0b');
  torque.on('data', (bytes: Buffer) => void received.push(bytes.readUInt8(0)));
  await made.live(torque.subscribeAsync());
}

const disconnection = (remote: Peripheral) =>
  new Promise<unknown>((resolve) => remote.once('disconnect', (reason: unknown) => resolve(reason)));

describe.skipIf(!nobleIsInstalled)(`noble and its links${nobleNote}`, () => {
  it('disconnects, and the device can be found again', async () => {
    const made = await open();
    const device = made.controller.addPeripheral(wrench());
    const remote = await made.discover();
    await made.live(remote.connectAsync());
    expect(device.connected()).toBe(true);
    const reason = disconnection(remote);
    await made.live(remote.disconnectAsync());
    expect(await reason).toBe(0x16);
    expect(device.connected()).toBe(false);
    expect((await made.discover()).address).toBe(device.definition.address);
  });

  it.each([
    ['supervision timeout', 0x08],
    ['ended by the device', 0x13],
  ])('sees a lost link with its reason: %s', async (_, code) => {
    const made = await open();
    const device = made.controller.addPeripheral(wrench());
    const remote = await made.discover();
    await made.live(remote.connectAsync());
    const reason = disconnection(remote);
    device.dropLink(code);
    expect(await made.live(reason)).toBe(code);
    expect(remote.state).toBe('disconnected');
  });

  it('reconnects, subscribes again and goes on receiving', async () => {
    const made = await open();
    const device = made.controller.addPeripheral(wrench());
    const remote = await made.discover();
    const told: string[] = [];
    device.onSubscribe(() => void told.push('subscribed'));
    device.onUnsubscribe(() => void told.push('unsubscribed'));
    const received: number[] = [];
    await subscribe(made, remote, received);
    device.notify(TORQUE, Buffer.from([1]));
    await made.scheduler.run();

    device.notify(TORQUE, Buffer.from([2]));
    device.dropLink(0x08);
    await made.scheduler.run();
    expect(told).toEqual(['subscribed', 'unsubscribed']);
    expect(device.notify(TORQUE, Buffer.from([3]))).toBe(false);

    await subscribe(made, remote, received);
    device.notify(TORQUE, Buffer.from([4]));
    await made.scheduler.run();
    expect(told).toEqual(['subscribed', 'unsubscribed', 'subscribed']);
    expect(received).toEqual([1, 4]);
    expect(device.counts()).toEqual({ sent: 3, delivered: 2, lost: 1 });
  });

  it('sees nothing of a silent link until it gives up itself', async () => {
    const made = await open();
    const device = made.controller.addPeripheral(wrench());
    const remote = await made.discover();
    const received: number[] = [];
    await subscribe(made, remote, received);
    device.dropLink('silent');
    expect(device.notify(TORQUE, Buffer.from([1]))).toBe(true);
    await made.scheduler.runFor(60_000_000);
    expect(remote.state).toBe('connected');
    expect(received).toEqual([]);
    expect(device.counts()).toEqual({ sent: 1, delivered: 0, lost: 1 });
    await made.live(remote.disconnectAsync());
    expect(device.connected()).toBe(false);
    await subscribe(made, remote, received);
    device.notify(TORQUE, Buffer.from([2]));
    await made.scheduler.run();
    expect(received).toEqual([2]);
  });

  it('serves two wrenches at once without mixing them', async () => {
    const made = await open();
    const devices = ['c0:00:00:00:00:01', 'c0:00:00:00:00:02'].map((address, index) =>
      made.controller.addPeripheral(wrench({ address, name: `W${index}` })),
    );
    const found = new Map<string, Peripheral>();
    made.noble.on('discover', (remote) => void found.set(remote.address, remote));
    await made.live(made.noble.startScanningAsync(['185a'], false));
    await made.scheduler.runFor(300_000);
    const received: number[][] = [];
    for (const [index, { definition }] of devices.entries()) {
      const remote = found.get(definition.address);
      if (remote === undefined) throw new Error(`${definition.address} was not found`);
      const values: number[] = [];
      received[index] = values;
      await subscribe(made, remote, values);
    }
    for (let value = 0; value < 20; value += 1) devices[value % 2]?.notify(TORQUE, Buffer.from([value]));
    await made.live(made.noble.stopScanningAsync());
    await made.scheduler.run();
    expect(received[0]).toEqual([0, 2, 4, 6, 8, 10, 12, 14, 16, 18]);
    expect(received[1]).toEqual([1, 3, 5, 7, 9, 11, 13, 15, 17, 19]);
    devices[0]?.dropLink(0x08);
    await made.scheduler.run();
    expect(devices.map((device) => device.connected())).toEqual([false, true]);
  });

  it('waits for ever for a device that never answers, and can cancel', async () => {
    const made = await open();
    const device = made.controller.addPeripheral(wrench());
    const remote = await made.discover();
    device.stopAdvertising();
    const outcomes: string[] = [];
    remote.on('connect', (error) => void outcomes.push(String(error)));
    remote.connect();
    await made.scheduler.runFor(60_000_000);
    expect([remote.state, outcomes]).toEqual(['connecting', []]);
    remote.cancelConnect();
    await made.scheduler.run();
    // noble first reports its own cancellation, then the controller's failed connection (0x02)
    expect(outcomes).toEqual(['Error: connection canceled!', 'Error: Unknown Connection Identifier (0x2)']);
    device.startAdvertising();
    await made.live(remote.connectAsync());
    expect(device.connected()).toBe(true);
  });

  it('does not miss a device that wakes up while it waits', async () => {
    const made = await open();
    const device = made.controller.addPeripheral(wrench());
    const remote = await made.discover();
    device.stopAdvertising();
    made.scheduler.after(5_000_000, device.startAdvertising);
    await made.live(remote.connectAsync());
    expect(made.scheduler.nowUs()).toBeGreaterThan(5_000_000);
    expect(device.connected()).toBe(true);
  });

  it('grants the connection parameters that a device asks for, on a user channel', async () => {
    const made = await open();
    const preferred = { minInterval: 6, maxInterval: 6, latency: 0, timeout: 100 };
    made.controller.addPeripheral(wrench({ preferredConnection: preferred }));
    const remote = await made.discover();
    // noble leaves the answer to the kernel on Linux unless it owns the controller
    vi.stubEnv('HCI_CHANNEL_USER', '1');
    await made.live(remote.connectAsync());
    await made.scheduler.run();
    const updates = made.packets.filter((packet) => packet[1] === 0x3e && packet[3] === 0x03);
    // status 0, handle 0x0040, interval 6 (7.5 ms), latency 0, timeout 100 (1 s)
    expect(updates.map((packet) => packet.toString('hex'))).toEqual(['043e0a03004000060000006400']);
  });

  it('is powered off for its host once closed', async () => {
    const made = await open();
    made.controller.addPeripheral(wrench());
    await made.live(made.noble.startScanningAsync([], true));
    await made.scheduler.runFor(200_000);
    const socket = new made.controller.HciSocket();
    expect(socket.isDevUp()).toBe(true);
    made.close();
    expect(socket.isDevUp()).toBe(false);
    const closedAtUs = made.scheduler.nowUs();
    made.noble.stopScanning();
    await made.scheduler.run();
    expect(made.scheduler.nowUs()).toBe(closedAtUs);
  });
});
