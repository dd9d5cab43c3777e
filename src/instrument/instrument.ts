import { z } from 'zod';
import { furtherTermSchema } from '../metrology/further-term.ts';
import { permissibleDeviationSchema } from '../metrology/permissible.ts';
import { w } from '../words/catalogue.ts';
import { certificateSchema } from './certificate.ts';

const basis = z.string().min(1).max(160);

/** What a laboratory found of an instrument that no certificate from that day on has put right. */
export const outOfToleranceSchema = z.strictObject({
  impact: z
    .string()
    .regex(/^IA-[1-9]\d{0,5}$/, {
      error: () => w`expected the number of an impact assessment, like IA-1`,
    })
    .describe('Number of the impact assessment that holds the finding.'),
  on: z.iso.date().describe('The day of the finding.'),
  reading: z.number().describe('Where it was off the most, against what is permitted there; in N·m or mm.'),
  error: z.number().describe('How far it was off there.'),
});
export type OutOfTolerance = z.infer<typeof outOfToleranceSchema>;

/** An instrument of the station: which tool it is, and how far it may be off. Amounts in N·m (torque) or mm (length). */
export const instrumentSchema = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z][a-z0-9-]{0,31}$/, {
      error: () => w`expected a short name in small letters, digits and hyphens`,
    })
    .describe('Short name of the tool: small letters, digits and hyphens.'),
  quantity: z.enum(['torque', 'length']).describe('What it measures: a wrench torque, a gap gauge length.'),
  type: z
    .enum(['setting', 'indicating'])
    .exactOptional()
    .describe('Of a wrench (ISO 6789): a `setting` one releases with a click, an `indicating` one does not.'),
  maker: z.string().min(1).max(60).exactOptional().describe('Who made it.'),
  model: z.string().min(1).max(60).exactOptional().describe('Its model.'),
  serial: z
    .string()
    .min(1)
    .max(60)
    .exactOptional()
    .describe('Serial number. A device with another one is refused.'),
  range: z
    .strictObject({
      from: z.number().nonnegative().describe('The lower end.'),
      to: z.number().positive().describe('The upper end.'),
    })
    .refine(({ from, to }) => from < to, { path: ['from'], error: () => w`expected the lower end first` })
    .exactOptional()
    .describe('What it may be used for, in N·m or mm.'),
  permissibleDeviation: permissibleDeviationSchema
    .exactOptional()
    .describe('What its data sheet or class promises. Needed where there is no certificate.'),
  classUncertainty: z
    .strictObject({
      within: permissibleDeviationSchema.describe('U (k = 2).'),
      basis: basis.describe('Where that comes from.'),
    })
    .exactOptional()
    .describe(
      'Of a tool without a certificate: the uncertainty of whoever held it against `permissibleDeviation`; a quarter of that unless given.',
    ),
  resolution: z.number().positive().describe('The step of its readings, in N·m or mm.'),
  basis: basis.describe('Where the promise comes from: a class of a standard, a data sheet.'),
  certificate: certificateSchema.exactOptional().describe('Its calibration certificate.'),
  correct: z
    .boolean()
    .exactOptional()
    .describe(
      "`true`: the certificate's errors are taken off each reading. Otherwise they stay in the uncertainty.",
    ),
  interval: z
    .strictObject({
      months: z.int().positive().max(120).describe('Months since the calibration.'),
      cycles: z.int().positive().exactOptional().describe('Cycles since the calibration.'),
    })
    .exactOptional()
    .describe('When it is to be calibrated again, whichever comes first.'),
  cyclesUsed: z
    .int()
    .nonnegative()
    .exactOptional()
    .describe("Cycles since the calibration, by the tool's own counter."),
  repeatability: z
    .strictObject({
      readings: z.array(z.number()).min(2).max(100).describe('The readings; not all the same.'),
      basis: basis.describe('How they were made.'),
    })
    .refine(({ readings }) => new Set(readings).size > 1, {
      path: ['readings'],
      error: () =>
        w`all readings are the same: a spread of zero is the step of the display, not the repeatability`,
    })
    .exactOptional()
    .describe('Readings of one and the same thing, made in the shop.'),
  driftPerYear: z
    .strictObject({
      within: permissibleDeviationSchema.describe('How far.'),
      basis: basis.describe('Where that comes from.'),
    })
    .exactOptional()
    .describe('How far it may wander within a year.'),
  furtherTerms: z
    .array(furtherTermSchema)
    .min(1)
    .max(12)
    .exactOptional()
    .describe('What else makes its readings uncertain in this shop.'),
  outOfTolerance: outOfToleranceSchema
    .exactOptional()
    .describe('A finding that no later certificate has put right. Only in the log, never in a station file.'),
});
export type Instrument = z.infer<typeof instrumentSchema>;

/** An instrument in a job. */
export type InstrumentInUse = Instrument & {
  /** Its permissible deviation is not the station file's but the wider one that the device itself publishes. */
  readonly promiseOfDevice?: true;
};
