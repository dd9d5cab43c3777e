import { betaFront } from './saddle-point.ts';

/**
 * The incomplete beta function I_x(a, b) for a, b > 0, with y = 1 - x given beside x; relative error below 1e-11 in the
 * lower tail for a and b up to a hundred thousand. Abramowitz and Stegun 26.5.8; 26.5.2 for the other side.
 */
export function incompleteBeta(x: number, y: number, a: number, b: number): number {
  const front = betaFront(x, y, a, b);
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b) * b) / (a + b)
    : 1 - (front * betaFraction(y, b, a) * a) / (a + b);
}

/** The continued fraction of Abramowitz and Stegun 26.5.8 by Lentz's method. */
export function betaFraction(x: number, a: number, b: number): number {
  const floor = 1e-300;
  const keep = (value: number) => (Math.abs(value) < floor ? floor : value);
  let c = 1;
  let d = 1 / keep(1 - ((a + b) * x) / (a + 1));
  let product = d;
  for (let m = 1; m < 100_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    let change = 1;
    for (const step of [even, odd]) {
      d = 1 / keep(1 + step * d);
      c = keep(1 + step / c);
      change = c * d;
      product *= change;
    }
    if (Math.abs(change - 1) < 1e-16) break;
  }
  return product;
}
