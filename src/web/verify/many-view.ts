/** A package, or many records, on the page; each record opens on its own. */
import { w } from '../../words/catalogue.ts';
import { h, list, part } from './dom.ts';
import { banner, checksPart, line, table } from './record-view.ts';
import type { PackageShown, RecordsShown, RowShown } from './shown.ts';
import { toneSymbol } from './symbol.ts';

export type Open = (file: string) => void;

export const recordsView = (shown: RecordsShown, open: Open): readonly (Node | null)[] => [
  banner(shown),
  part(w`Remarks`, list(shown.remarks)),
  part(w`Records`, rows(shown.rows, open)),
];

export const packageView = (shown: PackageShown, open: Open): readonly (Node | null)[] => [
  banner(shown, line(shown.about), line(shown.advice, 'advice')),
  part(w`Put in question by what was learned later`, list(shown.questions, 'questions')),
  part(w`Records`, shown.rows.length === 0 ? null : rows(shown.rows, open)),
  part(w`Left out`, list(shown.leftOut)),
  part(w`What this does not prove`, list(shown.notProven)),
  checksPart(shown.checks),
  part(w`Withheld`, line(shown.withheld)),
];

const rows = (all: readonly RowShown[], open: Open) =>
  table(
    [w`Job`, w`Verdict`, w`What to know`, w`Record`],
    all.map((row) => [
      row.job === '' ? '–' : row.job,
      h('span', { class: `verdict tone-${row.tone}` }, toneSymbol(row.tone), row.word),
      row.what === '' ? '–' : row.what,
      button(w`Show ${row.file}`, () => open(row.file)),
    ]),
  );

export function button(text: string, act: () => void, attributes: Readonly<Record<string, string>> = {}) {
  const element = h('button', { type: 'button', ...attributes }, text);
  element.addEventListener('click', act);
  return element;
}
