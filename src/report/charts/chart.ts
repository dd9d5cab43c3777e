/** A chart: one drawing for SVG and PDF, the same in lines of text, and in words for those who cannot see it. */
import { type Box, escaped, type Pen, svgPen } from './pen.ts';
import type { TextSize } from './plain.ts';
import type { Scale } from './scale.ts';
import { share, ticks } from './scale.ts';

export interface Chart {
  readonly title: string;
  /** All that it shows. */
  readonly words: string;
  readonly draw: (pen: Pen, box: Box) => void;
  /** Null where tables beside it hold the same figures. */
  readonly text: ((size: TextSize) => readonly string[]) | null;
}

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** Smaller ones have no room for the captions. */
const LEAST: PictureSize = { width: 320, height: 180 };
const TITLE = 26;
const EDGE = 6;

/** A chart as an SVG picture under its title. */
export function chartSvg({ title, words, draw }: Chart, asked: PictureSize): string {
  const width = Math.round(Math.max(LEAST.width, asked.width));
  const height = Math.round(Math.max(LEAST.height, asked.height));
  const pen = svgPen();
  pen.text(EDGE, TITLE / 2, title);
  draw(pen, { x: EDGE, y: TITLE, width: width - 2 * EDGE, height: height - TITLE - EDGE });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="${pen.letter}">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(words)}</desc>`,
    `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
    ...pen.elements,
    '</svg>',
    '',
  ].join('\n');
}

/** Where the values of a chart lie inside its box, with room for figures on the left, names on the right, and text below. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function frameIn({ x, y, width, height }: Box, { letter }: Pen): Frame {
  return {
    left: x + 5.5 * letter,
    top: y + 2 * letter,
    right: x + width - 11 * letter,
    bottom: y + height - 3.4 * letter,
  };
}

/** The height of a value inside the frame. */
export const heightIn =
  ({ top, bottom }: Frame, scale: Scale) =>
  (value: number) =>
    bottom - (bottom - top) * share(value, scale);

/** Both axes, figures beside the upright one, its name above it. */
export function axes(
  pen: Pen,
  frame: Frame,
  { scale, name, figure }: { readonly scale: Scale; readonly name: string; figure(value: number): string },
): void {
  const { left, top, right, bottom } = frame;
  const y = heightIn(frame, scale);
  pen.line([
    [left, top],
    [left, bottom],
    [right, bottom],
  ]);
  for (const value of ticks(scale, 5)) pen.text(left - pen.letter / 2, y(value), figure(value), 'end');
  pen.text(left - 5 * pen.letter, top - pen.letter, name);
}

/** What begins and ends the level axis, and a line below that says how to read the marks. */
export function below(
  pen: Pen,
  { left, right, bottom }: Frame,
  { first, last, legend }: { readonly first: string; readonly last: string; readonly legend: string },
): void {
  pen.text(left, bottom + 1.1 * pen.letter, first);
  pen.text(right, bottom + 1.1 * pen.letter, last, 'end');
  pen.text((left + right) / 2, bottom + 2.4 * pen.letter, legend, 'middle');
}
