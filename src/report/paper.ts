/**
 * A plain paper of headed parts, facts, texts and tables, as a tagged PDF (A4): what the audit desk hands out beside the
 * job records. The same paper gives the same bytes.
 */
import { collected, newSheet } from './document.ts';
import {
  decoration,
  GREY,
  group,
  INK,
  ink,
  PAGE,
  paragraph,
  type Sheet,
  section,
  TEXT_WIDTH,
  tagged,
  text,
} from './sheet.ts';
import { type Cell, type Column, startHeight, table } from './table.ts';

/** A label and what it stands for. */
interface Labelled {
  readonly label: string;
  readonly value: string;
}

export type Part =
  | { readonly kind: 'text'; readonly title: string; readonly paragraphs: readonly string[] }
  | { readonly kind: 'facts'; readonly title: string; readonly facts: readonly Labelled[] }
  | {
      readonly kind: 'picture';
      readonly title: string;
      /** All that it shows, in words. */
      readonly alt: string;
      readonly height: number;
      readonly draw: (sheet: Sheet, box: Box) => void;
    }
  | {
      readonly kind: 'table';
      readonly title: string;
      /** Above the table; in its place where there are no rows. */
      readonly note: string;
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly Cell[])[];
    };

/** Where a picture goes on its page, in points. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Paper {
  readonly title: string;
  readonly subtitle: string;
  readonly status: { readonly word: string; readonly text: string };
  /** Tools were simulated somewhere in what this is about: every page says so. */
  readonly simulated: boolean;
  readonly facts: readonly Labelled[];
  readonly parts: readonly Part[];
  /** Stands below every page. */
  readonly footer: string;
  /** Name and version of the program. */
  readonly program: string;
  /** ISO time; the only date that the document itself carries. */
  readonly madeAt: string;
}

export async function writePaper(paper: Paper): Promise<Uint8Array> {
  const { program, simulated } = paper;
  const title = `${paper.title}, ${paper.subtitle}`;
  const sheet = await newSheet({ title, program, madeAt: new Date(paper.madeAt), simulated });
  drawTitle(sheet, paper);
  drawFacts(sheet, paper.facts);
  for (const part of paper.parts) drawPart(sheet, part);
  drawFooters(sheet, paper);
  sheet.root.end();
  return collected(sheet.doc);
}

const SIMULATED =
  'SIMULATED: tools of at least one job named here were simulated. No vehicle was worked on in it; it proves nothing about any engine.';

function drawTitle(sheet: Sheet, { title, subtitle, status, simulated }: Paper): void {
  const head = group(sheet, sheet.root, 'Sect');
  const half = TEXT_WIDTH / 2;
  const { y } = sheet;
  const tall = text(sheet, head, 'H1', title, {
    x: PAGE.left,
    y,
    width: half - 8,
    size: 17,
    bold: true,
    lines: 2,
  });
  const low = text(sheet, head, 'P', subtitle, {
    x: PAGE.left,
    y: y + tall,
    width: half - 8,
    size: 10,
    lines: 2,
  });
  const x = PAGE.left + half;
  const inBox = { x: x + 8, width: half - 16 };
  const word = text(sheet, head, 'P', status.word, { ...inBox, y: y + 4, size: 13, bold: true, lines: 1 });
  const said = text(sheet, head, 'P', status.text, { ...inBox, y: y + 4 + word, size: 8, lines: 4 });
  const height = word + said + 9;
  decoration(sheet, () => sheet.doc.lineWidth(1.4).rect(x, y, half, height).stroke(INK));
  sheet.y = y + Math.max(tall + low, height) + 8;
  if (simulated) paragraph(sheet, head, SIMULATED, { size: 9, bold: true });
}

const LABEL_WIDTH = 96;

/** Labels and values in two columns, the first half on the left. */
function drawFacts(sheet: Sheet, facts: readonly Labelled[]): void {
  const half = Math.ceil(facts.length / 2);
  const width = TEXT_WIDTH / 2 - 6;
  const { y } = sheet;
  const left = factColumn(sheet, facts.slice(0, half), PAGE.left, width);
  sheet.y = y;
  const right = factColumn(sheet, facts.slice(half), PAGE.left + width + 12, width);
  sheet.y = Math.max(left, right);
}

function factColumn(sheet: Sheet, facts: readonly Labelled[], x: number, width: number): number {
  if (facts.length === 0) return sheet.y;
  const list = group(sheet, sheet.root, 'L');
  let { y } = sheet;
  for (const { label, value } of facts) {
    const item = group(sheet, list, 'LI');
    text(sheet, item, 'Lbl', label, { x, y, width: LABEL_WIDTH - 4, size: 8, colour: GREY, lines: 1 });
    const placed = { x: x + LABEL_WIDTH, y, width: width - LABEL_WIDTH, size: 8, lines: 6 };
    y += Math.max(11, text(sheet, item, 'LBody', value, placed) + 1.5);
  }
  return y;
}

function drawPart(sheet: Sheet, part: Part): void {
  if (part.kind === 'text') {
    const element = section(sheet, part.title, 12);
    for (const words of part.paragraphs) paragraph(sheet, element, words);
    return;
  }
  if (part.kind === 'facts') {
    // Two columns begin and end on one page.
    section(sheet, part.title, 12 * Math.ceil(part.facts.length / 2) + 12);
    drawFacts(sheet, part.facts);
    return;
  }
  if (part.kind === 'picture') {
    const { alt, height } = part;
    const element = section(sheet, part.title, height);
    const box = { x: PAGE.left, y: sheet.y, width: TEXT_WIDTH, height };
    const bbox = [box.x, box.y, box.x + box.width, box.y + height];
    tagged(sheet, element, 'Figure', { alt, bbox, placement: 'Block' }, () => part.draw(sheet, box));
    sheet.y += height;
    return;
  }
  const begins = part.rows.length === 0 ? 12 : startHeight(sheet, part.columns, part.rows) + 24;
  const element = section(sheet, part.title, begins);
  if (part.note !== '') paragraph(sheet, element, part.note);
  if (part.rows.length > 0) table(sheet, element, part.columns, part.rows);
}

const STAMP = 'SIMULATED: NO REAL TOOL MEASURED THIS. NOT A RECORD OF WORK ON A VEHICLE.';

function drawFooters(sheet: Sheet, { footer, program, simulated }: Paper): void {
  const { doc } = sheet;
  const { start, count } = doc.bufferedPageRange();
  const style = { y: PAGE.height - 34, size: 7, colour: GREY, lines: 1 } as const;
  for (let page = start; page < start + count; page++) {
    doc.switchToPage(page);
    doc.markContent('Artifact', { type: 'Pagination' });
    ink(sheet, `${footer} · Made by ${program}`, { ...style, x: PAGE.left, width: TEXT_WIDTH - 70 });
    const number = `Page ${page - start + 1} of ${count}`;
    ink(sheet, number, { ...style, x: PAGE.left + TEXT_WIDTH - 66, width: 66, align: 'right' });
    if (simulated) stamp(sheet, PAGE.height - 20);
    doc.endMarkedContent();
  }
}

function stamp(sheet: Sheet, y: number): void {
  sheet.doc.save().rect(PAGE.left, y, TEXT_WIDTH, 13).fill(INK).restore();
  const placed = { x: PAGE.left, y: y + 2.5, width: TEXT_WIDTH, size: 8, bold: true, colour: '#FFFFFF' };
  ink(sheet, STAMP, { ...placed, align: 'centre', lines: 1 });
}
