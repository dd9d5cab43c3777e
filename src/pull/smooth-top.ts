import { Agreement } from './agreement.ts';
import { explains, type Fit, Moments, valueAt, varianceAt } from './moments.ts';
import type { RecentSamples } from './recent.ts';
import { GROWTH, REACH_US, type Top, UNIT_US } from './top.ts';

/** A curvature counts as one beyond so many standard deviations. */
const SIGNIFICANT = 3;
const UNCERTAINTY_FACTOR = 2.5;
const HIDDEN_SHARE = 0.3;
const HIDDEN_SIGMA = 4;
/** A stretch begins with the samples this near, and with two more on each side if they are not far. */
const FIRST_STRETCH_US = 8_000;
const NEIGHBOURS_US = 22_000;

/**
 * The top of a smooth maximum near `aroundUs`: the vertex of a parabola where the torque visibly bends, else the mean of
 * what noise cannot tell apart. The highest of n noisy samples would lie above the truth; these do not.
 */
export function smoothTop(samples: RecentSamples, aroundUs: number, sigma: number): Top {
  const at = samples.nearest(aroundUs);
  const t0 = samples.timeUs(at);
  const bent = grown(samples, at, t0, 2, sigma);
  const vertex = bent === null ? null : vertexOf(bent, t0, sigma);
  const level = grown(samples, at, t0, 0, sigma);
  const flat = {
    nm: level === null ? samples.nm(at) : level.fit.c0,
    atUs: t0,
    standardNm: sigma * Math.sqrt(level === null ? 1 : varianceAt(level.fit, 0)),
  };
  const top = vertex !== null && vertex.standardNm < flat.standardNm ? vertex : flat;
  return {
    ...top,
    standardNm: Math.hypot(UNCERTAINTY_FACTOR * top.standardNm, hiddenNm(samples, at, sigma)),
  };
}

/** What may lie between the highest sample and its neighbours: a share of the steps to them, beyond their noise. */
function hiddenNm(samples: RecentSamples, at: number, sigma: number): number {
  const step = (i: number) =>
    samples.has(i) ? Math.max(0, Math.abs(samples.nm(at) - samples.nm(i)) - HIDDEN_SIGMA * sigma) : 0;
  return (HIDDEN_SHARE * (step(at - 1) + step(at + 1))) / 2;
}

interface Grown {
  readonly fit: Fit;
  readonly fromX: number;
  readonly toX: number;
}

/**
 * The widest stretch about `at` that a polynomial of this degree still explains. It grows by a share of itself, to the left
 * and to the right in turn, and by less where that goes too far.
 */
function grown(samples: RecentSamples, at: number, t0: number, degree: 0 | 2, sigma: number): Grown | null {
  const y0 = samples.nm(at);
  const x = (i: number) => (samples.timeUs(i) - t0) / UNIT_US;
  const moments = new Moments();
  const add = (i: number, weight: 1 | -1) => moments.add(x(i), samples.nm(i) - y0, weight);
  const ends = firstStretch(samples, at, t0);
  for (let i = ends.left; i <= ends.right; i++) add(i, 1);
  let fit = moments.fit(degree);
  while (ends.right > ends.left && fit !== null && !explains(fit, sigma)) {
    if (ends.left < at) add(ends.left++, -1);
    if (ends.right > at) add(ends.right--, -1);
    fit = moments.fit(degree);
  }
  const agreement = new Agreement(sigma);
  if (fit !== null) agreement.takes(fit);
  const take = (side: 'left' | 'right', most: number): boolean => {
    const step = side === 'left' ? -1 : 1;
    const from = ends[side] + step;
    let count = 0;
    while (count < most && inReach(samples, from + step * count, t0)) count++;
    for (; count > 0; count = Math.floor(count / 2)) {
      for (let n = 0; n < count; n++) add(from + step * n, 1);
      const wider = moments.fit(degree);
      if (wider === null || (explains(wider, sigma) && agreement.takes(wider))) {
        fit = wider ?? fit;
        ends[side] = from + step * (count - 1);
        return true;
      }
      for (let n = 0; n < count; n++) add(from + step * n, -1);
    }
    return false;
  };
  for (let goLeft = true, goRight = true; goLeft || goRight; ) {
    const most = Math.max(1, Math.floor(moments.n * GROWTH));
    goLeft &&= take('left', most);
    goRight &&= take('right', most);
  }
  return fit === null ? null : { fit: { ...fit, c0: fit.c0 + y0 }, fromX: x(ends.left), toX: x(ends.right) };
}

/** The sample in the middle was chosen for being high: alone it is no beginning. */
function firstStretch(samples: RecentSamples, at: number, t0: number): { left: number; right: number } {
  const near = (i: number, n: number) =>
    samples.has(i) && Math.abs(samples.timeUs(i) - t0) <= (n <= 2 ? NEIGHBOURS_US : FIRST_STRETCH_US);
  let left = at;
  let right = at;
  while (near(left - 1, at - left + 1)) left--;
  while (near(right + 1, right - at + 1)) right++;
  return { left, right };
}

const inReach = (samples: RecentSamples, i: number, t0: number): boolean =>
  samples.has(i) && Math.abs(samples.timeUs(i) - t0) <= REACH_US;

function vertexOf({ fit, fromX, toX }: Grown, t0: number, sigma: number): Top | null {
  const bendStandard = sigma * Math.sqrt(fit.v22);
  if (!(fit.c2 < -SIGNIFICANT * bendStandard)) return null;
  const x = -fit.c1 / (2 * fit.c2);
  if (x < fromX || x > toX) return null;
  // Noise moves the vertex about, and always to a higher value: E = c1² variance / 4|c2|.
  const bias = (sigma * sigma * fit.v11) / (4 * Math.abs(fit.c2));
  const standardNm = sigma * Math.sqrt(varianceAt(fit, x)) + bias;
  return { nm: valueAt(fit, x) - bias, atUs: t0 + x * UNIT_US, standardNm };
}
