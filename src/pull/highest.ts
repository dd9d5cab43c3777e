import { type DetectorSettings, endsScale } from './settings.ts';

/** Noise of less than this many steps leaves readings equal by itself. */
const NOISY_STEPS = 0.5;
/** Equal readings in a row at the top are the end of the scale when noise makes so many more seldom than this. */
const BY_CHANCE = 1e-5;

/** The highest reading of a pull, and whether it stood at the end of the scale. */
export class Highest {
  #nm = Number.NEGATIVE_INFINITY;
  #last = 0;
  #equal = 0;
  #mostEqual = 0;

  get nm(): number {
    return this.#nm;
  }

  /** Sample number `n`; only those that are as high as the highest before need to be told. */
  add(nm: number, n: number): void {
    if (nm > this.#nm) {
      this.#nm = nm;
      this.#equal = 0;
      this.#mostEqual = 0;
    }
    this.#equal = n === this.#last + 1 ? this.#equal + 1 : 1;
    this.#last = n;
    if (this.#equal > this.#mostEqual) this.#mostEqual = this.#equal;
  }

  /** `readNm`: the same as the tool said it. */
  endsScale(settings: DetectorSettings, readNm: number, noiseNm: number): boolean {
    if (endsScale(settings, readNm)) return true;
    return this.#mostEqual >= clippedFrom(noiseNm / settings.stepNm);
  }
}

/** How many readings are not equal by chance, where the noise of each has so many steps. */
function clippedFrom(noiseSteps: number): number {
  if (!(noiseSteps >= NOISY_STEPS) || noiseSteps === Number.POSITIVE_INFINITY)
    return Number.POSITIVE_INFINITY;
  const sameAgain = 1 / (Math.sqrt(2 * Math.PI) * noiseSteps);
  return 1 + Math.ceil(Math.log(BY_CHANCE) / Math.log(sameAgain));
}
