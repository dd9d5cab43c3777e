import type { Window } from '../metrology/judgement.ts';
import type { PullPlot, Trace } from './plots.ts';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** A plot as lines and areas on the page, y downwards, nothing outside the box. */
export interface PlotShape {
  readonly limits: Box;
  /** Null when no reading can prove conformity. */
  readonly acceptance: Box | null;
  readonly curve: readonly Point[];
  readonly peak: Point;
  readonly release: Point | null;
  readonly timeTicks: readonly Tick[];
  readonly torqueTicks: readonly Tick[];
}

/** Where everything of a pull's plot lies inside `box`, in points. */
export function plotShape(plot: PullPlot, window: Window, box: Box): PlotShape {
  const samples = usable(plot.trace);
  const times = [
    ...samples.map(({ tMs }) => tMs),
    plot.peak.tMs,
    plot.durationMs,
    ...(plot.release ? [plot.release.tMs] : []),
  ];
  const fromMs = times.reduce((low, t) => Math.min(low, t), 0);
  const toMs = Math.max(
    times.reduce((high, t) => Math.max(high, t), 0),
    fromMs + 1,
  );
  const { lowNm, highNm } = plot.scale;
  const x = (tMs: number) => box.x + (box.width * (tMs - fromMs)) / (toMs - fromMs);
  const y = (nm: number) => box.y + box.height * (1 - (clamp(nm, lowNm, highNm) - lowNm) / (highNm - lowNm));
  const band = (low: number, high: number): Box => ({ ...box, y: y(high), height: y(low) - y(high) });
  const point = ({ tMs, nm }: { readonly tMs: number; readonly nm: number }): Point => ({
    x: x(tMs),
    y: y(nm),
  });
  return {
    limits: band(window.lowerLimit, window.upperLimit),
    acceptance: window.decidable ? band(window.acceptLower, window.acceptUpper) : null,
    curve: thinned(samples.map(point), box),
    peak: point(plot.peak),
    release: plot.release === null ? null : point(plot.release),
    timeTicks: ticks(fromMs / 1000, toMs / 1000, 4).map(({ value, text }) => ({ at: x(value * 1000), text })),
    torqueTicks: ticks(lowNm, highNm, 4).map(({ value, text }) => ({ at: y(value), text })),
  };
}

const COLUMNS_PER_POINT = 2;

/**
 * The curve as the printer can show it: in each narrow column the first, the lowest, the highest and the last point, so
 * that no peak is lost however many samples there are.
 */
function thinned(points: readonly Point[], box: Box): readonly Point[] {
  const columns = Math.ceil(box.width * COLUMNS_PER_POINT);
  if (points.length <= 2 * columns) return points;
  const kept: Point[] = [];
  let column: Point[] = [];
  let at = -1;
  for (const point of points) {
    const here = Math.floor((point.x - box.x) * COLUMNS_PER_POINT);
    if (here !== at) {
      kept.push(...extremes(column));
      column = [];
      at = here;
    }
    column.push(point);
  }
  return [...kept, ...extremes(column)];
}

function extremes(column: readonly Point[]): readonly Point[] {
  if (column.length <= 4) return column;
  const byHeight = column.map((point, index) => ({ y: point.y, index })).sort((a, b) => a.y - b.y);
  const chosen = new Set([0, byHeight[0]?.index, byHeight.at(-1)?.index, column.length - 1]);
  return column.filter((_, index) => chosen.has(index));
}

function usable(trace: Trace | null): readonly { readonly tMs: number; readonly nm: number }[] {
  if (trace === null) return [];
  return trace.tMs
    .map((tMs, index) => ({ tMs, nm: trace.nm[index] ?? Number.NaN }))
    .filter(({ tMs, nm }) => Number.isFinite(tMs) && Number.isFinite(nm));
}

/** Round figures between two bounds, about `wanted` of them, in steps of 1, 2 or 5 times a power of ten. */
function ticks(
  from: number,
  to: number,
  wanted: number,
): { readonly value: number; readonly text: string }[] {
  const rough = (to - from) / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5].find((factor) => factor * power >= rough) ?? 10);
  const decimals = Math.min(Math.max(0, -Math.floor(Math.log10(step))), 6);
  const first = Math.ceil(from / step);
  const count = Math.floor(to / step) - first + 1;
  return Array.from({ length: count }, (_, index) => {
    const value = (first + index) * step;
    return { value, text: step >= 1e6 ? value.toExponential(0) : value.toFixed(decimals) };
  });
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
