/**
 * A peripheral's side of LE legacy pairing by Just Works (Core, Vol 3 Part H 2.3.5.5): what a tool without keys and
 * display offers. It ends in a short-term key; one that bonds hands out another for the next links.
 */
import { createCipheriv } from 'node:crypto';

interface Party {
  readonly address: Buffer;
  readonly type: 'public' | 'random';
}

/** Both ends of the link, addresses as on air. */
export interface Parties {
  readonly central: Party;
  readonly peripheral: Party;
}

export interface Pairing {
  /** The answer to a command of the Security Manager; undefined where the protocol asks for silence. */
  readonly answer: (command: Buffer) => Buffer | undefined;
  /** The short-term key as HCI carries it, once both ends have agreed on one. */
  readonly key: () => Buffer | undefined;
  /** Whether both ends want a key for the next link. */
  readonly bonds: () => boolean;
}

/** What names and encrypts a link: all zero but the key for a pairing, all of it from a bond. As HCI carries it. */
export interface LinkKey {
  readonly random: Buffer;
  readonly diversifier: Buffer;
  readonly key: Buffer;
}

const CODE = {
  request: 0x01,
  response: 0x02,
  confirm: 0x03,
  random: 0x04,
  failed: 0x05,
  encryptionInformation: 0x06,
  centralIdentification: 0x07,
} as const;
const REASON = { confirmFailed: 0x04, commandNotSupported: 0x07, unspecified: 0x08 } as const;

const BONDING = 0x01;
const ENCRYPTION_KEY = 0x01;

/** No input and no output, no out-of-band data, without protection, keys of 16 octets, a key handed out for a bond. */
function responseTo(request: Buffer, bonding: boolean): Buffer {
  const asked = (request.readUInt8(3) & BONDING) === BONDING && (request.readUInt8(6) & ENCRYPTION_KEY) !== 0;
  const bond = bonding && asked ? 1 : 0;
  return Buffer.from([CODE.response, 0x03, 0x00, bond, 0x10, 0x00, bond]);
}

/** The commands by which a device hands out its key over an encrypted link (Core, Vol 3 Part H 3.6.2 and 3.6.3). */
export const handedOut = ({ random, diversifier, key }: LinkKey): readonly Buffer[] => [
  Buffer.concat([Buffer.from([CODE.encryptionInformation]), key]),
  Buffer.concat([Buffer.from([CODE.centralIdentification]), diversifier, random]),
];

/** A device that keeps a key and pairs with nobody else, as BlueZ does where nothing else is configured. */
export function alreadyBonded(): Pairing {
  return {
    answer: ([code]) => (code === CODE.request ? Buffer.from([CODE.failed, REASON.unspecified]) : undefined),
    key: () => undefined,
    bonds: () => false,
  };
}

/** Just Works: everybody knows this one. */
const TEMPORARY_KEY = Buffer.alloc(16);

/** `random` gives the 16 octets of this side; `bonding`: it hands out a key where it is asked to. */
export function justWorks(parties: Parties, random: () => Buffer, bonding: boolean): Pairing {
  let request: Buffer | undefined;
  let response: Buffer = Buffer.alloc(0);
  let theirConfirm: Buffer | undefined;
  let ourRandom: Buffer | undefined;
  let key: Buffer | undefined;
  const failed = (reason: number) => {
    request = theirConfirm = ourRandom = undefined;
    return Buffer.from([CODE.failed, reason]);
  };
  const with16 = (code: number, value: Buffer) => Buffer.concat([Buffer.from([code]), value]);

  const answer = (command: Buffer): Buffer | undefined => {
    const value = command.subarray(1);
    switch (command[0]) {
      case CODE.request:
        if (command.length !== 7) return failed(REASON.commandNotSupported);
        request = Buffer.from(command);
        response = responseTo(request, bonding);
        return response;
      case CODE.confirm: {
        if (request === undefined || value.length !== 16) return failed(REASON.confirmFailed);
        theirConfirm = Buffer.from(value);
        ourRandom = random();
        return with16(CODE.confirm, confirmValue(TEMPORARY_KEY, ourRandom, request, response, parties));
      }
      case CODE.random: {
        if (request === undefined || ourRandom === undefined || value.length !== 16)
          return failed(REASON.confirmFailed);
        const expected = confirmValue(TEMPORARY_KEY, value, request, response, parties);
        if (theirConfirm?.equals(expected) !== true) return failed(REASON.confirmFailed);
        key = shortTermKey(TEMPORARY_KEY, ourRandom, value);
        return with16(CODE.random, ourRandom);
      }
      default:
        return undefined;
    }
  };
  return { answer, key: () => key, bonds: () => response.at(-1) === ENCRYPTION_KEY };
}

/** c1 of Core, Vol 3 Part H 2.2.3, all values in the order of the air. */
export function confirmValue(
  key: Buffer,
  random: Buffer,
  request: Buffer,
  response: Buffer,
  { central, peripheral }: Parties,
): Buffer {
  const octet = ({ type }: Party) => (type === 'random' ? 1 : 0);
  const p1 = Buffer.concat([Buffer.from([octet(central), octet(peripheral)]), request, response]);
  const p2 = Buffer.concat([peripheral.address, central.address, Buffer.alloc(4)]);
  return encrypted(key, xor(encrypted(key, xor(random, p1)), p2));
}

/** s1 of Core, Vol 3 Part H 2.2.4: of the two random values the eight octets that come first on air. */
export function shortTermKey(key: Buffer, peripheralRandom: Buffer, centralRandom: Buffer): Buffer {
  return encrypted(key, Buffer.concat([centralRandom.subarray(0, 8), peripheralRandom.subarray(0, 8)]));
}

/** AES-128 of one block; the standard writes it the other way round than the air. */
function encrypted(key: Buffer, block: Buffer): Buffer {
  const cipher = createCipheriv('aes-128-ecb', Buffer.from(key).reverse(), null).setAutoPadding(false);
  return Buffer.concat([cipher.update(Buffer.from(block).reverse()), cipher.final()]).reverse();
}

const xor = (a: Buffer, b: Buffer) => Buffer.from(a.map((octet, i) => octet ^ (b[i] ?? 0)));
