/** The socket class that noble's HCI layer constructs, and the filter that a Linux raw HCI socket applies. */
import { EventEmitter } from 'node:events';
import { H4 } from './hci-packets.ts';

/**
 * All that noble's `hci-socket/hci.js` uses of the native module it names `@abandonware/bluetooth-hci-socket`.
 * It emits `data` with one H4 packet as a Buffer, and `error` with an Error.
 */
export interface HciSocket extends EventEmitter {
  bindRaw(deviceId?: number): number;
  bindUser(deviceId?: number): number;
  start(): void;
  stop(): void;
  /** noble asks once a second for ever; true keeps it `poweredOn`, false makes it `poweredOff`. */
  isDevUp(): boolean;
  /** A `struct hci_filter`: type mask, two event masks, opcode. */
  setFilter(filter: Buffer): void;
  write(packet: Buffer): void;
}

export type HciSocketClass = new () => HciSocket;

/** The controller as its sockets see it. */
export interface SocketPort {
  readonly isUp: () => boolean;
  /** From now on the packets go to `receive` and to nobody else. */
  readonly attach: (receive: (packet: Buffer) => void) => void;
  readonly detach: (receive: (packet: Buffer) => void) => void;
  /** Takes a packet of the host; answers never come within the call. */
  readonly take: (packet: Buffer) => void;
}

/** Like the kernel: only wanted packet types, and of events only wanted codes. */
function passes(filter: Buffer | undefined, packet: Buffer): boolean {
  if (filter === undefined) return true;
  const type = packet.readUInt8(0);
  if ((filter.readUInt32LE(0) & (1 << type)) === 0) return false;
  if (type !== H4.event) return true;
  const code = packet.readUInt8(1) & 0x3f;
  return ((filter.readUInt32LE(code < 32 ? 4 : 8) >>> (code % 32)) & 1) === 1;
}

export function hciSocketClass(port: SocketPort): HciSocketClass {
  return class extends EventEmitter implements HciSocket {
    #filter: Buffer | undefined;
    readonly #receive = (packet: Buffer) => {
      if (passes(this.#filter, packet)) this.emit('data', packet);
    };

    bindRaw(deviceId = 0): number {
      return deviceId;
    }

    bindUser(deviceId = 0): number {
      return deviceId;
    }

    start(): void {
      port.attach(this.#receive);
    }

    stop(): void {
      port.detach(this.#receive);
    }

    isDevUp(): boolean {
      return port.isUp();
    }

    setFilter(filter: Buffer): void {
      this.#filter = Buffer.from(filter);
    }

    // WHY a copy: the host may reuse its buffer as soon as this returns.
    write(packet: Buffer): void {
      port.take(Buffer.from(packet));
    }
  };
}
