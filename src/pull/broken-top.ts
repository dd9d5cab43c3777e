import type { Guesses } from './guesses.ts';
import { momentsIn, type Near, type Side, type Sides, type Stretch } from './sides.ts';
import { FASTEST_PER_S } from './spline.ts';

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

/** The torque broke off between samples `k` and `k + 1`. */
interface Break {
  readonly k: number;
  readonly left: Side;
  readonly right: Side;
  readonly hole: boolean;
  readonly evidence: number;
}

/** Guesses every way in which the torque may have broken off: behind which sample, at which moment, and how it bent on either side. */
export function guessBreaks(
  guesses: Guesses,
  stretch: Stretch,
  sides: readonly Sides[],
  near: Near,
  { sigma, scaleNm, prior }: { readonly sigma: number; readonly scaleNm: number; readonly prior: number },
): void {
  const { us, nm } = stretch;
  const last = nm.length - 1;
  const begin = Math.max(2, near.from - 1);
  const end = Math.min(last - 3, near.to);
  if (end < begin) return;
  const at = (i: number) => us[i] ?? Number.NaN;
  const allUs = at(end + 1) - at(begin);
  const stepS = Math.max(1e-6, (at(last) - at(last - 1)) / 1e6);
  const paceUnknown = -Math.log(stepS * 2 * FASTEST_PER_S * scaleNm);
  // A kink on the way up is none.
  const leastNm = Math.max(...nm.subarray(near.from, near.to + 1)) - HIGHEST_SIGMA * sigma;
  const troughNm = Math.min(...nm.subarray(near.to));
  const breaks: Break[] = [];
  let most = Number.NEGATIVE_INFINITY;
  for (let k = begin; k <= end; k++) {
    const stepUs = at(k + 1) - at(k);
    if (stepUs <= 0 || likeliest(sides, k) + paceUnknown < most - UNLIKELY) continue;
    const hole = stepUs > HOLE_STEPS * (at(k) - at(k - 1)) && stepUs > 2 * FALLS_IN_US;
    // At any moment it may have broken off.
    const share = paceUnknown + Math.log((prior * stepUs) / allUs);
    for (const { before: left } of sides) {
      if (left.nmPerS(k) <= 0) continue;
      const reachesNm = left.nm(k, stepUs / 1e6);
      for (const { behind: right } of sides) {
        const evidence = left.evidenceAt(k) + right.evidenceAt(k + 1) + share;
        if (evidence < most - UNLIKELY) continue;
        // Counted from behind, a torque that fell has a pace upwards.
        if (right.nmPerS(k + 1) <= 0 && !hole) continue;
        if (Math.max(reachesNm, right.nm(k + 1, 0)) < leastNm) continue;
        most = Math.max(most, evidence);
        breaks.push({ k, left, right, hole, evidence });
      }
    }
  }
  for (const one of breaks) {
    if (one.evidence <= most - UNLIKELY) continue;
    if (one.hole) guessUnseen(guesses, stretch, one, scaleNm);
    else guessSeen(guesses, stretch, one, troughNm);
  }
}

/** The evidence on both sides of a break behind sample number `k`, however they bend: no break there has more. */
function likeliest(sides: readonly Sides[], k: number): number {
  let before = Number.NEGATIVE_INFINITY;
  let behind = Number.NEGATIVE_INFINITY;
  for (const side of sides) {
    before = Math.max(before, side.before.evidenceAt(k));
    behind = Math.max(behind, side.behind.evidenceAt(k + 1));
  }
  return before + behind;
}

/** At the moments at which both sides may meet. */
function guessSeen(
  guesses: Guesses,
  { us }: Stretch,
  { k, left, right, evidence }: Break,
  troughNm: number,
): void {
  const fromUs = us[k] ?? Number.NaN;
  const s = ((us[k + 1] ?? Number.NaN) - fromUs) / 1e6;
  const fallPerS = right.nmPerS(k + 1);
  const behindNm = right.nm(k + 1, 0);
  const closing = left.nmPerS(k) + fallPerS;
  // A fall that dies away was steeper before: that lifts the line from behind, by so much a second and second.
  const steepens = (STEEPENS * fallPerS ** 2) / Math.max(behindNm - troughNm, fallPerS * s, 1e-9);
  const lineS = (behindNm + fallPerS * s - left.nm(k, 0)) / closing;
  const backS = Math.min(s, Math.max(0, s - lineS));
  const meetS = lineS + (steepens * backS ** 2) / 2 / (closing + steepens * backS);
  const atS = Math.min(s, Math.max(0, meetS));
  const doubtS = (MEETS_SIGMA * Math.sqrt(left.p00(k, atS) + right.p00(k + 1, s - atS))) / closing;
  const firstS = Math.max(0, Math.min(s - 1e-6, meetS) - doubtS);
  const lastS = Math.min(s, Math.max(1e-6, meetS) + doubtS);
  const parts = s < SHORT_S ? MEETS_SHORT_AT : MEETS_AT;
  const share = evidence + Math.log((lastS - firstS) / (parts.length * s));
  for (const part of parts) {
    const onS = firstS + part * (lastS - firstS);
    const lift = (steepens * (s - onS) ** 2) / 2;
    const leftNm = left.nm(k, onS);
    const before = left.p00(k, onS);
    const behind = right.p00(k + 1, s - onS) + (STEEPENS_WITHIN * lift) ** 2;
    const variance = before + behind;
    const off = right.nm(k + 1, s - onS) + lift - leftNm;
    const meet = -0.5 * (Math.log(variance) + (off * off) / variance);
    guesses.add(
      leftNm + (before / variance) * off,
      (before * behind) / variance,
      fromUs + onS * 1e6,
      share + meet,
    );
  }
}

/** At any moment, so long as there was time to fall. */
function guessUnseen(guesses: Guesses, { us }: Stretch, { k, left, evidence }: Break, scaleNm: number): void {
  const fromUs = us[k] ?? Number.NaN;
  const mostS = ((us[k + 1] ?? Number.NaN) - fromUs - FALLS_IN_US) / 1e6;
  const moments = momentsIn(mostS * 1e6);
  const share = evidence - Math.log(scaleNm * moments);
  for (let m = 0; m < moments; m++) {
    const onS = ((m + 0.5) / moments) * mostS;
    guesses.add(left.nm(k, onS), left.p00(k, onS), fromUs + onS * 1e6, share);
  }
}
