import { w } from '../words/catalogue.ts';
import { drawChecklist } from './checklist-drawing.ts';
import { enginePicture, pictureHeight } from './engine-picture.ts';
import type { ReportModel } from './model.ts';
import { exceptions, instruments, measurements, type TablePart, turns } from './proof-parts.ts';
import { GREY, heightOf, paragraph, type Sheet, section, TEXT_WIDTH } from './sheet.ts';
import { startHeight, table } from './table.ts';

/** What happened: the engine, every measurement, every exception, and the instruments used. */
export function drawFront(sheet: Sheet, model: ReportModel): void {
  const engine = section(sheet, w`Engine and verdict for each cylinder`, pictureHeight(model.banks));
  enginePicture(sheet, engine, model.banks, model.positions);
  drawTable(sheet, measurements(model));
  const turned = turns(model);
  if (turned.rows.length > 0) drawTable(sheet, turned);
  drawChecklist(sheet, model.around);
  for (const part of exceptions(model)) drawTable(sheet, part);
  drawTable(sheet, instruments(model));
}

function drawTable(sheet: Sheet, { title, columns, rows, note }: TablePart): void {
  if (rows.length === 0) {
    const height = heightOf(sheet, w`None`, { size: 8, width: TEXT_WIDTH });
    paragraph(sheet, section(sheet, title, height), w`None.`);
    return;
  }
  const element = section(sheet, title, startHeight(sheet, columns, rows));
  table(sheet, element, columns, rows);
  if (note === '') return;
  sheet.y += 4;
  paragraph(sheet, element, note, { size: 7, colour: GREY });
}
