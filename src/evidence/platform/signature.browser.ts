/**
 * The same as signature.ts in a browser, where a signature holds only if two say so: @noble/curves at once, and WebCrypto
 * when {@link agreed} asks it. Neither alone is as strict as OpenSSL: WebKit's lets a changed signature pass.
 */
import { ed25519 } from '@noble/curves/ed25519.js';

export type PrivateKey = never;

interface Held {
  readonly publicKey: Uint8Array<ArrayBuffer>;
  readonly message: Uint8Array<ArrayBuffer>;
  readonly signature: Uint8Array<ArrayBuffer>;
}

/** What noble said yes to since WebCrypto was last asked. */
let held: Held[] = [];
/** What WebCrypto said no to. */
const denied: Held[] = [];

export function holds(publicKey: Uint8Array, message: Uint8Array, signature: Uint8Array): boolean {
  const one = { publicKey, message, signature };
  if (denied.some((other) => isSame(other, one)) || !nobleHolds(one)) return false;
  // The message may lie in memory that is used again.
  held.push({
    publicKey: Uint8Array.from(publicKey),
    message: Uint8Array.from(message),
    signature: Uint8Array.from(signature),
  });
  return true;
}

function nobleHolds({ publicKey, message, signature }: { [name in keyof Held]: Uint8Array }): boolean {
  try {
    return ed25519.verify(signature, message, publicKey, { zip215: false });
  } catch {
    return false;
  }
}

const isSame = (one: Held, other: { [name in keyof Held]: Uint8Array }): boolean =>
  equal(one.signature, other.signature) &&
  equal(one.publicKey, other.publicKey) &&
  equal(one.message, other.message);

const equal = (one: Uint8Array, other: Uint8Array): boolean =>
  one.length === other.length && one.every((byte, i) => byte === other[i]);

/** A browser that cannot check such a signature itself. */
export class NoSecondOpinion extends Error {}

/** The answer of `verify`, given again for as long as WebCrypto denies a signature that it rests on. */
export async function agreed<T>(verify: () => T | Promise<T>): Promise<T> {
  for (;;) {
    held = [];
    const answer = await verify();
    const asked = held;
    const opinions = await Promise.all(asked.map(webCryptoHolds));
    const others = asked.filter((_, i) => opinions[i] === false);
    if (others.length === 0) return answer;
    denied.push(...others);
  }
}

async function webCryptoHolds({ publicKey, message, signature }: Held): Promise<boolean> {
  try {
    const key = await crypto.subtle.importKey('raw', publicKey, 'Ed25519', false, ['verify']);
    return await crypto.subtle.verify('Ed25519', key, signature, message);
  } catch (cause) {
    // Any other fault is of the key or the signature.
    if (cause instanceof DOMException && cause.name !== 'NotSupportedError') return false;
    throw new NoSecondOpinion('this browser cannot check Ed25519 signatures', { cause });
  }
}

const notHere = (): never => {
  throw new Error('nothing is signed in a browser');
};
export const sign = (_message: Uint8Array, _key: PrivateKey): Uint8Array => notHere();
export const publicHalf = (
  _key: PrivateKey,
): { readonly kty: unknown; readonly crv: unknown; readonly x: unknown } => notHere();
