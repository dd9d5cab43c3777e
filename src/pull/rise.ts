import type { RecentSamples } from './recent.ts';

/** Samples further back than this say nothing of the end of the rise. */
const REACH_US = 100_000;
const AT_LEAST = 3;
/** The pace is first taken from the samples within this time. */
const PACE_US = 60_000;
/** A hand trembles by this share of its speed, and each tremor lasts so long. Assumption. */
const TREMBLES = 0.1;
const TREMBLES_S = 0.06;
/** Beyond that the pace changes by about its own size within a second: the joint hardens, the hand slows down. Assumption. */
const DRIFTS_PER_ROOT_S = 1;
/** The least that is taken for a pace, in shares of the torque a second. */
const SLOWEST_PER_S = 0.2;

/** Torque and pace at the end of a rise. */
export interface RiseEnd {
  readonly nm: number;
  readonly standardNm: number;
  readonly nmPerS: number;
}

/**
 * The rise carried on from sample number `last` to `toUs`; null where too few samples came before. A hand on a spring: the
 * torque grows at a pace that trembles and drifts, and each reading is off by noise of `sigma`. For that the best there is is
 * the filter of R. E. Kalman (1960); its states are the torque, the pace and the tremor.
 */
export function riseTo(samples: RecentSamples, last: number, toUs: number, sigma: number): RiseEnd | null {
  let first = last;
  while (samples.has(first - 1) && samples.timeUs(last) - samples.timeUs(first - 1) <= REACH_US) first--;
  if (last - first + 1 < AT_LEAST) return null;
  const filter = new RiseFilter(samples.nm(first), paceOf(samples, first, last), sigma);
  for (let i = first + 1; i <= last; i++) {
    filter.predict((samples.timeUs(i) - samples.timeUs(i - 1)) / 1e6);
    filter.correct(samples.nm(i));
  }
  filter.predict(Math.max(0, toUs - samples.timeUs(last)) / 1e6);
  return filter.end;
}

function paceOf(samples: RecentSamples, first: number, last: number): number {
  let from = last - 1;
  while (from > first && samples.timeUs(last) - samples.timeUs(from) < PACE_US) from--;
  const seconds = Math.max(1e-3, (samples.timeUs(last) - samples.timeUs(from)) / 1e6);
  const pace = Math.abs(samples.nm(last) - samples.nm(from)) / seconds;
  return Math.max(pace, SLOWEST_PER_S * Math.abs(samples.nm(last)));
}

class RiseFilter {
  readonly #noise: number;
  readonly #drift: number;
  readonly #trembles: number;
  #nm: number;
  #pace: number;
  #tremor = 0;
  /** The covariance, upper half: torque, pace, tremor. */
  #p00: number;
  #p01 = 0;
  #p02 = 0;
  #p11: number;
  #p12 = 0;
  #p22: number;

  constructor(nm: number, nmPerS: number, sigma: number) {
    this.#noise = sigma * sigma;
    this.#drift = (DRIFTS_PER_ROOT_S * nmPerS) ** 2;
    this.#trembles = (TREMBLES * nmPerS) ** 2;
    this.#nm = nm;
    this.#pace = nmPerS;
    this.#p00 = this.#noise;
    this.#p11 = nmPerS * nmPerS;
    this.#p22 = this.#trembles;
  }

  get end(): RiseEnd {
    return { nm: this.#nm, standardNm: Math.sqrt(this.#p00), nmPerS: this.#pace + this.#tremor };
  }

  predict(s: number): void {
    const stays = Math.exp(-s / TREMBLES_S);
    const b = TREMBLES_S * (1 - stays);
    this.#nm += this.#pace * s + this.#tremor * b;
    this.#tremor *= stays;
    const drift = this.#drift * s;
    const fresh = this.#trembles * (1 - stays * stays);
    const p0 = this.#p00 + s * this.#p01 + b * this.#p02;
    const p1 = this.#p01 + s * this.#p11 + b * this.#p12;
    const p2 = this.#p02 + s * this.#p12 + b * this.#p22;
    this.#p00 = p0 + s * p1 + b * p2 + (s * s * (drift + fresh)) / 3;
    this.#p01 = p1 + (s * drift) / 2;
    this.#p02 = stays * p2 + (s * fresh) / 2;
    this.#p11 += drift;
    this.#p12 *= stays;
    this.#p22 = stays * stays * this.#p22 + fresh;
  }

  correct(readNm: number): void {
    const variance = this.#p00 + this.#noise;
    const off = readNm - this.#nm;
    const k0 = this.#p00 / variance;
    const k1 = this.#p01 / variance;
    const k2 = this.#p02 / variance;
    this.#nm += k0 * off;
    this.#pace += k1 * off;
    this.#tremor += k2 * off;
    this.#p22 -= k2 * this.#p02;
    this.#p12 -= k1 * this.#p02;
    this.#p11 -= k1 * this.#p01;
    this.#p02 -= k0 * this.#p02;
    this.#p01 -= k0 * this.#p01;
    this.#p00 -= k0 * this.#p00;
  }
}
