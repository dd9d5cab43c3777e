/** d2 and D4 of ranges of two: mean range in σ, and the upper limit of a range in mean ranges. e-Handbook, 6.3.2. */
const D2 = 1.128;
const D4 = 3.267;

/** Spread as neighbours show it, which a slow drift does not widen. */
export interface MovingRange {
  /** One fewer than the readings. */
  readonly ranges: readonly number[];
  readonly mean: number;
  readonly upperLimit: number;
  /** Mean range / d2. */
  readonly sigma: number;
  /** Of `sigma`, as of a standard deviation with as many degrees of freedom. */
  readonly degreesOfFreedom: number;
}

/**
 * Moving ranges of at least two readings.
 *
 * The degrees of freedom are those of a χ with the same relative variance. Var(mean range)/d2² of independent normal
 * readings is (0.8264 n - 1.0821)/(n - 1)²: a range of two has variance 2 - 4/π, and neighbouring ranges, which share a
 * reading, have covariance (4/π)(√3/2 + π/12 - 1), all in σ².
 */
export function movingRange(readings: readonly number[]): MovingRange {
  const ranges = readings.slice(1).map((reading, i) => Math.abs(reading - (readings[i] ?? reading)));
  const mean = ranges.reduce((sum, range) => sum + range, 0) / ranges.length;
  const n = readings.length;
  return {
    ranges,
    mean,
    upperLimit: D4 * mean,
    sigma: mean / D2,
    degreesOfFreedom: (n - 1) ** 2 / (2 * (0.8264 * n - 1.0821)),
  };
}
