import type { AtRest } from './at-rest.ts';
import type { Ending } from './detected.ts';
import { createMaximaDetector } from './maxima.ts';
import type { DetectedPull } from './pull.ts';
import type { PullDetector } from './pull-detector.ts';
import { started } from './pull-start.ts';
import { RecentSamples } from './recent.ts';
import { Rest } from './rest.ts';
import { RestingAngle } from './resting-angle.ts';
import type { DetectorSettings } from './settings.ts';
import { HOLE_US, PullUnderWay } from './under-way.ts';

/*
 * How a pull is found. At rest the detector learns zero, noise and rate of the tool (rest.ts). A reading beyond the start
 * opens a pull (under-way.ts); it ends when the torque has stayed low for a while. Within it the first top with a quick
 * fall and a knee behind it is the click (release.ts), and each top is estimated from the samples about it (tops.ts). One
 * pass, bounded memory, constant cost a sample; thresholds follow the noise and the rate that the tool shows.
 */

/** Finds pulls in a stream of torque samples. State lives in the detector only: the same samples give the same pulls. */
export function createPullDetector(settings: DetectorSettings): PullDetector {
  return settings.stream === 'maxima' ? createMaximaDetector(settings) : new SampleDetector(settings);
}

/** A tool that was silent for so long sends nothing more of a pull whose torque had come down. Assumption. */
export const CEASED_US = 1_000_000;

class SampleDetector implements PullDetector {
  readonly #settings: DetectorSettings;
  readonly #rest: Rest;
  readonly #restingAngle: RestingAngle;
  readonly #recent = new RecentSamples();
  readonly #oneUs = new Float64Array(1);
  readonly #oneNm = new Float64Array(1);
  readonly #oneDeg = new Float64Array(1);
  #pull: PullUnderWay | null = null;
  #lastUs = Number.NEGATIVE_INFINITY;
  #lastNm = 0;
  #lastDeg = Number.NaN;
  #lastEndUs: number | null = null;
  /** The pull that the last sample taken completed. */
  #detected: DetectedPull | null = null;

  constructor(settings: DetectorSettings) {
    this.#settings = settings;
    this.#rest = new Rest(settings);
    this.#restingAngle = new RestingAngle(settings.angle?.stepDeg ?? 0);
  }

  push(atUs: number, nm: number, angleDeg?: number): DetectedPull | null {
    this.#oneUs[0] = atUs;
    this.#oneNm[0] = nm;
    this.#oneDeg[0] = angleDeg ?? Number.NaN;
    this.#take(this.#oneUs, this.#oneNm, angleDeg === undefined ? null : this.#oneDeg, 0, 1);
    return this.#detected;
  }

  pushBatch(
    atUs: Float64Array,
    nm: Float64Array,
    from: number,
    to: number,
    angleDeg?: Float64Array,
  ): DetectedPull[] {
    const detected: DetectedPull[] = [];
    for (let i = from; i < to; ) {
      i = this.#take(atUs, nm, angleDeg ?? null, i, to);
      if (this.#detected !== null) detected.push(this.#detected);
    }
    return detected;
  }

  missed(readings: number): void {
    (this.#pull ?? this.#rest).missed(readings);
  }

  endsUs(): number | null {
    return (this.#pull?.ceased ?? null) === null ? null : this.#lastUs + CEASED_US;
  }

  silent(atUs: number): DetectedPull | null {
    const pull = this.#pull;
    const ending = pull?.ceased ?? null;
    if (pull === null || ending === null || atUs < this.#lastUs + CEASED_US) return null;
    const detected = this.#finish(pull, ending);
    this.#rest.beginBehindPull(this.#lastUs, this.#lastNm);
    return detected;
  }

  cut(reason: 'link-lost' | 'stopped' | 'tool-stopped'): DetectedPull | null {
    return this.#pull === null ? null : this.#finish(this.#pull, this.#broken(reason));
  }

  get pulling(): boolean {
    return this.#pull !== null;
  }

  atRest(): AtRest | null {
    return this.#rest.shown;
  }

  live() {
    const zeroNm = this.#pull?.zeroNm ?? this.#rest.zeroNm;
    return {
      nowNm: this.#lastNm - zeroNm,
      pulling: this.pulling,
      peakNm: this.#pull?.peakNm ?? 0,
      turnedDeg: this.#pull?.turnedDeg ?? null,
    };
  }

  /** Takes in samples up to one that completes a pull; returns the first that it did not take. */
  #take(
    atUs: Float64Array,
    nm: Float64Array,
    angleDeg: Float64Array | null,
    from: number,
    to: number,
  ): number {
    this.#detected = null;
    let i = from;
    while (i < to && this.#detected === null) {
      const first = i;
      const pull = this.#pull;
      i = pull === null ? this.#rest.run(atUs, nm, i, to) : pull.run(atUs, nm, angleDeg, i, to);
      if (i > first) {
        this.#lastUs = atUs[i - 1] ?? Number.NaN;
        this.#lastNm = nm[i - 1] ?? Number.NaN;
        this.#lastDeg = angleDeg?.[i - 1] ?? Number.NaN;
        if (angleDeg !== null && pull === null) this.#restingAngle.run(atUs, angleDeg, first, i);
        if (pull !== null) this.#detected = this.#ended(pull);
        continue;
      }
      const t = atUs[i] ?? Number.NaN;
      const x = nm[i] ?? Number.NaN;
      if (!(t >= this.#lastUs && Number.isFinite(t) && Number.isFinite(x)))
        throw new RangeError(`sample ${i}: torque ${x} at ${t} µs, behind ${this.#lastUs} µs`);
      this.#detected = this.#turningPoint(t, x, angleDeg === null ? Number.NaN : (angleDeg[i] ?? Number.NaN));
      // The first sample of a pull belongs to it.
      this.#pull?.run(atUs, nm, angleDeg, i, i + 1);
      i++;
    }
    return i;
  }

  /** A sample that does not go on from the one before: behind a gap, beyond rest, or the other way. */
  #turningPoint(atUs: number, nm: number, angleDeg: number): DetectedPull | null {
    const pull = this.#pull;
    const gap = atUs - this.#lastUs > HOLE_US;
    const stoodNm = gap ? null : (pull?.standsNm ?? null);
    const detected =
      pull === null || (pull.neverMoved && !gap)
        ? null
        : this.#finish(pull, this.#broken(gap ? 'link-lost' : null));
    this.#pull = null;
    this.#restingAngle.interrupted();
    const before = gap ? null : { nm: this.#lastNm, deg: this.#lastDeg };
    this.#lastUs = atUs;
    this.#lastNm = nm;
    this.#lastDeg = angleDeg;
    if (this.#rest.beyond(nm)) {
      const start = started(atUs, nm, this.#rest, { endUs: this.#lastEndUs, stoodNm });
      this.#pull = new PullUnderWay(this.#settings, start, this.#recent, { nm, deg: angleDeg }, before);
    } else this.#rest.begin(atUs, nm);
    return detected;
  }

  /** The pull, where the sample just taken has ended it. */
  #ended(pull: PullUnderWay): DetectedPull | null {
    const { rested } = pull;
    const stood = rested === null ? pull.stoodAt : null;
    if (rested === null && stood === null) return null;
    const ending = rested ?? (stood?.pulled === true ? stood.ending : null);
    const detected = ending === null ? null : this.#finish(pull, ending);
    this.#pull = null;
    if (stood !== null) this.#rest.jump(stood.nm, stood.count);
    if (detected === null) this.#rest.begin(this.#lastUs, this.#lastNm);
    else this.#rest.beginBehindPull(this.#lastUs, this.#lastNm);
    return detected;
  }

  /** An end that shows nothing of what came behind. */
  #broken(cut: DetectedPull['cut']): Ending {
    return { endUs: this.#lastUs, cut, afterNm: null };
  }

  #finish(pull: PullUnderWay, ending: Ending): DetectedPull | null {
    this.#pull = null;
    const detected = pull.finish(ending, this.#restingAngle.driftDegPerS);
    if (detected !== null) this.#lastEndUs = ending.endUs;
    return detected;
  }
}
