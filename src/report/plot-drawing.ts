import type { Window } from '../metrology/judgement.ts';
import { shownUnit } from '../quantity/shown.ts';
import { fixed, w } from '../words/catalogue.ts';
import type { Box } from './charts/pen.ts';
import type { ReportModel } from './model.ts';
import { type Ground, ground, type PullShape, pullShape } from './plot.ts';
import type { CylinderPlot, PullPlot, TorqueScale } from './plots.ts';
import {
  type Doc,
  decoration,
  GREY,
  INK,
  ink,
  PAGE,
  room,
  type Sheet,
  type Struct,
  TEXT_WIDTH,
  tagged,
} from './sheet.ts';
import { peakMark, releaseMark, symbol } from './symbols.ts';
import { VERDICT_WORD } from './verdict.ts';

const PER_LINE = 4;
/** So many pulls stand abreast in the usual width; a plot with more takes two, three or four widths. */
const ABREAST = 6;
const GAP = 10;
const TILE = { width: (TEXT_WIDTH - (PER_LINE - 1) * GAP) / PER_LINE, height: 90 } as const;
const MARGIN = { left: 16, top: 20, right: 1, bottom: 12 } as const;
const BETWEEN_PULLS = 2;
const SMALL = 5.5;
const LIMITS = '#E4E4E4';
const ACCEPTANCE = '#C8C8C8';

/** How high one line of plots is. */
export const PLOT_LINE = TILE.height;

/** The plots in lines, each a figure of its own with its content in words. */
export function drawPlots(
  sheet: Sheet,
  parent: Struct,
  { plots, torqueWindow, positions }: ReportModel,
): void {
  for (const line of inLines(plots)) {
    room(sheet, TILE.height);
    const { y } = sheet;
    let x: number = PAGE.left;
    for (const plot of line) {
      const width = widthsOf(plot) * (TILE.width + GAP) - GAP;
      const bbox = [x, y, x + width, y + TILE.height];
      tagged(sheet, parent, 'Figure', { alt: plot.alt, bbox, placement: 'Block' }, () =>
        tile(
          sheet,
          plot,
          { window: torqueWindow.figures, title: positions.title },
          { x, y, width, height: TILE.height },
        ),
      );
      x += width + GAP;
    }
    sheet.y = y + TILE.height;
  }
}

const widthsOf = ({ pulls }: CylinderPlot) => Math.ceil(pulls.length / ABREAST);

function inLines(plots: readonly CylinderPlot[]): CylinderPlot[][] {
  const lines: CylinderPlot[][] = [];
  let taken = PER_LINE;
  for (const plot of plots) {
    const widths = widthsOf(plot);
    if (taken + widths > PER_LINE) {
      lines.push([]);
      taken = 0;
    }
    lines.at(-1)?.push(plot);
    taken += widths;
  }
  return lines;
}

function tile(
  sheet: Sheet,
  plot: CylinderPlot,
  { window, title: named }: { readonly window: Window; readonly title: (position: number) => string },
  outer: Box,
): void {
  const { doc } = sheet;
  const { x, y } = outer;
  const box: Box = {
    x: x + MARGIN.left,
    y: y + MARGIN.top,
    width: outer.width - MARGIN.left - MARGIN.right,
    height: outer.height - MARGIN.top - MARGIN.bottom,
  };
  const below = ground(plot.scale, window, box);
  doc.save();
  bands(doc, below, box);
  symbol(doc, plot.verdict, x, y + 1.2, 6.5);
  doc.restore();
  const title = `${named(plot.cylinder)}: ${VERDICT_WORD[plot.verdict]}`;
  ink(sheet, title, { x: x + 9, y, width: outer.width - 9, size: 7.5, bold: true, lines: 1 });
  const small = { size: SMALL, colour: GREY, lines: 1 } as const;
  ink(sheet, shownUnit('N.m'), { ...small, x, y: box.y - 8.5, width: MARGIN.left });
  for (const { at, text } of below.torqueTicks)
    ink(sheet, text, { ...small, x: box.x - 20, y: at - 3, width: 18, align: 'right' });
  const each = (box.width + BETWEEN_PULLS) / plot.pulls.length;
  plot.pulls.forEach((pull, i) => {
    strip(sheet, pull, plot.scale, { ...box, x: box.x + i * each, width: each - BETWEEN_PULLS });
  });
}

/** One pull: its number and verdict above, its curve, its seconds below. */
function strip(sheet: Sheet, pull: PullPlot, scale: TorqueScale, box: Box): void {
  const { doc } = sheet;
  const shape = pullShape(pull, scale, box);
  doc.save();
  doc.lineWidth(0.5).rect(box.x, box.y, box.width, box.height).stroke(GREY);
  curve(doc, shape);
  if (shape.release !== null) releaseMark(doc, shape.release.x, shape.release.y, 3.6);
  peakMark(doc, shape.peak.x, shape.peak.y, 4);
  symbol(doc, pull.verdict, box.x, box.y - 6.9, 4.2);
  doc.restore();
  const { x, width } = box;
  ink(sheet, String(pull.pull), { x: x + 5, y: box.y - 8.3, width: width - 4.5, size: 6, lines: 1 });
  const small = { size: SMALL, lines: 1, align: 'centre' } as const;
  const seconds = `${fixed(shape.spanMs / 1000, 1)} s`;
  ink(sheet, seconds, { ...small, x: x - 1, y: box.y + box.height + 1.5, width: width + 2, colour: GREY });
  if (pull.trace === null) ink(sheet, w`none`, { ...small, x, y: box.y + box.height - 9, width });
}

function bands(doc: Doc, { limits, acceptance }: Ground, box: Box): void {
  doc.rect(limits.x, limits.y, limits.width, limits.height).fill(LIMITS);
  if (acceptance !== null)
    doc.rect(acceptance.x, acceptance.y, acceptance.width, acceptance.height).fill(ACCEPTANCE);
  doc.lineWidth(0.4).dash(2, { space: 1.5 });
  for (const y of [limits.y, limits.y + limits.height])
    doc
      .moveTo(box.x, y)
      .lineTo(box.x + box.width, y)
      .stroke(GREY);
  doc.undash();
}

function curve(doc: Doc, { curve: points }: PullShape): void {
  const [start, ...rest] = points;
  if (start === undefined) return;
  doc.lineWidth(0.7).lineJoin('round').moveTo(start.x, start.y);
  for (const { x, y } of rest) doc.lineTo(x, y);
  doc.stroke(INK);
}

/** What the shades and marks mean, once for all plots. */
export function legend(sheet: Sheet, limits: string, acceptance: string): string {
  decoration(sheet, () => {
    const { doc, y } = sheet;
    doc.rect(PAGE.left, y + 1, 8, 7).fill(LIMITS);
    doc.rect(PAGE.left, y + 2.5, 8, 4).fill(ACCEPTANCE);
  });
  return w`Light band: limits, ${limits}. Darker band: acceptance zone, ${acceptance}. Filled triangle: peak. Open circle: first release (the click). The pulls of a cylinder are side by side, without the time between them; number and verdict are above each, its seconds below.`;
}
