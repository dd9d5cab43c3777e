import { normalCdf } from '../metrology/normal.ts';

/** How far readings are from a normal distribution whose mean and deviation are their own. */
export interface Normality {
  /** Anderson and Darling's A², adjusted for the number of readings. */
  readonly statistic: number;
  /** What normal readings exceed once in 200 times. */
  readonly limit: number;
  /** The statistic is beyond the limit: what a normal distribution would have says nothing of these readings. */
  readonly excluded: boolean;
}

/** M. A. Stephens in D'Agostino and Stephens, "Goodness-of-Fit Techniques", 1986, table 4.7, case 3, at 0.5 %. */
const LIMIT = 1.159;
/** No reading is so far out that its logarithm is infinite. */
const LEAST_SHARE = 1e-300;

/** Eight readings or more, not all alike; `mean` and `sigma` are theirs. */
export function normalityOf(readings: readonly number[], mean: number, sigma: number): Normality {
  const n = readings.length;
  const z = readings.map((reading) => (reading - mean) / sigma).sort((a, b) => a - b);
  let sum = 0;
  for (const [i, low] of z.entries()) {
    const high = z[n - 1 - i] ?? 0;
    sum += (2 * i + 1) * (logShare(low) + logShare(-high));
  }
  const statistic = (-n - sum / n) * (1 + 0.75 / n + 2.25 / (n * n));
  return { statistic, limit: LIMIT, excluded: statistic > LIMIT };
}

const logShare = (z: number): number => Math.log(Math.max(LEAST_SHARE, normalCdf(z)));
