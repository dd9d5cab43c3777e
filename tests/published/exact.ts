/**
 * Mean, standard deviation and lag-1 autocorrelation of doubles in exact rational arithmetic: every double is a whole number
 * times a power of two. What is left is one rounding of the result, and a root in whole numbers.
 */

/** A bound on the power of two below which no double of the sets has a digit. */
const SHIFT = 80n;
const ONE = 1n << SHIFT;

export interface ExactMoments {
  readonly mean: number;
  readonly s: number;
  readonly r1: number;
}

export function exactMoments(readings: readonly number[]): ExactMoments {
  const xs = readings.map(scaledUp);
  const n = BigInt(xs.length);
  const sum = xs.reduce((total, x) => total + x, 0n);
  // n times each deviation, so that no division comes between.
  const off = xs.map((x) => n * x - sum);
  const squares = off.reduce((total, d) => total + d * d, 0n);
  const products = off.reduce((total, d, i) => total + d * (off[i + 1] ?? 0n), 0n);
  return {
    mean: quotient(sum, n * ONE),
    s: quotient(root((squares << (2n * SHIFT)) / (n * n * (n - 1n))), ONE * ONE),
    r1: quotient(products, squares),
  };
}

/** `value` · 2^80, which is whole. */
function scaledUp(value: number): bigint {
  let [mantissa, halved] = [value, 0n];
  for (; !Number.isInteger(mantissa); mantissa *= 2) halved += 1n;
  if (halved > SHIFT) throw new RangeError(`${value} has digits below 2^-${SHIFT}`);
  return BigInt(mantissa) << (SHIFT - halved);
}

/** To twenty-five decimals, then to the nearest double. */
function quotient(a: bigint, b: bigint): number {
  const digits = 25;
  const whole = (a * 10n ** BigInt(digits)) / b;
  return Number(`${whole}e-${digits}`);
}

/** The whole part of a square root, by Newton's method. */
function root(square: bigint): bigint {
  let guess = 1n << BigInt(Math.ceil(square.toString(2).length / 2));
  for (;;) {
    const next = (guess + square / guess) >> 1n;
    if (next >= guess) return guess;
    guess = next;
  }
}
