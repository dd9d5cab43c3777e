import type { Random } from '../random.ts';

/** What a small gyroscope in a handle makes of the way it is turned. Assumptions, of the size that data sheets promise. */
const GAIN_SIGMA = 0.004;
const DRIFT_SIGMA_DEG_PER_S = 0.03;
/** How the drift changes within a root of a second. */
const WANDER_DEG_PER_S = 0.001;
const NOISE_DEG = 0.04;

/** One count is a tenth of a degree. */
export const DEG_EXPONENT = -1;

/** Sums up how fast it is turned: gain, drift, noise, step. Its zero is wherever it was switched on. */
export class Gyroscope {
  readonly #random: Random;
  readonly #gain: number;
  #driftDegPerS: number;
  #sumDeg: number;
  #lastDeg = 0;
  #lastUs = 0;

  constructor(random: Random) {
    this.#random = random;
    this.#gain = 1 + random.within(0, GAIN_SIGMA, 2.5);
    this.#driftDegPerS = random.within(0, DRIFT_SIGMA_DEG_PER_S, 2.5);
    this.#sumDeg = random.uniform(-180, 180);
  }

  /** What it says of the handle's true angle at that time, in counts of 0.1°. */
  sample(trueDeg: number, atUs: number): number {
    const seconds = (atUs - this.#lastUs) / 1e6;
    this.#driftDegPerS += this.#random.normal(0, WANDER_DEG_PER_S * Math.sqrt(seconds));
    this.#sumDeg += this.#gain * (trueDeg - this.#lastDeg) + this.#driftDegPerS * seconds;
    this.#lastDeg = trueDeg;
    this.#lastUs = atUs;
    return Math.round((this.#sumDeg + this.#random.normal(0, NOISE_DEG)) * 10 ** -DEG_EXPONENT) + 0;
  }
}
