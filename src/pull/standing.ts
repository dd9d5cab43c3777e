import type { PullStart } from './pull-start.ts';

/** A pull is over once the torque has stayed below this share of the start for so long: noise cannot split a pull. */
const END_SHARE = 0.5;
const REST_US = 120_000;
/** A low torque that stands as still as this for so long is nobody pulling: the zero has moved. Behind a pull it takes less. */
const STANDS_US = 2_000_000;
const STANDS_BEHIND_US = 1_000_000;
const STANDS_BELOW_STARTS = 3;
const WITHIN_START = 0.25;
const WITHIN_SIGMA = 4;
/** Nobody pulls who holds so still for so long from the beginning. Assumption. */
const HELD_US = 200_000;

/** Where the torque of a pull stands still, and since when it is low: what tells its end. */
export class Standing {
  /** What noise and a hand that rests may move a level by. */
  readonly withinNm: number;
  readonly #startNm: number;
  readonly #highNm: number;
  readonly #endNm: number;
  #nm: number;
  #mostNm: number;
  #sinceUs = 0;
  #sum = 0;
  #count = 0;
  #lowSinceUs = Number.POSITIVE_INFINITY;
  #moved = false;

  constructor({ startNm, frameSigma }: Pick<PullStart, 'startNm' | 'frameSigma'>, nm: number) {
    this.withinNm = Math.max(WITHIN_START * startNm, WITHIN_SIGMA * frameSigma);
    this.#startNm = startNm;
    this.#mostNm = nm;
    this.#highNm = STANDS_BELOW_STARTS * startNm;
    this.#endNm = END_SHARE * startNm;
    this.#nm = nm;
  }

  add(us: number, nm: number): void {
    if (nm >= this.#endNm) this.#lowSinceUs = Number.POSITIVE_INFINITY;
    else if (us < this.#lowSinceUs) this.#lowSinceUs = us;
    if (nm > this.#mostNm) this.#mostNm = nm;
    const off = nm - this.#nm;
    if (off > this.withinNm || off < -this.withinNm) this.#move(us, nm);
    this.#sum += nm;
    this.#count++;
  }

  /** From this time on there may be an end. */
  get endsUs(): number {
    const restsUs = this.#lowSinceUs + REST_US;
    const high = this.#nm - this.withinNm >= this.#highNm;
    const standsUs = high ? Number.POSITIVE_INFINITY : this.#sinceUs + this.#standsUs;
    return Math.min(restsUs, standsUs);
  }

  /** Since when the torque has been low, once that is long enough to be rest. */
  restedUs(us: number): number | null {
    return us - this.#lowSinceUs >= REST_US ? this.#lowSinceUs : null;
  }

  /** Since when the torque is low, if `nm` at `us` was the last that came; null where that is not low. */
  lowSinceUs(us: number, nm: number): number | null {
    return nm >= this.#endNm ? null : Math.min(this.#lowSinceUs, us);
  }

  /** The level at which a low torque has stood still too long to be a hand; null while none does. */
  stoodAt(us: number): {
    readonly nm: number;
    readonly count: number;
    readonly sinceUs: number;
    /** Somebody had pulled before. */
    readonly pulled: boolean;
  } | null {
    if (us - this.#sinceUs < this.#standsUs || this.#count < 4 || this.nowNm >= this.#highNm) return null;
    return { nm: this.nowNm, count: this.#count, sinceUs: this.#sinceUs, pulled: this.#pulled };
  }

  get nowNm(): number {
    return this.#count > 0 ? this.#sum / this.#count : this.#nm;
  }

  /** It has stood in one place from the beginning, and for a while. */
  neverMoved(us: number): boolean {
    return !this.#moved && us >= HELD_US;
  }

  get #pulled(): boolean {
    return this.#mostNm > this.#nm + this.withinNm + this.#startNm;
  }

  get #standsUs(): number {
    return this.#pulled ? STANDS_BEHIND_US : STANDS_US;
  }

  #move(us: number, nm: number): void {
    this.#moved = true;
    this.#nm = nm;
    this.#sinceUs = us;
    this.#sum = 0;
    this.#count = 0;
  }
}
