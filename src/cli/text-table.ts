import { columnsOf, printable } from '../ui/printable.ts';

/** Rows under their heads, each column as wide as its widest cell; text from outside is made safe, and cut at 40 columns. */
export function textTable(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const table = [head, ...rows.map((row) => row.map((cell) => printable(cell, 40)))];
  const widths = head.map((_, at) => Math.max(...table.map((row) => columnsOf(row[at] ?? ''))));
  return table.map((row) =>
    row
      .map((cell, at) => cell + ' '.repeat((widths[at] ?? 0) - columnsOf(cell)))
      .join('  ')
      .trimEnd(),
  );
}
