import type { TruePull } from '../../../sim/physics/truth.ts';
import type { DetectedPull } from '../../../src/pull/pull.ts';

/** A true pull and what was found of it. */
export interface Matched {
  readonly truth: TruePull;
  readonly found: DetectedPull;
}

export interface Matching {
  /** True pulls that had to be found. */
  readonly due: number;
  readonly matched: readonly Matched[];
  /** Nothing was found of them, or they were taken together with another pull. */
  readonly missed: readonly TruePull[];
  /** Found where nobody pulled. */
  readonly invented: readonly DetectedPull[];
  /** Found more than once. */
  readonly split: readonly TruePull[];
}

/**
 * Holds found pulls against the truth by time. A true pull must be found if its torque reached `dueNm`; below that it
 * may be. Where a found pull spans several, the strongest counts as found and the others that were due as missed.
 */
export function match(found: readonly DetectedPull[], pulls: readonly TruePull[], dueNm: number): Matching {
  const measured = pulls.filter((pull) => pull.measured);
  const due = measured.filter(({ peakNm }) => Math.abs(peakNm) >= dueNm);
  const byTruth = new Map<TruePull, DetectedPull[]>();
  const invented: DetectedPull[] = [];
  for (const one of found) {
    const under = measured.filter((pull) => pull.startUs <= one.endUs && one.startUs <= pull.endUs);
    const strongest = under.reduce<TruePull | null>(
      (best, pull) => (best === null || Math.abs(pull.peakNm) > Math.abs(best.peakNm) ? pull : best),
      null,
    );
    if (strongest === null) invented.push(one);
    else byTruth.set(strongest, [...(byTruth.get(strongest) ?? []), one]);
  }
  const matched: Matched[] = [];
  const split: TruePull[] = [];
  for (const [truth, several] of byTruth) {
    if (several.length > 1) split.push(truth);
    const [first, ...more] = several;
    const highest = more.reduce(
      (best, one) => (Math.abs(one.peakNm) > Math.abs(best?.peakNm ?? 0) ? one : best),
      first,
    );
    if (highest !== undefined && due.includes(truth)) matched.push({ truth, found: highest });
  }
  return { due: due.length, matched, missed: due.filter((pull) => !byTruth.has(pull)), invented, split };
}
