/** One line of text being typed: pure, so that what a key does to it can be read and tested. */
import type { Glyphs } from './glyphs.ts';
import { type KeyPress, printed } from './key-press.ts';
import type { Span } from './line.ts';
import { columnsOf } from './printable.ts';

export interface Editor {
  /** One character each, as a person counts them. */
  readonly before: readonly string[];
  readonly after: readonly string[];
  /** Nobody touched it yet: what is typed first takes its place. */
  readonly proposed?: true;
}

const NEVER_TYPED = /[\p{C}\p{Zl}\p{Zp}]/u;
const letters = new Intl.Segmenter(undefined, { granularity: 'grapheme' });
const split = (text: string): string[] => [...letters.segment(text)].map(({ segment }) => segment);

export const editorWith = (text: string): Editor => ({ before: split(text), after: [] });

/** A text that somebody may take as it is, or type over. */
export const proposed = (text: string): Editor =>
  text === '' ? editorWith('') : { ...editorWith(text), proposed: true };

export const textOf = ({ before, after }: Editor): string => [...before, ...after].join('').normalize('NFC');

const NAMED: Readonly<Record<string, (editor: Editor) => Editor>> = {
  left: ({ before, after }) => ({ before: before.slice(0, -1), after: [...before.slice(-1), ...after] }),
  right: ({ before, after }) => ({ before: [...before, ...after.slice(0, 1)], after: after.slice(1) }),
  home: ({ before, after }) => ({ before: [], after: [...before, ...after] }),
  end: ({ before, after }) => ({ before: [...before, ...after], after: [] }),
  backspace: ({ before, after }) => ({ before: before.slice(0, -1), after }),
};

/** The text after one more key; a character that would make it longer than `most` UTF-16 units is not taken. */
export function edited(editor: Editor, press: KeyPress, most: number): Editor {
  if (press.ctrl === true) return press.key === 'u' ? editorWith('') : editor;
  const named = NAMED[press.key];
  if (named !== undefined)
    return named(editor.proposed === true && press.key === 'backspace' ? editorWith('') : editor);
  const character = printed(press);
  if (character === null || NEVER_TYPED.test(character)) return editor;
  if (editor.proposed === true) return editorWith(character);
  // A mark on its own joins the letter in front of it.
  const before = split([...editor.before, character].join(''));
  const longer = { before, after: editor.after };
  return textOf(longer).length <= most ? longer : editor;
}

/** As much of the text as `columns` hold, the place of the next character in reverse video. */
export function editorSpans({ before, after, proposed }: Editor, columns: number, glyphs: Glyphs): Span[] {
  const shown = (text: string) => (glyphs.ascii ? text.replace(/[^\x20-\x7e]/gu, '?') : text);
  if (proposed === true) return [{ text: shown(before.join('').slice(0, columns)), inverse: true }];
  const [at = ' ', ...rest] = after;
  const room = columns - columnsOf(at);
  const left: string[] = [];
  let used = 0;
  for (const letter of [...before].reverse()) {
    used += columnsOf(letter);
    if (used > room) break;
    left.unshift(letter);
  }
  return [
    { text: shown(left.join('')), bold: true },
    { text: shown(at), inverse: true },
    { text: shown(rest.join('')), bold: true },
  ];
}
