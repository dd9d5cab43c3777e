/** Ed25519 (RFC 8032). */
import { createPublicKey, type KeyObject, sign as signBytes, verify } from 'node:crypto';
import { toBase64url } from './bytes.ts';

/** A key that never leaves the device that made it. */
export interface HardwareKey {
  /** 32 bytes. */
  readonly publicKey: Uint8Array;
  readonly sign: (message: Uint8Array) => Uint8Array;
}

/** What signs; it never leaves its file and this program, or its device. */
export type PrivateKey = KeyObject | HardwareKey;

/** Whether the key, 32 bytes, signed the message. Which keys are good is decided where they are read (jwk.ts). */
export function holds(publicKey: Uint8Array, message: Uint8Array, signature: Uint8Array): boolean {
  const jwk = { kty: 'OKP', crv: 'Ed25519', x: toBase64url(publicKey) };
  return verify(null, message, createPublicKey({ key: jwk, format: 'jwk' }), signature);
}

/** Throws where a device answers with something else than a signature by its key. */
export function sign(message: Uint8Array, key: PrivateKey): Uint8Array {
  if (!('sign' in key)) return signBytes(null, message, key);
  const signature = key.sign(message);
  if (!holds(key.publicKey, message, signature)) throw new Error('the device did not sign');
  return signature;
}

/** The public half as a JSON Web Key, whatever kind of key it is. */
export function publicHalf(key: PrivateKey): {
  readonly kty: unknown;
  readonly crv: unknown;
  readonly x: unknown;
} {
  if ('sign' in key) return { kty: 'OKP', crv: 'Ed25519', x: toBase64url(key.publicKey) };
  const { kty, crv, x } = (key.type === 'private' ? createPublicKey(key) : key).export({ format: 'jwk' });
  return { kty, crv, x };
}
