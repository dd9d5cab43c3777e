import type { Random } from '../random.ts';

export interface SensorSpec {
  readonly capacityNm: number;
  /** Reported over true torque. */
  readonly gain: number;
  readonly offsetNm: number;
  readonly noiseNm: number;
}

/** One count is 0.01 N·m, the step of the Bluetooth torque characteristic. */
export const NM_PER_COUNT = 0.01;
const FULL_SCALE_SHARE = 1.2;

/** Strain gauges and converter of the wrench: gain, offset, noise, end of scale, step. */
export class TorqueSensor {
  readonly #spec: SensorSpec;
  readonly #random: Random;

  constructor(spec: SensorSpec, random: Random) {
    this.#spec = spec;
    this.#random = random;
  }

  /** What the wrench reports of a true torque, in counts of 0.01 N·m. */
  sample(trueNm: number): number {
    const { capacityNm, gain, offsetNm, noiseNm } = this.#spec;
    const end = Math.round((capacityNm * FULL_SCALE_SHARE) / NM_PER_COUNT);
    const counts = Math.round((trueNm * gain + offsetNm + this.#random.normal(0, noiseNm)) / NM_PER_COUNT);
    return Math.max(-end, Math.min(end, counts)) + 0;
  }
}
