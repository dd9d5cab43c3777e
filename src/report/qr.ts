import type { Box } from './charts/pen.ts';
import { INK, type Sheet, type Struct, tagged } from './sheet.ts';

/** The dark squares of a QR code, row by row, with the empty border of four that readers need. */
export interface QrSquares {
  readonly size: number;
  readonly dark: (row: number, column: number) => boolean;
}

const BORDER = 4;

/** Codes a text with medium error correction. */
export async function qrSquares(text: string): Promise<QrSquares> {
  const { default: qrcode } = await import('qrcode');
  const { modules } = qrcode.create(text, { errorCorrectionLevel: 'M' });
  return {
    size: modules.size + 2 * BORDER,
    dark: (row, column) => isDark(row - BORDER, column - BORDER),
  };

  function isDark(row: number, column: number): boolean {
    const inside = row >= 0 && column >= 0 && row < modules.size && column < modules.size;
    return inside && modules.get(row, column) === 1;
  }
}

/** Draws the code as one filled path; neighbours in a row are one rectangle, so that no hairlines show between them. */
export function drawQr(sheet: Sheet, parent: Struct, squares: QrSquares, alt: string, box: Box): void {
  const { doc } = sheet;
  const step = box.width / squares.size;
  const bbox = [box.x, box.y, box.x + box.width, box.y + box.height];
  tagged(sheet, parent, 'Figure', { alt, bbox, placement: 'Block' }, () => {
    for (let row = 0; row < squares.size; row++) {
      for (let from = 0; from < squares.size; from++) {
        let to = from;
        while (squares.dark(row, to)) to++;
        if (to > from) doc.rect(box.x + from * step, box.y + row * step, (to - from) * step, step);
        from = to;
      }
    }
    doc.fill(INK);
  });
}
