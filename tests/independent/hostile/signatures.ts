/** Headers and signatures that a forger, or a station itself, could put there. */
import { sign } from 'node:crypto';
import { canonical, canonicalBytes } from '../../../src/evidence/canonical.ts';
import { originOf } from '../../../src/evidence/checkpoint.ts';
import { publicJwk, thumbprint } from '../../../src/evidence/jwk.ts';
import { addSignature } from '../../../src/evidence/jws.ts';
import { keyId } from '../../../src/evidence/note.ts';
import { fromBase64url, toBase64url } from '../../../src/evidence/platform/bytes.ts';
import { fileOf, jwsOf, withHeader } from '../../evidence/forge.ts';
import { AT, kidOf, logOf, seal, station, stranger, wholeJob } from '../../evidence/sample-job.ts';
import { contentOf, forged } from './forged.ts';
import { COUNTERSIGNED, countersigner, WHOLE } from './valid.ts';
import { first, jws, nextSign, second, variants } from './variant.ts';

/** Another header under the same signature, and the same one signed anew by its key. */
export const headers = () => {
  const changes: Readonly<Record<string, (header: Record<string, unknown>) => unknown>> = {
    'alg none': (h) => ({ ...h, alg: 'none' }),
    'alg EdDSA': (h) => ({ ...h, alg: 'EdDSA' }),
    'alg ES256': (h) => ({ ...h, alg: 'ES256' }),
    'alg HS256': (h) => ({ ...h, alg: 'HS256' }),
    'no alg': ({ alg: _alg, ...h }) => h,
    'another typ': (h) => ({ ...h, typ: 'JWT' }),
    'the kid of another key': (h) => ({ ...h, kid: kidOf(stranger) }),
    'another key under the kid': (h) => ({ ...h, jwk: publicJwk(stranger.privateKey) }),
    'a critical extension': (h) => ({ ...h, crit: ['b64'], b64: false }),
    'a secret in the key': (h) => ({ ...h, jwk: { ...Object(h['jwk']), d: 'AAAA' } }),
    'a key for agreeing on secrets': (h) => ({ ...h, jwk: { ...Object(h['jwk']), crv: 'X25519' } }),
    'another role': (h) => ({ ...h, role: 'technician' }),
    'a time without milliseconds': (h) => ({ ...h, signedAt: '2026-03-02T09:30:00Z' }),
  };
  const header: Record<string, unknown> = JSON.parse(String(fromBase64url(first.protected)));
  const resigned = (raw: string) => {
    const head = toBase64url(raw);
    const mark = sign(null, Buffer.from(`${head}.${jws.payload}`), station.privateKey).toString('base64url');
    return fileOf({ ...jws, signatures: [{ ...first, protected: head, signature: mark }, second] });
  };
  const entries = Object.entries(changes);
  return variants({
    ...Object.fromEntries(entries.map(([what, change]) => [`header: ${what}`, withHeader(WHOLE, change)])),
    ...Object.fromEntries(
      entries.map(([what, change]) => [
        `header signed anew: ${what}`,
        resigned(canonical(change(header) ?? null)),
      ]),
    ),
    'header signed anew: not canonical': resigned(JSON.stringify(header, null, 1)),
    'header signed anew: a name twice': resigned(canonical(header).replace('{', '{"alg":"none",')),
    'header: no base64url': fileOf({ ...jws, signatures: [{ ...first, protected: '*' }, second] }),
  });
};

const ORDER = 2n ** 252n + 27742317777372353535851937790883648493n;
export const signatures = () => {
  const mark = Buffer.from(first.signature, 'base64url');
  const turned = ORDER + BigInt(`0x${Buffer.from(mark.subarray(32)).reverse().toString('hex')}`);
  const beyond = Buffer.concat([
    mark.subarray(0, 32),
    Buffer.from(turned.toString(16).padStart(64, '0'), 'hex').reverse(),
  ]);
  const withMark = (signature: string) => fileOf({ ...jws, signatures: [{ ...first, signature }, second] });
  const strangers = addSignature({ ...jws, signatures: [] }, stranger).signatures;
  return [
    ...variants({
      'S beyond the order of the group': withMark(beyond.toString('base64url')),
      'a signature of 63 bytes': withMark(mark.subarray(0, 63).toString('base64url')),
      'a signature of 65 bytes': withMark(Buffer.concat([mark, Buffer.of(0)]).toString('base64url')),
      'a signature of zeros': withMark(Buffer.alloc(64).toString('base64url')),
      'an empty signature': withMark(''),
      'unused bits in a signature': withMark(`${first.signature.slice(0, -1)}${nextSign(first.signature)}`),
      'signatures in another order': fileOf({
        ...jws,
        signatures: [
          { ...second, header: first.header },
          { protected: first.protected, signature: first.signature },
        ],
      }),
      "the technician's signature taken off": fileOf({ ...jws, signatures: [first] }),
      'a signature twice': fileOf({ ...jws, signatures: [first, second, second] }),
      'a station that was not announced': fileOf({ ...jws, signatures: [first, second, ...strangers] }),
      "a stranger's signature in the first place": fileOf({
        ...jws,
        signatures: [{ ...strangers[0], header: first.header }, second],
      }),
      'a countersignature in the place of the technician': fileOf({
        ...jws,
        signatures: [first, ...addSignature({ ...jws, signatures: [] }, countersigner).signatures],
      }),
      'a countersignature in front': fileOf({
        ...jws,
        signatures: [first, ...addSignature({ ...jws, signatures: [] }, countersigner).signatures, second],
      }),
      'the signatures of another record': fileOf({
        ...jws,
        signatures: jwsOf(seal(logOf(wholeJob('WO-2'), 'job:WO-2'))).signatures,
      }),
    }),
    ...variants(
      {
        'any number of countersignatures': COUNTERSIGNED,
        'a countersignature twice': fileOf({
          ...jwsOf(COUNTERSIGNED),
          signatures: [...jwsOf(COUNTERSIGNED).signatures, ...jwsOf(COUNTERSIGNED).signatures.slice(-1)],
        }),
        'a countersignature over another payload': fileOf({
          ...jws,
          signatures: [
            first,
            second,
            ...addSignature({ payload: 'e30', signatures: [] }, countersigner).signatures,
          ],
        }),
        'a countersignature whose header is none': fileOf({
          ...jws,
          signatures: [first, second, { protected: 'e30', signature: second.signature }],
        }),
      },
      'authentic',
    ),
  ];
};

/** Points of small order, in all their writings, and others that are no writing of a point. */
const WEAK_KEYS: Readonly<Record<string, string>> = {
  'the neutral point': `01${'00'.repeat(31)}`,
  'the neutral point, x negative': `01${'00'.repeat(30)}80`,
  'order two': `ec${'ff'.repeat(30)}7f`,
  'order two, x negative': `ec${'ff'.repeat(31)}`,
  'order four': '00'.repeat(32),
  'order four, x negative': `${'00'.repeat(31)}80`,
  'order eight': '26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05',
  'order eight, x negative': '26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc85',
  'order eight, the other': 'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a',
  'order eight, the other, x negative': 'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac03fa',
  'zero written as p': `ed${'ff'.repeat(30)}7f`,
  'one written as p + 1': `ee${'ff'.repeat(30)}7f`,
  'two written as p + 2': `ef${'ff'.repeat(30)}7f`,
};

/** The station's key is such a point. S = 0 and R = the neutral point is a signature of anything where h·A is neutral. */
export const weakKeys = () =>
  variants(
    Object.fromEntries(
      Object.entries(WEAK_KEYS).map(([name, hex]) => {
        const jwk = { kty: 'OKP', crv: 'Ed25519', x: Buffer.from(hex, 'hex').toString('base64url') } as const;
        const kid = thumbprint(jwk);
        const mark = Buffer.concat([
          Buffer.from(WEAK_KEYS['the neutral point'] ?? '', 'hex'),
          Buffer.alloc(32),
        ]);
        const content = contentOf(
          forged(WHOLE, (one) => {
            one.background[0].event.key = jwk;
            one.signers = [{ role: 'station', kid }];
            one.technicianSignature = 'not-given';
          }),
        );
        const note = content.log.checkpoint.split('\n');
        const origin = originOf(kid);
        const blob = Buffer.concat([keyId(origin, jwk), mark]).toString('base64');
        content.log.checkpoint = `${origin}\n${note[1]}\n${note[2]}\n\n— ${origin} ${blob}\n`;
        const payload = toBase64url(canonicalBytes(content));
        const header = {
          alg: 'Ed25519',
          typ: 'plugmark-record+json',
          kid,
          jwk,
          role: 'station',
          signedAt: AT,
        };
        const one = { protected: toBase64url(canonicalBytes(header)), signature: mark.toString('base64url') };
        return [`a key that anybody can sign under: ${name}`, fileOf({ payload, signatures: [one] })];
      }),
    ),
  );
