/**
 * Checkpoints of a log: its size and root as a signed note (c2sp.org/tlog-checkpoint), so that whoever keeps one can tell
 * later whether anything in front of it was removed or rewritten.
 *
 *     origin ⏎ size ⏎ base64 root ⏎ ⏎ — name base64(key ID ‖ signature) ⏎
 */
import { type Problem, spokenProblem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { sentence } from '../words/catalogue.ts';
import type { PublicJwk } from './jwk.ts';
import { type Note, readNote, signersOf, signNote } from './note.ts';
import { fromBase64, toBase64 } from './platform/bytes.ts';
import type { PrivateKey } from './platform/signature.ts';

export interface Checkpoint {
  /** Names the log for ever: `plugmark/log/` or the shop's domain, and the thumbprint of the key that set it up. */
  readonly origin: string;
  readonly size: number;
  readonly root: Uint8Array;
}

/** A checkpoint as read; its signatures have not been looked at. */
export interface SignedCheckpoint extends Checkpoint, Note {}

/** The origin of the log that the key with this thumbprint set up; it begins with the shop's own domain, where it has one. */
export const originOf = (kid: string, domain?: string) =>
  domain === undefined ? `plugmark/log/${kid}` : `${domain}/log/${kid}`;

/** The note of a checkpoint, signed under the name of its log. */
export const signCheckpoint = ({ origin, size, root }: Checkpoint, key: PrivateKey): string =>
  signNote(`${origin}\n${size}\n${toBase64(root)}\n`, origin, key);

/** Those of the keys that signed it under the name of its log; none where a signature of one of them does not hold. */
export const checkpointSigners = (checkpoint: SignedCheckpoint, keys: readonly PublicJwk[]) =>
  signersOf(checkpoint, checkpoint.origin, keys);

/** Whether one of these keys signed it. */
export const isSignedBy = (checkpoint: SignedCheckpoint, keys: readonly PublicJwk[]): boolean =>
  checkpointSigners(checkpoint, keys).length > 0;

/** Reads a note, as text or as the bytes of a file. Problem: `checkpoint-form`, which says what a checkpoint looks like. */
export function readCheckpoint(note: string | Uint8Array, where: string): Result<SignedCheckpoint> {
  const read = readNote(note);
  // Lines behind the third are extensions of other logs; ours have none.
  const [origin = '', size = '', root64 = '', ...rest] = read?.text.split('\n') ?? [];
  const root = fromBase64(root64);
  const holdsEmpty = [origin, ...rest.slice(0, -1)].includes('');
  const isSize = SIZE.test(size) && Number.isSafeInteger(Number(size));
  if (read === null || holdsEmpty || !isSize || root?.length !== 32) return err(notACheckpoint(where));
  return ok({ ...read, origin, size: Number(size), root });
}

const SIZE = /^(0|[1-9]\d{0,15})$/;

const notACheckpoint = (where: string): Problem =>
  spokenProblem(
    'checkpoint-form',
    where,
    sentence`this is not a checkpoint: expected the lines origin, size and root, an empty line, and one that begins with a dash`,
    sentence`Name the file that "plugmark log checkpoint" wrote, unchanged.`,
  );
