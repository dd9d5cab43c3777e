import type { Fact, ReportModel } from './model.ts';
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
import { MARK_SENTENCE, turnLimitsText } from './words/index.ts';

/** The top of the first page: title, status, the job's facts, the specification and its windows. */
export function drawHead(sheet: Sheet, model: ReportModel): void {
  title(sheet, model);
  factColumns(sheet, model);
}

function title(sheet: Sheet, model: ReportModel): void {
  const head = group(sheet, sheet.root, 'Sect');
  const half = TEXT_WIDTH / 2;
  const { y } = sheet;
  const tall = text(sheet, head, 'H1', 'Spark plug job record', {
    x: PAGE.left,
    y,
    width: half,
    size: 17,
    bold: true,
    lines: 1,
  });
  text(sheet, head, 'P', `Job ${model.job}`, { x: PAGE.left, y: y + tall, width: half, size: 10, lines: 1 });
  const boxX = PAGE.left + half;
  decoration(sheet, () => sheet.doc.lineWidth(1.4).rect(boxX, y, half, 34).stroke(INK));
  const inBox = { x: boxX + 8, width: half - 16 };
  text(sheet, head, 'P', model.status.word, { ...inBox, y: y + 4, size: 13, bold: true, lines: 1 });
  text(sheet, head, 'P', model.status.text, { ...inBox, y: y + 20, size: 8, lines: 1 });
  sheet.y = y + 42;
  for (const mark of model.marks) paragraph(sheet, head, MARK_SENTENCE[mark], { size: 9, bold: true });
  if (model.outOfOrder !== '') paragraph(sheet, head, model.outOfOrder, { size: 9, bold: true });
  if (model.proof !== '') paragraph(sheet, head, model.proof, { size: 8 });
  if (model.inventedSpecification) paragraph(sheet, head, INVENTED_SENTENCE, { size: 9, bold: true });
}

const INVENTED_SENTENCE =
  'INVENTED SPECIFICATION: the figures of this job are an example and belong to no real engine.';

function factColumns(sheet: Sheet, model: ReportModel): void {
  const element = group(sheet, sheet.root, 'Sect');
  const half = TEXT_WIDTH / 2 - 6;
  const { y } = sheet;
  const { torqueWindow, turnLimits, gapWindow } = model;
  const windows: Fact[] = [
    ...(turnLimits === null
      ? []
      : [{ label: 'Turn limits', value: `${turnLimitsText(turnLimits)} from contact` }]),
    ...(turnLimits?.alone === true
      ? [
          {
            label: 'Torque usual',
            value: `${torqueWindow.limits}, by general tables; outside of it never OK`,
          },
        ]
      : [{ label: 'Torque limits', value: torqueWindow.limits }]),
    { label: 'Torque accepted', value: torqueWindow.acceptance },
    { label: 'Torque guard band', value: torqueWindow.guard },
    ...(gapWindow === null
      ? [{ label: 'Gap', value: 'not measured, as the specification says' }]
      : [
          { label: 'Gap limits', value: gapWindow.limits },
          { label: 'Gap accepted', value: gapWindow.acceptance },
          { label: 'Gap guard band', value: gapWindow.guard },
        ]),
  ];
  const left = facts(sheet, element, model.jobFacts, PAGE.left, y, half);
  const right = facts(
    sheet,
    element,
    [...model.specificationFacts, ...windows],
    PAGE.left + half + 12,
    y,
    half,
  );
  sheet.y = y + Math.max(left, right);
}

const LABEL_WIDTH = 76;

/** Labels and values in two columns; returns the height. */
function facts(
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
