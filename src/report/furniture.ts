import type { Mark } from '../job/proof.ts';
import { w } from '../words/catalogue.ts';
import { type Doc, GREY, INK, ink, PAGE, type Sheet, TEXT_WIDTH } from './sheet.ts';
import { MARK_WORD, stampText } from './words/index.ts';

/** Behind everything on a new page: the mark across the page, too large to be cut off unseen. */
export function drawBackground(doc: Doc, marks: readonly Mark[]): void {
  if (marks.length === 0) return;
  const words = marks.map((mark) => MARK_WORD[mark]).join(' ');
  doc.markContent('Artifact', { type: 'Page' });
  doc.save().rotate(-52, { origin: [PAGE.width / 2, PAGE.height / 2] });
  doc
    .font('bold')
    .fontSize(marks.length === 1 ? 112 : 62)
    .fillColor('#E9E9E9');
  const width = doc.widthOfString(words);
  doc.text(words, (PAGE.width - width) / 2, PAGE.height / 2 - 56, { lineBreak: false });
  doc.restore();
  doc.endMarkedContent();
}

/** Once all pages are there: the foot with its page number, and the stamp above and below where figures prove nothing. */
export function drawFurniture(
  sheet: Sheet,
  {
    footer,
    program,
    marks,
  }: { readonly footer: string; readonly program: string; readonly marks: readonly Mark[] },
): void {
  const { doc } = sheet;
  const { start, count } = doc.bufferedPageRange();
  const style = { y: PAGE.height - 34, size: 7, colour: GREY, lines: 1 } as const;
  for (let page = start; page < start + count; page++) {
    doc.switchToPage(page);
    doc.markContent('Artifact', { type: 'Pagination' });
    ink(sheet, w`${footer} · Made by ${program}`, { ...style, x: PAGE.left, width: TEXT_WIDTH - 70 });
    const number = w`Page ${page - start + 1} of ${count}`;
    ink(sheet, number, { ...style, x: PAGE.left + TEXT_WIDTH - 66, width: 66, align: 'right' });
    if (marks.length > 0) for (const y of [14, PAGE.height - 20]) stamp(sheet, y, stampText(marks));
    doc.endMarkedContent();
  }
}

function stamp(sheet: Sheet, y: number, words: string): void {
  sheet.doc.save().rect(PAGE.left, y, TEXT_WIDTH, 13).fill(INK).restore();
  ink(sheet, words, {
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
