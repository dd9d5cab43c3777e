/** A window along its quantity: limits, guard bands hatched, the acceptance zone, and how a reading spreads over them. */

import type { Window } from '../../metrology/judgement.ts';
import { normalBetween } from '../../metrology/normal.ts';
import { shownLimit } from '../../quantity/shown.ts';
import { w } from '../../words/catalogue.ts';
import { figure, UNIT_TEXT } from '../figures.ts';
import { windowText } from '../window-text.ts';
import type { Chart } from './chart.ts';
import { hatch } from './hatch.ts';
import type { Box, Pen, Point } from './pen.ts';

interface Reading {
  readonly value: number;
  readonly standard: number;
}

export function windowChart(window: Window, reading: Reading): Chart {
  const { limits, acceptance, guard } = windowText(window);
  return {
    title: w`Window in ${UNIT_TEXT[window.unit]}: ${limits}`,
    words: w`Limits ${limits}. Accepted ${acceptance}. Guard band ${guard}. Over it the density of a reading of ${figure(reading.value, window.unit)}.`,
    draw: (pen, box) => draw(window, reading, pen, box),
    text: null,
  };
}

const STEPS = 160;

function draw(window: Window, { value, standard }: Reading, pen: Pen, box: Box): void {
  const { lowerLimit, upperLimit, acceptLower, acceptUpper, unit } = window;
  const margin = 0.5 * (upperLimit - lowerLimit);
  const from = Math.min(lowerLimit - margin, value - 3.5 * standard);
  const to = Math.max(upperLimit + margin, value + 3.5 * standard);
  const left = box.x + pen.letter;
  const right = box.x + box.width - pen.letter;
  const top = box.y + 2 * pen.letter;
  const bottom = box.y + box.height - 4 * pen.letter;
  const x = (at: number) => left + ((right - left) * (at - from)) / (to - from);
  const band = (low: number, high: number) =>
    hatch(pen, { x: x(low), y: top, width: x(high) - x(low), height: bottom - top }, pen.letter / 2);
  if (window.decidable) {
    band(lowerLimit, acceptLower);
    band(acceptUpper, upperLimit);
  } else band(lowerLimit, upperLimit);
  const upright = (at: number, dashed: boolean) =>
    pen.line(
      [
        [x(at), top],
        [x(at), bottom],
      ],
      dashed ? 'dashed' : 'solid',
    );
  const edges = [lowerLimit, upperLimit, ...(window.decidable ? [acceptLower, acceptUpper] : [])];
  edges.forEach((at, i) => {
    upright(at, i > 1);
    // Limits in the first row, ends of the acceptance zone in the second: close ones would lie on each other.
    const text = shownLimit(at, unit, i % 2 === 0 ? 'lower' : 'upper');
    pen.text(x(at), bottom + (i > 1 ? 2.2 : 1) * pen.letter, text, 'middle');
  });
  const step = (to - from) / STEPS;
  const density = Array.from({ length: STEPS }, (_, i) => {
    const low = (from + i * step - value) / standard;
    return normalBetween(low, low + step / standard);
  });
  const highest = Math.max(...density);
  const curve = density.map(
    (one, i): Point => [x(from + (i + 0.5) * step), bottom - ((bottom - top) * one) / highest],
  );
  pen.line(curve);
  pen.line([
    [left, bottom],
    [right, bottom],
  ]);
  pen.text(
    (left + right) / 2,
    bottom + 3.4 * pen.letter,
    w`solid: limits; dashed: accepted between; hatched: guard band, where a reading proves nothing`,
    'middle',
  );
}
