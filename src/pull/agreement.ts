import { type Fit, varianceAt } from './moments.ts';

/** Half-width of the intervals that must agree, in standard deviations. */
const AGREES_WITHIN = 1.2;

/**
 * Whether the value at x = 0 of a wider stretch agrees with those of all narrower ones within their uncertainty
 * (intersection of confidence intervals, A. Goldenshluger and A. Nemirovski): what bends the fit away shows there first.
 */
export class Agreement {
  readonly #sigma: number;
  #lower = Number.NEGATIVE_INFINITY;
  #upper = Number.POSITIVE_INFINITY;

  constructor(sigma: number) {
    this.#sigma = sigma;
  }

  takes(fit: Fit): boolean {
    const reach = AGREES_WITHIN * this.#sigma * Math.sqrt(varianceAt(fit, 0));
    const lower = Math.max(this.#lower, fit.c0 - reach);
    const upper = Math.min(this.#upper, fit.c0 + reach);
    if (lower > upper) return false;
    this.#lower = lower;
    this.#upper = upper;
    return true;
  }
}
