import type { Random } from '../random.ts';
import type { PlugSpec } from './bench-spec.ts';
import { newGapMm } from './electrode.ts';
import { Joint } from './joint.ts';
import { type TruePull, TURNED_DEG } from './truth.ts';

/** The plug that belongs to a cylinder, in the head or on the bench, with its gap and its joint. */
export class FittedPlug {
  readonly joint: Joint;
  gapMm: number;
  #pulled = false;
  #clicked = false;
  #fitted = false;

  constructor(spec: PlugSpec, crossThreaded: boolean, random: Random) {
    const { thread, seat, gasket, threads = 'dry' } = spec;
    const referenceNm = (spec.lowerNm + spec.upperNm) / 2;
    this.joint = new Joint(
      { thread, seat, gasket, threads, referenceNm, crossThreaded },
      random.fork('joint'),
    );
    this.gapMm = newGapMm(spec, random.fork('gap'));
  }

  get fitted(): boolean {
    return this.#fitted;
  }

  fit(): void {
    this.joint.fingerTight();
    this.#fitted = true;
    this.#pulled = false;
    this.#clicked = false;
  }

  takeOut(): void {
    this.joint.backOut();
    this.#fitted = false;
  }

  /** What a stroke in the tightening direction was, and that it was made. */
  pulledBy(stroke: { readonly rotationDeg: number; readonly released: boolean }): TruePull['kind'] {
    const tight = this.#clicked && stroke.rotationDeg < TURNED_DEG;
    const kind = !this.#pulled ? 'tightening' : tight ? 'rehit' : 'continuation';
    this.#pulled = true;
    this.#clicked ||= stroke.released;
    return kind;
  }
}
