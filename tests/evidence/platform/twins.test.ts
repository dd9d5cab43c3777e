/** What the platform gives in Node and in a browser is the same. */
import { generateKeyPairSync, sign as signBytes } from 'node:crypto';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as bytesInBrowser from '../../../src/evidence/platform/bytes.browser.ts';
import * as bytesInNode from '../../../src/evidence/platform/bytes.ts';
import * as hashInBrowser from '../../../src/evidence/platform/hash.browser.ts';
import * as hashInNode from '../../../src/evidence/platform/hash.ts';
import { isSameData } from '../../../src/evidence/platform/same.ts';
import * as signatureInBrowser from '../../../src/evidence/platform/signature.browser.ts';
import * as signatureInNode from '../../../src/evidence/platform/signature.ts';

const [inBrowser, inNode] = [{ ...bytesInBrowser }, { ...bytesInNode }];
const plain = (bytes: Uint8Array | null) => bytes && Array.from(bytes);
/** Of few signs, so that padding, white space and last bits that say nothing come often. */
const nearlyBase64 = fc.string({ unit: fc.constantFrom(...'AEQgwB4/+=_- \n'), maxLength: 12 });
const texts = fc.oneof(fc.string({ unit: 'binary' }), fc.string(), fc.base64String(), nearlyBase64);

describe('bytes', () => {
  it('are written alike', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        for (const name of ['toHex', 'toBase64', 'toBase64url', 'fromUtf8', 'isUtf8'] as const)
          expect(inBrowser[name](bytes), name).toEqual(inNode[name](bytes));
      }),
    );
  });

  it('of any length, in pieces that a browser can take', () => {
    const bytes = Uint8Array.from({ length: 100_003 }, (_, i) => (i * 31) % 256);
    expect(inBrowser.toBase64(bytes)).toBe(inNode.toBase64(bytes));
    expect(plain(inBrowser.fromBase64(inNode.toBase64(bytes)))).toEqual(plain(bytes));
  });

  it('are read alike, and as strictly', () => {
    fc.assert(
      fc.property(texts, (text) => {
        for (const name of ['fromBase64', 'fromBase64url'] as const)
          expect(plain(inBrowser[name](text)), name).toEqual(plain(inNode[name](text)));
      }),
      { numRuns: 500 },
    );
    for (const text of [
      '',
      'QQ==',
      'QR==',
      'QQ',
      'QQ=',
      'Q Q==',
      'QQ==\n',
      'Pz8_',
      'Pz8/',
      'é',
      'QUFBQ',
      '=',
      '==',
      'AAA ',
      'AA==\n\n\n\n',
    ])
      for (const name of ['fromBase64', 'fromBase64url'] as const)
        expect(plain(inBrowser[name](text)), `${name} ${text}`).toEqual(plain(inNode[name](text)));
  });

  it('of a text are the same, half a surrogate and a byte order mark with it', () => {
    fc.assert(
      fc.property(texts, (text) => {
        expect(plain(inBrowser.utf8(text))).toEqual(plain(inNode.utf8(text)));
      }),
    );
    expect(plain(inBrowser.utf8('\ud800'))).toEqual(plain(inNode.utf8('\ud800')));
    const marked = Uint8Array.of(0xef, 0xbb, 0xbf, 0x41);
    expect(inBrowser.fromUtf8(marked)).toBe(inNode.fromUtf8(marked));
  });

  it('are joined and compared alike', () => {
    const some = fc.array(fc.uint8Array({ maxLength: 4 }), { maxLength: 4 });
    fc.assert(
      fc.property(some, some, (parts, others) => {
        const [one, other] = [inNode.joined(...parts), inNode.joined(...others)];
        expect(plain(inBrowser.joined(...parts))).toEqual(plain(one));
        expect(inBrowser.isSame(one, other)).toBe(inNode.isSame(one, other));
        expect(inBrowser.isSame(one, inBrowser.joined(...parts))).toBe(true);
      }),
    );
  });
});

it('SHA-256 is SHA-256', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      expect(plain(hashInBrowser.sha256(bytes))).toEqual(plain(hashInNode.sha256(bytes)));
    }),
  );
});

describe('plain data', () => {
  it('are the same where Node says so', () => {
    const value = fc.jsonValue({ maxDepth: 3 });
    fc.assert(
      fc.property(value, value, (one, other) => {
        expect(isSameData(one, structuredClone(one))).toBe(true);
        expect(isSameData(one, other)).toBe(isDeepStrictEqual(one, other));
      }),
    );
  });

  it.each([
    ['a member more', { a: 1 }, { a: 1, b: 2 }],
    ['a member less, another in its place', { a: 1, b: undefined }, { a: 1, c: undefined }],
    ['a member that is undefined', { a: 1 }, { a: 1, b: undefined }],
    ['0 and -0', [0], [-0]],
    ['NaN twice', [Number.NaN], [Number.NaN]],
    ['a list and an object', [], {}],
    ['a longer list', [1], [1, undefined]],
    ['null and an object', null, {}],
    ['another order of members', { a: 1, b: 2 }, { b: 2, a: 1 }],
    ['another prototype', Object.create(null), {}],
    ['text and number', ['1'], [1]],
  ])('%s', (_what, one, other) => {
    expect(isSameData(one, other)).toBe(isDeepStrictEqual(one, other));
    expect(isSameData(other, one)).toBe(isDeepStrictEqual(other, one));
  });

  it('anything else is the same as nothing', () => {
    expect(isSameData(new Map([[1, 2]]), new Map([[3, 4]]))).toBe(false);
    expect(isSameData(new Date(0), new Date(1))).toBe(false);
  });
});

describe('a signature', () => {
  const { publicKey, privateKey } = generateKeyPairSync('ed25519');
  const key = inNode.fromBase64url(publicKey.export({ format: 'jwk' }).x ?? '') ?? new Uint8Array();
  const message = inNode.utf8('what is signed');
  const signature = Uint8Array.from(signBytes(null, message, privateKey));
  const flipped = signature.with(3, (signature[3] ?? 0) ^ 1);

  it('holds in both, and one that is off by a bit in neither', async () => {
    for (const { holds } of [signatureInNode, signatureInBrowser]) {
      expect(holds(key, message, signature)).toBe(true);
      expect(holds(key, message, flipped)).toBe(false);
      expect(holds(key, inNode.utf8('something else'), signature)).toBe(false);
      expect(holds(key, message, signature.slice(1))).toBe(false);
    }
    expect(await signatureInBrowser.agreed(() => signatureInBrowser.holds(key, message, signature))).toBe(
      true,
    );
  });

  it('does not hold in a browser where WebCrypto denies it, whatever memory it lay in', async () => {
    const memory = Uint8Array.from(message);
    const subtle = crypto.subtle;
    const verify = subtle.verify.bind(subtle);
    let asked = 0;
    subtle.verify = (_algorithm, _key, _signature, data) => {
      asked++;
      expect(data).toEqual(Uint8Array.from(message));
      return Promise.resolve(false);
    };
    try {
      const holds = await signatureInBrowser.agreed(() => {
        memory.set(message);
        const answer = signatureInBrowser.holds(key, memory, signature);
        memory.fill(0);
        return answer;
      });
      expect({ holds, asked }).toEqual({ holds: false, asked: 1 });
    } finally {
      subtle.verify = verify;
    }
  });

  it('that a browser cannot check itself is no answer', async () => {
    const { privateKey: other, publicKey: otherPublic } = generateKeyPairSync('ed25519');
    const otherKey = inNode.fromBase64url(otherPublic.export({ format: 'jwk' }).x ?? '') ?? new Uint8Array();
    const importKey = crypto.subtle.importKey.bind(crypto.subtle);
    crypto.subtle.importKey = () => Promise.reject(new DOMException('no Ed25519 here', 'NotSupportedError'));
    try {
      const mark = Uint8Array.from(signBytes(null, message, other));
      await expect(
        signatureInBrowser.agreed(() => signatureInBrowser.holds(otherKey, message, mark)),
      ).rejects.toThrow(signatureInBrowser.NoSecondOpinion);
    } finally {
      crypto.subtle.importKey = importKey;
    }
  });
});
