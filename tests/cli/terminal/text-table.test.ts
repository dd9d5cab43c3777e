import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textTable } from '../../../src/cli/terminal/text-table.ts';
import { wrapped } from '../../../src/cli/terminal/wrapped.ts';
import { columnsOf } from '../../../src/ui/printable.ts';

const HEAD = ['job', 'state', 'opened (UTC)', 'plate', 'VIN', 'technician', 'owner'];
const ROWS = [
  ['J-3', 'NOT COMPLETE', '2026-05-20 09:30', 'EXAMPLE 4', 'ZZ9EXAMP1PM000104', 'Technician One', 'informed'],
  ['J-12', 'complete', '2026-03-11 09:30', 'EXAMPLE 8', '-', 'Technician Two', 'to be called back'],
];

describe('a table', () => {
  it('stands in columns where the terminal is as wide as it', () => {
    expect(textTable(HEAD, ROWS, 120)).toEqual([
      'job   state         opened (UTC)      plate      VIN                technician      owner',
      'J-3   NOT COMPLETE  2026-05-20 09:30  EXAMPLE 4  ZZ9EXAMP1PM000104  Technician One  informed',
      'J-12  complete      2026-03-11 09:30  EXAMPLE 8  -                  Technician Two  to be called back',
    ]);
  });

  it('keeps its first columns at 80, and says the others by name', () => {
    expect(textTable(HEAD, ROWS, 80)).toEqual([
      'job   state         opened (UTC)      plate      VIN',
      'J-3   NOT COMPLETE  2026-05-20 09:30  EXAMPLE 4  ZZ9EXAMP1PM000104',
      '    technician: Technician One; owner: informed',
      'J-12  complete      2026-03-11 09:30  EXAMPLE 8  -',
      '    technician: Technician Two; owner: to be called back',
    ]);
  });

  it('at 60 has as many lines a row as it takes, broken between one and the next', () => {
    expect(textTable(HEAD, ROWS, 60)).toEqual([
      'job   state         opened (UTC)      plate',
      'J-3   NOT COMPLETE  2026-05-20 09:30  EXAMPLE 4',
      '    VIN: ZZ9EXAMP1PM000104; technician: Technician One;',
      '    owner: informed',
      'J-12  complete      2026-03-11 09:30  EXAMPLE 8',
      '    technician: Technician Two; owner: to be called back',
    ]);
  });

  it('is one line a row where there is no terminal', () => {
    expect(textTable(HEAD, ROWS, Number.POSITIVE_INFINITY)).toHaveLength(3);
    expect(textTable(HEAD, ROWS)).toHaveLength(3);
  });

  it('has as many rows as a long history', () => {
    const rows = Array.from({ length: 150_000 }, (_, i) => [`J-${i}`]);
    expect(textTable(['job'], rows)).toHaveLength(150_001);
  });

  it('never is wider than a terminal, and tears no word that fits into a line', () => {
    const cell = fc.stringMatching(/^[a-z0-9]{1,12}( [a-z0-9]{1,12}){0,2}$/);
    const table = fc
      .integer({ min: 1, max: 15 })
      .chain((n) =>
        fc.tuple(
          fc.array(cell, { minLength: n, maxLength: n }),
          fc.array(fc.array(cell, { minLength: n, maxLength: n }), { minLength: 1, maxLength: 5 }),
        ),
      );
    fc.assert(
      fc.property(table, fc.constantFrom(60, 80, 120), ([head, rows], columns) => {
        const lines = textTable(head, rows, columns);
        const words = new Set(lines.flatMap((line) => line.split(/[ ;:]+/)));
        for (const line of lines) expect(columnsOf(line)).toBeLessThanOrEqual(columns);
        for (const word of [head, ...rows].flat().flatMap((text) => text.split(' ')))
          expect(words).toContain(word);
      }),
    );
  });
});

describe('a finding at 80 columns', () => {
  it('goes on under its text', () => {
    const line = `  [ok]   judged again  ${'The raw samples give the same pulls and the same verdicts. '.repeat(2).trim()}`;
    expect(wrapped(line, 80)).toEqual([
      '  [ok]   judged again  The raw samples give the same pulls and the same',
      '                       verdicts. The raw samples give the same pulls and the',
      '                       same verdicts.',
    ]);
  });

  it('goes on a little further in where it has no label', () => {
    expect(wrapped('    that no job was left out when it was chosen', 40)).toEqual([
      '    that no job was left out when it was',
      '      chosen',
    ]);
  });
});
