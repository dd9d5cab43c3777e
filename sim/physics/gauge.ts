import type { Random } from '../random.ts';

export interface GaugeSpec {
  readonly biasMm: number;
  /** Standard deviation of repeated readings of one gap. */
  readonly repeatabilityMm: number;
  /** Step of the display; the reading is sent in counts of 100 nm all the same. */
  readonly resolutionMm: number;
}

/** One count is 100 nm, the step of the Bluetooth length characteristic. */
export const COUNTS_PER_MM = 10_000;

/** Gauge for electrode gaps; sends one reading each time its button is pressed. */
export class Gauge {
  readonly #spec: GaugeSpec;
  readonly #random: Random;

  constructor(spec: GaugeSpec, random: Random) {
    this.#spec = spec;
    this.#random = random;
  }

  /** What the gauge reports of a true gap, in counts of 100 nm. */
  measure(trueMm: number): number {
    const { biasMm, repeatabilityMm, resolutionMm } = this.#spec;
    const shown =
      Math.round((trueMm + biasMm + this.#random.normal(0, repeatabilityMm)) / resolutionMm) * resolutionMm;
    return Math.max(0, Math.round(shown * COUNTS_PER_MM));
  }
}
