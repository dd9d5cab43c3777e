/** A window drawn across a row, with the density of a reading above it. */

import type { Window } from '../metrology/judgement.ts';
import { normalBetween } from '../metrology/normal.ts';
import { shownLimit } from '../quantity/shown.ts';
import { w } from '../words/catalogue.ts';
import type { Glyphs } from './glyphs.ts';
import { unitWord } from './words.ts';
import { columnOf, type Scale, type Zone, zonesOf } from './zones.ts';

/** What is known of a value: normal about `value`. */
export interface Spread {
  readonly value: number;
  readonly standard: number;
}

const ROWS = 7;

/** The density of the reading over the limits (`┃`), guard bands and acceptance zone, as lines of at most `columns`. */
export function windowPlot(window: Window, spread: Spread, columns: number, glyphs: Glyphs): string[] {
  const { lowerLimit, upperLimit } = window;
  const margin = 0.5 * (upperLimit - lowerLimit);
  const reach = 3.5 * spread.standard;
  const from = Math.min(lowerLimit - margin, spread.value - reach);
  const to = Math.max(upperLimit + margin, spread.value + reach);
  const scale: Scale = { columns, top: to - from };
  const shifted: Window = {
    ...window,
    lowerLimit: lowerLimit - from,
    upperLimit: upperLimit - from,
    acceptLower: window.acceptLower - from,
    acceptUpper: window.acceptUpper - from,
  };
  const marks: Readonly<Record<Zone, string>> = {
    outside: glyphs.line,
    limit: glyphs.limit,
    guard: glyphs.guard,
    accept: glyphs.accept,
  };
  return [
    ...density(spread, from, scale, glyphs),
    zonesOf(shifted, scale)
      .map((zone) => marks[zone])
      .join(''),
    labels(window, from, scale),
    w`${glyphs.accept} proves the torque  ${glyphs.guard} too near a limit  ${glyphs.limit} limits, in ${unitWord(window.unit, glyphs)}`,
  ];
}

/** Each column as high as its share of probability, the highest one filling all rows. */
function density(
  { value, standard }: Spread,
  from: number,
  { columns, top }: Scale,
  glyphs: Glyphs,
): string[] {
  const step = top / columns;
  const edge = (column: number) => (from + column * step - value) / standard;
  const shares = Array.from({ length: columns }, (_, column) =>
    normalBetween(edge(column), edge(column + 1)),
  );
  const highest = Math.max(...shares);
  const levels = glyphs.upward.length - 1;
  const heights = shares.map((share) => Math.round((share / highest) * ROWS * levels));
  return Array.from({ length: ROWS }, (_, row) => {
    const floor = (ROWS - 1 - row) * levels;
    const cells = heights.map(
      (height) => glyphs.upward[Math.max(0, Math.min(levels, height - floor))] ?? ' ',
    );
    return cells.join('').trimEnd();
  });
}

/** The limits under their marks. */
function labels({ lowerLimit, upperLimit, unit }: Window, from: number, scale: Scale): string {
  const low = shownLimit(lowerLimit, unit, 'lower');
  const high = shownLimit(upperLimit, unit, 'upper');
  const lowEnds = columnOf(lowerLimit - from, scale) + 1;
  const highStarts = columnOf(upperLimit - from, scale);
  const left = low.padStart(lowEnds);
  return left.padEnd(Math.max(left.length + 1, highStarts)) + high;
}
