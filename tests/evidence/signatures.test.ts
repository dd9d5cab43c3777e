import { createHmac } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { canonicalBytes } from '../../src/evidence/canonical.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { addSignature, checkSignatures, type Jws, signatureOf } from '../../src/evidence/jws.ts';
import { toBase64url } from '../../src/evidence/platform/bytes.ts';
import { fileOf, judged, jwsOf, recordOf, rejected, signedAnew, withContent, withHeader } from './forge.ts';
import { AT, kidOf, logOf, seal, station, stranger, technician, wholeJob } from './sample-job.ts';

const bytes = seal(logOf(wholeJob()));
const record = recordOf(bytes);

describe('signatures', () => {
  const jws = jwsOf(bytes);

  it.each([
    ['all taken off', fileOf({ ...jws, signatures: [] }), 'is missing'],
    ['the technician’s taken off', fileOf({ ...jws, signatures: jws.signatures.slice(0, 1) }), 'technician'],
    ['the station’s taken off', fileOf({ ...jws, signatures: jws.signatures.slice(1) }), 'station'],
    [
      'one there twice',
      fileOf({ ...jws, signatures: [...jws.signatures, ...jws.signatures.slice(1)] }),
      'twice',
    ],
    ['a stranger’s in the station’s place', signedAnew(record, stranger, technician), 'is missing'],
    ['a stranger’s as a second station', signedAnew(record, station, technician, stranger), 'not announced'],
    [
      'the station’s key as technician',
      signedAnew(record, station, { ...station, role: 'technician' }),
      'is missing',
    ],
    ['alg none', withHeader(bytes, (h) => ({ ...h, alg: 'none' })), 'algorithm'],
    ['alg ES256', withHeader(bytes, (h) => ({ ...h, alg: 'ES256' })), 'algorithm'],
    ['alg missing', withHeader(bytes, ({ alg: _alg, ...h }) => h), 'algorithm'],
    ['a critical extension', withHeader(bytes, (h) => ({ ...h, crit: ['b64'], b64: false })), 'form'],
    ['a role changed', withHeader(bytes, (h) => ({ ...h, role: 'countersigner' })), 'does not belong'],
    [
      'a time changed',
      withHeader(bytes, (h) => ({ ...h, signedAt: '2020-01-01T00:00:00.000Z' })),
      'does not belong',
    ],
    ['another type of content', withHeader(bytes, (h) => ({ ...h, typ: 'JWT' })), 'form'],
    ['the name of another key', withHeader(bytes, (h) => ({ ...h, kid: kidOf(stranger) })), 'name'],
    [
      'another key under the name',
      withHeader(bytes, (h) => ({ ...h, jwk: publicJwk(stranger.privateKey) })),
      'name',
    ],
    [
      'a key with its secret',
      withHeader(bytes, (h) => ({ ...h, jwk: { ...publicJwk(stranger.privateKey), d: 'A' } })),
      'form',
    ],
    [
      'a key of zeros',
      withHeader(bytes, (h) => ({ ...h, jwk: { kty: 'OKP', crv: 'Ed25519', x: 'A'.repeat(43) } })),
      'form',
    ],
    [
      'a key for agreeing on secrets',
      withHeader(bytes, (h) => ({ ...h, jwk: { ...publicJwk(station.privateKey), crv: 'X25519' } })),
      'form',
    ],
    ['other content', withContent(bytes, { ...record, station: 'bay 2' }), 'does not belong'],
  ])('%s: caught and named', (_what, file, why) => {
    const verdict = judged(file);
    expect(verdict).toMatchObject({ verdict: 'rejected' });
    expect(verdict.failed).toContain('signatures');
    expect(verdict.why).toContain(why);
  });

  it('HS256 with the public key as secret: caught and named', () => {
    const { x } = publicJwk(station.privateKey);
    const header = toBase64url(
      canonicalBytes({
        alg: 'HS256',
        typ: 'plugmark-record+json',
        kid: kidOf(station),
        jwk: publicJwk(station.privateKey),
        role: 'station',
        signedAt: AT,
      }),
    );
    const signature = createHmac('sha256', Buffer.from(x, 'base64url'))
      .update(`${header}.${jws.payload}`)
      .digest('base64url');
    const forged = fileOf({
      ...jws,
      signatures: [{ protected: header, signature }, ...jws.signatures.slice(1)],
    });
    expect(judged(forged)).toMatchObject(rejected('signatures', 'signer'));
    expect(judged(forged).why).toContain('algorithm');
  });

  it('the second form of a signature, its number a whole turn of the curve further: caught', () => {
    const ORDER = 2n ** 252n + 27742317777372353535851937790883648493n;
    const [first, ...rest] = jws.signatures;
    const mark = Buffer.from(first?.signature ?? '', 'base64url');
    const turned = ORDER + BigInt(`0x${Buffer.from(mark.subarray(32)).reverse().toString('hex')}`);
    const second = Buffer.from(turned.toString(16).padStart(64, '0'), 'hex').reverse();
    const signature = Buffer.concat([mark.subarray(0, 32), second]).toString('base64url');
    expect(signature).toHaveLength(first?.signature.length ?? 0);
    const forged = judged(fileOf({ ...jws, signatures: [{ ...first, signature }, ...rest] }));
    expect(forged.failed).toContain('signatures');
    expect(forged.why).toContain('does not belong');
  });

  it('a signature that does not hold earns no trust, whatever key it names', () => {
    expect(judged(withContent(bytes, { ...record, station: 'bay 2' }))).toMatchObject(
      rejected('signatures', 'signer'),
    );
  });

  it('hold over records of any size, checked one after another', () => {
    const over = (payload: string) => addSignature({ payload, signatures: [] }, station);
    const faults = (one: Jws, payload = one.payload) =>
      checkSignatures(one, Buffer.from(payload)).map(({ fault }) => fault?.() ?? null);
    const [small, usual, large] = [8, 200_000, 3_000_000].map((length) => over('A'.repeat(length)));
    if (small === undefined || usual === undefined || large === undefined) throw new Error('three records');
    for (const one of [large, small, usual, small, large, usual]) expect(faults(one)).toEqual([null]);
    // What a longer record left behind in memory is no part of a shorter one.
    expect(faults(usual)).toEqual([null]);
    expect(faults(usual, small.payload)).toEqual(['it does not belong to this content']);
  });

  it('accepts the newer name of the algorithm', () => {
    const jwk = publicJwk(station.privateKey);
    const parts = {
      alg: 'Ed25519',
      typ: 'plugmark-record+json',
      kid: kidOf(station),
      jwk,
      role: 'station',
      signedAt: AT,
    };
    const header = toBase64url(canonicalBytes(parts));
    const signature = signatureOf(header, jws.payload, station.privateKey);
    const renamed = fileOf({
      ...jws,
      signatures: [{ protected: header, signature }, ...jws.signatures.slice(1)],
    });
    expect(judged(renamed)).toEqual({ verdict: 'authentic', failed: [], why: '' });
  });

  it('by a header that is not base64url or has a name twice: caught', () => {
    const [first, ...rest] = jws.signatures;
    const twice = toBase64url('{"alg":"Ed25519","alg":"Ed25519"}');
    expect(judged(fileOf({ ...jws, signatures: [{ ...first, protected: twice }, ...rest] })).why).toContain(
      'not canonical JSON',
    );
    expect(judged(fileOf({ ...jws, signatures: [{ ...first, protected: '*' }, ...rest] }))).toMatchObject(
      rejected('signatures'),
    );
  });
});
