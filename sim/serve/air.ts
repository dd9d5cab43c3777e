import { rmSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import { packetsIn } from '../../drivers/radio/air.ts';
import { type Controller, createController, type HciSocketClass } from '../controller/index.ts';
import type { Scheduler } from '../scheduler.ts';

/** A virtual controller that another program reaches over a Unix socket; one at a time. */
export interface Air {
  readonly controller: Controller;
  readonly close: () => Promise<void>;
}

/** HCI_Reset of the host that has gone. */
const RESET = Buffer.from('01030c00', 'hex');

/** Rejects where the socket cannot be made, with the error of the system. */
export async function airOn(path: string, scheduler: Scheduler): Promise<Air> {
  const controller = createController({ scheduler, address: 'c0:00:00:00:00:fd' });
  const server = createServer();
  serve(server, controller.HciSocket);
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(path, resolve);
  });
  return {
    controller,
    close: async () => {
      controller.close();
      const closed = new Promise((resolve) => server.close(resolve));
      server.emit('over');
      await closed;
      rmSync(path, { force: true });
    },
  };
}

function serve(server: Server, HciSocket: HciSocketClass): void {
  let isTaken = false;
  server.on('connection', (line) => {
    line.on('error', () => {}); // it closes then
    if (isTaken) return void line.destroy();
    isTaken = true;
    const socket = new HciSocket();
    socket.on('data', (packet: Buffer) => void line.write(packet));
    socket.start();
    const take = packetsIn((packet) => socket.write(packet));
    line.on('data', (bytes: Buffer) => {
      try {
        take(bytes);
      } catch {
        line.destroy(); // no host sends that
      }
    });
    line.once('close', () => {
      isTaken = false;
      socket.write(RESET);
      socket.stop();
    });
    server.once('over', () => line.destroy());
  });
}
