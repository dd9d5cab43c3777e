import type { Problem } from '../problem.ts';
import { w } from '../words/catalogue.ts';
import { certificateProblem } from './certificate.ts';
import { monthsLater } from './dates.ts';
import type { Instrument } from './instrument.ts';

const wanted = ({ quantity }: Instrument) => (quantity === 'torque' ? 'N.m' : 'mm');

/**
 * What is wrong with the description of an instrument, so that nothing can rest on it and nobody can override it; null if
 * nothing is. Problems: `permissible-deviation-missing`, `certificate-other-serial`, `certificate-in-future`, `range-reversed`,
 * `certificate-unit`, `serial-missing`.
 */
export function misdescribed(instrument: Instrument, on: string): Problem | null {
  const { id, certificate, permissibleDeviation, serial } = instrument;
  if (certificate === undefined)
    return permissibleDeviation === undefined
      ? {
          code: 'permissible-deviation-missing',
          where: w`tool ${id}: permissibleDeviation`,
          message: w`the permissible deviation is missing`,
          next: w`Give its certificate, or the limits of its class or data sheet.`,
        }
      : null;
  if (serial === undefined)
    return {
      code: 'serial-missing',
      where: w`tool ${id}: serial`,
      message: w`certificate ${certificate.number} is for serial number ${certificate.serial}; this tool has none`,
      next: w`Give the serial number on the tool.`,
    };
  if (serial !== certificate.serial)
    return certificateProblem(
      'certificate-other-serial',
      certificate,
      'serial',
      w`it is for serial number ${certificate.serial}, but tool ${id} is ${serial}`,
      w`Use the certificate of this tool.`,
    );
  if (certificate.date > on)
    return certificateProblem(
      'certificate-in-future',
      certificate,
      'date',
      w`it is dated ${certificate.date}, after the day of the job, ${on}`,
      w`Check the date of the certificate and the clock of this computer.`,
    );
  if (certificate.due !== undefined && certificate.due < certificate.date)
    return certificateProblem(
      'certificate-dates',
      certificate,
      'due',
      w`it is due on ${certificate.due}, before its own date, ${certificate.date}`,
      w`Give the last day on which the certificate holds.`,
    );
  if (certificate.unit !== wanted(instrument))
    return certificateProblem(
      'certificate-unit',
      certificate,
      'unit',
      w`its points are in ${certificate.unit}; tool ${id} measures in ${wanted(instrument)}`,
      w`Use the certificate of this tool.`,
    );
  return null;
}

/** The last day on which the certificate may be relied on; null where nobody set one. */
export function dueDate({ certificate, interval }: Instrument): string | null {
  if (certificate === undefined) return null;
  const byInterval = interval && monthsLater(certificate.date, interval.months);
  const [first] = [certificate.due, byInterval].filter((day) => day !== undefined).sort();
  return first ?? null;
}
