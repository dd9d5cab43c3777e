import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase64url, toBase64url } from '../../src/evidence/platform/bytes.ts';

describe('strict base64url has one text for one sequence of bytes', () => {
  it('reads what it writes', () => {
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        expect(fromBase64url(toBase64url(bytes))).toEqual(Buffer.from(bytes));
      }),
    );
  });

  it.each([
    ['padding', 'QQ=='],
    ['unused bits that are not zero', 'QR'],
    ['a single last character', 'QUFBQ'],
    ['white space', 'QU FB'],
    ['a line end', 'QUFB\n'],
    ['the other alphabet', 'Pz8/'],
    ['a character outside the alphabet', 'QU*B'],
    ['a letter beyond ASCII', 'QUFé'],
  ])('refuses %s', (_what, text) => {
    expect(fromBase64url(text)).toBeNull();
  });
});
