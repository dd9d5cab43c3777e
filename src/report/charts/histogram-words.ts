import type { Limits } from '../../statistics/limits.ts';
import { w } from '../../words/catalogue.ts';
import { clean } from '../clean.ts';
import { figure, UNIT_TEXT, type Unit, withUnit } from '../figures.ts';
import type { Bin } from './histogram.ts';

/** A title, which may come from outside, and what the readings are measured in. */
export interface HistogramCaption {
  readonly title: string;
  readonly unit: Unit;
}

export function histogramTitle({ title, unit }: HistogramCaption, n: number): string {
  return w`Histogram: ${clean(title)}, ${UNIT_TEXT[unit]}, ${n} readings`;
}

/** `0.700 to 0.720`, `under 0.700`, `over 1.200`, in the unit of the title. */
export function edgesInWords({ from, to }: Bin, unit: Unit): string {
  if (from === Number.NEGATIVE_INFINITY) return w`under ${figure(to, unit)}`;
  if (to === Number.POSITIVE_INFINITY) return w`over ${figure(from, unit)}`;
  return w`${figure(from, unit)} to ${figure(to, unit)}`;
}

/** What the bars show, for who cannot see them. */
export function histogramInWords(bins: readonly Bin[], { lower, upper }: Limits, unit: Unit): string {
  const total = (where: Bin['where']) =>
    bins.reduce((sum, bin) => sum + (bin.where === where ? bin.count : 0), 0);
  const parts = [
    ...(lower === null ? [] : [w`${total('below')} below ${withUnit(lower, unit)}`]),
    w`${total('within')} within`,
    ...(upper === null ? [] : [w`${total('above')} above ${withUnit(upper, unit)}`]),
  ];
  return `${parts.join(', ')}.`;
}
