import type { Random } from '../random.ts';

export interface GapLimits {
  readonly gapLowerMm: number;
  readonly gapUpperMm: number;
}

/** Preset gaps as they come out of the box; "preset gaps move in handling". Shares are assumptions. */
const OUTLIER_PROBABILITY = 0.06;
const SIGMA_OF_RANGE = 0.1;
const OUTSIDE_LOWER_MM = 0.03;
const OUTSIDE_UPPER_MM = 0.15;
/** Bending by hand: relative and absolute error (assumption), and the most that a ground electrode is bent. */
const BEND_SIGMA_SHARE = 0.1;
const BEND_SIGMA_MM = 0.008;
const BEND_MOST_MM = 0.2;

/** The gap of a plug out of its box. */
export function newGapMm({ gapLowerMm, gapUpperMm }: GapLimits, random: Random): number {
  const outside = random.uniform(OUTSIDE_LOWER_MM, OUTSIDE_UPPER_MM);
  const wide = random.chance(0.5);
  if (random.chance(OUTLIER_PROBABILITY))
    return wide ? gapUpperMm + outside : Math.max(0.1, gapLowerMm - outside);
  const range = gapUpperMm - gapLowerMm;
  return random.within((gapLowerMm + gapUpperMm) / 2, SIGMA_OF_RANGE * range, 3);
}

/** The gap after the ground electrode was bent with a wish to change the gap by `byMm`. */
export function bentGapMm(gapMm: number, byMm: number, random: Random): number {
  const wish = Math.max(-BEND_MOST_MM, Math.min(BEND_MOST_MM, byMm));
  return Math.max(
    0.1,
    gapMm + wish * (1 + random.within(0, BEND_SIGMA_SHARE, 2)) + random.within(0, BEND_SIGMA_MM, 2),
  );
}
