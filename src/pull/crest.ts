import type { Samples } from './samples.ts';
import { averaged, BENDS, FASTEST_PER_S, type Guess, Spline } from './spline.ts';
import type { Top } from './top.ts';

/** Samples this far in front of a top and behind it say how it bends, and as many at least. */
const BEFORE_US = 60_000;
const BEHIND_US = 80_000;
const AT_LEAST = 4;
/** A valley is one when the torque comes up again by more than noise and ripple of a joint. */
const VALLEY_SIGMA = 4;
const VALLEY_SHARE = 0.02;
/** The top lies this near to the highest frame. */
const NEAR_US = 20_000;
/** What is this much less likely than the best is not looked at more closely; a logarithm. */
const UNLIKELY = 10;
/** The moment of a break is tried so finely. */
const MOMENT_US = 3_000;
const MOMENTS = 12;
/** Before the readings are looked at: how likely it is that a top breaks off, where a click was seen and where none was. */
const BREAKS = { click: 0.95, other: 0.5 } as const;
/** The highest of many readings lies above the torque by so many standard deviations at most. */
const HIGHEST_SIGMA = 4;
/** The slope of a fall grows with what is left of it: by 1/2 where it ends like a parabola, by 1 where like an exponential. */
const STEEPENS = 0.75;
const STEEPENS_WITHIN = 0.4;
/** Both sides meet within so many standard deviations; so many moments stand for all. */
const MEETS_SIGMA = 2.5;
const MEETS_AT = [1 / 6, 1 / 2, 5 / 6] as const;
/** Torques do more than the curves that are weighed: from pulls of two independent simulations. */
const UNCERTAINTY_FACTOR = 1.1;
/** Where readings are missing at the break, nobody sees how it fell; that takes so long at least. */
const HOLE_STEPS = 1.6;
const FALLS_IN_US = 8_000;

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
    return samples.nm(i) > samples.nm(lowest) + valleyNm / 2
      ? at + step * Math.max(AT_LEAST, step * (lowest - at))
      : i;
  };
  return [end(-1, BEFORE_US), end(1, BEHIND_US)];
}

/** Level and pace at one sample as one side alone has them; what comes from behind counts its pace backwards. */
interface Side {
  readonly nm: number;
  readonly nmPerS: number;
  readonly p00: number;
  readonly p01: number;
  readonly p11: number;
  readonly evidence: number;
}

const sideOf = ({ nm, nmPerS, p00, p01, p11, evidence }: Spline): Side => ({
  nm,
  nmPerS,
  p00,
  p01,
  p11,
  evidence,
});

/** A spline from the front up to each sample near the top, and one from behind down to each. */
interface Sides {
  readonly before: ReadonlyMap<number, Side>;
  readonly behind: ReadonlyMap<number, Side>;
  /** Of one spline through all. */
  readonly evidence: number;
  readonly bend: number;
}

interface Reach {
  readonly first: number;
  readonly last: number;
  readonly from: number;
  readonly to: number;
}

function bothSides(
  samples: Samples,
  { first, last, from, to }: Reach,
  sigma: number,
  scaleNm: number,
  bend: number,
): Sides {
  const run = (start: number, end: number): { at: Map<number, Side>; evidence: number } => {
    const step = start <= end ? 1 : -1;
    const spline = new Spline(samples.nm(start), sigma, scaleNm, bend);
    const at = new Map<number, Side>();
    for (let i = start; ; i += step) {
      if (i !== start) {
        spline.predict(Math.abs(samples.timeUs(i) - samples.timeUs(i - step)) / 1e6);
        spline.correct(samples.nm(i));
      }
      if (i >= from - 1 && i <= to + 1) at.set(i, sideOf(spline));
      if (i === end) return { at, evidence: spline.evidence };
    }
  };
  const forward = run(first, last);
  const backward = run(last, Math.max(first, from));
  return {
    before: forward.at,
    behind: backward.at,
    evidence: forward.evidence,
    bend: (bend * scaleNm) ** 2,
  };
}

/** The side `s` seconds further on. */
function carried({ nm, nmPerS, p00, p01, p11, evidence }: Side, s: number, bend: number): Side {
  return {
    nm: nm + nmPerS * s,
    nmPerS,
    p00: p00 + s * (2 * p01 + s * p11) + (bend * s ** 3) / 3,
    p01: p01 + s * p11 + (bend * s * s) / 2,
    p11: p11 + bend * s,
    evidence,
  };
}

/** The highest point of one spline through both sides. */
function bentTop(samples: Samples, sides: Sides, from: number, to: number, prior: number): Guess {
  const { before, behind, bend } = sides;
  const evidence = sides.evidence + prior;
  let best: Point | null = null;
  for (let i = from; i <= to; i++) {
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
    }
  }
  if (best === null) throw new RangeError(`no sample number ${from}`);
  return { ...best, evidence };
}

const momentsIn = (us: number): number => Math.min(MOMENTS, Math.max(1, Math.round(us / MOMENT_US)));

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

/** Every way in which the torque may have broken off: behind which sample, at which moment, and how it bent on either side. */
function brokenTops(
  samples: Samples,
  sides: readonly Sides[],
  { first, last, from, to }: Reach,
  sigma: number,
  scaleNm: number,
  prior: number,
): Guess[] {
  const begin = Math.max(first + 2, from - 1);
  const end = Math.min(last - 3, to);
  if (end < begin) return [];
  const allUs = samples.timeUs(end + 1) - samples.timeUs(begin);
  const stepS = Math.max(1e-6, (samples.timeUs(last) - samples.timeUs(last - 1)) / 1e6);
  const paceUnknown = -Math.log(stepS * 2 * FASTEST_PER_S * scaleNm);
  // A kink on the way up is none.
  let leastNm = Number.NEGATIVE_INFINITY;
  for (let i = from; i <= to; i++) leastNm = Math.max(leastNm, samples.nm(i) - HIGHEST_SIGMA * sigma);
  let troughNm = Number.POSITIVE_INFINITY;
  for (let i = to; i <= last; i++) troughNm = Math.min(troughNm, samples.nm(i));
  const breaks: Break[] = [];
  let most = Number.NEGATIVE_INFINITY;
  for (let k = begin; k <= end; k++) {
    const fromUs = samples.timeUs(k);
    const stepUs = samples.timeUs(k + 1) - fromUs;
    const hole = stepUs > HOLE_STEPS * (fromUs - samples.timeUs(k - 1)) && stepUs > 2 * FALLS_IN_US;
    // At any moment it may have broken off.
    const share = paceUnknown + Math.log((prior * stepUs) / allUs);
    for (const before of sides) {
      const left = before.before.get(k);
      if (left === undefined || left.nmPerS <= 0) continue;
      for (const behind of sides) {
        const right = behind.behind.get(k + 1);
        // Counted from behind, a torque that fell has a pace upwards.
        if (right === undefined || (right.nmPerS <= 0 && !hole)) continue;
        if (Math.max(left.nm + (left.nmPerS * stepUs) / 1e6, right.nm) < leastNm) continue;
        const evidence = left.evidence + right.evidence + share;
        if (evidence < most - UNLIKELY) continue;
        most = Math.max(most, evidence);
        const bends = { left: before.bend, right: behind.bend };
        breaks.push({ left, right, bends, hole, fromUs, s: stepUs / 1e6, evidence });
      }
    }
  }
  return breaks
    .filter(({ evidence }) => evidence > most - UNLIKELY)
    .flatMap((one) => (one.hole ? unseenBreak(one, scaleNm) : seenBreak(one, troughNm)));
}

/** The torque broke off within `s` seconds behind `fromUs`. */
interface Break {
  readonly left: Side;
  readonly right: Side;
  readonly bends: { readonly left: number; readonly right: number };
  readonly hole: boolean;
  readonly fromUs: number;
  readonly s: number;
  readonly evidence: number;
}

/** At the moments at which both sides may meet. */
function seenBreak({ left, right, bends, fromUs, s, evidence }: Break, troughNm: number): Guess[] {
  const closing = left.nmPerS + right.nmPerS;
  // A fall that dies away was steeper before: that lifts the line from behind, by so much a second and second.
  const steepens = (STEEPENS * right.nmPerS ** 2) / Math.max(right.nm - troughNm, right.nmPerS * s, 1e-9);
  const lineS = (right.nm + right.nmPerS * s - left.nm) / closing;
  const backS = Math.min(s, Math.max(0, s - lineS));
  const meetS = lineS + (steepens * backS ** 2) / 2 / (closing + steepens * backS);
  const at = Math.min(s, Math.max(0, meetS));
  const doubtNm = Math.sqrt(carried(left, at, bends.left).p00 + carried(right, s - at, bends.right).p00);
  const doubtS = (MEETS_SIGMA * doubtNm) / closing;
  const first = Math.max(0, Math.min(s - 1e-6, meetS) - doubtS);
  const last = Math.min(s, Math.max(1e-6, meetS) + doubtS);
  const share = Math.log((last - first) / (MEETS_AT.length * s));
  return MEETS_AT.map((part) => {
    const on = first + part * (last - first);
    const l = carried(left, on, bends.left);
    const r = carried(right, s - on, bends.right);
    const lift = (steepens * (s - on) ** 2) / 2;
    const behind = r.p00 + (STEEPENS_WITHIN * lift) ** 2;
    const variance = l.p00 + behind;
    const off = r.nm + lift - l.nm;
    const meet = -0.5 * (Math.log(variance) + (off * off) / variance);
    return {
      nm: l.nm + (l.p00 / variance) * off,
      variance: (l.p00 * behind) / variance,
      atUs: fromUs + on * 1e6,
      evidence: evidence + meet + share,
    };
  });
}

/** At any moment, so long as there was time to fall. */
function unseenBreak({ left, bends, fromUs, s, evidence }: Break, scaleNm: number): Guess[] {
  const mostS = s - FALLS_IN_US / 1e6;
  const moments = momentsIn(mostS * 1e6);
  return Array.from({ length: moments }, (_, m) => {
    const on = ((m + 0.5) / moments) * mostS;
    const { nm, p00 } = carried(left, on, bends.left);
    return {
      nm,
      variance: p00,
      atUs: fromUs + on * 1e6,
      evidence: evidence - Math.log(scaleNm * moments),
    };
  });
}
