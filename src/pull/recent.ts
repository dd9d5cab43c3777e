import type { Samples } from './samples.ts';

/** A power of two: half a second at 2 kHz. */
const SIZE = 1024;
const MASK = SIZE - 1;

/** The last samples of a pull, in fixed memory. Numbered from 0 at the start of the pull; the oldest are forgotten. */
export class RecentSamples implements Samples {
  readonly #timeUs = new Float64Array(SIZE);
  readonly #stampUs = new Float64Array(SIZE);
  readonly #tick = new Float64Array(SIZE);
  readonly #nm = new Float64Array(SIZE);
  #count = 0;

  clear(): void {
    this.#count = 0;
  }

  /** `timeUs`: when it was taken as far as can be told at once; `stampUs`: when it came; `tick`: its number with the lost ones. */
  add(timeUs: number, nm: number, stampUs: number, tick: number): void {
    const at = this.#count++ & MASK;
    this.#timeUs[at] = timeUs;
    this.#stampUs[at] = stampUs;
    this.#tick[at] = tick;
    this.#nm[at] = nm;
  }

  get count(): number {
    return this.#count;
  }

  has(i: number): boolean {
    return i >= 0 && i < this.#count && i >= this.#count - SIZE;
  }

  /** The samples from `timeUs` on are still there. */
  remembers(timeUs: number): boolean {
    return this.#count < SIZE || this.timeUs(this.#count - SIZE + 1) <= timeUs;
  }

  timeUs(i: number): number {
    return this.#timeUs[i & MASK] ?? Number.NaN;
  }

  stampUs(i: number): number {
    return this.#stampUs[i & MASK] ?? Number.NaN;
  }

  tick(i: number): number {
    return this.#tick[i & MASK] ?? Number.NaN;
  }

  nm(i: number): number {
    return this.#nm[i & MASK] ?? Number.NaN;
  }

  /** The newest sample that is not younger than `timeUs`, or the oldest that is remembered. */
  nearest(timeUs: number): number {
    let i = this.#count - 1;
    while (this.has(i - 1) && this.timeUs(i) > timeUs) i--;
    return i;
  }
}
