import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { latin } from '../../src/report/latin.ts';

/**
 * Windows-1252 as the WHATWG encoding standard lists it: what the standard fonts can draw. Spelt out, because some
 * versions of Node decode the bytes 0x80 to 0x9f as Latin-1.
 */
const drawable = new Set([
  ...Array.from({ length: 95 }, (_, i) => String.fromCodePoint(0x20 + i)),
  ...Array.from({ length: 96 }, (_, i) => String.fromCodePoint(0xa0 + i)),
  ...'€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ',
]);

describe('text for fonts that know Windows-1252 only', () => {
  test('what the fonts know stays as it is', () => {
    expect(latin('25 N·m ±4 % – “Été” Šimůnek €')).toEqual({
      text: '25 N·m ±4 % – “Été” Šimunek €',
      changed: true,
    });
    expect(latin('25 N·m ±4 % – “Été” ß €')).toEqual({ text: '25 N·m ±4 % – “Été” ß €', changed: false });
  });

  test('an accent outside it is dropped and said to be', () => {
    expect(latin('Łukasz Őry')).toEqual({ text: 'Lukasz Ory', changed: true });
  });

  test('other scripts stand as code points, neighbours together', () => {
    expect(latin('王小明 Ж')).toEqual({ text: '[U+738B 5C0F 660E] [U+0416]', changed: true });
    expect(latin('a🔧b').text).toBe('a[U+1F527]b');
  });

  test('every text comes out drawable, and unchanged only when it says so', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (raw) => {
        const { text, changed } = latin(raw);
        expect([...text].filter((character) => !drawable.has(character))).toEqual([]);
        if (text === raw) expect(changed).toBe(false);
      }),
    );
  });
});
