import { columnsOf, cut } from '../ui/printable.ts';

/** A label ends before this column. */
const FURTHEST = 26;

/** A line as lines of at most `columns`, broken between words; what goes on stands under the text, not under its label. */
export function wrapped(line: string, columns: number): string[] {
  const indent = ' '.repeat(Math.min(textOf(line), Math.max(Math.floor(columns / 3), 4)));
  const lines: string[] = [];
  let rest = line;
  while (columnsOf(rest) > columns) {
    const whole = cut(rest, columns, '');
    const space = rest.lastIndexOf(' ', whole.length);
    const at = space > indent.length ? space : Math.max(whole.length, indent.length + 1);
    lines.push(rest.slice(0, at).trimEnd());
    rest = indent + rest.slice(at).trimStart();
  }
  return [...lines, rest];
}

/** Where the text begins after its labels: labels end with two spaces, and only indented lines have them. */
function textOf(line: string): number {
  const labels = /^ +(?:\S+(?: \S+)* {2,})*/.exec(line.slice(0, FURTHEST))?.[0] ?? '';
  return labels.trim() === '' ? Math.max(4, labels.length + 2) : labels.length;
}
