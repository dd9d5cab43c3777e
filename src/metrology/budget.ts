import { COVERAGE, COVERAGE_FACTOR } from './coverage.ts';
import type { Spread } from './spread.ts';
import { studentQuantile } from './student.ts';
import { type Input, standardUncertainty, type Term } from './term.ts';

/** What an input adds: its standard uncertainty, its contribution |c|·u(x) and its share of the variance. */
interface Contribution {
  readonly standard: number;
  readonly contribution: number;
  readonly share: number;
}

/** Its ν_eff is that of Welch and Satterthwaite; U = k·u_c. */
export interface Budget<T extends Input = Term> extends Spread {
  readonly rows: readonly (T & Contribution)[];
  readonly coverageFactor: number;
}

/** A fixed factor, or the one that covers a share of the t-distribution with ν_eff degrees of freedom. */
export type Coverage = { readonly k: number } | { readonly confidence: number };

/**
 * Combines independent terms by the law of propagation of uncertainty (GUM 5.1.2, first order), with the effective
 * degrees of freedom of Welch and Satterthwaite (GUM G.4.1). For coverage by confidence, ν_eff is cut down to a whole
 * number first, as the GUM does. All terms in one unit after their sensitivity. U never comes out below what a certificate
 * states for its own share: more terms cannot make a calibration better.
 */
export function combine<T extends Input>(terms: readonly T[], coverage: Coverage): Budget<T> {
  const parts = terms.map((term) => {
    const standard = standardUncertainty(term.amount, term.distribution);
    return { ...term, standard, contribution: Math.abs(term.sensitivity) * standard };
  });
  const variance = parts.reduce((sum, part) => sum + part.contribution ** 2, 0);
  const standard = Math.sqrt(variance);
  const degreesOfFreedom = effectiveDegreesOfFreedom(parts, standard);
  const coverageFactor =
    'k' in coverage ? coverage.k : coverageFactorFor(degreesOfFreedom, coverage.confidence);
  const rows = parts.map((part) => ({
    ...part,
    share: variance === 0 ? 0 : part.contribution ** 2 / variance,
  }));
  const stated = parts.map(({ distribution, amount, sensitivity }) =>
    distribution.kind === 'normal' ? Math.abs(sensitivity) * amount : 0,
  );
  const expanded = Math.max(coverageFactor * standard, ...stated);
  return { rows, standard, degreesOfFreedom, coverageFactor: expanded / standard, expanded };
}

/** The budget of a reading, expanded at 95 %: k = 2, or that of Student's t where the degrees of freedom are few. */
export function budgetOf(terms: readonly Term[]): Budget {
  const certain = terms.every(({ degreesOfFreedom }) => degreesOfFreedom === Number.POSITIVE_INFINITY);
  return combine(terms, certain ? { k: COVERAGE_FACTOR } : { confidence: COVERAGE });
}

/** ν_eff = u_c⁴ / Σ(u_i⁴/ν_i) (GUM, formula G.2b). */
function effectiveDegreesOfFreedom(
  parts: readonly { readonly contribution: number; readonly degreesOfFreedom: number }[],
  standard: number,
): number {
  const sum = parts.reduce((total, part) => total + part.contribution ** 4 / part.degreesOfFreedom, 0);
  return sum === 0 ? Number.POSITIVE_INFINITY : standard ** 4 / sum;
}

/** The two-sided k of Student's t that covers `confidence`, for ν_eff cut down to a whole number (GUM G.4.1). */
export function coverageFactorFor(degreesOfFreedom: number, confidence: number): number {
  return studentQuantile((1 + confidence) / 2, Math.max(1, Math.floor(degreesOfFreedom)));
}

/** Beyond this k is 2.00 as laboratories print it. */
const ALL_BUT_CERTAIN = 10_000;
/** Laboratories state k with two decimals. */
const STEP_OF_K = 0.005;

/**
 * The whole degrees of freedom that a stated k says at 95.45 % (GUM table G.2; EA-4/02 M:2022, annex E): the most with
 * which k would still be printed as large. Infinity for k = 2 and less.
 */
export function degreesOfFreedomFor(k: number): number {
  const kept = worked.get(k);
  if (kept !== undefined) return kept;
  const degreesOfFreedom = mostWith(k);
  worked.set(k, degreesOfFreedom);
  return degreesOfFreedom;
}

/** Few k are ever stated, and each is asked for with every reading. */
const worked = new Map<number, number>();

function mostWith(k: number): number {
  const reaches = (degreesOfFreedom: number) =>
    coverageFactorFor(degreesOfFreedom, COVERAGE) >= k - STEP_OF_K;
  if (k < COVERAGE_FACTOR + STEP_OF_K || reaches(ALL_BUT_CERTAIN)) return Number.POSITIVE_INFINITY;
  let [enough, tooMany] = [1, ALL_BUT_CERTAIN];
  while (tooMany - enough > 1) {
    const middle = Math.floor((enough + tooMany) / 2);
    if (reaches(middle)) enough = middle;
    else tooMany = middle;
  }
  return enough;
}
