import { csvCell } from './csv.ts';

/** A column of a list: what stands above it, and what it takes from a row. */
export interface CsvColumn<T> {
  readonly header: string;
  readonly value: (row: T) => string | number | null;
}

const BYTE_ORDER_MARK = '\uFEFF';

/** Rows as RFC 4180, as the CSV of a job record is: with a byte order mark, CRLF, and cells that no spreadsheet runs. */
export function rowsCsv<T>(columns: readonly CsvColumn<T>[], rows: readonly T[]): string {
  const lines = [
    columns.map(({ header }) => csvCell(header)),
    ...rows.map((row) => columns.map(({ value }) => csvCell(value(row)))),
  ];
  return BYTE_ORDER_MARK + lines.map((cells) => `${cells.join(',')}\r\n`).join('');
}
