import { columnsOf, cut } from '../ui/printable.ts';

/** Where the text of a line begins that has a label in front of it. */
export const LABEL = 16;

/** A line as lines of at most `columns`, broken between words; what goes on stands under the text, not under its label. */
export function wrapped(line: string, columns: number): string[] {
  const labelled = line.slice(0, LABEL + 2).endsWith('  ');
  const indent = ' '.repeat(/^ /.test(line) && labelled ? Math.min(LABEL + 2, Math.floor(columns / 3)) : 4);
  const lines: string[] = [];
  let rest = line;
  while (columnsOf(rest) > columns) {
    const whole = cut(rest, columns, '');
    const space = whole.lastIndexOf(' ');
    const at = space > indent.length ? space : Math.max(whole.length, indent.length + 1);
    lines.push(rest.slice(0, at).trimEnd());
    rest = indent + rest.slice(at).trimStart();
  }
  return [...lines, rest];
}
