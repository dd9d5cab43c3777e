/** The controller's links: ACL data in both directions under the host's flow control, from connection to disconnection. */
import type { Scheduler } from '../scheduler.ts';
import { aclData, completedPackets, disconnectionComplete, type LinkTiming } from './hci-events.ts';
import type { AclPacket } from './hci-packets.ts';
import { type Frame, fragments, reassembler } from './l2cap.ts';
import { createLink, type Link } from './link.ts';
import type { PeripheralPort } from './peripheral.ts';

/** LE ACL buffers: octets of each and how many the host may fill. */
export interface AclBuffers {
  readonly length: number;
  readonly count: number;
}

export interface Connection {
  readonly handle: number;
  readonly peripheral: PeripheralPort;
  readonly link: Link;
}

export interface Connections {
  /** A new link with the next free handle; nobody has been told of it yet. */
  readonly open: (peripheral: PeripheralPort, timing: LinkTiming) => Connection;
  /** Lets the peripheral speak, once the host knows the link. */
  readonly begin: (connection: Connection) => void;
  readonly get: (handle: number) => Connection | undefined;
  /** Ends one link and tells the host why; nothing if it has ended already. */
  readonly end: (connection: Connection, reason: number) => void;
  /** Ends all links and tells only the peripherals. */
  readonly endAll: () => void;
  /** @throws RangeError if the host disregards the buffers that it was told of. */
  readonly takeAcl: (packet: AclPacket) => void;
}

interface OpenConnection extends Connection {
  readonly reassemble: ReturnType<typeof reassembler>;
  /** ACL buffers that hold data of this link. */
  buffered: number;
}

const FIRST_HANDLE = 0x0040;
const LAST_HANDLE = 0x0eff;

export function createConnections(
  scheduler: Scheduler,
  acl: AclBuffers,
  emit: (packet: Buffer) => void,
  emitLater: (packet: Buffer) => void,
): Connections {
  const connections = new Map<number, OpenConnection>();
  let nextHandle = FIRST_HANDLE;

  const tearDown = ({ handle, link, peripheral }: Connection) => {
    connections.delete(handle);
    link.end();
    peripheral.detach();
  };
  const end = (connection: Connection, reason: number) => {
    if (!connections.has(connection.handle)) return;
    tearDown(connection);
    emitLater(disconnectionComplete(connection.handle, reason));
  };
  const send = ({ handle, link }: Connection, frame: Frame, outcome?: (delivered: boolean) => void) => {
    const pieces = fragments(frame, acl.length);
    for (const [index, piece] of pieces.entries()) {
      const last = index === pieces.length - 1;
      const arrived = () => {
        emit(aclData(handle, index === 0, piece));
        if (last) outcome?.(true);
      };
      link.carry(arrived, last ? () => outcome?.(false) : undefined);
    }
  };

  return {
    open: (peripheral, { interval }) => {
      const handle = nextHandle;
      nextHandle = handle === LAST_HANDLE ? FIRST_HANDLE : handle + 1;
      const link = createLink(scheduler, interval);
      const connection = { handle, peripheral, link, reassemble: reassembler(), buffered: 0 };
      connections.set(handle, connection);
      return connection;
    },
    begin: (connection) =>
      connection.peripheral.attach({
        send: (frame, outcome) => send(connection, frame, outcome),
        drop: (reason) => (reason === 'silent' ? connection.link.end() : end(connection, reason)),
      }),
    get: (handle) => connections.get(handle),
    end,
    endAll: () => {
      for (const connection of [...connections.values()]) tearDown(connection);
    },
    takeAcl: ({ handle, first, data }) => {
      if (data.length > acl.length) {
        throw new RangeError(`${data.length} octets do not fit an ACL buffer of ${acl.length}`);
      }
      const connection = connections.get(handle);
      if (connection === undefined) return;
      const filled = [...connections.values()].reduce((sum, { buffered }) => sum + buffered, 0);
      if (filled >= acl.count) throw new RangeError(`all ${acl.count} ACL buffers are full`);
      connection.buffered += 1;
      // WHY only on arrival: over a silent link nothing is acknowledged and its buffers stay full, which in the end
      // holds up every other link as well, in a radio as in noble's own count.
      connection.link.carry(() => {
        connection.buffered -= 1;
        emit(completedPackets(handle, 1));
        const frame = connection.reassemble(first, data);
        if (frame !== undefined) connection.peripheral.receive(frame);
      });
    },
  };
}
