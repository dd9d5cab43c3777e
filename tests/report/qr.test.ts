import PDFDocument from 'pdfkit';
import qrcode from 'qrcode';
import { expect, test } from 'vitest';
import { drawQr, qrSquares } from '../../src/report/qr.ts';
import type { Sheet } from '../../src/report/sheet.ts';
import { hasPoppler, rendered } from './poppler.ts';

const TEXT = `job JOB-2041\nrecord SHA-256 ${'0123456789abcdef'.repeat(4)}`;

test('the empty border that readers need is four squares wide', async () => {
  const { size, dark } = await qrSquares(TEXT);
  const edge = Array.from({ length: size }, (_, i) => i);
  for (const i of edge)
    for (const j of [0, 1, 2, 3, size - 4, size - 1]) expect(dark(i, j) || dark(j, i)).toBe(false);
  expect([dark(4, 4), dark(4, 10), dark(5, 5)]).toEqual([true, true, false]);
});

test.runIf(hasPoppler)('on paper every square is what the code says', async () => {
  const side = 92;
  const squares = await qrSquares(TEXT);
  const doc = new PDFDocument({ size: [side, side], margin: 0, tagged: true, pdfVersion: '1.7' });
  const chunks: Uint8Array[] = [];
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const root = doc.struct('Document');
  doc.addStructure(root);
  const sheet: Sheet = { doc, root, y: 0, lacking: false, fontFor: () => null };
  drawQr(sheet, root, squares, 'code', { x: 0, y: 0, width: side, height: side });
  const ended = new Promise((resolve) => doc.on('end', resolve));
  doc.end();
  await ended;
  const picture = rendered(Buffer.concat(chunks), 600);
  const { modules } = qrcode.create(TEXT, { errorCorrectionLevel: 'M' });
  const step = picture.width / squares.size;
  const centre = (index: number) => Math.round((index + 4.5) * step);
  const wrong: string[] = [];
  for (let row = 0; row < modules.size; row++)
    for (let column = 0; column < modules.size; column++) {
      const dark = picture.at(centre(column), centre(row)) < 128;
      if (dark !== (modules.get(row, column) === 1)) wrong.push(`${row},${column}`);
    }
  expect(wrong).toEqual([]);
});
