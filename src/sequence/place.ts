/**
 * Which cylinder a pull belongs to. Three things decide: what stood before on the plugs, the time since, and what the
 * plug did (turned.ts, shape.ts). A wrong question costs a key, a wrong OK an engine: a tightening is believed only where
 * the plug surely turned, or where the pull surely went on from the stroke before. Everything else asks and holds.
 *
 * Torque alone cannot always tell. So it is asked the sooner the more a tight plug is to be reckoned with: one who left a
 * plug out finds nothing but tight ones when the last is due, and only there can he be caught.
 */
import type { DetectedPull } from '../pull/pull.ts';
import { placeByPlan } from './by-plan.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
import { fromLoose, stoodThough, turnedOn } from './held.ts';
import { beforehand, LIKELY_NEXT, STOOD, surelyTurned } from './odds.ts';
import { asks, type Placement, type Situation } from './placement.ts';

export type { LastPull, Placement, Situation } from './placement.ts';

/** Below this share of the lower limit nothing was tightened. Common practice, no source. */
export const HANDLING_BELOW = 0.2;
/** A stroke that ends below this share of the lower limit may be a knock. Assumption. */
export const KNOCK_BELOW = 0.9;
/** Nobody takes the wrench to another plug in less; what comes sooner is on the plug before. Assumptions, no source. */
const SURELY_SAME_MS = 800;
const SAME_PLUG_MS = 2000;
/** Long enough for a look at the screen and another try. Assumption. */
const LOOKED_MS = 1200;
/** A stroke that nothing followed for so long was the last one: it stopped short. Assumption. */
export const SETTLED_MS = 2500;
/** A plug holds what it was pulled to: a later stroke that ends below this share of it was on another one. */
const HELD_SHARE = 0.9;
const KNOCK_AT = 0.5;
export const SURELY_KNOCK = 0.98;
/** He is still at the plug, and has just had time to reverse the ratchet. Assumption. */
const LOOSENED_AT_ONCE_MS = 4000;
/** No stroke that turns a plug is over so soon. Assumption. */
const MOMENT_US = 300_000;
/** Falls at a click of one wrench are alike within this factor. Assumption. */
const AS_SLIGHT = 2;
/** A stroke before that is less surely a stroke than this does not speak for the one after it. */
export const SURELY_STROKE = 0.02;

/** Gives a pull to a cylinder, or asks. */
export function place(pull: DetectedPull, at: Situation): Placement {
  if (pull.stream === 'maxima') return placeMaximum(pull, at);
  const pauseMs = at.last === null ? null : Math.max(0, pull.startUs - at.last.endUs) / 1000;
  const low = endedLow({ pull, at });
  const evidence = evidenceOf(pull, pauseMs, {
    // What a part of a rise looks like was not learnt from whole ones.
    earlier: low ? [] : at.earlier,
    refitted: at.refitted,
    lastOpen: at.lastOpen,
    usualTurns: at.usualTurns,
    heldNm: at.startedNm,
    logOdds: beforehand(at, justTightened({ at, pauseMs }) !== null),
  });
  return { ...decide({ pull, at, pauseMs, evidence, low }), evidence };
}

/** Of a tool that sends the highest torque alone: without evidence of any shape. */
function placeMaximum(pull: DetectedPull, at: Situation): Placement {
  const pauseMs = at.last === null ? null : Math.max(0, pull.startUs - at.last.endUs) / 1000;
  const tooLittleNm = HANDLING_BELOW * at.lowerNm;
  if (pull.peakNm <= -tooLittleNm) return loosening({ at, pauseMs });
  const subject = at.asking ?? at.target ?? at.lastTight;
  if (pull.saturated && subject !== null) return beyondScale(at.planned ?? subject);
  return placeByPlan(pull, at, { tooLittleNm, samePlugMs: SURELY_SAME_MS });
}

/**
 * A placement as it may stand, whoever made it: readings at the end of the scale prove no plug, nor does a pull whose end
 * is missing, wherever they are given to.
 */
export function asProven(pull: DetectedPull, placement: Placement): Placement {
  const { cylinder, kind, evidence } = placement;
  const because = evidence === undefined ? {} : { evidence };
  if (pull.cut !== null && cylinder !== null && (kind === 'tightening' || kind === 'continuation'))
    return { ...asks('cut', cylinder, 'end-missing'), ...because };
  if (!pull.saturated || cylinder === null || kind === 'loosening' || kind === 'unsure') return placement;
  return { ...beyondScale(cylinder), ...because };
}

interface Case {
  readonly pull: DetectedPull;
  readonly at: Situation;
  readonly pauseMs: number | null;
  readonly evidence: Evidence;
  readonly low: boolean;
}

function decide(one: Case): Placement {
  const { pull, at } = one;
  const subject = at.asking ?? at.target ?? at.lastTight;
  if (nothingTurned(one)) return { cylinder: null, kind: 'handling', because: 'too-little-torque' };
  if (pull.peakNm < 0) return loosening(one);
  if (subject === null) return { cylinder: null, kind: 'handling', because: 'none-due' };
  if (atOnce(one)) return asks('which', subject, 'two-tools-at-once');
  const again = justTightened(one);
  const trial = at.trial && pull.cut === null && !pull.saturated ? trialClick(one) : null;
  if (trial !== null) return trial;
  if (pull.saturated) return beyondScale(again ?? subject);
  if (pull.cut !== null) return asks('cut', subject, 'end-missing');
  if (again !== null && !movedOn(one)) return sameAgain(one, again);
  if (at.last?.asked != null && soon(one))
    return asks(at.last.asked, at.last.cylinder, 'went-on-from-question');
  if (at.asking !== null) return meanwhile(one, subject);
  if (at.target === null) return afterAll(one, subject);
  return one.low ? lowStroke(one, at.target) : reached(one, at.target);
}

/** Too little even for a stroke on the way, unless it might be the first of several. */
function nothingTurned({ pull, at, evidence }: Case): boolean {
  if (Math.abs(pull.peakNm) >= HANDLING_BELOW * at.lowerNm) return false;
  const momentary = evidence.knock >= KNOCK_AT || pull.endUs - pull.startUs < MOMENT_US;
  return pull.peakNm < 0 || at.target === null || at.asking !== null || momentary;
}

/** It began before the last one had ended: two tools feel torque, and nobody knows which of them is on the plug. */
const atOnce = ({ pull, at: { last } }: Case): boolean => last !== null && pull.startUs < last.endUs;

/** A click wrench that was let off within the window without a click was not done yet. */
function endedLow({ pull, at }: Pick<Case, 'pull' | 'at'>): boolean {
  if (pull.peakNm < at.lowerNm) return true;
  return at.clicks && pull.release === 'none' && pull.peakNm <= at.upperNm && !clickedSlightly(pull, at);
}

/** It fell as this wrench is known to at its click, which is weak. */
function clickedSlightly({ slightFall }: DetectedPull, { slightDrop }: Situation): boolean {
  if (slightFall === undefined || slightDrop === null) return false;
  const ratio = slightFall.dropShare / slightDrop;
  return ratio >= 1 / AS_SLIGHT && ratio <= AS_SLIGHT;
}

/**
 * The click tried on something that holds; null for what did not get near a click. Whoever pulled a plug instead is asked,
 * however surely it turned: a vise that gives looks the same, and the cylinders would all be off by one.
 */
function trialClick({ pull, at, evidence }: Case): Placement | null {
  const clicked = pull.release === 'seen' || pull.slightFall !== undefined;
  if (!clicked && pull.peakNm < KNOCK_BELOW * at.lowerNm) return null;
  if (evidence.turned < STOOD) return { cylinder: null, kind: 'handling', because: 'trial-click' };
  return at.target === null ? null : asks('which', at.target, 'trial-or-first-plug');
}

/** While a question is open. */
function meanwhile(one: Case, asking: number): Placement {
  if (one.low) return { cylinder: null, kind: 'run-down', because: 'low-during-question' };
  const stood = asking === one.at.target && one.at.started === null && one.evidence.turned < STOOD;
  return stood ? asks('already-tight', asking, 'did-not-turn') : asks('held', asking, 'during-question');
}

/** The cylinder of a pull that reached the window a moment ago; null where there was none. */
function justTightened({ at: { last }, pauseMs }: Pick<Case, 'at' | 'pauseMs'>): number | null {
  return last?.tight === true && pauseMs !== null && pauseMs < SAME_PLUG_MS ? last.cylinder : null;
}

/** Soon after a pull that reached the window, but a plug turned from loose: it was the next one. */
function movedOn({ at, pauseMs, evidence }: Case): boolean {
  return at.target !== null && (pauseMs ?? 0) >= SURELY_SAME_MS && surelyTurned(evidence);
}

/** At once after a pull that reached the window. */
function sameAgain(one: Case, cylinder: number): Placement {
  const { at } = one;
  const pauseMs = one.pauseMs ?? 0;
  if (pauseMs >= LOOKED_MS && at.lastOpen)
    return asks('already-tight', at.target ?? cylinder, 'did-not-turn');
  if (pauseMs >= SURELY_SAME_MS && one.pull.peakNm >= at.lowerNm && one.evidence.turned > STOOD)
    return asks('which', at.target ?? cylinder, 'turned-too-soon');
  return { cylinder, kind: 'rehit', because: 'same-plug-again' };
}

function lowStroke(one: Case, target: number): Placement {
  const { pull, at, evidence } = one;
  if (pull.peakNm < KNOCK_BELOW * at.lowerNm && evidence.knock >= SURELY_KNOCK)
    return { cylinder: null, kind: 'handling', because: 'knock' };
  // Only its click was not seen: that plug was done, and this one is another.
  if (at.started === 'stroke' && soon(one) && at.startedNm >= at.lowerNm && fromLoose(one))
    return asks('other-plug', target, 'turned-from-loose');
  const elsewhere = strokeElsewhere(one);
  if (elsewhere !== null && soon(one))
    return { cylinder: elsewhere, kind: 'run-down', because: 'went-on-from-stroke' };
  if (at.started !== null && !soon(one)) {
    if (at.next !== null && evidence.turned >= LIKELY_NEXT && !turnedOn(one))
      return { cylinder: at.next, kind: 'run-down', because: 'next-plug-ended-low' };
    if (belowHeld(one)) return asks('other-plug', target, 'below-held');
  }
  const because = pull.peakNm < at.lowerNm ? 'ended-low' : 'ended-without-click';
  return { cylinder: target, kind: 'run-down', because };
}

function reached(one: Case, target: number): Placement {
  const { at, evidence } = one;
  if (at.started === 'stroke' && soon(one)) {
    if (fromLoose(one)) return asks('other-plug', target, 'turned-from-loose');
    if (stoodThough(one)) return asks('already-tight', target, 'did-not-turn');
    const started = at.startedTurning && (at.last?.knock ?? 1) <= SURELY_STROKE;
    if (started || surelyTurned(evidence) || turnedOn(one))
      return at.jumped === true
        ? asks('by-plan', target, 'after-jump')
        : { cylinder: target, kind: 'tightening', because: 'went-on-from-stroke' };
    const ask = evidence.turned < STOOD ? 'already-tight' : 'which';
    return asks(ask, target, 'stroke-before-in-doubt');
  }
  if (at.started !== null) {
    // Only a round that is complete begins again with the first.
    if (strokeElsewhere(one) !== null && (soon(one) || at.next !== null))
      return asks('other-plug', target, 'last-stroke-elsewhere');
    if (belowHeld(one)) return asks('other-plug', target, 'below-held');
    if (turnedOn(one)) return { cylinder: target, kind: 'continuation', because: 'went-on-after-short' };
    return asks('other-plug', target, evidence.slowdown === null ? 'maybe-tight' : 'did-not-turn-on');
  }
  if (surelyTurned(evidence) && at.jumped === true) return asks('by-plan', target, 'after-jump');
  if (surelyTurned(evidence))
    return {
      cylinder: target,
      kind: 'tightening',
      because: at.lastTight === null ? 'first-plug' : 'plug-turned',
    };
  if (evidence.turned < STOOD) return asks('already-tight', target, 'did-not-turn');
  return asks('which', target, at.lastOpen ? 'last-tight-or-turning' : 'tight-or-turning');
}

/** The other plug that the last stroke turned without getting to the window; null where there was none. */
function strokeElsewhere({ at: { last, target } }: Case): number | null {
  return last?.short === true && last.cylinder !== target ? last.cylinder : null;
}

/** It ended too low to have been the plug that had stopped short. */
const belowHeld = ({ pull, at }: Case): boolean => pull.peakNm < HELD_SHARE * at.startedNm;

/** Every cylinder is done. */
function afterAll(one: Case, lastTight: number): Placement {
  const { pull, at, evidence } = one;
  if (pull.peakNm < KNOCK_BELOW * at.lowerNm && evidence.knock >= KNOCK_AT)
    return { cylinder: null, kind: 'handling', because: 'knock' };
  if (evidence.turned >= STOOD) return asks('loose', lastTight, 'turned-though-all-done');
  if (pull.peakNm > at.upperNm) return asks('held', lastTight, 'check-above-window');
  return { cylinder: at.chosen, kind: 'check', because: 'tight-plug-again' };
}

const beyondScale = (cylinder: number): Placement => asks('end-of-scale', cylinder, 'end-of-scale');

const soon = ({ pauseMs }: Case): boolean => pauseMs !== null && pauseMs < SETTLED_MS;

function loosening({ at, pauseMs }: Pick<Case, 'at' | 'pauseMs'>): Placement {
  if (at.refitting !== null)
    return { cylinder: at.refitting, kind: 'loosening', because: 'to-be-backed-out' };
  if (at.lastTight === null) return { cylinder: null, kind: 'loosening', because: 'none-tight-yet' };
  if (at.last?.tight === true && pauseMs !== null && pauseMs < LOOSENED_AT_ONCE_MS)
    return { cylinder: at.last.cylinder, kind: 'loosening', because: 'loosened-at-once' };
  return asks('loosened', at.lastTight, 'loosened-after-proof');
}
