import { afterEach, describe, expect, it } from 'vitest';
import { type Bench, nobleIsInstalled, nobleNote, openBench } from './real-noble.ts';
import { PRIVATE_SERVICE, wrench } from './wrench.ts';

let bench: Bench | undefined;
afterEach(() => bench?.close());
async function open(...options: Parameters<typeof openBench>): Promise<Bench> {
  bench = await openBench(...options);
  return bench;
}

/** Payloads of the advertising reports of one type (0 ADV_IND, 4 SCAN_RSP), with the time they tell nothing of. */
const payloads = ({ packets }: Bench, type: number) =>
  packets
    .filter((packet) => packet[1] === 0x3e && packet[3] === 0x02 && packet[5] === type)
    .map((packet) => packet.subarray(14, 14 + packet.readUInt8(13)).toString('hex'));

describe.skipIf(!nobleIsInstalled)(`noble finding peripherals${nobleNote}`, () => {
  it('is powered on and knows the address of its controller', async () => {
    const { noble } = await open();
    expect(noble._state).toBe('poweredOn');
    expect('address' in noble && noble.address).toBe('00:00:5e:00:53:01');
  });

  it('finds a wrench by its service, with its name, strength and appearance on air', async () => {
    const made = await open();
    made.controller.addPeripheral(wrench());
    const found = await made.discover(['185a']);
    expect(found.advertisement).toMatchObject({ localName: 'W', serviceUuids: ['185a'] });
    expect(found).toMatchObject({
      address: 'c0:00:00:00:00:01',
      addressType: 'random',
      connectable: true,
      rssi: -57,
      state: 'disconnected',
    });
    // flags, complete 16-bit list, appearance 0x14C8 (which noble ignores), complete name; then an empty response
    expect(payloads(made, 0)).toEqual(['020106' + '03035a18' + '0319c814' + '020957']);
    expect(payloads(made, 4)).toEqual(['']);
  });

  it('gets a long name and a 128-bit service, one of them in the scan response', async () => {
    const made = await open();
    const name = 'Torque wrench No. 17, bay 3';
    made.controller.addPeripheral(wrench({ name, advertisedServices: [0x185a, PRIVATE_SERVICE] }));
    const found = await made.discover([PRIVATE_SERVICE.replaceAll('-', '')]);
    expect(found.advertisement.localName).toBe(name);
    expect(found.advertisement.serviceUuids).toEqual(['185a', PRIVATE_SERVICE.replaceAll('-', '')]);
  });

  it('does not find what advertises another service', async () => {
    const { controller, noble, live, scheduler } = await open();
    controller.addPeripheral(wrench({ advertisedServices: [0x180f] }));
    const seen: string[] = [];
    noble.on('discover', ({ address }) => void seen.push(address));
    await live(noble.startScanningAsync(['185a'], true));
    await scheduler.runFor(2_000_000);
    expect(seen).toEqual([]);
  });

  it('hears each peripheral once when it filters duplicates, else at every interval', async () => {
    const made = await open();
    const { controller, noble, live, scheduler } = made;
    controller.addPeripheral(wrench());
    await live(noble.startScanningAsync([], false));
    await scheduler.runFor(1_050_000);
    expect(payloads(made, 0)).toHaveLength(1);
    await live(noble.stopScanningAsync());
    await scheduler.run();
    made.packets.length = 0;
    await live(noble.startScanningAsync([], true));
    await scheduler.runFor(1_000_000);
    expect(payloads(made, 0)).toHaveLength(10);
  });

  it('finds a sleeping peripheral only after it has woken up', async () => {
    const { controller, noble, live, scheduler } = await open();
    const sleeper = controller.addPeripheral(wrench());
    sleeper.stopAdvertising();
    const seenAtUs: number[] = [];
    noble.on('discover', () => void seenAtUs.push(scheduler.nowUs()));
    await live(noble.startScanningAsync(['185a'], false));
    await scheduler.runFor(5_000_000);
    expect(seenAtUs).toEqual([]);
    const wokenAtUs = scheduler.nowUs();
    sleeper.startAdvertising();
    await scheduler.runFor(200_000);
    expect(seenAtUs).toHaveLength(1);
    expect((seenAtUs[0] ?? 0) - wokenAtUs).toBeLessThanOrEqual(100_000);
  });

  it('leaves nothing to do when nobody scans', async () => {
    const { controller, noble, live, scheduler } = await open();
    controller.addPeripheral(wrench());
    await live(noble.startScanningAsync([], true));
    await scheduler.runFor(500_000);
    await live(noble.stopScanningAsync());
    await scheduler.run();
    expect(scheduler.nowUs()).toBeLessThan(1_000_000);
  });
});
