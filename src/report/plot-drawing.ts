import type { Window } from '../metrology/judgement.ts';
import { figure } from './figures.ts';
import { type Box, type PlotShape, plotShape } from './plot.ts';
import type { PullPlot } from './plots.ts';
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
const GAP = 10;
const TILE = { width: (TEXT_WIDTH - (PER_LINE - 1) * GAP) / PER_LINE, height: 108 } as const;
const MARGIN = { left: 16, top: 30, right: 1, bottom: 19 } as const;
const SMALL = 6;
const LIMITS = '#E4E4E4';
const ACCEPTANCE = '#C8C8C8';

/** How high one line of plots is. */
export const PLOT_LINE = TILE.height;

/** The plots in lines of four, each a figure of its own with its content in words. */
export function drawPlots(sheet: Sheet, parent: Struct, plots: readonly PullPlot[], window: Window): void {
  for (let first = 0; first < plots.length; first += PER_LINE) {
    room(sheet, TILE.height);
    const { y } = sheet;
    plots.slice(first, first + PER_LINE).forEach((plot, index) => {
      const x = PAGE.left + index * (TILE.width + GAP);
      const bbox = [x, y, x + TILE.width, y + TILE.height];
      tagged(sheet, parent, 'Figure', { alt: plot.alt, bbox, placement: 'Block' }, () =>
        tile(sheet, plot, window, x, y),
      );
    });
    sheet.y = y + TILE.height;
  }
}

function tile(sheet: Sheet, plot: PullPlot, window: Window, x: number, y: number): void {
  const { doc } = sheet;
  const box: Box = {
    x: x + MARGIN.left,
    y: y + MARGIN.top,
    width: TILE.width - MARGIN.left - MARGIN.right,
    height: TILE.height - MARGIN.top - MARGIN.bottom,
  };
  const shape = plotShape(plot, window, box);
  doc.save();
  bands(doc, shape, box);
  curve(doc, shape);
  if (shape.release !== null) releaseMark(doc, shape.release.x, shape.release.y, 4);
  peakMark(doc, shape.peak.x, shape.peak.y, 4.5);
  symbol(doc, plot.verdict, x, y + 1.2, 6.5);
  doc.restore();
  captions(sheet, plot, x, y);
  axes(sheet, shape, box);
  if (plot.trace === null)
    ink(sheet, 'no samples kept', {
      x: box.x,
      y: box.y + box.height - 12,
      width: box.width,
      size: SMALL,
      align: 'centre',
      lines: 1,
    });
}

function bands(doc: Doc, { limits, acceptance }: PlotShape, box: Box): void {
  doc.rect(limits.x, limits.y, limits.width, limits.height).fill(LIMITS);
  if (acceptance !== null)
    doc.rect(acceptance.x, acceptance.y, acceptance.width, acceptance.height).fill(ACCEPTANCE);
  doc.lineWidth(0.4).dash(2, { space: 1.5 });
  for (const y of [limits.y, limits.y + limits.height])
    doc
      .moveTo(box.x, y)
      .lineTo(box.x + box.width, y)
      .stroke(GREY);
  doc.undash().lineWidth(0.5).rect(box.x, box.y, box.width, box.height).stroke(GREY);
}

function curve(doc: Doc, { curve: points }: PlotShape): void {
  const [start, ...rest] = points;
  if (start === undefined) return;
  doc.lineWidth(0.7).lineJoin('round').moveTo(start.x, start.y);
  for (const { x, y } of rest) doc.lineTo(x, y);
  doc.stroke(INK);
}

function captions(sheet: Sheet, plot: PullPlot, x: number, y: number): void {
  const { doc } = sheet;
  const title = `Cyl. ${plot.cylinder}, pull ${plot.pull}: ${VERDICT_WORD[plot.verdict]}`;
  ink(sheet, title, { x: x + 9, y, width: TILE.width - 9, size: 7.5, bold: true, lines: 1 });
  doc.save();
  peakMark(doc, x + 3, y + 15.5, 4.5);
  if (plot.release !== null) releaseMark(doc, x + 55, y + 13, 4);
  doc.restore();
  const half = { y: y + 10, size: SMALL, lines: 1, width: TILE.width / 2 - 8 } as const;
  ink(sheet, `peak ${figure(plot.peak.nm, 'N.m')}`, { ...half, x: x + 9 });
  const release = plot.release === null ? 'no release' : `release ${figure(plot.release.nm, 'N.m')}`;
  ink(sheet, release, { ...half, x: x + 59 });
}

function axes(sheet: Sheet, shape: PlotShape, box: Box): void {
  const small = { size: 5.5, colour: GREY, lines: 1 } as const;
  for (const { at, text } of shape.torqueTicks)
    ink(sheet, text, { ...small, x: box.x - 20, y: at - 3, width: 18, align: 'right' });
  for (const { at, text } of shape.timeTicks)
    ink(sheet, text, { ...small, x: at - 10, y: box.y + box.height + 1.5, width: 20, align: 'centre' });
  ink(sheet, 'Torque, N·m', { ...small, x: box.x - MARGIN.left, y: box.y - 8.5, width: 60 });
  ink(sheet, 'Time, s', { ...small, x: box.x, y: box.y + box.height + 8, width: box.width, align: 'right' });
}

/** What the shades and marks mean, once for all plots. */
export function legend(sheet: Sheet, limits: string, acceptance: string): string {
  decoration(sheet, () => {
    const { doc, y } = sheet;
    doc.rect(PAGE.left, y + 1, 8, 7).fill(LIMITS);
    doc.rect(PAGE.left, y + 2.5, 8, 4).fill(ACCEPTANCE);
  });
  return `Light band: limits, ${limits}. Darker band: acceptance zone, ${acceptance}. Filled triangle: peak. Open circle: first release (the click).`;
}
