import type { Step } from './climb.ts';

/** A click falls by this share of its top at least: the jerk of a plug that breaks loose falls by less. Practice: 5 to 50 %. */
const FALL_SHARE = 0.1;
/** A fall from here on is kept: a wrench whose click was tried and found weak is known by it. */
const SLIGHT_SHARE = 0.04;
/** … and by this many standard deviations of a frame. */
const FALL_SIGMA = 9;
/** Most of the fall takes this long at most, where samples are close enough to tell; a hand that lets go takes longer. */
const FALL_WITHIN_US = 30_000;
const MOST_OF_FALL = 0.7;
/** A first-order filter takes so many of its time constants for most of a fall: ln(1 / (1 - 0.7)). */
const LAGS = 1.2;
const MOST_LOWS = 64;
/** Behind the fall the torque stands still or rises again for so long: nobody reacts faster. */
const HELD_US = 28_000;
/** A hand that lets go comes to rest far below this share; a head that has tipped still passes torque on. */
const KNEE_SHARE = 0.35;
/** A head that drops its torque altogether has it back within this time. */
const BACK_WITHIN_US = 80_000;
const RISE_SHARE = 0.04;
const RISE_SIGMA = 4;
const STILL_SHARE = 0.03;
const STILL_SIGMA = 3;
/** The tail of a fall still moves by this share of it. */
const TAIL_SHARE = 0.2;

/** A fall that was followed to its end. */
export interface Fall {
  readonly crest: Step;
  readonly kneeUs: number;
  readonly troughNm: number;
  /** How long most of it took. */
  readonly tookUs: number;
  /** It was a click. Otherwise it was too slow or went too far down: a hand, or nothing. */
  readonly click: boolean;
  /** As quick and held as a click, but by too little to be taken for one. */
  readonly slight: boolean;
}

/**
 * Looks for the click in the torque of one pull: a top, a fall within a moment, and a knee from which the torque stands or
 * rises again. Takes means of a few samples each (frames), so that noise of a fast tool is small beside the fall.
 */
export class ReleaseWatch {
  readonly #sigma: number;
  readonly #intervalUs: number;
  readonly #withinUs: number;
  #crest: Step | null = null;
  #onUs = 0;
  #kneeNm = 0;
  #kneeUs = 0;
  #framesSinceKnee = 0;
  #troughNm = 0;
  /** The record lows behind the crest: when each level was first reached. */
  #lows: { readonly nm: number; readonly atUs: number }[] = [];
  #over = false;
  #slight = false;

  /** `sigma` and `intervalUs` of a frame; `lagUs` of the tool's own filter, which makes every fall slower. */
  constructor(sigma: number, intervalUs: number, lagUs: number) {
    this.#sigma = sigma;
    this.#intervalUs = intervalUs;
    this.#withinUs = FALL_WITHIN_US + intervalUs + LAGS * lagUs;
  }

  /** A fall has begun that may be a click, and is not at its end. */
  get falling(): boolean {
    return this.#crest !== null && !this.#over && this.#fallen(this.#crest, FALL_SHARE);
  }

  frame(step: Step): Fall | null {
    const crest = this.#crest;
    const { nm, atUs } = step;
    if (crest === null || nm >= crest.nm) {
      this.#climbFrom(step);
      return null;
    }
    const still = Math.max(STILL_SHARE * crest.nm, STILL_SIGMA * this.#sigma);
    if (nm >= crest.nm - still) this.#onUs = atUs;
    if (nm < this.#troughNm) {
      this.#troughNm = nm;
      if (this.#lows.length < MOST_LOWS) this.#lows.push({ nm, atUs });
    }
    const tail = Math.max(still, TAIL_SHARE * (crest.nm - this.#kneeNm));
    if (nm < this.#kneeNm - tail) {
      this.#kneeNm = nm;
      this.#kneeUs = atUs;
      this.#framesSinceKnee = 0;
    } else this.#framesSinceKnee++;
    const deep = this.#troughNm < KNEE_SHARE * crest.nm;
    const back = deep ? KNEE_SHARE * crest.nm : Math.max(RISE_SHARE * crest.nm, RISE_SIGMA * this.#sigma);
    const rose = nm - this.#troughNm >= back;
    const fall = this.#over ? null : this.#fall(crest, atUs, rose);
    if (fall !== null && !fall.slight) this.#over = true;
    if (rose) this.#climbFrom(step);
    return fall;
  }

  /** A slight one is told once, and may still become more. */
  #fall(crest: Step, atUs: number, rose: boolean): Fall | null {
    if (this.#fallen(crest, FALL_SHARE)) return this.#ended(crest, atUs, rose);
    if (this.#slight || !this.#fallen(crest, SLIGHT_SHARE)) return null;
    const fall = this.#ended(crest, atUs, rose);
    if (fall === null || !fall.click) return null;
    this.#slight = true;
    return { ...fall, click: false, slight: true };
  }

  #fallen(crest: Step, share: number): boolean {
    return crest.nm - this.#troughNm >= Math.max(share * crest.nm, FALL_SIGMA * this.#sigma);
  }

  #ended(crest: Step, atUs: number, rose: boolean): Fall | null {
    // Readings that come in bunches carry nearly one stamp: then their number tells the time.
    const heldUs = Math.max(atUs - this.#kneeUs, this.#framesSinceKnee * this.#intervalUs);
    if (!rose && heldUs < HELD_US + this.#intervalUs) return null;
    const most = crest.nm - MOST_OF_FALL * (crest.nm - this.#troughNm);
    const low = this.#lows.find((one) => one.atUs >= this.#onUs && one.nm <= most);
    const tookUs = (low?.atUs ?? atUs) - this.#onUs;
    const quick = tookUs <= this.#withinUs;
    const deep = this.#troughNm < KNEE_SHARE * crest.nm;
    const returned = rose && atUs - this.#onUs <= BACK_WITHIN_US;
    const click = deep ? returned : quick;
    return { crest, kneeUs: this.#kneeUs, troughNm: this.#troughNm, tookUs, click, slight: false };
  }

  #climbFrom(step: Step): void {
    this.#crest = step;
    this.#onUs = step.atUs;
    this.#kneeNm = step.nm;
    this.#kneeUs = step.atUs;
    this.#framesSinceKnee = 0;
    this.#troughNm = step.nm;
    if (this.#lows.length > 0) this.#lows = [];
    this.#over = false;
    this.#slight = false;
  }
}
