import type { Random } from '../random.ts';
import type { PullStyle } from './style.ts';

/** Time in which an arm takes up a new speed, and in which it brakes. From memory: muscle activation is 30 to 60 ms. */
const TAKE_UP_MS = 50;
const BRAKE_MS = 15;
/** Speed when feeling for the click: 80 to 100 % of a calibration pull takes 0.5 to 4 s on a soft joint. */
const EASED_DEG_PER_S = 22;
/** Unsteadiness of the speed, and how long it lasts. Assumption. */
const TREMOR_SHARE = 0.08;
const TREMOR_MS = 60;
const TREMOR_EVERY_STEPS = 10;
/** Backs off a little farther than the wrench has sprung, so that the ratchet is free. */
const FREE_DEG = 2;
/** Gives up: nobody stands on a wrench for longer. */
const LONGEST_MS = 12_000;

/** What the hand feels of the wrench. */
export interface Feel {
  readonly torqueNm: number;
  readonly released: boolean;
}

type Phase = 'pulling' | 'stopping' | 'holding' | 'letting-off' | 'off';

/**
 * The end of the handle, moved by an arm: speed rises smoothly, falls with the square of the load against what the arm
 * gives, and is turned back after the click, after a stop by feel, or when there is no more room.
 */
export class Hand {
  readonly #style: PullStyle;
  readonly #settingNm: number;
  readonly #strongestNm: number;
  readonly #random: Random;
  #phase: Phase = 'pulling';
  #travelDeg = 0;
  #speed = 0;
  #tremor = 1;
  #steps = 0;
  #elapsedMs = 0;
  #sinceClickMs = 0;
  #followedDeg = 0;
  #heldMs = 0;
  #backDeg = 0;
  #ranOutOfRoom = false;

  constructor(style: PullStyle, settingNm: number, strongestNm: number, random: Random) {
    this.#style = style;
    this.#settingNm = settingNm;
    this.#strongestNm = strongestNm;
    this.#random = random;
  }

  get travelDeg(): number {
    return this.#travelDeg;
  }

  get off(): boolean {
    return this.#phase === 'off';
  }

  /** True when the stroke ended for want of room and not because the hand had what it wanted. */
  get ranOutOfRoom(): boolean {
    return this.#ranOutOfRoom;
  }

  step(feel: Feel, ms: number): void {
    this.#elapsedMs += ms;
    if (feel.released) this.#sinceClickMs += ms;
    this.#shake(ms);
    this.#think(feel, ms);
    const target = this.#wantedSpeed(feel) * this.#tremor;
    const lag = this.#phase === 'stopping' || this.#phase === 'holding' ? BRAKE_MS : TAKE_UP_MS;
    this.#speed += ((target - this.#speed) * ms) / lag;
    const way = (this.#speed * this.#yielding(feel) * ms) / 1000;
    this.#travelDeg += way;
    if (feel.released && this.#sinceClickMs > this.#style.reactionMs) this.#followedDeg += way;
    if (this.#phase === 'letting-off' && feel.torqueNm <= 0) this.#backDeg -= way;
  }

  #think({ torqueNm, released }: Feel, ms: number): void {
    const style = this.#style;
    if (this.#phase === 'pulling') {
      this.#ranOutOfRoom = this.#travelDeg >= style.strokeDeg;
      if (this.#ranOutOfRoom || this.#wantsToStop(torqueNm, released)) this.#phase = 'stopping';
    } else if (this.#phase === 'stopping') {
      if (this.#speed < 0.05 * style.speedDegPerS) this.#phase = 'holding';
    } else if (this.#phase === 'holding') {
      this.#heldMs += ms;
      if (this.#heldMs >= style.holdMs) this.#phase = 'letting-off';
    } else if (this.#backDeg >= FREE_DEG) this.#phase = 'off';
  }

  #wantsToStop(torqueNm: number, released: boolean): boolean {
    const { stopAtShare, leanToShare, reactionMs, followThroughDeg } = this.#style;
    if (this.#elapsedMs >= LONGEST_MS) return true;
    if (stopAtShare !== null && torqueNm >= stopAtShare * this.#settingNm) return true;
    if (!released) return false;
    if (leanToShare !== null) return torqueNm >= leanToShare * this.#settingNm;
    const pushedOut = torqueNm >= 0.97 * this.#effortNm(true);
    return this.#sinceClickMs >= reactionMs && (this.#followedDeg >= followThroughDeg || pushedOut);
  }

  #wantedSpeed({ torqueNm, released }: Feel): number {
    const { speedDegPerS, easeFromShare, letOffDegPerS } = this.#style;
    if (this.#phase === 'pulling') {
      const eased = !released && easeFromShare !== null && torqueNm >= easeFromShare * this.#settingNm;
      return eased ? Math.min(EASED_DEG_PER_S, speedDegPerS) : speedDegPerS;
    }
    return this.#phase === 'letting-off' ? -letOffDegPerS : 0;
  }

  /** The load slows the arm down; it does not slow its going back. */
  #yielding({ torqueNm, released }: Feel): number {
    if (this.#speed <= 0) return 1;
    const load = torqueNm / this.#effortNm(released);
    return Math.max(0, 1 - load * load);
  }

  #effortNm(released: boolean): number {
    const { stopAtShare, leanToShare, effortAfterShare } = this.#style;
    if (stopAtShare !== null) return 1.15 * stopAtShare * this.#settingNm;
    if (!released) return this.#strongestNm;
    return (leanToShare === null ? effortAfterShare : 1.1 * leanToShare) * this.#settingNm;
  }

  #shake(ms: number): void {
    if (this.#steps++ % TREMOR_EVERY_STEPS !== 0) return;
    const share = Math.min(1, (ms * TREMOR_EVERY_STEPS) / TREMOR_MS);
    const kick = TREMOR_SHARE * Math.sqrt(2 * share) * this.#random.within(0, 1, 3);
    this.#tremor += share * (1 - this.#tremor) + kick;
  }
}
