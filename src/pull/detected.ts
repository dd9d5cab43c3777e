/** What is told of a pull once it is over. */

import type { Climb } from './climb.ts';
import type { Highest } from './highest.ts';
import type { Hole, Holes } from './holes.ts';
import type { DetectedPull, Rise } from './pull.ts';
import type { PullStart } from './pull-start.ts';
import type { DetectorSettings } from './settings.ts';
import type { Top } from './top.ts';
import { CLICK_NOT_BELOW, CLICK_VISIBLE_US, type PlacedTop, type Tops } from './tops.ts';
import { type GatheredTurn, turnOf } from './turn-of.ts';
import { zeroDoubtNm } from './zero-doubt.ts';

/** A gap as long as this may hide a click, and one as long as that the rise behind it too. */
const CLICK_HIDDEN_US = 40_000;
const CLICK_BACK_US = 80_000;
/**
 * ∫ torque dt over the peak, which is how long it lasted: a push of the arm takes 0.1 s and more, however quick (from memory);
 * simulated pulls last from 0.1 s on, most blows below 0.06. Assumption.
 */
const BLOW_MS = 60;
/** The highest of many readings lies above the torque by so many standard deviations at most. */
const HIGHEST_SIGMA = 4.5;

/** How a pull ended. */
export interface Ending {
  readonly endUs: number;
  readonly cut: DetectedPull['cut'];
  /** Where the torque stands behind the pull, beyond the zero; null where it was not seen. */
  readonly afterNm: number | null;
}

/** What was gathered while the pull went on. */
export interface Gathered extends GatheredTurn {
  readonly tops: Tops;
  readonly highest: Highest;
  readonly samples: number;
  readonly longestGapUs: number;
  readonly holes: Holes;
  readonly withinNm: number;
}

/** Null when it only seemed to reach the start, by noise on top of a knock, or was a blow. */
export function detectedPull(
  settings: DetectorSettings,
  started: PullStart,
  ending: Ending,
  seen: Gathered,
): DetectedPull | null {
  const { sign, startUs, startNm, zeroNm, noiseNm } = started;
  const { tops, highest, last, samples, longestGapUs } = seen;
  const saturated = highest.endsScale(settings, zeroNm + sign * highest.nm, noiseNm);
  const asRead: Top = { nm: highest.nm, atUs: last.atUs, standardNm: noiseNm };
  const best = tops.highest() ?? { top: asRead, step: last };
  const peak = saturated ? { ...asRead, atUs: best.top.atUs } : atLeast(highest.nm, best.top, noiseNm);
  // What breaks loose lets the torque go at once, and a plug that comes loose must never be overlooked.
  if (peak.nm < startNm || (sign > 0 && isBlow(peak.nm, ending, seen))) return null;
  const intervalUs = started.arrivals.intervalUs || last.atUs / Math.max(1, samples - 1);
  const click = tops.clickBelow(peak.nm);
  const holes = seen.holes.all();
  const hidden = click === null && holes.some((hole) => hidesClick(hole, peak.nm));
  const visible = intervalUs <= CLICK_VISIBLE_US && !hidden;
  const release = visible ? click : null;
  const first = release ?? { top: peak, step: best.step };
  const rise = riseOf(tops.climb, first);
  const { beforeNm } = started;
  const slight = visible && click === null ? tops.slightFallBelow(peak.nm) : null;
  const fallUs = visible ? (release?.tookUs ?? tops.slowFallBelow(peak.nm)) : null;
  // A tool that smooths lags behind a steady rise by so much, and behind a top that bends by less.
  const lagNm = (rise.slopeAtTopNmPerS * (settings.lagMs ?? 0)) / 1000;
  const doubtNm = zeroDoubtNm({ beforeNm, afterNm: ending.afterNm, withinNm: seen.withinNm });
  return {
    startUs,
    endUs: ending.endUs,
    peakNm: sign * (peak.nm + lagNm / 2),
    peakUs: startUs + Math.max(0, Math.round(peak.atUs)),
    peakStandardNm: Math.hypot(
      peak.standardNm,
      started.zeroStandardNm,
      doubtNm / Math.sqrt(3),
      hiddenNm(holes, peak, rise, intervalUs) / Math.sqrt(3),
      lagNm / 2 / Math.sqrt(3),
    ),
    highestNm: sign * highest.nm,
    release: visible ? (release === null ? 'none' : 'seen') : 'not-visible',
    releaseNm: release === null ? null : sign * (release.top.nm + lagNm / 2),
    releaseUs: release === null ? null : startUs + Math.max(0, Math.round(release.top.atUs)),
    dropShare: release === null ? null : 1 - release.troughNm / release.top.nm,
    ...(slight !== null && { slightFall: { torqueNm: sign * slight.nm, dropShare: slight.dropShare } }),
    ...(fallUs !== null && { fallMs: fallUs / 1000 }),
    riseMs: (rise.reachedMs[7] ?? 0) - (rise.reachedMs[1] ?? 0),
    rise,
    ...turnOf(settings, { ...seen, climb: tops.climb, first, peak: best.step, noiseNm }),
    sinceLastMs: started.sinceLastMs,
    zeroNm,
    zeroSettled: started.zeroSettled && doubtNm === 0,
    noiseNm,
    samples,
    intervalUs,
    longestGapUs,
    saturated,
    stream: 'samples',
    cut: ending.cut,
  };
}

/** It struck something: the torque was gone sooner than any hand lets go. Where readings are far apart, nobody knows. */
function isBlow(peakNm: number, { cut }: Ending, { last, longestGapUs }: Gathered): boolean {
  return cut === null && longestGapUs <= CLICK_VISIBLE_US && last.impulseNms < (BLOW_MS / 1000) * peakNm;
}

/** A hole hides a click where the torque had come up far enough and fell meanwhile, or had the time to come up again. */
function hidesClick({ fromUs, toUs, mayBeNm, seenNm }: Hole, peakNm: number): boolean {
  const us = toUs - fromUs;
  const fell = us > CLICK_HIDDEN_US && mayBeNm > seenNm;
  return (fell || us > CLICK_BACK_US) && mayBeNm >= CLICK_NOT_BELOW * peakNm;
}

/** How much higher the torque may have gone where samples are missing, or lie too far apart anyway: on at its pace, for as long. */
function hiddenNm(holes: readonly Hole[], peak: Top, { slopeAtTopNmPerS }: Rise, intervalUs: number): number {
  if (intervalUs > CLICK_VISIBLE_US) return (slopeAtTopNmPerS * intervalUs) / 1e6;
  return Math.max(0, (holes[0]?.mayBeNm ?? peak.nm) - peak.nm);
}

/** No fit lies far below what was read. */
function atLeast(highestNm: number, top: Top, noiseNm: number): Top {
  const leastNm = highestNm - HIGHEST_SIGMA * noiseNm;
  if (top.nm >= leastNm) return top;
  return { ...top, nm: leastNm, standardNm: Math.hypot(top.standardNm, (leastNm - top.nm) / 2) };
}

function riseOf(climb: Climb, { top, step }: PlacedTop): Rise {
  const end = { ...step, nm: top.nm, atUs: Math.max(step.atUs, top.atUs) };
  let before = 0;
  const reachedMs = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((tenth) => {
    before = Math.max(before, climb.reached((tenth / 10) * top.nm, end).atUs / 1000);
    return before;
  });
  const lastMs = Math.max(top.atUs / 1000 - (reachedMs[7] ?? 0), 0);
  return {
    reachedMs,
    slopeAtTopNmPerS: lastMs > 0 ? (0.2 * Math.max(0, top.nm) * 1000) / lastMs : 0,
    impulseNms: step.impulseNms,
    setbackNm: step.setbackNm,
  };
}
