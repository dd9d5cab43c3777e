import type { Limits, Zone } from './decision.ts';
import { normalBetween, normalCdf } from './normal.ts';

/** Chance that one given reading hides a value outside the limits (JCGM 106:2012, 7.3 and 7.4). */
export function specificRisk(value: number, standard: number, { lowerLimit, upperLimit }: Limits) {
  const low = normalCdf((lowerLimit - value) / standard);
  const high = normalCdf((value - upperLimit) / standard);
  return { low, high, total: low + high };
}

/** A process, the instrument that looks at it, and the zone in which a reading is accepted. */
export interface Inspection {
  /** Probability density of the true values. */
  readonly density: (value: number) => number;
  /** Where the density is not negligible; finite. */
  readonly from: number;
  readonly to: number;
  /** Standard uncertainty of a reading. */
  readonly standard: number;
  readonly limits: Limits;
  readonly accept: Zone;
}

/** Shares of all items: `consumer` bad but accepted, `producer` good but rejected. */
export interface GlobalRisk {
  readonly outOfTolerance: number;
  readonly consumer: number;
  readonly producer: number;
}

/** Risks over a whole process (JCGM 106:2012, 9.5.1, formulas 17 and 19), by Simpson's rule. */
export function globalRisk({ density, from, to, standard, limits, accept }: Inspection): GlobalRisk {
  const accepted = (value: number) =>
    normalBetween((accept.lower - value) / standard, (accept.upper - value) / standard);
  const lower = clamp(limits.lowerLimit, from, to);
  const upper = clamp(limits.upperLimit, from, to);
  const outside = (part: (value: number) => number) =>
    integral(part, from, lower, standard) + integral(part, upper, to, standard);
  return {
    outOfTolerance: outside(density),
    consumer: outside((value) => density(value) * accepted(value)),
    producer: integral((value) => density(value) * (1 - accepted(value)), lower, upper, standard),
  };
}

/** The smallest guard band in 0..`widest` whose risk is at most `target`; `riskAt` must fall. Null if none is. */
export function guardBandFor(
  riskAt: (guardBand: number) => number,
  target: number,
  widest: number,
): number | null {
  if (riskAt(0) <= target) return 0;
  if (riskAt(widest) > target) return null;
  let low = 0;
  let high = widest;
  while (high - low > widest * 1e-12) {
    const middle = (low + high) / 2;
    if (riskAt(middle) > target) low = middle;
    else high = middle;
  }
  return high;
}

const clamp = (value: number, from: number, to: number): number => Math.min(to, Math.max(from, value));

/** Composite Simpson's rule with at least 64 steps to a standard uncertainty: the edge of acceptance to ten figures. */
function integral(f: (x: number) => number, from: number, to: number, standard: number): number {
  const width = to - from;
  if (width <= 0) return 0;
  const steps = 2 * Math.max(1000, Math.ceil((32 * width) / standard));
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + (width * i) / steps);
  return (sum * width) / (3 * steps);
}
