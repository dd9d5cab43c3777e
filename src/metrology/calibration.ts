import { degreesOfFreedomFor } from './budget.ts';

/** One line of a calibration certificate, all in the unit of the reading. */
export interface CalibrationPoint {
  /** What the instrument read. */
  readonly reading: number;
  /** Reading less reference. */
  readonly error: number;
  readonly expanded: number;
  readonly k: number;
}

/** What a certificate says about a reading between its points. */
export interface Calibrated {
  /** To be taken off the reading. */
  readonly error: number;
  /** U of the error, as the laboratory states it. */
  readonly expanded: number;
  /** Its standard uncertainty. */
  readonly standard: number;
  /** What its k says; Infinity for k = 2. */
  readonly degreesOfFreedom: number;
  /** The reading lies beyond the points. */
  readonly extrapolated: boolean;
}

/**
 * The certificate at `reading`: the error on the straight line between the two neighbouring points, the uncertainty the
 * larger of theirs with the fewer degrees of freedom, because what the line misses between them is not known. Beyond the
 * last point its relative error and uncertainty are carried on, and that is stated; whether that may be used is decided
 * elsewhere. No points throw RangeError.
 */
export function calibratedAt(points: readonly CalibrationPoint[], reading: number): Calibrated {
  const sorted = [...points].sort((a, b) => a.reading - b.reading);
  const above = sorted.find((point) => point.reading >= reading);
  const below = sorted.findLast((point) => point.reading <= reading);
  const nearest = above ?? below;
  if (nearest === undefined) throw new RangeError('a certificate without points');
  if (above === undefined || below === undefined) {
    const share = reading > nearest.reading && nearest.reading > 0 ? reading / nearest.reading : 1;
    return { error: share * nearest.error, ...uncertaintyOf([nearest], share), extrapolated: true };
  }
  const share =
    above.reading === below.reading ? 0 : (reading - below.reading) / (above.reading - below.reading);
  return {
    error: below.error + share * (above.error - below.error),
    ...uncertaintyOf([below, above], 1),
    extrapolated: false,
  };
}

/** As the laboratory states it, times `share`, with the degrees of freedom that its k says. */
function uncertaintyOf(
  points: readonly CalibrationPoint[],
  share: number,
): Pick<Calibrated, 'expanded' | 'standard' | 'degreesOfFreedom'> {
  return {
    expanded: share * Math.max(...points.map((point) => point.expanded)),
    standard: share * Math.max(...points.map((point) => point.expanded / point.k)),
    degreesOfFreedom: Math.min(...points.map(({ k }) => degreesOfFreedomFor(k))),
  };
}
