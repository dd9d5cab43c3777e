import type { Problem } from '../problem.ts';
import { w } from '../words/catalogue.ts';

/** What a value may be, both ends included; null where there is no such limit. One unit for limits and readings. */
export interface Limits {
  readonly lower: number | null;
  readonly upper: number | null;
}

/** How many readings lie where. */
export interface Counts {
  readonly below: number;
  readonly within: number;
  readonly above: number;
}

/** Readings on a limit are within. */
export function count(readings: readonly number[], { lower, upper }: Limits): Counts {
  const below = lower === null ? 0 : readings.filter((reading) => reading < lower).length;
  const above = upper === null ? 0 : readings.filter((reading) => reading > upper).length;
  return { below, within: readings.length - below - above, above };
}

/** Problems: `no-limits`, `range-reversed`. */
export function limitsProblem({ lower, upper }: Limits): Problem | null {
  const given = [lower, upper].filter((limit) => limit !== null);
  if (given.length === 0 || !given.every(Number.isFinite))
    return {
      code: 'no-limits',
      where: 'limits',
      message: w`there is neither a lower nor an upper limit to hold the readings against`,
      next: w`Give at least one limit as a finite number.`,
    };
  if (lower === null || upper === null || lower < upper) return null;
  return {
    code: 'range-reversed',
    where: 'limits',
    message: w`the lower limit ${lower} is not below the upper limit ${upper}`,
    next: w`Give the lower limit first, then the upper.`,
  };
}
