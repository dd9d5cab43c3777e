/** A running virtual peripheral: the host side of the device, above the link, and the handle a simulation acts through. */
import { createHash } from 'node:crypto';
import { DEFAULT_MTU } from './att-pdu.ts';
import { type AttServer, attServer } from './att-server.ts';
import type { PeripheralDefinition } from './definition.ts';
import { gattTable } from './gatt-table.ts';
import { addressBytes } from './hci-packets.ts';
import { answerSecurity, answerSignalling, CID, type Frame, parameterUpdateRequest } from './l2cap.ts';
import { alreadyBonded, handedOut, justWorks, type LinkKey, type Pairing } from './pairing.ts';
import type { Uuid } from './uuid.ts';

/** The truth about what was sent: every notification and indication is `delivered`, `lost` or still under way. */
interface Counts {
  readonly sent: number;
  readonly delivered: number;
  readonly lost: number;
}

export interface VirtualPeripheral {
  readonly definition: PeripheralDefinition;
  readonly connected: () => boolean;
  readonly counts: () => Counts;
  /** Sends a notification cut to the link's MTU; false, and nothing sent, unless the central has subscribed. */
  readonly notify: (characteristic: Uuid, bytes: Uint8Array) => boolean;
  /** The same for an indication; also false until the one before is confirmed. */
  readonly indicate: (characteristic: Uuid, bytes: Uint8Array) => boolean;
  readonly onSubscribe: (listener: (characteristic: Uuid) => void) => void;
  /** Also called for each subscription that ends with its link. */
  readonly onUnsubscribe: (listener: (characteristic: Uuid) => void) => void;
  readonly onConfirmation: (listener: () => void) => void;
  /** Wakes up: can be found and connected. A new peripheral is awake. */
  readonly startAdvertising: () => void;
  /** Falls asleep for others; an existing link stays. */
  readonly stopAdvertising: () => void;
  /**
   * Ends the link at once with what is under way: the central sees a Disconnection Complete with this reason (0x08
   * supervision timeout, 0x13 ended by the device). `silent`: nothing gets through any more and nobody is told.
   */
  readonly dropLink: (reason: number | 'silent') => void;
}

/** A peripheral's way to its central while there is a link. */
interface Channel {
  readonly send: (frame: Frame, outcome?: (delivered: boolean) => void) => void;
  readonly drop: (reason: number | 'silent') => void;
}

/** What the controller does with a peripheral, beside what the simulation does. */
export interface PeripheralPort {
  readonly handle: VirtualPeripheral;
  readonly awake: () => boolean;
  readonly attach: (channel: Channel) => void;
  readonly receive: (frame: Frame) => void;
  /** Encrypts the link; false where this key has not been agreed on. */
  readonly encrypt: (key: LinkKey) => boolean;
  readonly detach: () => void;
}

export interface PeripheralHooks {
  /** Whether the air loses this notification or indication. */
  readonly lose: (peripheral: VirtualPeripheral, bytes: Buffer) => boolean;
  /** It fell asleep, woke up, or lost its link. */
  readonly onAdvertisingChange: () => void;
  /** The public address of the central, as on air. */
  readonly central: Buffer;
}

const HANDLE_VALUE_HEADER = 3;

/** Room for a whole value of 512 octets in a Prepare Write. */
const MAX_MTU = 517;

interface PeripheralLink {
  readonly channel: Channel;
  readonly server: AttServer;
  readonly pairing: Pairing | undefined;
}

/** Who answers on an L2CAP channel; frames for channels that nobody opened are dropped. */
function answerOn(
  cid: number,
  { server, pairing }: PeripheralLink,
): ((payload: Buffer) => Buffer | undefined) | undefined {
  if (cid === CID.att) return server.receive;
  if (cid === CID.signalling) return answerSignalling;
  return cid === CID.security ? (pairing?.answer ?? answerSecurity) : undefined;
}

const isForPairing = ({ random, diversifier }: LinkKey) =>
  [...random, ...diversifier].every((octet) => octet === 0);

const sameKey = (a: LinkKey, b: LinkKey) =>
  a.random.equals(b.random) && a.diversifier.equals(b.diversifier) && a.key.equals(b.key);

function requireBetween(what: string, value: number, least: number, most: number): void {
  if (!(value >= least && value <= most))
    throw new RangeError(`${what} must be ${least} to ${most}, not ${value}`);
}

/** @throws RangeError where the definition breaks the protocol's limits. */
export function createPeripheral(definition: PeripheralDefinition, hooks: PeripheralHooks): PeripheralPort {
  requireBetween('the MTU', definition.mtu, DEFAULT_MTU, MAX_MTU);
  requireBetween('the signal strength', definition.rssi, -127, 20);
  requireBetween('the advertising interval', definition.advertisingIntervalMs, 20, 10_240);
  const table = gattTable(definition);
  const subscribed = new Set<(characteristic: Uuid) => void>();
  const unsubscribed = new Set<(characteristic: Uuid) => void>();
  const confirmed = new Set<() => void>();
  const counts = { sent: 0, delivered: 0, lost: 0 };
  let awake = true;
  let link: PeripheralLink | undefined;
  let pairings = 0;
  let bond: LinkKey | undefined;

  const advertise = (wanted: boolean) => {
    awake = wanted;
    hooks.onAdvertisingChange();
  };
  const outcome = (delivered: boolean) => {
    counts[delivered ? 'delivered' : 'lost'] += 1;
  };
  const push = (kind: 'notification' | 'indication', characteristic: Uuid, bytes: Uint8Array): boolean => {
    const payload = link?.server[kind](characteristic, bytes);
    if (link === undefined || payload === undefined) return false;
    counts.sent += 1;
    if (hooks.lose(handle, payload.subarray(HANDLE_VALUE_HEADER))) outcome(false);
    else link.channel.send({ cid: CID.att, payload }, outcome);
    return true;
  };

  /** Its random numbers follow from its address: a simulation runs the same way again. */
  const randomOf = (what: string) =>
    createHash('sha256').update(`${definition.address}/${what}`).digest().subarray(0, 16);
  const pair = () => {
    if (definition.pairs === undefined) return undefined;
    if (bond !== undefined) return alreadyBonded();
    pairings += 1;
    return justWorks(
      {
        central: { address: hooks.central, type: 'public' },
        peripheral: { address: addressBytes(definition.address), type: definition.addressType },
      },
      () => randomOf(`${pairings}`),
      definition.pairs === 'bonding',
    );
  };

  const handOutKey = ({ channel }: PeripheralLink) => {
    const numbers = randomOf(`${pairings}/numbers`);
    bond = {
      random: numbers.subarray(0, 8),
      diversifier: numbers.subarray(8, 10),
      key: randomOf(`${pairings}/key`),
    };
    for (const payload of handedOut(bond)) channel.send({ cid: CID.security, payload });
  };

  const handle: VirtualPeripheral = {
    definition,
    connected: () => link !== undefined,
    counts: () => ({ ...counts }),
    notify: (characteristic, bytes) => push('notification', characteristic, bytes),
    indicate: (characteristic, bytes) => push('indication', characteristic, bytes),
    onSubscribe: (listener) => void subscribed.add(listener),
    onUnsubscribe: (listener) => void unsubscribed.add(listener),
    onConfirmation: (listener) => void confirmed.add(listener),
    startAdvertising: () => advertise(true),
    stopAdvertising: () => advertise(false),
    dropLink: (reason) => link?.channel.drop(reason),
  };

  return {
    handle,
    awake: () => awake,
    attach: (channel) => {
      const server = attServer(table, definition.mtu, {
        onSubscription: (characteristic, on) => {
          for (const listener of on ? subscribed : unsubscribed) listener(characteristic);
        },
        onConfirmation: () => {
          for (const listener of confirmed) listener();
        },
      });
      link = { channel, server, pairing: pair() };
      if (definition.preferredConnection !== undefined) {
        const payload = parameterUpdateRequest(definition.preferredConnection);
        channel.send({ cid: CID.signalling, payload });
      }
    },
    receive: ({ cid, payload }) => {
      if (link === undefined) return;
      const { channel } = link;
      const answer = answerOn(cid, link)?.(payload);
      if (answer !== undefined) channel.send({ cid, payload: answer });
    },
    encrypt: (given) => {
      if (link === undefined) return false;
      const paired = isForPairing(given) && link.pairing?.key()?.equals(given.key) === true;
      const bonded = bond !== undefined && sameKey(bond, given);
      if (paired || bonded) link.server.setEncrypted();
      if (paired && link.pairing?.bonds() === true) handOutKey(link);
      return paired || bonded;
    },
    detach: () => {
      const ended = link?.server.subscriptions() ?? [];
      link = undefined;
      hooks.onAdvertisingChange();
      for (const characteristic of ended) for (const listener of unsubscribed) listener(characteristic);
    },
  };
}
