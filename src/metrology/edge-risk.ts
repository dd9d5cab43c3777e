/**
 * How often a reading right on the edge of the acceptance zone is a false OK, by what the budget is made of. U alone does not
 * say it: the usual 2.28 % holds for a normal distribution without a known error. A purely rectangular budget gives 0, an
 * error that nobody takes off up to 4.2 %.
 */
import { normalCdf } from './normal.ts';
import { studentCdf } from './student.ts';
import { standardUncertainty, type Term } from './term.ts';

type Cause = Pick<Term, 'amount' | 'distribution' | 'sensitivity' | 'degreesOfFreedom' | 'shift'>;

/** The share of false OK on each edge. */
export interface EdgeRisk {
  readonly lower: number;
  readonly upper: number;
}

/** `guardLower` and `guardUpper`: how far the edges lie inside the limits; in the unit of the causes after sensitivity. */
export function falseAcceptanceOnEdge(
  causes: readonly Cause[],
  { guardLower, guardUpper }: { readonly guardLower: number; readonly guardUpper: number },
): EdgeRisk {
  const shift = causes.reduce((sum, cause) => sum + cause.sensitivity * (cause.shift ?? 0), 0);
  const beyond = tailOf(causes.filter((cause) => cause.shift === undefined));
  return { lower: beyond(guardLower - shift), upper: beyond(guardUpper + shift) };
}

/** Steps of the grid to either side; the sum of the causes is worked out on it to about 1e-5. */
const STEPS = 1500;
/** A grid as wide as this many standard uncertainties leaves out 1e-8 of a normal distribution. */
const REACH = 6;

/** P(sum of the causes > x): their distributions, all about 0, are added one after the other on a grid. */
function tailOf(causes: readonly Cause[]): (x: number) => number {
  const normal = Math.hypot(...causes.filter(isNormal).map(widthOf));
  const others = causes.filter((cause) => !isNormal(cause) && widthOf(cause) > 0);
  if (others.length === 0) return (x) => (normal === 0 ? Number(x < 0) : normalCdf(-x / normal));
  const step = (REACH * Math.hypot(normal, ...others.map(widthOf))) / STEPS;
  const cdfs = others.map(cdfOf);
  if (normal > 0) cdfs.push((x) => normalCdf(x / normal));
  const [first = cdfs[0], ...rest] = cdfs;
  let sum: Float64Array = Float64Array.from(
    { length: 2 * STEPS + 1 },
    (_, i) => first?.((i - STEPS) * step) ?? 0,
  );
  for (const cdf of rest) sum = added(sum, cdf, step);
  return (x) => 1 - at(sum, x / step + STEPS);
}

const widthOf = ({ amount, distribution, sensitivity }: Cause): number =>
  Math.abs(sensitivity) * standardUncertainty(amount, distribution);

const isNormal = ({ distribution: { kind }, degreesOfFreedom }: Cause): boolean =>
  (kind === 'normal' || kind === 'standard') && degreesOfFreedom === Number.POSITIVE_INFINITY;

/** The distribution function of one cause. */
function cdfOf(cause: Cause): (x: number) => number {
  const half = Math.abs(cause.sensitivity) * cause.amount;
  const clamped = (x: number) => Math.min(1, Math.max(-1, x / half));
  switch (cause.distribution.kind) {
    case 'normal':
    case 'standard':
      return (x) => studentCdf(x / widthOf(cause), cause.degreesOfFreedom);
    case 'rectangular':
      return (x) => (1 + clamped(x)) / 2;
    case 'triangular':
      return (x) => (1 + clamped(x) * (2 - Math.abs(clamped(x)))) / 2;
    case 'arcsine':
      return (x) => 0.5 + Math.asin(clamped(x)) / Math.PI;
  }
}

/** The distribution function of the sum with one more cause: G(x) = Σ F(x - y)·P(y). */
function added(sum: Float64Array, cdf: (x: number) => number, step: number): Float64Array {
  const last = 2 * STEPS;
  const weights = Float64Array.from(sum, (_, i) => {
    const y = (i - STEPS) * step;
    return cdf(y + step / 2) - cdf(y - step / 2);
  });
  return Float64Array.from(sum, (_, i) => {
    let total = 0;
    for (let j = 0; j <= last; j += 1) {
      const from = i - j + STEPS;
      if (from > last) total += weights[j] ?? 0;
      else if (from >= 0) total += (weights[j] ?? 0) * (sum[from] ?? 0);
    }
    return total;
  });
}

/** Between two points of the grid on the straight line; 0 before it and 1 after it. */
function at(sum: Float64Array, place: number): number {
  if (place <= 0) return sum[0] ?? 0;
  const before = Math.floor(place);
  const [low, high] = [sum[before] ?? 1, sum[before + 1] ?? 1];
  return low + (place - before) * (high - low);
}
