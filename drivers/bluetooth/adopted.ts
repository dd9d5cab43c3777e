import type { Problem } from '../../src/problem.ts';
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
export function impostor(adopted: Adopted, sighting: Sighting): Problem | undefined {
  const name = nameOf(sighting);
  if (sameAddress(adopted.address, sighting.address) || name === '' || name !== adopted.name)
    return undefined;
  return {
    code: 'tool-same-name',
    where: sighting.address,
    message: `A device at ${sighting.address} calls itself "${name}" as the adopted tool at ${adopted.address} does; it is not listened to.`,
    next: 'If it is to be used, adopt it as a tool of its own with plugmark devices adopt.',
  };
}

/** Somebody who took the tool's place could leave out what it does not know. */
export function notAsked({ address }: Adopted): Problem {
  return {
    code: 'tool-not-encrypted',
    where: address,
    message: `The device at ${address} does not ask for encryption as the adopted tool did when it was paired; it is not listened to.`,
    next: 'If its settings were changed, delete its key from the file of bonds beside the station file, and adopt it again.',
  };
}

export function otherSerial({ address, serial }: Adopted, actual: string | undefined): Problem {
  return {
    code: 'tool-other-serial',
    where: address,
    message: `The device at ${address} ${actual === undefined ? 'gives no serial number, or only to whom it is paired with,' : `has serial number ${actual}`} where ${serial} was adopted.`,
    next: 'See that the right tool is switched on, or adopt this one with plugmark devices adopt.',
  };
}
