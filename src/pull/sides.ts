import { Spline } from './spline.ts';

/** Between two samples torque is looked at so finely. */
const MOMENT_US = 3_000;
const MOMENTS = 12;

/** The samples about a top, in columns. */
export interface Stretch {
  readonly us: Float64Array;
  readonly nm: Float64Array;
  /** The variance of each. */
  readonly noise: Float64Array;
}

/** Where in a stretch the top may be: numbers of its samples. */
export interface Near {
  readonly from: number;
  readonly to: number;
}

/**
 * A spline that runs over a stretch from one end, and what it says at each sample near the top: by its own direction,
 * so that one from behind counts time and pace backwards.
 */
export class Side {
  /** By how much the square of the pace may wander in a second. */
  readonly bend: number;
  /** Logarithm of the likelihood of all its readings. */
  readonly evidence: number;
  /** Only of those where the top may be, and the one before and behind them. */
  readonly #rows: Float64Array;
  readonly #first: number;

  constructor({ us, nm, noise }: Stretch, spline: Spline, start: number, end: number, { from, to }: Near) {
    this.#first = from - 1;
    this.#rows = new Float64Array(ROW * (to - from + 3));
    const step = start <= end ? 1 : -1;
    for (let i = start; ; i += step) {
      if (i !== start)
        spline.take(Math.abs((us[i] ?? 0) - (us[i - step] ?? 0)) / 1e6, nm[i] ?? 0, noise[i] ?? 0);
      if (i >= from - 1 && i <= to + 1) this.#note(i, spline);
      if (i === end) break;
    }
    this.bend = spline.bend;
    this.evidence = spline.evidence;
  }

  #note(i: number, spline: Spline): void {
    const rows = this.#rows;
    const row = this.#row(i);
    rows[row] = spline.nm;
    rows[row + PACE] = spline.nmPerS;
    rows[row + P00] = spline.p00;
    rows[row + P01] = spline.p01;
    rows[row + P11] = spline.p11;
    rows[row + EVIDENCE] = spline.evidence;
  }

  #row(i: number): number {
    return ROW * (i - this.#first);
  }

  /** Logarithm of the likelihood of the readings up to sample number `i`. */
  evidenceAt(i: number): number {
    return this.#rows[this.#row(i) + EVIDENCE] ?? Number.NaN;
  }

  /** The pace at sample number `i`, and `s` seconds on: no spline knows how it will change. */
  nmPerS(i: number): number {
    return this.#rows[this.#row(i) + PACE] ?? Number.NaN;
  }

  /** The level `s` seconds on from sample number `i`. */
  nm(i: number, s: number): number {
    return (this.#rows[this.#row(i)] ?? Number.NaN) + s * this.nmPerS(i);
  }

  /** Variance of the level there. */
  p00(i: number, s: number): number {
    const row = this.#row(i);
    const rows = this.#rows;
    const p00 = rows[row + P00] ?? Number.NaN;
    return (
      p00 +
      s * (2 * (rows[row + P01] ?? Number.NaN) + s * ((rows[row + P11] ?? Number.NaN) + (this.bend * s) / 3))
    );
  }

  /** Covariance of level and pace there. */
  p01(i: number, s: number): number {
    const row = this.#row(i);
    return (
      (this.#rows[row + P01] ?? Number.NaN) +
      s * ((this.#rows[row + P11] ?? Number.NaN) + (this.bend * s) / 2)
    );
  }

  /** Variance of the pace there. */
  p11(i: number, s: number): number {
    return (this.#rows[this.#row(i) + P11] ?? Number.NaN) + s * this.bend;
  }
}

/** Six figures a sample: level, pace, their variances and covariance, evidence. */
const ROW = 6;
const PACE = 1;
const P00 = 2;
const P01 = 3;
const P11 = 4;
const EVIDENCE = 5;

/** A spline from the front, and one from behind down to where the top may be. */
export interface Sides {
  readonly before: Side;
  readonly behind: Side;
}

export function bothSides(stretch: Stretch, near: Near, scaleNm: number, bend: number): Sides {
  const { nm, noise } = stretch;
  const last = nm.length - 1;
  const splineAt = (i: number) => new Spline(nm[i] ?? 0, noise[i] ?? 0, scaleNm, bend);
  return {
    before: new Side(stretch, splineAt(0), 0, last, near),
    behind: new Side(stretch, splineAt(last), last, near.from, near),
  };
}

/** At how many moments to look within so long. */
export const momentsIn = (us: number): number => Math.min(MOMENTS, Math.max(1, Math.round(us / MOMENT_US)));
