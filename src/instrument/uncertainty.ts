import { calibratedAt } from '../metrology/calibration.ts';
import { permissibleAt } from '../metrology/permissible.ts';
import type { Term } from '../metrology/term.ts';
import {
  driftTerm,
  peakTerm,
  permissibleTerm,
  repeatabilityTerm,
  resolutionTerm,
  uncorrectedTerm,
} from '../metrology/terms.ts';
import { yearsBetween } from './dates.ts';
import type { Instrument } from './instrument.ts';

/** What is known of one reading of an instrument, in its own unit. */
export interface InstrumentTerms {
  /** To be taken off the reading; 0 unless the shop corrects by the certificate. */
  readonly correction: number;
  readonly terms: readonly Term[];
}

/**
 * The lines of the budget that come from the instrument itself: its certificate, or the limits of its class where there is
 * none; step, repeatability, drift since the calibration, and what the pull says of its own peak. `on` is the day of the job.
 */
export function instrumentTerms(
  instrument: Instrument,
  reading: number,
  on: string,
  peakStandard: number | null,
): InstrumentTerms {
  const { certificate, permissibleDeviation, resolution, repeatability, driftPerYear, basis } = instrument;
  const terms: Term[] = [];
  let correction = 0;
  if (certificate !== undefined) {
    const source = `certificate ${certificate.number}, ${certificate.laboratory}`;
    const { error, term } = calibratedAt(certificate.points, reading, source);
    terms.push(term);
    if (instrument.correct === true) correction = error;
    else if (error !== 0) terms.push(uncorrectedTerm(error, source));
    const years = Math.max(0, yearsBetween(certificate.date, on));
    if (driftPerYear !== undefined && years > 0)
      terms.push(driftTerm(years * permissibleAt(driftPerYear.within, reading), driftPerYear.basis));
  } else if (permissibleDeviation !== undefined) {
    terms.push(permissibleTerm(permissibleDeviation, reading, basis));
  } else {
    throw new RangeError(`nothing says how far ${instrument.id} may be off`);
  }
  terms.push(resolutionTerm(resolution));
  if (repeatability !== undefined) terms.push(repeatabilityTerm(repeatability.readings, repeatability.basis));
  if (peakStandard !== null && peakStandard > 0) terms.push(peakTerm(peakStandard));
  return { correction, terms };
}
