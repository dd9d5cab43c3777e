import type { Limits, Zone } from './decision.ts';
import { normalBetween, normalCdf } from './normal.ts';
import { studentCdf } from './student.ts';

/** Chance that one given reading hides a value outside the limits (JCGM 106:2012, 7.3 and 7.4). */
export function specificRisk(
  value: number,
  standard: number,
  { lowerLimit, upperLimit }: Limits,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
) {
  const tail =
    degreesOfFreedom === Number.POSITIVE_INFINITY
      ? normalCdf
      : (t: number) => studentCdf(t, degreesOfFreedom);
  const low = tail((lowerLimit - value) / standard);
  const high = tail((value - upperLimit) / standard);
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

/** Risks over a whole process (JCGM 106:2012, 9.5.1, formulas 17 and 19). */
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

/** Nodes and weights of the eight-point Gauss-Legendre rule on -1..1, the positive half (A&S table 25.4). */
const GAUSS: readonly (readonly [node: number, weight: number])[] = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
];

/** Gauss-Legendre on panels no wider than a standard uncertainty, so that the edge of acceptance is resolved. */
function integral(f: (x: number) => number, from: number, to: number, standard: number): number {
  if (to <= from) return 0;
  const panels = Math.max(64, Math.ceil((to - from) / standard));
  const half = (to - from) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    const middle = from + half * (2 * panel + 1);
    for (const [node, weight] of GAUSS) sum += weight * (f(middle - half * node) + f(middle + half * node));
  }
  return sum * half;
}
