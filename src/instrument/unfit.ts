/** Why an instrument should not be used for a task: facts, and the problem that each of them is. */
import { z } from 'zod';
import type { Problem } from '../problem.ts';
import { order } from '../quantity/compare.ts';
import { rounded } from '../quantity/rounded.ts';
import { shownUnit, shownValue } from '../quantity/shown.ts';
import { plainFigure, w } from '../words/catalogue.ts';
import { dueDate } from './fitness.ts';
import { type Instrument, type OutOfTolerance, outOfToleranceSchema } from './instrument.ts';

/** What a job asks of an instrument. */
export interface Task {
  /** ISO date of the job. */
  readonly on: string;
  /** The lowest and the highest reading that a verdict rests on. */
  readonly from: number;
  readonly to: number;
}

const unit = z.enum(['N.m', 'mm']).describe('Unit of the figures.');
const spanSchema = z.strictObject({
  unit,
  from: z.number().describe('The lower end.'),
  to: z.number().describe('The upper end.'),
  neededFrom: z.number().describe('The lowest reading that the job needs.'),
  neededTo: z.number().describe('The highest reading that the job needs.'),
});

/** Why an instrument would be refused. A supervisor can answer for each of these. */
export const refusalSchema = z.discriminatedUnion('code', [
  z
    .strictObject({ code: z.literal('out-of-tolerance'), unit, ...outOfToleranceSchema.shape })
    .describe('A laboratory found it out of tolerance, and no later certificate put that right.'),
  z
    .strictObject({
      code: z.literal('calibration-expired'),
      due: z.iso.date().describe('The last day on which its certificate held.'),
    })
    .describe('Its calibration expired.'),
  z
    .strictObject({
      code: z.literal('cycles-used-up'),
      used: z.int().describe('Cycles since its calibration.'),
      permitted: z.int().describe('Cycles permitted between two calibrations.'),
    })
    .describe('It has done more cycles than its interval permits.'),
  z
    .strictObject({ code: z.literal('out-of-range'), ...spanSchema.shape })
    .describe('The job needs more than the range in which it may be used.'),
  z
    .strictObject({ code: z.literal('outside-calibration'), ...spanSchema.shape })
    .describe('The job needs more than the range in which it is calibrated.'),
]);
export type Refusal = z.infer<typeof refusalSchema>;

/** Why an instrument should not be used for this task; empty when it may be. */
export function unfit(instrument: Instrument, task: Task): readonly Refusal[] {
  const { range, certificate, interval, cyclesUsed, outOfTolerance } = instrument;
  const refusals: Refusal[] = [];
  const due = dueDate(instrument);
  const unit = unitOf(instrument);
  const needed = { neededFrom: rounded(task.from, 6), neededTo: rounded(task.to, 6) };
  if (outOfTolerance !== undefined) refusals.push({ code: 'out-of-tolerance', unit, ...outOfTolerance });
  if (due !== null && due < task.on) refusals.push({ code: 'calibration-expired', due });
  if (interval?.cycles !== undefined && cyclesUsed !== undefined && cyclesUsed > interval.cycles)
    refusals.push({ code: 'cycles-used-up', used: cyclesUsed, permitted: interval.cycles });
  if (range !== undefined && !covers(range, task))
    refusals.push({ code: 'out-of-range', unit, ...range, ...needed });
  if (certificate !== undefined) {
    const readings = certificate.points.map(({ reading }) => reading);
    const calibrated = { from: Math.min(...readings), to: Math.max(...readings) };
    if (!covers(calibrated, task))
      refusals.push({ code: 'outside-calibration', unit, ...calibrated, ...needed });
  }
  return refusals;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

const covers = (span: Span, task: Span) => order(task.from, span.from) >= 0 && order(task.to, span.to) <= 0;

/** The field of the instrument that it is about, what is wrong, and what to do. */
export function problemOf(refusal: Refusal): Problem & { readonly where: string } {
  const { code } = refusal;
  switch (code) {
    case 'out-of-tolerance':
      return {
        code,
        where: 'certificate',
        message: w`it was out of tolerance on ${refusal.on} (${refusal.impact}): ${offBy(refusal, refusal.unit)} and cannot be used`,
        next: w`Have it adjusted and calibrated, and give the certificate of that day or later.`,
      };
    case 'calibration-expired':
      return {
        code,
        where: 'certificate.due',
        message: w`its calibration expired on ${refusal.due}`,
        next: w`Have it calibrated.`,
      };
    case 'cycles-used-up':
      return {
        code,
        where: 'cyclesUsed',
        message: w`it has done ${refusal.used} cycles since its calibration; ${refusal.permitted} are allowed`,
        next: w`Have it calibrated.`,
      };
    case 'out-of-range':
      return {
        code,
        where: 'range',
        message: w`it may be used ${spanWords(refusal)}; this job asks for ${neededWords(refusal)}`,
        next: w`Use one of another size.`,
      };
    case 'outside-calibration':
      return {
        code,
        where: 'certificate.points',
        message: w`it is calibrated ${spanWords(refusal)}; this job asks for ${neededWords(refusal)}`,
        next: w`Use one that is calibrated there, or have more points calibrated.`,
      };
  }
}

/** Unit of an instrument's figures. */
export const unitOf = ({ quantity }: Instrument): 'N.m' | 'mm' => (quantity === 'torque' ? 'N.m' : 'mm');

/** Four digits tell enough, and no needless zeros. */
const significant = (value: number, unit: Refused['unit']) =>
  plainFigure(Number(shownValue(value, unit).toPrecision(4)));

/** How far off it was, as words: "off by -1.1 N·m at 30 N·m". */
export function offBy({ reading, error }: OutOfTolerance, unit: Refused['unit']): string {
  const written = shownUnit(unit);
  return w`off by ${error > 0 ? '+' : ''}${significant(error, unit)} ${written} at ${significant(reading, unit)} ${written}`;
}

type Refused = Extract<Refusal, { readonly neededFrom: number }>;

const spanWords = ({ from, to, unit }: Refused) =>
  w`from ${significant(from, unit)} to ${significant(to, unit)} ${shownUnit(unit)}`;

const neededWords = ({ neededFrom, neededTo, unit }: Refused) =>
  w`${significant(neededFrom, unit)} to ${significant(neededTo, unit)} ${shownUnit(unit)}`;
