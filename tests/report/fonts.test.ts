import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawable, type FontFor, runsOf } from '../../src/report/fonts/runs.ts';

/** Three fonts: one for what is below U+0500 and the box, one for Arabic, one for Chinese. */
const fontFor: FontFor = (codePoint) => {
  if (codePoint < 0x500 || codePoint === 0x25a1) return 'own';
  if (codePoint >= 0x600 && codePoint < 0x700) return 'arabic';
  return codePoint >= 0x4e00 && codePoint < 0xa000 ? 'chinese' : null;
};
const drawn = (text: string) =>
  runsOf(text, 'regular', fontFor).map(({ text: part, font, rightToLeft }) =>
    rightToLeft ? `${font}<${part}` : `${font}:${part}`,
  );

describe('a text in the fonts that have its letters', () => {
  test('is one piece where one font has them all', () => {
    expect(drawn('25 N·m – Été Жук')).toEqual(['own:25 N·m – Été Жук']);
  });

  test('changes the font where it must', () => {
    expect(drawn('Wang 王小明, J-1')).toEqual(['own:Wang ', 'chinese:王小明', 'own:, J-1']);
  });

  test('what nobody has is a box', () => {
    expect(drawable('a🔧b', 'regular', fontFor)).toBe('a□b');
    expect(drawable('王', 'regular', fontFor)).toBe('王');
  });

  test('an accent stays with its letter', () => {
    expect(drawn('x\u0301王\u0301')).toEqual(['own:x\u0301', 'chinese:王\u0301']);
  });

  test('from right to left, the last word lies at the left; a number in it reads from left to right', () => {
    expect(drawn('ab سيارة')).toEqual(['own:ab ', 'arabic<سيارة']);
    const parts = drawn('سيارة 2014 بيضاء');
    expect(parts.indexOf('arabic<بيضاء')).toBeLessThan(parts.indexOf('own:2014'));
    expect(parts.indexOf('own:2014')).toBeLessThan(parts.indexOf('arabic<سيارة'));
  });

  test('loses no letter, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (raw) => {
        const text = drawable(raw, 'bold', fontFor);
        const letters = runsOf(text, 'bold', fontFor).flatMap((run) => [...run.text]);
        expect(letters.sort()).toEqual([...text].sort());
      }),
    );
  });
});
