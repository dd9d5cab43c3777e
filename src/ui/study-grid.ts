/** Parts across, appraisers down: which trials are measured and which are open, and nothing of what they came to. */

import { w } from '../words/catalogue.ts';
import type { Glyphs } from './glyphs.ts';
import type { Line, Span } from './line.ts';
import { scrolled } from './panels/panel.ts';
import { columnsOf, fill, printable } from './printable.ts';
import type { StudyView } from './study-view.ts';

/** `marks`: one for each trial; `count`: one for the cell, with room around; `tiny`: one for the cell. */
interface GridForm {
  readonly cell: 'marks' | 'count' | 'tiny';
  readonly columns: number;
}

const MOST_NAME = 14;
const LEAST_NAME = 5;
const MOST_LABEL = 5;

function formFor({ parts, trials }: StudyView, columns: number): GridForm {
  const longest = Math.min(MOST_LABEL, Math.max(...parts.map(columnsOf)));
  const forms: readonly GridForm[] = [
    { cell: 'marks', columns: Math.max(trials, longest) + 1 },
    { cell: 'count', columns: 3 },
  ];
  const room = columns - LEAST_NAME - 3;
  return forms.find((form) => form.columns * parts.length <= room) ?? { cell: 'tiny', columns: 1 };
}

/** One character for a cell: nothing, so many, all. */
function countMark(done: number, trials: number, glyphs: Glyphs): string {
  if (done === 0) return glyphs.todo;
  return done >= trials ? glyphs.done : String(done % 10);
}

function cellText(view: StudyView, done: number, due: boolean, form: GridForm, glyphs: Glyphs): string {
  const { trials } = view;
  if (form.cell === 'marks') {
    const open = Math.max(0, trials - done - (due ? 1 : 0));
    return glyphs.done.repeat(done) + (due ? glyphs.pointer : '') + glyphs.todo.repeat(open);
  }
  const mark = countMark(done, trials, glyphs);
  if (form.cell === 'tiny') return due ? glyphs.pointer : mark;
  return due ? `${glyphs.pointer}${mark}` : mark;
}

function rowLine(view: StudyView, appraiser: number, name: number, form: GridForm, glyphs: Glyphs): Line {
  const mine = view.due?.appraiser === appraiser;
  const who = printable(view.appraisers[appraiser] ?? '', name, glyphs.ascii);
  const cells = view.parts.map((_, part): Span => {
    const due = mine && view.due?.part === part;
    const text = cellText(view, view.measured[appraiser]?.[part] ?? 0, due, form, glyphs);
    return { text: fill(text, form.columns, ''), bold: due, inverse: due };
  });
  const head = ` ${mine ? glyphs.pointer : ' '}${fill(who, name, glyphs.cutMark)} `;
  return [{ text: head, bold: mine }, ...cells];
}

function headLine({ parts }: StudyView, name: number, form: GridForm, glyphs: Glyphs): Line {
  if (form.cell === 'tiny') return [{ text: fill(w`  part`, name + 3, ''), dim: true }];
  const labels = parts.map((part) => {
    const room = form.columns - 1;
    return fill(printable(part, room, glyphs.ascii), form.columns, glyphs.cutMark);
  });
  return [{ text: `${fill(w`  part`, name + 3, '')}${labels.join('')}`, dim: true }];
}

function legendLine({ trials }: StudyView, form: GridForm, glyphs: Glyphs): Line {
  const so = form.cell === 'marks' || trials < 3 ? '' : w`   2 measured twice`;
  const all = form.cell === 'marks' ? w`measured` : w`all measured`;
  return [{ text: w`  ${glyphs.done} ${all}${so}   ${glyphs.todo} open   ${glyphs.pointer} now`, dim: true }];
}

/** The grid in `rows` lines at most, the appraiser who is at it always among them. */
export function gridLines(view: StudyView, columns: number, rows: number, glyphs: Glyphs): readonly Line[] {
  if (rows < 2) return [];
  const form = formFor(view, columns);
  const left = columns - 3 - form.columns * view.parts.length;
  const name = Math.min(MOST_NAME, left, Math.max(LEAST_NAME, ...view.appraisers.map(columnsOf)));
  const lines = view.appraisers.map((_, i) => rowLine(view, i, name, form, glyphs));
  const body = scrolled(lines, view.due?.appraiser ?? 0, rows - (rows > 2 ? 2 : 1), glyphs);
  return [headLine(view, name, form, glyphs), ...body, ...(rows > 2 ? [legendLine(view, form, glyphs)] : [])];
}
