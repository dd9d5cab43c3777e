/** Lists and CSV as other programs open them: numbers are numbers, and no text runs. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parquetReadObjects, parquetSchema } from 'hyparquet';
import { afterAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { writeCsv } from '../../src/report/csv.ts';
import { jobCsvSchema } from '../../src/report/csv-columns.ts';
import { csvStyleOf } from '../../src/report/csv-style.ts';
import type { Column } from '../../src/report/rows.ts';
import { rowsParquet } from '../../src/report/rows-parquet.ts';
import { rowsWorkbook } from '../../src/report/rows-workbook.ts';
import { modelOf, TROUBLED } from './fixtures.ts';
import { cellsOf, hasSpreadsheet } from './spreadsheet.ts';

const folder = mkdtempSync(join(tmpdir(), 'plugmark-lists-'));
afterAll(() => rmSync(folder, { recursive: true }));
const written = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

const HOSTILE = [
  '=1+1',
  '+2',
  '-3',
  '@SUM(A1)',
  '=HYPERLINK("https://example.test")',
  '＝1',
  '<&>"\'',
  '1,5',
  '007',
];

interface Row {
  readonly text: string;
  readonly figure: number | null;
}
const COLUMNS: readonly Column<Row>[] = [
  { header: 'Text', value: ({ text }) => text },
  { header: 'Figure', value: ({ figure }) => figure, isFigure: true },
  { header: 'Nothing', value: () => null, isFigure: true },
];
const FIGURES = [27.35, -14.3, 0.1 + 0.2, 0, null, 1e-4, 123_456.789, 1 / 3, 5];
const ROWS = HOSTILE.map((text, i): Row => ({ text, figure: FIGURES[i] ?? null }));
const SHORT = [27.35, -14.3, 0.3, 0, null, 1e-4, 123_456.789, 0.3333, 5];

/** LibreOffice takes two seconds to start. */
describe.runIf(hasSpreadsheet)('in LibreOffice', () => {
  it.each(['en', 'de'] as const)(
    'the CSV of a job in %s: figures are numbers, all else is text',
    (language) => {
      const style = csvStyleOf(language);
      if (style === null) throw new Error(language);
      const { model } = modelOf(TROUBLED);
      const file = written(`job-${language}.csv`, writeCsv(model, style));
      const [head = [], ...rows] = cellsOf(file, { separator: style.separator, language });
      const columns = Object.entries(jobCsvSchema.shape);
      expect(head.slice(0, columns.length).map(({ text }) => text)).toEqual(columns.map(([name]) => name));
      expect(rows).toHaveLength(model.rows.length);
      const kinds = (isFigure: boolean) =>
        new Set(
          columns.flatMap(([, schema], at) =>
            schema instanceof z.ZodNullable === isFigure ? rows.map((row) => row[at]?.type) : [],
          ),
        );
      expect(kinds(true)).toEqual(new Set(['float', 'empty']));
      expect(kinds(false).has('date')).toBe(false);
      expect(rows.flat().some(({ isFormula }) => isFormula)).toBe(false);
      const at = columns.findIndex(([name]) => name === 'Peak torque (N·m)');
      const peaks = rows.flatMap((row) => row[at]?.value ?? []);
      const judged = model.rows.flatMap(({ quantity, value }) =>
        quantity === 'torque' && value !== null ? [Number(value.toFixed(4))] : [],
      );
      expect(judged.length).toBeGreaterThan(3);
      expect(peaks).toEqual(judged);
    },
  );

  it('a workbook: figures are numbers, no text is a formula', async () => {
    const file = written('list.xlsx', await rowsWorkbook(COLUMNS, ROWS));
    const [head = [], ...rows] = cellsOf(file, 'xlsx');
    expect(head.slice(0, 3).map(({ text }) => text)).toEqual(['Text', 'Figure', 'Nothing']);
    expect(rows.map(([text]) => [text?.type, text?.text, text?.isFormula])).toEqual(
      HOSTILE.map((text) => ['string', text, false]),
    );
    expect(rows.map(([, figure]) => figure?.value ?? null)).toEqual(SHORT);
  });
});

describe('Parquet', () => {
  it('gives the rows back by another reader: figures as DOUBLE, texts as they are', async () => {
    const bytes = rowsParquet(COLUMNS, ROWS);
    const file = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
    const rows = await parquetReadObjects({ file: file as ArrayBuffer });
    expect(rows).toEqual(HOSTILE.map((Text, i) => ({ Text, Figure: SHORT[i], Nothing: null })));
  });

  it('has the same columns where no row has a figure', async () => {
    const { parquetMetadata } = await import('hyparquet');
    const typesOf = (rows: readonly Row[]) => {
      const bytes = rowsParquet(COLUMNS, rows);
      return parquetSchema(parquetMetadata(Uint8Array.from(bytes).buffer)).children.map(({ element }) => [
        element.name,
        element.type,
      ]);
    };
    const expected = [
      ['Text', 'BYTE_ARRAY'],
      ['Figure', 'DOUBLE'],
      ['Nothing', 'DOUBLE'],
    ];
    expect(typesOf(ROWS)).toEqual(expected);
    expect(typesOf([])).toEqual(expected);
  });
});
