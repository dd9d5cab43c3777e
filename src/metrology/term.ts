/**
 * How the possible values of an input are spread (GUM, JCGM 100:2008, clause 4.3). `normal` divides an expanded
 * uncertainty by its `k`; `standard` is a standard deviation as it stands, for example that of a mean of readings.
 */
export type Distribution =
  | { readonly kind: 'normal'; readonly k: number }
  | { readonly kind: 'rectangular' | 'triangular' | 'arcsine' | 'standard' };

/** One line of an uncertainty budget. */
export interface Term {
  readonly name: string;
  /** Where the amount comes from: a certificate, a data sheet, the readings themselves. */
  readonly source: string;
  readonly type: 'A' | 'B';
  /** Half-width, expanded uncertainty or standard deviation, as the distribution says. */
  readonly amount: number;
  readonly distribution: Distribution;
  /** ∂result/∂input. */
  readonly sensitivity: number;
  /** Infinity where the amount is taken as exactly known. */
  readonly degreesOfFreedom: number;
  /** Of an error that is known and not taken off: reading less truth, before sensitivity. Its size is the amount. */
  readonly shift?: number;
}

/** Standard uncertainty of an input: GUM 4.3.3 (normal), 4.3.7 (a/√3), 4.3.9 (a/√6); arcsine a/√2. */
export function standardUncertainty(amount: number, distribution: Distribution): number {
  switch (distribution.kind) {
    case 'normal':
      return amount / distribution.k;
    case 'rectangular':
      return amount / Math.sqrt(3);
    case 'triangular':
      return amount / Math.sqrt(6);
    case 'arcsine':
      return amount / Math.SQRT2;
    case 'standard':
      return amount;
  }
}
