import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clean } from '../../src/report/clean.ts';

test('control characters and marks that turn the reading direction go, white space becomes one space', () => {
  expect(clean(' a\u0000b\t\r\nc\u001b[31m \u202Eexe\u2066\u200F ')).toBe('ab c[31m exe');
  expect(clean('Été · 王小明')).toBe('Été · 王小明');
});

test('half a surrogate pair becomes the replacement character, a whole one stays', () => {
  expect(clean('a\uD83Db')).toBe('a\uFFFDb');
  expect(clean('🔧')).toBe('🔧');
});

test('whatever comes in, nothing that moves a cursor or the reading order comes out, and cleaning twice changes nothing', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const once = clean(text);
      expect(once).not.toMatch(/[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069]/u);
      expect(clean(once)).toBe(once);
    }),
  );
});
