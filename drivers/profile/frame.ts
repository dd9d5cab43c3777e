import type { Problem } from '../../src/problem.ts';
import type { Result } from '../../src/result.ts';
import type { ProfileUnit } from './unit.ts';

/** What a frame says, sample by sample. */
export interface Frame {
  /** Counts as `scalingOf` has them; null where the device says that there is no value. */
  readonly counts: readonly (number | null)[];
  /** Of the same samples; undefined where the layout has no angle. */
  readonly angleCounts: readonly (number | null)[] | undefined;
  /** Why there is no value, in words, where the device says so. */
  readonly noValue: string | undefined;
  readonly counter: number | undefined;
  /** Where the frame tells it. */
  readonly unit: ProfileUnit | undefined;
}

/** Reads one frame. Whatever the profile does not describe is a problem that names the byte, and never a value. */
export type Decoder = (frame: Buffer) => Result<Frame, Problem>;

/** A figure as it was written. */
interface Slot {
  mantissa: number;
  exponent: number;
  /** It is a code that means that there is none. */
  none: boolean;
}

/** What the fields of a frame, or of a sample, have said so far. */
export class Draft {
  readonly value: Slot = { mantissa: 0, exponent: 0, none: false };
  readonly angle: Slot = { mantissa: 0, exponent: 0, none: false };
  /** Why there is no value. */
  why: string | undefined;
  negative = false;
  unit = 0;
  counter: number | undefined;

  /** Of a sample: it begins with what the frame says of all. */
  from(frame: Draft): void {
    this.why = frame.why;
    this.negative = frame.negative;
    this.unit = frame.unit;
  }

  /** Words that the device means by a flag or a text. */
  means(means: 'valid' | 'no-value' | 'negative' | 'nothing', isSet: boolean, words: string): void {
    if (means === 'negative') this.negative = isSet !== this.negative;
    else if (means !== 'nothing' && isSet === (means === 'no-value'))
      this.why = this.why === undefined ? words : `${this.why}, ${words}`;
  }
}

/** Counts of a figure; null where there is none, NaN where it is too large to be a reading. */
export function countsOf(slot: Slot, scale: number, negative: boolean): number | null {
  if (slot.none) return null;
  const counts = Math.round((negative ? -slot.mantissa : slot.mantissa) * 10 ** slot.exponent * scale);
  if (!Number.isSafeInteger(counts)) return Number.NaN;
  return counts === 0 ? 0 : counts; // never -0
}

export const TOO_LARGE = 'the number is too large to be a reading';

export function wrongFrame(at: number, message: string): Problem {
  return {
    code: 'profile-frame',
    where: `byte ${at}`,
    message: `byte ${at}: ${message}`,
    next: 'Compare the profile with the published documentation of the device; the bytes are kept raw.',
  };
}
