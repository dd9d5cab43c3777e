/**
 * What a log says to a witness and what the witness answers (c2sp.org/tlog-witness, add-checkpoint). Pure: where a witness
 * keeps the newest checkpoint of each log, and that nobody else writes meanwhile, is for whoever calls.
 */
import { type Checkpoint, isSignedBy, readCheckpoint, type SignedCheckpoint } from './checkpoint.ts';
import type { PublicJwk } from './jwk.ts';
import { consistencyHolds, treeOf, treeRoot } from './merkle.ts';
import { fromBase64, toBase64 } from './platform/bytes.ts';

/** A new checkpoint, and what proves that it goes on from the one of `oldSize` entries. */
export interface AddCheckpoint {
  readonly oldSize: number;
  readonly proof: readonly Uint8Array[];
  readonly checkpoint: SignedCheckpoint;
}

const MAX_PROOF = 63;
/** The longest note, with the longest proof in front of it. */
export const MAX_REQUEST_BYTES = 140_000;

/** The body of a request. */
export const addCheckpointText = (oldSize: number, proof: readonly Uint8Array[], note: string): string =>
  [`old ${oldSize}`, ...proof.map(toBase64), '', note].join('\n');

/** Null for what is no such body. */
export function readAddCheckpoint(body: string): AddCheckpoint | null {
  const end = body.indexOf('\n\n');
  const [old = '', ...hashes] = body.slice(0, Math.max(end, 0)).split('\n');
  const [, size] = /^old (0|[1-9]\d{0,15})$/.exec(old) ?? [];
  const proof = hashes.map(fromBase64).filter((hash) => hash?.length === 32);
  const checkpoint = readCheckpoint(body.slice(end + 2), 'request');
  if (size === undefined || !Number.isSafeInteger(Number(size)) || !checkpoint.ok) return null;
  if (hashes.length > MAX_PROOF || proof.length < hashes.length) return null;
  return {
    oldSize: Number(size),
    proof: proof.filter((hash) => hash !== null),
    checkpoint: checkpoint.value,
  };
}

/**
 * What the witness does: cosign (200), or refuse. `fork`: a key of the log signed two histories, and both notes are to be
 * kept, for they prove it.
 */
export type WitnessAnswer =
  | { readonly status: 200 }
  | { readonly status: 400 | 403 | 404; readonly why: string }
  | { readonly status: 409; readonly size: number }
  | { readonly status: 422; readonly why: string; readonly fork: boolean };

const EMPTY: Checkpoint = { origin: '', size: 0, root: treeRoot(treeOf([]), 0) };

/** The one key that signs the log now, if it signed the checkpoint; else the refusal. The keys before it count no more. */
export function signerIn(
  { checkpoint }: AddCheckpoint,
  key: PublicJwk | null,
): PublicJwk | Extract<WitnessAnswer, { readonly why: string }> {
  if (key === null) return { status: 404, why: 'this witness does not know the log' };
  return isSignedBy(checkpoint, [key])
    ? key
    : { status: 403, why: 'the key that this witness has for the log did not sign the checkpoint' };
}

/** The answer to a checkpoint that the log signed; `newest` is the one that the witness cosigned last. */
export function answerTo(
  { oldSize, proof, checkpoint }: AddCheckpoint,
  newest: Checkpoint | null,
): WitnessAnswer {
  const { size } = checkpoint;
  const last = newest ?? EMPTY;
  if (oldSize > size) return { status: 400, why: 'the old size is larger than the checkpoint' };
  if (oldSize !== last.size) return { status: 409, size: last.size };
  if (consistencyHolds(last, checkpoint, proof)) return { status: 200 };
  const fork = size === last.size && toBase64(checkpoint.root) !== toBase64(last.root);
  const why = fork
    ? 'the witness has another log of this size'
    : 'the proof does not show that the log goes on from the one that the witness has';
  return { status: 422, why, fork };
}

/** What a witness writes down of a checkpoint before it answers; the note has its log's signatures, and its own. */
export type KeptByWitness =
  | { readonly as: 'newest'; readonly checkpoint: Checkpoint; readonly note: string; readonly at: string }
  | { readonly as: 'fork'; readonly note: string; readonly at: string };

/** A decision on the newest checkpoint of a log, to be made while nobody else writes. */
export interface Deciding<T> {
  readonly origin: string;
  readonly decide: (newest: Checkpoint | null) => { readonly answer: T; readonly keep: KeptByWitness | null };
}
