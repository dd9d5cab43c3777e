/**
 * Text from outside made safe for a terminal: no control, bidi or invisible characters, and never wider than asked.
 * A device name could otherwise move the cursor, turn the line round or push a verdict out of sight.
 */

const NEVER_SHOWN = /[\p{C}\p{Default_Ignorable_Code_Point}\u2800]/gu;
const PILED_MARKS = /(\p{M}{2})\p{M}+/gu;
const NO_ADVANCE = /^[\p{Mn}\p{Me}]$/u;
/** East Asian Wide and Fullwidth (UAX #11) in whole blocks; too wide a guess only cuts a little earlier. */
const WIDE =
  /^[\u1100-\u115f\u231a\u231b\u2329\u232a\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97c\uac00-\ud7a3\uf900-\ufaff\ufe10-\ufe19\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{16fe0}-\u{18dff}\u{1aff0}-\u{1b2fb}\u{1d300}-\u{1d376}\u{1f000}-\u{3fffd}]$|^\p{Emoji_Presentation}$/u;

function advance(character: string): number {
  if (NO_ADVANCE.test(character)) return 0;
  return WIDE.test(character) ? 2 : 1;
}

/** Terminal columns that `text` takes; for text without control characters. */
export function columnsOf(text: string): number {
  let columns = 0;
  for (const character of text) columns += advance(character);
  return columns;
}

/** `text` if it fits into `columns`, else its beginning with `mark` at the end. */
export function cut(text: string, columns: number, mark: string): string {
  if (columnsOf(text) <= columns) return text;
  const room = columns - columnsOf(mark);
  if (room < 0) return '';
  let kept = '';
  let used = 0;
  for (const character of text) {
    used += advance(character);
    if (used > room) break;
    kept += character;
  }
  return kept + mark;
}

/** `text` cut or filled with spaces to exactly `columns`. */
export function fill(text: string, columns: number, mark: string): string {
  const short = cut(text, columns, mark);
  return short + ' '.repeat(Math.max(0, columns - columnsOf(short)));
}

/** What a terminal may be given of `text`: one line, at most `maxWidth` columns, only ASCII when `ascii`. */
export function printable(text: string, maxWidth: number, ascii = false): string {
  const oneLine = text
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
