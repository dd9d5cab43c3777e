import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import type { Term } from './term.ts';

/** One line of a calibration certificate, all in the unit of the reading. */
export interface CalibrationPoint {
  /** What the instrument read. */
  readonly reading: number;
  /** Reading minus reference. */
  readonly deviation: number;
  readonly expanded: number;
  readonly k: number;
}

/** What a certificate says about a reading between its points. */
export interface Calibrated {
  /** To be taken off the reading. */
  readonly deviation: number;
  readonly term: Term;
}

/**
 * The certificate at `reading`: the deviation on the straight line between the two neighbouring points, the uncertainty
 * the larger of theirs, because what the line misses between them is not known. Problems: `outside-calibration`.
 */
export function calibratedAt(
  points: readonly CalibrationPoint[],
  reading: number,
  source: string,
): Result<Calibrated> {
  const sorted = [...points].sort((a, b) => a.reading - b.reading);
  const above = sorted.find((point) => point.reading >= reading);
  const below = sorted.findLast((point) => point.reading <= reading);
  if (above === undefined || below === undefined) return err(outside(sorted, reading, source));
  const share =
    above.reading === below.reading ? 0 : (reading - below.reading) / (above.reading - below.reading);
  const standard = Math.max(below.expanded / below.k, above.expanded / above.k);
  return ok({
    deviation: below.deviation + share * (above.deviation - below.deviation),
    term: {
      name: 'calibration',
      source,
      type: 'B',
      amount: standard,
      distribution: { kind: 'standard' },
      sensitivity: 1,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    },
  });
}

function outside(sorted: readonly CalibrationPoint[], reading: number, source: string): Problem {
  const range = `${sorted[0]?.reading ?? 'nothing'} to ${sorted.at(-1)?.reading ?? 'nothing'}`;
  return {
    code: 'outside-calibration',
    where: source,
    message: `the reading ${reading} lies outside the calibrated range (${range})`,
    next: 'use an instrument that is calibrated there, or have more points calibrated',
  };
}
