/** The native socket closes its file descriptor twice, and the second time it may be another file's: nothing lets it come to that. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { loadNoble } from '../../../drivers/radio/load.ts';
import { tame } from '../../../drivers/radio/tame.ts';
import { createController } from '../../../sim/controller/index.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/** Uses an adapter and gives it back; what is left of its sockets. */
async function usedSockets(release: boolean) {
  const written: string[] = [];
  const scheduler = virtualScheduler();
  const controller = createController({ scheduler, address: 'c0:ff:ee:00:00:00' });
  const sockets: WeakRef<InstanceType<typeof controller.HciSocket>>[] = [];
  class Watched extends controller.HciSocket {
    constructor() {
      super();
      sockets.push(new WeakRef(this));
    }
    override write(packet: Buffer): void {
      written.push(packet.toString('hex'));
      super.write(packet);
    }
  }
  // As the native class has its methods: nobody assigns to them.
  for (const name of ['write', 'isDevUp'] as const)
    Object.defineProperty(Watched.prototype, name, { value: Watched.prototype[name], writable: false });
  const noble = loadNoble({ socket: Watched, deviceId: 0 });
  const tamed = tame(noble, scheduler.after);
  await scheduler.runFor(1_000_000);
  if (release) tamed.release();
  controller.close();
  return { sockets, written, hci: noble._bindings._hci };
}

const turns = async () => {
  for (let turn = 0; turn < 5; turn++) {
    await new Promise((resolve) => setImmediate(resolve));
    collect();
  }
};

test('a stopped socket stays for as long as the program runs', async () => {
  const { sockets } = await usedSockets(true);
  await turns();
  expect(sockets.map((socket) => socket.deref() !== undefined)).toEqual([true]);
});

test('nothing is written to the number of a stopped socket, which may be that of another file', async () => {
  const { hci, written } = await usedSockets(true);
  const before = written.length;
  expect(before).toBeGreaterThan(0);
  hci?.reset();
  hci?.disconnect(42);
  expect(written.length).toBe(before);
  expect(hci?._socket.isDevUp()).toBe(false);
});
