/** A parabola c0 + c1·x + c2·x² (or a mean) with the covariance of its coefficients for unit variance. */
export interface Fit {
  readonly c0: number;
  readonly c1: number;
  readonly c2: number;
  /** Sum of squared residuals. */
  readonly squares: number;
  readonly freedom: number;
  readonly v00: number;
  readonly v01: number;
  readonly v02: number;
  readonly v11: number;
  readonly v12: number;
  readonly v22: number;
}

/** Sums of powers, to which points can be added and from which least squares fits of degree 0 and 2 are read at any time. */
export class Moments {
  n = 0;
  #x1 = 0;
  #x2 = 0;
  #x3 = 0;
  #x4 = 0;
  #y = 0;
  #xy = 0;
  #x2y = 0;
  #y2 = 0;

  add(x: number, y: number, weight: 1 | -1 = 1): void {
    const square = x * x;
    this.n += weight;
    this.#x1 += weight * x;
    this.#x2 += weight * square;
    this.#x3 += weight * square * x;
    this.#x4 += weight * square * square;
    this.#y += weight * y;
    this.#xy += weight * x * y;
    this.#x2y += weight * square * y;
    this.#y2 += weight * y * y;
  }

  /** Null where the points do not determine it. */
  fit(degree: 0 | 2): Fit | null {
    if (this.n <= degree) return null;
    return degree === 0 ? this.#mean() : this.#parabola();
  }

  #mean(): Fit {
    const c0 = this.#y / this.n;
    const squares = Math.max(0, this.#y2 - c0 * this.#y);
    return {
      c0,
      c1: 0,
      c2: 0,
      squares,
      freedom: this.n - 1,
      v00: 1 / this.n,
      v01: 0,
      v02: 0,
      v11: 0,
      v12: 0,
      v22: 0,
    };
  }

  #parabola(): Fit | null {
    const { n } = this;
    const x1 = this.#x1;
    const x2 = this.#x2;
    const x3 = this.#x3;
    const x4 = this.#x4;
    const m00 = x2 * x4 - x3 * x3;
    const m01 = x2 * x3 - x1 * x4;
    const m02 = x1 * x3 - x2 * x2;
    const det = n * m00 + x1 * m01 + x2 * m02;
    if (det <= 1e-9 * n * x2 * x4) return null;
    const m11 = n * x4 - x2 * x2;
    const m12 = x1 * x2 - n * x3;
    const m22 = n * x2 - x1 * x1;
    const c0 = (m00 * this.#y + m01 * this.#xy + m02 * this.#x2y) / det;
    const c1 = (m01 * this.#y + m11 * this.#xy + m12 * this.#x2y) / det;
    const c2 = (m02 * this.#y + m12 * this.#xy + m22 * this.#x2y) / det;
    const squares = Math.max(0, this.#y2 - c0 * this.#y - c1 * this.#xy - c2 * this.#x2y);
    return {
      c0,
      c1,
      c2,
      squares,
      freedom: n - 3,
      v00: m00 / det,
      v01: m01 / det,
      v02: m02 / det,
      v11: m11 / det,
      v12: m12 / det,
      v22: m22 / det,
    };
  }
}

export const valueAt = ({ c0, c1, c2 }: Fit, x: number): number => c0 + x * (c1 + x * c2);

/** Variance of the fitted value at `x`, for unit variance of a point. */
export function varianceAt({ v00, v01, v02, v11, v12, v22 }: Fit, x: number): number {
  const square = x * x;
  return v00 + 2 * x * v01 + square * (2 * v02 + v11) + 2 * square * x * v12 + square * square * v22;
}

/** Whether noise of standard deviation `sigma` explains what the fit leaves over (chi square, about three sigma). */
export function explains({ squares, freedom }: Fit, sigma: number): boolean {
  return squares <= sigma * sigma * (freedom + 3 * Math.sqrt(2 * freedom) + 1);
}
