import type { Limits } from '../../statistics/limits.ts';
import { w } from '../../words/catalogue.ts';
import { figure } from '../figures.ts';
import { type Bin, histogram } from './histogram.ts';
import { edgesInWords, type HistogramCaption, histogramInWords, histogramTitle } from './histogram-words.ts';
import { columns, cutTo, marks, type TextSize, unitText, wrapped } from './plain.ts';
import { greatest } from './scale.ts';

const EDGES = 18;
const COUNT = 7;
/** ` above` behind the count. */
const WORD = 6;

/** Readings against limits as bars, one line to a bin; a rule with its figure stands where a limit is. */
export function histogramText(
  readings: readonly number[],
  limits: Limits,
  caption: HistogramCaption,
  size: TextSize,
): readonly string[] {
  const { unit } = caption;
  const room = columns(size);
  const bins = histogram(readings, limits);
  const highest = Math.max(1, greatest(bins.map(({ count }) => count)));
  const full = room - EDGES - COUNT - WORD - 1;
  const rule = (name: (limit: string) => string, limit: number | null) =>
    limit === null
      ? []
      : [`${name(`${figure(limit, unit)} ${unitText(unit, size)}`)} `.padEnd(room, marks(size).rule)];
  const line = (bin: Bin) => {
    const length = bin.count === 0 ? 0 : Math.max(1, Math.round((full * bin.count) / highest));
    const bar = marks(size).bar.repeat(length).padEnd(full);
    const word = bin.where === 'within' ? '' : ` ${bin.where === 'below' ? w`below` : w`above`}`;
    return `${edgesInWords(bin, unit).padEnd(EDGES)} ${bar}${String(bin.count).padStart(COUNT)}${word}`;
  };
  const lines = (where: Bin['where']) => bins.filter((bin) => bin.where === where).map(line);
  return [
    cutTo(histogramTitle(caption, readings.length), room, size),
    ...lines('below'),
    ...rule((limit) => w`lower limit ${limit}`, limits.lower),
    ...lines('within'),
    ...rule((limit) => w`upper limit ${limit}`, limits.upper),
    ...lines('above'),
    ...wrapped(histogramInWords(bins, limits, unit), size),
  ];
}
