import { incompleteBeta } from './beta.ts';
import { positiveQuantile } from './quantile.ts';

/** Degrees of freedom of the two mean squares, the upper one first. */
export type Pair = readonly [numerator: number, denominator: number];

/** P(F ≤ f), the distribution of a ratio of mean squares: Abramowitz and Stegun 26.6.2. */
export function fisherCdf(f: number, [m, n]: Pair): number {
  positive(m, n);
  if (f <= 0) return 0;
  const whole = m * f + n;
  return incompleteBeta((m * f) / whole, n / whole, m / 2, n / 2);
}

/** P(F > f), exact where it is small: what an analysis of variance prints as p. */
export function fisherTail(f: number, [m, n]: Pair): number {
  positive(m, n);
  if (f <= 0) return 1;
  const whole = m * f + n;
  return incompleteBeta(n / whole, (m * f) / whole, n / 2, m / 2);
}

/** f with fisherCdf(f) = p, for 0 < p < 1. */
export function fisherQuantile(p: number, pair: Pair): number {
  return positiveQuantile(
    p,
    (f) => fisherCdf(f, pair),
    (f) => fisherTail(f, pair),
  );
}

function positive(m: number, n: number): void {
  if (!(m > 0 && n > 0)) throw new RangeError(`degrees of freedom must be above zero, not ${m} and ${n}`);
}
