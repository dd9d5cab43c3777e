/** What a time stamp (RFC 3161) that was given with a record says of it, for a reader who names the authorities. */
import { type Sentence, sentence } from '../words/catalogue.ts';
import { asSealed, openRecord } from './record.ts';
import { readTimeToken, type TokenFault } from './time-token.ts';
import type { TrustedTime } from './trust.ts';

/** Over the file as it is, or as it was sealed. `authorities` are certificates as PEM. */
export async function trustedTimeIn(
  answer: Uint8Array,
  authorities: string,
  record: Uint8Array,
): Promise<TrustedTime> {
  const token = await readTimeToken(answer, authorities, [record, asWasSealed(record)]);
  if (typeof token === 'string')
    return { before: null, detail: sentence`The time stamp does not hold: ${WHY[token]}.` };
  const { before, policy, over } = token;
  return {
    before,
    detail: sentence`An authority that you named saw this record before ${before}, under its policy ${policy}.`,
    ofWholeFile: over === 0,
  };
}

export const WHY: Readonly<Record<TokenFault, Sentence>> = {
  unreadable: sentence`it is no time stamp that can be read`,
  'not-granted': sentence`the authority refused to stamp`,
  'weak-hash': sentence`it rests on a hash that can be forged, such as SHA-1`,
  'other-data': sentence`it does not belong to this record`,
  'not-signed': sentence`its signature does not hold`,
  'not-trusted': sentence`nobody you named made it, or the certificate was not valid at its time`,
  'not-bound': sentence`it does not say which certificate signed it`,
  'not-for-time': sentence`the certificate that signed it is not for stamping times alone`,
};

/** The record as it was sealed; whatever else it is as it is. */
export function asWasSealed(bytes: Uint8Array): Uint8Array {
  const opened = openRecord(bytes);
  return opened.ok ? asSealed(opened.value) : bytes;
}
