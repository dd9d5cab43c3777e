import { expect, it } from 'vitest';

/**
 * How far a value was confirmed before it was put here: `read` in the source named, `second-hand` in a text about the
 * source, `from memory` of the source (to be checked on paper before anybody relies on it), `computed` elsewhere with other
 * software.
 */
export type Confirmed = 'read' | 'second-hand' | 'from memory' | 'computed';

export interface Published {
  readonly what: string;
  readonly value: number;
  /** Half of the last printed digit, or the accuracy that the source itself claims. */
  readonly within: number;
  readonly source: string;
  readonly confirmed: Confirmed;
}

/** One test: what we compute agrees with what was published. */
export function agrees({ what, value, within, source, confirmed }: Published, ours: () => number): void {
  it(`${what} = ${value} [${source}; ${confirmed}]`, () => {
    expect(Math.abs(ours() - value)).toBeLessThanOrEqual(within);
  });
}
