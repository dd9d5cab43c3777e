import type { PullStart } from './pull-start.ts';
import type { RecentSamples } from './recent.ts';
import { riseTo } from './rise.ts';

/** A packet with so many times the usual readings brings those that seemed to be missing. */
const CAUGHT_UP = 1.5;
const MOST = 8;
/** It was torn up in between where the reading behind lies so many standard deviations above the rise carried on. */
const TORN_SIGMA = 4;
/** The pace in front of a hole is taken over so long: a moment's is known too badly to carry far. */
const PACE_US = 100_000;

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
 * fallen to the first reading behind; where that one lies on the way up as it came, nothing is hidden. Where it lies far above,
 * somebody tore: then it may have come as high as the fall behind leads back to, half way through.
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
    const beforeNm = recent.nm(i - 1);
    const behindNm = recent.nm(i);
    const on = riseTo(recent, i - 1, toUs, sigma) ?? { nm: beforeNm, standardNm: sigma };
    const seenNm = Math.max(beforeNm, behindNm);
    let mayBeNm = seenNm;
    if (behindNm < on.nm - sigma) {
      const atPaceNm = beforeNm + Math.max(0, this.#paceBefore(i - 1)) * (toUs - fromUs);
      mayBeNm = Math.max(seenNm, on.nm, Math.min(on.nm + on.standardNm, atPaceNm));
    } else if (behindNm > on.nm + TORN_SIGMA * Math.hypot(sigma, on.standardNm))
      mayBeNm += (Math.max(0, this.#fallsBy(i)) * (toUs - fromUs)) / 2;
    this.#holes = [...this.#holes, { fromUs, toUs, seenNm, mayBeNm }]
      .sort((a, b) => b.mayBeNm - a.mayBeNm)
      .slice(0, MOST);
  }

  /** N·m in a microsecond. */
  #paceBefore(i: number): number {
    const recent = this.#recent;
    let from = i - 1;
    while (recent.has(from - 1) && recent.timeUs(i) - recent.timeUs(from) < PACE_US) from--;
    if (!recent.has(from)) return 0;
    return (recent.nm(i) - recent.nm(from)) / Math.max(1, recent.timeUs(i) - recent.timeUs(from));
  }

  /** How fast it falls behind sample number `i`; N·m in a microsecond. */
  #fallsBy(i: number): number {
    const recent = this.#recent;
    if (!recent.has(i + 1)) return 0;
    return (recent.nm(i) - recent.nm(i + 1)) / Math.max(1, recent.timeUs(i + 1) - recent.timeUs(i));
  }
}
