import { describe, expect, it } from 'vitest';
import { type ColumnNames, parseTrace } from '../../src/pull/columns.ts';

const NAMES: ColumnNames = { time: 't', torque: 'nm', angle: null, secondsPerUnit: 0.001, nmPerUnit: 1 };
const read = (text: string, names: Partial<ColumnNames> = {}) => {
  const out = parseTrace(text, { ...NAMES, ...names }, 'x.csv');
  if (!out.ok) return `${out.error.where}: ${out.error.message}`;
  const { atUs, nm, angleDeg, gaps } = out.value;
  return { atUs: [...atUs], nm: [...nm], angleDeg: angleDeg && [...angleDeg], gaps };
};

describe('a trace in columns', () => {
  it('is read by the names of its columns, in their units, whatever stands between them', () => {
    const expected = { atUs: [0, 10_000], nm: [1.5, 27], angleDeg: null, gaps: [] };
    for (const text of ['t,nm\n0,1.5\n10,27\n', 't;nm\r\n0;1.5\r\n10;27', '\uFEFFT\tNM\n0\t1.5\n\n10\t2.7e1'])
      expect(read(text)).toEqual(expected);
    expect(read('t,"nm",deg\n0,1,5\n2, 2 ,-\n', { angle: 'deg', nmPerUnit: 2, secondsPerUnit: 1 })).toEqual({
      atUs: [0, 2_000_000],
      nm: [2, 4],
      angleDeg: [5, Number.NaN],
      gaps: [],
    });
  });

  it('has a gap where a row holds no torque', () => {
    expect(read('t,nm\n0,1\n5,NaN\n10,\n20,3')).toEqual({
      atUs: [0, 20_000],
      nm: [1, 3],
      angleDeg: null,
      gaps: [
        { row: 3, atUs: 5_000, why: 'no torque' },
        { row: 4, atUs: 10_000, why: 'no torque' },
      ],
    });
  });

  it.each([
    ['', 'x.csv: row 1: the file is empty'],
    ['t,nm\n', 'x.csv: the file holds no samples'],
    ['t,deg\n0,1', 'x.csv: row 1: the header has no column "nm"; it has: t, deg'],
    ['t,nm\n0,1\n5', 'x.csv: row 3: expected 2 columns as in the header, found 1'],
    ['t,nm\nsoon,1', 'x.csv: row 2: column t: expected a time, found "soon"'],
    ['t,nm\n0,much', 'x.csv: row 2: column nm: expected a torque, found "much"'],
    ['t,nm\n-1,1', 'x.csv: row 2: the time is below zero'],
    ['t,nm\n5,1\n4,1', 'x.csv: row 3: the time goes back behind that of the row before it'],
    ['t,nm\n1e300,1', 'x.csv: row 2: the time is too large'],
    ['t,nm\n5,1\n5,2', 'x.csv: row 2: the time stands still from here to the end of the file'],
  ])('%j is refused', (text, message) => {
    expect(read(text)).toBe(message);
  });

  it('of a single sample is one', () => {
    expect(read('t,nm\n5,1')).toMatchObject({ atUs: [5000], nm: [1] });
  });
});
