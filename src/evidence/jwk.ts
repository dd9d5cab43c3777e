/** Ed25519 keys as JSON Web Keys (RFC 8037) and their names (RFC 7638). */
import { z } from 'zod';
import { canonicalBytes } from './canonical.ts';
import { fromBase64url, toBase64url, toHex } from './platform/bytes.ts';
import { sha256 } from './platform/hash.ts';
import { type PrivateKey, publicHalf } from './platform/signature.ts';

const FIELD = 2n ** 255n - 19n;
const ORDER_EIGHT = 0x05fc536d880238b13933c6d305acdfd5f098eff289f4c345b027b2c28f95e826n;
/** y of the points of small order, under which anybody can sign. */
const SMALL_ORDER: ReadonlySet<bigint> = new Set([0n, 1n, FIELD - 1n, ORDER_EIGHT, FIELD - ORDER_EIGHT]);

/** Little-endian, the top bit being the sign of x. */
const yOf = (key: Uint8Array) => BigInt(`0x${toHex(key.toReversed())}`) & (2n ** 255n - 1n);

/** 32 bytes in base64url: the public key itself, in the one writing of a point that can be somebody's key. */
const publicBytes = z
  .string()
  .refine((x) => fromBase64url(x)?.length === 32, 'expected an Ed25519 public key: 32 bytes in base64url')
  .refine((x) => {
    const key = fromBase64url(x);
    if (key?.length !== 32) return true;
    const y = yOf(key);
    return y < FIELD && !SMALL_ORDER.has(y);
  }, "a point of small order or in another writing is nobody's key");

/** A public key; a private member (`d`) is refused, so that nobody hands out a secret by mistake. */
export const publicJwkSchema = z.strictObject({
  kty: z.literal('OKP'),
  crv: z.literal('Ed25519'),
  x: publicBytes.describe('The public key: 32 bytes in base64url.'),
});
export type PublicJwk = z.infer<typeof publicJwkSchema>;

/** The key's name everywhere: SHA-256 over its required members in canonical form, base64url (RFC 7638, 3). */
export function thumbprint({ kty, crv, x }: PublicJwk): string {
  return toBase64url(sha256(canonicalBytes({ kty, crv, x })));
}

/** The 32 bytes of the key. */
export function keyBytes({ x }: PublicJwk): Uint8Array {
  const bytes = fromBase64url(x);
  if (bytes === null) throw new Error('a public key is 32 bytes in base64url');
  return bytes;
}

/** The public half of a private or public Ed25519 key. Throws for any other kind of key. */
export const publicJwk = (key: PrivateKey): PublicJwk => publicJwkSchema.parse(publicHalf(key));
