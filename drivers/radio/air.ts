import { EventEmitter } from 'node:events';
import { connect, type Socket } from 'node:net';
import type { HciSocketClass } from './load.ts';

/**
 * A simulated controller that another program of this machine plays ("plugmark sim"), reached over a Unix socket that
 * carries HCI packets in H4 framing. All above it is what ships, noble too; its readings are SIMULATED.
 */
export const AIR = 'PLUGMARK_AIR';

const GIVEN_BACK_MS = 1_000;

/** The class that noble makes its socket from. Rejects where nobody plays there. */
export async function socketOnAir(path: string): Promise<HciSocketClass> {
  const line = await new Promise<Socket>((resolve, reject) => {
    const socket = connect(path);
    socket.once('connect', () => resolve(socket));
    socket.once('error', reject);
  });
  let hears: ((packet: Buffer) => void) | null = null;
  const packets = packetsIn((packet) => hears?.(packet));
  line.on('data', (bytes: Buffer) => {
    try {
      packets(bytes);
    } catch {
      line.destroy(); // whoever plays there is no controller
    }
  });
  line.on('error', () => {}); // it closes then, and noble sees that the adapter is off
  return class extends EventEmitter {
    bindRaw(): void {}
    bindUser(): void {}
    setFilter(): void {}

    start(): void {
      line.ref();
      hears = (packet) => void this.emit('data', packet);
    }

    /** A radio that is begun anew takes the line again; else it is given back, and another program may have it. */
    stop(): void {
      hears = null;
      line.unref();
      setTimeout(() => hears ?? line.destroy(), GIVEN_BACK_MS).unref();
    }

    isDevUp(): boolean {
      return !line.destroyed;
    }

    write(packet: Buffer): void {
      if (!line.destroyed) line.write(packet);
    }
  };
}

/** Where the length of what follows is in each kind of H4 packet: command, data, event. */
const LENGTHS: Readonly<Record<number, { readonly head: number; readonly of: (head: Buffer) => number }>> = {
  1: { head: 4, of: (head) => head.readUInt8(3) },
  2: { head: 5, of: (head) => head.readUInt16LE(3) },
  4: { head: 3, of: (head) => head.readUInt8(2) },
};

/** Cuts a stream into H4 packets. Throws where it is none. */
export function packetsIn(take: (packet: Buffer) => void): (bytes: Buffer) => void {
  let held: Buffer = Buffer.alloc(0);
  return (bytes) => {
    held = Buffer.concat([held, bytes]);
    for (;;) {
      const [type] = held;
      if (type === undefined) return;
      const length = LENGTHS[type];
      if (length === undefined) throw new Error(`no HCI packet begins with 0x${type.toString(16)}`);
      if (held.length < length.head) return;
      const whole = length.head + length.of(held);
      if (held.length < whole) return;
      const packet = held.subarray(0, whole);
      held = held.subarray(whole);
      take(packet);
    }
  };
}
