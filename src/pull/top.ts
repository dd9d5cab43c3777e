/** A maximum of the torque as estimated from the samples about it. Times in microseconds since the start of the pull. */
export interface Top {
  readonly nm: number;
  readonly atUs: number;
  readonly standardNm: number;
}

/** Fits reach this far from the top, and count time in these units. */
export const REACH_US = 160_000;
export const UNIT_US = 10_000;
/** How fast a stretch that is fitted grows. */
export const GROWTH = 0.25;
