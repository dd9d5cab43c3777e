/** What is told of the turn once a pull is over, or why the angle says nothing. */
import type { Climb, Step } from './climb.ts';
import type { DetectedPull, PlugTurn } from './pull.ts';
import type { DetectorSettings } from './settings.ts';
import type { PlacedTop } from './tops.ts';
import type { Turning } from './turning.ts';

/** No wrench is as stiff: less than this in a whole pull is an angle that stands. Assumption; a short bar alone has 7 N·m a degree. */
const STUCK_DEG_PER_NM = 0.01;
/** Slack, and what a tool's head tips back, on top of the uncertainty. Assumption. */
const BACK_DEG = 1;
const SURELY = 4;

/** What was gathered of the angle while the pull went on. */
export interface GatheredTurn {
  readonly turning: Turning;
  /** How fast the angle ran by itself at rest before. */
  readonly driftDegPerS: number;
  /** At the last sample. */
  readonly last: Step;
}

interface Turned extends GatheredTurn {
  readonly climb: Climb;
  readonly first: PlacedTop;
  readonly peak: Step;
  readonly noiseNm: number;
}

export function turnOf(
  settings: DetectorSettings,
  turned: Turned,
): Pick<DetectedPull, 'turn' | 'angleFault'> {
  const { climb, first, peak, turning, driftDegPerS } = turned;
  if (!Number.isFinite(turning.turnedDeg))
    return settings.angle === undefined ? { turn: null } : { turn: null, angleFault: 'missing' };
  const none = (angleFault: NonNullable<DetectedPull['angleFault']>) => ({ turn: null, angleFault });
  if (turning.jumped) return none('jumped');
  if (turning.within(STUCK_DEG_PER_NM * first.top.nm)) return none('stuck');
  if (settings.angle !== undefined && driftDegPerS > settings.angle.driftDegPerS) return none('drifting');
  const plug = plugTurn(settings, turned);
  if (plug !== null) {
    const leastDeg = -BACK_DEG - SURELY * plug.standardDeg;
    const unwoundDeg = turning.strokes > 1 ? 0 : peak.angleDeg - turning.fromDeg - plug.turnedDeg;
    if (Math.min(plug.turnedDeg, unwoundDeg) < leastDeg) return none('backwards');
  }
  const from = (share: number) => peak.angleDeg - climb.reached(share * first.top.nm, first.step).angleDeg;
  return {
    turn: {
      startToPeakDeg: peak.angleDeg,
      from10PercentDeg: from(0.1),
      from50PercentDeg: from(0.5),
      workJ: peak.workJ,
      ...(plug !== null && { plug }),
    },
  };
}

function plugTurn(
  { angle = { stepDeg: 0, driftDegPerS: 0 } }: DetectorSettings,
  { climb, first, noiseNm, turning, last }: Turned,
): PlugTurn | null {
  const { plugDeg: turnedDeg, fromNm, fromDeg, strokes, woundUpDeg } = turning;
  if (!Number.isFinite(turnedDeg)) return null;
  const { top, step } = first;
  const windUpDeg = strokes > 1 ? null : step.angleDeg - fromDeg - turnedDeg;
  const degPerNm = Math.max(0, windUpDeg ?? 0) / Math.max(1e-9, top.nm - fromNm);
  const driftDeg = (angle.driftDegPerS * last.atUs) / 1e6;
  const standardDeg = Math.hypot(
    angle.stepDeg / Math.sqrt(6),
    driftDeg / Math.sqrt(3),
    Math.SQRT2 * noiseNm * degPerNm,
  );
  const contactDeg = contactBelow(turning, standardDeg, (nm) => {
    const at = climb.reached(nm, step);
    const deg = at.angleDeg - fromDeg;
    // Nothing is kept between the crossing and the first reading behind it.
    return at.nm > nm ? (deg * (nm - fromNm)) / (at.nm - fromNm) : deg;
  });
  return {
    turnedDeg,
    standardDeg,
    fromNm,
    windUpDeg,
    ...(contactDeg === null ? {} : { contactDeg }),
    ...(strokes > 1 && { strokes, woundUpDeg }),
    reachedDeg: [1, 2, 3, 4, 5, 6, 7, 8, 9].map(
      (tenth) => climb.reached((tenth / 10) * top.nm, step).angleDeg - fromDeg,
    ),
  };
}

/** A plug that is turned by less stands, as far as small gyroscopes can tell. Assumption. */
const STOOD_DEG = 0.3;
/** By how much the torque rises from one look at the plug to the next. */
const LOOK = 1.1;
/** How the turn grows from one doubling of the torque to the next, where the stroke was let off too soon to say. Assumption. */
const USUAL_GROWTH = 1.4;
const LEAST_GROWTH = 1.05;
/** More says no more: nothing is known. */
const MOST_DEG = 360;

/**
 * How far below the first turn of the plug contact may lie, at most. The turn over each halving of the torque shrinks as it
 * did over the one before, so that all that lie below add up to a geometric series; no less than one of them, because where
 * a soft start ends nobody knows. So a plug that fingers or a stroke that nobody saw had turned before it was pulled, is
 * known the worse the tighter it was. Null where the plug stood throughout, or was let off before the torque had doubled.
 */
function contactBelow(
  { fromNm, firstTopNm, degPerNm }: Turning,
  standardDeg: number,
  toolDeg: (nm: number) => number,
): number | null {
  const plugDeg = (nm: number) => toolDeg(nm) - degPerNm * (nm - fromNm);
  let beganNm = fromNm;
  while (beganNm < firstTopNm && plugDeg(LOOK * beganNm) <= STOOD_DEG + 2 * standardDeg) beganNm *= LOOK;
  if (2 * beganNm > firstTopNm) return null;
  const firstDeg = plugDeg(2 * beganNm) - plugDeg(beganNm);
  if (!(firstDeg > 0)) return null;
  const growth =
    4 * beganNm > firstTopNm
      ? USUAL_GROWTH
      : Math.max(LEAST_GROWTH, (plugDeg(4 * beganNm) - plugDeg(2 * beganNm)) / firstDeg);
  return Math.min(MOST_DEG, Math.max(firstDeg, firstDeg / (growth - 1)));
}
