/**
 * How far the tool was turned in a pull, and how far the plug: degrees in the direction of the pull, torque counted upwards.
 *
 * On its way the tool winds up, and unwinds again when it is let off; the plug does neither. So at the same torque, on the way
 * up and on the way down, the wind-up is the same, whatever the extension, and what lies between is the turn of the plug.
 * That torque is the one at which a pull begins. Strokes that follow each other without a rest are added; the way back of a
 * ratchet comes with no torque and does not count.
 */

/** A hand that pulls does not turn the tool faster; one that lets off does, and springs back. Assumptions. */
const FASTEST_DEG_PER_S = 1500;
const FASTEST_BACK_DEG_PER_S = 2500;
const JUMP_DEG = 4;
/** It was let off when the torque fell to this share of where the turn is counted from. */
const LET_OFF_SHARE = 0.5;

/** Torque and angle of one reading. */
export interface At {
  readonly nm: number;
  readonly deg: number;
}

export class Turning {
  /** Since the first sample of the pull; NaN where the tool does not tell. */
  turnedDeg = 0;
  workJ = 0;
  /** The angle went farther between two readings than anybody turns a tool. */
  jumped = false;
  /** From what torque on the turn of the plug is counted. */
  readonly fromNm: number;
  /** Where the tool stood when the torque first came there, and how often it has since. */
  readonly fromDeg: number;
  strokes = 1;
  #deg: number;
  #nm: number;
  /** Of the first stroke. */
  firstTopNm: number;
  /** How far the tools were wound up from there at the tops of the strokes that were let off, all added. */
  #woundUpDeg = 0;
  /** Degrees a N·m of the first of them. */
  #firstDegPerNm = Number.NaN;
  /** The highest torque of the stroke under way, and where the tool stood. */
  #topNm: number;
  #topDeg: number;
  /** Of the strokes that were let off. */
  #plugDeg = 0;
  /** Of the stroke under way; NaN between strokes. */
  #upDeg: number;
  /** Where the torque last came back to `fromNm`; NaN while it is above. */
  #downDeg = Number.NaN;
  #leastDeg = 0;
  #mostDeg = 0;

  /** `before`: the last reading at rest; null where the first of the pull came without one. */
  constructor(before: At | null, first: At, startNm: number) {
    this.#deg = first.deg;
    this.#nm = first.nm;
    const crossed = before !== null && before.nm < startNm && first.nm >= startNm;
    this.fromNm = crossed ? startNm : first.nm;
    const share = crossed ? (first.nm - startNm) / (first.nm - before.nm) : 0;
    const lastDeg = crossed ? first.deg - before.deg : 0;
    this.fromDeg = -share * lastDeg;
    this.#upDeg = this.fromDeg;
    this.firstTopNm = first.nm;
    this.#topNm = first.nm;
    this.#topDeg = 0;
  }

  unknown(): void {
    this.turnedDeg = Number.NaN;
    this.workJ = Number.NaN;
  }

  add(deg: number, nm: number, stepUs: number): void {
    const turned = deg - this.#deg;
    const fastest = turned > 0 ? FASTEST_DEG_PER_S : FASTEST_BACK_DEG_PER_S;
    if (Math.abs(turned) > JUMP_DEG + (fastest * stepUs) / 1e6) this.jumped = true;
    const beforeDeg = this.turnedDeg;
    const beforeNm = this.#nm;
    this.turnedDeg += turned;
    this.workJ += (0.5 * (nm + beforeNm) * turned * Math.PI) / 180;
    this.#deg = deg;
    this.#nm = nm;
    if (this.turnedDeg < this.#leastDeg) this.#leastDeg = this.turnedDeg;
    if (this.turnedDeg > this.#mostDeg) this.#mostDeg = this.turnedDeg;
    const was = beforeNm >= this.fromNm;
    const is = nm >= this.fromNm;
    if (nm > this.#topNm) {
      this.#topNm = nm;
      this.#topDeg = this.turnedDeg;
      if (this.strokes === 1) this.firstTopNm = nm;
    }
    if (was !== is) {
      const crossedDeg = beforeDeg + (turned * (this.fromNm - beforeNm)) / (nm - beforeNm);
      if (is) this.#up(crossedDeg);
      else this.#downDeg = crossedDeg;
    }
    if (!is && nm < LET_OFF_SHARE * this.fromNm) this.#letOff();
  }

  /** How far the plug was turned; NaN where the pull was not seen to be let off, or the tool does not tell. */
  get plugDeg(): number {
    return this.#plugDeg + (Number.isNaN(this.#upDeg) ? 0 : this.#downDeg - this.#upDeg);
  }

  /** The same while it goes on, with what the tools are wound up now. */
  get soFarDeg(): number {
    if (Number.isNaN(this.#upDeg)) return this.#plugDeg;
    return this.#plugDeg + (Number.isNaN(this.#downDeg) ? this.turnedDeg : this.#downDeg) - this.#upDeg;
  }

  /** How far the tools were wound up above `fromNm`, all strokes added, those that were not let off left out. */
  get woundUpDeg(): number {
    return this.#woundUpDeg + (this.#isDown ? this.#windUpDeg : 0);
  }

  /** How far the tools wind up under one N·m, by the first stroke; NaN where none was let off. */
  get degPerNm(): number {
    return this.#isDown && Number.isNaN(this.#firstDegPerNm) ? this.#degPerNm : this.#firstDegPerNm;
  }

  /** The torque of the stroke under way came back to where the turn is counted from. */
  get #isDown(): boolean {
    return !(Number.isNaN(this.#upDeg) || Number.isNaN(this.#downDeg));
  }

  get #windUpDeg(): number {
    return Math.max(0, this.#topDeg - this.#downDeg);
  }

  get #degPerNm(): number {
    return this.#windUpDeg / Math.max(1e-9, this.#topNm - this.fromNm);
  }

  /** The angle hardly moved at all, though no tool is stiff enough for that. */
  within(deg: number): boolean {
    return this.#mostDeg - this.#leastDeg < deg;
  }

  #up(crossedDeg: number): void {
    this.#downDeg = Number.NaN;
    if (!Number.isNaN(this.#upDeg)) return;
    this.#upDeg = crossedDeg;
    this.strokes += 1;
    this.#topNm = this.fromNm;
    this.#topDeg = crossedDeg;
  }

  #letOff(): void {
    if (!this.#isDown) return;
    this.#plugDeg += this.#downDeg - this.#upDeg;
    this.#woundUpDeg += this.#windUpDeg;
    if (Number.isNaN(this.#firstDegPerNm)) this.#firstDegPerNm = this.#degPerNm;
    this.#upDeg = Number.NaN;
    this.#downDeg = Number.NaN;
  }
}
