import { w } from '../words/catalogue.ts';
import type { PlacedCylinder } from './model.ts';
import type { Positions } from './positions.ts';
import {
  GREY,
  INK,
  ink,
  lineHeight,
  PAGE,
  room,
  type Sheet,
  type Struct,
  TEXT_WIDTH,
  tagged,
} from './sheet.ts';
import { symbol } from './symbols.ts';
import { VERDICT_WORD } from './verdict.ts';

const PER_LINE = 8;
const LABEL_WIDTH = 66;
const CELL = { width: (TEXT_WIDTH - LABEL_WIDTH) / PER_LINE, height: 27, gap: 4 } as const;

/** The engine from above, front at the left, one line a bank: number, symbol and word for every cylinder. */
export function enginePicture(
  sheet: Sheet,
  parent: Struct,
  banks: readonly (readonly PlacedCylinder[])[],
  positions: Positions,
): void {
  const lines = banks.flatMap((bank, index) => linesOfBank(bank, w`Bank ${index + 1}`));
  const height = lines.length * (CELL.height + CELL.gap);
  room(sheet, height);
  const { y } = sheet;
  const bbox = [PAGE.left, y, PAGE.left + TEXT_WIDTH, y + height];
  tagged(sheet, parent, 'Figure', { alt: inWords(banks, positions), bbox, placement: 'Block' }, () => {
    lines.forEach((line, index) => {
      drawLine(sheet, line, y + index * (CELL.height + CELL.gap));
    });
  });
  sheet.y = y + height;
}

/** How high the picture will be. */
export function pictureHeight(banks: readonly (readonly PlacedCylinder[])[]): number {
  return banks.reduce((sum, bank) => sum + Math.ceil(bank.length / PER_LINE), 0) * (CELL.height + CELL.gap);
}

interface Line {
  readonly label: string;
  readonly cylinders: readonly PlacedCylinder[];
}

function linesOfBank(bank: readonly PlacedCylinder[], label: string): Line[] {
  return Array.from({ length: Math.ceil(bank.length / PER_LINE) }, (_, index) => ({
    label: index === 0 ? label : w`further back`,
    cylinders: bank.slice(index * PER_LINE, (index + 1) * PER_LINE),
  }));
}

function drawLine(sheet: Sheet, line: Line, y: number): void {
  const small = { size: 7, colour: GREY, lines: 1 } as const;
  ink(sheet, line.label, { ...small, x: PAGE.left, y: y + 7, width: LABEL_WIDTH - 6 });
  ink(sheet, w`front at left`, { ...small, x: PAGE.left, y: y + 7 + lineHeight(7), width: LABEL_WIDTH - 6 });
  line.cylinders.forEach((cylinder, index) => {
    drawCylinder(sheet, cylinder, PAGE.left + LABEL_WIDTH + index * CELL.width, y);
  });
}

function drawCylinder(sheet: Sheet, { cylinder, verdict }: PlacedCylinder, x: number, y: number): void {
  const { doc } = sheet;
  const width = CELL.width - CELL.gap;
  doc.save();
  doc
    .lineWidth(verdict === 'ok' ? 0.6 : 1.6)
    .roundedRect(x, y, width, CELL.height, 4)
    .stroke(INK);
  symbol(doc, verdict, x + width - 15, y + 3.5, 9);
  doc.restore();
  ink(sheet, String(cylinder), { x: x + 6, y: y + 2.5, width: width - 24, size: 12, bold: true, lines: 1 });
  ink(sheet, VERDICT_WORD[verdict], {
    x: x + 2,
    y: y + 17,
    width: width - 4,
    size: 6.2,
    bold: verdict !== 'ok',
    lines: 1,
    align: 'centre',
  });
}

/** The engine for who cannot see it. */
export function inWords(banks: readonly (readonly PlacedCylinder[])[], { title }: Positions): string {
  const bankWords = banks.map(
    (bank, index) =>
      w`Bank ${index + 1}: ${bank.map(({ cylinder, verdict }) => `${title(cylinder)} ${VERDICT_WORD[verdict]}`).join(', ')}.`,
  );
  return w`The engine from above, each bank from front to rear. ${bankWords.join(' ')}`;
}
