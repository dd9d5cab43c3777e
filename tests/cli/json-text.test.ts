import fc from 'fast-check';
import { expect, it } from 'vitest';
import { jsonText } from '../../src/cli/json-text.ts';

it('gives every text back, and holds no control, bidi or invisible character but its line ends', () => {
  const hostile = fc.constantFrom(
    '\u001b',
    '\u007f',
    '\u009b',
    '\u061c',
    '\u202e',
    '\u2028',
    '\u{e0041}',
    '\n',
    '\\',
  );
  const text = fc.array(fc.oneof(hostile, fc.string({ unit: 'binary' }))).map((parts) => parts.join(''));
  fc.assert(
    fc.property(text, (value) => {
      const json = jsonText({ value });
      expect(JSON.parse(json)).toEqual({ value });
      expect(json.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
    }),
  );
});
