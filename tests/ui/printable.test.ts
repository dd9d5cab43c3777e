import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { folded } from '../../src/ui/folded.ts';
import { columnsOf, cut, fill, printable } from '../../src/ui/printable.ts';
import { inkColumns } from './drawn.tsx';

describe('text from outside', () => {
  it.each([
    ['a cursor move', 'wrench\u001b[2J\u001b[H', 'wrench[2J[H'],
    ['an eight-bit control sequence', 'wr\u009b31mench', 'wr31mench'],
    ['a bell and a backspace', 'a\u0007b\u0008c', 'abc'],
    ['a line feed and a tab', 'one\r\n\ttwo', 'one two'],
    ['the line separators of Unicode', 'one\u2028two\u2029three', 'one two three'],
    ['a right-to-left override', 'NOT \u202eKO\u202c', 'NOT KO'],
    ['an isolate', 'a\u2066b\u2069', 'ab'],
    ['zero-width characters', 'O\u200bK\u200d\ufeff', 'OK'],
    ['blank fillers', 'a\u3164\u115f\u2800b', 'ab'],
    ['tag characters', 'a\u{e0041}b', 'ab'],
    ['a lone surrogate', 'a\ud800b', 'ab'],
  ])('loses %s', (_, hostile, left) => {
    expect(printable(hostile, 80)).toBe(left);
  });

  it('keeps letters of every script', () => {
    expect(printable('Jürgen Straße', 80)).toBe('Jürgen Straße');
    expect(printable('山田 太郎', 80)).toBe('山田 太郎');
  });

  it('becomes ASCII where the terminal can do no more', () => {
    expect(printable('Jürgen · 27 N·m – 山', 80, true)).toBe('Jurgen . 27 N.m ? ?');
  });

  it('is cut with a mark and never wider than asked', () => {
    expect(printable('a rather long device name', 10)).toBe('a rather …');
    expect(printable('a rather long device name', 10, true)).toBe('a rather ~');
    expect(printable('山田太郎', 5)).toBe('山田…');
    expect(printable('anything', 0)).toBe('');
  });

  it('is never cut inside a letter that is written in parts', () => {
    expect(cut('한국어', 3, '…')).toBe('한…');
    expect(cut('🇨🇭🇨🇭', 3, '…')).toBe('🇨🇭…');
  });

  it('never holds a control character, is measured as Ink measures it, and never exceeds its width', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.string({ unit: 'binary', maxLength: 30 }), fc.nat(20)), {
          minLength: 20,
          maxLength: 20,
        }),
        (cases) => {
          const texts = cases.map(([text, width]) => printable(text, width));
          for (const text of texts) expect(text).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
          const widths = inkColumns(texts);
          expect(texts.map(columnsOf)).toEqual(widths);
          for (const [at, [, width]] of cases.entries()) expect(widths[at]).toBeLessThanOrEqual(width);
        },
      ),
      { numRuns: 20 },
    );
  });

  it('is measured as Ink measures it where a letter joins what follows', () => {
    const texts = ['\u{11a84}', 'a\u0d4e', '', 'x', '山'];
    expect(texts.map(columnsOf)).toEqual([1, 2, 0, 1, 2]);
    expect(inkColumns(texts)).toEqual([1, 2, 0, 1, 2]);
  });

  it('does not grow a tower of accents', () => {
    expect(printable(`a${'\u0323'.repeat(40)}`, 80).length).toBeLessThanOrEqual(4);
  });
});

describe('cut, fill and fold', () => {
  it('fill gives exactly the columns asked', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 20 }), fc.nat(30), (text, columns) => {
        expect(columnsOf(fill(printable(text, 100), columns, '.'))).toBe(columns);
      }),
    );
  });

  it('cut leaves what fits alone', () => {
    expect(cut('exact', 5, '…')).toBe('exact');
    expect(cut('too long', 5, '…')).toBe('too …');
  });

  it('folds at spaces and says when something is missing', () => {
    expect(folded('fit the plug by hand', 12, 2, '…')).toEqual(['fit the plug', 'by hand']);
    expect(folded('fit the plug by hand, then pull', 12, 2, '…')).toEqual(['fit the plug', 'by hand, th…']);
    expect(folded('unbreakablelongword next', 8, 3, '…')).toEqual(['unbreak…', 'next']);
  });

  it('never folds wider or longer than asked', () => {
    fc.assert(
      fc.property(
        fc.lorem({ maxCount: 30 }),
        fc.integer({ min: 3, max: 60 }),
        fc.integer({ min: 1, max: 4 }),
        (text, columns, rows) => {
          const lines = folded(text, columns, rows, '…');
          expect(lines.length).toBeLessThanOrEqual(rows);
          for (const line of lines) expect(columnsOf(line)).toBeLessThanOrEqual(columns);
        },
      ),
    );
  });
});
