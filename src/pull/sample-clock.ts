/** The clock that stands in for bunched stamps takes up their lateness within about this time, and gives up beyond the other. */
const FOLLOW_US = 200_000;
const LATE_US = 200_000;

/**
 * When a sample was taken, of those that come in bunches as a radio hands them over: by a clock that ticks with the usual
 * step and follows the stamps slowly.
 */
export function whenTaken(stampedUs: number, lastUs: number, intervalUs: number): number {
  const dueUs = lastUs + intervalUs;
  const lateUs = stampedUs - dueUs;
  return Math.abs(lateUs) > LATE_US
    ? Math.max(stampedUs, lastUs)
    : Math.max(lastUs, dueUs + (intervalUs / FOLLOW_US) * lateUs);
}
