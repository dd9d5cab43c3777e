import { err, ok, type Result } from '../result.ts';
import { readingsProblem } from './checks.ts';
import { type Counts, count, type Limits, limitsProblem } from './limits.ts';
import { mean, momentsOf, standardDeviation } from './moments.ts';
import { type Proportion, proportion } from './proportion.ts';

/** The gap of a new plug as it came out of its box. */
export interface DeliveredGap {
  readonly part: string;
  /** Null where nobody wrote it down. */
  readonly lot: string | null;
  readonly gapMm: number;
}

/** All plugs of one part and lot. */
export interface DeliveredLot {
  readonly part: string;
  readonly lot: string | null;
  readonly n: number;
  readonly meanMm: number;
  /** Null of one plug. */
  readonly standardDeviationMm: number | null;
  readonly smallestMm: number;
  readonly largestMm: number;
  readonly counts: Counts;
  /** Gaps outside the limits. */
  readonly outside: Proportion;
}

/**
 * Gaps as delivered, grouped by part and lot and sorted by both, a missing lot last; the order of the gaps does not matter.
 * Problems: `no-limits`, `limits-crossed`, `not-a-number`.
 */
export function deliveredByLot(
  gaps: readonly DeliveredGap[],
  limitsMm: Limits,
  confidence = 0.95,
): Result<readonly DeliveredLot[]> {
  const problem =
    limitsProblem(limitsMm) ??
    readingsProblem(
      gaps.map(({ gapMm }) => gapMm),
      'gaps',
    );
  if (problem !== null) return err(problem);
  const byPart = new Map<string, Map<string | null, number[]>>();
  for (const { part, lot, gapMm } of gaps) {
    const lots = byPart.get(part) ?? new Map<string | null, number[]>();
    const gapsMm = lots.get(lot) ?? [];
    gapsMm.push(gapMm);
    byPart.set(part, lots.set(lot, gapsMm));
  }
  return ok(
    [...byPart]
      .sort(([a], [b]) => byText(a, b))
      .flatMap(([part, lots]) =>
        [...lots]
          .sort(([a], [b]) => lotOrder(a, b))
          .map(([lot, gapsMm]) => delivered(part, lot, gapsMm, limitsMm, confidence)),
      ),
  );
}

function delivered(
  part: string,
  lot: string | null,
  gapsMm: readonly number[],
  limitsMm: Limits,
  confidence: number,
): DeliveredLot {
  // Sorted, so that the last bits of the sums do not tell in which order the plugs were measured.
  const sorted = [...gapsMm].sort((a, b) => a - b);
  const moments = momentsOf(sorted);
  const counts = count(sorted, limitsMm);
  return {
    part,
    lot,
    n: sorted.length,
    meanMm: mean(moments),
    standardDeviationMm: sorted.length < 2 ? null : standardDeviation(moments),
    smallestMm: sorted[0] ?? Number.NaN,
    largestMm: sorted.at(-1) ?? Number.NaN,
    counts,
    outside: proportion(counts.below + counts.above, sorted.length, confidence),
  };
}

function lotOrder(a: string | null, b: string | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return byText(a, b);
}

/** By code unit: the same on every machine, whatever its language. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
