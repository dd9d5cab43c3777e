import { describe, expect, it } from 'vitest';
import { glyphsFor } from '../../src/ui/glyphs.ts';
import { largeLetters } from '../../src/ui/letters.ts';

const unicode = glyphsFor(false);
const WORDS = ['OK', 'NOT OK', 'UNDECIDED', 'ASK', 'COMPLETE', 'INCOMPLETE', '0123456789.', '-1.0'];

describe('large letters', () => {
  it.each(WORDS)('draws %s in a rectangle that fits', (word) => {
    for (const [columns, rows] of [
      [56, 3],
      [76, 5],
      [116, 10],
      [196, 10],
    ] as const) {
      const drawn = largeLetters(word, columns, rows, unicode);
      expect(drawn).not.toBeNull();
      expect(drawn?.length).toBeLessThanOrEqual(rows);
      expect(new Set(drawn?.map((row) => row.length)).size).toBe(1);
      expect(drawn?.[0]?.length).toBeLessThanOrEqual(columns);
      expect(drawn?.join('')).toMatch(/[█▀▄]/);
    }
  });

  it('gives every character a shape of its own', () => {
    const shapes = [...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ.-'].map((c) =>
      largeLetters(c, 80, 5, unicode)?.join('\n'),
    );
    expect(new Set(shapes).size).toBe(shapes.length);
    expect(shapes).not.toContain(undefined);
  });

  it('grows with the room and gives up when there is none', () => {
    const height = (rows: number, columns: number) => largeLetters('OK', columns, rows, unicode)?.length;
    expect(height(3, 56)).toBe(3);
    expect(height(5, 56)).toBe(5);
    expect(height(10, 116)).toBe(10);
    expect(largeLetters('OK', 56, 2, unicode)).toBeNull();
    expect(largeLetters('UNDECIDED', 20, 5, unicode)).toBeNull();
  });

  it('uses number signs only in ASCII, and no half rows', () => {
    expect(largeLetters('NOT OK', 56, 5, glyphsFor(true))?.join('')).toMatch(/^[# ]+$/);
    expect(largeLetters('NOT OK', 56, 3, glyphsFor(true))).toBeNull();
  });
});
