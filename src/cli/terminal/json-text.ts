import { WITHHELD } from '../../personal.ts';

/** JSON never leaves these as they stand where they are control characters; C1, bidi and invisible ones it does. */
const NOT_SHOWN = /(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;

/**
 * The value as indented JSON and a newline, as it may go to a terminal: what would steer it is written as \uXXXX, which
 * every reader of JSON gives back as it was; a withheld text says so.
 */
export const jsonText = (value: unknown): string => shown(JSON.stringify(value, null, 2));

/** The same on one line. */
export const jsonLine = (value: unknown): string => shown(JSON.stringify(value));

const shown = (json: string): string =>
  `${json.replaceAll(WITHHELD, 'withheld').replace(NOT_SHOWN, escaped)}\n`;

function escaped(character: string): string {
  const units = Array.from({ length: character.length }, (_, i) => character.charCodeAt(i));
  return units.map((unit) => `\\u${unit.toString(16).padStart(4, '0')}`).join('');
}
