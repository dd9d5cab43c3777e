import { createMaximaDetector } from './maxima.ts';
import type { FoundPull } from './pull.ts';
import type { PullDetector } from './pull-detector.ts';
import { Rest } from './rest.ts';
import type { DetectorSettings } from './settings.ts';
import { PullUnderWay } from './under-way.ts';

/*
 * How a pull is found. At rest the detector learns zero, noise and rate of the tool (rest.ts). A reading beyond the start
 * opens a pull (under-way.ts); it ends when the torque has stayed low for a while. Within it the first top with a quick
 * fall and a knee behind it is the click (release.ts), and each top is estimated from the samples about it (top.ts). One
 * pass, bounded memory, constant cost a sample; thresholds follow the noise and the rate that the tool shows.
 */

/** Samples further apart than this within a pull leave open what happened between them. */
const HOLE_US = 400_000;

/** Finds pulls in a stream of torque samples. State lives in the detector only: the same samples give the same pulls. */
export function createPullDetector(settings: DetectorSettings): PullDetector {
  return settings.stream === 'maxima' ? createMaximaDetector(settings) : new SampleDetector(settings);
}

class SampleDetector implements PullDetector {
  readonly #rest: Rest;
  readonly #pull: PullUnderWay;
  readonly #oneUs = new Float64Array(1);
  readonly #oneNm = new Float64Array(1);
  readonly #oneDeg = new Float64Array(1);
  #pulling = false;
  #lastUs = Number.NEGATIVE_INFINITY;
  #lastNm = 0;
  #lastEndUs: number | null = null;

  constructor(settings: DetectorSettings) {
    this.#rest = new Rest(settings);
    this.#pull = new PullUnderWay(settings);
  }

  push(atUs: number, nm: number, angleDeg?: number): FoundPull | null {
    this.#oneUs[0] = atUs;
    this.#oneNm[0] = nm;
    this.#oneDeg[0] = angleDeg ?? Number.NaN;
    let found: FoundPull | null = null;
    this.#take(this.#oneUs, this.#oneNm, this.#oneDeg, 0, 1, (pull) => {
      found = pull;
    });
    return found;
  }

  pushBatch(
    atUs: Float64Array,
    nm: Float64Array,
    from: number,
    to: number,
    angleDeg?: Float64Array,
  ): FoundPull[] {
    const found: FoundPull[] = [];
    this.#take(atUs, nm, angleDeg ?? null, from, to, (pull) => found.push(pull));
    return found;
  }

  cut(reason: 'link-lost' | 'stopped'): FoundPull | null {
    return this.#pulling ? this.#finish(this.#pull.lastUs, reason) : null;
  }

  live() {
    const zeroNm = this.#pulling ? this.#pull.zeroNm : this.#rest.zeroNm;
    return {
      nowNm: this.#lastNm - zeroNm,
      pulling: this.#pulling,
      peakNm: this.#pulling ? this.#pull.peakNm : 0,
    };
  }

  #take(
    atUs: Float64Array,
    nm: Float64Array,
    angleDeg: Float64Array | null,
    from: number,
    to: number,
    give: (pull: FoundPull) => void,
  ): void {
    let i = from;
    while (i < to) {
      if (!this.#pulling) {
        i = this.#rest.run(atUs, nm, i, to);
        if (i > from) this.#seen(atUs[i - 1] ?? Number.NaN, nm[i - 1] ?? Number.NaN);
        if (i >= to) return;
      }
      const t = atUs[i] ?? Number.NaN;
      const x = nm[i] ?? Number.NaN;
      if (!(t >= this.#lastUs && Number.isFinite(t) && Number.isFinite(x)))
        throw new RangeError(`sample ${i}: torque ${x} at ${t} µs, behind ${this.#lastUs} µs`);
      const found = this.#one(t, x, angleDeg === null ? Number.NaN : (angleDeg[i] ?? Number.NaN));
      this.#seen(t, x);
      if (found !== null) give(found);
      i++;
    }
  }

  #seen(atUs: number, nm: number): void {
    this.#lastUs = atUs;
    this.#lastNm = nm;
  }

  /** A sample that is not rest: of a pull, at its beginning or its end, or behind a gap. */
  #one(atUs: number, nm: number, angleDeg: number): FoundPull | null {
    let found: FoundPull | null = null;
    if (this.#pulling && atUs - this.#lastUs > HOLE_US) found = this.#finish(this.#lastUs, 'link-lost');
    else if (this.#pulling && this.#pull.turns(nm)) found = this.#finish(this.#lastUs, null);
    if (!this.#pulling) {
      if (this.#rest.beyond(nm)) {
        this.#pull.begin(atUs, nm, angleDeg, this.#rest, this.#lastEndUs);
        this.#pulling = true;
      } else this.#rest.begin(atUs, nm);
      return found;
    }
    this.#pull.add(atUs, nm, angleDeg);
    const endUs = this.#pull.restedUs;
    if (endUs !== null) {
      found = this.#finish(endUs, null);
      this.#rest.begin(atUs, nm);
      return found;
    }
    const stood = this.#pull.stoodAt;
    if (stood === null) return null;
    if (stood.pulled) found = this.#finish(stood.sinceUs, null);
    this.#pulling = false;
    this.#rest.jump(stood.nm, stood.count);
    this.#rest.begin(atUs, nm);
    return found;
  }

  #finish(endUs: number, cut: FoundPull['cut']): FoundPull | null {
    this.#pulling = false;
    const found = this.#pull.finish(endUs, cut);
    if (found !== null) this.#lastEndUs = endUs;
    return found;
  }
}
