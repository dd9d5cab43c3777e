/** How an old plug looked, as a small drawing of its tip: shell, insulator, electrodes, and what was on them. */
import type { Condition } from '../plug/condition.ts';
import { type Doc, INK } from './sheet.ts';

/** Draws in a square of `size` with its corner at x, y; a word beside it says the same. */
export function pictogram(doc: Doc, condition: Condition, x: number, y: number, size: number): void {
  const at = (u: number, v: number): [number, number] => [x + (u * size) / 20, y + (v * size) / 20];
  const scale = size / 20;
  doc
    .lineWidth(0.9 * scale)
    .lineCap('round')
    .lineJoin('round')
    .strokeColor(INK)
    .fillColor(INK);
  const line = (...points: readonly (readonly [number, number])[]) => {
    points.forEach(([u, v], i) => {
      if (i === 0) doc.moveTo(...at(u, v));
      else doc.lineTo(...at(u, v));
    });
    doc.stroke();
  };
  const dot = (u: number, v: number, radius: number, filled: boolean) => {
    doc.circle(...at(u, v), radius * scale);
    if (filled) doc.fill(INK);
    else doc.stroke(INK);
  };
  // The shell, and the insulator in it.
  line([4, 19], [4, 11], [16, 11], [16, 19]);
  line([8, 11], [8.6, 7], [11.4, 7], [12, 11]);
  const electrodes = condition !== 'pre-ignition' && condition !== 'detonation';
  if (electrodes) {
    line([10, 7], [10, condition === 'worn' ? 6 : 5]);
    line([15, 11], [15, 2.5], [condition === 'worn' ? 11 : 9, 2.5]);
  }
  switch (condition) {
    case 'normal':
      break;
    case 'reddish':
      for (const v of [8.2, 9.4]) line([8.6, v], [11.4, v]);
      break;
    case 'sooty':
      doc.polygon(at(8, 11), at(8.6, 7), at(11.4, 7), at(12, 11)).fill(INK);
      for (const [u, v] of DOTS) dot(u, v, 0.5, true);
      break;
    case 'fuel-wet':
      for (const [u, v] of [
        [6, 14],
        [10, 15.5],
        [14, 14],
      ] as const)
        dot(u, v, 1.1, false);
      break;
    case 'oily':
      doc.polygon(at(8, 11), at(8.6, 7), at(11.4, 7), at(12, 11)).fill(INK);
      for (const [u, v] of [
        [6.5, 14.5],
        [13.5, 14.5],
      ] as const)
        dot(u, v, 1.4, true);
      break;
    case 'ash':
      for (const [u, v] of [
        [8.2, 8.5],
        [11.8, 8.5],
        [8.2, 10],
        [11.8, 10],
        [13, 2.5],
      ] as const)
        dot(u, v, 0.9, false);
      break;
    case 'worn':
      line([8.8, 4.2], [8.8, 5.4]);
      line([8.3, 4.8], [8.8, 4.2], [9.3, 4.8]);
      break;
    case 'glazed':
      line([9.3, 10.2], [10.7, 7.8]);
      line([6, 14], [8, 17]);
      line([12, 14], [14, 17]);
      break;
    case 'bridged':
      dot(10, 3.8, 1.3, true);
      break;
    case 'metal-beads':
      for (const [u, v] of DOTS) dot(u, v, 0.7, false);
      break;
    case 'overheated':
      for (const u of [6, 10, 14]) line([u, 13], [u - 0.8, 14.5], [u + 0.8, 16], [u, 17.5]);
      break;
    case 'pre-ignition':
      line([15, 11], [15, 8.5], [14.2, 7.6]);
      dot(10, 6.2, 0.8, true);
      break;
    case 'detonation':
      line([15, 11], [15, 6], [14, 5.2]);
      line([9.2, 7], [9.9, 8.5], [9.2, 9.5], [10.4, 11]);
      break;
  }
}

const DOTS = [
  [6, 13.5],
  [9, 15],
  [12, 13.5],
  [14, 16],
  [7, 17],
  [11, 17],
] as const;
