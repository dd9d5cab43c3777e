/** How fast the pace may change, in shares of the torque a second and root second: a hand that holds still … a head that gives way. */
export const BENDS = [0.3, 2, 12, 75, 450] as const;
/** Nobody pulls by more than so many times the torque in a second. */
export const FASTEST_PER_S = 40;

/**
 * Level and pace of a torque whose pace wanders, from noisy readings: the cubic smoothing spline (G. Wahba 1978) in the form
 * of R. E. Kalman's filter.
 */
export class Spline {
  /** By how much the square of the pace may wander in a second. */
  readonly bend: number;
  nm: number;
  nmPerS = 0;
  p00: number;
  p01 = 0;
  p11: number;
  /** Logarithm of the likelihood of the readings but the first two. */
  evidence = 0;
  #count = 1;

  /** Begins at a reading of `nm` with the variance `noise`; `bend` and speed in shares of `scaleNm`. */
  constructor(nm: number, noise: number, scaleNm: number, bend: number) {
    this.bend = (bend * scaleNm) ** 2;
    this.nm = nm;
    this.p00 = noise;
    this.p11 = (FASTEST_PER_S * scaleNm) ** 2;
  }

  /** `s` seconds on; a spline that runs backwards counts its pace backwards too. */
  predict(s: number): void {
    this.nm += this.nmPerS * s;
    const bend = this.bend * s;
    this.p00 += s * (2 * this.p01 + s * this.p11) + (bend * s * s) / 3;
    this.p01 += s * this.p11 + (bend * s) / 2;
    this.p11 += bend;
  }

  /** `s` seconds on there is a reading, with the variance `noise`. */
  take(s: number, readNm: number, noise: number): void {
    const bend = this.bend * s;
    const nm = this.nm + this.nmPerS * s;
    const p00 = this.p00 + s * (2 * this.p01 + s * this.p11) + (bend * s * s) / 3;
    const p01 = this.p01 + s * this.p11 + (bend * s) / 2;
    const variance = p00 + noise;
    const off = readNm - nm;
    if (++this.#count > 2) this.evidence -= 0.5 * (Math.log(variance) + (off * off) / variance);
    const k0 = p00 / variance;
    const k1 = p01 / variance;
    this.nm = nm + k0 * off;
    this.nmPerS += k1 * off;
    this.p11 += bend - k1 * p01;
    this.p01 = p01 - k0 * p01;
    this.p00 = p00 - k0 * p00;
  }
}
