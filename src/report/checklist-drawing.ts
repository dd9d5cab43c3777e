import { shownUnit } from '../quantity/shown.ts';
import { w } from '../words/catalogue.ts';
import type { ChecklistEvent, PlugRow } from './checklist.ts';
import type { TablePart } from './proof-parts.ts';
import { heightOf, paragraph, type Sheet, section, TEXT_WIDTH } from './sheet.ts';
import { type Column, startHeight, table } from './table.ts';

const columnsOf = (): readonly Column[] => [
  { title: w`Cyl.`, share: 60, heads: true },
  { title: w`Old plug`, share: 70 },
  { title: w`Damage`, share: 90 },
  { title: w`Thread in the head`, share: 60 },
  { title: w`Gap found ${shownUnit('mm')}`, share: 44, align: 'right' },
  { title: w`Loosened at ${shownUnit('N.m')}`, share: 50, align: 'right' },
  { title: w`New plug`, share: 85 },
  { title: w`Lot`, share: 70 },
];

interface Alike {
  readonly row: PlugRow;
  readonly cylinders: readonly number[];
}

/** One row for all cylinders of which the same is known, in the order of the first of them. */
function together(plugs: readonly PlugRow[]): readonly Alike[] {
  const groups = new Map<string, Alike>();
  for (const row of plugs) {
    const known = JSON.stringify({ ...row, cylinder: 0 });
    const cylinders = groups.get(known)?.cylinders ?? [];
    groups.set(known, { row, cylinders: [...cylinders, row.cylinder] });
  }
  return [...groups.values()];
}

const cells = ({ row, cylinders }: Alike) =>
  [
    [...cylinders].sort((a, b) => a - b).join(', '),
    row.condition,
    row.damage || w`none seen`,
    row.thread,
    row.gapMm,
    row.removalNm,
    row.part,
    row.lot,
  ].map((text, i) => (i === 0 ? { text, bold: true } : { text }));

/** Which plug came out and which went in; no rows where the shop records none of it. */
export const oldAndNewPlugs = ({ plugs }: ChecklistEvent): TablePart => ({
  title: w`Old and new plugs`,
  columns: columnsOf(),
  rows: together(plugs).map(cells),
  note: '',
});

export const attestedTexts = ({ lists }: ChecklistEvent): readonly string[] =>
  lists.map(({ title, by, items }) => `${title} (${by}). ${items.join('. ')}.`);

/** What was attested, below the plugs; nothing where the shop records none of it. */
export function drawChecklist(sheet: Sheet, checklist: ChecklistEvent): void {
  const { title, columns, rows } = oldAndNewPlugs(checklist);
  if (rows.length > 0) table(sheet, section(sheet, title, startHeight(sheet, columns, rows)), columns, rows);
  const texts = attestedTexts(checklist);
  if (texts.length === 0) return;
  const style = { size: 7.5, width: TEXT_WIDTH };
  const element = section(sheet, w`Attested steps`, heightOf(sheet, texts[0] ?? '', style));
  for (const text of texts) paragraph(sheet, element, text, { size: style.size });
}
