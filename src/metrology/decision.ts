import { COVERAGE_FACTOR } from './coverage.ts';
import type { Window } from './judgement.ts';
import { normalCdf } from './normal.ts';
import { conformanceProbability } from './window.ts';

/** The two limits of a specification. */
export type Limits = Pick<Window, 'lowerLimit' | 'upperLimit'>;

/**
 * When a reading counts as proof. `simple`: within the limits (ILAC-G8:09/2019, 4.2.1). `guard-band`: by r·U inside them.
 * `iso-14253-1`: by 1.65·u inside them, the default of ISO 14253-1:2017, meant for limits many u apart. `probability`:
 * where the conformance probability, both tails counted, is at least that much (JCGM 106:2012, 8.3).
 */
export type DecisionRule =
  | { readonly kind: 'simple' | 'iso-14253-1' }
  | { readonly kind: 'guard-band'; readonly r: number }
  | { readonly kind: 'probability'; readonly atLeast: number };

export interface Zone {
  readonly lower: number;
  readonly upper: number;
}

const ISO_14253_1_FACTOR = 1.65;

/** The readings that prove conformity under a rule, with the same standard uncertainty throughout; null if there are none. */
export function acceptanceZone(rule: DecisionRule, limits: Limits, standard: number): Zone | null {
  const guard =
    rule.kind === 'probability' ? probabilityGuard(rule.atLeast, limits, standard) : guardOf(rule, standard);
  if (guard === null) return null;
  const zone = { lower: limits.lowerLimit + guard, upper: limits.upperLimit - guard };
  return zone.lower < zone.upper ? zone : null;
}

/** The expanded uncertainty (k = 2) below which a window with guard bands r·U can be decided at all. */
export function largestExpanded({ lowerLimit, upperLimit }: Limits, r: number): number {
  return (upperLimit - lowerLimit) / (2 * r);
}

/** Probability of a false OK for a reading right on the acceptance limit, the other limit being far: 1 - Φ(k·r). */
export function falseAcceptanceAt(r: number): number {
  return normalCdf(-COVERAGE_FACTOR * r);
}

function guardOf(rule: Exclude<DecisionRule, { kind: 'probability' }>, standard: number): number {
  if (rule.kind === 'simple') return 0;
  return rule.kind === 'guard-band' ? rule.r * COVERAGE_FACTOR * standard : ISO_14253_1_FACTOR * standard;
}

/** Bisection from a limit to the middle: the conformance probability rises all the way. Negative below one half. */
function probabilityGuard(atLeast: number, limits: Limits, standard: number): number | null {
  const at = (guard: number) => conformanceProbability(limits.upperLimit - guard, standard, limits);
  let enough = (limits.upperLimit - limits.lowerLimit) / 2;
  if (at(enough) < atLeast) return null;
  let tooLittle = -enough;
  while (at(tooLittle) >= atLeast) tooLittle *= 2;
  for (let step = 0; step < 200 && Math.abs(enough - tooLittle) > 0; step += 1) {
    const middle = (enough + tooLittle) / 2;
    if (middle === enough || middle === tooLittle) break;
    if (at(middle) >= atLeast) enough = middle;
    else tooLittle = middle;
  }
  return enough;
}
