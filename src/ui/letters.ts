/** Large letters, drawn from our own five-row font, for eyes two metres away. */
import type { Glyphs } from './glyphs.ts';

const FONT: Readonly<Record<string, readonly string[]>> = {
  '0': ['####', '#..#', '#..#', '#..#', '####'],
  '1': ['.##.', '..#.', '..#.', '..#.', '.###'],
  '2': ['####', '...#', '####', '#...', '####'],
  '3': ['####', '...#', '.###', '...#', '####'],
  '4': ['#..#', '#..#', '####', '...#', '...#'],
  '5': ['####', '#...', '####', '...#', '####'],
  '6': ['####', '#...', '####', '#..#', '####'],
  '7': ['####', '...#', '..#.', '.#..', '.#..'],
  '8': ['####', '#..#', '####', '#..#', '####'],
  '9': ['####', '#..#', '####', '...#', '####'],
  '.': ['.', '.', '.', '.', '#'],
  '-': ['...', '...', '###', '...', '...'],
  ' ': ['..', '..', '..', '..', '..'],
  A: ['.##.', '#..#', '####', '#..#', '#..#'],
  B: ['###.', '#..#', '###.', '#..#', '###.'],
  C: ['.###', '#...', '#...', '#...', '.###'],
  D: ['###.', '#..#', '#..#', '#..#', '###.'],
  E: ['####', '#...', '###.', '#...', '####'],
  F: ['####', '#...', '###.', '#...', '#...'],
  G: ['.###', '#...', '#.##', '#..#', '.###'],
  H: ['#..#', '#..#', '####', '#..#', '#..#'],
  I: ['#', '#', '#', '#', '#'],
  J: ['..##', '...#', '...#', '#..#', '.##.'],
  K: ['#..#', '#.#.', '##..', '#.#.', '#..#'],
  L: ['#...', '#...', '#...', '#...', '####'],
  M: ['#...#', '##.##', '#.#.#', '#...#', '#...#'],
  N: ['#..#', '##.#', '####', '#.##', '#..#'],
  O: ['.##.', '#..#', '#..#', '#..#', '.##.'],
  P: ['###.', '#..#', '###.', '#...', '#...'],
  Q: ['.##.', '#..#', '#..#', '#.##', '.###'],
  R: ['###.', '#..#', '###.', '#.#.', '#..#'],
  S: ['.###', '#...', '.##.', '...#', '###.'],
  T: ['#####', '..#..', '..#..', '..#..', '..#..'],
  U: ['#..#', '#..#', '#..#', '#..#', '.##.'],
  V: ['#...#', '#...#', '#...#', '.#.#.', '..#..'],
  W: ['#...#', '#...#', '#.#.#', '##.##', '#...#'],
  X: ['#..#', '#..#', '.##.', '#..#', '#..#'],
  Y: ['#...#', '.#.#.', '..#..', '..#..', '..#..'],
  Z: ['####', '..#.', '.#..', '#...', '####'],
  Ä: ['#..#', '.##.', '#..#', '####', '#..#'],
  Ö: ['#..#', '....', '.##.', '#..#', '.##.'],
  Ü: ['#..#', '....', '#..#', '#..#', '.##.'],
  É: ['..#.', '####', '###.', '#...', '####'],
  Ô: ['.##.', '....', '.##.', '#..#', '.##.'],
};
const PIXEL_ROWS = [0, 1, 2, 3, 4] as const;

function pixels(text: string): string[] {
  return PIXEL_ROWS.map((row) =>
    [...text].map((character) => (FONT[character] ?? FONT[' '])?.[row] ?? '').join('.'),
  );
}

/** Whether there is a large letter for every character of it. */
export const canDraw = (text: string): boolean =>
  [...text].every((character) => Object.hasOwn(FONT, character));

/** How many pixels wide it is drawn, the space behind its last letter not among them. */
export const pixelsWide = (text: string): number => pixels(text)[0]?.length ?? 0;

const stretch = (row: string, times: number): string => row.replace(/./gu, (pixel) => pixel.repeat(times));
const inked = (row: string, glyphs: Glyphs): string =>
  row.replace(/[#.]/gu, (p) => (p === '#' ? glyphs.pixel : ' '));

/** Two pixel rows a line of text; not to be read in ASCII, which has no half blocks. */
function halved(rows: readonly string[], glyphs: Glyphs): string[] {
  const marks: Readonly<Record<string, string>> = {
    '##': glyphs.pixel,
    '#.': glyphs.upperHalf,
    '.#': glyphs.lowerHalf,
    '..': ' ',
  };
  return [0, 2, 4].map((at) =>
    [...(rows[at] ?? '')].map((upper, x) => marks[upper + (rows[at + 1]?.[x] ?? '.')] ?? ' ').join(''),
  );
}

/** Width and height of one pixel; a height of one half is two pixel rows a line. */
export interface Scale {
  readonly wide: number;
  readonly high: number;
}

const HALF = 0.5;

/** Largest first. */
const SCALES: readonly Scale[] = [
  { wide: 4, high: 2 },
  { wide: 3, high: 2 },
  { wide: 2, high: 2 },
  { wide: 2, high: 1 },
  { wide: 1, high: 1 },
  { wide: 1, high: HALF },
];

const ROWS_OF_HALF = 3;
const rowsAt = ({ high }: Scale, drawn: readonly string[]): number =>
  high === HALF ? ROWS_OF_HALF : drawn.length * high;

/** The largest size in which `text` fits into `columns` by `rows`; null when none does. */
export function scaleFor(text: string, columns: number, rows: number, { ascii }: Glyphs): Scale | null {
  const drawn = pixels(text);
  const width = drawn[0]?.length ?? 0;
  const fits = (scale: Scale) =>
    width * scale.wide <= columns && rowsAt(scale, drawn) <= rows && !(ascii && scale.high === HALF);
  return SCALES.find(fits) ?? null;
}

/** `text` (capitals, digits, point) in that size. */
export function lettersAt(text: string, { wide, high }: Scale, glyphs: Glyphs): readonly string[] {
  const drawn = pixels(text);
  if (high === HALF) return halved(drawn, glyphs).map((row) => stretch(row, wide));
  return drawn.flatMap((row) => Array.from({ length: high }, () => inked(stretch(row, wide), glyphs)));
}

/** `text` in the largest size that fits into `columns` by `rows`; null when none does. */
export function largeLetters(
  text: string,
  columns: number,
  rows: number,
  glyphs: Glyphs,
): readonly string[] | null {
  const scale = scaleFor(text, columns, rows, glyphs);
  return scale === null ? null : lettersAt(text, scale, glyphs);
}
