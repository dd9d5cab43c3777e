/**
 * Verifier keys as C2SP writes them (signed-note): a name, the key ID in hex, and in base64 a byte for the kind of signature
 * with the public key behind it. `plugmark log vkey` and `plugmark witness init` print them, policies hold them.
 */
import { type PublicJwk, publicJwkSchema } from './jwk.ts';
import { keyIdOf } from './note.ts';
import { fromBase64, toBase64, toBase64url, toHex } from './platform/bytes.ts';

/** What the byte in front of the key stands for: a log's own signature, and the two kinds of cosignature. */
const TYPES = { log: 0x01, 'ed25519-cosignature': 0x04, 'ml-dsa-44-cosignature': 0x06 } as const;

/** A log, which signs its own checkpoints. */
export interface LogKey {
  readonly kind: 'log';
  readonly name: string;
  readonly jwk: PublicJwk;
  readonly keyId: Uint8Array;
}

/** A witness, which cosigns those of others. */
export type WitnessKey = { readonly name: string; readonly keyId: Uint8Array } & (
  | { readonly kind: 'ed25519-cosignature'; readonly jwk: PublicJwk }
  | { readonly kind: 'ml-dsa-44-cosignature'; readonly key: Uint8Array }
);

export type VerifierKey = LogKey | WitnessKey;

const FORM = /^([^\p{White_Space}\p{Cc}+]{1,200})\+([0-9a-f]{8})\+([A-Za-z0-9+/]+={0,2})$/u;
const ML_DSA_44_BYTES = 1312;

/** Null for anything else, and for a key of a kind that nothing here checks signatures by. */
export function readVerifierKey(text: string): VerifierKey | null {
  const [, name = '', id = '', encoded = ''] = FORM.exec(text) ?? [];
  const bytes = fromBase64(encoded);
  if (name === '' || bytes === null || bytes.length < 2) return null;
  const [type = 0] = bytes;
  const key = bytes.subarray(1);
  const keyId = keyIdOf(name, type, key);
  if (toHex(keyId) !== id) return null;
  if (type === TYPES['ml-dsa-44-cosignature'])
    return key.length === ML_DSA_44_BYTES ? { kind: 'ml-dsa-44-cosignature', name, keyId, key } : null;
  const jwk = publicJwkSchema.safeParse({ kty: 'OKP', crv: 'Ed25519', x: toBase64url(key) });
  if (!jwk.success) return null;
  if (type === TYPES.log) return { kind: 'log', name, keyId, jwk: jwk.data };
  return type === TYPES['ed25519-cosignature']
    ? { kind: 'ed25519-cosignature', name, keyId, jwk: jwk.data }
    : null;
}

/** The verifier key of a witness, from its public key. */
export function witnessVerifierKey(name: string, kind: WitnessKey['kind'], key: Uint8Array): string {
  const type = TYPES[kind];
  const encoded = toBase64(Uint8Array.of(type, ...key));
  return `${name}+${toHex(keyIdOf(name, type, key))}+${encoded}`;
}
