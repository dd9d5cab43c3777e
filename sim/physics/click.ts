import type { Random } from '../random.ts';

/**
 * Order of magnitude after the trade reference, section 3.3, which marks them as from memory and not measured: the torque
 * falls by 5 to 50 % within 5 to 30 ms while the head tips through a few degrees. The figures below are assumptions
 * within that; they await a measurement of real wrenches.
 */
const DROP_LOWER = 0.22;
const DROP_UPPER = 0.4;
const DROP_SCATTER_SHARE = 0.06;
const FALL_MS_LOWER = 3.5;
const FALL_MS_UPPER = 7;
const UNLATCH_MS_LOWER = 2;
const UNLATCH_MS_UPPER = 3.5;
/** Free travel of the head beyond what the fall itself uses up. */
const SPARE_TRAVEL_DEG = 2.2;
/** The mechanism springs back when the torque has fallen to this share of the setting. */
const RESET_SHARE = 0.25;
/** Set torque against scale: a class A tool is allowed ±4 % (ISO 6789); repeatability is an assumption. */
const SETTING_SIGMA_SHARE = 0.012;
const REPEAT_SIGMA_SHARE = 0.004;

type Phase = 'latched' | 'letting-go' | 'tipped';

/**
 * The release of a click wrench: at the set torque the latch lets go after a moment, the head tips against friction while
 * only a lesser torque is passed on, and comes to a stop at the end of its travel, from where the torque rises again.
 */
export class Click {
  readonly #tripMeanNm: number;
  readonly #stiffness: number;
  readonly #dropMean: number;
  readonly #fallMs: number;
  readonly #unlatchMs: number;
  readonly #random: Random;
  #phase: Phase = 'latched';
  #tripNm = 0;
  #drop = 0;
  #waitedMs = 0;
  /** How far the head has tipped. */
  tipDeg = 0;

  constructor(settingNm: number, stiffness: number, random: Random) {
    this.#tripMeanNm = settingNm * (1 + random.within(0, SETTING_SIGMA_SHARE, 2.5));
    this.#stiffness = stiffness;
    this.#dropMean = random.uniform(DROP_LOWER, DROP_UPPER);
    this.#fallMs = random.uniform(FALL_MS_LOWER, FALL_MS_UPPER);
    this.#unlatchMs = random.uniform(UNLATCH_MS_LOWER, UNLATCH_MS_UPPER);
    this.#random = random.fork('clicks');
    this.#arm();
  }

  /** Advances by `ms` under the torque now passed on; true in the step in which the head goes. */
  step(torqueNm: number, ms: number): boolean {
    if (this.#phase === 'latched') {
      if (torqueNm >= this.#tripNm) {
        this.#phase = 'letting-go';
        this.#waitedMs = 0;
      }
      return false;
    }
    if (this.#phase === 'letting-go') {
      this.#waitedMs += ms;
      if (this.#waitedMs < this.#unlatchMs) return false;
      this.#phase = 'tipped';
      return true;
    }
    this.#tip(torqueNm, ms);
    return false;
  }

  #tip(torqueNm: number, ms: number): void {
    const passedNm = this.#tripNm * (1 - this.#drop);
    const resetNm = this.#tripNm * RESET_SHARE;
    const damping = this.#stiffness * this.#fallMs;
    const travelDeg = (this.#tripNm * this.#drop) / this.#stiffness + SPARE_TRAVEL_DEG;
    if (torqueNm > passedNm)
      this.tipDeg = Math.min(travelDeg, this.tipDeg + ((torqueNm - passedNm) / damping) * ms);
    else if (torqueNm < resetNm) this.tipDeg -= ((resetNm - torqueNm) / damping) * ms;
    if (this.tipDeg <= 0) this.#arm();
  }

  /** The latch is home again, at the latest when the wrench is taken off. */
  relax(): void {
    if (this.#phase !== 'latched') this.#arm();
  }

  #arm(): void {
    this.#phase = 'latched';
    this.tipDeg = 0;
    this.#tripNm = this.#tripMeanNm * (1 + this.#random.within(0, REPEAT_SIGMA_SHARE, 3));
    this.#drop = this.#dropMean * (1 + this.#random.within(0, DROP_SCATTER_SHARE, 3));
  }
}
