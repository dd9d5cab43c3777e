/**
 * Checkpoints of the station log: its size and root as a signed note (the forms `signed-note` and `tlog-checkpoint` of
 * C2SP, both from memory), so that whoever keeps one can tell later whether anything in front of it was removed or rewritten.
 *
 *     origin ⏎ size ⏎ base64 root ⏎ ⏎ — name base64(key hash ‖ signature) ⏎
 */
import { createHash, type KeyObject, sign, verify } from 'node:crypto';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { importPublicKey, type PublicJwk, publicJwk } from './jwk.ts';

export interface Checkpoint {
  /** Names the log for ever: `plugmark/log/` and the thumbprint of the key that set it up. */
  readonly origin: string;
  readonly size: number;
  readonly root: Buffer;
}

/** A checkpoint as read; its signatures have not been looked at. */
export interface SignedCheckpoint extends Checkpoint {
  /** What the signatures are over. */
  readonly text: string;
  readonly signatures: readonly NoteSignature[];
}

interface NoteSignature {
  readonly name: string;
  readonly keyHash: Buffer;
  readonly signature: Buffer;
}

/** The origin of the log that the key with this thumbprint set up. */
export const originOf = (kid: string) => `plugmark/log/${kid}`;

/** The note of a checkpoint, signed under the name of its log. */
export function signCheckpoint(checkpoint: Checkpoint, key: KeyObject): string {
  const { origin, size, root } = checkpoint;
  const text = `${origin}\n${size}\n${root.toString('base64')}\n`;
  const signature = sign(null, Buffer.from(text), key);
  const blob = Buffer.concat([keyHash(origin, publicJwk(key)), signature]);
  return `${text}\n— ${origin} ${blob.toString('base64')}\n`;
}

/** Whether one of the note's signatures is by this key, under the name of the log. Signatures of others are left alone. */
export function checkpointHolds({ text, origin, signatures }: SignedCheckpoint, key: PublicJwk): boolean {
  const hash = keyHash(origin, key);
  return signatures.some(
    ({ name, keyHash, signature }) =>
      name === origin &&
      keyHash.equals(hash) &&
      verify(null, Buffer.from(text), importPublicKey(key), signature),
  );
}

/** Reads a note. Problem: `checkpoint-form`, which says what a checkpoint looks like. */
export function readCheckpoint(note: string, where: string): Result<SignedCheckpoint> {
  const [, text = '', origin = '', size = '', root64 = '', lines = ''] = NOTE.exec(note) ?? [];
  const root = fromBase64(root64);
  const signatures = lines.split('\n').slice(0, -1).map(readSignature);
  if (root?.length !== 32 || !Number.isSafeInteger(Number(size)) || signatures.includes(null))
    return err(notACheckpoint(where));
  const whole = signatures.flatMap((one) => (one === null ? [] : [one]));
  return ok({ text, origin, size: Number(size), root, signatures: whole });
}

/** Bounds keep a hostile file cheap; extension lines, which the form allows, are not used here. */
const NOTE =
  /^(([^\s+]{1,200})\n(0|[1-9]\d{0,15})\n([A-Za-z0-9+/]{43}=)\n)\n((?:— [^\s+]{1,200} [A-Za-z0-9+/=]{1,400}\n){1,16})$/u;

function readSignature(line: string): NoteSignature | null {
  const [, name = '', blob = ''] = line.split(' ');
  const bytes = fromBase64(blob);
  if (bytes === null || bytes.length < 5) return null;
  return { name, keyHash: bytes.subarray(0, 4), signature: bytes.subarray(4) };
}

/** First four bytes of SHA-256(name ⏎ 0x01 public key), 0x01 standing for Ed25519. */
export function keyHash(name: string, { x }: PublicJwk): Buffer {
  const key = Buffer.from(x, 'base64url');
  return createHash('sha256').update(`${name}\n`).update(Buffer.of(0x01)).update(key).digest().subarray(0, 4);
}

function fromBase64(text: string): Buffer | null {
  const bytes = Buffer.from(text, 'base64');
  return bytes.toString('base64') === text ? bytes : null;
}

function notACheckpoint(where: string): Problem {
  return {
    code: 'checkpoint-form',
    where,
    message:
      'this is not a checkpoint: expected the lines origin, size and root, an empty line, and one that begins with a dash',
    next: 'Name the file that "plugmark log checkpoint" wrote, unchanged.',
  };
}
