import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { readingsProblem } from './checks.ts';
import { type Counts, count, type Limits, limitsProblem } from './limits.ts';
import { mean, momentsOf, standardDeviation } from './moments.ts';
import { type Proportion, proportion } from './proportion.ts';

/** The gap of a new plug as it came out of its box: measured, or where a pair of wires put it against the limits. */
export type DeliveredGap = {
  readonly part: string;
  /** Null where nobody wrote it down. */
  readonly lot: string | null;
} & ({ readonly gapMm: number } | { readonly wires: keyof Counts | 'unknown' });

/** All plugs of one part and lot. */
export interface DeliveredLot {
  readonly part: string;
  readonly lot: string | null;
  readonly n: number;
  /** Of `n`, those that were measured; the rest was tried with wires, which give no figure. */
  readonly measured: number;
  /** Null where none was measured. */
  readonly meanMm: number | null;
  /** Null of fewer than two. */
  readonly standardDeviationMm: number | null;
  readonly smallestMm: number | null;
  readonly largestMm: number | null;
  /** Measured or told by wires. */
  readonly counts: Counts;
  /** Gaps outside the limits, of those in `counts`. */
  readonly outside: Proportion;
  /** Of all, were those outside on which the wires could not decide. */
  readonly outsideAtWorst: Proportion;
}

/**
 * Gaps as delivered, grouped by part and lot and sorted by both, a missing lot last; the order of the gaps does not matter.
 * Problems: `no-limits`, `range-reversed`, `not-a-number`.
 */
export function deliveredByLot(
  gaps: readonly DeliveredGap[],
  limitsMm: Limits,
  confidence = 0.95,
): Result<readonly DeliveredLot[]> {
  const problem =
    limitsProblem(limitsMm) ??
    readingsProblem(
      gaps.flatMap((gap) => ('gapMm' in gap ? [gap.gapMm] : [])),
      w`gaps`,
    );
  if (problem !== null) return err(problem);
  const byPart = new Map<string, Map<string | null, DeliveredGap[]>>();
  for (const gap of gaps) {
    const lots = byPart.get(gap.part) ?? new Map<string | null, DeliveredGap[]>();
    const ofLot = lots.get(gap.lot) ?? [];
    ofLot.push(gap);
    byPart.set(gap.part, lots.set(gap.lot, ofLot));
  }
  return ok(
    [...byPart]
      .sort(([a], [b]) => byText(a, b))
      .flatMap(([part, lots]) =>
        [...lots]
          .sort(([a], [b]) => lotOrder(a, b))
          .map(([lot, ofLot]) => delivered(part, lot, ofLot, limitsMm, confidence)),
      ),
  );
}

function delivered(
  part: string,
  lot: string | null,
  gaps: readonly DeliveredGap[],
  limitsMm: Limits,
  confidence: number,
): DeliveredLot {
  // Sorted, so that the last bits of the sums do not tell in which order the plugs were measured.
  const sorted = gaps.flatMap((gap) => ('gapMm' in gap ? [gap.gapMm] : [])).sort((a, b) => a - b);
  const moments = momentsOf(sorted);
  const tally = { ...count(sorted, limitsMm), unknown: 0 };
  for (const gap of gaps) if ('wires' in gap) tally[gap.wires]++;
  const { unknown, ...counts } = tally;
  const outside = counts.below + counts.above;
  return {
    part,
    lot,
    n: gaps.length,
    measured: sorted.length,
    meanMm: sorted.length === 0 ? null : mean(moments),
    standardDeviationMm: sorted.length < 2 ? null : standardDeviation(moments),
    smallestMm: sorted[0] ?? null,
    largestMm: sorted.at(-1) ?? null,
    counts,
    outside: proportion(outside, gaps.length - unknown, confidence),
    outsideAtWorst: proportion(outside + unknown, gaps.length, confidence),
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
