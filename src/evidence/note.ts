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
  const signatures = readSignatures(note.slice(end + 2));
  return signatures === null ? null : { text: note.slice(0, end + 1), signatures };
}

/** The lines of signatures, at least one and each ended; null for anything else. */
export function readSignatures(text: string): readonly NoteSignature[] | null {
  const lines = text.split('\n', MAX_SIGNATURES + 2);
  if (lines.pop() !== '' || lines.length === 0 || lines.length > MAX_SIGNATURES) return null;
  const signatures = lines.map(readSignature).filter((one) => one !== null);
  return signatures.length < lines.length ? null : signatures;
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

/** One line of a signature, its line feed with it. */
export const signatureLine = ({ name, keyId, signature }: NoteSignature) =>
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
    const own = signaturesOf({ signatures }, name, [key]);
    if (own.some(({ signature }) => !holds(keyBytes(key), utf8(text), signature))) return [];
    if (own.length > 0) signers.push(key);
  }
  return signers;
}

/** The lines that are said to be by these keys, under this name; whether they hold is another matter. */
export function signaturesOf(
  { signatures }: Pick<Note, 'signatures'>,
  name: string,
  keys: readonly PublicJwk[],
): readonly NoteSignature[] {
  const ids = keys.map((key) => keyId(name, key));
  return signatures.filter((one) => one.name === name && ids.some((id) => isSame(id, one.keyId)));
}

/** The byte that stands for Ed25519 (signed-note, signature types). */
const ED25519 = 0x01;

/** First four bytes of SHA-256(name ⏎ 0x01 public key). */
export const keyId = (name: string, jwk: PublicJwk): Uint8Array => keyIdOf(name, ED25519, keyBytes(jwk));

/** First four bytes of SHA-256(name ⏎ signature type, public key). */
export const keyIdOf = (name: string, type: number, key: Uint8Array): Uint8Array =>
  sha256(joined(utf8(`${name}\n`), Uint8Array.of(type), key)).subarray(0, 4);

/** The key as programs for notes take it: name, key ID in hex, and 0x01 with the key in base64. */
export function verifierKey(name: string, jwk: PublicJwk): string {
  const key = toBase64(joined(Uint8Array.of(ED25519), keyBytes(jwk)));
  return `${name}+${toHex(keyId(name, jwk))}+${key}`;
}
