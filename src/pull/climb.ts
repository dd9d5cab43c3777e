/** A point of the way up: the first time that the torque came this high, and what had been done by then. */
export interface Step {
  readonly nm: number;
  readonly atUs: number;
  readonly angleDeg: number;
  readonly impulseNms: number;
  readonly workJ: number;
  /** How far it had fallen back on the way, at most. */
  readonly setbackNm: number;
}

const MOST = 192;

/** The record highs of a pull in bounded memory: when it fills up, every other one goes and the steps become twice as wide. */
export class Climb {
  #steps: Step[] = [];
  #apartNm: number;

  constructor(apartNm: number) {
    this.#apartNm = apartNm;
  }

  add(step: Step): void {
    const last = this.#steps.at(-1);
    if (last !== undefined && step.nm < last.nm + this.#apartNm) return;
    this.#steps.push(step);
    if (this.#steps.length < MOST) return;
    this.#steps = this.#steps.filter((_, i) => i % 2 === 0);
    this.#apartNm *= 2;
  }

  /** Where the torque first came to `nm`, on a straight line between the points; the first or `end` outside of them. */
  reached(nm: number, end: Step): Step {
    const i = this.#steps.findIndex((step) => step.nm >= nm);
    const above = i < 0 ? end : (this.#steps[i] ?? end);
    const below = i < 0 ? this.#steps.at(-1) : this.#steps[i - 1];
    if (below === undefined || above.nm <= below.nm || nm <= below.nm || nm >= above.nm) return above;
    const share = (nm - below.nm) / (above.nm - below.nm);
    const between = (a: number, b: number) => a + share * (b - a);
    return {
      nm,
      atUs: between(below.atUs, above.atUs),
      angleDeg: between(below.angleDeg, above.angleDeg),
      impulseNms: between(below.impulseNms, above.impulseNms),
      workJ: between(below.workJ, above.workJ),
      setbackNm: above.setbackNm,
    };
  }
}
