import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';

/** Within this share of what is permitted the interval grows. ILAC-G24 / OIML D 10 name 80 % as an example; from memory. */
const COMFORTABLE = 0.8;
/** By how much; neither document fixes figures. Our choice: shrink faster than grow. */
const LONGER = 1.25;
const SHORTER = 0.5;

/** A calibration as found, before any adjustment. */
export interface AsFound {
  readonly deviation: number;
  /** Largest permissible deviation in either direction, above zero. */
  readonly permissible: number;
}

/** Whole days; `longestDays` is where the shop's rule or a standard ends it, such as twelve months. */
export interface IntervalBounds {
  readonly shortestDays: number;
  readonly longestDays: number;
}

export interface NextInterval {
  readonly days: number;
  readonly step: 'longer' | 'kept' | 'shorter';
  /** Deviation as a share of what is permitted. */
  readonly share: number;
}

/**
 * The "staircase" of ILAC-G24 / OIML D 10: each calibration moves the next interval, up when the instrument was found well
 * inside, down when it was found outside. From memory of the document, to be checked on paper. Problem: `calibration-interval`.
 */
export function nextInterval(
  days: number,
  { deviation, permissible }: AsFound,
  { shortestDays, longestDays }: IntervalBounds,
): Result<NextInterval> {
  if (
    !(
      Number.isInteger(days) &&
      shortestDays >= 1 &&
      days >= shortestDays &&
      days <= longestDays &&
      permissible > 0
    ) ||
    !Number.isFinite(deviation)
  )
    return err({
      code: 'calibration-interval',
      where: 'interval',
      message: w`an interval of ${days} days, bounds ${shortestDays} to ${longestDays} days, and a deviation of ${deviation} with ${permissible} permitted do not go together`,
      next: w`Give an interval in whole days between its bounds, a finite deviation, and a permissible deviation above zero.`,
    });
  const share = Math.abs(deviation) / permissible;
  const factor = share > 1 ? SHORTER : share > COMFORTABLE ? 1 : LONGER;
  const wanted = Math.min(longestDays, Math.max(shortestDays, Math.floor(days * factor)));
  return ok({
    days: wanted,
    step: wanted > days ? 'longer' : wanted < days ? 'shorter' : 'kept',
    share,
  });
}
