import { w } from '../words/catalogue.ts';
import type { Fact } from './fact.ts';
import type { ReportModel } from './model.ts';
import { inventedSentence, windowFacts } from './proof-parts.ts';
import {
  decoration,
  GREY,
  group,
  INK,
  PAGE,
  paragraph,
  type Sheet,
  type Struct,
  TEXT_WIDTH,
  text,
} from './sheet.ts';
import { MARK_SENTENCE } from './words/index.ts';

/** The top of the first page of the proof: title, status, the job's facts, the specification and its windows. */
export function drawHead(sheet: Sheet, model: ReportModel): void {
  title(sheet, model);
  factColumns(sheet, model);
}

function title(sheet: Sheet, model: ReportModel): void {
  const head = group(sheet, sheet.root, 'Sect');
  const half = TEXT_WIDTH / 2;
  const { y } = sheet;
  const tall = text(sheet, head, 'H1', w`Proof of the job`, {
    x: PAGE.left,
    y,
    width: half,
    size: 17,
    bold: true,
    lines: 1,
  });
  text(sheet, head, 'P', w`Job ${model.job}`, { x: PAGE.left, y: y + tall, width: half, size: 10, lines: 1 });
  const boxX = PAGE.left + half;
  decoration(sheet, () => sheet.doc.lineWidth(1.4).rect(boxX, y, half, 34).stroke(INK));
  const inBox = { x: boxX + 8, width: half - 16 };
  text(sheet, head, 'P', model.status.word, { ...inBox, y: y + 4, size: 13, bold: true, lines: 1 });
  text(sheet, head, 'P', model.status.text, { ...inBox, y: y + 20, size: 8, lines: 1 });
  sheet.y = y + 42;
  warnings(sheet, model);
}

/** What a reader must not overlook, on whichever page he begins. */
export function warnings(sheet: Sheet, model: ReportModel): void {
  const head = group(sheet, sheet.root, 'Sect');
  for (const mark of model.marks) paragraph(sheet, head, MARK_SENTENCE[mark], { size: 9, bold: true });
  if (model.outOfOrder !== '') paragraph(sheet, head, model.outOfOrder, { size: 9, bold: true });
  if (model.proof !== '') paragraph(sheet, head, model.proof, { size: 8 });
  if (model.inventedSpecification) paragraph(sheet, head, inventedSentence(), { size: 9, bold: true });
}

function factColumns(sheet: Sheet, model: ReportModel): void {
  const element = group(sheet, sheet.root, 'Sect');
  const half = TEXT_WIDTH / 2 - 6;
  const { y } = sheet;
  const left = facts(sheet, element, model.jobFacts, PAGE.left, y, half);
  const right = facts(
    sheet,
    element,
    [...model.specificationFacts, ...windowFacts(model)],
    PAGE.left + half + 12,
    y,
    half,
  );
  sheet.y = y + Math.max(left, right);
}

const LABEL_WIDTH = 76;

/** Labels and values, one under the other; returns the height. */
export function facts(
  sheet: Sheet,
  parent: Struct,
  list: readonly Fact[],
  x: number,
  top: number,
  width: number,
): number {
  const element = group(sheet, parent, 'L');
  let y = top;
  for (const { label, value } of list) {
    const item = group(sheet, element, 'LI');
    text(sheet, item, 'Lbl', label, { x, y, width: LABEL_WIDTH - 4, size: 8, colour: GREY, lines: 1 });
    const placed = { x: x + LABEL_WIDTH, y, width: width - LABEL_WIDTH, size: 8, lines: 4 };
    y += Math.max(11, text(sheet, item, 'LBody', value, placed) + 1.5);
  }
  return y - top;
}
