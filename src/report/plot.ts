import type { Window } from '../metrology/judgement.ts';
import { shownValue } from '../quantity/shown.ts';
import { fixed, inWriting } from '../words/catalogue.ts';
import type { Box } from './charts/pen.ts';
import { roundStep, ticks } from './charts/scale.ts';
import type { PullPlot, TorqueScale, Trace } from './plots.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** What all pulls of a plot lie on, y downwards. */
export interface Ground {
  readonly limits: Box;
  /** Null when no reading can prove conformity. */
  readonly acceptance: Box | null;
  readonly torqueTicks: readonly Tick[];
}

/** A pull as lines on the page, y downwards, nothing outside the box. */
export interface PullShape {
  readonly curve: readonly Point[];
  readonly peak: Point;
  readonly release: Point | null;
  /** The time from the left edge of the box to the right one. */
  readonly spanMs: number;
}

/** About so many figures beside the torque axis. */
const TICKS = 4;

/** Where limits, acceptance zone and ticks lie inside `box`, in points. */
export function ground(scale: TorqueScale, window: Window, box: Box): Ground {
  const y = heightIn(scale, box);
  // Round figures in the unit that is read.
  const factor = shownValue(1, 'N.m');
  const span = { low: factor * scale.lowNm, high: factor * scale.highNm };
  const step = roundStep((span.high - span.low) / TICKS);
  const band = (low: number, high: number): Box => ({ ...box, y: y(high), height: y(low) - y(high) });
  return {
    limits: band(window.lowerLimit, window.upperLimit),
    acceptance: window.decidable ? band(window.acceptLower, window.acceptUpper) : null,
    torqueTicks: ticks(span, TICKS).map((value) => ({ at: y(value / factor), text: tickText(value, step) })),
  };
}

/** Where everything of one pull lies inside `box`, in points; it fills the width. */
export function pullShape(plot: PullPlot, scale: TorqueScale, box: Box): PullShape {
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
  const spanMs = toMs - fromMs;
  const y = heightIn(scale, box);
  const point = ({ tMs, nm }: { readonly tMs: number; readonly nm: number }): Point => ({
    x: box.x + (box.width * (tMs - fromMs)) / spanMs,
    y: y(nm),
  });
  return {
    curve: thinned(samples.map(point), box),
    peak: point(plot.peak),
    release: plot.release === null ? null : point(plot.release),
    spanMs,
  };
}

function heightIn({ lowNm, highNm }: TorqueScale, box: Box): (nm: number) => number {
  return (nm) => box.y + box.height * (1 - (clamp(nm, lowNm, highNm) - lowNm) / (highNm - lowNm));
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

/** A figure beside the axis, with as many decimals as steps of this size need. */
function tickText(value: number, step: number): string {
  if (step >= 1e6) return inWriting(value.toExponential(0));
  return fixed(value, Math.min(Math.max(0, -Math.floor(Math.log10(step))), 6));
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
