/** How far the true value may lie from a reading: what a budget comes to, and all that judging needs of it. */
import { COVERAGE_FACTOR } from './coverage.ts';

export interface Spread {
  /** u_c */
  readonly standard: number;
  /** ν_eff; Infinity for a normal distribution. */
  readonly degreesOfFreedom: number;
  /** U, which covers 95.45 %. */
  readonly expanded: number;
}

/** That of a normal distribution with the expanded uncertainty U = 2·u. */
export const normalSpread = (expanded: number): Spread => ({
  standard: expanded / COVERAGE_FACTOR,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
  expanded,
});
