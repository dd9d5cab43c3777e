/** A curve in characters of two by four dots; or of one by one where the terminal has only ASCII. */
import type { TextSize } from './plain.ts';

/** A point with both coordinates from 0 to 1, upwards. */
export interface Dot {
  readonly x: number;
  readonly y: number;
}

const BLANK = 0x2800;
/** Bits of a braille character: column, then row from above. */
const BITS: readonly (readonly number[])[] = [
  [0x01, 0x02, 0x04, 0x40],
  [0x08, 0x10, 0x20, 0x80],
];

/** The text row in which a height from 0 to 1 lies, counted from above. */
export function rowOf(height: number, rows: number, ascii: boolean): number {
  const down = ascii ? 1 : 4;
  return Math.floor(Math.round((1 - clamp(height)) * (rows * down - 1)) / down);
}

/** Rows from above; neighbours are joined by a line. `levels` are drawn through where the curve leaves room. */
export function brailleRows(
  dots: readonly Dot[],
  levels: readonly number[],
  { width, ascii }: TextSize,
  rows: number,
): readonly string[] {
  const across = ascii ? 1 : 2;
  const down = ascii ? 1 : 4;
  const [wide, high] = [width * across, rows * down];
  const lit = new Set<number>();
  const column = (x: number) => Math.round(clamp(x) * (wide - 1));
  const row = (y: number) => Math.round((1 - clamp(y)) * (high - 1));
  dots.forEach((dot, i) => {
    const before = dots[i - 1] ?? dot;
    const steps = Math.max(
      1,
      Math.abs(column(dot.x) - column(before.x)),
      Math.abs(row(dot.y) - row(before.y)),
    );
    for (let step = 0; step <= steps; step++) {
      const share = step / steps;
      const [x, y] = [before.x + (dot.x - before.x) * share, before.y + (dot.y - before.y) * share];
      lit.add(row(y) * wide + column(x));
    }
  });
  const levelRows = new Set(levels.map((level) => rowOf(level, rows, ascii)));
  const empty = (at: number) => (levelRows.has(at) ? (ascii ? '-' : '┄') : ' ');
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: width }, (_column, c) => {
      let bits = 0;
      for (let i = 0; i < across; i++)
        for (let j = 0; j < down; j++)
          if (lit.has((r * down + j) * wide + c * across + i)) bits |= BITS[i]?.[j] ?? 0;
      if (bits === 0) return empty(r);
      return ascii ? '*' : String.fromCharCode(BLANK + bits);
    }).join(''),
  );
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
