import { lowerGamma, upperGamma } from './gamma.ts';
import { positiveQuantile } from './quantile.ts';

/** P(χ² ≤ x) with `degreesOfFreedom` (any positive number): Abramowitz and Stegun 26.4.19. */
export function chiSquareCdf(x: number, degreesOfFreedom: number): number {
  positive(degreesOfFreedom);
  return x <= 0 ? 0 : lowerGamma(degreesOfFreedom / 2, x / 2);
}

/** P(χ² > x), exact where it is small. */
export function chiSquareTail(x: number, degreesOfFreedom: number): number {
  positive(degreesOfFreedom);
  return x <= 0 ? 1 : upperGamma(degreesOfFreedom / 2, x / 2);
}

/** x with chiSquareCdf(x) = p, for 0 < p < 1. */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  return positiveQuantile(
    p,
    (x) => chiSquareCdf(x, degreesOfFreedom),
    (x) => chiSquareTail(x, degreesOfFreedom),
  );
}

function positive(degreesOfFreedom: number): void {
  if (!(degreesOfFreedom > 0))
    throw new RangeError(`degrees of freedom must be above zero, not ${degreesOfFreedom}`);
}
