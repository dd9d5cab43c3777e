/** The real noble over a virtual controller, in virtual time: what the tests of this folder drive. */
import { createRequire } from 'node:module';
import type { Characteristic, Peripheral, Service } from '@abandonware/noble';
import type { Controller, ControllerOptions, HciSocketClass } from '../../../sim/controller/index.ts';
import { createController } from '../../../sim/controller/index.ts';
import { type VirtualScheduler, virtualScheduler } from '../../../sim/scheduler.ts';

type Noble = typeof import('@abandonware/noble');

/** The parts of its HCI layer that noble offers no other way to. */
interface Internals {
  readonly _hci: { pollIsDevUp: () => void };
}

export interface RealNoble {
  readonly noble: Noble;
  /** Takes away what noble leaves behind: its poll timer (as soon as it fires) and its listeners on the process. */
  readonly release: () => void;
}

const here = createRequire(import.meta.url);

function resolved(): { readonly entry: string; readonly socket: string } | undefined {
  try {
    const entry = here.resolve('@abandonware/noble/with-custom-binding');
    return { entry, socket: createRequire(entry).resolve('@abandonware/bluetooth-hci-socket') };
  } catch {
    return undefined;
  }
}

export const nobleIsInstalled = resolved() !== undefined;

/** For the title of a suite that needs it. */
export const nobleNote = nobleIsInstalled ? '' : ' (skipped: @abandonware/noble is not installed)';

export function loadNoble(socketClass: HciSocketClass): RealNoble {
  const paths = resolved();
  if (paths === undefined) throw new Error('@abandonware/noble is not installed');
  // WHY all of noble is loaded anew: its HCI layer takes the socket class once, when it is first loaded.
  const folder = paths.entry.slice(0, paths.entry.lastIndexOf('/'));
  for (const id of Object.keys(here.cache)) if (id.startsWith(folder)) delete here.cache[id];
  const standIn = { id: paths.socket, filename: paths.socket, loaded: true, exports: socketClass };
  Object.assign(here.cache, { [paths.socket]: standIn });
  const make: (options: { deviceId: number }) => Noble = here(paths.entry);
  const noble = make({ deviceId: 0 });
  const internals: Internals = noble._bindings;
  const before = ['SIGINT', 'exit'].map((event) => ({
    event,
    listeners: process.listeners(event as 'exit'),
  }));
  const release = () => {
    internals._hci.pollIsDevUp = () => {};
    for (const { event, listeners } of before) {
      for (const listener of process.listeners(event as 'exit')) {
        if (!listeners.includes(listener)) process.removeListener(event, listener);
      }
    }
  };
  return { noble, release };
}

export interface Bench {
  readonly scheduler: VirtualScheduler;
  readonly controller: Controller;
  readonly noble: Noble;
  /** Everything the controller sent to its host, from the start. */
  readonly packets: Buffer[];
  /** Lets virtual time pass until the promise settles. */
  readonly live: <T>(promise: Promise<T>) => Promise<T>;
  /** Scans until a peripheral with one of the services is there, then stops. */
  readonly discover: (services?: string[]) => Promise<Peripheral>;
  readonly close: () => void;
}

/** A bench whose noble is powered on. */
export async function openBench(options: Partial<ControllerOptions> = {}): Promise<Bench> {
  const scheduler = virtualScheduler();
  const controller = createController({ scheduler, address: '00:00:5e:00:53:01', ...options });
  const packets: Buffer[] = [];
  const Recorded = class extends controller.HciSocket {
    constructor() {
      super();
      this.on('data', (packet: Buffer) => void packets.push(packet));
    }
  };
  const { noble, release } = loadNoble(Recorded);
  const live = <T>(promise: Promise<T>) => scheduler.runUntil(promise, 1_000);
  await live(
    new Promise<void>((resolve) => {
      noble.on('stateChange', (state) => {
        if (state === 'poweredOn') resolve();
      });
    }),
  );
  return {
    scheduler,
    controller,
    noble,
    packets,
    live,
    discover: async (services = []) => {
      const found = new Promise<Peripheral>((resolve) => noble.once('discover', resolve));
      await live(noble.startScanningAsync(services, false));
      const peripheral = await live(found);
      await live(noble.stopScanningAsync());
      return peripheral;
    },
    close: () => {
      controller.close();
      release();
    },
  };
}

/** Everything there is to know of a connected peripheral, by short UUID. */
export async function discoverAll({ live }: Bench, peripheral: Peripheral) {
  const { services, characteristics } = await live(peripheral.discoverAllServicesAndCharacteristicsAsync());
  for (const characteristic of characteristics) await live(characteristic.discoverDescriptorsAsync());
  const find = <T extends { readonly uuid: string }>(kind: string, all: readonly T[], uuid: string): T => {
    const found = all.find((one) => one.uuid === uuid);
    if (found === undefined) throw new Error(`no ${kind} ${uuid}`);
    return found;
  };
  return {
    services,
    characteristics,
    service: (uuid: string): Service => find('service', services, uuid),
    characteristic: (uuid: string): Characteristic => find('characteristic', characteristics, uuid),
  };
}
