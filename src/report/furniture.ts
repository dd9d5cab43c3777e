import type { ReportModel } from './model.ts';
import { type Doc, GREY, INK, ink, PAGE, type Sheet, TEXT_WIDTH } from './sheet.ts';

const STAMP = 'SIMULATED: NO REAL TOOL MEASURED THIS. NOT A RECORD OF WORK ON A VEHICLE.';

/** Behind everything on a new page: the word across the page of a simulated job, too large to be cut off unseen. */
export function drawBackground(doc: Doc, simulated: boolean): void {
  if (!simulated) return;
  doc.markContent('Artifact', { type: 'Page' });
  doc.save().rotate(-52, { origin: [PAGE.width / 2, PAGE.height / 2] });
  doc.font('Helvetica-Bold').fontSize(112).fillColor('#E9E9E9');
  const width = doc.widthOfString('SIMULATED');
  doc.text('SIMULATED', (PAGE.width - width) / 2, PAGE.height / 2 - 56, { lineBreak: false });
  doc.restore();
  doc.endMarkedContent();
}

/** Once all pages are there: page numbers, job and digest below, and the stamp above and below on a simulated job. */
export function drawFurniture(sheet: Sheet, model: ReportModel): void {
  const { doc } = sheet;
  const { start, count } = doc.bufferedPageRange();
  for (let page = start; page < start + count; page++) {
    doc.switchToPage(page);
    doc.markContent('Artifact', { type: 'Pagination' });
    footer(sheet, model, `Page ${page - start + 1} of ${count}`);
    if (model.simulated) for (const y of [14, PAGE.height - 20]) stamp(sheet, y);
    doc.endMarkedContent();
  }
}

function footer(sheet: Sheet, model: ReportModel, pageText: string): void {
  const y = PAGE.height - 34;
  const style = { y, size: 7, colour: GREY, lines: 1 } as const;
  const digest = model.fingerprint.digest.slice(0, 16);
  const words = `Job ${model.job} · Record SHA-256 ${digest}... · Made by ${model.program}`;
  ink(sheet, words, { ...style, x: PAGE.left, width: TEXT_WIDTH - 70 });
  ink(sheet, pageText, { ...style, x: PAGE.left + TEXT_WIDTH - 66, width: 66, align: 'right' });
}

function stamp(sheet: Sheet, y: number): void {
  sheet.doc.save().rect(PAGE.left, y, TEXT_WIDTH, 13).fill(INK).restore();
  ink(sheet, STAMP, {
    x: PAGE.left,
    y: y + 2.5,
    width: TEXT_WIDTH,
    size: 8,
    bold: true,
    colour: '#FFFFFF',
    align: 'centre',
    lines: 1,
  });
}
