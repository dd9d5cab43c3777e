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
  const { plugDeg: turnedDeg, fromNm, fromDeg, strokes } = turning;
  if (!Number.isFinite(turnedDeg)) return null;
  const { top, step } = first;
  const windUpDeg = strokes > 1 ? null : step.angleDeg - fromDeg - turnedDeg;
  const degPerNm = Math.max(0, windUpDeg ?? 0) / Math.max(1e-9, top.nm - fromNm);
  const driftDeg = (angle.driftDegPerS * last.atUs) / 1e6;
  return {
    turnedDeg,
    standardDeg: Math.hypot(
      angle.stepDeg / Math.sqrt(6),
      driftDeg / Math.sqrt(3),
      Math.SQRT2 * noiseNm * degPerNm,
    ),
    fromNm,
    windUpDeg,
    reachedDeg: [1, 2, 3, 4, 5, 6, 7, 8, 9].map(
      (tenth) => climb.reached((tenth / 10) * top.nm, step).angleDeg - fromDeg,
    ),
  };
}
