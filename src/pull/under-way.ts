import { clickTop } from './click-top.ts';
import { Climb, type Step } from './climb.ts';
import type { FoundPull, Rise, Turn } from './pull.ts';
import { RecentSamples } from './recent.ts';
import { ReleaseWatch } from './release.ts';
import type { Rest } from './rest.ts';
import type { DetectorSettings } from './settings.ts';
import { smoothTop } from './smooth-top.ts';
import type { Top } from './top.ts';

/** Samples closer together than this are averaged into frames before a click is looked for in them. */
const FRAME_US = 4_000;
/** It ends once the torque has stayed below this share of the start for so long: noise cannot split a pull. */
const END_SHARE = 0.5;
const REST_US = 120_000;
/** A highest torque is final when nothing higher came for so long. */
const TOP_FINAL_US = 40_000;
const TOP_FINAL_FRAMES = 3;
/** Samples further apart than this cannot show a click; and a gap as long as this may hide one. */
const CLICK_VISIBLE_US = 25_000;
const CLICK_HIDDEN_US = 40_000;
/** A fall in front of a much higher peak was no click. */
const CLICK_NOT_BELOW = 0.7;
const MOST_CLICKS = 8;
/** A low torque that stands as still as this for so long is nobody pulling: the zero has moved. */
const STANDS_US = 2_000_000;
const STANDS_BELOW_STARTS = 3;
const STANDS_WITHIN_START = 0.25;
/** The clock that stands in for bunched stamps takes up their lateness within about this time, and gives up beyond the other. */
const FOLLOW_US = 200_000;
const LATE_US = 200_000;
/** The highest of many readings lies above the torque by so many standard deviations at most. */
const HIGHEST_SIGMA = 4.5;
/** Noise alone falls back by so many standard deviations of a frame. */
const SETBACK_SIGMA = 5;
const CLIMB_STEPS_PER_START = 8;
/** So many equal readings at the top of a noisy tool are the end of its scale. */
const CLIPPED_SAMPLES = 8;
const CLIPPED_NOISE_STEPS = 1.5;

interface PlacedTop {
  readonly top: Top;
  readonly step: Step;
}

interface Click extends PlacedTop {
  readonly troughNm: number;
}

/**
 * A pull that has begun, in bounded memory. Torque counts upwards in the direction of the pull, times from its start in
 * microseconds, so that neither the zero nor the clock's origin has any influence on what is found.
 */
export class PullUnderWay {
  readonly #settings: DetectorSettings;
  readonly #recent = new RecentSamples();
  readonly #climb = new Climb();
  readonly #watch = new ReleaseWatch();
  #sign: 1 | -1 = 1;
  #zeroNm = 0;
  #zeroSettled = false;
  #zeroStandardNm = 0;
  #noiseNm = 0;
  #knownIntervalUs = 0;
  #startNm = 0;
  #startUs = 0;
  #sinceLastMs: number | null = null;
  #samples = 0;
  #bunched = false;
  #stampUs = 0;
  #lastUs = 0;
  #lastNm = 0;
  #longestGapUs = 0;
  #blindUs = 0;
  #highestNm = 0;
  #equalAtTop = 0;
  #mostEqualAtTop = 0;
  #angleDeg = Number.NaN;
  #turnedDeg = 0;
  #impulseNms = 0;
  #workJ = 0;
  #frameSamples = 1;
  #frameCount = 0;
  #frameNm = 0;
  #frameUs = 0;
  #highFrame: Step | null = null;
  #framesSinceHigh = 0;
  #recordNm = 0;
  #lowSinceRecordNm = 0;
  #setbackNm = 0;
  #highIsFinal = true;
  #best: PlacedTop | null = null;
  #clicks: Click[] = [];
  #lowSinceUs: number | null = null;
  #standsNm = 0;
  #standsSinceUs = 0;
  #standsSum = 0;
  #standsCount = 0;

  constructor(settings: DetectorSettings) {
    this.#settings = settings;
  }

  begin(atUs: number, nm: number, angleDeg: number, rest: Rest, lastEndUs: number | null): void {
    this.#zeroNm = rest.zeroNm;
    this.#zeroSettled = rest.settled;
    this.#zeroStandardNm = rest.zeroStandardNm;
    this.#noiseNm = rest.noiseNm;
    this.#knownIntervalUs = rest.intervalUs;
    this.#startNm = rest.startNm;
    this.#sign = nm - this.#zeroNm < 0 ? -1 : 1;
    this.#startUs = atUs;
    this.#sinceLastMs = lastEndUs === null ? null : (atUs - lastEndUs) / 1000;
    this.#samples = 0;
    this.#bunched = rest.bunched;
    this.#stampUs = atUs;
    this.#lastUs = 0;
    this.#lastNm = this.#sign * (nm - this.#zeroNm);
    this.#longestGapUs = 0;
    this.#blindUs = 0;
    this.#highestNm = Number.NEGATIVE_INFINITY;
    this.#equalAtTop = 0;
    this.#mostEqualAtTop = 0;
    this.#angleDeg = this.#sign * angleDeg;
    this.#turnedDeg = 0;
    this.#impulseNms = 0;
    this.#workJ = 0;
    this.#frameSamples = rest.intervalUs > 0 ? Math.max(1, Math.round(FRAME_US / rest.intervalUs)) : 1;
    this.#frameCount = 0;
    this.#frameNm = 0;
    this.#frameUs = 0;
    this.#highFrame = null;
    this.#highIsFinal = true;
    this.#recordNm = 0;
    this.#lowSinceRecordNm = 0;
    this.#setbackNm = 0;
    this.#best = null;
    this.#clicks = [];
    this.#lowSinceUs = null;
    this.#stands(this.#lastNm, 0);
    this.#recent.clear();
    this.#climb.clear(this.#startNm / CLIMB_STEPS_PER_START);
    this.#watch.clear(this.#frameSigma, this.#frameSamples * rest.intervalUs);
    this.add(atUs, nm, angleDeg);
  }

  /** The highest torque so far, with its sign. */
  get peakNm(): number {
    return this.#sign * this.#highestNm;
  }

  get lastUs(): number {
    return this.#stampUs;
  }

  get zeroNm(): number {
    return this.#zeroNm;
  }

  /** Whether a reading pulls the other way: then this pull is over. */
  turns(rawNm: number): boolean {
    return this.#sign * (rawNm - this.#zeroNm) <= -this.#startNm;
  }

  /** Takes the next sample; `angleDeg` is NaN where there is none. */
  add(atUs: number, rawNm: number, angleDeg: number): void {
    const nm = this.#sign * (rawNm - this.#zeroNm);
    const us = this.#timeOf(atUs - this.#startUs);
    const stepUs = us - this.#lastUs;
    this.#samples++;
    this.#recent.add(us, nm);
    this.#longestGapUs = Math.max(this.#longestGapUs, atUs - this.#stampUs);
    this.#stampUs = atUs;
    if (stepUs > this.#blindUs && Math.max(nm, this.#lastNm) >= 0.5 * this.#highestNm) this.#blindUs = stepUs;
    const meanNm = 0.5 * (nm + this.#lastNm);
    this.#impulseNms += (meanNm * stepUs) / 1e6;
    const angle = this.#sign * angleDeg;
    const turned = angle - this.#angleDeg;
    this.#turnedDeg += turned;
    this.#workJ += (meanNm * turned * Math.PI) / 180;
    this.#angleDeg = angle;
    this.#top(nm);
    this.#lastUs = us;
    this.#lastNm = nm;
    this.#frameNm += nm;
    this.#frameUs += us;
    if (++this.#frameCount >= this.#frameSamples) this.#closeFrame();
  }

  /** When the torque went to rest, once it has stayed there long enough. */
  get restedUs(): number | null {
    if (this.#lowSinceUs === null || this.#lastUs - this.#lowSinceUs < REST_US) return null;
    return this.#startUs + Math.round(this.#lowSinceUs);
  }

  /** The level, as read, at which a low torque has stood still too long to be a hand; null while none does. */
  get stoodAt(): {
    readonly nm: number;
    readonly count: number;
    readonly sinceUs: number;
    readonly pulled: boolean;
  } | null {
    if (this.#lastUs - this.#standsSinceUs < STANDS_US || this.#standsCount < 4) return null;
    const nm = this.#standsSum / this.#standsCount;
    if (nm >= STANDS_BELOW_STARTS * this.#startNm) return null;
    return {
      nm: this.#zeroNm + this.#sign * nm,
      count: this.#standsCount,
      sinceUs: this.#startUs + Math.round(this.#standsSinceUs),
      pulled: this.#highestNm > nm + this.#startNm,
    };
  }

  /** The pull as found; null when it only seemed to reach the start, by noise on top of a knock. */
  finish(endUs: number, cut: FoundPull['cut']): FoundPull | null {
    if (this.#frameCount > 0) this.#closeFrame();
    if (!this.#highIsFinal) this.#settleHigh();
    const saturated = this.#saturated();
    const best = this.#best ?? { top: this.#highest(), step: this.#step(this.#lastUs, this.#lastNm) };
    const peak = saturated ? { ...this.#highest(), atUs: best.top.atUs } : this.#atLeast(best.top);
    if (peak.nm < this.#startNm) return null;
    const intervalUs = this.#knownIntervalUs || this.#lastUs / Math.max(1, this.#samples - 1);
    const click = this.#clicks.find(({ top }) => top.nm >= CLICK_NOT_BELOW * peak.nm) ?? null;
    const visible = intervalUs <= CLICK_VISIBLE_US && (click !== null || this.#blindUs <= CLICK_HIDDEN_US);
    const release = visible ? click : null;
    const first = release ?? { top: peak, step: best.step };
    const rise = this.#rise(first);
    return {
      startUs: this.#startUs,
      endUs,
      peakNm: this.#sign * peak.nm,
      peakUs: this.#startUs + Math.max(0, Math.round(peak.atUs)),
      peakStandardNm: Math.hypot(peak.standardNm, this.#zeroStandardNm),
      highestNm: this.#sign * this.#highestNm,
      release: visible ? (release === null ? 'none' : 'seen') : 'not-visible',
      releaseNm: release === null ? null : this.#sign * release.top.nm,
      releaseUs: release === null ? null : this.#startUs + Math.max(0, Math.round(release.top.atUs)),
      dropShare: release === null ? null : 1 - release.troughNm / release.top.nm,
      riseMs: (rise.reachedMs[7] ?? 0) - (rise.reachedMs[1] ?? 0),
      rise,
      turn: this.#turn(first, best.step),
      sinceLastMs: this.#sinceLastMs,
      zeroNm: this.#zeroNm,
      zeroSettled: this.#zeroSettled,
      noiseNm: this.#noiseNm,
      samples: this.#samples,
      intervalUs,
      longestGapUs: this.#longestGapUs,
      saturated,
      stream: 'samples',
      cut,
    };
  }

  get #frameSigma(): number {
    return this.#noiseNm / Math.sqrt(this.#frameSamples);
  }

  #top(nm: number): void {
    if (nm > this.#highestNm) {
      this.#highestNm = nm;
      this.#equalAtTop = 1;
      this.#mostEqualAtTop = 1;
    } else if (nm === this.#highestNm) {
      this.#equalAtTop++;
      if (this.#equalAtTop > this.#mostEqualAtTop) this.#mostEqualAtTop = this.#equalAtTop;
    } else this.#equalAtTop = 0;
  }

  #saturated(): boolean {
    const { capacityNm, stepNm } = this.#settings;
    const read = Math.abs(this.#zeroNm + this.#sign * this.#highestNm);
    if (capacityNm !== null && Math.abs(read - capacityNm) <= stepNm) return true;
    return (
      stepNm > 0 && this.#noiseNm >= CLIPPED_NOISE_STEPS * stepNm && this.#mostEqualAtTop >= CLIPPED_SAMPLES
    );
  }

  #closeFrame(): void {
    const nm = this.#frameNm / this.#frameCount;
    const us = this.#frameUs / this.#frameCount;
    this.#frameNm = this.#frameUs = this.#frameCount = 0;
    this.#setback(nm);
    const step = this.#step(us, nm);
    this.#climbTo(step);
    this.#rest(us, nm);
    const fall = this.#watch.frame(step);
    if (fall !== null && (fall.click || this.#knownIntervalUs > CLICK_VISIBLE_US)) {
      const { crest, kneeUs, troughNm } = fall;
      const top = clickTop(this.#recent, crest, kneeUs, troughNm, this.#noiseNm);
      this.#candidate({ top, step: crest });
      // From here on the next top is looked for: it may lie hardly higher, within the noise of the frames.
      this.#highFrame = null;
      this.#highIsFinal = true;
      if (fall.click) this.#clicked({ top, step: crest, troughNm });
    }
  }

  /** How far the torque has fallen back on its way up, seen when it comes higher again. */
  #setback(nm: number): void {
    if (nm <= this.#recordNm) {
      this.#lowSinceRecordNm = Math.min(this.#lowSinceRecordNm, nm);
      return;
    }
    const backNm = this.#recordNm - this.#lowSinceRecordNm - SETBACK_SIGMA * this.#frameSigma;
    this.#setbackNm = Math.max(this.#setbackNm, backNm);
    this.#recordNm = nm;
    this.#lowSinceRecordNm = nm;
  }

  #step(atUs: number, nm: number): Step {
    return {
      nm,
      atUs,
      angleDeg: this.#turnedDeg,
      impulseNms: this.#impulseNms,
      workJ: this.#workJ,
      setbackNm: this.#setbackNm,
    };
  }

  /** When the sample was taken: as stamped, or where stamps come in bunches by a clock that follows them slowly. */
  #timeOf(stampedUs: number): number {
    if (!this.#bunched || this.#samples === 0) return stampedUs;
    const dueUs = this.#lastUs + this.#knownIntervalUs;
    const lateUs = stampedUs - dueUs;
    return Math.abs(lateUs) > LATE_US
      ? Math.max(stampedUs, this.#lastUs)
      : Math.max(this.#lastUs, dueUs + (this.#knownIntervalUs / FOLLOW_US) * lateUs);
  }

  #climbTo(step: Step): void {
    if (this.#highFrame === null || step.nm > this.#highFrame.nm) {
      this.#highFrame = step;
      this.#framesSinceHigh = 0;
      this.#highIsFinal = false;
      this.#climb.add(step);
      return;
    }
    this.#framesSinceHigh++;
    const late =
      step.atUs - this.#highFrame.atUs >= TOP_FINAL_US && this.#framesSinceHigh >= TOP_FINAL_FRAMES;
    if (late && !this.#highIsFinal && !this.#watch.falling) this.#settleHigh();
  }

  #settleHigh(): void {
    this.#highIsFinal = true;
    const step = this.#highFrame;
    if (step !== null) this.#candidate({ top: smoothTop(this.#recent, step.atUs, this.#noiseNm), step });
  }

  #candidate(found: PlacedTop): void {
    if (this.#best === null || found.top.nm > this.#best.top.nm) this.#best = found;
  }

  #clicked(click: Click): void {
    const highest = this.#best?.top.nm ?? 0;
    this.#clicks = this.#clicks.filter(({ top }) => top.nm >= CLICK_NOT_BELOW * highest);
    if (this.#clicks.length < MOST_CLICKS) this.#clicks.push(click);
  }

  #rest(us: number, nm: number): void {
    if (nm >= END_SHARE * this.#startNm) this.#lowSinceUs = null;
    else this.#lowSinceUs ??= us;
    const within = Math.max(STANDS_WITHIN_START * this.#startNm, 4 * this.#frameSigma);
    if (Math.abs(nm - this.#standsNm) > within) this.#stands(nm, us);
    this.#standsSum += nm;
    this.#standsCount++;
  }

  #stands(nm: number, us: number): void {
    this.#standsNm = nm;
    this.#standsSinceUs = us;
    this.#standsSum = 0;
    this.#standsCount = 0;
  }

  /** No fit lies far below what was read. */
  #atLeast(top: Top): Top {
    const leastNm = this.#highestNm - HIGHEST_SIGMA * this.#noiseNm;
    if (top.nm >= leastNm) return top;
    return { ...top, nm: leastNm, standardNm: Math.hypot(top.standardNm, (leastNm - top.nm) / 2) };
  }

  #highest(): Top {
    return { nm: this.#highestNm, atUs: this.#lastUs, standardNm: this.#noiseNm };
  }

  #rise({ top, step }: PlacedTop): Rise {
    const end = { ...step, nm: top.nm, atUs: Math.max(step.atUs, top.atUs) };
    let before = 0;
    const reachedMs = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((tenth) => {
      before = Math.max(before, this.#climb.reached((tenth / 10) * top.nm, end).atUs / 1000);
      return before;
    });
    const lastMs = Math.max(top.atUs / 1000 - (reachedMs[7] ?? 0), 0);
    return {
      reachedMs,
      slopeAtTopNmPerS: lastMs > 0 ? (0.2 * Math.max(0, top.nm) * 1000) / lastMs : 0,
      impulseNms: step.impulseNms,
      setbackNm: step.setbackNm,
    };
  }

  #turn(first: PlacedTop, peak: Step): Turn | null {
    if (!Number.isFinite(this.#turnedDeg)) return null;
    const from = (share: number) =>
      peak.angleDeg - this.#climb.reached(share * first.top.nm, first.step).angleDeg;
    return {
      startToPeakDeg: peak.angleDeg,
      from10PercentDeg: from(0.1),
      from50PercentDeg: from(0.5),
      workJ: peak.workJ,
    };
  }
}
