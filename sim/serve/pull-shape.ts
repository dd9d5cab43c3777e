import type { ScenarioStep } from './scenario.ts';

/** Of a setting wrench, invented: how far the torque falls when it releases, and how fast. */
const FALL = { share: 0.25, ms: 25 };
const HOLD_MS = 120;
const LET_OFF_MS = 250;

/** The torque and the turn of a pull over its time: a rise that hardens, the click, a short hold, the let-off. */
export function shapeOf({ peakNm, riseMs, clicks, turnDeg }: Extract<ScenarioStep, { do: 'pull' }>) {
  const held = clicks ? peakNm * (1 - FALL.share) : peakNm;
  const fallMs = clicks ? FALL.ms : 0;
  const lastsMs = riseMs + fallMs + HOLD_MS + LET_OFF_MS;
  const at = (ms: number) => {
    const deg = turnDeg * Math.sign(peakNm || 1) * Math.min(1, Math.max(0, ms / riseMs));
    if (ms < riseMs) return { nm: peakNm * Math.max(0, ms / riseMs) ** 1.5, deg };
    const fallen = ms - riseMs;
    if (fallen < fallMs) return { nm: peakNm + (held - peakNm) * (fallen / fallMs), deg };
    const letOff = fallen - fallMs - HOLD_MS;
    return { nm: letOff < 0 ? held : held * Math.max(0, 1 - letOff / LET_OFF_MS), deg };
  };
  return { at, lastsMs };
}
