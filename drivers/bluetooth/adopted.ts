import type { Problem } from '../../src/problem.ts';
import type { DeviceRefusal } from '../../src/reading.ts';
import type { Sighting } from '../radio/radio.ts';
import { cleanText } from './text.ts';

/** The one device that the station listens to as this tool: adopted once, by its serial number and its address. */
export interface Adopted {
  readonly address: string;
  readonly serial: string;
  /** As it advertised itself when it was adopted. */
  readonly name?: string;
}

export const sameAddress = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();

/** Text fit for the screen. */
export const nameOf = (sighting: Sighting) => cleanText(sighting.name ?? '');

/** Why a device in reach is not taken for the tool although it bears its name; undefined where it does not. */
export function impostor(adopted: Adopted, sighting: Sighting): DeviceRefusal | undefined {
  const name = nameOf(sighting);
  if (sameAddress(adopted.address, sighting.address) || name === '' || name !== adopted.name)
    return undefined;
  return { reason: 'same-name', address: sighting.address };
}

/** Somebody who took the tool's place could leave out what it does not know. */
export function notAsked({ address }: Adopted): Problem {
  return {
    code: 'tool-not-encrypted',
    where: address,
    message: `the device at ${address} does not ask for encryption, but the adopted tool does. Its readings are ignored`,
    next: 'If its settings were changed, delete its key in bluetooth-bonds.json beside the station file and adopt it again.',
  };
}

export function otherSerial({ address, serial }: Adopted, actual: string | undefined): Problem {
  return {
    code: 'tool-other-serial',
    where: address,
    message: `the device at ${address} ${actual === undefined ? 'gives no serial number before pairing' : `has serial number ${actual}`}; the adopted tool is ${serial}`,
    next: 'Switch on the right tool, or adopt this one with plugmark devices adopt.',
  };
}
