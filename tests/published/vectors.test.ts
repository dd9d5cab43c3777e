/**
 * Sources, each under the Apache License 2.0, read and kept in vectors/ without what is not needed: Wycheproof
 * (github.com/C2SP/wycheproof, testvectors_v1/ed25519_test.json); the proofs of github.com/transparency-dev/merkle (testdata,
 * RFC 6962 and 9162); the edge cases of "Taming the many EdDSAs" (github.com/novifinancial/ed25519-speccheck).
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { publicJwkSchema } from '../../src/evidence/jwk.ts';
import { signatureHolds } from '../../src/evidence/jws.ts';
import { consistencyHolds, inclusionHolds } from '../../src/evidence/merkle.ts';

const vectors = <T extends z.ZodType>(name: string, schema: T): z.infer<T> =>
  schema.parse(JSON.parse(readFileSync(new URL(`vectors/${name}.json`, import.meta.url), 'utf8')));

/** Whether plugmark takes the key, and then the signature by it. */
function taken(key: string, message: string, signature: string): 'no key' | boolean {
  const x = Buffer.from(key, 'hex').toString('base64url');
  const jwk = publicJwkSchema.safeParse({ kty: 'OKP', crv: 'Ed25519', x });
  if (!jwk.success) return 'no key';
  const mark = Buffer.from(signature, 'hex').toString('base64url');
  return signatureHolds(Buffer.from(message, 'hex'), mark, jwk.data);
}

describe('Ed25519', () => {
  const wycheproof = vectors(
    'wycheproof-ed25519',
    z.array(
      z.object({
        tcId: z.int(),
        comment: z.string(),
        pk: z.string(),
        msg: z.string(),
        sig: z.string(),
        result: z.enum(['valid', 'invalid']),
      }),
    ),
  );

  it('all 151 signatures of Wycheproof come out as they should', () => {
    expect(wycheproof).toHaveLength(151);
    const parted = wycheproof.filter(
      ({ pk, msg, sig, result }) => taken(pk, msg, sig) !== (result === 'valid'),
    );
    expect(parted).toEqual([]);
  });

  it('of twelve edge cases the keys of small order are refused, and of the others all that two verifiers could disagree about but one', () => {
    const cases = vectors(
      'ed25519-speccheck',
      z.array(z.object({ message: z.string(), pub_key: z.string(), signature: z.string() })),
    );
    // Number 3 has a key and a point of mixed order, and fulfils the equation with and without the cofactor.
    expect(cases.map(({ pub_key, message, signature }) => taken(pub_key, message, signature))).toEqual([
      'no key',
      'no key',
      false,
      true,
      false,
      false,
      false,
      false,
      false,
      false,
      'no key',
      'no key',
    ]);
  });
});

describe('proofs of the reference implementation', () => {
  const hash = z.string().transform((text) => Buffer.from(text, 'base64'));
  const proof = z
    .array(hash)
    .nullable()
    .transform((some) => some ?? []);
  const proofs = vectors(
    'merkle-proofs',
    z.object({
      inclusion: z.array(
        z.object({
          leafIdx: z.number(),
          treeSize: z.number(),
          root: hash,
          leafHash: hash,
          proof,
          desc: z.string(),
          wantErr: z.boolean(),
        }),
      ),
      consistency: z.array(
        z.object({
          size1: z.number(),
          size2: z.number(),
          root1: hash,
          root2: hash,
          proof,
          desc: z.string(),
          wantErr: z.boolean(),
        }),
      ),
    }),
  );

  it('of inclusion: all 98 come out as they should', () => {
    expect(proofs.inclusion).toHaveLength(98);
    const parted = proofs.inclusion.filter(
      ({ leafIdx: index, treeSize: size, root, leafHash, proof: path, wantErr }) =>
        inclusionHolds(leafHash, { index, size, path, root }) === wantErr,
    );
    expect(parted.map(({ desc }) => desc)).toEqual([]);
  });

  it('of consistency: all 98 come out as they should', () => {
    expect(proofs.consistency).toHaveLength(98);
    const parted = proofs.consistency.filter(
      ({ size1, size2, root1, root2, proof: path, wantErr }) =>
        consistencyHolds({ size: size1, root: root1 }, { size: size2, root: root2 }, path) === wantErr,
    );
    expect(parted.map(({ desc }) => desc)).toEqual([]);
  });
});
