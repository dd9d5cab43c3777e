import type { Box, Pen, Point } from './pen.ts';

/** Slanted lines over a box: a guard band, in any ink. */
export function hatch(pen: Pen, { x, y, width, height }: Box, distance: number): void {
  for (let start = x - height; start < x + width; start += distance) {
    const from = Math.max(start, x);
    const until = Math.min(start + height, x + width);
    if (until <= from) continue;
    const at = (u: number): Point => [u, y + height - (u - start)];
    pen.line([at(from), at(until)], 'dotted');
  }
}
