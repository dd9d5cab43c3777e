import { explains, type Fit, Moments, slopeAt, valueAt, varianceAt } from './moments.ts';
import type { RecentSamples } from './recent.ts';

/** A maximum of the torque as estimated from the samples about it. Times in microseconds since the start of the pull. */
export interface Top {
  readonly nm: number;
  readonly atUs: number;
  readonly standardNm: number;
}

/** Fits reach this far from the top, and count time in these units. */
const REACH_US = 160_000;
const UNIT_US = 10_000;
/** A curvature counts as one beyond so many standard deviations. */
const SIGNIFICANT = 3;
/**
 * The stretch was chosen by the samples themselves, so the fit's own uncertainty is too small. By so much, from simulated
 * pulls: |error| stays below two standard uncertainties in about 95 %.
 */
const SMOOTH_FACTOR = 2.5;
const CLICK_FACTOR = 2;
const HIDDEN_SHARE = 0.3;
const HIDDEN_SIGMA = 4;
/** Half-width of the intervals that must agree, in standard deviations; how fast a stretch grows. */
const AGREES_WITHIN = 1.2;
const GROWTH = 0.25;
/** A stretch begins with the samples this near, and with two more on each side if they are not far. */
const FIRST_STRETCH_US = 8_000;
const NEIGHBOURS_US = 22_000;
/** Time constant of a click's fall where the samples do not show it: 5 to 30 ms in all (practice; from memory). */
const FALL_US = 5_000;
const FALL_LOWER_US = 1_000;
const FALL_UPPER_US = 20_000;
/** What is not known of the moment of release, as a share of the step in which it fell. From simulated clicks. */
const MOMENT_SHARE = 0.15;
/** Where the end of the rise is looked for: above this share of the drop, from so far in front of it. */
const NEARLY_UP = 0.85;
const SAFELY_US = 6_000;
const SURELY_US = 1_000;
const SMOOTH_US = 6_000;
const LACKS_SIGMA = 3.5;
/** … and what a bending rise may lack of the way that it was carried on. */
const BENDS_SHARE = 0.3;
const LINE_AT_LEAST = 4;

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
  return { ...top, standardNm: Math.hypot(SMOOTH_FACTOR * top.standardNm, hiddenNm(samples, at, sigma)) };
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

/**
 * Whether the value at x = 0 of a wider stretch agrees with those of all narrower ones within their uncertainty
 * (intersection of confidence intervals, A. Goldenshluger and A. Nemirovski): what bends the fit away shows there first.
 */
class Agreement {
  readonly #sigma: number;
  #lower = Number.NEGATIVE_INFINITY;
  #upper = Number.POSITIVE_INFINITY;

  constructor(sigma: number) {
    this.#sigma = sigma;
  }

  takes(fit: Fit): boolean {
    const reach = AGREES_WITHIN * this.#sigma * Math.sqrt(varianceAt(fit, 0));
    const lower = Math.max(this.#lower, fit.c0 - reach);
    const upper = Math.min(this.#upper, fit.c0 + reach);
    if (lower > upper) return false;
    this.#lower = lower;
    this.#upper = upper;
    return true;
  }
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

/**
 * The top of a click: the torque rises, breaks off within a moment and falls to `troughNm`. Where the samples lie far
 * apart the break lies between two of them. When it came follows from how far the first sample behind it has fallen; how
 * high the torque was then, from the rise in front of it.
 */
export function clickTop(
  samples: RecentSamples,
  crest: { readonly nm: number; readonly atUs: number },
  kneeUs: number,
  troughNm: number,
  sigma: number,
): Top {
  const last = lastOfRise(samples, crest, kneeUs, troughNm, sigma);
  // What has just begun to fall would bend the whole fit.
  let surely = last;
  while (samples.has(surely - 1) && samples.timeUs(last) - samples.timeUs(surely) < SURELY_US) {
    if (samples.timeUs(last) - samples.timeUs(surely - 1) > 2 * SURELY_US) break;
    surely--;
  }
  let top: Top = { nm: crest.nm, atUs: samples.timeUs(last), standardNm: sigma };
  for (let round = 0; round < 2; round++) {
    const breakUs = momentOfBreak(samples, last, Math.max(top.nm, crest.nm), troughNm, sigma);
    const rise = riseTo(samples, surely, breakUs, sigma);
    if (rise === null) break;
    const stepUs = samples.has(last + 1) ? samples.timeUs(last + 1) - samples.timeUs(last) : 0;
    const momentNm = (Math.abs(rise.slopeNmPerUnit) * MOMENT_SHARE * stepUs) / UNIT_US;
    // Within one step the torque came no further than in the step before.
    const mostNm = samples.nm(last) + Math.abs(samples.nm(last) - samples.nm(last - 1)) + 3 * sigma;
    const nm = samples.has(last - 1) ? Math.min(rise.nm, mostNm) : rise.nm;
    top = { nm, atUs: breakUs, standardNm: Math.hypot(CLICK_FACTOR * rise.standardNm, momentNm) };
  }
  return top;
}

/** The last sample that still lies on the rise: on from the highest one, as long as noise explains what it lacks. */
function lastOfRise(
  samples: RecentSamples,
  crest: { readonly nm: number; readonly atUs: number },
  kneeUs: number,
  troughNm: number,
  sigma: number,
): number {
  const dropNm = crest.nm - troughNm;
  let nearly = samples.nearest(kneeUs);
  while (
    samples.has(nearly - 1) &&
    samples.timeUs(nearly) > crest.atUs &&
    samples.nm(nearly) < troughNm + NEARLY_UP * dropNm
  )
    nearly--;
  let last = nearly;
  for (let i = nearly - 1; samples.has(i) && samples.timeUs(nearly) - samples.timeUs(i) <= SAFELY_US; i--)
    if (samples.nm(i) > samples.nm(last)) last = i;
  const lacks = (of: number, i: number): boolean => {
    const rise = riseTo(samples, of, samples.timeUs(i), sigma);
    if (rise === null) return false;
    const bendsNm =
      (BENDS_SHARE * Math.abs(rise.slopeNmPerUnit) * (samples.timeUs(i) - samples.timeUs(of))) / UNIT_US;
    return rise.nm - samples.nm(i) > LACKS_SIGMA * Math.hypot(sigma, rise.standardNm) + bendsNm;
  };
  // The highest one may already have begun to fall.
  if (samples.has(last - 1) && lacks(last - 1, last)) last--;
  while (last < nearly && !lacks(last, last + 1)) last++;
  return last;
}

/** The fall is about exponential: its time constant from two samples on it, the moment from the first of them. */
function momentOfBreak(
  samples: RecentSamples,
  last: number,
  topNm: number,
  troughNm: number,
  sigma: number,
): number {
  const lastUs = samples.timeUs(last);
  if (!samples.has(last + 1)) return lastUs;
  const firstUs = samples.timeUs(last + 1);
  const drop = Math.max(topNm - troughNm, 1e-9);
  const floor = Math.max(0.1, (3 * sigma) / drop);
  const left = Math.min(1, (samples.nm(last + 1) - troughNm) / drop);
  if (left <= floor) return Math.max(lastUs, firstUs - 0.5 * (firstUs - lastUs) - 0.5 * FALL_US);
  let second = last + 2;
  while (samples.has(second + 1) && samples.timeUs(second) - firstUs < FALL_US / 2) second++;
  const betweenUs = samples.has(second) ? samples.timeUs(second) - firstUs : FALL_US;
  const later = samples.has(second) ? (samples.nm(second) - troughNm) / drop : 0;
  const ratio = Math.max(later, floor) / left;
  const seenUs = ratio < 1 ? betweenUs / Math.log(1 / ratio) : FALL_UPPER_US;
  const fallUs = Math.min(
    FALL_UPPER_US,
    Math.max(FALL_LOWER_US, later <= floor ? Math.min(seenUs, FALL_US) : seenUs),
  );
  return Math.max(lastUs, firstUs - fallUs * Math.log(1 / left));
}

interface RiseAtBreak {
  readonly nm: number;
  readonly standardNm: number;
  readonly slopeNmPerUnit: number;
}

/**
 * The rise carried on to the break by the line or the parabola backwards from it that is known better there. Few points
 * make no line: a steep rise bends, and carrying the chord on would overshoot.
 */
function riseTo(samples: RecentSamples, last: number, breakUs: number, sigma: number): RiseAtBreak | null {
  const line = backwards(samples, last, breakUs, sigma, 1);
  const parabola = backwards(samples, last, breakUs, sigma, 2);
  if (line === null || parabola === null) return line ?? parabola;
  return line.points >= LINE_AT_LEAST && line.standardNm < parabola.standardNm ? line : parabola;
}

function backwards(
  samples: RecentSamples,
  last: number,
  breakUs: number,
  sigma: number,
  degree: 1 | 2,
): (RiseAtBreak & { readonly points: number }) | null {
  const y0 = samples.nm(last);
  const moments = new Moments();
  const agreement = new Agreement(sigma);
  let fit: Fit | null = null;
  for (let i = last, due = degree + 2; samples.has(i) && breakUs - samples.timeUs(i) <= REACH_US; i--) {
    moments.add((samples.timeUs(i) - breakUs) / UNIT_US, samples.nm(i) - y0);
    // Over so short a time every rise is smooth: nothing is tested there.
    if (moments.n <= degree + 1 || samples.timeUs(last) - samples.timeUs(i) <= SMOOTH_US) {
      fit = moments.fit(degree) ?? fit;
      due = moments.n + 1;
      continue;
    }
    if (moments.n < due) continue;
    due = moments.n + Math.max(1, Math.floor(moments.n * GROWTH));
    const wider = moments.fit(degree);
    if (wider === null) continue;
    if (!(explains(wider, sigma) && agreement.takes(wider))) break;
    fit = wider;
  }
  if (fit === null) return null;
  return {
    nm: y0 + valueAt(fit, 0),
    standardNm: sigma * Math.sqrt(varianceAt(fit, 0)),
    slopeNmPerUnit: slopeAt(fit, 0),
    points: fit.freedom + degree + 1,
  };
}
