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

  constructor(settings: DetectorSettings) {
    this.#settings = settings;
    this.#rest = new Rest(settings);
    this.#restingAngle = new RestingAngle(settings.angle?.stepDeg ?? 0);
  }

  push(atUs: number, nm: number, angleDeg?: number): DetectedPull | null {
    this.#oneUs[0] = atUs;
    this.#oneNm[0] = nm;
    this.#oneDeg[0] = angleDeg ?? Number.NaN;
    let detected: DetectedPull | null = null;
    this.#take(this.#oneUs, this.#oneNm, angleDeg === undefined ? null : this.#oneDeg, 0, 1, (pull) => {
      detected = pull;
    });
    return detected;
  }

  pushBatch(
    atUs: Float64Array,
    nm: Float64Array,
    from: number,
    to: number,
    angleDeg?: Float64Array,
  ): DetectedPull[] {
    const detected: DetectedPull[] = [];
    this.#take(atUs, nm, angleDeg ?? null, from, to, (pull) => detected.push(pull));
    return detected;
  }

  missed(readings: number): void {
    (this.#pull ?? this.#rest).missed(readings);
  }

  cut(reason: 'link-lost' | 'stopped'): DetectedPull | null {
    return this.#pull === null ? null : this.#finish(this.#pull, this.#broken(reason));
  }

  live() {
    const zeroNm = this.#pull?.zeroNm ?? this.#rest.zeroNm;
    return { nowNm: this.#lastNm - zeroNm, pulling: this.#pull !== null, peakNm: this.#pull?.peakNm ?? 0 };
  }

  #take(
    atUs: Float64Array,
    nm: Float64Array,
    angleDeg: Float64Array | null,
    from: number,
    to: number,
    give: (pull: DetectedPull) => void,
  ): void {
    for (let i = from; i < to; ) {
      const first = i;
      const pull = this.#pull;
      i = pull === null ? this.#rest.run(atUs, nm, i, to) : pull.run(atUs, nm, angleDeg, i, to);
      if (i > first) {
        this.#lastUs = atUs[i - 1] ?? Number.NaN;
        this.#lastNm = nm[i - 1] ?? Number.NaN;
        this.#lastDeg = angleDeg?.[i - 1] ?? Number.NaN;
        if (angleDeg !== null && pull === null) this.#restingAngle.run(atUs, angleDeg, first, i);
        const ended = pull === null ? null : this.#ended(pull);
        if (ended !== null) give(ended);
        continue;
      }
      const t = atUs[i] ?? Number.NaN;
      const x = nm[i] ?? Number.NaN;
      if (!(t >= this.#lastUs && Number.isFinite(t) && Number.isFinite(x)))
        throw new RangeError(`sample ${i}: torque ${x} at ${t} µs, behind ${this.#lastUs} µs`);
      const detected = this.#turningPoint(t, x, angleDeg === null ? Number.NaN : (angleDeg[i] ?? Number.NaN));
      if (detected !== null) give(detected);
      // The first sample of a pull belongs to it.
      if (this.#pull === null) i++;
    }
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
