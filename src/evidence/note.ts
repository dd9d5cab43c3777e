/** Signed notes as C2SP has them (c2sp.org/signed-note): a text, an empty line, and a line for each signature. */
import { keyBytes, type PublicJwk, publicJwk } from './jwk.ts';
import { fromBase64, fromUtf8, isSame, isUtf8, joined, toBase64, toHex, utf8 } from './platform/bytes.ts';
import { sha256 } from './platform/hash.ts';
import { holds, type PrivateKey, sign } from './platform/signature.ts';

export interface NoteSignature {
  readonly name: string;
  readonly keyId: Uint8Array;
  readonly signature: Uint8Array;
}

/** A note as read; its signatures have not been looked at. */
export interface Note {
  /** What the signatures are over, its last line feed with it. */
  readonly text: string;
  readonly signatures: readonly NoteSignature[];
}

/** Room for 16 signatures of 5 kB, which every reader has to take. */
const MAX_NOTE_CHARACTERS = 128_000;
const MAX_SIGNATURES = 64;

/** Names hold no space of any script and no plus. */
const SIGNATURE = /^— ([^\p{White_Space}+]+) ([A-Za-z0-9+/]+={0,2})$/u;

const LINE_FEED = 0x0a;
const SPACE = 0x20;

/** Reads a note, as a text or as the bytes of a file; null for anything else. */
export function readNote(note: string | Uint8Array): Note | null {
  if (typeof note !== 'string') return isUtf8(note) ? readNote(fromUtf8(note)) : null;
  // The text may have empty lines of its own: it ends at the last one.
  const end = note.lastIndexOf('\n\n');
  if (note.length > MAX_NOTE_CHARACTERS || hasControls(note) || end < 0 || !note.endsWith('\n')) return null;
  const lines = note
    .slice(end + 2)
    .split('\n', MAX_SIGNATURES + 2)
    .slice(0, -1);
  const signatures = lines.map(readSignature);
  const whole = signatures.filter((one) => one !== null);
  return lines.length === 0 || lines.length > MAX_SIGNATURES || whole.length < signatures.length
    ? null
    : { text: note.slice(0, end + 1), signatures: whole };
}

function hasControls(note: string): boolean {
  if (/\p{Surrogate}/u.test(note)) return true;
  for (let i = 0; i < note.length; i++) {
    const unit = note.charCodeAt(i);
    if (unit < SPACE && unit !== LINE_FEED) return true;
  }
  return false;
}

function readSignature(line: string): NoteSignature | null {
  const [, name = '', blob = ''] = SIGNATURE.exec(line) ?? [];
  const bytes = fromBase64(blob);
  if (name === '' || bytes === null || bytes.length < 5) return null;
  return { name, keyId: bytes.subarray(0, 4), signature: bytes.subarray(4) };
}

/** The note as it was read. */
export const noteText = ({ text, signatures }: Note): string =>
  `${text}\n${signatures.map(signatureLine).join('')}`;

const signatureLine = ({ name, keyId, signature }: NoteSignature) =>
  `— ${name} ${toBase64(joined(keyId, signature))}\n`;

/** The text, signed under this name. */
export function signNote(text: string, name: string, key: PrivateKey): string {
  const signature = sign(utf8(text), key);
  return noteText({ text, signatures: [{ name, keyId: keyId(name, publicJwk(key)), signature }] });
}

/**
 * Those of the keys that signed the note under this name: none where a signature of one of them does not hold, for then the
 * note is not what somebody signed. Signatures of others are left alone.
 */
export function signersOf(
  { text, signatures }: Note,
  name: string,
  keys: readonly PublicJwk[],
): readonly PublicJwk[] {
  const signers: PublicJwk[] = [];
  for (const key of keys) {
    const id = keyId(name, key);
    const own = signatures.filter((one) => one.name === name && isSame(one.keyId, id));
    if (own.some(({ signature }) => !holds(keyBytes(key), utf8(text), signature))) return [];
    if (own.length > 0) signers.push(key);
  }
  return signers;
}

/** The byte that stands for Ed25519 (signed-note, signature types). */
const ED25519 = Uint8Array.of(0x01);

/** First four bytes of SHA-256(name ⏎ 0x01 public key). */
export const keyId = (name: string, jwk: PublicJwk): Uint8Array =>
  sha256(joined(utf8(`${name}\n`), ED25519, keyBytes(jwk))).subarray(0, 4);

/** The key as programs for notes take it: name, key ID in hex, and 0x01 with the key in base64. */
export function verifierKey(name: string, jwk: PublicJwk): string {
  return `${name}+${toHex(keyId(name, jwk))}+${toBase64(joined(ED25519, keyBytes(jwk)))}`;
}
