/** The clock that stands in for bunched stamps takes up their lateness within about this time, and gives up beyond the other. */
const FOLLOW_US = 200_000;
const LATE_US = 200_000;
/** A packet that comes later than so many usual steps between packets has others missing in front of it, or was held up. */
export const HOLE_STEPS = 1.6;
/** No sample is taken after it came; the clock runs in the middle of a packet. */
const AHEAD_STEPS = 0.75;

/** What the tool shows at rest of how its readings come. */
export interface Arrivals {
  /** Usual step between samples; 0 where it is not known. */
  readonly intervalUs: number;
  /** Usual step between packets: the same, where each sample comes by itself. */
  readonly packetUs: number;
  /** Readings come in bunches, as a radio hands them over; their stamps tell little of when they were taken. */
  readonly bunched: boolean;
  /** Stamps are off by so much less than a step that they are taken as they are. */
  readonly even: boolean;
}

/** How far apart samples lie, on the clock below or by their stamps, where others are missing between them. */
export const holeUs = ({ packetUs, intervalUs, bunched }: Arrivals): number => {
  if (intervalUs <= 0) return Number.POSITIVE_INFINITY;
  return HOLE_STEPS * (bunched ? intervalUs : Math.max(packetUs, intervalUs));
};

/**
 * When a sample was taken, of those that come in bunches: by a clock that ticks with the usual step and follows the stamps
 * slowly. `gapUs`: since the stamp before; `lost`: how many the tool's own count shows to be missing in front of it.
 */
export function whenTaken(
  { intervalUs, packetUs }: Arrivals,
  stampedUs: number,
  lastUs: number,
  gapUs: number,
  lost: number,
): number {
  const lateBeforeUs = gapUs > HOLE_STEPS * packetUs ? gapUs - packetUs : 0;
  const dueUs = lastUs + intervalUs + (lost > 0 ? lost * intervalUs : lateBeforeUs);
  const lateUs = stampedUs - dueUs;
  if (Math.abs(lateUs) > LATE_US) return Math.max(stampedUs, lastUs);
  const followed = dueUs + (intervalUs / FOLLOW_US) * lateUs;
  return Math.max(lastUs, Math.min(followed, stampedUs + AHEAD_STEPS * packetUs));
}
