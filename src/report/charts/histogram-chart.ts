import type { Limits } from '../../statistics/limits.ts';
import { w } from '../../words/catalogue.ts';
import { figure, UNIT_TEXT, withUnit } from '../figures.ts';
import { type Chart, frameIn } from './chart.ts';
import { type Bin, histogram } from './histogram.ts';
import { histogramText } from './histogram-text.ts';
import { type HistogramCaption, histogramInWords, histogramTitle } from './histogram-words.ts';
import type { Box, Pen } from './pen.ts';
import { greatest } from './scale.ts';

export function histogramChart(
  readings: readonly number[],
  limits: Limits,
  caption: HistogramCaption,
): Chart {
  const bins = histogram(readings, limits);
  return {
    title: histogramTitle(caption, readings.length),
    words: histogramInWords(bins, limits, caption.unit),
    draw: (pen, box) => drawBins(bins, limits, caption, pen, box),
    text: (size) => histogramText(readings, limits, caption, size),
  };
}

/** Bars with their counts; those beyond a limit are filled. The limits are dashed and have their names. */
function drawBins(
  bins: readonly Bin[],
  limits: Limits,
  { unit }: HistogramCaption,
  pen: Pen,
  box: Box,
): void {
  const { letter } = pen;
  // The names of two limits stand above the bars, one below the other.
  const frame = { ...frameIn(box, pen), top: box.y + 4.2 * letter };
  const width = (frame.right - frame.left) / Math.max(1, bins.length);
  const highest = Math.max(1, greatest(bins.map(({ count }) => count)));
  const left = (index: number) => frame.left + index * width;
  for (const [index, { count, where }] of bins.entries()) {
    if (count === 0) continue;
    const height = ((frame.bottom - frame.top) * count) / highest;
    const bar = { x: left(index) + 1, y: frame.bottom - height, width: Math.max(1, width - 2), height };
    pen.bar(bar, where !== 'within');
    pen.text(bar.x + bar.width / 2, bar.y - 0.6 * letter, String(count), 'middle');
  }
  pen.line([
    [frame.left, frame.bottom],
    [frame.right, frame.bottom],
  ]);
  const within = bins.filter(({ where }) => where === 'within').length;
  const firstWithin = bins.findIndex(({ where }) => where === 'within');
  // The name of each stands on the inner side of its line, where there is room in every language.
  const limitAt = (
    name: (limit: string) => string,
    limit: number | null,
    { index, y, anchor }: { readonly index: number; readonly y: number; readonly anchor: 'start' | 'end' },
  ) => {
    if (limit === null) return;
    pen.line(
      [
        [left(index), y],
        [left(index), frame.bottom],
      ],
      'dashed',
    );
    const inwards = anchor === 'start' ? letter / 2 : -letter / 2;
    pen.text(left(index) + inwards, y, name(withUnit(limit, unit)), anchor);
  };
  limitAt((limit) => w`lower limit ${limit}`, limits.lower, {
    index: firstWithin,
    y: box.y + 0.6 * letter,
    anchor: 'start',
  });
  limitAt((limit) => w`upper limit ${limit}`, limits.upper, {
    index: firstWithin + within,
    y: box.y + 1.9 * letter,
    anchor: 'end',
  });
  // About eight figures below the bars; open ends have none.
  const every = Math.ceil(bins.length / 8);
  for (const [index, { from }] of bins.entries())
    if (index % every === 0 && Number.isFinite(from))
      pen.text(left(index), frame.bottom + 1.1 * letter, figure(from, unit), 'middle');
  const middle = (frame.left + frame.right) / 2;
  pen.text(middle, frame.bottom + 2.4 * letter, w`reading, ${UNIT_TEXT[unit]}`, 'middle');
}
