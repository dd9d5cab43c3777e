/** A cylinder's pulls as a picture: the limits, the bands in which no reading can tell, and the zone that proves. */
import type { Window } from '../../metrology/judgement.ts';
import type { Box } from '../../report/charts/pen.ts';
import { type Ground, ground, type PullShape, pullShape } from '../../report/plot.ts';
import type { CylinderPlot, PullPlot } from '../../report/plots.ts';
import { fixed, w } from '../../words/catalogue.ts';
import { svg } from './dom.ts';

const WIDTH = 340;
const HEIGHT = 190;
const MARGIN = { left: 30, top: 20, right: 4, bottom: 18 } as const;
const BETWEEN = 3;
/** Fewer pulls leave room for the figure at each peak. */
const WITH_FIGURES = 4;
const PEAK = 7;

/** The hatching, once in the page. */
export const hatching = () =>
  svg(
    'svg',
    { width: 0, height: 0, 'aria-hidden': 'true', class: 'defs' },
    svg(
      'defs',
      {},
      svg(
        'pattern',
        { id: 'hatch', width: 5, height: 5, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
        svg('rect', { width: 5, height: 5, class: 'hatch-ground' }),
        svg('line', { x1: 0, y1: 0, x2: 0, y2: 5, class: 'hatch-line' }),
      ),
    ),
  );

export function plotPicture(plot: CylinderPlot, window: Window): SVGSVGElement {
  const box: Box = {
    x: MARGIN.left,
    y: MARGIN.top,
    width: WIDTH - MARGIN.left - MARGIN.right,
    height: HEIGHT - MARGIN.top - MARGIN.bottom,
  };
  const below = ground(plot.scale, window, box);
  const each = (box.width + BETWEEN) / plot.pulls.length;
  return svg(
    'svg',
    { class: 'plot', viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: 'img', 'aria-label': plot.alt },
    ...bands(below),
    ...below.torqueTicks.flatMap(({ at, text }) => [
      svg('line', { class: 'grid', x1: box.x, x2: box.x + box.width, y1: at, y2: at }),
      svg('text', { class: 'tick', x: box.x - 4, y: at + 3.5, 'text-anchor': 'end' }, text),
    ]),
    svg('text', { class: 'tick', x: 2, y: 11 }, 'N·m'),
    ...plot.pulls.flatMap((pull, i) =>
      strip(pull, plot, { ...box, x: box.x + i * each, width: each - BETWEEN }),
    ),
  );
}

/** What lies between limits and zone is hatched: there a reading proves neither. */
function bands({ limits, acceptance }: Ground): readonly SVGElement[] {
  const rect = (name: string, { x, y, width, height }: Box) =>
    svg('rect', { class: name, x, y, width, height: Math.max(0, height) });
  return [
    rect('band-limits', limits),
    svg('rect', { ...rounded(limits), fill: 'url(#hatch)' }),
    ...(acceptance === null ? [] : [rect('band-zone', acceptance)]),
    ...[limits.y, limits.y + limits.height].map((y) =>
      svg('line', { class: 'limit', x1: limits.x, x2: limits.x + limits.width, y1: y, y2: y }),
    ),
  ];
}

const rounded = ({ x, y, width, height }: Box) => ({ x, y, width, height: Math.max(0, height) });

function strip(pull: PullPlot, plot: CylinderPlot, box: Box): readonly SVGElement[] {
  const shape = pullShape(pull, plot.scale, box);
  const middle = box.x + box.width / 2;
  const withFigures = plot.pulls.length <= WITH_FIGURES;
  return [
    svg('rect', { class: 'frame', ...rounded(box) }),
    ...curve(shape),
    ...(shape.release === null
      ? []
      : [svg('circle', { class: 'click', cx: shape.release.x, cy: shape.release.y, r: 3.2 })]),
    svg('polygon', { class: 'peak', points: triangle(shape.peak.x, shape.peak.y) }),
    ...(withFigures ? [peakFigure(pull, shape, box)] : []),
    svg(
      'text',
      { class: 'tick', x: middle, y: box.y - 6, 'text-anchor': 'middle' },
      withFigures ? w`pull ${pull.pull}` : String(pull.pull),
    ),
    svg(
      'text',
      { class: 'tick', x: middle, y: box.y + box.height + 13, 'text-anchor': 'middle' },
      `${fixed(shape.spanMs / 1000, 1)} s`,
    ),
    ...(pull.trace === null
      ? [
          svg(
            'text',
            { class: 'tick', x: middle, y: box.y + box.height - 6, 'text-anchor': 'middle' },
            w`no samples`,
          ),
        ]
      : []),
  ];
}

const curve = ({ curve: points }: PullShape) =>
  points.length < 2
    ? []
    : [
        svg('polyline', {
          class: 'curve',
          points: points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' '),
        }),
      ];

const triangle = (x: number, y: number) =>
  `${x},${y} ${x - PEAK / 2},${y - PEAK} ${x + PEAK / 2},${y - PEAK}`;

/** Beside the peak, on the side with room. */
function peakFigure({ peak }: PullPlot, { peak: { x, y } }: PullShape, box: Box): SVGElement {
  const isRight = x > box.x + box.width / 2;
  return svg(
    'text',
    {
      class: 'figure',
      x: isRight ? x - 7 : x + 7,
      y: Math.max(box.y + 10, y - 2),
      'text-anchor': isRight ? 'end' : 'start',
    },
    fixed(peak.nm, 1),
  );
}
