import type { JobState } from '../job/state.ts';
import { hasPhoneNumber } from '../personal.ts';
import { phoneNote } from '../report/words/index.ts';
import { w } from '../words/catalogue.ts';
import { editorSpans, textOf } from './editor.ts';
import { type PullTimes, wantedBy } from './exceptions.ts';
import type { Form } from './form.ts';
import type { Glyphs } from './glyphs.ts';
import type { Line } from './line.ts';
import { type Room, scrolled } from './panels/panel.ts';
import { columnsOf, printable } from './printable.ts';

/** `types`: a gauge of the station types digits, which then choose nothing. */
export interface FormContext {
  readonly types: boolean;
  readonly pullTimes: PullTimes;
}

/** What can be answered: the options with their keys, or the line that is being typed, and why the last was not taken. */
export function formLines(
  form: Form,
  job: JobState,
  { columns, rows }: Room,
  glyphs: Glyphs,
  { types, pullTimes }: FormContext,
): Line[] {
  const wanted = wantedBy(form, job, pullTimes);
  if (wanted.want !== 'answer') return [];
  const { typed } = wanted;
  if (form.text !== null && typed !== null) {
    const label = `   ${typed.label}: `;
    const line: Line = [
      { text: label },
      ...editorSpans(form.text, Math.max(8, columns - columnsOf(label) - 2), glyphs),
    ];
    const fault: Line[] =
      form.fault === null
        ? []
        : [
            [
              {
                text: `   ${glyphs.again} ${printable(form.fault, columns - 6, glyphs.ascii)}`,
                tone: 'attention',
                bold: true,
              },
            ],
          ];
    const note: Line[] = hasPhoneNumber(textOf(form.text))
      ? [[{ text: `   ${printable(phoneNote(), columns - 4, glyphs.ascii)}`, tone: 'attention' }]]
      : [];
    return [line, ...note, ...fault];
  }
  const own = typed === null ? [] : [{ words: w`something else, typed` }];
  const lines = [...wanted.options, ...own].map(({ words }, i): Line => {
    const here = i === form.at;
    const text = printable(words, columns - 10, glyphs.ascii);
    return [
      { text: ` ${here ? glyphs.pointer : ' '} ${i < 9 && !types ? `[${i + 1}]` : '   '} `, bold: here },
      { text, bold: here, inverse: here },
    ];
  });
  return [...scrolled(lines, form.at, rows, glyphs)];
}
