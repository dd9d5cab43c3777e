import { Climb, type Step } from './climb.ts';
import { crestTop } from './crest.ts';
import { evened, TOP_REACH_US } from './evened.ts';
import type { PullStart } from './pull-start.ts';
import type { RecentSamples } from './recent.ts';
import { ReleaseWatch } from './release.ts';
import type { Arrivals } from './sample-clock.ts';

import type { Top } from './top.ts';

/** Samples further apart than this cannot show a click. */
export const CLICK_VISIBLE_US = 25_000;
/** A highest torque is final when nothing higher came for so long. */
const TOP_FINAL_US = 40_000;
const TOP_FINAL_FRAMES = 3;
/** A fall in front of a much higher peak was no click. */
export const CLICK_NOT_BELOW = 0.7;
/** Behind a weak click no hand goes on by more. */
const SLIGHT_NOT_BELOW = 0.9;
const MOST_CLICKS = 8;
/** What lies this far below the best top will not be a better one when it is estimated. */
const SURELY_LOWER = 0.95;
const NEVER_SIGMA = 5;
const CLIMB_STEPS_PER_START = 8;

export interface PlacedTop {
  readonly top: Top;
  readonly step: Step;
}

export interface Click extends PlacedTop {
  readonly troughNm: number;
  readonly tookUs: number;
}

/**
 * The tops of a pull. A click is estimated at once; any other top as late as its samples allow, because most are passed by
 * what comes behind them, and then nobody asks for them.
 */
export class Tops {
  readonly climb: Climb;
  readonly #recent: RecentSamples;
  readonly #watch: ReleaseWatch;
  readonly #noiseNm: number;
  readonly #arrivals: Arrivals;
  /** Samples too far apart to show a click still show that the torque fell. */
  readonly #allFalls: boolean;
  #high: Step | null = null;
  #framesSinceHigh = 0;
  #highIsFinal = true;
  /** A top that is not estimated yet. */
  #waiting: Step | null = null;
  #best: PlacedTop | null = null;
  #clicks: Click[] = [];
  #slightFall: { readonly nm: number; readonly dropShare: number } | null = null;
  #slowFall: { readonly nm: number; readonly tookUs: number } | null = null;

  constructor(recent: RecentSamples, started: PullStart, lagUs: number) {
    const { startNm, noiseNm, frameSigma, frameSamples, arrivals } = started;
    const { intervalUs } = arrivals;
    this.#arrivals = arrivals;
    this.climb = new Climb(startNm / CLIMB_STEPS_PER_START);
    this.#recent = recent;
    this.#watch = new ReleaseWatch(frameSigma, frameSamples * intervalUs, lagUs);
    this.#noiseNm = noiseNm;
    this.#allFalls = intervalUs > CLICK_VISIBLE_US;
  }

  frame(step: Step): void {
    if (this.#waiting !== null && !this.#recent.remembers(this.#waiting.atUs - TOP_REACH_US)) this.#look();
    this.#climbTo(step);
    const fall = this.#watch.frame(step);
    if (fall === null) return;
    if (fall.slight) {
      this.#slightFall = { nm: fall.crest.nm, dropShare: 1 - fall.troughNm / fall.crest.nm };
      return;
    }
    if (!fall.click && fall.troughNm > 0) this.#slowFall = { nm: fall.crest.nm, tookUs: fall.tookUs };
    if (!(fall.click || this.#allFalls)) return;
    const { crest, troughNm, tookUs } = fall;
    const top = this.#topAt(crest.atUs, fall.click);
    this.#candidate({ top, step: crest });
    // From here on the next top is looked for: it may lie hardly higher, within the noise of the frames.
    this.#high = null;
    this.#highIsFinal = true;
    if (fall.click) this.#clicked({ top, step: crest, troughNm, tookUs });
  }

  /** The highest top; null when none was ever looked at. */
  highest(): PlacedTop | null {
    if (!this.#highIsFinal) this.#settleHigh();
    this.#look();
    return this.#best;
  }

  /** The first click that no much higher peak came behind. */
  clickBelow(peakNm: number): Click | null {
    return this.#clicks.find(({ top }) => top.nm >= CLICK_NOT_BELOW * peakNm) ?? null;
  }

  /** How long the last fall took from near the peak that was too slow for a click; null where there was none. */
  slowFallBelow(peakNm: number): number | null {
    const fall = this.#slowFall;
    return fall !== null && fall.nm >= CLICK_NOT_BELOW * peakNm ? fall.tookUs : null;
  }

  /** The last fall near the peak that was like a click, but slight; null where there was none. */
  slightFallBelow(peakNm: number): { readonly nm: number; readonly dropShare: number } | null {
    const fall = this.#slightFall;
    return fall !== null && fall.nm >= SLIGHT_NOT_BELOW * peakNm ? fall : null;
  }

  #climbTo(step: Step): void {
    if (this.#high === null || step.nm > this.#high.nm) {
      this.#high = step;
      this.#framesSinceHigh = 0;
      this.#highIsFinal = false;
      this.climb.add(step);
      return;
    }
    this.#framesSinceHigh++;
    if (this.#highIsFinal || this.#framesSinceHigh < TOP_FINAL_FRAMES) return;
    if (step.atUs - this.#high.atUs >= TOP_FINAL_US && !this.#watch.falling) this.#settleHigh();
  }

  #settleHigh(): void {
    this.#look();
    this.#highIsFinal = true;
    this.#waiting = this.#high;
  }

  /** Estimates the top that waits, unless the torque has surely been higher. */
  #look(): void {
    const step = this.#waiting;
    if (step === null) return;
    this.#waiting = null;
    const mostNm = step.nm + NEVER_SIGMA * this.#noiseNm;
    const reachedNm = Math.max(this.#best?.top.nm ?? 0, this.#high?.nm ?? 0);
    if (mostNm >= SURELY_LOWER * reachedNm) this.#candidate({ top: this.#topAt(step.atUs, false), step });
  }

  #topAt(us: number, click: boolean): Top {
    const at = this.#recent.nearest(us);
    return crestTop(evened(this.#recent, at, this.#arrivals), at, this.#noiseNm, click);
  }

  #candidate(top: PlacedTop): void {
    if (this.#best === null || top.top.nm > this.#best.top.nm) this.#best = top;
  }

  #clicked(click: Click): void {
    const highest = this.#best?.top.nm ?? 0;
    this.#clicks = this.#clicks.filter(({ top }) => top.nm >= CLICK_NOT_BELOW * highest);
    if (this.#clicks.length < MOST_CLICKS) this.#clicks.push(click);
  }
}
