/** Under a point of small order anybody can sign: no such key is taken, wherever a key is read. */
import { describe, expect, it } from 'vitest';
import { publicJwkSchema } from '../../src/evidence/jwk.ts';
import { recordHeaderSchema } from '../../src/evidence/jws.ts';
import { stationEventSchema } from '../../src/evidence/station-event.ts';
import { successionSchema } from '../../src/evidence/succession.ts';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { packageHeaderSchema } from '../../src/package/format.ts';
import { AT } from '../evidence/sample-job.ts';

const POINTS = {
  'the neutral point': `01${'00'.repeat(31)}`,
  'the neutral point, x negative': `01${'00'.repeat(30)}80`,
  'order two': `ec${'ff'.repeat(30)}7f`,
  'order four': '00'.repeat(32),
  'order eight': '26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05',
  'order eight, the other': 'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a',
  'zero written as p': `ed${'ff'.repeat(30)}7f`,
  'one written as p + 1': `ee${'ff'.repeat(30)}7f`,
};

describe.each(Object.entries(POINTS))('%s is nobody’s key', (_name, hex) => {
  const jwk = { kty: 'OKP', crv: 'Ed25519', x: Buffer.from(hex, 'hex').toString('base64url') };
  const kid = 'A'.repeat(43);
  const refusal = (result: { success: boolean; error?: { message: string } | undefined }) =>
    result.success ? 'taken' : result.error?.message;
  const nobodys = expect.stringContaining("nobody's key");

  it('by itself', () => expect(refusal(publicJwkSchema.safeParse(jwk))).toEqual(nobodys));
  it('on a trust list', () => {
    const list = parseTrustList(Buffer.from(JSON.stringify({ keys: [{ ...jwk, kid }] })), 'trust');
    expect(list).toMatchObject({ ok: false, error: { message: nobodys } });
  });
  it('in the header of a record', () => {
    const header = {
      alg: 'Ed25519',
      typ: 'plugmark-record+json',
      kid,
      jwk,
      role: 'countersigner',
      signedAt: AT,
    };
    expect(refusal(recordHeaderSchema.safeParse(header))).toEqual(nobodys);
  });
  it('in the header of a package', () => {
    expect(
      refusal(packageHeaderSchema.safeParse({ alg: 'Ed25519', typ: 'plugmark-package+json', kid, jwk })),
    ).toEqual(nobodys);
  });
  it('as the next key of a station', () => {
    expect(refusal(successionSchema.safeParse({ log: 'x', next: jwk, at: AT }))).toEqual(nobodys);
  });
  it.each([
    { type: 'station-set-up', station: 'bay 1', key: jwk },
    { type: 'key-rotated', key: jwk, statement: 'x' },
    { type: 'key-replaced', key: jwk },
    { type: 'person-recorded', person: 'Technician One', key: jwk },
  ])('in an entry of the log: $type', (event) => {
    expect(refusal(stationEventSchema.safeParse(event))).toEqual(nobodys);
  });
});
