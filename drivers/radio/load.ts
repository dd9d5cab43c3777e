import type { EventEmitter } from 'node:events';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { isNoble, type Noble } from './noble.ts';

/** A class standing in for the one of @abandonware/bluetooth-hci-socket: HCI packets in and out, H4 framing. */
export type HciSocketClass = new () => EventEmitter & {
  bindRaw(deviceId?: number): unknown;
  bindUser(deviceId?: number): unknown;
  start(): void;
  stop(): void;
  isDevUp(): boolean;
  setFilter(filter: Buffer): void;
  write(packet: Buffer): void;
};

export interface NobleOptions {
  /** Left out: the socket of the operating system. */
  readonly socket?: HciSocketClass;
  /** The N of hciN; left out: the first adapter. */
  readonly deviceId?: number;
}

/** Comes with noble, which is why it is not among the dependencies of plugmark. */
export const SOCKET_PACKAGE = '@abandonware/bluetooth-hci-socket';

/**
 * A fresh noble over the given or the real socket. Throws what requiring it throws: EAFNOSUPPORT, MODULE_NOT_FOUND.
 *
 * noble takes its socket class from the module cache once, when its HCI layer is first loaded. So that layer is
 * loaded anew for each radio, with the stand-in in the cache meanwhile, and the cache is left without either.
 */
export function loadNoble(options: NobleOptions): Noble {
  const entry = createRequire(import.meta.url).resolve('@abandonware/noble/with-bindings');
  const require = createRequire(entry);
  const home = dirname(entry);
  const layer = join(home, 'lib', 'hci-socket');
  const forget = () => {
    for (const id of Object.keys(require.cache)) if (id.startsWith(layer)) delete require.cache[id];
  };
  const load = (): unknown => {
    const settings = options.deviceId === undefined ? {} : { deviceId: options.deviceId };
    if (options.socket === undefined) return require(join(home, 'with-custom-binding'))(settings);
    const Bindings = require(join(layer, 'bindings'));
    return require(entry)(new Bindings(settings));
  };
  forget();
  try {
    const noble = options.socket === undefined ? load() : withModule(require, options.socket, load);
    if (!isNoble(noble)) throw new Error('the installed noble is not the one that plugmark was built for');
    return noble;
  } finally {
    forget();
  }
}

/** Runs `load` while the socket package is `socket`. */
function withModule<T>(require: NodeJS.Require, socket: HciSocketClass, load: () => T): T {
  const id = require.resolve(SOCKET_PACKAGE);
  const before = require.cache[id];
  const standIn: Pick<NodeJS.Module, 'id' | 'filename' | 'loaded' | 'exports'> = {
    id,
    filename: id,
    loaded: true,
    exports: socket,
  };
  Object.assign(require.cache, { [id]: standIn });
  try {
    return load();
  } finally {
    if (before === undefined) delete require.cache[id];
    else require.cache[id] = before;
  }
}
