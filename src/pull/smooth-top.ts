import { Agreement } from './agreement.ts';
import { explains, type Fit, Moments, valueAt, varianceAt } from './moments.ts';
import type { RecentSamples } from './recent.ts';
import { GROWTH, REACH_US, type Top, UNIT_US } from './top.ts';

/** A curvature counts as one beyond so many standard deviations. */
const SIGNIFICANT = 3;
/**
 * The stretch that is fitted was chosen by the samples themselves, so the fit's own uncertainty is too small. From simulated
 * pulls: |error| stays below two standard uncertainties in 95 % and more.
 */
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
  const stretch = new Stretch(samples, at, t0, degree, sigma);
  for (let left = true, right = true; left || right; ) {
    const most = stretch.share();
    left &&= stretch.growLeft(most);
    right &&= stretch.growRight(most);
  }
  return stretch.grown();
}

class Stretch {
  readonly #samples: RecentSamples;
  readonly #t0: number;
  readonly #y0: number;
  readonly #degree: 0 | 2;
  readonly #sigma: number;
  readonly #moments = new Moments();
  readonly #agreement: Agreement;
  #left: number;
  #right: number;
  #fit: Fit | null;

  constructor(samples: RecentSamples, at: number, t0: number, degree: 0 | 2, sigma: number) {
    this.#samples = samples;
    this.#t0 = t0;
    this.#y0 = samples.nm(at);
    this.#degree = degree;
    this.#sigma = sigma;
    this.#agreement = new Agreement(sigma);
    const { left, right } = firstStretch(samples, at, t0);
    this.#left = left;
    this.#right = right;
    for (let i = left; i <= right; i++) this.#add(i, 1);
    this.#fit = this.#moments.fit(degree);
    while (this.#right > this.#left && this.#fit !== null && !explains(this.#fit, sigma)) {
      if (this.#left < at) this.#add(this.#left++, -1);
      if (this.#right > at) this.#add(this.#right--, -1);
      this.#fit = this.#moments.fit(degree);
    }
    if (this.#fit !== null) this.#agreement.takes(this.#fit);
  }

  /** By how many samples it grows at a time. */
  share(): number {
    return Math.max(1, Math.floor(this.#moments.n * GROWTH));
  }

  growLeft(most: number): boolean {
    const count = this.#grow(this.#left - 1, -1, most);
    this.#left -= count;
    return count > 0;
  }

  growRight(most: number): boolean {
    const count = this.#grow(this.#right + 1, 1, most);
    this.#right += count;
    return count > 0;
  }

  grown(): Grown | null {
    const fit = this.#fit;
    if (fit === null) return null;
    return {
      fit: { ...fit, c0: fit.c0 + this.#y0 },
      fromX: this.#x(this.#left),
      toX: this.#x(this.#right),
    };
  }

  /** Takes in as many samples as still fit, at most `most`, from `from` on; how many they were. */
  #grow(from: number, step: 1 | -1, most: number): number {
    let count = 0;
    while (count < most && inReach(this.#samples, from + step * count, this.#t0)) count++;
    for (; count > 0; count = Math.floor(count / 2)) {
      for (let n = 0; n < count; n++) this.#add(from + step * n, 1);
      const wider = this.#moments.fit(this.#degree);
      if (wider === null || (explains(wider, this.#sigma) && this.#agreement.takes(wider))) {
        this.#fit = wider ?? this.#fit;
        return count;
      }
      for (let n = 0; n < count; n++) this.#add(from + step * n, -1);
    }
    return 0;
  }

  #add(i: number, weight: 1 | -1): void {
    this.#moments.add(this.#x(i), this.#samples.nm(i) - this.#y0, weight);
  }

  #x(i: number): number {
    return (this.#samples.timeUs(i) - this.#t0) / UNIT_US;
  }
}

/** The sample in the middle was chosen for being high: alone it is no beginning. */
function firstStretch(samples: RecentSamples, at: number, t0: number): { left: number; right: number } {
  let left = at;
  let right = at;
  while (near(samples, left - 1, at - left + 1, t0)) left--;
  while (near(samples, right + 1, right - at + 1, t0)) right++;
  return { left, right };
}

const near = (samples: RecentSamples, i: number, n: number, t0: number): boolean =>
  samples.has(i) && Math.abs(samples.timeUs(i) - t0) <= (n <= 2 ? NEIGHBOURS_US : FIRST_STRETCH_US);

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
