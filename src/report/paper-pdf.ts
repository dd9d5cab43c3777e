/** A paper as a tagged PDF (A4). The same paper gives the same bytes. */

import { pdfPen } from './charts/pen.ts';
import { collected, newSheet } from './document.ts';
import { drawFurniture } from './furniture.ts';
import type { Labelled, Paper, Part } from './paper.ts';
import { ANYBODY, madeFor, type PaperReader } from './reader.ts';
import {
  decoration,
  GREY,
  group,
  INK,
  PAGE,
  paragraph,
  type Sheet,
  section,
  TEXT_WIDTH,
  tagged,
  text,
} from './sheet.ts';
import { startHeight, table } from './table.ts';
import { MARK_PAPER } from './words/index.ts';

export interface Drawn {
  /** The program that draws, where that is another one than the paper names. */
  readonly drawnBy?: string;
  /** Whom it is made for. */
  readonly reader?: PaperReader;
}

/** The model is made for the reader as well, so that model and pages are in one language. */
export async function writePaper(
  make: () => Paper,
  { drawnBy, reader = ANYBODY }: Drawn = {},
): Promise<Uint8Array> {
  const paper = madeFor(reader, make);
  const { program, marks } = paper;
  const title = `${paper.title}, ${paper.subtitle}`;
  const sheet = await newSheet({
    title,
    program,
    drawnBy: drawnBy ?? program,
    madeAt: new Date(paper.madeAt),
    marks,
    reader,
  });
  madeFor(reader, () => {
    drawTitle(sheet, paper);
    drawFacts(sheet, paper.facts);
    for (const part of paper.parts) drawPart(sheet, part);
    drawFurniture(sheet, paper);
  });
  sheet.root.end();
  return collected(sheet.doc);
}

function drawTitle(sheet: Sheet, { title, subtitle, status, marks }: Paper): void {
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
  const body = text(sheet, head, 'P', status.text, { ...inBox, y: y + 4 + word, size: 8, lines: 4 });
  const height = word + body + 9;
  decoration(sheet, () => sheet.doc.lineWidth(1.4).rect(x, y, half, height).stroke(INK));
  sheet.y = y + Math.max(tall + low, height) + 8;
  for (const mark of marks) paragraph(sheet, head, MARK_PAPER[mark], { size: 9, bold: true });
}

const CHART_HEIGHT = 170;
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
  if (part.kind === 'chart') {
    const { title, words, draw } = part.chart;
    const height = CHART_HEIGHT;
    const element = section(sheet, title, height);
    const box = { x: PAGE.left, y: sheet.y, width: TEXT_WIDTH, height };
    const bbox = [box.x, box.y, box.x + box.width, box.y + height];
    tagged(sheet, element, 'Figure', { alt: `${title}. ${words}`, bbox, placement: 'Block' }, () => {
      sheet.doc.save();
      draw(pdfPen(sheet), box);
      sheet.doc.restore();
    });
    sheet.y += height;
    return;
  }
  const begins = part.rows.length === 0 ? 12 : startHeight(sheet, part.columns, part.rows) + 24;
  const element = section(sheet, part.title, begins);
  if (part.note !== '') paragraph(sheet, element, part.note);
  if (part.rows.length > 0) table(sheet, element, part.columns, part.rows);
}
