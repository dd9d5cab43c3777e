/** Which tools are out of tolerance by the impact assessments, until a certificate of that day or later makes them fit again. */
import type { StationEntry } from '../evidence/log.ts';
import type { Certificate } from '../instrument/certificate.ts';
import type { Instrument, OutOfTolerance } from '../instrument/instrument.ts';
import { permissibleAt } from '../metrology/permissible.ts';
import { asFoundPoints } from './impact-span.ts';
import type { ImpactAssessment } from './impact-state.ts';

/** The instruments, each with the finding against it. */
export const withFindings = (
  instruments: readonly Instrument[],
  impacts: readonly ImpactAssessment[],
): readonly Instrument[] =>
  instruments.map((instrument) => {
    const outOfTolerance = findingAgainst(instrument, impacts);
    return outOfTolerance === null ? instrument : { ...instrument, outOfTolerance };
  });

/** The newest finding that makes an instrument, as it is calibrated now, unfit; null where none does. */
export function findingAgainst(
  instrument: Instrument,
  impacts: readonly ImpactAssessment[],
): OutOfTolerance | null {
  const { serial, certificate } = instrument;
  const standing = impacts
    .filter(({ assessed }) => assessed.serial === serial && (certificate?.date ?? '') < assessed.foundOn)
    .filter((one) => isUnfit(instrument, one))
    .sort((a, b) =>
      a.assessed.foundOn < b.assessed.foundOn ? 1 : a.assessed.foundOn > b.assessed.foundOn ? -1 : 0,
    );
  const [newest] = standing;
  if (newest?.asFound == null) return null;
  const { reading, error } = worstPoint(instrument, newest.asFound);
  return { impact: newest.assessment, on: newest.assessed.foundOn, reading, error };
}

/**
 * A finding within what is permitted is what a calibration is expected to say, and makes no tool unfit: decided by the
 * permissible deviation, the found error against it as it is (ISO 6789 compares so, without the uncertainty). Two more
 * count. Where nothing is said to be permitted, verdicts rest on the certificate alone, and a move that its uncertainty
 * and that of the finding cannot explain takes it away. And what has put a proof out may not go on, whatever is permitted:
 * windows drawn by the certificate are narrower than a class.
 */
function isUnfit(
  { permissibleDeviation }: Instrument,
  { assessed, asFound, lastGood }: ImpactAssessment,
): boolean {
  if (asFound === null) return false;
  if (assessed.out > 0) return true;
  if (permissibleDeviation === undefined)
    return asFoundPoints(asFound, lastGood).some(({ finding }) => finding === 'moved');
  return asFound.points.some(
    ({ reading, error }) => reading > 0 && Math.abs(error) > permissibleAt(permissibleDeviation, reading),
  );
}

function worstPoint({ permissibleDeviation }: Instrument, { points }: Certificate) {
  const gravity = ({ reading, error }: Certificate['points'][number]) =>
    Math.abs(error) / (permissibleDeviation === undefined ? 1 : permissibleAt(permissibleDeviation, reading));
  return points.reduce((most, one) => (gravity(one) > gravity(most) ? one : most));
}

/**
 * What was found at the end of the time that an instrument's calibration is about: behind its certificate, or at the very
 * calibration that the certificate is of. Null where the log holds nothing of that.
 */
export function lastFound(
  { serial, certificate }: Instrument,
  entries: readonly StationEntry[],
): Certificate | null {
  const calibrated = entries.flatMap(({ event }) =>
    event.type === 'instrument-recorded' && event.instrument.serial === serial
      ? (event.instrument.certificate?.date ?? [])
      : [],
  );
  const found = entries.flatMap(({ event }) =>
    event.type === 'as-found-recorded' && event.asFound.serial === serial ? [event.asFound] : [],
  );
  const newest = found.reduce<Certificate | null>(
    (last, one) => (last === null || one.date >= last.date ? one : last),
    null,
  );
  if (newest === null || certificate === undefined) return newest;
  const followed = calibrated.some((date) => date >= newest.date && date < certificate.date);
  return followed ? null : newest;
}
