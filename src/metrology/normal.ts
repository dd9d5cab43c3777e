const SQRT_2PI = Math.sqrt(2 * Math.PI);
/** Above this the series loses figures to cancellation, and the continued fraction converges quickly. */
const TAIL = 2;

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / SQRT_2PI;
}

/**
 * Φ(z), the standard normal distribution function; relative error below 1e-13 down to z = -37 (there Φ is 5e-300).
 * Power series in the middle, Laplace's continued fraction for Mills' ratio in the tails (Abramowitz and Stegun,
 * 26.2.11 and 26.2.14).
 */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) return Number.NaN;
  if (z < -TAIL) return upperTail(-z);
  if (z > TAIL) return 1 - upperTail(z);
  return 0.5 + normalDensity(z) * oddSeries(z);
}

/** Probability that a standard normal variable lies between `from` and `to`, without loss of figures in either tail. */
export function normalBetween(from: number, to: number): number {
  return from > 0 ? normalCdf(-from) - normalCdf(-to) : normalCdf(to) - normalCdf(from);
}

/** z with Φ(z) = p, for 0 < p < 1; -Infinity and Infinity at the ends. */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a probability lies between 0 and 1, not ${p}`);
  if (p === 0 || p === 1) return p === 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  if (p > 0.5) return -normalQuantile(1 - p);
  let z = -roughQuantile(p);
  // Halley's rule: cubic convergence from the 4.5e-4 of the rough value, so three steps reach the last bits.
  for (let step = 0; step < 3; step += 1) {
    const off = (normalCdf(z) - p) / normalDensity(z);
    z -= off / (1 + (z * off) / 2);
  }
  return z;
}

/** Σ z^(2n+1) / (1·3·5···(2n+1)). */
function oddSeries(z: number): number {
  let term = z;
  let sum = z;
  for (let n = 3; Math.abs(term) > 1e-18; n += 2) {
    term *= (z * z) / n;
    sum += term;
  }
  return sum;
}

/** 1 - Φ(z) for z > 0: φ(z) / (z + 1/(z + 2/(z + 3/(z + …)))), evaluated from the inside. */
function upperTail(z: number): number {
  const density = normalDensity(z);
  if (density === 0) return 0;
  let fraction = z;
  for (let n = 160; n >= 1; n -= 1) fraction = z + n / fraction;
  return density / fraction;
}

/** Abramowitz and Stegun 26.2.23, for p up to one half. */
function roughQuantile(p: number): number {
  const t = Math.sqrt(-2 * Math.log(p));
  return (
    t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)))
  );
}
