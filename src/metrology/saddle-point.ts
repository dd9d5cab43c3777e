/** From here on five terms of Stirling's series are exact to a double. */
const FAR = 16;

/**
 * xᵃ e⁻ˣ / Γ(a + 1) for a > 0, x ≥ 0. By Loader's saddle point (C. Loader, "Fast and accurate computation of binomial
 * probabilities", 2000): what is large in the logarithm cancels on paper and not in the machine.
 */
export function gammaFront(a: number, x: number): number {
  if (x === 0) return 0;
  return Math.exp(-stirlingError(a) - deviance(a, x)) / Math.sqrt(2 * Math.PI * a);
}

/** xᵃ yᵇ Γ(a + b + 1) / (Γ(a + 1) Γ(b + 1)) for a, b > 0 and y = 1 - x, both given so that neither loses figures. */
export function betaFront(x: number, y: number, a: number, b: number): number {
  if (x === 0 || y === 0) return 0;
  const n = a + b;
  const exponent =
    stirlingError(n) - stirlingError(a) - stirlingError(b) - deviance(a, n * x) - deviance(b, n * y);
  return Math.exp(exponent) * Math.sqrt(n / (2 * Math.PI * a * b));
}

/** ln Γ(z + 1) less Stirling's formula for it; raised by its recurrence to where the series holds. */
function stirlingError(z: number): number {
  let raised = 0;
  let y = z;
  for (; y < FAR; y += 1) raised += (y + 0.5) * Math.log1p(1 / y) - 1;
  const square = 1 / (y * y);
  const series = 1 / 12 - square * (1 / 360 - square * (1 / 1260 - square * (1 / 1680 - square / 1188)));
  return raised + series / y;
}

/** x ln(x/m) + m - x; by its series where the two are so near that their difference is all there is. */
function deviance(x: number, m: number): number {
  const off = x - m;
  const v = off / (x + m);
  if (Number.isNaN(v)) throw new RangeError(`there is no deviance of ${x} from ${m}`);
  if (Math.abs(v) > 0.1) return x * Math.log(x / m) - off;
  let sum = off * v;
  let power = 2 * x * v;
  for (let j = 3; ; j += 2) {
    power *= v * v;
    const next = sum + power / j;
    if (next === sum) return sum;
    sum = next;
  }
}
