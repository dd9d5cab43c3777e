import { columnsOf, printable } from '../ui/printable.ts';
import { wrapped } from './text-wrap.ts';

/** A column that is wider does not stand beside others where lines have an end. */
const WIDEST_COLUMN = 60;
const LONGEST_CELL = 200;
const INDENT = '    ';
/** A cell that has nothing to say; only a column needs it. */
const NONE = '-';

/**
 * Rows under their heads, each column as wide as its widest cell; text from outside is made safe. Where the table is wider
 * than `columns`, its first columns stand as they are. The others follow below each row, each after its name: a row that
 * the terminal breaks cannot be read.
 */
export function textTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  columns: number,
): readonly string[] {
  const safe = rows.map((row) => row.map((cell) => printable(cell, LONGEST_CELL)));
  const widths = head.map((name, at) =>
    safe.reduce((widest, row) => Math.max(widest, columnsOf(row[at] ?? '')), columnsOf(name)),
  );
  const fitting = fittingIn(widths, columns);
  const line = (row: readonly string[]) =>
    row
      .slice(0, fitting)
      .map((cell, at) => cell + ' '.repeat((widths[at] ?? 0) - columnsOf(cell)))
      .join('  ')
      .trimEnd();
  const rest = (row: readonly string[]) =>
    flowing(
      row
        .slice(fitting)
        .flatMap((cell, at) => (cell === NONE ? [] : [`${head[fitting + at] ?? ''}: ${cell}`])),
      columns,
    );
  return [line(head), ...safe.flatMap((row) => [line(row), ...rest(row)])];
}

/** How many columns stand side by side; the first one always does. */
function fittingIn(widths: readonly number[], columns: number): number {
  let used = -2;
  const broken = widths.findIndex((width) => {
    used += width + 2;
    return used > columns || (Number.isFinite(columns) && width > WIDEST_COLUMN);
  });
  return broken === -1 ? widths.length : Math.max(broken, 1);
}

/** Pieces one after the other, as many a line as fit; none is broken that fits into a line by itself. */
function flowing(pieces: readonly string[], columns: number): readonly string[] {
  const lines: string[] = [];
  for (const [i, piece] of pieces.entries()) {
    const text = i === pieces.length - 1 ? piece : `${piece};`;
    const longer = lines.length === 0 ? '' : `${lines.at(-1)} ${text}`;
    if (longer !== '' && columnsOf(longer) <= columns) lines.splice(-1, 1, longer);
    else lines.push(`${INDENT}${text}`);
  }
  return lines.flatMap((line) => wrapped(line, columns));
}
