import type { Limits } from '../../statistics/limits.ts';
import { figure, UNIT_TEXT, type Unit } from '../figures.ts';
import { type Bin, histogram } from './histogram.ts';
import { type HistogramCaption, histogramInWords, histogramTitle } from './histogram-words.ts';
import { greatest } from './scale.ts';
import { atLeast, bar, type Frame, path, picture, type SvgSize, text } from './svg.ts';

const MARGIN = { left: 30, top: 76, right: 120, bottom: 44 } as const;

/** Readings against limits as bars with their counts; bars beyond a limit are filled, the limits dashed and named. */
export function histogramSvg(
  readings: readonly number[],
  limits: Limits,
  caption: HistogramCaption,
  asked: SvgSize,
): string {
  const size = atLeast(asked);
  const { unit } = caption;
  const bins = histogram(readings, limits);
  const frame: Frame = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: size.width - MARGIN.right,
    bottom: size.height - MARGIN.bottom,
  };
  const width = (frame.right - frame.left) / Math.max(1, bins.length);
  const highest = Math.max(1, greatest(bins.map(({ count }) => count)));
  const left = (index: number) => frame.left + index * width;
  const bars = bins.flatMap(({ count, where }, index) => {
    const height = ((frame.bottom - frame.top) * count) / highest;
    const box = { x: left(index) + 1, y: frame.bottom - height, width: Math.max(1, width - 2), height };
    const number = count === 0 ? [] : [text(box.x + box.width / 2, box.y - 3, String(count), 'middle')];
    return count === 0 ? [] : [bar(box, where !== 'within'), ...number];
  });
  const within = bins.filter(({ where }) => where === 'within').length;
  const firstWithin = bins.findIndex(({ where }) => where === 'within');
  const limitAt = (name: string, limit: number | null, index: number, row: number) =>
    limit === null
      ? []
      : [
          path(
            [
              [left(index), row],
              [left(index), frame.bottom],
            ],
            '6 4',
          ),
          text(left(index) + 4, row, `${name} limit ${figure(limit, unit)} ${UNIT_TEXT[unit]}`),
        ];
  const title = histogramTitle(caption, readings.length);
  return picture(size, { title, words: histogramInWords(bins, limits, unit) }, [
    text(frame.left, 18, title),
    ...bars,
    path([
      [frame.left, frame.bottom],
      [frame.right, frame.bottom],
    ]),
    ...limitAt('lower', limits.lower, firstWithin, 36),
    ...limitAt('upper', limits.upper, firstWithin + within, 50),
    ...edgeLabels(bins, unit).map(({ index, label }) =>
      text(left(index), frame.bottom + 16, label, 'middle'),
    ),
    text((frame.left + frame.right) / 2, frame.bottom + 34, `reading, ${UNIT_TEXT[unit]}`, 'middle'),
  ]);
}

/** Every second, third, … edge, so that about eight figures stand below the bars; open ends have none. */
function edgeLabels(
  bins: readonly Bin[],
  unit: Unit,
): readonly { readonly index: number; readonly label: string }[] {
  const every = Math.ceil(bins.length / 8);
  return bins.flatMap(({ from }, index) =>
    index % every === 0 && Number.isFinite(from) ? [{ index, label: figure(from, unit) }] : [],
  );
}
