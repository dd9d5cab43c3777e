import type { Limits } from '../../statistics/limits.ts';
import { greatest, least, roundStep } from './scale.ts';

/** Most bins between two limits, within one limit, and beyond a limit; what lies further off falls into an open bin. */
const BETWEEN = 20;
const WITHIN_ONE = 40;
const BEYOND = 8;

/** Readings from `from` up to `to`; an outermost bin is open (±Infinity) where readings lie further off. */
export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly where: 'below' | 'within' | 'above';
}

/** Bins by number: number n begins at `anchor + n·width`; the numbers from `first` to `last` lie within the limits. */
interface Grid {
  readonly anchor: number;
  readonly width: number;
  readonly first: number;
  readonly last: number;
}

/**
 * Finite readings in bins of one width, of which none straddles a limit; at least one limit is given. A reading on a limit
 * is in the bin within.
 */
export function histogram(readings: readonly number[], limits: Limits): readonly Bin[] {
  const grid = gridFor(readings, limits);
  const counts = new Map<number, number>();
  for (const reading of readings) {
    const bin = binOf(reading, limits, grid);
    counts.set(bin, (counts.get(bin) ?? 0) + 1);
  }
  const used = [...counts.keys()];
  const first = least([...used, limits.lower === null ? grid.last : grid.first]);
  const last = greatest([...used, limits.upper === null ? grid.first : grid.last]);
  const edge = (bin: number) =>
    limits.upper !== null && bin === grid.last + 1 ? limits.upper : grid.anchor + bin * grid.width;
  const [smallest, largest] = [least(readings), greatest(readings)];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const bin = first + index;
    return {
      from: index === 0 && smallest < edge(bin) ? Number.NEGATIVE_INFINITY : edge(bin),
      to: bin === last && largest > edge(bin + 1) ? Number.POSITIVE_INFINITY : edge(bin + 1),
      count: counts.get(bin) ?? 0,
      where: bin < grid.first ? 'below' : bin > grid.last ? 'above' : 'within',
    };
  });
}

function gridFor(readings: readonly number[], { lower, upper }: Limits): Grid {
  const anchor = lower ?? upper ?? 0;
  const width = roundStep(widthFor(readings, anchor));
  if (lower === null) return { anchor, width, first: -WITHIN_ONE, last: -1 };
  if (upper === null) return { anchor, width, first: 0, last: WITHIN_ONE - 1 };
  const bins = Math.min(BETWEEN, Math.max(1, Math.round((upper - lower) / width)));
  return { anchor, width: (upper - lower) / bins, first: 0, last: bins - 1 };
}

/** The limits decide on which side a reading lies, the grid only where there. */
function binOf(reading: number, { lower, upper }: Limits, { anchor, width, first, last }: Grid): number {
  // A billionth of a bin more, because 0.72 less 0.70 is a hair under 0.02 in binary.
  const bin = Math.floor((reading - anchor) / width + 1e-9);
  if (lower !== null && reading < lower) return held(bin, first - BEYOND, first - 1);
  if (upper !== null && reading > upper) return held(bin, last + 1, last + BEYOND);
  return held(bin, first, last);
}

/**
 * By the middle half of the readings, so that one far reading does not flatten the rest: D. Freedman, P. Diaconis, "On the
 * histogram as a density estimator", 1981. Where half of them are equal, a tenth of the whole range.
 */
function widthFor(readings: readonly number[], anchor: number): number {
  const sorted = [...readings].sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.floor(part * (sorted.length - 1))] ?? anchor;
  const middleHalf = (2 * (at(0.75) - at(0.25))) / Math.cbrt(Math.max(1, sorted.length));
  return middleHalf || (at(1) - at(0)) / 10 || Math.abs(anchor) / 100 || 1;
}

function held(bin: number, from: number, to: number): number {
  return Math.min(to, Math.max(from, bin));
}
