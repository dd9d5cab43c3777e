import { z } from 'zod';
import { order } from '../quantity/compare.ts';
import { COVERAGE_FACTOR } from './coverage.ts';
import type { Window, Zoned } from './judgement.ts';
import { normalQuantile } from './normal.ts';
import type { Spread } from './spread.ts';
import { conformanceProbability, type WindowInput, windowOf } from './window.ts';

/** The two limits of a specification. */
export type Limits = Pick<Window, 'lowerLimit' | 'upperLimit'>;

/**
 * When a reading counts as proof. `simple`: within the limits (ILAC-G8:09/2019, 4.2.1). `guard-band`: by r·U inside them.
 * `iso-14253-1`: by 1.65·u inside them, the default of ISO 14253-1:2017, meant for limits many u apart. `probability`:
 * where the conformance probability, both tails counted, is at least that much (JCGM 106:2012, 8.3).
 */
export const decisionRuleSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('simple') }).describe('Within the limits (ILAC-G8:09/2019, 4.2.1).'),
  z
    .strictObject({ kind: z.literal('iso-14253-1') })
    .describe('Inside the limits by 1.65 standard uncertainties, the default of ISO 14253-1:2017.'),
  z
    .strictObject({
      kind: z.literal('guard-band'),
      r: z.number().min(0).max(3).describe('Width of the guard band in U; 1 is usual.'),
    })
    .describe('Inside the limits by r·U. With r = 1 the usual rule.'),
  z
    .strictObject({
      kind: z.literal('probability'),
      atLeast: z
        .number()
        .min(0.5)
        .max(0.9999)
        .describe('The probability that the true value lies within the limits.'),
    })
    .describe('Where the conformance probability is high enough (JCGM 106:2012, 8.3).'),
]);
export type DecisionRule = z.infer<typeof decisionRuleSchema>;

export interface Zone {
  readonly lower: number;
  readonly upper: number;
}

const ISO_14253_1_FACTOR = 1.65;

/** The readings that prove conformity under a rule, with the same uncertainty throughout; null if there are none. */
export function acceptanceZone(rule: DecisionRule, limits: Limits, spread: Spread): Zone | null {
  const guard =
    rule.kind === 'probability'
      ? probabilityGuard(rule.atLeast, limits, spread)
      : (guardBandFactor(rule) ?? 0) * spread.expanded;
  if (guard === null) return null;
  const zone = { lower: limits.lowerLimit + guard, upper: limits.upperLimit - guard };
  return zone.lower < zone.upper ? zone : null;
}

/** The factor r of a guard band r·U that a rule comes to; null where it depends on the probability. */
export function guardBandFactor(rule: DecisionRule): number | null {
  switch (rule.kind) {
    case 'simple':
      return 0;
    case 'iso-14253-1':
      return ISO_14253_1_FACTOR / COVERAGE_FACTOR;
    case 'guard-band':
      return rule.r;
    case 'probability':
      return null;
  }
}

/**
 * The window that a rule leaves within the limits, each side by the uncertainty there; `guardBandFactor` is then the wider
 * of the two guard bands over U. A wrong limit or uncertainty throws RangeError.
 */
export function windowBy<U extends string>(
  rule: DecisionRule,
  input: Omit<WindowInput<U>, 'guardBandFactor'>,
): Zoned<U> {
  const factor = guardBandFactor(rule);
  if (factor !== null) return windowOf({ ...input, guardBandFactor: factor });
  const bare = windowOf({ ...input, guardBandFactor: 0 });
  const { lowerLimit, upperLimit, expandedAtLower, expandedAtUpper } = bare;
  const middle = (lowerLimit + upperLimit) / 2;
  const lower = acceptanceZone(rule, bare, input.spreadAt(lowerLimit));
  const upper = acceptanceZone(rule, bare, input.spreadAt(upperLimit));
  const [acceptLower, acceptUpper] =
    lower === null || upper === null ? [middle, middle] : [lower.lower, upper.upper];
  return {
    ...bare,
    guardBandFactor: Math.max(
      (acceptLower - lowerLimit) / expandedAtLower,
      (upperLimit - acceptUpper) / expandedAtUpper,
    ),
    acceptLower,
    acceptUpper,
    decidable: order(acceptLower, acceptUpper) < 0,
  };
}

/** The expanded uncertainty (k = 2) below which a rule leaves any acceptance zone; Infinity where it always does. */
export function largestExpandedBy(rule: DecisionRule, limits: Limits): number {
  const factor = guardBandFactor(rule);
  if (factor !== null || rule.kind !== 'probability') return largestExpanded(limits, factor ?? 0);
  // In the middle p_c = 2·Φ(T/2u) - 1.
  const halfWidth = (limits.upperLimit - limits.lowerLimit) / 2;
  return (COVERAGE_FACTOR * halfWidth) / normalQuantile((1 + rule.atLeast) / 2);
}

/** The expanded uncertainty (k = 2) below which a window with guard bands r·U can be decided at all. */
function largestExpanded({ lowerLimit, upperLimit }: Limits, r: number): number {
  return (upperLimit - lowerLimit) / (2 * r);
}

/** Bisection from a limit to the middle: the conformance probability rises all the way. Negative below one half. */
function probabilityGuard(
  atLeast: number,
  limits: Limits,
  { standard, degreesOfFreedom }: Spread,
): number | null {
  const at = (guard: number) =>
    conformanceProbability(limits.upperLimit - guard, standard, limits, degreesOfFreedom);
  let enough = (limits.upperLimit - limits.lowerLimit) / 2;
  if (at(enough) < atLeast) return null;
  let tooLittle = -enough;
  while (at(tooLittle) >= atLeast) tooLittle *= 2;
  for (;;) {
    const middle = (enough + tooLittle) / 2;
    // No number lies between them any more.
    if (!(middle > tooLittle && middle < enough)) return enough;
    if (at(middle) >= atLeast) enough = middle;
    else tooLittle = middle;
  }
}
