import { type Contradiction, type Quantity, scaled } from '../../src/reading.ts';
import { valueScaling } from './decoder.ts';
import type { Cut } from './framer.ts';
import type { Profile } from './schema.ts';

/*
 * Whether what a device sends shows that its profile is not that of this device. A damaged frame shows nothing: only frames
 * that came whole count, and figures that no tool in a hand can have.
 */

/** Pieces of the stream that are looked back at. */
const LOOKED_BACK = 60;
/** Of a profile that was taught: nobody but the bench has said that it explains every byte. */
const MOST_STRANGE = 3;
/** Of any profile: more than this share is no frame. */
const MOST_SHARE = 0.5;
/** Figures in a row that cannot be; one alone may be a damaged frame without a checksum. */
const MOST_IMPOSSIBLE = 3;

/** No wrench or gauge in a hand shows more. */
const LARGEST: Readonly<Record<Quantity, number>> = { torque: 2_000, length: 0.1 };

export class Contradictions {
  readonly #isTaught: boolean;
  readonly #largest: number;
  /** The last pieces, oldest first. */
  readonly #pieces: Pick<Cut, 'frame' | 'isStrange'>[] = [];
  #noFrames = 0;
  #strange = 0;
  #impossible = 0;

  constructor({ quantity, layout, taught }: Profile) {
    this.#isTaught = taught !== undefined;
    this.#largest = LARGEST[quantity] / scaled(1, valueScaling(layout).exponent);
  }

  /** What came next, and what speaks against the profile once that is too much. */
  take(cut: Cut): Contradiction | null {
    this.#count(cut, 1);
    this.#pieces.push(cut);
    const { length } = this.#pieces;
    const oldest = length > LOOKED_BACK ? this.#pieces.shift() : undefined;
    if (oldest !== undefined) this.#count(oldest, -1);
    if (this.#isTaught && this.#strange >= MOST_STRANGE) return 'bytes';
    if (length >= LOOKED_BACK && this.#noFrames > MOST_SHARE * LOOKED_BACK) return 'bytes';
    for (const counts of cut.frame?.counts ?? []) {
      if (counts === null) continue;
      this.#impossible = Math.abs(counts) > this.#largest ? this.#impossible + 1 : 0;
      if (this.#impossible >= MOST_IMPOSSIBLE) return 'figures';
    }
    return null;
  }

  #count({ frame, isStrange }: Pick<Cut, 'frame' | 'isStrange'>, by: 1 | -1): void {
    if (frame === undefined) this.#noFrames += by;
    if (isStrange === true) this.#strange += by;
  }
}
