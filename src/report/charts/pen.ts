/** A chart is drawn once, with a pen; one pen writes SVG, the other PDF. One ink and one grey: colour tells nothing. */
import { clean } from '../clean.ts';
import { GREY, INK, ink, PAGE, type Sheet } from '../sheet.ts';

export type Point = readonly [x: number, y: number];

/** A rectangle, y downwards. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Stroke = 'solid' | 'dashed' | 'dotted';
export type Anchor = 'start' | 'middle' | 'end';

/** Lengths are in the units of the picture. */
export interface Pen {
  /** Height of the letters; margins, marks and dashes follow it. */
  readonly letter: number;
  line(points: readonly Point[], stroke?: Stroke): void;
  /** `y` is the middle of the letters. */
  text(x: number, y: number, content: string, anchor?: Anchor): void;
  /** An open circle. */
  dot(x: number, y: number): void;
  /** A filled triangle that points to where the value went. SVG shows `reason` under the pointer. */
  signal(x: number, y: number, side: 'above' | 'below', reason: string): void;
  /** A bar, filled with ink or pale. */
  bar(box: Box, filled: boolean): void;
}

/** For letters of this height; a pen with smaller ones scales it. */
const LETTER = 11;
const RADIUS = 2.5;
const TIP = 6;
const DASHES: Readonly<Record<Exclude<Stroke, 'solid'>, readonly [dash: number, space: number]>> = {
  dashed: [6, 4],
  dotted: [2, 3],
};
const PALE = '#d9d9d9';

const triangle = (x: number, y: number, side: 'above' | 'below', scale: number): readonly Point[] => {
  const tip = (side === 'above' ? -TIP : TIP) * scale;
  const half = (TIP - 1) * scale;
  return [
    [x, y + tip],
    [x - half, y - tip / 2],
    [x + half, y - tip / 2],
  ];
};

/** Writes elements of SVG; a unit is what a browser takes for a pixel. */
export function svgPen(): Pen & { readonly elements: readonly string[] } {
  const elements: string[] = [];
  const list = (points: readonly Point[]) => points.map(([x, y]) => `${at(x)},${at(y)}`).join(' ');
  return {
    elements,
    letter: LETTER,
    line(points, stroke = 'solid') {
      const dashes = stroke === 'solid' ? '' : ` stroke-dasharray="${DASHES[stroke].join(' ')}"`;
      elements.push(
        `<polyline points="${list(points)}" fill="none" stroke="${stroke === 'solid' ? INK : GREY}"${dashes}/>`,
      );
    },
    text(x, y, content, anchor = 'start') {
      elements.push(
        `<text x="${at(x)}" y="${at(y + 4)}" text-anchor="${anchor}" fill="${INK}">${escaped(content)}</text>`,
      );
    },
    dot(x, y) {
      elements.push(`<circle cx="${at(x)}" cy="${at(y)}" r="${RADIUS}" fill="#ffffff" stroke="${INK}"/>`);
    },
    signal(x, y, side, reason) {
      elements.push(
        `<polygon points="${list(triangle(x, y, side, 1))}" fill="${INK}"><title>${escaped(reason)}</title></polygon>`,
      );
    },
    bar({ x, y, width, height }, filled) {
      elements.push(
        `<rect x="${at(x)}" y="${at(y)}" width="${at(width)}" height="${at(height)}" fill="${filled ? INK : PALE}" stroke="${INK}"/>`,
      );
    },
  };
}

/** Writes onto a sheet of a PDF; a unit is a point. */
export function pdfPen(sheet: Sheet): Pen {
  const { doc } = sheet;
  const letter = 6.5;
  const scale = letter / LETTER;
  return {
    letter,
    line([start, ...rest], stroke = 'solid') {
      if (start === undefined) return;
      doc.lineWidth(scale);
      if (stroke !== 'solid') {
        const [dash, space] = DASHES[stroke];
        doc.dash(dash * scale, { space: space * scale });
      }
      doc.moveTo(...start);
      for (const point of rest) doc.lineTo(...point);
      doc.stroke(stroke === 'solid' ? INK : GREY).undash();
    },
    text(x, y, content, anchor = 'start') {
      const reach = { start: PAGE.width - PAGE.right - x, middle: 400, end: 200 }[anchor];
      const left = { start: x, middle: x - reach / 2, end: x - reach }[anchor];
      const align = { start: 'left', middle: 'centre', end: 'right' } as const;
      ink(sheet, content, { x: left, y: y - 4, width: reach, size: letter, lines: 1, align: align[anchor] });
    },
    dot(x, y) {
      doc
        .lineWidth(scale)
        .circle(x, y, RADIUS * scale)
        .fillAndStroke('#FFFFFF', INK);
    },
    signal(x, y, side) {
      doc.polygon(...triangle(x, y, side, scale).map(([px, py]): [number, number] => [px, py])).fill(INK);
    },
    bar({ x, y, width, height }, filled) {
      doc
        .lineWidth(scale)
        .rect(x, y, width, height)
        .fillAndStroke(filled ? INK : PALE, INK);
    },
  };
}

/** Text from outside cannot end an element or an attribute, and holds no character that XML forbids. */
export function escaped(content: string): string {
  return clean(content)
    .replace(/[\uFFFE\uFFFF]/g, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&apos;');
}

function at(value: number): string {
  return String(Math.round(value * 100) / 100);
}
