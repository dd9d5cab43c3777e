import { randomBytes } from 'node:crypto';
import { asSealed, MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import type { TokenFault } from '../../evidence/time-token.ts';
import type { TrustedTime } from '../../evidence/trust.ts';
import { inputName, readBytes } from '../../files/input.ts';
import { writeNew } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';

const MAX_TOKEN_BYTES = 1 << 20;
const ANSWER_WITHIN_MS = 20_000;
const NONCE_BYTES = 8;

/** Large, and asked for by few. */
const library = () => import('../../evidence/time-token.ts');

/**
 * Asks a time-stamping authority (RFC 3161) for a token over a record as it was sealed, so that it holds with any texts
 * withheld, and keeps it beside the file as `.tsr`. The token is kept only if it holds; `ca` are the certificates that the
 * authority is believed by.
 */
export async function timeStamp(
  file: string,
  { authority, ca }: { readonly authority: string; readonly ca: string },
): Promise<ExitCode> {
  if (inputName(file) !== file)
    throw refused(file, 'a time stamp is kept beside its record, so the record must be a file');
  const bytes = await readBytes(file, 'record', MAX_RECORD_BYTES);
  const authorities = await certificates(ca);
  const { readTimeToken, timeQuery } = await library();
  const sealed = asWasSealed(bytes);
  // The first bit is clear, and the first byte is not empty: the number is written in one way.
  const nonce = randomBytes(NONCE_BYTES);
  nonce[0] = ((nonce[0] ?? 0) & 0x3f) | 0x40;
  const answer = await asked(authority, await timeQuery(sealed, nonce));
  const token = await readTimeToken(answer, authorities, [sealed]);
  if (typeof token === 'string') throw refused(authority, `its answer does not hold: ${WHY[token]}`);
  if (token.nonce !== nonce.toString('hex')) throw refused(authority, 'it answered another question');
  const kept = `${file}.tsr`;
  writeNew(kept, answer);
  process.stdout.write(`${safeLine(kept)}: stamped before ${token.before}.\n`);
  return EXIT.done;
}

/** What the token says about the record, as the file is or as it was sealed; null where nobody asked. */
export async function trustedTime(
  bytes: Uint8Array,
  { time, ca }: { readonly time?: string; readonly ca?: string },
): Promise<TrustedTime | null> {
  if (time === undefined) return null;
  if (ca === undefined)
    throw new ProblemError({
      code: 'time-ca',
      message: 'nothing says which authority to believe',
      next: 'Give its certificates with --ca FILE.',
    });
  const answer = await readBytes(time, 'time stamp', MAX_TOKEN_BYTES);
  const { readTimeToken } = await library();
  const token = await readTimeToken(answer, await certificates(ca), [bytes, asWasSealed(bytes)]);
  if (typeof token === 'string')
    return { before: null, detail: `The time stamp does not hold: ${WHY[token]}.` };
  const { before, policy, over } = token;
  return {
    before,
    detail: `An authority that you named saw this record before ${before}, under its policy ${policy}.`,
    ofWholeFile: over === 0,
  };
}

const WHY: Readonly<Record<TokenFault, string>> = {
  unreadable: 'it is no time stamp that can be read',
  'not-granted': 'the authority refused to stamp',
  'weak-hash': 'it rests on a hash that can be forged, such as SHA-1',
  'other-data': 'it does not belong to this record',
  'not-signed': 'its signature does not hold',
  'not-trusted': 'nobody you named made it, or the certificate was not valid at its time',
  'not-bound': 'it does not say which certificate signed it',
  'not-for-time': 'the certificate that signed it is not for stamping times alone',
};

/** The certificates that the reader believes, as PEM. Problem: `time-ca`. */
async function certificates(file: string): Promise<string> {
  const pem = Buffer.from(await readBytes(file, 'certificates', MAX_TOKEN_BYTES)).toString('latin1');
  const { areCertificates } = await library();
  if (areCertificates(pem)) return pem;
  throw new ProblemError({
    code: 'time-ca',
    where: file,
    message: 'there is no certificate here',
    next: 'Give the certificates of the authority as PEM.',
  });
}

/** The record as it was sealed; whatever else it is as it is. */
function asWasSealed(bytes: Uint8Array): Uint8Array {
  const opened = openRecord(bytes);
  return opened.ok ? asSealed(opened.value) : bytes;
}

async function asked(authority: string, query: Uint8Array): Promise<Uint8Array> {
  try {
    const response = await fetch(authority, {
      method: 'POST',
      headers: { 'content-type': 'application/timestamp-query' },
      body: Buffer.from(query),
      signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
    });
    if (!response.ok) throw refused(authority, `it answered with ${response.status}`);
    return new Uint8Array(await response.arrayBuffer());
  } catch (cause) {
    if (cause instanceof ProblemError) throw cause;
    throw refused(authority, 'it cannot be reached');
  }
}

function refused(where: string, message: string): ProblemError {
  return new ProblemError({
    code: 'time-stamp',
    where,
    message,
    next: 'Try again later, or another authority.',
  });
}
