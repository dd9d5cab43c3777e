/** Ways to make a record that its station never made. */

import { canonicalBytes } from '../../src/evidence/canonical.ts';
import { readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { disclosuresOf, entryHash, signedEntry } from '../../src/evidence/entry.ts';
import { addSignature, type Jws, jwsSchema, type Signer, withDisclosures } from '../../src/evidence/jws.ts';
import { setProof, treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { fromBase64url, toBase64, toBase64url } from '../../src/evidence/platform/bytes.ts';
import { type JobRecord, openRecord } from '../../src/evidence/record.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { checkText } from '../../src/report/words/index.ts';
import { orThrow } from '../../src/result.ts';
import { concealedAnew } from './entries.ts';
import { type SampleLog, station, technician, trusting } from './sample-job.ts';

export const jwsOf = (bytes: Uint8Array): Jws =>
  jwsSchema.parse(JSON.parse(Buffer.from(bytes).toString('utf8')));

export const fileOf = (jws: unknown): Buffer => Buffer.concat([canonicalBytes(jws), Buffer.from('\n')]);

export function recordOf(bytes: Uint8Array): JobRecord {
  const opened = openRecord(bytes);
  if (!opened.ok) throw new Error(opened.error.problem.message);
  return opened.value.record;
}

/** A record in which anything was changed but the lists of entries. */
type Changed = Pick<JobRecord, 'background' | 'entries'> & Readonly<Record<string, unknown>>;

/** Another content under the old signatures. */
export function withContent(bytes: Uint8Array, content: Changed | string): Buffer {
  const { payload, disclosures } = signable(content);
  return fileOf(withDisclosures({ ...jwsOf(bytes), payload }, disclosures));
}

/** Another content, signed anew by whoever holds the keys: what a dishonest station could do. */
export function signedAnew(content: Changed | JobRecord, ...signers: Signer[]): Buffer {
  const { payload, disclosures } = signable(content);
  const unsigned: Jws = { payload, signatures: [] };
  return fileOf(withDisclosures(signers.reduce(addSignature, unsigned), disclosures));
}

/** Other entries of the job in a log of its own, proven and signed anew: what a dishonest station could do, or a newer program. */
export function loggedAnew(content: JobRecord, log: SampleLog): Buffer {
  const all = [...log.station, ...log.entries].sort((a, b) => a.seq - b.seq);
  const tree = treeOf(all.map(entryHash));
  const { origin } = orThrow(readCheckpoint(content.log.checkpoint, 'checkpoint'));
  const head = { origin, size: tree.size, root: treeRoot(tree, tree.size) };
  const indexes = [...content.background, ...log.entries].map(({ seq }) => seq - 1).sort((a, b) => a - b);
  const proof = setProof(tree, indexes, tree.size).map(toBase64);
  const checkpoint = signCheckpoint(head, station.privateKey);
  return signedAnew({ ...content, entries: log.entries, log: { checkpoint, proof } }, station, technician);
}

/** What is signed of a record, as its canonical text. */
export const signedTextOf = (record: JobRecord): string =>
  Buffer.from(signable(record).payload, 'base64url').toString('utf8');

/** What is signed of a content that a test has changed, and the personal texts that travel beside it. */
function signable(content: Changed | JobRecord | string) {
  if (typeof content === 'string') return { payload: toBase64url(canonicalBytes(content)), disclosures: [] };
  const background = content.background.map(concealedAnew);
  const entries = content.entries.map(concealedAnew);
  const signed = {
    ...content,
    background: background.map(signedEntry),
    entries: entries.map(signedEntry),
  };
  // An entry that is there twice has its disclosures once.
  const disclosures = new Set([...background, ...entries].flatMap(disclosuresOf));
  return { payload: toBase64url(canonicalBytes(signed)), disclosures: [...disclosures] };
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
    why: failed.map(checkText).join(' '),
  };
}

export const rejected = (...failed: string[]) => ({ verdict: 'rejected', failed });
