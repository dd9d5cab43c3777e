import type { Samples } from './samples.ts';
import { carried, momentsIn, type Reach, type Side, type Sides } from './sides.ts';
import { FASTEST_PER_S, type Guess } from './spline.ts';

/** What is this much less likely than the best is not looked at more closely; a logarithm. */
export const UNLIKELY = 7;
/** The highest of many readings lies above the torque by so many standard deviations at most. */
const HIGHEST_SIGMA = 4;
/** The slope of a fall grows with what is left of it: by 1/2 where it ends like a parabola, by 1 where like an exponential. */
const STEEPENS = 0.75;
const STEEPENS_WITHIN = 0.4;
/** Both sides meet within so many standard deviations; so many moments stand for all. */
const MEETS_SIGMA = 2.5;
const MEETS_AT = [1 / 6, 1 / 2, 5 / 6] as const;
const SHORT_S = 0.0025;
const MEETS_SHORT_AT = [1 / 2] as const;
/** Where readings are missing at the break, nobody sees how it fell; that takes so long at least. */
const HOLE_STEPS = 1.6;
const FALLS_IN_US = 8_000;

/** Every way in which the torque may have broken off: behind which sample, at which moment, and how it bent on either side. */
export function brokenTops(
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
    if (stepUs <= 0 || likeliest(sides, k) + paceUnknown < most - UNLIKELY) continue;
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

/** The evidence on both sides of a break behind sample number `k`, however they bend: no break there has more. */
function likeliest(sides: readonly Sides[], k: number): number {
  let before = Number.NEGATIVE_INFINITY;
  let behind = Number.NEGATIVE_INFINITY;
  for (const side of sides) {
    before = Math.max(before, side.before.get(k)?.evidence ?? before);
    behind = Math.max(behind, side.behind.get(k + 1)?.evidence ?? behind);
  }
  return before + behind;
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
  const parts = s < SHORT_S ? MEETS_SHORT_AT : MEETS_AT;
  const share = Math.log((last - first) / (parts.length * s));
  return parts.map((part) => {
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
