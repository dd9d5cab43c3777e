/** Records that a station with all its keys could forge: what is signed may be anything, tree and checkpoint fit it. */

import { canonicalBytes } from '../../../src/evidence/canonical.ts';
import { originOf, signCheckpoint } from '../../../src/evidence/checkpoint.ts';
import {
  addSignature,
  disclosuresIn,
  type Jws,
  type Signer,
  withDisclosures,
} from '../../../src/evidence/jws.ts';
import { leafHash, setProof, treeOf, treeRoot } from '../../../src/evidence/merkle.ts';
import { fromUtf8, toBase64, toBase64url } from '../../../src/evidence/platform/bytes.ts';
import { fileOf, jwsOf } from '../../evidence/forge.ts';
import { kidOf, station, technician } from '../../evidence/sample-job.ts';

/** What is signed, as JSON is read, without a type: a test may put anything into it. */
export type Content = ReturnType<typeof JSON.parse>;

export const contentOf = (bytes: Uint8Array): Content =>
  JSON.parse(Buffer.from(jwsOf(bytes).payload, 'base64url').toString('utf8'));

export interface Forging {
  readonly signers?: readonly Signer[];
  readonly disclosures?: readonly string[];
  /** Leave tree and checkpoint as the change left them. */
  readonly keepLog?: true;
}

/** The record with its content changed, its log written anew around it, signed anew. */
export function forged(bytes: Uint8Array, change: (content: Content) => void, given: Forging = {}): Buffer {
  const content = contentOf(bytes);
  change(content);
  if (given.keepLog !== true) content.log = logAround(content, given.signers?.[0] ?? station);
  const disclosures = given.disclosures ?? disclosuresIn(jwsOf(bytes));
  return signedText(fromUtf8(canonicalBytes(content)), { ...given, disclosures });
}

/** Any text, signed as a record is. */
export function signedText(
  text: string | Uint8Array,
  { signers = [station, technician], disclosures = [] }: Forging = {},
): Buffer {
  const unsigned: Jws = { payload: toBase64url(text), signatures: [] };
  return fileOf(withDisclosures(signers.reduce(addSignature, unsigned), disclosures));
}

/** Checkpoint and proof of a log that holds just these entries, and something else in every other place; as it was where they have no places. */
function logAround({ background, entries, log }: Content, signer: Signer) {
  const leaves = [...background, ...entries].map((entry) => ({
    index: entry.seq - 1,
    hash: leafHash(canonicalBytes(entry)),
  }));
  if (leaves.some(({ index }) => !(Number.isSafeInteger(index) && index >= 0))) return log;
  const size = Math.max(...leaves.map(({ index }) => index)) + 4;
  const all: Uint8Array[] = Array.from({ length: size }, (_, i) => Buffer.alloc(32, i));
  for (const { index, hash } of leaves) all[index] = hash;
  const tree = treeOf(all);
  const indexes = [...new Set(leaves.map(({ index }) => index))].sort((a, b) => a - b);
  return {
    checkpoint: signCheckpoint(
      { origin: originOf(kidOf(station)), size, root: treeRoot(tree, size) },
      signer.privateKey,
    ),
    proof: setProof(tree, indexes, size).map(toBase64),
  };
}
