import { type Doc, INK } from './sheet.ts';
import type { Verdict } from './verdict.ts';

/** Draws a verdict's symbol in a square; each has its own shape, so that it reads in black and white. */
export function symbol(doc: Doc, verdict: Verdict, x: number, y: number, size: number): void {
  const at = (u: number, v: number): [number, number] => [x + u * size, y + v * size];
  doc
    .lineWidth(size * 0.16)
    .lineCap('round')
    .lineJoin('round')
    .strokeColor(INK)
    .fillColor(INK);
  switch (verdict) {
    case 'ok':
      doc
        .moveTo(...at(0.1, 0.55))
        .lineTo(...at(0.4, 0.85))
        .lineTo(...at(0.9, 0.15))
        .stroke();
      break;
    case 'not-ok':
      doc
        .moveTo(...at(0.15, 0.15))
        .lineTo(...at(0.85, 0.85))
        .stroke();
      doc
        .moveTo(...at(0.85, 0.15))
        .lineTo(...at(0.15, 0.85))
        .stroke();
      break;
    case 'not-decidable':
      doc.polygon(at(0.5, 0.08), at(0.92, 0.5), at(0.5, 0.92), at(0.08, 0.5)).stroke();
      break;
    case 'question':
      doc.moveTo(...at(0.25, 0.3)).bezierCurveTo(...at(0.25, -0.05), ...at(0.8, -0.05), ...at(0.75, 0.32));
      doc.bezierCurveTo(...at(0.72, 0.5), ...at(0.5, 0.45), ...at(0.5, 0.66)).stroke();
      doc.circle(...at(0.5, 0.92), size * 0.1).fill();
      break;
    case 'not-judged':
      doc
        .moveTo(...at(0.15, 0.5))
        .lineTo(...at(0.85, 0.5))
        .stroke();
      break;
    case 'accepted': // a cross that somebody put a line under
      doc
        .moveTo(...at(0.2, 0.1))
        .lineTo(...at(0.8, 0.65))
        .stroke();
      doc
        .moveTo(...at(0.8, 0.1))
        .lineTo(...at(0.2, 0.65))
        .stroke();
      doc
        .moveTo(...at(0.1, 0.92))
        .lineTo(...at(0.9, 0.92))
        .stroke();
      break;
    case 'by-angle':
      doc
        .moveTo(...at(0.85, 0.15))
        .lineTo(...at(0.12, 0.85))
        .lineTo(...at(0.9, 0.85))
        .stroke();
      break;
    case 'not-done':
      doc.circle(...at(0.5, 0.5), size * 0.38).stroke();
      break;
  }
}

/** The peak: a filled triangle standing on the point. */
export function peakMark(doc: Doc, x: number, y: number, size: number): void {
  doc.polygon([x, y], [x - size / 2, y - size], [x + size / 2, y - size]).fill(INK);
}

/** The first release: an open circle around the point. */
export function releaseMark(doc: Doc, x: number, y: number, size: number): void {
  doc
    .lineWidth(size * 0.2)
    .circle(x, y, size / 2)
    .fillAndStroke('#FFFFFF', INK);
}
