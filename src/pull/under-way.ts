import type { Step } from './climb.ts';
import { detectedPull, type Ending } from './detected.ts';
import { Highest } from './highest.ts';
import { Holes } from './holes.ts';
import type { DetectedPull } from './pull.ts';
import type { PullStart } from './pull-start.ts';
import type { RecentSamples } from './recent.ts';
import { holeUs, whenTaken } from './sample-clock.ts';
import type { DetectorSettings } from './settings.ts';
import { Standing } from './standing.ts';
import { Tops } from './tops.ts';
import { type At, Turning } from './turning.ts';

/** Samples further apart than this within a pull leave open what happened between them. */
export const HOLE_US = 400_000;
/** Noise alone falls back by so many standard deviations of a frame. */
const SETBACK_SIGMA = 5;

/**
 * A pull that has begun, in bounded memory. Torque counts upwards in the direction of the pull, times from its start in
 * microseconds, so that neither the zero nor the clock's origin has any influence on what is found.
 */
export class PullUnderWay {
  readonly #settings: DetectorSettings;
  readonly #begun: PullStart;
  readonly #recent: RecentSamples;
  readonly #tops: Tops;
  readonly #highest = new Highest();
  readonly #standing: Standing;
  readonly #turning: Turning;
  #samples = 0;
  #stampUs: number;
  #lastUs = 0;
  #lastNm: number;
  #longestGapUs = 0;
  #lost = 0;
  #ticks = -1;
  readonly #holes: Holes;
  /** Twice ∫ torque dt, in N·m·µs. */
  #impulse = 0;
  #frameCount = 0;
  #frameNm = 0;
  #frameUs = 0;
  #recordNm = 0;
  #lowSinceRecordNm = 0;
  #setbackNm = 0;

  /** Begins with a sample that {@link run} is yet to take. `recent` is cleared and used from here on. */
  constructor(
    settings: DetectorSettings,
    started: PullStart,
    recent: RecentSamples,
    first: At,
    before: At | null,
  ) {
    this.#settings = settings;
    this.#begun = started;
    this.#recent = recent;
    this.#stampUs = started.startUs;
    const { sign, zeroNm } = started;
    const towards = ({ nm, deg }: At): At => ({ nm: sign * (nm - zeroNm), deg: sign * deg });
    this.#lastNm = towards(first).nm;
    this.#tops = new Tops(recent, started, 1000 * (settings.lagMs ?? 0));
    this.#holes = new Holes(recent, started);
    this.#standing = new Standing(started, this.#lastNm);
    this.#turning = new Turning(before && towards(before), towards(first), started.startNm);
    recent.clear();
  }

  /** The highest torque so far, with its sign. */
  get peakNm(): number {
    return this.#begun.sign * this.#highest.nm;
  }

  /** How far it has turned plug and tools; null where the tool does not tell. */
  get turnedDeg(): number | null {
    const { soFarDeg } = this.#turning;
    return Number.isNaN(soFarDeg) ? null : soFarDeg;
  }

  get zeroNm(): number {
    return this.#begun.zeroNm;
  }

  /** Where the torque stands, as read. */
  get standsNm(): number {
    return this.#asRead(this.#standing.nowNm);
  }

  /** It stood in one place from the beginning: a zero that has moved, and nobody who pulls. */
  get neverMoved(): boolean {
    return this.#standing.neverMoved(this.#lastUs);
  }

  /**
   * Takes in samples `from` to `to` as long as they belong to the pull; returns the first that does not, or stands behind
   * the one that may have ended it. All that changes with every sample is kept in locals meanwhile.
   */
  run(atUs: Float64Array, nm: Float64Array, angleDeg: Float64Array | null, from: number, to: number): number {
    const { zeroNm, sign, startUs, startNm, arrivals, frameSamples } = this.#begun;
    const { bunched, intervalUs } = arrivals;
    const holeFromUs = holeUs(arrivals);
    const recent = this.#recent;
    const before = this.#samples - from;
    let highestNm = this.#highest.nm;
    let stampUs = this.#stampUs;
    let lastUs = this.#lastUs;
    let lastNm = this.#lastNm;
    let longestGapUs = this.#longestGapUs;
    let ticks = this.#ticks;
    let lost = this.#lost;
    let impulse = this.#impulse;
    let frameNm = this.#frameNm;
    let frameUs = this.#frameUs;
    let frameCount = this.#frameCount;
    let endsUs = this.#standing.endsUs;
    if (angleDeg === null) this.#turning.unknown();
    let i = from;
    while (i < to) {
      const t = atUs[i] ?? Number.NaN;
      const torque = sign * ((nm[i] ?? Number.NaN) - zeroNm);
      const gapUs = t - stampUs;
      if (!(gapUs >= 0 && gapUs <= HOLE_US && torque > -startNm && torque < Number.POSITIVE_INFINITY)) break;
      stampUs = t;
      if (gapUs > longestGapUs) longestGapUs = gapUs;
      const stampedUs = t - startUs;
      const us = bunched && before + i > 0 ? whenTaken(arrivals, stampedUs, lastUs, gapUs, lost) : stampedUs;
      const stepUs = us - lastUs;
      ticks += 1 + lost;
      lost = 0;
      const sumNm = torque + lastNm;
      impulse += sumNm * stepUs;
      if (angleDeg !== null)
        this.#turning.add(sign * (angleDeg[i] ?? Number.NaN), torque, Math.max(stepUs, intervalUs));
      recent.add(us, torque, stampedUs, ticks);
      if (gapUs > 0) this.#holes.packet(before + i);
      if (stepUs > holeFromUs) this.#holes.add(before + i);
      if (torque >= highestNm) {
        highestNm = torque;
        this.#highest.add(torque, before + i);
      }
      lastUs = us;
      lastNm = torque;
      frameNm += torque;
      frameUs += us;
      i++;
      if (++frameCount >= frameSamples) {
        this.#impulse = impulse;
        this.#closeFrame(frameUs / frameCount, frameNm / frameCount);
        frameNm = frameUs = frameCount = 0;
        endsUs = this.#standing.endsUs;
      }
      if (us >= endsUs) break;
    }
    this.#samples += i - from;
    this.#stampUs = stampUs;
    this.#lastUs = lastUs;
    this.#lastNm = lastNm;
    this.#longestGapUs = longestGapUs;
    this.#ticks = ticks;
    this.#lost = lost;
    this.#impulse = impulse;
    this.#frameNm = frameNm;
    this.#frameUs = frameUs;
    this.#frameCount = frameCount;
    return i;
  }

  /** Readings are missing here; `readings`: how many, where the tool counts them. */
  missed(readings: number): void {
    this.#lost += readings;
  }

  /** How it ended, once the torque has rested or stood for long enough; else null. */
  get rested(): Ending | null {
    const us = this.#standing.restedUs(this.#lastUs);
    if (us === null) return null;
    const endUs = this.#begun.startUs + Math.round(us);
    return { endUs, cut: null, afterNm: this.#standing.nowNm };
  }

  /** How it ended if nothing more comes: null while the last torque that came was not low. */
  get ceased(): Ending | null {
    const us = this.#standing.lowSinceUs(this.#lastUs, this.#lastNm);
    if (us === null) return null;
    return { endUs: this.#begun.startUs + Math.round(us), cut: null, afterNm: this.#lastNm };
  }

  /**
   * The level, as read, at which a low torque has stood still too long to be a hand, and how that ended the pull; null
   * while none does.
   */
  get stoodAt(): {
    readonly nm: number;
    readonly count: number;
    readonly pulled: boolean;
    readonly ending: Ending;
  } | null {
    const stood = this.#standing.stoodAt(this.#lastUs);
    if (stood === null) return null;
    const endUs = this.#begun.startUs + Math.round(stood.sinceUs);
    return {
      nm: this.#asRead(stood.nm),
      count: stood.count,
      pulled: stood.pulled,
      ending: { endUs, cut: null, afterNm: stood.nm },
    };
  }

  /**
   * The pull as found; null when it only seemed to reach the start, by noise on top of a knock. `driftDegPerS`: how fast the
   * angle ran by itself before it.
   */
  finish(ending: Ending, driftDegPerS: number): DetectedPull | null {
    if (this.#frameCount > 0)
      this.#closeFrame(this.#frameUs / this.#frameCount, this.#frameNm / this.#frameCount);
    return detectedPull(this.#settings, this.#begun, ending, {
      tops: this.#tops,
      highest: this.#highest,
      last: this.#step(this.#lastUs, this.#lastNm),
      samples: this.#samples,
      longestGapUs: this.#longestGapUs,
      holes: this.#holes,
      withinNm: this.#standing.withinNm,
      turning: this.#turning,
      driftDegPerS,
    });
  }

  #asRead(nm: number): number {
    return this.#begun.zeroNm + this.#begun.sign * nm;
  }

  #closeFrame(us: number, nm: number): void {
    this.#setback(nm);
    this.#standing.add(us, nm);
    this.#tops.frame(this.#step(us, nm));
  }

  /** How far the torque has fallen back on its way up, seen when it comes higher again. */
  #setback(nm: number): void {
    if (nm <= this.#recordNm) {
      this.#lowSinceRecordNm = Math.min(this.#lowSinceRecordNm, nm);
      return;
    }
    const backNm = this.#recordNm - this.#lowSinceRecordNm - SETBACK_SIGMA * this.#begun.frameSigma;
    this.#setbackNm = Math.max(this.#setbackNm, backNm);
    this.#recordNm = nm;
    this.#lowSinceRecordNm = nm;
  }

  #step(atUs: number, nm: number): Step {
    return {
      nm,
      atUs,
      angleDeg: this.#turning.turnedDeg,
      impulseNms: this.#impulse / 2e6,
      workJ: this.#turning.workJ,
      setbackNm: this.#setbackNm,
    };
  }
}
