/**
 * Sources: RFC 8037, Appendix A (Ed25519 key as JWK, its thumbprint, signing and checking a JWS). Independent oracle for
 * whole records: the package `jose`, by other people.
 */
import { createPrivateKey } from 'node:crypto';
import { generalVerify, importJWK } from 'jose';
import { describe, expect, it } from 'vitest';
import { canonical } from '../../src/evidence/canonical.ts';
import { importPublicKey, publicJwk, publicJwkSchema, thumbprint } from '../../src/evidence/jwk.ts';
import { jwsSchema, signatureHolds, signatureOf } from '../../src/evidence/jws.ts';
import { openRecord } from '../../src/evidence/record.ts';
import { logOf, seal, station, stranger, technician, wholeJob } from '../evidence/sample-job.ts';

const d = 'nWGxne_9WmC6hEr0kuwsxERJxWl7MmkZcDusAxyuf2A';
const jwk = { kty: 'OKP', crv: 'Ed25519', x: '11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo' } as const;
const header = 'eyJhbGciOiJFZERTQSJ9';
const payload = 'RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc';
const signature = 'hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg';

describe('RFC 8037, Appendix A', () => {
  it('A.1, A.2: the public key of the private JWK', () => {
    expect(publicJwk(createPrivateKey({ key: { ...jwk, d }, format: 'jwk' }))).toEqual(jwk);
    expect(publicJwkSchema.safeParse(jwk).success).toBe(true);
    expect(publicJwkSchema.safeParse({ ...jwk, d }).success).toBe(false);
  });

  it('A.3: the thumbprint', () => {
    expect(thumbprint(jwk)).toBe('kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k');
  });

  it('A.4: signing', () => {
    expect(signatureOf(header, payload, createPrivateKey({ key: { ...jwk, d }, format: 'jwk' }))).toBe(
      signature,
    );
  });

  it('A.5: checking, and refusing what is off by a bit', () => {
    const key = importPublicKey(jwk);
    const input = (content: string) => Buffer.from(`${header}.${content}`);
    expect(signatureHolds(input(payload), signature, key)).toBe(true);
    expect(signatureHolds(input(`${payload.slice(0, -1)}d`), signature, key)).toBe(false);
    // The last character has four unused bits; another one with the same used bits is no second spelling.
    expect(signatureHolds(input(payload), `${signature.slice(0, -1)}h`, key)).toBe(false);
  });
});

describe('another implementation of JOSE', () => {
  const bytes = seal(logOf(wholeJob()));
  const jws = jwsSchema.parse(JSON.parse(bytes.toString('utf8')));

  it.each([
    ['station', station],
    ['technician', technician],
  ] as const)('accepts the signature of the %s and reads the same record', async (role, signer) => {
    const key = await importJWK({ ...publicJwk(signer.privateKey) }, 'EdDSA');
    const checked = await generalVerify(jws, key, { algorithms: ['EdDSA'] });
    expect(checked.protectedHeader).toMatchObject({ alg: 'EdDSA', role, typ: 'plugmark-record+json' });
    const opened = openRecord(bytes);
    expect(opened.ok && canonical(opened.value.record)).toBe(Buffer.from(checked.payload).toString('utf8'));
  });

  it('refuses the record under a key that did not sign', async () => {
    const key = await importJWK({ ...publicJwk(stranger.privateKey) }, 'EdDSA');
    await expect(generalVerify(jws, key)).rejects.toThrow();
  });
});
