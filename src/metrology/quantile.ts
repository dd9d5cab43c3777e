/**
 * The x > 0 at which the distribution function of a positive variable reaches p, for 0 < p < 1: a bracket that doubles or
 * halves until it holds the answer, then bisection. Above the median the upper tail decides, because there the
 * distribution function itself has no figures left.
 */
export function positiveQuantile(
  p: number,
  lower: (x: number) => number,
  upper: (x: number) => number,
): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a probability lies between 0 and 1, not ${p}`);
  const tooFar = p < 0.5 ? (x: number) => lower(x) > p : (x: number) => upper(x) < 1 - p;
  let high = 1;
  while (!tooFar(high)) high *= 2;
  let low = high / 2;
  while (tooFar(low)) low /= 2;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    if (tooFar(middle)) high = middle;
    else low = middle;
  }
}
