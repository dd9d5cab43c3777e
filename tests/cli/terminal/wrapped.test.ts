import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrapped } from '../../../src/cli/terminal/wrapped.ts';

describe('a line on a narrow terminal', () => {
  it('is broken between words, and goes on under its text where it has a label', () => {
    expect(wrapped('  rule            guard band of 1 U, as ILAC-G8 has it', 40)).toEqual([
      '  rule            guard band of 1 U, as',
      `${' '.repeat(13)}ILAC-G8 has it`,
    ]);
    expect(wrapped('Enter takes what stands in brackets', 20)).toEqual([
      'Enter takes what',
      '    stands in',
      '    brackets',
    ]);
    expect(wrapped('short', 20)).toEqual(['short']);
  });

  it('never is wider than the terminal, and loses nothing but spaces', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme-ascii', maxLength: 200 }),
        fc.integer({ min: 20, max: 90 }),
        (text, columns) => {
          const lines = wrapped(text, columns);
          for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
          expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
        },
      ),
    );
  });
});
