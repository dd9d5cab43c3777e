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

/** Once all pages are there: the foot with its page number, and the stamp above and below where tools were simulated. */
export function drawFurniture(
  sheet: Sheet,
  {
    footer,
    program,
    simulated,
  }: { readonly footer: string; readonly program: string; readonly simulated: boolean },
): void {
  const { doc } = sheet;
  const { start, count } = doc.bufferedPageRange();
  const style = { y: PAGE.height - 34, size: 7, colour: GREY, lines: 1 } as const;
  for (let page = start; page < start + count; page++) {
    doc.switchToPage(page);
    doc.markContent('Artifact', { type: 'Pagination' });
    ink(sheet, `${footer} · Made by ${program}`, { ...style, x: PAGE.left, width: TEXT_WIDTH - 70 });
    const number = `Page ${page - start + 1} of ${count}`;
    ink(sheet, number, { ...style, x: PAGE.left + TEXT_WIDTH - 66, width: 66, align: 'right' });
    if (simulated) for (const y of [14, PAGE.height - 20]) stamp(sheet, y);
    doc.endMarkedContent();
  }
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
