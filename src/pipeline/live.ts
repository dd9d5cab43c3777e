import type { Live } from '../pull/pull-detector.ts';

/** The torque wrench as it is now; not part of the job's state, because nothing rests on it. */
export interface LiveTorque {
  /** Zero taken off; null until a reading came, and where the tool does not tell it between its pulls. */
  readonly nowNm: number | null;
  /** True from the start of a pull to its let-off. */
  readonly pulling: boolean;
  /** Highest torque of the pull under way, else of the last one. */
  readonly peakNm: number | null;
  /** How far plug and tools were turned in the pull under way; null where there is none, or the tool does not tell. */
  readonly turnedDeg: number | null;
  /** The last few seconds, evenly spaced, oldest first. */
  readonly trace: readonly number[];
}

export const NO_TORQUE: LiveTorque = {
  nowNm: null,
  pulling: false,
  peakNm: null,
  turnedDeg: null,
  trace: [],
};

/** Points of the trace, and how far they lie apart. */
const TRACE_POINTS = 120;
const TRACE_STEP_US = 50_000;

/** Keeps a {@link LiveTorque} up to date; each point of its trace is the highest torque of its 50 ms. */
export function createLive(): (atUs: number, live: Live) => LiveTorque {
  let shown = NO_TORQUE;
  let slot: number | null = null;
  return (atUs, { nowNm, pulling, peakNm, turnedDeg }) => {
    const now = Math.floor(atUs / TRACE_STEP_US);
    let { trace } = shown;
    const nm = nowNm ?? 0;
    if (slot === now) trace = [...trace.slice(0, -1), Math.max(trace.at(-1) ?? nm, nm)];
    else trace = [...trace, nm].slice(-TRACE_POINTS);
    slot = now;
    shown = { nowNm, pulling, peakNm: pulling ? peakNm : shown.peakNm, turnedDeg, trace };
    return shown;
  };
}
