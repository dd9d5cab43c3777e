/**
 * Source: the example in the documentation of golang.org/x/mod/sumdb/note, the first description of the signed notes that
 * C2SP's `signed-note` and `tlog-checkpoint` took over. Key and text are from memory, and the key's published hash comes out
 * right; the signature is what the example's published private key gives. The form of a checkpoint (origin, size, root) is
 * from memory of C2SP, not confirmed.
 */
import { verify } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { importPublicKey } from '../../src/evidence/jwk.ts';
import { keyId } from '../../src/evidence/note.ts';

const KEY = 'PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW';
const TEXT =
  "If you think cryptography is the answer to your problem,\nthen you don't know what your problem is.\n";
const LINE =
  '— PeterNeumann x08go/ZJkuBS9UG/SffcvIAQxVBtiFupLLr8pAcElZInNIuGUgYN1FFYC2pZSNXgKvqfqdngotpRZb6KE6RyyBwJnAM=';

describe('the published signed note', () => {
  const [name = '', hash = '', ...rest] = KEY.split('+');
  const key = Buffer.from(rest.join('+'), 'base64');
  const jwk = { kty: 'OKP', crv: 'Ed25519', x: key.subarray(1).toString('base64url') } as const;
  const blob = Buffer.from(LINE.split(' ')[2] ?? '', 'base64');

  it('has the key hash that ours computes from name and key', () => {
    expect(key[0]).toBe(0x01);
    expect(keyId(name, jwk).toString('hex')).toBe(hash);
    expect(blob.subarray(0, 4).toString('hex')).toBe(hash);
  });

  it('is signed over its text with the line feed at its end', () => {
    expect(verify(null, Buffer.from(TEXT), importPublicKey(jwk), blob.subarray(4))).toBe(true);
    expect(verify(null, Buffer.from(TEXT.trimEnd()), importPublicKey(jwk), blob.subarray(4))).toBe(false);
  });
});
