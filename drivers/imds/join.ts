import { type Problem, ProblemError } from '../../src/problem.ts';
import type { ToolDescription } from '../../src/reading.ts';
import { orThrow } from '../../src/result.ts';
import type { Clock } from '../driver.ts';
import type { Link, Radio, RemoteCharacteristic } from '../radio/radio.ts';
import type { Arrival } from './counter.ts';
import { type Described, describe, readSerial } from './describe.ts';
import { type Match, otherSerial } from './match.ts';
import { type QuantityFormat, SERVICE } from './numbers.ts';
import { keepUnconfirmed } from './unconfirmed.ts';
import { decodeValue } from './value.ts';

export interface Join {
  readonly radio: Radio;
  readonly clock: Clock;
  readonly format: QuantityFormat;
  readonly match: Match;
  readonly address: string;
  readonly connectTimeoutMs: number;
  readonly signal: AbortSignal;
}

/** A tool that has been described and sends its readings. */
export interface Session {
  readonly description: ToolDescription;
  readonly down: Promise<string>;
  /** Hands over what came in so far, then everything as it comes; to be called once. */
  readonly listen: (listener: (arrival: Arrival) => void) => void;
}

/**
 * `refused`: it is the device meant and cannot be used. `other`: it is not the device meant. `failed`: it may work
 * the next time.
 */
export type Joined =
  | { readonly kind: 'joined'; readonly session: Session }
  | { readonly kind: 'refused' | 'other' | 'failed'; readonly problem: Problem };

/** Connects, describes and subscribes. No link is left behind unless it joined; the signal ends that one too. */
export async function join(order: Join): Promise<Joined> {
  const made = await order.radio.connect(order.address, order.connectTimeoutMs, order.signal);
  if (!made.ok) return { kind: 'failed', problem: made.error };
  const link = made.value;
  const leave = () => void link.close();
  order.signal.addEventListener('abort', leave);
  void link.down.then(() => order.signal.removeEventListener('abort', leave));
  const joined = await overLink(order, link).catch((error: unknown): Joined => {
    if (error instanceof ProblemError) return { kind: 'failed', problem: error.problem };
    throw error;
  });
  if (joined.kind !== 'joined' || order.signal.aborted) await link.close();
  return joined;
}

async function overLink(order: Join, link: Link): Promise<Joined> {
  const { clock, format, match, address } = order;
  const found = orThrow(
    await link.discover([SERVICE.industrialMeasurement, SERVICE.deviceInformation, SERVICE.battery]),
  );
  if (match.serial !== undefined) {
    const serial = await readSerial(link, found);
    if (serial !== match.serial) {
      return { kind: 'other', problem: otherSerial(address, match.serial, serial) };
    }
  }
  const described = await describe(link, found, format);
  if (!described.ok) return { kind: 'refused', problem: described.error };

  const inbox = new Inbox();
  const raw = (source: string, bytes: Uint8Array) => inbox.put(rawArrival(clock, source, hexOf(bytes)));
  for (const { source, hex } of described.value.unread) inbox.put(rawArrival(clock, source, hex));
  const { measurement } = described.value;
  orThrow(await link.subscribe(measurement, (bytes) => inbox.put(arrivalOf(clock, format, bytes))));
  return { kind: 'joined', session: session(link, found, described.value, inbox, raw) };
}

function session(
  link: Link,
  found: readonly RemoteCharacteristic[],
  { description, measurement, descriptors }: Described,
  inbox: Inbox,
  raw: (source: string, bytes: Uint8Array) => void,
): Session {
  return {
    description,
    down: link.down,
    listen: (listener) => {
      inbox.open(listener);
      void keepUnconfirmed(link, found, measurement, descriptors, raw);
    },
  };
}

/** Holds what arrives while the tool is not yet announced as linked. */
class Inbox {
  #waiting: Arrival[] = [];
  #listener: ((arrival: Arrival) => void) | undefined;

  put(arrival: Arrival): void {
    if (this.#listener === undefined) this.#waiting.push(arrival);
    else this.#listener(arrival);
  }

  open(listener: (arrival: Arrival) => void): void {
    this.#listener = listener;
    for (const arrival of this.#waiting.splice(0)) listener(arrival);
  }
}

/** Stamped here, in the turn in which the packet came in. */
function arrivalOf(clock: Clock, format: QuantityFormat, bytes: Uint8Array): Arrival {
  const atUs = clock.nowUs();
  const decoded = decodeValue(format, bytes);
  return decoded.ok
    ? { ...decoded.value, atUs }
    : { kind: 'raw', atUs, source: format.characteristic, hex: hexOf(bytes) };
}

function rawArrival(clock: Clock, source: string, hex: string): Arrival {
  return { kind: 'raw', atUs: clock.nowUs(), source, hex };
}

function hexOf(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('hex');
}
