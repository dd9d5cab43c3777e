import type { RecentSamples } from './recent.ts';
import { riseTo } from './rise.ts';
import type { Top } from './top.ts';

/** The filter knows a hand by assumption; simulated pulls would do with 1. */
const UNCERTAINTY_FACTOR = 1.3;
/** Time constant of a click's fall where the samples do not show it: 5 to 30 ms in all (practice; from memory). */
const FALL_US = 5_000;
const FALL_LOWER_US = 1_000;
const FALL_UPPER_US = 20_000;
/** What is not known of the moment of release, as a share of the step in which it fell. From simulated clicks. */
const MOMENT_SHARE = 0.15;
/** Where the end of the rise is looked for: above this share of the drop, from so far in front of it. */
const NEARLY_UP = 0.85;
const SAFELY_US = 6_000;
/** The last samples on the rise are left out for so long. */
const SURELY_US = 1_000;
/** A sample has fallen when it lacks so many standard deviations, and this share of the way that the rise was carried on. */
const LACKS_SIGMA = 3.5;
const BENDS_SHARE = 0.3;

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
    const momentNm = (Math.abs(rise.nmPerS) * MOMENT_SHARE * stepUs) / 1e6;
    // Within one step the torque came no further than in the step before.
    const mostNm = samples.nm(last) + Math.abs(samples.nm(last) - samples.nm(last - 1)) + 3 * sigma;
    const nm = samples.has(last - 1) ? Math.min(rise.nm, mostNm) : rise.nm;
    top = { nm, atUs: breakUs, standardNm: Math.hypot(UNCERTAINTY_FACTOR * rise.standardNm, momentNm) };
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
    const bendsNm = (BENDS_SHARE * Math.abs(rise.nmPerS) * (samples.timeUs(i) - samples.timeUs(of))) / 1e6;
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
