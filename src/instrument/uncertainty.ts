import { calibratedAt } from '../metrology/calibration.ts';
import { permissibleAt } from '../metrology/permissible.ts';
import type { AmountSource, Term } from '../metrology/term.ts';
import {
  calibrationTerm,
  classLaboratoryTerm,
  driftTerm,
  furtherTerm,
  peakTerm,
  permissibleTerm,
  repeatabilityTerm,
  resolutionTerm,
  uncorrectedTerm,
} from '../metrology/terms.ts';
import { yearsBetween } from './dates.ts';
import type { InstrumentInUse } from './instrument.ts';

/** What is known of one reading of an instrument, in its own unit. */
export interface InstrumentTerms {
  /** To be taken off the reading; 0 unless the shop corrects by the certificate. */
  readonly correction: number;
  readonly terms: readonly Term[];
}

/**
 * The lines of the budget that come from the instrument itself: its certificate, or the limits of its class where there is
 * none; step, repeatability, drift since the calibration, what the shop states beside them, and what the pull says of its own peak. `on` is the day of the job.
 */
export function instrumentTerms(
  instrument: InstrumentInUse,
  reading: number,
  on: string,
  peakStandard: number | null,
): InstrumentTerms {
  const { certificate, permissibleDeviation, resolution, repeatability, driftPerYear, basis } = instrument;
  const promise: AmountSource =
    instrument.promiseOfDevice === true ? { kind: 'device' } : fromStationFile(basis);
  const terms: Term[] = [];
  let correction = 0;
  if (certificate !== undefined) {
    const { number, laboratory } = certificate;
    const source: AmountSource = { kind: 'certificate', number, laboratory };
    const calibrated = calibratedAt(certificate.points, reading);
    const { error } = calibrated;
    terms.push(calibrationTerm(calibrated, source));
    if (instrument.correct === true) correction = error;
    else if (error !== 0) terms.push(uncorrectedTerm(error, source));
    const years = yearsBetween(certificate.date, on);
    if (driftPerYear !== undefined && years > 0)
      terms.push(
        driftTerm(years * permissibleAt(driftPerYear.within, reading), fromStationFile(driftPerYear.basis)),
      );
  } else if (permissibleDeviation !== undefined) {
    terms.push(
      permissibleTerm(permissibleDeviation, reading, promise),
      classLaboratoryTerm(permissibleDeviation, reading, instrument.classUncertainty),
    );
  } else {
    throw new RangeError(`nothing says how far ${instrument.id} may be off`);
  }
  terms.push(resolutionTerm(resolution));
  if (repeatability !== undefined) terms.push(repeatabilityTerm(repeatability.readings, repeatability.basis));
  for (const further of instrument.furtherTerms ?? []) terms.push(furtherTerm(further, reading));
  if (peakStandard !== null && peakStandard > 0) terms.push(peakTerm(peakStandard));
  return { correction, terms };
}

const fromStationFile = (basis: string): AmountSource => ({ kind: 'station-file', basis });
