/** ML-DSA-44 by Node's OpenSSL, by @noble/post-quantum and in a browser: the same keys, and signatures hold everywhere. */
import { ml_dsa44 } from '@noble/post-quantum/ml-dsa.js';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { mlDsaHolds as holdsInBrowser } from '../../src/evidence/platform/mldsa.browser.ts';

const crypto = vi.hoisted(() => ({ opensslHasIt: true, signed: 0 }));

/** A Node without ML-DSA refuses to read the key. */
vi.mock('node:crypto', async (original) => {
  const real = await original<typeof import('node:crypto')>();
  const orRefused =
    <A extends unknown[], T>(read: (...given: A) => T) =>
    (...given: A): T => {
      if (!crypto.opensslHasIt) throw new Error('unsupported');
      return read(...given);
    };
  return {
    ...real,
    createPrivateKey: orRefused(real.createPrivateKey),
    createPublicKey: orRefused(real.createPublicKey),
    sign: (...[algorithm, message, key]: Parameters<typeof real.sign>) => {
      crypto.signed++;
      return real.sign(algorithm, message, key);
    },
  };
});

const { mlDsaHolds, mlDsaKeyOf } = await import('../../src/evidence/platform/mldsa.ts');

const SEED = new Uint8Array(32).fill(0xb2);
const MESSAGE = Buffer.from('subtree/v1\n\0and what follows');

afterEach(() => {
  crypto.opensslHasIt = true;
});

/** What signs, with and without OpenSSL. */
const signers = [true, false] as const;

describe('ML-DSA-44', () => {
  it('has one public key for a seed', () => {
    const keys = signers.map((hasIt) => {
      crypto.opensslHasIt = hasIt;
      return Buffer.from(mlDsaKeyOf(SEED).publicKey).toString('hex');
    });
    expect(keys[0]).toBe(keys[1]);
    expect(keys[0]).toBe(Buffer.from(ml_dsa44.keygen(SEED).publicKey).toString('hex'));
  });

  it.each(signers)('signs so that everybody finds that it holds (OpenSSL: %s)', (hasIt) => {
    crypto.opensslHasIt = hasIt;
    const { publicKey, sign } = mlDsaKeyOf(SEED);
    const signature = sign(MESSAGE);
    expect(signature).toHaveLength(2420);
    for (const other of signers) {
      crypto.opensslHasIt = other;
      expect(mlDsaHolds(publicKey, MESSAGE, signature), `OpenSSL: ${other}`).toBe(true);
    }
    expect(holdsInBrowser(publicKey, MESSAGE, signature)).toBe(true);
  });

  it.each(signers)('refuses a changed signature, message, key and length (OpenSSL: %s)', (hasIt) => {
    const { publicKey, sign } = mlDsaKeyOf(SEED);
    const signature = Uint8Array.from(sign(MESSAGE));
    const changed = (bytes: Uint8Array, at: number) => bytes.map((byte, i) => (i === at ? byte ^ 1 : byte));
    const refused: readonly (readonly [Uint8Array, Uint8Array, Uint8Array])[] = [
      ...[0, 31, 32, 1500, 2340, 2419].map((at) => [publicKey, MESSAGE, changed(signature, at)] as const),
      [publicKey, changed(MESSAGE, 0), signature],
      [changed(publicKey, 40), MESSAGE, signature],
      [publicKey, MESSAGE, signature.subarray(1)],
      [publicKey, MESSAGE, Uint8Array.of(...signature, 0)],
      [publicKey, MESSAGE, new Uint8Array(2420)],
    ];
    crypto.opensslHasIt = hasIt;
    for (const [key, message, bytes] of refused) {
      expect(mlDsaHolds(key, message, bytes)).toBe(false);
      expect(holdsInBrowser(key, message, bytes)).toBe(false);
    }
  });

  it('is made by OpenSSL where the running Node has it', () => {
    const isNew = Number(process.versions.openssl.split('.', 2).join('.')) >= 3.5;
    crypto.signed = 0;
    mlDsaKeyOf(SEED).sign(MESSAGE);
    expect(crypto.signed).toBe(isNew ? 1 : 0);
  });
});
