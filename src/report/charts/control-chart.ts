import { w } from '../../words/catalogue.ts';
import { UNIT_TEXT } from '../figures.ts';
import { axes, below, type Chart, frameIn, heightIn } from './chart.ts';
import {
  CENTRES,
  type ControlDrawing,
  type ControlRow,
  controlInWords,
  figureOf,
  MARKS,
  marksText,
  sideText,
} from './control.ts';
import { controlText } from './control-text.ts';
import type { Box, Pen, Point } from './pen.ts';
import { scaleAround } from './scale.ts';

export function controlChart(drawing: ControlDrawing): Chart {
  return {
    title: drawing.title,
    words: controlInWords(drawing),
    draw: (pen, box) => drawControl(drawing, pen, box),
    text: (size) => controlText(drawing, size),
  };
}

/** Readings in their order to the right, values upwards; limits dashed, the centre dotted, both with their names. */
function drawControl(drawing: ControlDrawing, pen: Pen, box: Box): void {
  const { unit, rows, centre, centreName, mark } = drawing;
  const figure = figureOf(drawing);
  const frame = frameIn(box, pen);
  const { left, right } = frame;
  const scale = scaleAround(
    rows.map(({ value }) => value),
    [...rows.flatMap(({ lower, upper }) => [lower, upper]), centre],
  );
  const y = heightIn(frame, scale);
  const step = (right - left) / Math.max(1, rows.length);
  const x = (index: number) => left + (index + 0.5) * step;
  // A limit belongs to a reading, not to what lies between two.
  const limit = (of: (row: ControlRow) => number) =>
    pen.line(
      rows.flatMap((row, i): Point[] => [
        [left + i * step, y(of(row))],
        [left + (i + 1) * step, y(of(row))],
      ]),
      'dashed',
    );
  const named = (name: string, value: number) =>
    pen.text(right + pen.letter / 2, y(value), `${name} ${figure(value)} ${UNIT_TEXT[unit]}`);
  axes(pen, frame, {
    scale,
    name: `${MARKS[mark]}, ${UNIT_TEXT[unit]}`,
    figure,
  });
  pen.line(
    [
      [left, y(centre)],
      [right, y(centre)],
    ],
    'dotted',
  );
  named(CENTRES[centreName], centre);
  const last = rows.at(-1);
  if (last !== undefined) {
    limit(({ upper }) => upper);
    limit(({ lower }) => lower);
    named(w`upper`, last.upper);
    named(w`lower`, last.lower);
  }
  pen.line(rows.map(({ value }, i): Point => [x(i), y(value)]));
  for (const [i, { label, value, side, reasons }] of rows.entries()) {
    if (side === null) pen.dot(x(i), y(value));
    else pen.signal(x(i), y(value), side, `${label}: ${sideText(side)}, ${reasons.join(', ')}`);
  }
  below(pen, frame, {
    first: rows[0]?.label ?? '',
    last: last?.label ?? '',
    legend: w`${marksText(mark, rows.length)} in order; circle: no signal, filled triangle: signal`,
  });
}
