import type { SerialPort } from 'serialport';
import type { Problem } from '../../src/problem.ts';
import type { LinkEnd } from '../../src/reading.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { deviceAt, type PortDevice } from './device.ts';
import type { OpenPort, OpenSerial } from './port.ts';

/** The library is optional and loaded when a port is first opened, so that a station without one runs without it. */
export const openSerial: OpenSerial = async (path, { baud, ...settings }) => {
  const library = await load();
  if (!library.ok) return library;
  let device: PortDevice;
  let port: SerialPort;
  try {
    device = await deviceAt(path);
    if (device.kind === 'none') return err(noPort(path));
    port = new library.value.SerialPort({ path, baudRate: baud, ...settings, lock: true, autoOpen: false });
  } catch (error) {
    return err(portProblem(path, error)); // settings that the platform does not know
  }
  const failed = await new Promise<Error | null>((resolve) => port.open(resolve));
  if (failed !== null) return err(portProblem(path, failed));
  return ok(opened(port, path, device));
};

async function load(): Promise<Result<typeof import('serialport'), Problem>> {
  try {
    return ok(await import('serialport'));
  } catch (error) {
    return err({
      code: 'serial-not-installed',
      message: `the library for serial ports cannot be loaded: ${error instanceof Error ? error.message : String(error)}`,
      next: 'Install plugmark again with its optional packages, on a platform for which serialport ships a binary.',
    });
  }
}

function opened(port: SerialPort, path: string, device: PortDevice): OpenPort {
  let isOurs = false;
  const down = new Promise<LinkEnd>((resolve) => {
    port.once('close', () => resolve({ reason: isOurs ? 'ended-by-station' : 'port-gone' }));
  });
  port.on('error', () => {}); // a failed write is told to whoever wrote; a lost port closes
  return {
    simulated: device.kind === 'pseudo-terminal',
    ...(device.kind === 'port' && device.identity !== undefined && { identity: device.identity }),
    down,
    listen: (listener) => void port.on('data', listener),
    write: (bytes) =>
      new Promise((resolve) =>
        port.write(Buffer.from(bytes), (error) =>
          resolve(error === null || error === undefined ? ok(undefined) : err(portProblem(path, error))),
        ),
      ),
    close: async () => {
      isOurs = true;
      if (port.isOpen) await new Promise<void>((resolve) => port.close(() => resolve()));
    },
  };
}

const noPort = (path: string): Problem => ({
  code: 'port-failed',
  where: path,
  message: `this is no serial port, but a file of another kind: ${path}`,
  next: 'Name the device of the port in the station file. On Linux the names below /dev/serial/by-id stay the same.',
});

/** What the operating system says, by the words that the library hands on. */
const KINDS = [
  [
    /no such file|ENOENT|file not found/i,
    'port-missing',
    'there is no serial port',
    'Plug it in, or name another port in the station file. On Linux the names below /dev/serial/by-id stay the same.',
  ],
  [
    /permission denied|EACCES|access denied/i,
    'port-not-permitted',
    'this user may not use the serial port',
    'On Linux: sudo adduser NAME dialout, and a new login.',
  ],
  [
    /lock|resource busy|EBUSY|temporarily unavailable/i,
    'port-busy',
    'another program uses the serial port',
    'End the other program.',
  ],
] as const;

function portProblem(path: string, error: unknown): Problem {
  const text = error instanceof Error ? error.message : String(error);
  const [, code, message, next] = KINDS.find(([pattern]) => pattern.test(text)) ?? [
    undefined,
    'port-failed' as const,
    `the serial port failed (${text})`,
    'Unplug it and plug it in again. Compare the speed with the documentation of the tool.',
  ];
  return { code, where: path, message: `${message}: ${path}`, next };
}
