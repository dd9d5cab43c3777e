/** A package, or many records, on the page; each record opens on its own. */
import { h, list, part } from './dom.ts';
import { banner, checksPart, line, table } from './record-view.ts';
import type { PackageShown, RecordsShown, RowShown } from './shown.ts';
import { toneSymbol } from './symbol.ts';

export type Open = (file: string) => void;

export const recordsView = (shown: RecordsShown, open: Open): readonly (Node | null)[] => [
  banner(shown),
  part('Remarks', list(shown.remarks)),
  part('Records', rows(shown.rows, open)),
];

export const packageView = (shown: PackageShown, open: Open): readonly (Node | null)[] => [
  banner(shown, line(shown.about), line(shown.advice, 'advice')),
  part('Put in question by what was learned later', list(shown.questions, 'questions')),
  part('Records', shown.rows.length === 0 ? null : rows(shown.rows, open)),
  part('Left out', list(shown.leftOut)),
  part('What this does not prove', list(shown.notProven)),
  checksPart(shown.checks),
  part('Withheld', line(shown.withheld)),
];

const rows = (all: readonly RowShown[], open: Open) =>
  table(
    ['Job', 'Verdict', 'What to know', 'Record'],
    all.map((row) => [
      row.job === '' ? '–' : row.job,
      h('span', { class: `verdict tone-${row.tone}` }, toneSymbol(row.tone), row.word),
      row.what === '' ? '–' : row.what,
      button(`Show ${row.file}`, () => open(row.file)),
    ]),
  );

export function button(text: string, act: () => void, attributes: Readonly<Record<string, string>> = {}) {
  const element = h('button', { type: 'button', ...attributes }, text);
  element.addEventListener('click', act);
  return element;
}
