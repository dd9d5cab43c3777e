import type { AtRest } from './at-rest.ts';
import type { Arrivals } from './sample-clock.ts';
import type { DetectorSettings } from './settings.ts';

/** The zero is a mean of blocks of rest; a block counts only when the one behind it agrees with it. */
const BLOCK_US = 150_000;
const BLOCK_AT_LEAST = 2;
/** Blocks that the running means reach back: about five seconds, so that drift is followed and noise is not. */
const MEMORY = 32;
/** So many blocks make a zero that is settled. */
const SETTLED_BLOCKS = 4;
/**
 * A ratchet that is swung back between strokes drags the other way, often quite steadily: nothing read so soon behind a pull
 * changes the zero, and one that has jumped (tare, shock) is believed once it has stood still for longer than a swing takes.
 */
const SWING_BACK_US = 2_000_000;
/** What two blocks may differ by beyond their noise, and what a block may differ from the zero by; shares of the start. */
const FLAT_SHARE = 0.02;
const SAME_ZERO_SHARE = 0.05;
/** Before a zero is known it is looked for within so many times the start. */
const FIRST_ZERO_WITHIN = 3;
const START_OVER_NOISE = 6;
/** Steps between packets over steps between samples: jitter stays below this; bunches of two already come near. */
const BUNCHED = 1.4;
/** Jitter of a tenth of a step, which is that of a tool's own clock. */
const EVEN = 1.01;
/** Of the last blocks those count that lost nothing: a quarter of them. */
const ARRIVAL_BLOCKS = 16;
/** At rest, samples further apart than this do not belong to one block. */
const HOLE_US = 400_000;

interface Block {
  mean: number;
  variance: number;
  count: number;
}

/**
 * What the wrench reads when nobody pulls: its zero, its noise, and how often it sends. `run` is the tight loop that the
 * detector spends nearly all its time in: three sums and four comparisons a sample, in one order whatever the batches.
 */
export class Rest {
  readonly #settings: DetectorSettings;
  #lastUs = Number.NEGATIVE_INFINITY;
  #lastNm = 0;
  #sum = 0;
  #squares = 0;
  #count = 0;
  #blockStartUs = 0;
  #low = 0;
  #high = 0;
  #waiting: Block | null = null;
  #zero = 0;
  #zeroCount = 0;
  #blocks = 0;
  #movedSinceUs: number | null = null;
  #learnsFromUs = Number.NEGATIVE_INFINITY;
  #jumped = false;
  #variance = 0;
  #variances = 0;
  #stepSquares = 0;
  /** Of the last blocks: mean step, and mean square of the steps over it, which is the step between packets. */
  readonly #intervalsUs: number[] = [];
  readonly #packetsUs: number[] = [];
  #arrivalBlock = 0;
  /** In this block, as far as the tool counts its readings. */
  #missed = 0;

  constructor(settings: DetectorSettings) {
    this.#settings = settings;
    this.#bound();
  }

  /** The zero that a pull beginning now starts from; 0 as long as no rest was seen. */
  get zeroNm(): number {
    return this.#blocks > 0 ? this.#zero : 0;
  }

  get settled(): boolean {
    return this.#blocks > 0 && !this.#jumped;
  }

  /** What it read in the last tenths of a second; null when it read nothing. */
  get latelyNm(): number | null {
    if (this.#waiting !== null) return this.#waiting.mean;
    return this.#count > 0 ? this.#sum / this.#count : null;
  }

  /** Standard uncertainty of the zero. */
  get zeroStandardNm(): number {
    return this.noiseNm / Math.sqrt(Math.max(1, this.#zeroCount));
  }

  /** Standard deviation of one reading, at least that of its step. */
  get noiseNm(): number {
    const { stepNm, startNm } = this.#settings;
    const seen = this.#variances > 0 ? this.#variance : (this.#waiting?.variance ?? 0);
    return Math.max(Math.sqrt(seen), stepNm / Math.sqrt(12), 1e-4 * startNm);
  }

  /** How readings come when none is lost. */
  get arrivals(): Arrivals {
    const intervalUs = lowerQuartile(this.#intervalsUs);
    const packetUs = lowerQuartile(this.#packetsUs);
    const unevenness = intervalUs > 0 ? packetUs / intervalUs : 1;
    return { intervalUs, packetUs, bunched: unevenness > BUNCHED, even: unevenness < EVEN };
  }

  /** What the tool has shown so far; null until it has rested for some seconds. */
  get shown(): AtRest | null {
    if (this.#intervalsUs.length < ARRIVAL_BLOCKS || this.#blocks < SETTLED_BLOCKS) return null;
    const { intervalUs, packetUs, bunched } = this.arrivals;
    return { intervalUs, perPacket: bunched ? Math.round(packetUs / intervalUs) : 1, noiseNm: this.noiseNm };
  }

  get startNm(): number {
    return Math.max(this.#settings.startNm, START_OVER_NOISE * this.noiseNm);
  }

  get lastUs(): number {
    return this.#lastUs;
  }

  /** Whether a reading lies too far off to be rest. */
  beyond(nm: number): boolean {
    return !(nm > this.#low && nm < this.#high);
  }

  /** Rest begins anew with this sample: at the start of the stream, behind a pull, behind a gap. */
  begin(atUs: number, nm: number): void {
    this.#waiting = null;
    this.#movedSinceUs = null;
    this.#lastUs = atUs;
    this.#lastNm = nm;
    this.#nextBlock(atUs);
  }

  /** The reading has stood still somewhere else for so long that this is the zero now, though nobody knows why. */
  jump(toNm: number, count: number): void {
    this.#zero = toNm;
    this.#zeroCount = count;
    this.#blocks = 1;
    this.#jumped = true;
    this.#bound();
  }

  /** So many readings are missing here. */
  missed(readings: number): void {
    this.#missed += readings;
  }

  /** The same behind a pull. */
  beginBehindPull(atUs: number, nm: number): void {
    this.begin(atUs, nm);
    this.#learnsFromUs = atUs + SWING_BACK_US;
  }

  /** Takes in samples `from` to `to` while they are rest; returns the first that is not, or `to`. */
  run(atUs: Float64Array, nm: Float64Array, from: number, to: number): number {
    let lastUs = this.#lastUs;
    let lastNm = this.#lastNm;
    let sum = this.#sum;
    let squares = this.#squares;
    let stepSquares = this.#stepSquares;
    let count = this.#count;
    let low = this.#low;
    let high = this.#high;
    let closesUs = this.#blockStartUs + BLOCK_US;
    let i = from;
    for (; i < to; i++) {
      const t = atUs[i] ?? Number.NaN;
      const x = nm[i] ?? Number.NaN;
      const step = t - lastUs;
      if (!(x > low && x < high && step >= 0 && step <= HOLE_US)) break;
      const change = x - lastNm;
      squares += change * change;
      stepSquares += step * step;
      sum += x;
      count++;
      lastUs = t;
      lastNm = x;
      if (t < closesUs) continue;
      this.#closeBlock(sum, squares, count, t, stepSquares);
      sum = squares = stepSquares = count = 0;
      low = this.#low;
      high = this.#high;
      closesUs = this.#blockStartUs + BLOCK_US;
    }
    this.#lastUs = lastUs;
    this.#lastNm = lastNm;
    this.#sum = sum;
    this.#squares = squares;
    this.#stepSquares = stepSquares;
    this.#count = count;
    return i;
  }

  #nextBlock(atUs: number): void {
    this.#sum = 0;
    this.#squares = 0;
    this.#stepSquares = 0;
    this.#count = 0;
    this.#missed = 0;
    this.#blockStartUs = atUs;
  }

  #closeBlock(sum: number, squares: number, count: number, atUs: number, stepSquares: number): void {
    const tookUs = atUs - this.#blockStartUs;
    this.#intervalsUs[this.#arrivalBlock] = tookUs / (count + this.#missed);
    if (this.#missed === 0 || this.#packetsUs.length <= this.#arrivalBlock)
      this.#packetsUs[this.#arrivalBlock] = stepSquares / tookUs;
    this.#arrivalBlock = (this.#arrivalBlock + 1) % ARRIVAL_BLOCKS;
    this.#missed = 0;
    this.#blockStartUs = atUs;
    if (count < BLOCK_AT_LEAST) {
      this.#waiting = null;
      return;
    }
    const block = { mean: sum / count, variance: squares / (2 * count), count };
    const before = this.#waiting;
    this.#waiting = block;
    if (before === null) return;
    const pooled = this.#variances > 0 ? this.noiseNm : Math.sqrt((block.variance + before.variance) / 2);
    const flat = 4 * pooled * Math.sqrt(1 / count + 1 / before.count) + FLAT_SHARE * this.#settings.startNm;
    if (Math.abs(block.mean - before.mean) <= flat) this.#learn(before, atUs);
    else this.#movedSinceUs = null;
  }

  #learn(block: Block, atUs: number): void {
    if (this.settled && atUs < this.#learnsFromUs) return;
    if (this.#blocks > 0 && !this.#sameZero(block)) {
      this.#movedSinceUs ??= atUs;
      if (atUs - this.#movedSinceUs < SWING_BACK_US) return;
      this.jump(block.mean, block.count);
      this.#jumped = false;
    } else {
      this.#blocks = Math.min(this.#blocks + 1, MEMORY);
      this.#zero += (block.mean - this.#zero) / this.#blocks;
      this.#zeroCount = Math.min(this.#zeroCount + block.count, MEMORY * block.count);
      if (this.#blocks >= SETTLED_BLOCKS) this.#jumped = false;
    }
    this.#movedSinceUs = null;
    this.#variances = Math.min(this.#variances + 1, MEMORY);
    this.#variance += (block.variance - this.#variance) / this.#variances;
    this.#bound();
  }

  #sameZero({ mean, count }: Block): boolean {
    const spread = 5 * this.noiseNm * Math.sqrt(1 / count + 1 / Math.max(1, this.#zeroCount));
    return Math.abs(mean - this.#zero) <= spread + SAME_ZERO_SHARE * this.#settings.startNm;
  }

  #bound(): void {
    const reach = this.#blocks > 0 ? this.startNm : FIRST_ZERO_WITHIN * this.startNm;
    const middle = this.#blocks > 0 ? this.#zero : 0;
    this.#low = middle - reach;
    this.#high = middle + reach;
  }
}

function lowerQuartile(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 2] ?? 0;
}
