import type { AtRest } from './at-rest.ts';
import type { DetectedPull } from './pull.ts';

/** The tool now. Torque with the zero taken off. */
export interface Live {
  /** Null where the tool does not tell: one that sends maxima, between its pulls. */
  readonly nowNm: number | null;
  readonly pulling: boolean;
  /** Of the pull under way. */
  readonly peakNm: number;
  /** How far it turned plug and tools since it began; null where no pull is under way, or the tool does not tell. */
  readonly turnedDeg: number | null;
}

/** What finds pulls: in samples (detector.ts) or in the maxima of a tool that sends nothing else (maxima.ts). */
export interface PullDetector {
  /**
   * Takes the next sample and returns a pull that it completes. `nm` as the wrench reads it, `angleDeg` where the tool
   * tells it. Time may stand still but not go back: that, and a reading that is no number, throws RangeError.
   */
  push(atUs: number, nm: number, angleDeg?: number): DetectedPull | null;
  /** The same for samples `from` up to `to`, much faster; bit by bit the same pulls. */
  pushBatch(
    atUs: Float64Array,
    nm: Float64Array,
    from: number,
    to: number,
    angleDeg?: Float64Array,
  ): DetectedPull[];
  /** Readings are missing here; `readings`: how many, where the tool counts them, else 0. A pull goes on beyond them. */
  missed(readings: number): void;
  /** When a pull is over should no further reading come; null where a silence tells nothing. */
  endsUs(): number | null;
  /** No reading came up to then; returns a pull that is over by that. */
  silent(atUs: number): DetectedPull | null;
  /** Ends a pull under way, because no more samples come; null when none was. */
  cut(reason: 'link-lost' | 'stopped' | 'tool-stopped'): DetectedPull | null;
  readonly pulling: boolean;
  /** What it has shown at rest; null until that was long enough. */
  atRest(): AtRest | null;
  live(): Live;
}
