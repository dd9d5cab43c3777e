import { guessBreaks, UNLIKELY } from './broken-top.ts';
import { Guesses } from './guesses.ts';
import type { Samples } from './samples.ts';
import { bothSides, momentsIn, type Near, type Side, type Sides, type Stretch } from './sides.ts';
import { BENDS } from './spline.ts';
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
/** Away from it samples are averaged over so long. */
const AVERAGED_US = 4_000;
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
  const [first, last] = reach(samples, at, sigma);
  const stretch = stretchOf(samples, first, last, samples.timeUs(at), sigma);
  const near = nearTo(stretch, samples.timeUs(at));
  const scaleNm = Math.max(sigma, Math.abs(samples.nm(at)));
  const sides = BENDS.map((bend) => bothSides(stretch, near, scaleNm, bend));
  const prior = click ? BREAKS.click : BREAKS.other;
  const most = Math.max(...sides.map(({ before }) => before.evidence));
  const guesses = new Guesses();
  for (const side of sides)
    if (side.before.evidence > most - UNLIKELY) guessBent(guesses, stretch, side, near, Math.log(1 - prior));
  guessBreaks(guesses, stretch, sides, near, { sigma, scaleNm, prior });
  return { nm: guesses.nm, atUs: guesses.atUs, standardNm: UNCERTAINTY_FACTOR * Math.sqrt(guesses.variance) };
}

/** The samples `first` to `last` in columns. Those away from the top only say how it came up and went: they are averaged. */
function stretchOf(samples: Samples, first: number, last: number, atUs: number, sigma: number): Stretch {
  const most = last - first + 1;
  const us = new Float64Array(most);
  const nm = new Float64Array(most);
  const noise = new Float64Array(most);
  let size = 0;
  for (let i = first; i <= last; size++) {
    const fromUs = samples.timeUs(i);
    let [sumUs, sumNm, count] = [0, 0, 0];
    do {
      sumUs += samples.timeUs(i);
      sumNm += samples.nm(i);
      count++;
      i++;
    } while (
      i <= last &&
      samples.timeUs(i) < fromUs + AVERAGED_US &&
      isAway(samples.timeUs(i), fromUs, atUs)
    );
    us[size] = sumUs / count;
    nm[size] = sumNm / count;
    noise[size] = (sigma * sigma) / count;
  }
  return { us: us.subarray(0, size), nm: nm.subarray(0, size), noise: noise.subarray(0, size) };
}

/** Away from the top, and on the same side of it. */
const isAway = (us: number, fromUs: number, atUs: number): boolean =>
  us < atUs - NEAR_US || fromUs > atUs + NEAR_US;

function nearTo({ us }: Stretch, atUs: number): Near {
  const isNear = (i: number) => Math.abs((us[i] ?? Number.NaN) - atUs) <= NEAR_US;
  let from = us.indexOf(atUs);
  let to = from;
  while (isNear(from - 1)) from--;
  while (isNear(to + 1)) to++;
  return { from, to };
}

/** From the valley in front of the top to that behind it, if they are within reach. */
function reach(samples: Samples, at: number, sigma: number): readonly [number, number] {
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
function guessBent(guesses: Guesses, { us }: Stretch, sides: Sides, { from, to }: Near, prior: number): void {
  let best: Level | null = null;
  let bestUs = 0;
  let sum = 0;
  let count = 0;
  const allUs = (us[to] ?? Number.NaN) - (us[from] ?? Number.NaN);
  const stride = Math.max(1, Math.floor(LOOK_US / Math.max(1, allUs / (to - from || 1))));
  for (let i = from; i <= to; i += stride) {
    const atUs = us[i] ?? Number.NaN;
    const stepUs = (us[i + 1] ?? atUs) - atUs;
    const moments = momentsIn(stepUs);
    for (let m = 0; m < moments; m++) {
      const onUs = (m / moments) * stepUs;
      const level = i + 1 < us.length ? joined(sides, i, onUs / 1e6, stepUs / 1e6) : lone(sides.before, i);
      if (best === null || level.nm > best.nm) {
        best = level;
        bestUs = atUs + onUs;
      }
      sum += level.nm;
      count++;
    }
  }
  if (best === null) throw new RangeError(`no sample number ${from}`);
  // The highest point of an uncertain curve lies too high: by about a standard deviation where it is flat, by less where it is bent.
  const above = best.nm - sum / count;
  const biasNm = (best.variance * above) / Math.max(best.variance + above * above, 1e-18);
  guesses.add(best.nm - biasNm, best.variance, bestUs, sides.before.evidence + prior);
}

interface Level {
  readonly nm: number;
  readonly variance: number;
}

const lone = (side: Side, i: number): Level => ({ nm: side.nm(i, 0), variance: side.p00(i, 0) });

/** Both sides together, `on` seconds behind sample number `i`, of the `s` to the next. */
function joined({ before, behind }: Sides, i: number, on: number, s: number): Level {
  const left00 = before.p00(i, on);
  const left01 = before.p01(i, on);
  const s00 = left00 + behind.p00(i + 1, s - on);
  const s01 = left01 - behind.p01(i + 1, s - on);
  const s11 = before.p11(i, on) + behind.p11(i + 1, s - on);
  const det = s00 * s11 - s01 * s01;
  const g00 = (left00 * s11 - left01 * s01) / det;
  const g01 = (left01 * s00 - left00 * s01) / det;
  const nm = before.nm(i, on);
  const offNm = behind.nm(i + 1, s - on) - nm;
  const offPace = -behind.nmPerS(i + 1) - before.nmPerS(i);
  return {
    nm: nm + g00 * offNm + g01 * offPace,
    variance: Math.max(0, left00 - g00 * left00 - g01 * left01),
  };
}
