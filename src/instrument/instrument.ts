import { z } from 'zod';
import { permissibleDeviationSchema } from '../metrology/permissible.ts';

/** An instrument of the station: which tool it is, and how far it may be off. Amounts in N·m (torque) or mm (length). */
export const instrumentSchema = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z][a-z0-9-]{0,31}$/, 'expected a short name in small letters, digits and hyphens'),
  quantity: z.enum(['torque', 'length']),
  /** Of a torque wrench (ISO 6789): a setting one releases with a click at its setting, an indicating one does not. */
  type: z.enum(['setting', 'indicating']).exactOptional(),
  serial: z.string().max(60).exactOptional(),
  permissibleDeviation: permissibleDeviationSchema,
  /** The step of its display or of its readings. */
  resolution: z.number().positive(),
  /** Where the promise comes from: a class of a standard, a data sheet. */
  basis: z.string().min(1).max(160),
});
export type Instrument = z.infer<typeof instrumentSchema>;
