import { z } from 'zod';
import { permissibleDeviationSchema } from '../metrology/permissible.ts';
import { certificateSchema } from './certificate.ts';

const basis = z.string().min(1).max(160);

/** What a laboratory found of an instrument that no certificate from that day on has put right. */
export const outOfToleranceSchema = z.strictObject({
  /** Number of the impact assessment that holds what was found. */
  impact: z.string().regex(/^IA-[1-9]\d{0,5}$/, 'expected the number of an impact assessment, like IA-1'),
  /** The day of the finding. */
  on: z.iso.date(),
  /** Where it was off the most, against what is permitted there; in N·m or mm. */
  reading: z.number(),
  error: z.number(),
});
export type OutOfTolerance = z.infer<typeof outOfToleranceSchema>;

/** An instrument of the station: which tool it is, and how far it may be off. Amounts in N·m (torque) or mm (length). */
export const instrumentSchema = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z][a-z0-9-]{0,31}$/, 'expected a short name in small letters, digits and hyphens'),
  quantity: z.enum(['torque', 'length']),
  /** Of a torque wrench (ISO 6789): a setting one releases with a click at its setting, an indicating one does not. */
  type: z.enum(['setting', 'indicating']).exactOptional(),
  maker: z.string().min(1).max(60).exactOptional(),
  model: z.string().min(1).max(60).exactOptional(),
  serial: z.string().min(1).max(60).exactOptional(),
  /** What it may be used for: from the lowest marked value to its capacity. */
  range: z
    .strictObject({ from: z.number().nonnegative(), to: z.number().positive() })
    .refine(({ from, to }) => from < to, { path: ['from'], message: 'expected the lower end first' })
    .exactOptional(),
  /** Limits of its class or data sheet; what the uncertainty rests on where there is no certificate. */
  permissibleDeviation: permissibleDeviationSchema.exactOptional(),
  /** The step of its display or of its readings. */
  resolution: z.number().positive(),
  /** Where the promise comes from: a class of a standard, a data sheet, the device itself. */
  basis,
  certificate: certificateSchema.exactOptional(),
  /** Take the certificate's error off each reading; else the error stays in the uncertainty. */
  correct: z.boolean().exactOptional(),
  /** When it has to be calibrated again, whichever comes first. */
  interval: z
    .strictObject({ months: z.int().positive().max(120), cycles: z.int().positive().exactOptional() })
    .exactOptional(),
  /** Cycles since the calibration, by the tool's own counter. */
  cyclesUsed: z.int().nonnegative().exactOptional(),
  /** Readings of one and the same thing, made by the shop. */
  repeatability: z
    .strictObject({ readings: z.array(z.number()).min(2).max(100), basis })
    .refine(({ readings }) => new Set(readings).size > 1, {
      path: ['readings'],
      message:
        'all readings are the same: a spread of zero is the step of the display, not the repeatability',
    })
    .exactOptional(),
  /** How far it may wander within a year. */
  driftPerYear: z.strictObject({ within: permissibleDeviationSchema, basis }).exactOptional(),
  /** Of the log, never of a station file: frozen with a job, so that the job is judged again as it was opened. */
  outOfTolerance: outOfToleranceSchema.exactOptional(),
});
export type Instrument = z.infer<typeof instrumentSchema>;
