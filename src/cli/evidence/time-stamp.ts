import { randomBytes } from 'node:crypto';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import type { TrustedTime } from '../../evidence/trust.ts';
import { inputName, readBytes } from '../../files/input.ts';
import { writeNew } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';

const MAX_TOKEN_BYTES = 1 << 20;
const ANSWER_WITHIN_MS = 20_000;
const NONCE_BYTES = 8;

/** Large, and asked for by few. */
const library = async () => ({
  ...(await import('../../evidence/time-token.ts')),
  ...(await import('../../evidence/trusted-time.ts')),
});

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
    throw refused(file, w`a time stamp is kept beside its record, so the record must be a file`);
  const bytes = await readBytes(file, w`record`, MAX_RECORD_BYTES);
  const authorities = await certificates(ca);
  const { asWasSealed, readTimeToken, timeQuery, WHY } = await library();
  const sealed = asWasSealed(bytes);
  // The first bit is clear, and the first byte is not empty: the number is written in one way.
  const nonce = randomBytes(NONCE_BYTES);
  nonce[0] = ((nonce[0] ?? 0) & 0x3f) | 0x40;
  const answer = await asked(authority, await timeQuery(sealed, nonce));
  const token = await readTimeToken(answer, authorities, [sealed]);
  if (typeof token === 'string') throw refused(authority, w`its answer does not hold: ${WHY[token]()}`);
  if (token.nonce !== nonce.toString('hex')) throw refused(authority, w`it answered another question`);
  const kept = `${file}.tsr`;
  writeNew(kept, answer);
  process.stdout.write(w`${safeLine(kept)}: stamped before ${token.before}.\n`);
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
      message: w`nothing says which authority to believe`,
      next: w`Give its certificates with --ca FILE.`,
    });
  const answer = await readBytes(time, w`time stamp`, MAX_TOKEN_BYTES);
  const { trustedTimeIn } = await library();
  return trustedTimeIn(answer, await certificates(ca), bytes);
}

/** The certificates that the reader believes, as PEM. Problem: `time-ca`. */
async function certificates(file: string): Promise<string> {
  const pem = Buffer.from(await readBytes(file, w`certificates`, MAX_TOKEN_BYTES)).toString('latin1');
  const { areCertificates } = await library();
  if (areCertificates(pem)) return pem;
  throw new ProblemError({
    code: 'time-ca',
    where: file,
    message: w`there is no certificate here`,
    next: w`Give the certificates of the authority as PEM.`,
  });
}

async function asked(authority: string, query: Uint8Array): Promise<Uint8Array> {
  try {
    const response = await fetch(authority, {
      method: 'POST',
      headers: { 'content-type': 'application/timestamp-query' },
      body: Buffer.from(query),
      signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
    });
    if (!response.ok) throw refused(authority, w`it answered with ${response.status}`);
    return new Uint8Array(await response.arrayBuffer());
  } catch (cause) {
    if (cause instanceof ProblemError) throw cause;
    throw refused(authority, w`it cannot be reached`);
  }
}

function refused(where: string, message: string): ProblemError {
  return new ProblemError({
    code: 'time-stamp',
    where,
    message,
    next: w`Try again later, or another authority.`,
  });
}
