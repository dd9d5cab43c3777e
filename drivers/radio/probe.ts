import { createRequire } from 'node:module';
import type { Problem } from '../../src/problem.ts';
import { SOCKET_PACKAGE } from './load.ts';
import { problemFromError } from './problems.ts';

/**
 * Whether the Bluetooth part is installed and the kernel gives it a socket; null when it does. Touches no adapter, so
 * that it can be asked while another program uses one.
 */
export function probeSocket(): Problem | null {
  try {
    const noble = createRequire(import.meta.url).resolve('@abandonware/noble/with-bindings');
    const Socket: unknown = createRequire(noble)(SOCKET_PACKAGE);
    if (typeof Socket !== 'function') throw new Error('the installed Bluetooth socket is not a class');
    const socket: unknown = Reflect.construct(Socket, []);
    if (!isSocket(socket))
      throw new Error('the installed Bluetooth socket is not the one that plugmark was built for');
    let failed: unknown = null;
    socket.on('error', (error) => {
      failed ??= error;
    });
    socket.isDevUp(); // opens the socket, and binds it to nothing
    socket.stop();
    return failed === null ? null : problemFromError(failed);
  } catch (error) {
    return problemFromError(error);
  }
}

interface NativeSocket {
  on(event: 'error', heard: (error: unknown) => void): unknown;
  isDevUp(): boolean;
  stop(): void;
}

const isSocket = (value: unknown): value is NativeSocket =>
  typeof value === 'object' &&
  value !== null &&
  ['on', 'isDevUp', 'stop'].every((name) => typeof Reflect.get(value, name) === 'function');
