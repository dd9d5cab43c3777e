/** The log's side of a witness (c2sp.org/tlog-witness): asks one for its cosignature on a checkpoint. */

import { readCheckpoint, type SignedCheckpoint } from '../../evidence/checkpoint.ts';
import { cosignaturesOn } from '../../evidence/cosignature.ts';
import { consistencyProof, type Subtrees } from '../../evidence/merkle.ts';
import { type NoteSignature, noteText, readSignatures } from '../../evidence/note.ts';
import type { WitnessKey } from '../../evidence/verifier-key.ts';
import { addCheckpointText } from '../../evidence/witness.ts';
import { phrases, w } from '../../words/catalogue.ts';

/** A witness that the station file names. */
export interface AskedWitness {
  readonly url: string;
  readonly keys: readonly WitnessKey[];
}

/** `ahead`: the witness cosigned a longer log of this station than there is. */
export type Asked =
  | { readonly kind: 'cosigned'; readonly signatures: readonly NoteSignature[]; readonly at: string }
  | { readonly kind: 'ahead'; readonly size: number }
  | { readonly kind: 'refused' | 'not-reached'; readonly why: string };

const PATIENCE_MS = 20_000;
/** Room for the cosignatures of a witness with many keys. */
const MOST_BYTES = 64_000;
const WHY: Readonly<Record<number, string>> = phrases({
  400: 'it does not understand the request',
  403: 'it does not have the key that signs this log now; give it the new one: plugmark log vkey',
  404: 'it does not know this log; give it the key of the log: plugmark log vkey',
  413: 'the request is too large for it',
  422: 'IT HAS ANOTHER HISTORY OF THIS LOG. Run "plugmark log check"',
  429: 'it has had too many requests for now',
});

/** `oldSize`: what the witness is thought to have; it says what it has where that is wrong. */
export async function askWitness(
  witness: AskedWitness,
  checkpoint: SignedCheckpoint,
  tree: Subtrees,
  oldSize: number,
): Promise<Asked> {
  let old = oldSize;
  // Another program of this station may send a checkpoint meanwhile: then the size is another one again.
  for (let round = 0; round < 4; round++) {
    const body = addCheckpointText(old, consistencyProof(tree, old, checkpoint.size), noteText(checkpoint));
    const answer = await post(`${witness.url.replace(/\/$/, '')}/add-checkpoint`, body);
    if (typeof answer === 'string') return { kind: 'not-reached', why: answer };
    const { status, text } = answer;
    if (status === 200) return cosigned(witness, checkpoint, text);
    if (status !== 409) return { kind: 'refused', why: WHY[status] ?? w`it answered ${status}` };
    const size = /^(0|[1-9]\d{0,15})\n$/.exec(text)?.[1];
    if (size === undefined || Number(size) === old)
      return { kind: 'refused', why: w`its answer cannot be understood` };
    if (Number(size) > checkpoint.size) return { kind: 'ahead', size: Number(size) };
    old = Number(size);
  }
  return { kind: 'refused', why: w`it answers with another size each time` };
}

/** Lines of keys that the station file does not name are left out (tlog-witness). */
function cosigned({ keys }: AskedWitness, checkpoint: SignedCheckpoint, text: string): Asked {
  const lines = readSignatures(text) ?? [];
  const holding = cosignaturesOn({ ...checkpoint, signatures: lines }, keys);
  const [first] = holding ?? [];
  if (holding === null || first === undefined)
    return { kind: 'refused', why: w`its answer has no cosignature by a key that the station file names` };
  const own = (line: NoteSignature) =>
    keys.some(({ name, keyId }) => name === line.name && Buffer.from(keyId).equals(line.keyId));
  return { kind: 'cosigned', signatures: lines.filter(own), at: first.at };
}

async function post(
  url: string,
  body: string,
): Promise<{ readonly status: number; readonly text: string } | string> {
  try {
    const response = await fetch(url, {
      method: 'POST',
      body,
      headers: { 'content-type': 'text/plain; charset=utf-8' },
      redirect: 'error',
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    return { status: response.status, text: await shortText(response, MOST_BYTES) };
  } catch (cause) {
    if (!(cause instanceof Error)) throw cause;
    if (cause.name === 'TimeoutError') return w`it did not answer in time`;
    const under =
      cause.cause instanceof Error && 'code' in cause.cause ? ` (${String(cause.cause.code)})` : '';
    return w`it cannot be reached${under}`;
  }
}

/** What was answered; empty where it is longer than anything that is expected, and then no more of it is read. */
export async function shortText({ body }: Response, mostBytes: number): Promise<string> {
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of body ?? []) {
    size += part.length;
    if (size > mostBytes) return '';
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}

/** The checkpoint with these cosignatures as well; a new one by a key takes the place of the old one. */
export function withCosignatures(note: string, added: readonly NoteSignature[]): string {
  const read = readCheckpoint(note, 'checkpoint');
  if (!read.ok) throw new Error('a checkpoint of the station cannot be read');
  const { text, signatures } = read.value;
  const isNew = (old: NoteSignature) =>
    !added.some(({ name, keyId }) => name === old.name && Buffer.from(keyId).equals(old.keyId));
  return noteText({ text, signatures: [...signatures.filter(isNew), ...added] });
}
