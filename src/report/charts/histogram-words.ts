import type { Limits } from '../../statistics/limits.ts';
import { clean } from '../clean.ts';
import { figure, UNIT_TEXT, type Unit } from '../figures.ts';
import type { Bin } from './histogram.ts';

/** A title, which may come from outside, and what the readings are measured in. */
export interface HistogramCaption {
  readonly title: string;
  readonly unit: Unit;
}

export function histogramTitle({ title, unit }: HistogramCaption, n: number): string {
  return `Histogram: ${clean(title)}, ${UNIT_TEXT[unit]}, ${n} readings`;
}

/** `0.700 to 0.720`, `under 0.700`, `over 1.200`, in the unit of the title. */
export function edgesInWords({ from, to }: Bin, unit: Unit): string {
  if (from === Number.NEGATIVE_INFINITY) return `under ${figure(to, unit)}`;
  if (to === Number.POSITIVE_INFINITY) return `over ${figure(from, unit)}`;
  return `${figure(from, unit)} to ${figure(to, unit)}`;
}

/** What the bars show, for who cannot see them. */
export function histogramInWords(bins: readonly Bin[], { lower, upper }: Limits, unit: Unit): string {
  const total = (where: Bin['where']) =>
    bins.reduce((sum, bin) => sum + (bin.where === where ? bin.count : 0), 0);
  const parts = [
    ...(lower === null ? [] : [`${total('below')} below ${figure(lower, unit)} ${UNIT_TEXT[unit]}`]),
    `${total('within')} within`,
    ...(upper === null ? [] : [`${total('above')} above ${figure(upper, unit)} ${UNIT_TEXT[unit]}`]),
  ];
  return `${parts.join(', ')}.`;
}
