/**
 * Mean, standard deviation and lag-1 autocorrelation of readings that are seen once, in order. Two parts of a series,
 * each summed on its own, merge into the whole. Sums stand on differences from the first reading, so that a large
 * common part (10 000 000.2 ± 0.1) costs no figures.
 *
 * B. P. Welford, "Note on a method for calculating corrected sums of squares and products", 1962; merging after T. F. Chan,
 * G. H. Golub, R. J. LeVeque, "Updating formulae and a pairwise algorithm", 1979; carried to the products of neighbours here.
 */
export interface Moments {
  readonly n: number;
  readonly first: number;
  readonly last: number;
  /** Mean less `first`. */
  readonly offset: number;
  /** Σ (xᵢ - mean)². */
  readonly squares: number;
  /** Σ (xᵢ - mean)(xᵢ₊₁ - mean) over neighbours. */
  readonly products: number;
}

/** Of no readings. */
export const NO_MOMENTS: Moments = { n: 0, first: 0, last: 0, offset: 0, squares: 0, products: 0 };

/** The moments with one finite reading more at the end. */
export function add(moments: Moments, reading: number): Moments {
  if (moments.n === 0) return { ...NO_MOMENTS, n: 1, first: reading, last: reading };
  const { n, first, last } = moments;
  const off = reading - first - moments.offset;
  const shift = off / (n + 1);
  const offset = moments.offset + shift;
  const fromMean = reading - first - offset;
  return {
    n: n + 1,
    first,
    last: reading,
    offset,
    squares: moments.squares + off * fromMean,
    products: productsAbout(moments, shift) + (last - first - offset) * fromMean,
  };
}

/** The moments of `before` followed by `after`. */
export function merge(before: Moments, after: Moments): Moments {
  if (before.n === 0) return after;
  if (after.n === 0) return before;
  const n = before.n + after.n;
  const gap = after.first - before.first;
  const apart = gap + after.offset - before.offset;
  const offset = before.offset + (apart * after.n) / n;
  const joint = (before.last - before.first - offset) * (gap - offset);
  return {
    n,
    first: before.first,
    last: after.last,
    offset,
    squares: before.squares + after.squares + (apart * apart * before.n * after.n) / n,
    products:
      productsAbout(before, (apart * after.n) / n) + productsAbout(after, (-apart * before.n) / n) + joint,
  };
}

/** All readings of an array, in order. */
export function momentsOf(readings: readonly number[]): Moments {
  return readings.reduce(add, NO_MOMENTS);
}

/** NaN of no readings. */
export function mean({ n, first, offset }: Moments): number {
  return n === 0 ? Number.NaN : first + offset;
}

/** Sample standard deviation (n - 1); NaN of fewer than two readings. */
export function standardDeviation({ n, squares }: Moments): number {
  return n < 2 ? Number.NaN : Math.sqrt(squares / (n - 1));
}

/** Σ(xᵢ-m)(xᵢ₊₁-m) / Σ(xᵢ-m)², as NIST StRD defines it; null when all readings are equal or there are fewer than two. */
export function lag1({ squares, products }: Moments): number | null {
  return squares > 0 ? products / squares : null;
}

/** Products of neighbours when the mean moves by `shift`; all deviations together are zero, so the two ends decide. */
function productsAbout({ n, first, last, offset, products }: Moments, shift: number): number {
  return products + shift * (last - first - offset - offset) + (n - 1) * shift * shift;
}
