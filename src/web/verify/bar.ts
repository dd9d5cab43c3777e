/** A figure in its window, drawn large: the guard bands are a sliver in the plot of a whole pull. */
import type { Window } from '../../metrology/judgement.ts';
import { svg } from './dom.ts';

const WIDTH = 340;
const HEIGHT = 22;
const MIDDLE = 10;
/** So much of the window is shown beyond each limit; a figure further out stands at the edge. */
const BEYOND = 0.3;
const MARK = 9;

export function windowBar(window: Window, value: number): SVGSVGElement {
  const { lowerLimit, upperLimit, decidable, acceptLower, acceptUpper } = window;
  const air = (upperLimit - lowerLimit) * BEYOND;
  const [low, high] = [lowerLimit - air, upperLimit + air];
  const x = (at: number) => (WIDTH * (Math.min(Math.max(at, low), high) - low)) / (high - low);
  const band = (name: string | null, from: number, to: number, fill: string | null = null) =>
    svg('rect', {
      class: name,
      fill,
      x: x(from),
      y: MIDDLE - 5,
      width: Math.max(0, x(to) - x(from)),
      height: 15,
    });
  const at = Math.min(Math.max(x(value), MARK / 2), WIDTH - MARK / 2);
  return svg(
    'svg',
    { class: 'bar', viewBox: `0 0 ${WIDTH} ${HEIGHT}`, 'aria-hidden': 'true' },
    band('bar-ground', low, high),
    band(null, lowerLimit, upperLimit, 'url(#hatch)'),
    ...(decidable ? [band('band-zone', acceptLower, acceptUpper)] : []),
    ...[lowerLimit, upperLimit].map((limit) =>
      svg('line', { class: 'limit', x1: x(limit), x2: x(limit), y1: MIDDLE - 7, y2: HEIGHT }),
    ),
    svg('line', { class: 'needle', x1: at, x2: at, y1: MIDDLE - 4, y2: HEIGHT }),
    svg('polygon', { class: 'peak', points: `${at},${MIDDLE} ${at - MARK / 2},1 ${at + MARK / 2},1` }),
  );
}
