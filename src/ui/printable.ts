import stringWidth from 'string-width';
import { WITHHELD } from '../personal.ts';

/**
 * Text from outside made safe for a terminal: no control, bidi or invisible characters, and never wider than asked.
 * A device name could otherwise move the cursor, turn the line round or push a verdict out of sight.
 */

const NEVER_SHOWN = /[\p{C}\p{Default_Ignorable_Code_Point}\u2800]/gu;
const PILED_MARKS = /(\p{M}{2})\p{M}+/gu;
const letters = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** Terminal columns that `text` takes, by the same measure as the library that draws the screen; no control characters in it. */
export const columnsOf = (text: string): number => stringWidth(text);

/** `text` if it fits into `columns`, else its beginning with `mark` at the end; never half a letter. */
export function cut(text: string, columns: number, mark: string): string {
  if (columnsOf(text) <= columns) return text;
  const room = columns - columnsOf(mark);
  if (room < 0) return '';
  let kept = '';
  let used = 0;
  for (const { segment } of letters.segment(text)) {
    used += columnsOf(segment);
    if (used > room) break;
    kept += segment;
  }
  return kept + mark;
}

/** `text` cut or filled with spaces to exactly `columns`. */
export function fill(text: string, columns: number, mark: string): string {
  const short = cut(text, columns, mark);
  return short + ' '.repeat(Math.max(0, columns - columnsOf(short)));
}

/** A label with its text behind it, at `columns` where the label leaves room: no language's word is cut. */
export const behindLabel = (label: string, columns: number, text: string): string =>
  columnsOf(label) < columns ? fill(label, columns, '') + text : `${label}  ${text}`;

/** What a terminal may be given of `text`: one line, at most `maxWidth` columns, only ASCII when `ascii`. */
export function printable(text: string, maxWidth: number, ascii = false): string {
  const oneLine = text
    .replaceAll(WITHHELD, 'withheld')
    .normalize('NFC')
    .replace(/[\s\p{Z}]+/gu, ' ')
    .replace(NEVER_SHOWN, '')
    .replace(PILED_MARKS, '$1')
    .trim();
  if (!ascii) return cut(oneLine, maxWidth, '…');
  const plain = oneLine
    .replaceAll('·', '.')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\x20-\x7e]/gu, '?');
  return cut(plain, maxWidth, '~');
}
