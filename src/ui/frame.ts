/**
 * A frame of the live screen: pure lines from a {@link BenchView} and the size of the terminal.
 * One row fewer than the terminal, no line wider than it, whatever stands in the names.
 */
import { torqueWindowOf } from '../job/stage.ts';
import { engineLines } from './engine.ts';
import { folded } from './folded.ts';
import { keysLine, toolsLine } from './foot.ts';
import { type Glyphs, glyphsFor } from './glyphs.ts';
import { helpLines } from './help.ts';
import { largeLines } from './large.ts';
import { type Layout, layoutFor, type Size, SMALLEST } from './layout.ts';
import { cutLine, type Line } from './line.ts';
import { nextSentence } from './next-step.ts';
import { printable } from './printable.ts';
import { titleLine } from './title.ts';
import { torqueLines } from './torque-bar.ts';
import { traceRows } from './trace.ts';
import type { BenchView } from './view.ts';
import { scaleFor } from './zones.ts';

export interface FrameWanted {
  readonly view: BenchView;
  readonly size: Size;
  readonly ascii: boolean;
  /** The list of keys in place of engine, bar and verdict. */
  readonly help?: boolean;
}

/** Exactly `rows` lines: the rest cut off, what is missing empty. */
const exactly = (lines: readonly Line[], rows: number): Line[] =>
  Array.from({ length: rows }, (_, row) => lines[row] ?? []);

function nextLines(view: BenchView, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const sentence = printable(nextSentence(view.job), 400, glyphs.ascii);
  const lines = folded(sentence, columns - 4, rows, glyphs.cutMark);
  return lines.map((text, row) => [
    { text: row === 0 ? ` ${glyphs.pointer} ${text}` : `   ${text}`, bold: true },
  ]);
}

const TRACE_LABEL = ' trace ';

function traceLines(view: BenchView, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const top = scaleFor(torqueWindowOf(view.job, view.job.torqueTarget), columns).top;
  const drawn = traceRows(view.live.trace, columns - TRACE_LABEL.length - 1, rows, top, glyphs);
  const label = (row: number) => (row === rows - 1 ? TRACE_LABEL : ' '.repeat(TRACE_LABEL.length));
  return drawn.map((text, row): Line => [{ text: label(row) + text, dim: true }]);
}

function middleLines(view: BenchView, size: Size, layout: Layout, glyphs: Glyphs): Line[] {
  const { columns } = size;
  const breath = (nth: number): Line[] => (layout.breaths >= nth ? [[]] : []);
  return [
    ...breath(4),
    ...exactly(nextLines(view, columns, layout.next, glyphs), layout.next),
    ...breath(3),
    ...engineLines(view.job, layout.engine, glyphs),
    ...breath(1),
    ...torqueLines(view, columns, layout, glyphs),
    ...breath(2),
    ...exactly(largeLines(view, columns, layout.letters, glyphs), 1 + layout.letters),
    ...traceLines(view, columns, layout.trace, glyphs),
  ];
}

function tooSmall(view: BenchView, { columns, rows }: Size, glyphs: Glyphs): Line[] {
  const least = `${SMALLEST.columns} by ${SMALLEST.rows}`;
  const wanted = `The window is ${columns} by ${rows}; make it at least ${least}.`;
  return exactly([[{ text: wanted }], ...nextLines(view, columns, 3, glyphs)], rows - 2);
}

/** The lines of a frame: `size.rows - 1` of them, each at most `size.columns` wide. */
export function frameLines({ view, size, ascii, help }: FrameWanted): Line[] {
  const { columns, rows } = size;
  const glyphs = glyphsFor(ascii);
  const fits = columns >= SMALLEST.columns && rows >= SMALLEST.rows;
  const middle = (): Line[] =>
    help === true
      ? helpLines()
      : middleLines(view, size, layoutFor(size, view.job.order.engine.banks), glyphs);
  const foot = [toolsLine(view, columns, glyphs), keysLine(view.job, columns)];
  const body = fits ? [...exactly(middle(), rows - 4), ...foot] : tooSmall(view, size, glyphs);
  return [titleLine(view, size, glyphs), ...body].map((line) => cutLine(line, columns, glyphs.cutMark));
}
