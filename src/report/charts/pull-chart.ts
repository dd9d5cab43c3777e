/** One pull over time with its window: limits, guard bands hatched, first release, peak, and the snug point where it is measured. */

import type { Window } from '../../metrology/judgement.ts';
import { shownLimit, shownUnit, shownValue } from '../../quantity/shown.ts';
import { fixed, w } from '../../words/catalogue.ts';
import { figure } from '../figures.ts';
import { pullShape } from '../plot.ts';
import type { PullPlot, TorqueScale } from '../plots.ts';
import { brailleRows, rowOf } from './braille.ts';
import { axes, below, type Chart, frameIn, heightIn } from './chart.ts';
import { hatch } from './hatch.ts';
import type { Box, Pen } from './pen.ts';

export interface PullToDraw {
  readonly plot: PullPlot;
  readonly scale: TorqueScale;
  readonly window: Window;
  readonly title: string;
  readonly words: string;
}

/** Text rows of the curve. */
const ROWS = 10;
const FIGURES = 8;

export function pullChart(drawn: PullToDraw): Chart {
  return {
    title: drawn.title,
    words: drawn.words,
    draw: (pen, box) => draw(drawn, pen, box),
    text: ({ width, ascii }) => {
      const { plot, scale, window } = drawn;
      const share = (nm: number) => (nm - scale.lowNm) / (scale.highNm - scale.lowNm);
      const shape = pullShape(plot, scale, { x: 0, y: 0, width: 1000, height: 1 });
      const dots = shape.curve.map(({ x, y }) => ({ x: x / 1000, y: 1 - y }));
      const levels = [window.lowerLimit, window.upperLimit];
      const rows = brailleRows(dots, levels.map(share), { width: width - FIGURES, ascii }, ROWS);
      return rows.map((row, i) => {
        const level = levels.find((nm) => rowOf(share(nm), ROWS, ascii) === i);
        const named = level ?? (i === ROWS - 1 ? 0 : null);
        return `${(named === null ? '' : figure(named, 'N.m')).padStart(FIGURES - 1)} ${row}`;
      });
    },
  };
}

function draw({ plot, scale, window }: PullToDraw, pen: Pen, box: Box): void {
  const frame = frameIn(box, pen);
  const { left, right, top, bottom } = frame;
  const span = { low: scale.lowNm, high: scale.highNm };
  const y = heightIn(frame, span);
  const bands = window.decidable
    ? ([
        [window.lowerLimit, window.acceptLower],
        [window.acceptUpper, window.upperLimit],
      ] as const)
    : ([[window.lowerLimit, window.upperLimit]] as const);
  for (const [low, high] of bands)
    hatch(pen, { x: left, y: y(high), width: right - left, height: y(low) - y(high) }, pen.letter / 2);
  const level = (nm: number, name: string, stroke: 'solid' | 'dashed') => {
    pen.line(
      [
        [left, y(nm)],
        [right, y(nm)],
      ],
      stroke,
    );
    pen.text(right + pen.letter / 3, y(nm), name);
  };
  level(window.lowerLimit, w`limit ${shownLimit(window.lowerLimit, 'N.m', 'lower')}`, 'dashed');
  level(window.upperLimit, w`limit ${shownLimit(window.upperLimit, 'N.m', 'upper')}`, 'dashed');
  axes(pen, frame, {
    scale: span,
    name: shownUnit('N.m'),
    figure: (value) => String(Math.round(shownValue(value, 'N.m') * 100) / 100),
  });
  const inside = { x: left, y: top, width: right - left, height: bottom - top };
  const shape = pullShape(plot, scale, inside);
  pen.line(shape.curve.map(({ x, y: at }) => [x, at] as const));
  if (shape.release !== null) {
    pen.dot(shape.release.x, shape.release.y);
    pen.text(shape.release.x - pen.letter / 2, shape.release.y - pen.letter * 0.8, w`click`, 'end');
  }
  pen.signal(shape.peak.x, shape.peak.y - pen.letter / 2, 'below', w`peak`);
  pen.text(
    shape.peak.x + pen.letter,
    shape.peak.y - pen.letter * 0.9,
    w`peak ${figure(plot.peak.nm, 'N.m')}`,
  );
  if (plot.snugMs !== null && shape.spanMs > 0) {
    const x = left + ((right - left) * plot.snugMs) / shape.spanMs;
    pen.line(
      [
        [x, top],
        [x, bottom],
      ],
      'dotted',
    );
    pen.text(x, top - pen.letter / 2, w`snug point`, 'middle');
  }
  const legend = w`hatched: guard band, where a reading proves nothing; between: accepted`;
  below(pen, frame, { first: '0 s', last: `${fixed(shape.spanMs / 1000, 2)} s`, legend });
}
