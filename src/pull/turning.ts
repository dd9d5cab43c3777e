/** How far the tool was turned since the start of a pull, and the work that was done by it; NaN where it does not tell. */
export class Turning {
  turnedDeg = 0;
  workJ = 0;
  #angleDeg: number;

  constructor(angleDeg: number) {
    this.#angleDeg = angleDeg;
  }

  unknown(): void {
    this.turnedDeg = Number.NaN;
    this.workJ = Number.NaN;
  }

  /** `meanNm`: the torque since the sample before. */
  add(angleDeg: number, meanNm: number): void {
    const turned = angleDeg - this.#angleDeg;
    this.turnedDeg += turned;
    this.workJ += (meanNm * turned * Math.PI) / 180;
    this.#angleDeg = angleDeg;
  }
}
