/** Ways to make a record that its station never made. */
import { fromBase64url, toBase64url } from '../../src/evidence/base64url.ts';
import { canonicalBytes } from '../../src/evidence/canonical.ts';
import { addSignature, type Jws, jwsSchema, type Signer } from '../../src/evidence/jws.ts';
import { type JobRecord, openRecord } from '../../src/evidence/record.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { station, trusting } from './sample-job.ts';

export const jwsOf = (bytes: Uint8Array): Jws =>
  jwsSchema.parse(JSON.parse(Buffer.from(bytes).toString('utf8')));

export const fileOf = (jws: unknown): Buffer => Buffer.concat([canonicalBytes(jws), Buffer.from('\n')]);

export function recordOf(bytes: Uint8Array): JobRecord {
  const opened = openRecord(bytes);
  if (!opened.ok) throw new Error(opened.error.problem.message);
  return opened.value.record;
}

/** Another content under the old signatures. */
export function withContent(bytes: Uint8Array, content: unknown): Buffer {
  return fileOf({ ...jwsOf(bytes), payload: toBase64url(canonicalBytes(content)) });
}

/** Another content, signed anew by whoever holds the keys: what a dishonest station could do. */
export function signedAnew(content: unknown, ...signers: Signer[]): Buffer {
  const unsigned: Jws = { payload: toBase64url(canonicalBytes(content)), signatures: [] };
  return fileOf(signers.reduce(addSignature, unsigned));
}

/** One protected header replaced, its signature kept. */
export function withHeader(bytes: Uint8Array, change: (header: Record<string, unknown>) => unknown): Buffer {
  const jws = jwsOf(bytes);
  const [first, ...rest] = jws.signatures;
  if (first === undefined) throw new Error('nothing is signed');
  const header: Record<string, unknown> = JSON.parse(String(fromBase64url(first.protected)));
  const changed = { ...first, protected: toBase64url(canonicalBytes(change(header))) };
  return fileOf({ ...jws, signatures: [changed, ...rest] });
}

/** The verdict, the failed checks and what they say. */
export function judged(file: Uint8Array, list: TrustList = trusting(station)) {
  const { verdict, checks } = verifyRecord(file, list);
  const failed = checks.filter(({ outcome }) => outcome === 'failed');
  return {
    verdict,
    failed: failed.map(({ name }) => name),
    why: failed.map(({ detail }) => detail).join(' '),
  };
}

export const rejected = (...failed: string[]) => ({ verdict: 'rejected', failed });
