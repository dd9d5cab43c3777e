import { parse as parseCsv } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clean } from '../../src/report/clean.ts';
import { writeCsv } from '../../src/report/csv.ts';
import { jobCsvSchema } from '../../src/report/csv-columns.ts';
import { csvStyleOf } from '../../src/report/csv-style.ts';
import { csvCell } from '../../src/report/rows-csv.ts';
import { modelOf, OTHER_SCRIPTS, TROUBLED } from './fixtures.ts';

/** RFC 4180, section 2, and nothing beyond it: throws on a quote in an unquoted field or a bare CR or LF. */
function parse(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    const match = /^(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/.exec(text.slice(at));
    if (match === null) throw new Error(`not RFC 4180 at ${at}: ${text.slice(at, at + 20)}`);
    row.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === '\r\n') {
      rows.push(row);
      row = [];
    }
    at += match[0].length;
  }
  return rows;
}

const csvOf = (options = {}) => writeCsv(modelOf(options).model);
const table = (text: string) => {
  const [header = [], ...rows] = parse(text.slice(1));
  return rows.map((row) => Object.fromEntries(header.map((name, i) => [name, row[i] ?? ''])));
};

const ANY_TEXT = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.string({ unit: fc.constantFrom(';', ',', "'", '=', '-', ' ', '"', 'a') }),
);

describe('a cell', () => {
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', ' =1', '\t=1', '\r=1', "'=1", '＝1', '－1'])(
    '%j cannot run as a formula',
    (text) => {
      const cell = csvCell(text);
      expect(cell.replace(/^"/, '')).toMatch(/^'/);
    },
  );

  test('numbers stay numbers, negative ones too, with a decimal point and no minus before zero', () => {
    expect([-14.3, 0.1 + 0.2, -0, 27, null].map((value) => csvCell(value))).toEqual([
      '-14.3',
      '0.3',
      '0',
      '27',
      '',
    ]);
  });

  test.each([
    [',', ';', 'Smith;=HYPERLINK("https://example.org")', `"Smith;'=HYPERLINK(""https://example.org"")"`],
    [',', ';', 'oil; @SUM(A1)', "oil;' @SUM(A1)"],
    [';', ',', 'Smith,=1+1,x', "Smith,'=1+1,x"],
    [';', ',', 'Smith, Jones', 'Smith, Jones'],
  ])('parted by %s runs no formula in a spreadsheet that parts by %s: %j', (separator, _, text, cell) => {
    const locale = separator === ',' ? 'en' : 'de';
    expect(csvCell(text, csvStyleOf(locale) ?? undefined)).toBe(cell);
  });

  test('parsed back and its apostrophe taken off, any text is itself again', () => {
    fc.assert(
      fc.property(fc.array(ANY_TEXT, { minLength: 1, maxLength: 4 }), (texts) => {
        const cells = parse(`${texts.map((value) => csvCell(value)).join(',')}\r\n`)[0] ?? [];
        expect(cells.map((cell) => cell.replace(/(^|;)'/g, '$1'))).toEqual(texts.map(clean));
        for (const cell of cells) expect(cell).not.toMatch(/^\s*[=+\-@\t\r]/);
      }),
    );
  });
});

describe('the table', () => {
  test('begins with a byte order mark and ends every row with CRLF, each as long as the header', () => {
    const text = csvOf(TROUBLED);
    expect(text.startsWith('\uFEFFJob,')).toBe(true);
    const rows = parse(text.slice(1));
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
  });

  test('every column that holds a quantity names its unit', () => {
    const header = parse(csvOf().slice(1))[0] ?? [];
    // Figures as the shop reads them have their unit in a column.
    expect(header).toContain('Unit as shown');
    const inOneUnit = header.filter((name) => !name.includes('as shown'));
    const quantities = inOneUnit.filter((name) =>
      /torque \(|Gap .*\(|Gap \(|release|Follow|U, 95|limit|accepted|Rise|urned |wound/.test(name),
    );
    expect(quantities).toHaveLength(25);
    for (const name of quantities) expect(name).toMatch(/\((mm|N·m|ms|%|deg)\)$/);
  });

  test('one row an attempt: a failed pull and its repetition both stand', () => {
    const rows = table(csvOf({ firstPull: { 3: 31.42 } })).filter(
      (row) => row['Quantity'] === 'torque' && row['Cylinder'] === '3',
    );
    expect(
      rows.map((row) => [row['Attempt'], row['Peak torque (N·m)'], row['Verdict'], row['Answer']]),
    ).toEqual([
      ['1', '31.42', 'NOT OK', 'refit'],
      ['2', '27.8', 'OK', ''],
    ]);
  });

  test('a cylinder that nobody touched is two rows that say so, a pull on no cylinder is one without a number', () => {
    const undone = table(csvOf({ skip: [2] })).filter((row) => row['Cylinder'] === '2');
    expect(undone.map((row) => [row['Quantity'], row['Verdict']])).toEqual([
      ['gap', 'NOT DONE'],
      ['torque', 'NOT DONE'],
    ]);
    const stray = table(csvOf(TROUBLED)).filter((row) => row['Cylinder'] === '');
    expect(stray.map((row) => [row['Pull'], row['Kind of pull'], row['Cut off']])).toEqual([
      ['5', 'handling', 'link-lost'],
    ]);
  });

  test('names in any script stay as they are; a simulated job says so in every row', () => {
    const rows = table(csvOf({ ...OTHER_SCRIPTS, source: 'simulated' }));
    expect(new Set(rows.map((row) => row['Technician']))).toEqual(new Set(['王小明 / Łukasz Őry']));
    expect(new Set(rows.map((row) => row['Proves nothing']))).toEqual(new Set(['SIMULATED']));
  });

  test('the same record gives the same text', () => {
    expect(csvOf(TROUBLED)).toBe(csvOf(TROUBLED));
  });
});

describe('for the spreadsheets of a country', () => {
  const { model } = modelOf(TROUBLED);
  const rowsIn = (locale: string) => {
    const style = csvStyleOf(locale);
    if (style === null) throw new Error(`${locale} is not known`);
    const text = writeCsv(model, style);
    return { text, style, rows: rowsBy(text, style.separator) };
  };
  /** By a reader of CSV that is not ours. */
  const rowsBy = (text: string, delimiter: string): string[][] =>
    parseCsv(text, { delimiter, bom: true, relax_column_count: false });

  test.each([
    ['en', ',', '.'],
    ['en-GB', ',', '.'],
    ['de', ';', ','],
    ['fr-FR', ';', ','],
    ['de-CH', ',', '.'],
    ['pt-BR', ';', ','],
    ['none', ',', '.'],
  ])('%s parts cells by %j and has %j before the decimals', (locale, separator, decimal) => {
    expect(csvStyleOf(locale)).toMatchObject({ separator, decimal });
  });

  test.each(['', 'xx-no-such-country-at-all', '../de', '-'])('%j is no language', (locale) => {
    expect(csvStyleOf(locale)).toBeNull();
  });

  test('German has the same figures as English, numbers as numbers', () => {
    const [english, german] = [rowsIn('en').rows, rowsIn('de').rows];
    expect(german).toHaveLength(english.length);
    let numbers = 0;
    english.forEach((row, r) => {
      row.forEach((cell, c) => {
        const there = german[r]?.[c] ?? '';
        if (/^-?\d+\.\d+$/.test(cell)) {
          numbers++;
          expect(there).toBe(cell.replace('.', ','));
        } else expect(there).toBe(cell);
      });
    });
    expect(numbers).toBeGreaterThan(50);
  });

  test('only none begins without a byte order mark', () => {
    expect(rowsIn('de').text.startsWith('\uFEFF')).toBe(true);
    expect(rowsIn('none').text.startsWith('Job,')).toBe(true);
  });

  test('the columns are those of the schema, each value of its type', () => {
    const [header = [], ...rows] = rowsIn('en').rows;
    expect(header).toEqual(Object.keys(jobCsvSchema.shape));
    const isFigure = (name: string) =>
      jobCsvSchema.shape[name as keyof typeof jobCsvSchema.shape].safeParse(null).success;
    for (const row of rows) {
      const typed = header.map((name, i) => {
        const cell = row[i] ?? '';
        if (!isFigure(name)) return [name, cell];
        return [name, cell === '' ? null : Number(cell)];
      });
      expect(jobCsvSchema.safeParse(Object.fromEntries(typed)).error).toBeUndefined();
    }
  });
});
