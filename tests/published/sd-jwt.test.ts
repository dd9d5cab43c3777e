/**
 * Source: RFC 9901 (SD-JWT), 4.2.1 to 4.2.3 and appendix: disclosures and their digests as printed there, read in the source
 * of the RFC (oauth-wg/oauth-selective-disclosure-jwt, 836b87c); those marked computed were computed with other software.
 */
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { digestOf, disclosureOf } from '../../src/evidence/disclosures.ts';
import { toBase64url } from '../../src/evidence/platform/bytes.ts';
import type { Confirmed } from './published.ts';

const SALT = '_26bc4LT-ac6q2KI6cBW5es';
const VECTORS: readonly (readonly [
  what: string,
  json: string,
  disclosure: string | null,
  digest: string,
  confirmed: Confirmed,
])[] = [
  [
    'a member of an object',
    `["${SALT}", "family_name", "Möbius"]`,
    'WyJfMjZiYzRMVC1hYzZxMktJNmNCVzVlcyIsICJmYW1pbHlfbmFtZSIsICJNw7ZiaXVzIl0',
    'X9yH0Ajrdm1Oij4tWso9UzzKJvPoDxwmuEcO3XAdRC0',
    'read',
  ],
  [
    'the same with an escape',
    `["${SALT}", "family_name", "M\\u00f6bius"]`,
    'WyJfMjZiYzRMVC1hYzZxMktJNmNCVzVlcyIsICJmYW1pbHlfbmFtZSIsICJNXHUwMGY2Yml1cyJd',
    'BwU3T4PB1Wk6TbA1HUOm9XenJYLZfYtJGn8hMl77zwg',
    'computed',
  ],
  [
    'the same without spaces',
    `["${SALT}","family_name","Möbius"]`,
    'WyJfMjZiYzRMVC1hYzZxMktJNmNCVzVlcyIsImZhbWlseV9uYW1lIiwiTcO2Yml1cyJd',
    'TZjouOTrBKEwUNjNDs9yeMzBoQn8FFLPaJjRRmAtwrM',
    'computed',
  ],
  [
    'the same on several lines',
    `[\n"${SALT}",\n"family_name",\n"Möbius"\n]`,
    'WwoiXzI2YmM0TFQtYWM2cTJLSTZjQlc1ZXMiLAoiZmFtaWx5X25hbWUiLAoiTcO2Yml1cyIKXQ',
    'WgTWKMWOEUwzhJXwrq2EuXN2SvhvJ_5-DvEl2DlKC_A',
    'computed',
  ],
  [
    'an element of a list',
    '["lklxF5jMYlGTPUovMNIvCA", "FR"]',
    'WyJsa2x4RjVqTVlsR1RQVW92TU5JdkNBIiwgIkZSIl0',
    'w0I8EKcdCtUPkGCNUrfwVp2xEgNjtoIDlOxc9-PlOhs',
    'read',
  ],
  [
    'an element, without a space',
    '["16_mAd0GiwaZokU26_0i0h","DE"]',
    null,
    'PmnlrRjhLcwf8zTDdK15HVGwHtPYjddvD362WjBLwro',
    'read',
  ],
  [
    'another element',
    '["fn9fN0rD-fFs2n303ZI-0c","FR"]',
    null,
    'r823HFN6Ba_lpSANYtXqqCBAH-TsQlIzfOK0lRAFLCM',
    'read',
  ],
  [
    'a third element',
    '["YIKesqOkXXNzMQtsX_-_lw","UK"]',
    null,
    'nP5GYjwhFm6ESlAeC4NCaIliW4tz0hTrUeoJB3lb5TA',
    'read',
  ],
];

describe('a disclosure', () => {
  it.each(VECTORS)(
    'of %s: base64url of its JSON, and SHA-256 over that text (%#)',
    (_what, json, disclosure, digest) => {
      const text = toBase64url(json);
      if (disclosure !== null) expect(text).toBe(disclosure);
      expect(digestOf(text)).toBe(digest);
    },
  );

  it('of ours is a disclosure of an object member, in one writing', () => {
    const ours = disclosureOf('AAAAAAAAAAAAAAAAAAAAAA', 'Möbius');
    expect(Buffer.from(ours, 'base64url').toString('utf8')).toBe(
      '["AAAAAAAAAAAAAAAAAAAAAA","value","Möbius"]',
    );
    expect(digestOf(ours)).toBe(createHash('sha256').update(ours).digest('base64url'));
  });
});
