/** Ed25519 keys as JSON Web Keys (RFC 8037) and their names (RFC 7638). */
import { createHash, createPublicKey, type KeyObject } from 'node:crypto';
import { z } from 'zod';
import { fromBase64url } from './base64url.ts';
import { canonicalBytes } from './canonical.ts';

/** 32 bytes in base64url: the public key itself. */
const publicBytes = z
  .string()
  .refine((x) => fromBase64url(x)?.length === 32, 'expected an Ed25519 public key: 32 bytes in base64url');

/** A public key; a private member (`d`) is refused, so that nobody hands out a secret by mistake. */
export const publicJwkSchema = z.strictObject({
  kty: z.literal('OKP'),
  crv: z.literal('Ed25519'),
  x: publicBytes.describe('The public key: 32 bytes in base64url.'),
});
export type PublicJwk = z.infer<typeof publicJwkSchema>;

/** The key's name everywhere: SHA-256 over its required members in canonical form, base64url (RFC 7638, 3). */
export function thumbprint({ kty, crv, x }: PublicJwk): string {
  return createHash('sha256').update(canonicalBytes({ kty, crv, x })).digest('base64url');
}

export function importPublicKey({ kty, crv, x }: PublicJwk): KeyObject {
  return createPublicKey({ key: { kty, crv, x }, format: 'jwk' });
}

/** The public half of a private or public Ed25519 key. Throws for any other kind of key. */
export function publicJwk(key: KeyObject): PublicJwk {
  const { kty, crv, x } = (key.type === 'private' ? createPublicKey(key) : key).export({ format: 'jwk' });
  return publicJwkSchema.parse({ kty, crv, x });
}
