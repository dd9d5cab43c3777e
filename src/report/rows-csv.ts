import { clean } from './clean.ts';
import { type CsvStyle, USUAL_CSV } from './csv-style.ts';
import { type Column, rowsOf, shortened } from './rows.ts';

const BYTE_ORDER_MARK = '\uFEFF';

/**
 * Rows as RFC 4180, as the CSV of a job record is: with a byte order mark, CRLF, and cells that no spreadsheet runs. In English for
 * every reader: other programs read it.
 */
export function rowsCsv<T>(
  columns: readonly Column<T>[],
  rows: readonly T[],
  style: CsvStyle = USUAL_CSV,
): string {
  const lines = [columns.map(({ header }) => header), ...rowsOf(columns, rows)].map((cells) =>
    cells.map((cell) => csvCell(cell, style)),
  );
  const mark = style.mark ? BYTE_ORDER_MARK : '';
  return mark + lines.map((cells) => `${cells.join(style.separator)}\r\n`).join('');
}

/** What a spreadsheet takes for the start of a formula, in full width too, behind any space; and our own mark. */
const FORMULA = /^\s*['=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/;
/** The same where a spreadsheet of another country parts the cells: it knows no quotation marks but at the start of a cell of its own. */
const BEHIND = {
  ',': /;(?=\s*['=+\-@\uFF1D\uFF0B\uFF0D\uFF20])/g,
  ';': /,(?=\s*['=+\-@\uFF1D\uFF0B\uFF0D\uFF20])/g,
} as const;

/**
 * One cell. Numbers are written as numbers, negative ones too. A text that a spreadsheet could run as a formula gets an
 * apostrophe in front, and so does one that begins with an apostrophe; the same behind the other separator in a text. Taking
 * them off gives the text back.
 */
export function csvCell(
  value: string | number | null,
  { separator, decimal: point }: CsvStyle = USUAL_CSV,
): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(shortened(value)).replace('.', point);
  const text = clean(value).replace(BEHIND[separator], "$&'");
  const harmless = FORMULA.test(text) ? `'${text}` : text;
  return /["\r\n]/.test(harmless) || harmless.includes(separator)
    ? `"${harmless.replaceAll('"', '""')}"`
    : harmless;
}
