/** What hostile files are made of, and what both verifiers have to say of them. */
import { disclosuresIn } from '../../../src/evidence/jws.ts';
import { jwsOf } from '../../evidence/forge.ts';
import type { Content } from './forged.ts';
import { WHOLE } from './valid.ts';

/** What both verifiers have to say of it. `judging`: only judging again tells, so that a verifier without the rules takes it. */
export type Expected = 'not authentic' | 'unreadable' | 'authentic' | 'judging';

export interface Variant {
  readonly what: string;
  readonly file: Uint8Array;
  readonly expected: Expected;
}

export const jws = jwsOf(WHOLE);
export const text = WHOLE.toString('utf8');
export const signed = Buffer.from(jws.payload, 'base64url').toString('utf8');
const [one, two] = jws.signatures;
if (one === undefined || two === undefined) throw new Error('two signatures');
export const [first, second] = [one, two];
export const disclosures = disclosuresIn(jws);

export const variants = (
  all: Readonly<Record<string, Uint8Array | string>>,
  expected: Expected = 'not authentic',
) => Object.entries(all).map(([what, file]): Variant => ({ what, file: Buffer.from(file), expected }));

/** The last character with one of its unused bits set. */
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
export const nextSign = (mark: string) => ALPHABET[ALPHABET.indexOf(mark.at(-1) ?? '') + 1] ?? 'A';

/** Every number of these entries one up. */
export function shifted(entries: Content, name: 'seq' | 'n'): void {
  for (const entry of entries) entry[name] += 1;
}
