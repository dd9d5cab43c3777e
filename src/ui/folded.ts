import { columnsOf, cut } from './printable.ts';

/** A line for the normal screen as lines of at most `columns`, broken at spaces; what goes on stands further in. */
export function unbroken(line: string, columns: number): string[] {
  if (columnsOf(line) <= columns) return [line];
  const indent = ' '.repeat(line.length - line.trimStart().length);
  return folded(line, columns - indent.length - 2, Number.POSITIVE_INFINITY, '').map(
    (text, at) => `${indent}${at === 0 ? '' : '  '}${text}`,
  );
}

/** `text` on at most `rows` lines of `columns`, broken at spaces; what does not fit is cut with `mark`. */
export function folded(text: string, columns: number, rows: number, mark: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').filter((one) => one !== '')) {
    const last = lines.at(-1);
    const fits = last !== undefined && columnsOf(`${last} ${word}`) <= columns;
    if (last !== undefined && (fits || lines.length === rows)) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.map((line) => cut(line, columns, mark));
}
