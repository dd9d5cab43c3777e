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
    Reflect.construct(Socket, []);
    return null;
  } catch (error) {
    return problemFromError(error);
  }
}
