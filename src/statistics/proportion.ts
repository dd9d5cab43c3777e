import { normalQuantile } from '../metrology/normal.ts';

/** A share of `n` with its two-sided confidence interval. */
export interface Proportion {
  readonly count: number;
  readonly n: number;
  /** Null of nothing. */
  readonly share: number | null;
  readonly from: number;
  readonly to: number;
  readonly confidence: number;
}

/**
 * Wilson's score interval, which stays within 0 to 1 and says something even when none of n is out.
 * E. B. Wilson, "Probable inference, the law of succession, and statistical inference", 1927.
 */
export function proportion(count: number, n: number, confidence = 0.95): Proportion {
  if (!(Number.isInteger(count) && Number.isInteger(n) && count >= 0 && count <= n))
    throw new RangeError(`${count} of ${n} is no proportion`);
  if (n === 0) return { count, n, share: null, from: 0, to: 1, confidence };
  const share = count / n;
  const z2 = normalQuantile((1 + confidence) / 2) ** 2;
  const centre = (share + z2 / (2 * n)) / (1 + z2 / n);
  const half = Math.sqrt(z2 * ((share * (1 - share)) / n + z2 / (4 * n * n))) / (1 + z2 / n);
  return {
    count,
    n,
    share,
    from: count === 0 ? 0 : Math.max(0, centre - half),
    to: count === n ? 1 : Math.min(1, centre + half),
    confidence,
  };
}
