import writeXlsx, { type CellObject } from 'write-excel-file/node';
import { clean } from './clean.ts';
import { type Column, rowsOf, shortened, type Value } from './rows.ts';

/** No spreadsheet takes a longer text (ECMA-376, 18.3.1.4, as the programs have it). */
const MOST_CHARACTERS = 32_767;
/** Narrow enough for a screen, wide enough for a time. */
const WIDTH = 16;

/** Rows as a workbook of one sheet (ECMA-376): every cell is a number or a text, and none a formula. */
export function rowsWorkbook<T>(columns: readonly Column<T>[], rows: readonly T[]): Promise<Uint8Array> {
  const head = columns.map(({ header }): CellObject => ({ type: String, value: header, fontWeight: 'bold' }));
  const cells = rowsOf(columns, rows).map((row) => row.map(cell));
  const book = writeXlsx([head, ...cells], {
    sheet: 'plugmark',
    stickyRowsCount: 1,
    columns: columns.map(() => ({ width: WIDTH })),
  });
  return book.toBuffer();
}

function cell(value: Value): CellObject | null {
  if (value === null) return null;
  return typeof value === 'number'
    ? { type: Number, value: shortened(value) }
    : { type: String, value: clean(value).slice(0, MOST_CHARACTERS) };
}
