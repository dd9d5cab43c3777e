import type PDFDocument from 'pdfkit';
import { clean } from './clean.ts';
import type { Face } from './fonts/own.ts';
import { drawable, type FontFor, type Run, runsOf } from './fonts/runs.ts';
import { wrapped } from './lines.ts';

export type Doc = InstanceType<typeof PDFDocument>;
export type Struct = ReturnType<Doc['struct']>;

export const PAGE = { width: 595.28, height: 841.89, left: 36, right: 36, top: 34, bottom: 40 } as const;
export const TEXT_WIDTH = PAGE.width - PAGE.left - PAGE.right;
export const INK = '#000000';
export const GREY = '#555555';

export interface Style {
  readonly size: number;
  readonly bold?: boolean;
  readonly mono?: boolean;
  readonly colour?: string;
}

/** A text to draw: where its first line begins, how wide it may be and how many lines it may take. */
export interface Placed extends Style {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly lines?: number;
  readonly align?: 'left' | 'right' | 'centre';
}

/** The pages under the pen: text, marks and the height already used. Everything drawn is tagged or marked as decoration. */
export interface Sheet {
  readonly doc: Doc;
  readonly root: Struct;
  /** Where the next thing begins, from the top of the page. */
  y: number;
  /** True once a text had characters that no font has. */
  lacking: boolean;
  readonly fontFor: FontFor;
}

/** How far the letters of a line stand above its baseline, whatever font they are from. */
const RISE = 0.74;

export const lineHeight = (size: number): number => size * 1.22;

/** Room for something `height` high: on this page, else on a new one. */
export function room(sheet: Sheet, height: number): void {
  if (sheet.y + height <= PAGE.height - PAGE.bottom) return;
  sheet.doc.addPage();
  sheet.y = PAGE.top;
}

/** Draws what carries no meaning of its own: rules, shades, symbols that a word repeats. */
export function decoration(sheet: Sheet, draw: () => void): void {
  sheet.doc.markContent('Artifact', { type: 'Layout' });
  sheet.doc.save();
  draw();
  sheet.doc.restore();
  sheet.doc.endMarkedContent();
}

/** An element of the document's structure that holds others. */
export function group(sheet: Sheet, parent: Struct, type: string): Struct {
  const element = sheet.doc.struct(type);
  parent.add(element);
  return element;
}

/** An element of the structure with what `draw` draws; the extras are those of pdfkit's `struct`. */
export function tagged(sheet: Sheet, parent: Struct, type: string, extras: object, draw: () => void): void {
  parent.add(sheet.doc.struct(type, extras, draw));
}

/** A tagged text; returns the height it took. */
export function text(
  sheet: Sheet,
  parent: Struct,
  type: string,
  content: string,
  placed: Placed,
  extras = {},
): number {
  let height = 0;
  tagged(sheet, parent, type, extras, () => {
    height = ink(sheet, content, placed);
  });
  return height;
}

/** Draws a text as the fonts can, the text itself beside it where the two differ; returns the height it took. */
export function ink(sheet: Sheet, content: string, placed: Placed): number {
  const { doc } = sheet;
  const asked = clean(content).normalize('NFC');
  const broken = linesOf(sheet, content, placed);
  const lacking = broken.text !== asked;
  const differs = lacking || broken.clipped;
  if (lacking) sheet.lacking = true;
  if (differs) doc.markContent('Span', { actual: asked });
  doc.fillColor(placed.colour ?? INK);
  broken.lines.forEach((line, index) => {
    const spare = placed.width - widthOf(sheet, line.trimEnd(), placed);
    const shift = placed.align === 'right' ? spare : placed.align === 'centre' ? spare / 2 : 0;
    const baseline = placed.y + index * lineHeight(placed.size) + RISE * placed.size;
    let x = placed.x + shift;
    for (const run of runsOf(line, faceOf(placed), sheet.fontFor)) {
      doc.font(run.font).fontSize(placed.size);
      doc.text(run.text, x, baseline, { lineBreak: false, baseline: 'alphabetic', ...asOneRun(run) });
      x += widthOfRun(sheet, run);
    }
  });
  if (differs) doc.endMarkedContent();
  return broken.lines.length * lineHeight(placed.size);
}

/** How high a text will be. */
export function heightOf(sheet: Sheet, content: string, placed: Omit<Placed, 'x' | 'y'>): number {
  return linesOf(sheet, content, placed).lines.length * lineHeight(placed.size);
}

function linesOf(sheet: Sheet, content: string, placed: Omit<Placed, 'x' | 'y'>) {
  const text = drawable(clean(content).normalize('NFC'), faceOf(placed), sheet.fontFor);
  const lines = wrapped(text, placed.width, placed.lines ?? 40, (line) => widthOf(sheet, line, placed));
  return { ...lines, text };
}

function widthOf(sheet: Sheet, line: string, style: Style): number {
  const runs = runsOf(line, faceOf(style), sheet.fontFor);
  return runs.reduce((sum, run) => {
    sheet.doc.font(run.font).fontSize(style.size);
    return sum + widthOfRun(sheet, run);
  }, 0);
}

const widthOfRun = ({ doc }: Sheet, run: Run): number => doc.widthOfString(run.text, asOneRun(run));

/** pdfkit sets word by word, and would put the words of a text from right to left in the wrong order. */
const asOneRun = ({ rightToLeft }: Run) => (rightToLeft ? { features: [] } : {});

const faceOf = ({ bold, mono }: Style): Face => (mono ? 'mono' : bold ? 'bold' : 'regular');

const HEADING_SIZE = 10;
const HEADING = { before: 6, above: 3, below: 2, height: lineHeight(HEADING_SIZE) } as const;

/** A section with its heading, kept together with at least `following` points of what comes after it. */
export function section(sheet: Sheet, title: string, following: number): Struct {
  beginSections(sheet, following);
  const element = headed(sheet, title, { x: PAGE.left, width: TEXT_WIDTH });
  sheet.y += HEADING.height + HEADING.below;
  return element;
}

/** Lists of sentences as sections that begin side by side, each in a column of its own. */
export function sectionsAbreast(
  sheet: Sheet,
  parts: readonly { readonly title: string; readonly sentences: readonly string[] }[],
  style: Style,
): void {
  const boxes = columnsOf(parts.length);
  const spaced = (height: number) => height + 1.5;
  const heights = parts.map(({ sentences }, i) =>
    sentences.reduce(
      (sum, one) => sum + spaced(heightOf(sheet, one, { ...style, width: boxes[i]?.width ?? 0 })),
      0,
    ),
  );
  const height = Math.max(0, ...heights);
  beginSections(sheet, height);
  const top = sheet.y + HEADING.height + HEADING.below;
  parts.forEach(({ title, sentences }, i) => {
    const box = boxes[i];
    if (box === undefined) return;
    const element = headed(sheet, title, box);
    let y = top;
    for (const one of sentences) y += spaced(text(sheet, element, 'P', one, { ...style, ...box, y }));
  });
  sheet.y = top + height;
}

/** The rule that sections begin under, with room for their headings and what follows. */
function beginSections(sheet: Sheet, following: number): void {
  const { before, above, below, height } = HEADING;
  room(sheet, before + above + height + below + following);
  const y = sheet.y + before;
  decoration(sheet, () =>
    sheet.doc
      .lineWidth(0.8)
      .moveTo(PAGE.left, y)
      .lineTo(PAGE.left + TEXT_WIDTH, y)
      .stroke(INK),
  );
  sheet.y = y + above;
}

function headed(sheet: Sheet, title: string, box: { readonly x: number; readonly width: number }): Struct {
  const element = group(sheet, sheet.root, 'Sect');
  text(sheet, element, 'H2', title, { ...box, y: sheet.y, size: HEADING_SIZE, bold: true, lines: 1 });
  return element;
}

const GUTTER = 14;

/** Columns that share the width of the page. */
function columnsOf(count: number): readonly { readonly x: number; readonly width: number }[] {
  const width = (TEXT_WIDTH - (count - 1) * GUTTER) / count;
  return Array.from({ length: count }, (_, i) => ({ x: PAGE.left + i * (width + GUTTER), width }));
}

/** A paragraph over the whole width. */
export function paragraph(sheet: Sheet, parent: Struct, content: string, style: Style = { size: 8 }): void {
  const placed = { ...style, width: TEXT_WIDTH };
  room(sheet, heightOf(sheet, content, placed));
  sheet.y += text(sheet, parent, 'P', content, { ...placed, x: PAGE.left, y: sheet.y }) + 2;
}
