import type { Problem } from '../../src/problem.ts';
import type { After } from '../after.ts';
import { Adverts } from './adverts.ts';
import { attAnswer } from './att-answer.ts';
import type { Bonds } from './bonds.ts';
import type { Noble, NobleBindings, NobleHci } from './noble.ts';
import { PAIRED_ELSEWHERE, type Pairing, preparePairing } from './pairing.ts';
import { errorCode } from './problems.ts';

// noble was written to own its process: it exits on SIGINT, prints to the terminal, leaves a timer behind and lets a
// malformed packet of a peer end the program. This file takes those habits from one instance of it.

/** Handles that noble keeps no trace of, and events it never sends by itself. */
export interface TamedNoble {
  readonly noble: Noble;
  /** The timer of all that waits for it. */
  readonly after: After;
  readonly adverts: Adverts;
  /** Whether the adapter has said that the link is encrypted. */
  encrypted(peripheralId: string): boolean;
  /** How a link that has just come up is encrypted, once the device asks for it. */
  pairing(peripheralId: string, address: string, onFailed: (problem: Problem) => void): Pairing;
  /** Ends all links and starts the adapter from scratch, as far as it still listens. */
  reset(): void;
  /** Makes noble believe that the link is gone, where no controller will say so any more. */
  declareDown(peripheralId: string): void;
  /** Makes noble believe that the pending connection failed; it allows only one and may wait for it for ever. */
  declareUnconnected(): void;
  /** Takes away timers, listeners and the socket. */
  release(): void;
}

/** HCI event packets (Core specification, Vol 4 Part E, 7.7.5 and 7.7.65.1) that a dead controller owes us. */
const disconnected = (handle: number) => Buffer.from([0x04, 0x05, 4, 0, handle & 0xff, handle >> 8, 0x08]);
const notConnected = () => {
  const packet = Buffer.alloc(22);
  packet.set([0x04, 0x3e, 19, 0x01, 0x02, 0xff, 0x0f]);
  return packet;
};

/** Starts noble in a tamed way; throws what opening the socket throws, and then leaves nothing behind. */
export function tame(noble: Noble, after: After, bonds?: Bonds): TamedNoble {
  const bindings = noble._bindings;
  const hci = bindings._hci;
  const adverts = new Adverts(noble);
  const secure = new Set<number>();
  silence(noble, bindings);
  const undo: (() => void)[] = [];
  const release = () => {
    for (const step of undo.splice(0)) step();
    noble.removeAllListeners();
    bindings.removeAllListeners();
    if (hci !== undefined) stopSocket(hci);
  };
  try {
    if (hci !== undefined) {
      undo.push(tameHci(hci, adverts, secure));
      guardAnswers(bindings);
    }
    const failure = hci === undefined ? () => null : hearSocketErrors(hci);
    undo.push(initWithoutProcessListeners(noble));
    const failed = failure();
    if (failed !== null) throw failed;
  } catch (error) {
    release();
    throw error;
  }
  const handleOf = (peripheralId: string) => {
    const handle = bindings._handles?.[peripheralId];
    return typeof handle === 'number' ? handle : undefined;
  };
  return {
    noble,
    after,
    adverts,
    encrypted: (peripheralId) => {
      const handle = handleOf(peripheralId);
      return handle !== undefined && secure.has(handle);
    },
    pairing: (peripheralId, address, onFailed) => {
      const handle = handleOf(peripheralId);
      const stream = handle === undefined ? undefined : bindings._aclStreams?.[handle];
      if (hci === undefined || handle === undefined || stream === undefined) return PAIRED_ELSEWHERE;
      return preparePairing({
        hci,
        stream,
        handle,
        address,
        // Beside a kernel that pairs by itself a bond does harm: a device that is bonded asks the kernel for encryption.
        bonds: hci._userChannel ? bonds : undefined,
        encrypted: () => secure.has(handle),
        onFailed,
      });
    },
    reset: () => {
      try {
        for (const handle of Object.keys(bindings._aclStreams ?? {})) hci?.disconnect(Number(handle));
        hci?.reset();
      } catch {
        // An adapter that has been unplugged takes no commands, and needs none.
      }
    },
    declareDown: (peripheralId) => {
      const handle = handleOf(peripheralId);
      if (handle !== undefined) hci?.onSocketData(disconnected(handle));
    },
    declareUnconnected: () => hci?.onSocketData(notConnected()),
    release,
  };
}

/**
 * noble asks an error for its code, which the native socket does not set; and it waits for ever on a socket that could not be
 * opened at all, which the native socket says by an event. Returns that error, if there was one.
 */
function hearSocketErrors(hci: NobleHci): () => Error | null {
  let unopened: Error | null = null;
  const onSocketError = hci.onSocketError.bind(hci);
  hci.onSocketError = (error) => {
    const code = errorCode(error);
    if (code === 'EAFNOSUPPORT') unopened ??= error;
    onSocketError(Object.assign(error, { code }));
  };
  return () => unopened;
}

/**
 * Sockets that were stopped, for as long as the program runs. The native one closes its file descriptor when it is stopped and
 * closes the same number again when it is collected; by then another file may have it: the next socket, or the log.
 */
const STOPPED: NobleHci['_socket'][] = [];

function stopSocket(hci: NobleHci): void {
  const socket = hci._socket;
  hci.removeAllListeners();
  socket.removeAllListeners();
  socket.on('error', () => {}); // a socket that is being stopped may still complain, with nobody to hear it
  socket.stop();
  // For the same reason nothing that noble does later may be written to that number.
  Object.defineProperties(socket, { write: { value: () => {} }, isDevUp: { value: () => false } });
  STOPPED.push(socket);
}

/** noble prints state changes and warnings; the terminal belongs to the screen, and openRadio tells the same better. */
function silence(noble: Noble, bindings: NobleBindings): void {
  noble.on('warning', () => {});
  bindings.onStateChange = (state) => {
    if (bindings._state === state) return;
    bindings._state = state;
    bindings.emit('stateChange', state);
  };
  const ended = bindings.onDisconnComplete?.bind(bindings);
  if (ended === undefined) return;
  // Over a raw socket the links of other programs end before noble's ears too.
  bindings.onDisconnComplete = (handle, reason) => {
    if (bindings._handles?.[handle] !== undefined) ended(handle, reason);
  };
}

function tameHci(hci: NobleHci, adverts: Adverts, secure: Set<number>): () => void {
  guardPackets(hci);
  hci.on('leAdvertisingReport', (_status, _type, address: string, _kind, payload: Uint8Array) =>
    adverts.note(address, payload),
  );
  hci.on('encryptChange', (handle: number, on: number) => {
    if (on !== 0) secure.add(handle);
    else secure.delete(handle);
  });
  hci.on('disconnComplete', (handle: number) => void secure.delete(handle));
  hci.on('stateChange', (state) => {
    // On a user channel noble never asks how much it may send at once, and then sends nothing.
    if (state === 'poweredOn' && hci._userChannel) hci.readLeBufferSize();
  });
  return stoppablePoll(hci);
}

/**
 * A peer can send packets that noble reads past the end of; without a guard that is an uncaught exception. The link
 * they came over is closed, because nobody knows what else of it was misread.
 */
function guardPackets(hci: NobleHci): void {
  const onSocketData = hci.onSocketData.bind(hci);
  hci.onSocketData = (packet) => {
    const handle = aclHandle(packet);
    try {
      silently(() => onSocketData(packet));
      if (handle !== undefined && overflows(hci, handle)) throw new RangeError('longer than announced');
    } catch {
      if (handle !== undefined) hci.disconnect(handle);
    }
  };
  // Both are fire-and-forget in noble, and both reject when the link went down in the meantime.
  const flushAcl = hci.flushAcl.bind(hci);
  const writeAclDataPkt = hci.writeAclDataPkt.bind(hci);
  hci.flushAcl = () => flushAcl().catch(() => {});
  hci.writeAclDataPkt = (handle, cid, data) => writeAclDataPkt(handle, cid, data).catch(() => {});
}

const ATTRIBUTE_CHANNEL = 4;

/** Keeps from noble what answers nothing, and ends the link of a device whose answers cannot be (`guardPackets` hears the error). */
function guardAnswers(bindings: NobleBindings): void {
  const pass = bindings.onAclDataPkt?.bind(bindings);
  if (pass === undefined) return;
  bindings.onAclDataPkt = (handle, channel, data) => {
    if (channel !== ATTRIBUTE_CHANNEL) return pass(handle, channel, data);
    const answer = attAnswer(data, bindings._gatts?.[handle]?._currentCommand?.buffer);
    if (answer === 'malformed') throw new RangeError('an answer that cannot be');
    if (answer === 'goes-on') pass(handle, channel, data);
  };
}

/** noble prints what it thinks of a packet, over whatever is on the screen. */
function silently(work: () => void): void {
  const { log, warn, error } = console;
  const nothing = () => {};
  Object.assign(console, { log: nothing, warn: nothing, error: nothing });
  try {
    work();
  } finally {
    Object.assign(console, { log, warn, error });
  }
}

/** noble goes on gathering a frame that has become longer than its own header said, without limit. */
function overflows(hci: NobleHci, handle: number): boolean {
  const gathered = hci._handleBuffers[handle];
  if (gathered === undefined || gathered.data.length <= gathered.length) return false;
  delete hci._handleBuffers[handle];
  return true;
}

function aclHandle(packet: Buffer): number | undefined {
  return packet.length >= 3 && packet[0] === 0x02 ? packet.readUInt16LE(1) & 0x0fff : undefined;
}

/** noble keeps no handle of its poll timer: while it polls (synchronously), the setTimeout it finds is ours. */
function stoppablePoll(hci: NobleHci): () => void {
  const poll = hci.pollIsDevUp.bind(hci);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stopped = false;
  hci.pollIsDevUp = () => {
    if (stopped) return;
    const real = globalThis.setTimeout;
    const kept = (run: () => void, ms: number) => {
      timer = real(run, ms);
      return timer;
    };
    Reflect.set(globalThis, 'setTimeout', kept);
    try {
      poll();
    } finally {
      globalThis.setTimeout = real;
    }
  };
  return () => {
    stopped = true;
    clearTimeout(timer);
  };
}

/** Returns the undoing of what stays: noble's exit listener, which ends the links when the process ends by itself. */
function initWithoutProcessListeners(noble: Noble): () => void {
  const sigint = process.listeners('SIGINT');
  const exit = process.listeners('exit');
  noble.initialized = true; // else noble starts itself again, a turn later, when somebody listens for its state
  noble._bindings.init();
  for (const listener of process.listeners('SIGINT')) {
    // It would call process.exit(1) before anything of ours is closed.
    if (!sigint.includes(listener)) process.removeListener('SIGINT', listener);
  }
  const added = process.listeners('exit').filter((listener) => !exit.includes(listener));
  return () => {
    for (const listener of added) process.removeListener('exit', listener);
  };
}
