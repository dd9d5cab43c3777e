import type { Problem } from '../../src/problem.ts';
import { ok, type Result } from '../../src/result.ts';
import { type Bond, type Bonds, bondSchema } from './bonds.ts';
import type { NobleAclStream, NobleHci } from './noble.ts';

// noble pairs when a device refuses a request over an open link, by LE legacy Just Works. It always asks for a bond and
// forgets the key: a device that keeps its half lets nobody pair a second time. So a bond is asked for where it is kept.
// Over a raw socket the kernel hears of the same links, and answers a device that asks for encryption by itself.

export interface PairingOrder {
  readonly hci: NobleHci;
  readonly stream: NobleAclStream;
  readonly handle: number;
  readonly address: string;
  /** Left out: nothing is kept, and each link that asks for it is paired anew. */
  readonly bonds: Bonds | undefined;
  /** Whether the adapter has said that the link is encrypted. */
  readonly encrypted: () => boolean;
  /** The device asked for encryption, which did not come about; noble waits for ever then. */
  readonly onFailed: (problem: Problem) => void;
}

export interface Pairing {
  /** Whether a key is kept from an earlier link. */
  readonly bonded: boolean;
  /** Keeps the key that the device has given out on this link, if it did. */
  keepBond(): Result<void, Problem>;
}

/** To an adapter that the operating system pairs for. */
export const PAIRED_ELSEWHERE: Pairing = { bonded: false, keepBond: () => ok(undefined) };

const SECURITY_CHANNEL = 6;
const PAIRING_RESPONSE = 0x02;

/** Pairing Request (Core, Vol 3 Part H 3.5.1): no input and no output, no other channel, keys of 16 octets. */
function pairingRequest(bonding: boolean): Buffer {
  const bond = bonding ? 1 : 0;
  return Buffer.from([0x01, 0x03, 0x00, bond, 0x10, 0x00, bond]);
}

/** What encrypts the link once the device asks for it: the key that is kept of it, or a pairing. */
export function preparePairing(order: PairingOrder): Pairing {
  const { hci, stream, handle, address, bonds, encrypted, onFailed } = order;
  const bond = bonds?.get(address);
  /** noble holds a request back until the link is encrypted. */
  let waiting = false;
  let pairs: 'nobody' | 'noble' | 'kernel' = 'nobody';
  const fail = () => onFailed(bond === undefined ? notPaired(address) : bondLost(address));

  stream.encrypt = () => {
    if (encrypted()) return fail(); // the device wants more than that
    waiting = true;
    if (bond !== undefined)
      hci.startLeEncryption(handle, octets(bond.random), octets(bond.diversifier), octets(bond.key));
    else if (pairs === 'nobody') {
      pairs = 'noble';
      stream._smp._preq = pairingRequest(bonds !== undefined);
      stream._smp.write(stream._smp._preq);
    }
  };
  const push = stream.push.bind(stream);
  stream.push = (channel, data) => {
    const paired = channel === SECURITY_CHANNEL && data !== null;
    if (paired && pairs !== 'noble') {
      if (data[0] === PAIRING_RESPONSE) pairs = 'kernel';
    } else push(channel, data);
  };
  const pushEncrypt = stream.pushEncrypt.bind(stream);
  stream.pushEncrypt = (on) => {
    // Where nothing is held back noble would send its latest request a second time.
    if (!waiting) return;
    waiting = false;
    if (on === 0) fail();
    else pushEncrypt(on);
  };
  stream.on('encryptFail', fail);

  let newBond: Partial<Bond> = {};
  // A key that came in the clear is nobody's secret.
  const take = (part: Partial<Bond>) => {
    if (encrypted()) newBond = { ...newBond, ...part };
  };
  stream._smp.on('ltk', (key: Buffer) => take({ key: text(key) }));
  stream._smp.on('masterIdent', (diversifier: Buffer, random: Buffer) =>
    take({ diversifier: text(diversifier), random: text(random) }),
  );
  return {
    bonded: bond !== undefined,
    keepBond: () => {
      const whole = bondSchema.safeParse(newBond);
      return bonds === undefined || !whole.success ? ok(undefined) : bonds.keep(address, whole.data);
    },
  };
}

const octets = (hex: string) => Buffer.from(hex, 'hex');
const text = (bytes: Buffer) => bytes.toString('hex');

function notPaired(address: string): Problem {
  return {
    code: 'link-not-paired',
    where: address,
    message: `the tool at ${address} asks for pairing, and pairing failed`,
    next: 'Delete the pairings stored in the tool, or switch pairing off. This station pairs by Just Works only.',
  };
}

function bondLost(address: string): Problem {
  return {
    code: 'link-bond-lost',
    where: address,
    message: `the device at ${address} does not have the pairing key of the adopted tool`,
    next: 'If the tool was reset or replaced, delete its key in bluetooth-bonds.json beside the station file and adopt it again.',
  };
}
