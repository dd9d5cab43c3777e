import { brokenTops, UNLIKELY } from './broken-top.ts';
import type { Samples } from './samples.ts';
import { bothSides, carried, momentsIn, type Side, type Sides } from './sides.ts';
import { averaged, BENDS, type Guess } from './spline.ts';
import type { Top } from './top.ts';

/** Samples this far in front of a top and behind it say how it bends, and as many at least. */
const BEFORE_US = 60_000;
const BEHIND_US = 50_000;
const AT_LEAST = 4;
/** A valley is one when the torque comes up again by more than noise and ripple of a joint. */
const VALLEY_SIGMA = 4;
const VALLEY_SHARE = 0.02;
/** The top lies this near to the highest frame. */
const NEAR_US = 20_000;
/** A curve is looked at so finely, where samples come more often. */
const LOOK_US = 2_500;
/** Before the readings are looked at: how likely it is that a top breaks off, where a click was seen and where none was. */
const BREAKS = { click: 0.95, other: 0.5 } as const;
/** Torques do more than the curves that are weighed: from pulls of two independent simulations. */
const UNCERTAINTY_FACTOR = 1.1;

/**
 * The top near sample number `at`. Either the torque bends there: then the top is the highest point of a smoothing spline
 * through both sides. Or it breaks off, because a head gives way or an arm is at its end: then the top is where the splines
 * of both sides meet. All that may have been is weighed by how well it explains the readings; the uncertainty is what
 * remains of it. The highest of n noisy readings would lie above the truth; this does not.
 */
export function crestTop(samples: Samples, at: number, sigma: number, click: boolean): Top {
  const [first, last] = stretch(samples, at, sigma);
  const scaleNm = Math.max(sigma, Math.abs(samples.nm(at)));
  const isNear = (i: number) => i === at || Math.abs(samples.timeUs(i) - samples.timeUs(at)) <= NEAR_US;
  let from = at;
  let to = at;
  while (from > first && isNear(from - 1)) from--;
  while (to < last && isNear(to + 1)) to++;
  const reach = { first, last, from, to };
  const sides = BENDS.map((bend) => bothSides(samples, reach, sigma, scaleNm, bend));
  const prior = click ? BREAKS.click : BREAKS.other;
  const most = Math.max(...sides.map(({ evidence }) => evidence));
  const bent = sides
    .filter(({ evidence }) => evidence > most - UNLIKELY)
    .map((side) => bentTop(samples, side, from, to, Math.log(1 - prior)));
  const top = averaged([...bent, ...brokenTops(samples, sides, reach, sigma, scaleNm, prior)]);
  return { nm: top.nm, atUs: top.atUs, standardNm: UNCERTAINTY_FACTOR * Math.sqrt(top.variance) };
}

/** From the valley in front of the top to that behind it, if they are within reach. */
function stretch(samples: Samples, at: number, sigma: number): readonly [number, number] {
  const valleyNm = VALLEY_SIGMA * sigma + VALLEY_SHARE * Math.abs(samples.nm(at));
  const end = (step: 1 | -1, reachUs: number): number => {
    let i = at;
    let lowest = at;
    for (let n = 1; samples.has(i + step); n++) {
      const next = i + step;
      const far = Math.abs(samples.timeUs(next) - samples.timeUs(at)) > reachUs;
      if (n > AT_LEAST && (far || samples.nm(next) > samples.nm(lowest) + valleyNm)) break;
      i = next;
      if (samples.nm(i) < samples.nm(lowest)) lowest = i;
    }
    const n = samples.nm(i) > samples.nm(lowest) + valleyNm / 2 ? Math.abs(lowest - at) : Math.abs(i - at);
    return at + step * Math.min(Math.abs(i - at), Math.max(AT_LEAST, n));
  };
  return [end(-1, BEFORE_US), end(1, BEHIND_US)];
}

/** The highest point of one spline through both sides. */
function bentTop(samples: Samples, sides: Sides, from: number, to: number, prior: number): Guess {
  const { before, behind, bend } = sides;
  const evidence = sides.evidence + prior;
  let best: Point | null = null;
  let sum = 0;
  let count = 0;
  const stride = Math.max(
    1,
    Math.floor(LOOK_US / Math.max(1, (samples.timeUs(to) - samples.timeUs(from)) / (to - from || 1))),
  );
  for (let i = from; i <= to; i += stride) {
    const left = before.get(i);
    const right = behind.get(i + 1);
    if (left === undefined) break;
    const atUs = samples.timeUs(i);
    const stepUs = right === undefined ? 0 : samples.timeUs(i + 1) - atUs;
    const moments = momentsIn(stepUs);
    for (let m = 0; m < moments; m++) {
      const onUs = (m / moments) * stepUs;
      const on = m === 0 ? left : carried(left, onUs / 1e6, bend);
      const point =
        right === undefined
          ? { nm: left.nm, variance: left.p00, atUs }
          : joined(on, carried(right, (stepUs - onUs) / 1e6, bend), atUs + onUs);
      if (best === null || point.nm > best.nm) best = point;
      sum += point.nm;
      count++;
    }
  }
  if (best === null) throw new RangeError(`no sample number ${from}`);
  // The highest point of an uncertain curve lies too high: by about a standard deviation where it is flat, by less where it is bent.
  const above = best.nm - sum / count;
  const biasNm = (best.variance * above) / Math.max(best.variance + above * above, 1e-18);
  return { ...best, nm: best.nm - biasNm, evidence };
}

interface Point {
  readonly nm: number;
  readonly variance: number;
  readonly atUs: number;
}

/** Both sides together at one moment. */
function joined(left: Side, right: Side, atUs: number): Point {
  const s00 = left.p00 + right.p00;
  const s01 = left.p01 - right.p01;
  const s11 = left.p11 + right.p11;
  const det = s00 * s11 - s01 * s01;
  const g00 = (left.p00 * s11 - left.p01 * s01) / det;
  const g01 = (left.p01 * s00 - left.p00 * s01) / det;
  const offNm = right.nm - left.nm;
  const offPace = -right.nmPerS - left.nmPerS;
  return {
    nm: left.nm + g00 * offNm + g01 * offPace,
    variance: Math.max(0, left.p00 - g00 * left.p00 - g01 * left.p01),
    atUs,
  };
}
