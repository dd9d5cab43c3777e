import { betaFraction } from './beta.ts';
import { normalCdf } from './normal.ts';

const SQRT_PI = Math.sqrt(Math.PI);
/** Beyond this many degrees of freedom a normal variable that is scaled a little does better than the beta function. */
const ALL_BUT_NORMAL = 1e6;

/**
 * Distribution function of Student's t with `degreesOfFreedom` (any positive number, Infinity for the normal one); absolute error below
 * 1e-12. By the incomplete beta function: Abramowitz and Stegun 26.7.1 and 26.5.8, 26.7.8 for very many.
 */
export function studentCdf(t: number, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0))
    throw new RangeError(`degrees of freedom must be above zero, not ${degreesOfFreedom}`);
  if (degreesOfFreedom > ALL_BUT_NORMAL)
    return normalCdf(
      (t * (1 - 1 / (4 * degreesOfFreedom))) / Math.sqrt(1 + (t * t) / (2 * degreesOfFreedom)),
    );
  if (t === 0) return 0.5;
  const oneTail = bothTails(t * t, degreesOfFreedom) / 2;
  return t > 0 ? 1 - oneTail : oneTail;
}

/** t with studentCdf(t) = p, for 0 < p < 1: bisection in a bracket that doubles until it holds the answer. */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a probability lies between 0 and 1, not ${p}`);
  if (p > 0.5) return -studentQuantile(1 - p, degreesOfFreedom);
  if (p === 0.5) return 0;
  let low = -1;
  while (studentCdf(low, degreesOfFreedom) > p) low *= 2;
  let high = 0;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    if (studentCdf(middle, degreesOfFreedom) > p) high = middle;
    else low = middle;
  }
}

/** P(|T| > t) = I_x(ν/2, 1/2) with x = ν/(ν + t²), for t² given. */
function bothTails(square: number, degreesOfFreedom: number): number {
  const a = degreesOfFreedom / 2;
  const x = degreesOfFreedom / (degreesOfFreedom + square);
  const rest = square / (degreesOfFreedom + square);
  // x^a by log1p: with many degrees of freedom x rounds to so near 1 that its own logarithm has no figures left.
  const front =
    (Math.exp(-a * Math.log1p(square / degreesOfFreedom)) * Math.sqrt(rest) * gammaRatio(a)) / SQRT_PI;
  return x < (a + 1) / (a + 2.5)
    ? (front * betaFraction(x, a, 0.5)) / a
    : 1 - 2 * front * betaFraction(rest, 0.5, a);
}

/** Γ(a + ½)/Γ(a): its series in 1/a after raising a to where six terms are exact to a double. */
function gammaRatio(a: number): number {
  let lowered = 1;
  let y = a;
  for (; y < 60; y += 1) lowered *= y / (y + 0.5);
  const z = 1 / y;
  const series = 1 - z * (1 / 8 - z * (1 / 128 + z * (5 / 1024 - z * (21 / 32768 + z * (399 / 262144)))));
  return lowered * Math.sqrt(y) * series;
}
