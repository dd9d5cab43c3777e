import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cleanText, decodeText, encodeText, TEXT_LIMIT } from '../../../drivers/bluetooth/text.ts';
import { good } from '../bench.ts';

const decode = (bytes: readonly number[]) => decodeText('Serial Number 0x2A25', Uint8Array.from(bytes));
const utf8 = (text: string) => [...Buffer.from(text, 'utf8')];

describe('text of a device', () => {
  test('plain text comes back as it was sent', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }).map(cleanText), (text) => {
        expect(good(decodeText('x', good(encodeText('x', text))))).toBe(text);
      }),
      { numRuns: 500 },
    );
  });

  test('no bytes throw, and what comes out can neither steer a terminal nor hide or turn other text', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const decoded = decodeText('x', bytes);
        if (!decoded.ok) {
          expect(decoded.error.where).toMatch(/^x byte \d+$/);
          return;
        }
        expect(decoded.value).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
        expect([...decoded.value].length).toBeLessThanOrEqual(TEXT_LIMIT);
      }),
      { numRuns: 2_000 },
    );
  });

  test.each<[string, string, string]>([
    ['escape sequences', '\u001b[31mW-1\u001b[0m', '[31mW-1[0m'],
    ['an 8-bit control sequence', 'W\u009b2J-1', 'W2J-1'],
    ['line ends and closing zeros', 'W-1\r\n\0\0', 'W-1'],
    ['marks that turn the order', 'W-\u202e1\u2066', 'W-1'],
    ['marks that cannot be seen', 'W\u200b-\ufeff1', 'W-1'],
    ['blanks at the ends', '  W 1 ', 'W 1'],
  ])('%s are taken out', (_name, sent, shown) => {
    expect(good(decode(utf8(sent)))).toBe(shown);
  });

  test('a long one is cut by characters, not in the middle of one', () => {
    expect(good(decode(utf8('🔧'.repeat(100))))).toBe('🔧'.repeat(TEXT_LIMIT));
  });

  test.each<[string, readonly number[], number]>([
    ['a byte that never occurs', [0x57, 0xff], 1],
    ['a sequence cut at the end', [0x57, 0x2d, 0xc3], 2],
    ['an overlong form', [0xc0, 0xaf], 0],
    ['half of a surrogate pair', [0x41, 0x42, 0x43, 0xed, 0xa0, 0x80], 3],
    ['a continuation without a start', [0xc3, 0xa9, 0x80], 2],
    ['beyond the last character', [0xf4, 0x90, 0x80, 0x80], 0],
  ])('invalid UTF-8 is refused with its offset: %s', (_name, bytes, offset) => {
    expect(decode(bytes)).toMatchObject({
      ok: false,
      error: { code: 'bluetooth-layout', where: `Serial Number 0x2A25 byte ${offset}` },
    });
  });

  test.each(['a\nb', ' a', 'x'.repeat(TEXT_LIMIT + 1), '\ud800'])('%j is not sent', (text) => {
    expect(encodeText('x', text)).toMatchObject({ ok: false, error: { code: 'bluetooth-layout' } });
  });
});
