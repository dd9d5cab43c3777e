import type { Problem } from '../problem.ts';
import type { ProblemCode } from '../problem-code.ts';
import { order } from '../quantity/compare.ts';
import { certificateProblem } from './certificate.ts';
import { monthsLater } from './dates.ts';
import type { Instrument, OutOfTolerance } from './instrument.ts';

/** What a job asks of an instrument. */
export interface Task {
  /** ISO date of the job. */
  readonly on: string;
  /** The lowest and the highest reading that a verdict rests on. */
  readonly from: number;
  readonly to: number;
}

const unitOf = ({ quantity }: Instrument) => (quantity === 'torque' ? 'N·m' : 'mm');
const wanted = ({ quantity }: Instrument) => (quantity === 'torque' ? 'N.m' : 'mm');
const significant = (value: number) => String(Number(value.toPrecision(4)));

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
          where: `tool ${id}: permissibleDeviation`,
          message: 'the permissible deviation is missing',
          next: 'Give its certificate, or the limits of its class or data sheet.',
        }
      : null;
  if (serial === undefined)
    return {
      code: 'serial-missing',
      where: `tool ${id}: serial`,
      message: `certificate ${certificate.number} is for serial number ${certificate.serial}; this tool has none`,
      next: 'Give the serial number on the tool.',
    };
  if (serial !== certificate.serial)
    return certificateProblem(
      'certificate-other-serial',
      certificate,
      'serial',
      `it is for serial number ${certificate.serial}, but tool ${id} is ${serial}`,
      'Use the certificate of this tool.',
    );
  if (certificate.date > on)
    return certificateProblem(
      'certificate-in-future',
      certificate,
      'date',
      `it is dated ${certificate.date}, after the day of the job, ${on}`,
      'Check the date of the certificate and the clock of this computer.',
    );
  if (certificate.due !== undefined && certificate.due < certificate.date)
    return certificateProblem(
      'certificate-dates',
      certificate,
      'due',
      `it is due on ${certificate.due}, before its own date, ${certificate.date}`,
      'Give the last day on which the certificate holds.',
    );
  if (certificate.unit !== wanted(instrument))
    return certificateProblem(
      'certificate-unit',
      certificate,
      'unit',
      `its points are in ${certificate.unit}; tool ${id} measures in ${wanted(instrument)}`,
      'Use the certificate of this tool.',
    );
  return null;
}

/** The last day on which the certificate may be relied on; null where nobody set one. */
export function dueDate({ certificate, interval }: Instrument): string | null {
  if (certificate === undefined) return null;
  const byInterval = interval === undefined ? null : monthsLater(certificate.date, interval.months);
  const stated = certificate.due ?? byInterval;
  return byInterval !== null && stated !== null && byInterval < stated ? byInterval : stated;
}

/**
 * Why an instrument should not be used for this task; empty when it may be. A supervisor can answer for each of these.
 * Problems: `found-out`, `calibration-expired`, `cycles-used-up`, `out-of-range`, `outside-calibration`.
 */
export function unfit(instrument: Instrument, task: Task): readonly Problem[] {
  const { id, range, certificate, interval, cyclesUsed, outOfTolerance } = instrument;
  const problems: Problem[] = [];
  const due = dueDate(instrument);
  const add = (code: ProblemCode, field: string, message: string, next: string) =>
    problems.push({ code, where: `tool ${id}: ${field}`, message, next });
  if (outOfTolerance !== undefined)
    add(
      'out-of-tolerance',
      'certificate',
      `it was out of tolerance on ${outOfTolerance.on} (${outOfTolerance.impact}): ${offBy(instrument, outOfTolerance)} and cannot be used`,
      'Have it adjusted and calibrated, and give the certificate of that day or later.',
    );
  if (due !== null && due < task.on)
    add('calibration-expired', 'certificate.due', `its calibration expired on ${due}`, 'Have it calibrated.');
  if (interval?.cycles !== undefined && cyclesUsed !== undefined && cyclesUsed > interval.cycles)
    add(
      'cycles-used-up',
      'cyclesUsed',
      `it has done ${cyclesUsed} cycles since its calibration; ${interval.cycles} are allowed`,
      'Have it calibrated.',
    );
  if (range !== undefined && !covers(range, task))
    add(
      'out-of-range',
      'range',
      outside('it may be used', range, task, instrument),
      'Use one of another size.',
    );
  if (certificate !== undefined) {
    const readings = certificate.points.map(({ reading }) => reading);
    const span = { from: Math.min(...readings), to: Math.max(...readings) };
    if (!covers(span, task))
      add(
        'outside-calibration',
        'certificate.points',
        outside('it is calibrated', span, task, instrument),
        'Use one that is calibrated there, or have more points calibrated.',
      );
  }
  return problems;
}

/** How far off it was found, as words: "off by -1.1 N·m at 30 N·m". */
export function offBy(instrument: Instrument, { reading, error }: OutOfTolerance): string {
  const unit = unitOf(instrument);
  return `off by ${error > 0 ? '+' : ''}${significant(error)} ${unit} at ${significant(reading)} ${unit}`;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

const covers = (span: Span, task: Span) => order(task.from, span.from) >= 0 && order(task.to, span.to) <= 0;

function outside(what: string, span: Span, task: Span, instrument: Instrument): string {
  const unit = unitOf(instrument);
  return `${what} from ${significant(span.from)} to ${significant(span.to)} ${unit}; this job asks for ${significant(task.from)} to ${significant(task.to)} ${unit}`;
}
