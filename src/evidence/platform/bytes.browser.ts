/** The same as bytes.ts in a browser. */

const encoder = new TextEncoder();
const strict = new TextDecoder('utf-8', { fatal: true });
const decoder = new TextDecoder('utf-8', { ignoreBOM: true });

export function isUtf8(bytes: Uint8Array): boolean {
  try {
    strict.decode(bytes);
    return true;
  } catch {
    return false;
  }
}

export const utf8 = (text: string): Uint8Array => encoder.encode(text);

export const fromUtf8 = (bytes: Uint8Array): string => decoder.decode(bytes);

export const toHex = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');

/** More arguments than this a browser does not take in one call. */
const AT_ONCE = 0x8000;

export function toBase64(bytes: Uint8Array): string {
  let binary = '';
  for (let i = 0; i < bytes.length; i += AT_ONCE)
    binary += String.fromCharCode(...bytes.subarray(i, i + AT_ONCE));
  return btoa(binary);
}

/** The letters whose last two, or last four, bits are zero: the last one before padding of one sign, or of two. */
const LAST_BEFORE = ['', 'AEIMQUYcgkosw048', 'AQgw'] as const;

export function fromBase64(text: string): Uint8Array | null {
  const padding = text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0;
  if (text.length % 4 !== 0) return null;
  if (padding > 0 && !LAST_BEFORE[padding].includes(text.charAt(text.length - padding - 1))) return null;
  try {
    const binary = atob(text);
    // It passes over white space, which then lacks in the bytes. To write them again and compare takes three times as long.
    if (binary.length !== (text.length / 4) * 3 - padding) return null;
    const bytes = new Uint8Array(binary.length);
    for (let i = 0; i < binary.length; i++) bytes[i] = binary.charCodeAt(i);
    return bytes;
  } catch {
    return null;
  }
}

export const toBase64url = (bytes: Uint8Array | string): string =>
  toBase64(typeof bytes === 'string' ? utf8(bytes) : bytes)
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');

export function fromBase64url(text: string): Uint8Array | null {
  if (!/^[A-Za-z0-9_-]*$/.test(text)) return null;
  const padding = '='.repeat((4 - (text.length % 4)) % 4);
  return fromBase64(text.replaceAll('-', '+').replaceAll('_', '/') + padding);
}

export function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

export const isSame = (one: Uint8Array, other: Uint8Array): boolean =>
  one.length === other.length && one.every((byte, i) => byte === other[i]);
