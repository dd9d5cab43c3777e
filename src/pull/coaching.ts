import type { DetectedPull, Turn } from './pull.ts';
import { HARD_DEG, HARDLY_DEG, SOFT_DEG, seatingOf } from './seat.ts';

/** What a pull is held against. Torque in N·m. */
export interface Coached {
  readonly lowerNm: number;
  /** The wrench releases with a click. */
  readonly clicks: boolean;
  /** What the plug seats on; null where it is not known or where this pull did not bring a loose plug to its seat. */
  readonly seat: 'new gasket' | 'used gasket' | 'conical' | null;
  /** How long the falls behind the tops took so far in this job, with this tool; milliseconds beyond a step of its readings. */
  readonly fallsMs: readonly number[];
  /** The turn from first contact that the specification advises for this plug as it is; null for none. */
  readonly advised: { readonly lowerDeg: number; readonly upperDeg: number } | null;
}

/**
 * Something that the signal shows and a technician can do better. `figure` and `limit` in the unit that the name tells;
 * the words for it belong to the screen. `early-torque`: a crossed or dirty thread, told from the rise or (`-deg`) from the
 * angle. `turned-too-little-deg`: a gasket missing, a used one for a new one, or a plug tight already.
 * `turned-too-far-deg`: two gaskets, a new one for a used one, or a gasket on a conical seat.
 */
export interface Advice {
  readonly kind:
    | 'too-fast-ms'
    | 'follow-through-percent'
    | 'fell-back-percent'
    | 'early-torque'
    | 'early-torque-deg'
    | 'turned-too-little-deg'
    | 'turned-too-far-deg'
    | 'zero-not-settled-nm'
    | 'end-of-scale-nm'
    | 'click-not-visible-ms'
    | 'tool-smooths-ms';
  readonly figure: number;
  readonly limit: number;
}

/** The last fifth on the way to the click. Calibration takes half a second and more; this is the least. Assumption. */
const LAST_FIFTH_AT_LEAST_MS = 100;
/** Peak above the click. Practice calls up to 2 % slow and 5 to 10 % quick. */
const FOLLOW_THROUGH_PERCENT = 3;
/** A hand that moves along the grip lets the torque fall back; a plug that breaks loose does so by up to 7 %. Assumption. */
const FELL_BACK_PERCENT = 10;
/** Of the lower limit. Assumption: a wrench off by more should be set to zero by hand. */
const ZERO_PERCENT = 4;
const CLICK_VISIBLE_MS = 25;
/**
 * A head falls within 10 to 60 ms, most of it within 30; a hand lets go within some tenths of a second. Where falls take a
 * time between, again and again, the tool smooths its readings. From simulated clicks through filters: seen at 3 Hz, not at 10.
 */
const SMOOTHED_MS = [40, 160] as const;
const FALLS_AT_LEAST = 3;
/**
 * A new gasket hardens: the rise from 20 to 40 % takes far longer than from 60 to 80 %. A thread that binds turns the torque
 * up evenly. From simulated joints; no published figures.
 */
const HALF_WAY = 0.5;
const EVEN_RISE = 1.15;
const PLUG_TURNS_MS = 150;
const USUAL_DEG = {
  'new gasket': [HARD_DEG, SOFT_DEG],
  'used gasket': [HARDLY_DEG, HARD_DEG],
  conical: [HARDLY_DEG, HARD_DEG],
} as const;
/** What is advised is advised from first contact and without the wind-up of the tools. Assumptions. */
const ADVISED_WITHIN = 0.25;
const WIND_UP_DEG = 10;

/** Everything that this pull gives reason to say, gravest first; empty for a good one. */
export function adviceOn(pull: DetectedPull, at: Coached): Advice[] {
  if (pull.stream === 'maxima') return [endOfScale(pull)].filter((advice) => advice !== null);
  const tops = [turned(pull, at), endOfScale(pull), followThrough(pull), tooFast(pull, at)];
  const rest = [fellBack(pull), zeroNotSettled(pull, at), clickNotVisible(pull, at), toolSmooths(at)];
  return [...tops, ...rest].filter((advice) => advice !== null);
}

function turned(pull: DetectedPull, { seat, lowerNm, advised }: Coached): Advice | null {
  if (seat === null || pull.peakNm < HALF_WAY * lowerNm) return null;
  if (pull.turn === null) return seat === 'new gasket' ? earlyTorque(pull) : null;
  return pull.peakNm < lowerNm
    ? null
    : byAngle(pull.turn, advised === null ? USUAL_DEG[seat] : advisedRange(advised));
}

function byAngle(turn: Turn, [least, most]: readonly [number, number]): Advice | null {
  const figure = turn.from10PercentDeg;
  if (seatingOf(turn) === 'binding') return { kind: 'early-torque-deg', figure, limit: HARD_DEG };
  if (figure < least) return { kind: 'turned-too-little-deg', figure, limit: least };
  return figure > most ? { kind: 'turned-too-far-deg', figure, limit: most } : null;
}

const advisedRange = ({ lowerDeg, upperDeg }: NonNullable<Coached['advised']>): readonly [number, number] => [
  lowerDeg * (1 - ADVISED_WITHIN),
  upperDeg * (1 + ADVISED_WITHIN) + WIND_UP_DEG,
];

function earlyTorque({ riseMs, rise }: DetectedPull): Advice | null {
  if (riseMs < PLUG_TURNS_MS) return null;
  const between = (from: number, to: number) => (rise.reachedMs[to] ?? 0) - (rise.reachedMs[from] ?? 0);
  const even = between(1, 3) / Math.max(between(5, 7), 1);
  return even > EVEN_RISE ? null : { kind: 'early-torque', figure: even, limit: EVEN_RISE };
}

function endOfScale({ saturated, highestNm }: DetectedPull): Advice | null {
  return saturated ? { kind: 'end-of-scale-nm', figure: highestNm, limit: highestNm } : null;
}

function followThrough({ peakNm, peakStandardNm, releaseNm }: DetectedPull): Advice | null {
  if (releaseNm === null) return null;
  const beyond = (100 * (peakNm - releaseNm)) / releaseNm;
  const doubt = (200 * peakStandardNm) / releaseNm;
  if (beyond - doubt <= FOLLOW_THROUGH_PERCENT) return null;
  return { kind: 'follow-through-percent', figure: beyond, limit: FOLLOW_THROUGH_PERCENT };
}

function tooFast({ release, rise, releaseNm }: DetectedPull, { clicks }: Coached): Advice | null {
  if (!clicks || release !== 'seen' || releaseNm === null) return null;
  const ms = (200 * releaseNm) / Math.max(rise.slopeAtTopNmPerS, 1e-9);
  return ms < LAST_FIFTH_AT_LEAST_MS
    ? { kind: 'too-fast-ms', figure: ms, limit: LAST_FIFTH_AT_LEAST_MS }
    : null;
}

function fellBack({ rise, peakNm }: DetectedPull): Advice | null {
  const percent = (100 * rise.setbackNm) / Math.max(Math.abs(peakNm), 1e-9);
  return percent > FELL_BACK_PERCENT
    ? { kind: 'fell-back-percent', figure: percent, limit: FELL_BACK_PERCENT }
    : null;
}

function zeroNotSettled({ zeroSettled, zeroNm }: DetectedPull, { lowerNm }: Coached): Advice | null {
  const limit = (ZERO_PERCENT / 100) * lowerNm;
  if (zeroSettled && Math.abs(zeroNm) <= limit) return null;
  return { kind: 'zero-not-settled-nm', figure: zeroNm, limit };
}

function clickNotVisible({ release, longestGapUs }: DetectedPull, { clicks }: Coached): Advice | null {
  if (!clicks || release !== 'not-visible') return null;
  return { kind: 'click-not-visible-ms', figure: longestGapUs / 1000, limit: CLICK_VISIBLE_MS };
}

function toolSmooths({ clicks, fallsMs }: Coached): Advice | null {
  const [least, most] = SMOOTHED_MS;
  const sorted = [...fallsMs].sort((a, b) => a - b);
  const figure = sorted[sorted.length >> 1] ?? 0;
  if (!clicks || sorted.length < FALLS_AT_LEAST || figure <= least || figure >= most) return null;
  return { kind: 'tool-smooths-ms', figure, limit: least };
}
