import type { Sentence } from '../../src/words/catalogue.ts';
export type Field = Readonly<Record<string, unknown>>;

/** A layout that explains every byte of every frame, and in words what is special about it. */
export interface Candidate {
  readonly layout: Field;
  readonly summary: Sentence;
  /** Bytes of its number; of those that agree in all, a gap is read by the narrowest. */
  readonly size: number;
  readonly isSigned: boolean;
  /** Where the number is and what it is worth: numbers above 0 of the same place and worth are written alike in all kinds. */
  readonly reads: string;
}

/** Why there is none. */
export interface Unexplained {
  readonly why: 'no-figure' | 'bytes-unexplained';
  /** Bytes that change and that nothing explains, in the best of the layouts. */
  readonly bytes: readonly number[];
}
