/** One line of the screen as spans of text; cut to its width here, so that no terminal ever wraps a line. */
import { columnsOf, cut } from './printable.ts';
import type { Tone } from './words.ts';

export interface Span {
  readonly text: string;
  readonly tone?: Tone | undefined;
  readonly bold?: boolean;
  readonly inverse?: boolean;
  readonly dim?: boolean;
}
export type Line = readonly Span[];

export const columnsOfLine = (line: Line): number => line.reduce((sum, { text }) => sum + columnsOf(text), 0);

/** Exactly `rows` lines: the rest cut off, what is missing empty. */
export const exactly = (lines: readonly Line[], rows: number): Line[] =>
  Array.from({ length: rows }, (_, row) => lines[row] ?? []);

/** The line cut to `columns`. */
export function cutLine(line: Line, columns: number, mark: string): Line {
  const kept: Span[] = [];
  let left = columns;
  for (const span of line) {
    const text = cut(span.text, left, left > 0 ? mark : '');
    if (text !== '') kept.push({ ...span, text });
    if (text !== span.text) break;
    left -= columnsOf(text);
  }
  return kept;
}

/** `left` and `right` pushed apart to fill `columns`; `right` is kept whole. */
export function apart(left: Line, right: Line, columns: number, mark: string): Line {
  const room = Math.max(0, columns - columnsOfLine(right) - 2);
  const short = cutLine(left, room, mark);
  const space = Math.max(0, columns - columnsOfLine(short) - columnsOfLine(right));
  return [...short, { text: ' '.repeat(space), inverse: left[0]?.inverse === true }, ...right];
}
