import type { PullStart } from './pull-start.ts';
import type { RecentSamples } from './recent.ts';
import { riseTo } from './rise.ts';

/** A packet with so many times the usual readings brings those that seemed to be missing. */
const CAUGHT_UP = 1.5;
const MOST = 8;
/** It fell where the reading behind lies so many standard deviations below the rise carried on. */
const FELL_SIGMA = 1;

/** A stretch without readings, in which the torque may have gone higher than it was before and behind it. */
export interface Hole {
  readonly fromUs: number;
  readonly toUs: number;
  /** The higher one of the readings on either side, and how high the torque may have come in between. */
  readonly seenNm: number;
  readonly mayBeNm: number;
}

/**
 * Where readings are missing. What a hole may hide is bounded: unseen, the torque may have gone on at its pace and have
 * fallen to the first reading behind; where that one lies on the way up as it came, nothing is hidden.
 */
export class Holes {
  readonly #recent: RecentSamples;
  readonly #started: PullStart;
  readonly #packet: number;
  /** The first sample behind a hole, until its packet is complete. */
  #open: number | null = null;
  #holes: Hole[] = [];

  constructor(recent: RecentSamples, started: PullStart) {
    const { intervalUs, packetUs } = started.arrivals;
    this.#recent = recent;
    this.#started = started;
    this.#packet = intervalUs > 0 ? Math.max(1, packetUs / intervalUs) : 1;
  }

  /** Readings are missing in front of sample number `i`. */
  add(i: number): void {
    this.#open = i;
  }

  /** With sample number `i` a packet begins. */
  packet(i: number): void {
    const open = this.#open;
    if (open === null || i === open) return;
    this.#open = null;
    if (i - open < CAUGHT_UP * this.#packet || this.#packet < CAUGHT_UP) this.#look(open);
  }

  /** The holes that may hide the most, highest first. */
  all(): readonly Hole[] {
    if (this.#open !== null) this.#look(this.#open);
    this.#open = null;
    return this.#holes;
  }

  #look(i: number): void {
    const recent = this.#recent;
    if (!recent.has(i - 1)) return;
    const sigma = this.#started.noiseNm;
    const fromUs = recent.timeUs(i - 1);
    const toUs = recent.timeUs(i);
    const on = riseTo(recent, i - 1, toUs, sigma);
    const onNm = on?.nm ?? recent.nm(i - 1);
    const seenNm = Math.max(recent.nm(i - 1), recent.nm(i));
    const fell = onNm - recent.nm(i) > FELL_SIGMA * Math.hypot(sigma, on?.standardNm ?? sigma);
    const mayBeNm = fell ? Math.max(seenNm, onNm) : seenNm;
    this.#holes = [...this.#holes, { fromUs, toUs, seenNm, mayBeNm }]
      .sort((a, b) => b.mayBeNm - a.mayBeNm)
      .slice(0, MOST);
  }
}
