import { ENGLISH, inLanguage } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { type CsvStyle, USUAL_CSV } from './csv-style.ts';

/** A column of a list: what stands above it, and what it takes from a row. */
export interface CsvColumn<T> {
  readonly header: string;
  readonly value: (row: T) => string | number | null;
}

const BYTE_ORDER_MARK = '\uFEFF';

/**
 * Rows as RFC 4180, as the CSV of a job record is: with a byte order mark, CRLF, and cells that no spreadsheet runs. In English for
 * every reader: other programs read it.
 */
export function rowsCsv<T>(
  columns: readonly CsvColumn<T>[],
  rows: readonly T[],
  style: CsvStyle = USUAL_CSV,
): string {
  const lines = inLanguage(ENGLISH, () => [
    columns.map(({ header }) => csvCell(header, style)),
    ...rows.map((row) => columns.map(({ value }) => csvCell(value(row), style))),
  ]);
  const mark = style.mark ? BYTE_ORDER_MARK : '';
  return mark + lines.map((cells) => `${cells.join(style.separator)}\r\n`).join('');
}

/** What a spreadsheet takes for the start of a formula, in full width too, behind any space; and our own mark. */
const FORMULA = /^\s*['=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/;

/**
 * One cell. Numbers are written as numbers, negative ones too. A text that a spreadsheet could run as a formula gets an
 * apostrophe in front, and so does one that begins with an apostrophe: taking one off gives the text back.
 */
export function csvCell(
  value: string | number | null,
  { separator, decimal: point }: CsvStyle = USUAL_CSV,
): string {
  if (value === null) return '';
  if (typeof value === 'number') return decimal(value).replace('.', point);
  const text = clean(value);
  const harmless = FORMULA.test(text) ? `'${text}` : text;
  return /["\r\n]/.test(harmless) || harmless.includes(separator)
    ? `"${harmless.replaceAll('"', '""')}"`
    : harmless;
}

/** Four decimals are finer than any instrument here; what binary fractions add beyond is dropped. */
function decimal(value: number): string {
  return String(Number(value.toFixed(4)) + 0);
}
