/** Ed25519 (RFC 8032). */
import { createPublicKey, type KeyObject, sign as signBytes, verify } from 'node:crypto';
import { toBase64url } from './bytes.ts';

/** What signs; it never leaves its file and this program. */
export type PrivateKey = KeyObject;

/** Whether the key, 32 bytes, signed the message. Which keys are good is decided where they are read (jwk.ts). */
export function holds(publicKey: Uint8Array, message: Uint8Array, signature: Uint8Array): boolean {
  const jwk = { kty: 'OKP', crv: 'Ed25519', x: toBase64url(publicKey) };
  return verify(null, message, createPublicKey({ key: jwk, format: 'jwk' }), signature);
}

export const sign = (message: Uint8Array, key: PrivateKey): Uint8Array => signBytes(null, message, key);

/** The public half as a JSON Web Key, whatever kind of key it is. */
export function publicHalf(key: PrivateKey): {
  readonly kty: unknown;
  readonly crv: unknown;
  readonly x: unknown;
} {
  const { kty, crv, x } = (key.type === 'private' ? createPublicKey(key) : key).export({ format: 'jwk' });
  return { kty, crv, x };
}
