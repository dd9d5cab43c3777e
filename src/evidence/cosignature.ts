/**
 * Cosignatures of witnesses (c2sp.org/tlog-cosignature): a witness signs, with the time, that it has seen no other history
 * of a log than the one that this checkpoint goes on from. They are lines of the checkpoint's note, beside the log's own.
 */
import type { SignedCheckpoint } from './checkpoint.ts';
import { keyBytes } from './jwk.ts';
import { type NoteSignature, signatureLine } from './note.ts';
import { isSame, joined, utf8 } from './platform/bytes.ts';
import { mlDsaHolds } from './platform/mldsa.ts';
import { holds as ed25519Holds } from './platform/signature.ts';
import type { WitnessKey } from './verifier-key.ts';

/** A witness about to sign: its public key, and what signs with the private one. */
export interface CosigningKey {
  readonly key: WitnessKey;
  readonly sign: (message: Uint8Array) => Uint8Array;
}

/** What a witness signed, and when by its own clock. */
export interface Cosignature {
  readonly key: WitnessKey;
  /** ISO. */
  readonly at: string;
}

const TIME_BYTES = 8;
/** No date of JavaScript is later. */
const LATEST_S = 8_640_000_000_000n;

/** The line that this key puts under the checkpoint. */
export function cosignatureLine(
  checkpoint: SignedCheckpoint,
  { key, sign }: CosigningKey,
  atS: number,
): string {
  const time = u64(BigInt(atS));
  const signature = joined(time, sign(cosignedBytes(checkpoint, key, BigInt(atS))));
  return signatureLine({ name: key.name, keyId: key.keyId, signature });
}

/**
 * Those of these keys that cosigned, each with its time. Null where a line of one of them does not hold, for then the note is
 * not what somebody signed (signed-note); lines of others are left alone.
 */
export function cosignaturesOn(
  checkpoint: SignedCheckpoint,
  keys: readonly WitnessKey[],
): readonly Cosignature[] | null {
  const cosignatures: Cosignature[] = [];
  for (const key of keys)
    for (const line of checkpoint.signatures) {
      if (line.name !== key.name || !isSame(line.keyId, key.keyId)) continue;
      const at = cosignedAt(checkpoint, key, line);
      if (at === null) return null;
      cosignatures.push({ key, at });
    }
  return cosignatures;
}

function cosignedAt(
  checkpoint: SignedCheckpoint,
  key: WitnessKey,
  { signature }: NoteSignature,
): string | null {
  if (signature.length < TIME_BYTES) return null;
  const time = new DataView(signature.buffer, signature.byteOffset, TIME_BYTES).getBigUint64(0);
  if (time === 0n || time > LATEST_S) return null;
  const message = cosignedBytes(checkpoint, key, time);
  return holds(key, message, signature.subarray(TIME_BYTES))
    ? new Date(Number(time) * 1000).toISOString()
    : null;
}

function holds(key: WitnessKey, message: Uint8Array, signature: Uint8Array): boolean {
  switch (key.kind) {
    case 'ed25519-cosignature':
      return ed25519Holds(keyBytes(key.jwk), message, signature);
    case 'ml-dsa-44-cosignature':
      return mlDsaHolds(key.key, message, signature);
  }
}

/** What is signed: for Ed25519 a head and the text of the note, for ML-DSA-44 a structure with the name of the witness. */
function cosignedBytes(checkpoint: SignedCheckpoint, key: WitnessKey, timeS: bigint): Uint8Array {
  if (key.kind === 'ed25519-cosignature') return utf8(`cosignature/v1\ntime ${timeS}\n${checkpoint.text}`);
  return joined(
    utf8('subtree/v1\n\0'),
    shortText(key.name),
    u64(timeS),
    shortText(checkpoint.origin),
    u64(0n),
    u64(BigInt(checkpoint.size)),
    checkpoint.root,
  );
}

/** A text of at most 255 bytes behind its length (RFC 8446, 3.4). */
function shortText(text: string): Uint8Array {
  const bytes = utf8(text);
  if (bytes.length > 255) throw new RangeError('a name in a cosignature has at most 255 bytes');
  return joined(Uint8Array.of(bytes.length), bytes);
}

function u64(value: bigint): Uint8Array {
  const bytes = new Uint8Array(8);
  new DataView(bytes.buffer).setBigUint64(0, value);
  return bytes;
}
