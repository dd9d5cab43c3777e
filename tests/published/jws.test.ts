/**
 * Sources: RFC 8037, Appendix A (Ed25519 key as JWK, its thumbprint, signing and checking a JWS). Independent oracle for
 * whole records: the package `jose`, by other people.
 */
import { spawnSync } from 'node:child_process';
import { createPrivateKey } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { generalVerify, importJWK } from 'jose';
import { afterAll, describe, expect, it } from 'vitest';
import { topicFile } from '../../src/cli/help/topics.ts';
import { canonical } from '../../src/evidence/canonical.ts';
import { publicJwk, publicJwkSchema, thumbprint } from '../../src/evidence/jwk.ts';
import {
  checkSignatures,
  jwsSchema,
  RECORD_TYPE,
  signatureHolds,
  signatureOf,
} from '../../src/evidence/jws.ts';
import { toBase64url } from '../../src/evidence/platform/bytes.ts';
import { openRecord } from '../../src/evidence/record.ts';
import { recordOf, signedTextOf, withContent } from '../evidence/forge.ts';
import { AT, logOf, seal, station, stranger, technician, wholeJob } from '../evidence/sample-job.ts';

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
    const input = (content: string) => Buffer.from(`${header}.${content}`);
    expect(signatureHolds(input(payload), signature, jwk)).toBe(true);
    expect(signatureHolds(input(`${payload.slice(0, -1)}d`), signature, jwk)).toBe(false);
    // The last character has four unused bits; another one with the same used bits is no second spelling.
    expect(signatureHolds(input(payload), `${signature.slice(0, -1)}h`, jwk)).toBe(false);
  });
});

/** The indented lines of the section in the manual. */
function manualProgram(): string {
  const topic = readFileSync(topicFile('verify'), 'utf8');
  const section = /## With a JOSE library alone.*?\n\n((?: {4}[^\n]*\n|\n(?= {4}))+)/s.exec(topic)?.[1];
  return (section ?? '').replace(/^ {4}/gm, '');
}

describe('somebody who has a JOSE library and follows the manual', () => {
  const bytes = seal(logOf(wholeJob()));
  const folder = mkdtempSync(join(tmpdir(), 'reader-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  function reader(record: Buffer, { x }: { readonly x: string }) {
    const file = join(folder, 'J.record.json');
    writeFileSync(file, record);
    const program = manualProgram().replace('J-1001.record.json', file).replace('THE-X-OF-THE-KEY', x);
    expect(program).toContain(x);
    return spawnSync(process.execPath, ['--input-type=module', '-e', program], { encoding: 'utf8' });
  }

  it('reads who signed what', () => {
    const { stdout, status } = reader(bytes, publicJwk(station.privateKey));
    const { entries } = recordOf(bytes);
    expect(stdout).toBe(`WO-1, ${entries.length} entries, signed by the station on ${station.signedAt}\n`);
    expect(status).toBe(0);
    expect(reader(bytes, publicJwk(technician.privateKey)).stdout).toContain('signed by the technician');
  });

  it('is told where the key did not sign, or the content was changed', () => {
    expect(reader(bytes, publicJwk(stranger.privateKey))).toMatchObject({ status: 1, stdout: '' });
    const changed = withContent(bytes, { ...recordOf(bytes), job: 'WO-2' });
    expect(reader(changed, publicJwk(station.privateKey))).toMatchObject({ status: 1, stdout: '' });
  });
});

describe('another implementation of JOSE', () => {
  const bytes = seal(logOf(wholeJob()));
  const jws = jwsSchema.parse(JSON.parse(bytes.toString('utf8')));

  it.each([
    ['station', station],
    ['technician', technician],
  ] as const)('accepts the signature of the %s and reads the same record', async (role, signer) => {
    const key = await importJWK({ ...publicJwk(signer.privateKey) }, 'Ed25519');
    const checked = await generalVerify(jws, key, { algorithms: ['Ed25519'] });
    expect(checked.protectedHeader).toMatchObject({ alg: 'Ed25519', role, typ: 'plugmark-record+json' });
    const opened = openRecord(bytes);
    expect(opened.ok && signedTextOf(opened.value.record)).toBe(
      Buffer.from(checked.payload).toString('utf8'),
    );
  });

  it('agrees that `Ed25519` is another name of the same algorithm', async () => {
    const { privateKey } = station;
    const jwk = publicJwk(privateKey);
    const named = {
      alg: 'Ed25519',
      typ: RECORD_TYPE,
      kid: thumbprint(jwk),
      jwk,
      role: 'station',
      signedAt: AT,
    };
    const head = toBase64url(canonical(named));
    const one = { protected: head, signature: signatureOf(head, jws.payload, privateKey) };
    const other = { ...jws, signatures: [one] };
    const key = await importJWK({ ...jwk }, 'Ed25519');
    const checked = await generalVerify(other, key, { algorithms: ['Ed25519'] });
    expect(checked.protectedHeader).toEqual(named);
    expect(checkSignatures(other, Buffer.from(other.payload))).toMatchObject([{ fault: null }]);
  });

  it('refuses the record under a key that did not sign', async () => {
    const key = await importJWK({ ...publicJwk(stranger.privateKey) }, 'Ed25519');
    await expect(generalVerify(jws, key)).rejects.toThrow();
  });
});
