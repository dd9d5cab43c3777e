/** Bytes and their writings. What decodes is strict: null for any text that is not the one writing of its bytes. */
import { isUtf8 } from 'node:buffer';

export { isUtf8 };

const view = (bytes: Uint8Array): Buffer => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);

export const utf8 = (text: string): Uint8Array => Buffer.from(text, 'utf8');

/** A byte order mark is kept, and what is not UTF-8 is replaced. */
export const fromUtf8 = (bytes: Uint8Array): string => view(bytes).toString('utf8');

export const toHex = (bytes: Uint8Array): string => view(bytes).toString('hex');

export const toBase64 = (bytes: Uint8Array): string => view(bytes).toString('base64');

export function fromBase64(text: string): Uint8Array | null {
  const bytes = Buffer.from(text, 'base64');
  return bytes.toString('base64') === text ? bytes : null;
}

/** As JOSE wants it (RFC 7515, 2): no padding, no white space, unused last bits zero. */
export const toBase64url = (bytes: Uint8Array | string): string => Buffer.from(bytes).toString('base64url');

export function fromBase64url(text: string): Uint8Array | null {
  const bytes = Buffer.from(text, 'base64url');
  return bytes.toString('base64url') === text ? bytes : null;
}

export const joined = (...parts: readonly Uint8Array[]): Uint8Array => Buffer.concat(parts);

export const isSame = (one: Uint8Array, other: Uint8Array): boolean => Buffer.compare(one, other) === 0;
