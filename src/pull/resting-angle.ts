/**
 * Whether the angle runs by itself while the tool lies still. Nobody turns a tool evenly for so long without any torque:
 * where the angle goes on in a straight line, its slope is an error of its own. Bounded memory, one sum a sample.
 */

const BLOCK_US = 250_000;
/** So many blocks in a straight line are a tool that lies still; so many of such rests are remembered. Assumptions. */
const STILL_BLOCKS = 6;
const RESTS = 3;
/** How far a block may lie off the line of its neighbours, beside a step of the angle. Noise of small gyroscopes is below. */
const STRAIGHT_DEG = 0.15;

interface Block {
  readonly us: number;
  readonly deg: number;
}

export class RestingAngle {
  readonly #stepDeg: number;
  #fromUs = Number.NaN;
  #sumUs = 0;
  #sumDeg = 0;
  #count = 0;
  /** The first block of the straight line that goes on, and the last two. */
  #first: Block | null = null;
  #last: Block | null = null;
  #before: Block | null = null;
  #blocks = 0;
  #isRest = false;
  /** Degrees a second of the last rests. */
  #rests: number[] = [];

  constructor(stepDeg: number) {
    this.#stepDeg = stepDeg;
  }

  /** A pull came, or readings are missing: what lay in between says nothing. */
  interrupted(): void {
    this.#fromUs = Number.NaN;
    this.#again(null);
  }

  /** Takes in the angles of samples `from` up to `to`, all at rest. */
  run(atUs: Float64Array, deg: Float64Array, from: number, to: number): void {
    for (let i = from; i < to; i++) {
      const us = atUs[i] ?? Number.NaN;
      if (!(us - this.#fromUs < BLOCK_US)) this.#close(us);
      this.#sumUs += us - this.#fromUs;
      this.#sumDeg += deg[i] ?? Number.NaN;
      this.#count += 1;
    }
  }

  /** At least so fast it runs by itself, in degrees a second; 0 where it cannot be said. */
  get driftDegPerS(): number {
    const oneWay = this.#rests.every((perS) => perS > 0) || this.#rests.every((perS) => perS < 0);
    return oneWay && this.#rests.length > 0 ? Math.min(...this.#rests.map(Math.abs)) : 0;
  }

  #close(us: number): void {
    if (this.#count > 0)
      this.#take({ us: this.#fromUs + this.#sumUs / this.#count, deg: this.#sumDeg / this.#count });
    this.#fromUs = us;
    this.#sumUs = 0;
    this.#sumDeg = 0;
    this.#count = 0;
  }

  #take(block: Block): void {
    const { last, before } = { last: this.#last, before: this.#before };
    if (
      last !== null &&
      before !== null &&
      !(this.#off(before, last, block) <= STRAIGHT_DEG + this.#stepDeg)
    ) {
      this.#again(block);
      return;
    }
    this.#first ??= block;
    this.#before = last;
    this.#last = block;
    this.#blocks += 1;
    if (this.#blocks < STILL_BLOCKS) return;
    const took = block.us - this.#first.us;
    // What a step leaves open of the slope is left out.
    const went = Math.abs(block.deg - this.#first.deg) - this.#stepDeg;
    const perS = (Math.sign(block.deg - this.#first.deg) * Math.max(0, went) * 1e6) / took;
    this.#rests = [...(this.#isRest ? this.#rests.slice(0, -1) : this.#rests.slice(1 - RESTS)), perS];
    this.#isRest = true;
  }

  #off(a: Block, b: Block, c: Block): number {
    const share = (b.us - a.us) / (c.us - a.us);
    return Math.abs(b.deg - a.deg - share * (c.deg - a.deg));
  }

  #again(from: Block | null): void {
    this.#count = 0;
    this.#first = from;
    this.#last = from;
    this.#before = null;
    this.#blocks = from === null ? 0 : 1;
    this.#isRest = false;
  }
}
