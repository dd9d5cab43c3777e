/**
 * The screen without a screen: lines in, lines out. A line is a key: one character, or `left`, `right`, `up`, `down`, `esc`;
 * an empty line is Enter. While text is asked for, the whole line is that text, and `esc` alone leaves it. A line that is
 * none of these is a figure read off a gauge.
 */

import type { JobState } from '../job/state.ts';
import { wantedBy } from './exceptions.ts';
import { keysLine } from './foot.ts';
import { formLines } from './form-lines.ts';
import { glyphsFor } from './glyphs.ts';
import { type InputState, inputStateFor } from './input-state.ts';
import type { KeyPress } from './key-press.ts';
import { columnsOfLine, type Line } from './line.ts';
import { nextSentence } from './next-step.ts';
import { panelLines } from './panels/index.ts';
import { printable } from './printable.ts';

const NAMED: Readonly<Record<string, string>> = {
  '': 'enter',
  left: 'left',
  right: 'right',
  up: 'up',
  down: 'down',
  esc: 'escape',
  space: ' ',
};

/** The keys that a line stands for; null for a line that is no key. */
export function keysOfLine(line: string, { form }: InputState): readonly KeyPress[] | null {
  const text = line.trim();
  if (form !== null && form.text !== null && text !== 'esc')
    return [{ key: 'u', ctrl: true }, ...[...text].map((key) => ({ key })), { key: 'enter' }];
  const named = Object.hasOwn(NAMED, text) ? NAMED[text] : undefined;
  if (named !== undefined) return [{ key: named }];
  return [...text].length === 1 ? [{ key: text }] : null;
}

const WIDTH = 100;
const ROWS = 60;

const flat = (line: Line): string =>
  columnsOfLine(line) === 0
    ? ''
    : line
        .map(({ text, inverse }) => (inverse === true ? `*${text.trim()}*` : text))
        .join('')
        .trimEnd();

/**
 * What a panel or a form asks, as lines, what is marked between asterisks; empty where the bench itself is at work, of
 * which each event has its own line.
 */
export function askingLines(job: JobState, given: InputState, ascii: boolean): string[] {
  const glyphs = glyphsFor(ascii);
  const input = inputStateFor(given, job);
  const { form, draft, notice } = input;
  const clean = (text: string) => printable(text, 400, ascii);
  const keys = flat(keysLine(job, input, WIDTH));
  if (form !== null) {
    const wanted = wantedBy(form, job, input.pullTimes);
    if (wanted.want !== 'answer') return [];
    const room = { columns: WIDTH, rows: ROWS };
    return [clean(wanted.ask), ...formLines(form, job, room, glyphs, input).map(flat), keys];
  }
  const noticeLines = notice === null ? [] : [clean(notice)];
  if (draft === null || job.questions.length > 0) return noticeLines;
  const lines = panelLines(draft, job, { columns: WIDTH, rows: ROWS }, glyphs).map(flat);
  return [...noticeLines, clean(nextSentence(job, draft)), ...lines.filter((line) => line !== ''), keys];
}
