/**
 * Vehicle identification numbers: 17 characters without I, O and Q (ISO 3779), and the check digit at position 9 that
 * 49 CFR 565.15(c) makes binding for vehicles of North America and that is optional everywhere else.
 */

import type { Problem } from '../problem.ts';
import type { ProblemCode } from '../problem-code.ts';
import { w } from '../words/catalogue.ts';

const LENGTH = 17;
/** Position 9, counted from 0. */
const CHECK_AT = 8;

/** Table III of 49 CFR 565.15(c); digits stand for themselves. */
const VALUES: Readonly<Record<string, number>> = {
  ...Object.fromEntries(Array.from('0123456789', (digit) => [digit, Number(digit)])),
  ...{ A: 1, B: 2, C: 3, D: 4, E: 5, F: 6, G: 7, H: 8 },
  ...{ J: 1, K: 2, L: 3, M: 4, N: 5, P: 7, R: 9 },
  ...{ S: 2, T: 3, U: 4, V: 5, W: 6, X: 7, Y: 8, Z: 9 },
};
/** Table IV; the check digit itself weighs nothing. */
const WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2] as const;

/** What is wrong with a VIN, and whether that rules it out: only North America makes the check digit binding. */
export interface VinFault {
  readonly illegal: boolean;
  readonly problem: Problem;
}

/** The VIN as it is compared and looked up: capitals, without the spaces and hyphens that people put in. */
export const normalVin = (text: string): string => text.replace(/[\s-]+/g, '').toUpperCase();

/** The character due at position 9 of a normal VIN; null where a character has no value or the length is another. */
export function checkDigit(vin: string): string | null {
  if (vin.length !== LENGTH) return null;
  let sum = 0;
  for (const [i, weight] of WEIGHTS.entries()) {
    const value = VALUES[vin.charAt(i)];
    if (value === undefined) return null;
    sum += weight * value;
  }
  const remainder = sum % 11;
  return remainder === 10 ? 'X' : String(remainder);
}

/**
 * What is wrong with a VIN as written; null when nothing is. A number of another length is never illegal: vehicles from
 * before model year 1981 have shorter ones.
 */
export function vinFault(text: string): VinFault | null {
  const vin = normalVin(text);
  if (vin.length !== LENGTH)
    return fault(false, 'vin-length', w`the VIN has ${vin.length} characters; expected ${LENGTH}`);
  const northAmerican = /^[1-5]/.test(vin);
  const strange = [...vin].find((character) => VALUES[character] === undefined);
  if (strange !== undefined) return fault(northAmerican, 'vin-character', strangeText(strange));
  const due = checkDigit(vin);
  const actual = vin.charAt(CHECK_AT);
  if (due === actual) return null;
  const message = northAmerican
    ? w`the check digit of the VIN is ${actual}; expected ${due ?? ''}`
    : w`the check digit of the VIN is ${actual}; expected ${due ?? ''}, though not every market uses it`;
  return fault(northAmerican, 'vin-check-digit', message);
}

function strangeText(character: string): string {
  const instead = { I: '1', O: '0', Q: w`0 or 9` }[character];
  if (instead === undefined) return w`the VIN holds a character that is neither a letter A to Z nor a digit`;
  return w`the VIN holds the letter ${character}, which none has; it may be ${instead}`;
}

function fault(illegal: boolean, code: ProblemCode, message: string): VinFault {
  const next = w`Compare it with the vehicle, character by character.`;
  return { illegal, problem: { code, where: 'vehicle.vin', message, next } };
}
