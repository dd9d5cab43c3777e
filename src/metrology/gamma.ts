import { gammaFront } from './saddle-point.ts';

/** P(a, x), the incomplete gamma function, for a > 0 and x ≥ 0: Abramowitz and Stegun 6.5.29. */
export function lowerGamma(a: number, x: number): number {
  return x < a + 1 ? series(a, x) : 1 - fraction(a, x);
}

/** Q(a, x) = 1 - P(a, x) without loss of figures where it is small: Abramowitz and Stegun 6.5.31. */
export function upperGamma(a: number, x: number): number {
  return x < a + 1 ? 1 - series(a, x) : fraction(a, x);
}

/** Front · Σ xⁿ / ((a+1)···(a+n)). */
function series(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return gammaFront(a, x) * sum;
}

/** The continued fraction by Lentz's method; each denominator stays positive because x > a. */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = Number.POSITIVE_INFINITY;
  let d = 1 / b;
  let product = d;
  for (let n = 1; n < 100_000; n += 1) {
    const step = n * (a - n);
    b += 2;
    d = 1 / (b + step * d);
    c = b + step / c;
    product *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return gammaFront(a, x) * a * product;
}
