/** A bump of torque that turns no plug: half a sine. Moves in the same steps as a {@link Stroke}. */
export class Pulse {
  readonly #peakNm: number;
  readonly #lastsMs: number;
  #elapsedMs = 0;
  readonly turnedDeg = 0;
  torqueNm = 0;

  constructor(peakNm: number, lastsMs: number) {
    this.#peakNm = peakNm;
    this.#lastsMs = lastsMs;
  }

  step(ms: number): boolean {
    this.#elapsedMs += ms;
    const more = this.#elapsedMs < this.#lastsMs;
    this.torqueNm = more ? this.#peakNm * Math.sin((Math.PI * this.#elapsedMs) / this.#lastsMs) : 0;
    return more;
  }
}
