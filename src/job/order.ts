import { z } from 'zod';
import { plugSchema, specificationSchema } from '../plug/specification.ts';

export const MAX_CYLINDERS = 24;

const cylinderNumber = z.int().min(1).max(MAX_CYLINDERS);

const engineSchema = z
  .strictObject({
    /** The engine as seen from above: one list a bank, each from front to rear, with the numbers the maker gives. */
    banks: z.array(z.array(cylinderNumber).min(1)).min(1).max(4),
    /** The order in which the technician goes round; every cylinder once. */
    serviceOrder: z.array(cylinderNumber).min(1),
    headMaterial: z.enum(['aluminium', 'cast-iron']),
    description: z.string().max(120).exactOptional(),
  })
  .superRefine((engine, ctx) => {
    const numbers = engine.banks.flat();
    if (new Set(numbers).size !== numbers.length)
      ctx.addIssue({
        code: 'custom',
        path: ['banks'],
        message: 'a cylinder number stands twice; expected each once',
      });
    const sorted = (list: readonly number[]) => [...list].sort((a, b) => a - b).join();
    if (sorted(engine.serviceOrder) !== sorted(numbers))
      ctx.addIssue({
        code: 'custom',
        path: ['serviceOrder'],
        message: `expected every cylinder of banks exactly once (${[...numbers].sort((a, b) => a - b).join(', ')})`,
      });
  });
export type Engine = z.infer<typeof engineSchema>;

/** The work order: what is to be done, to which engine, to which figures. JSON, documented in the README. */
export const workOrderSchema = z.strictObject({
  form: z.literal('plugmark/work-order/1'),
  /** Names the job everywhere, file names included: letters, digits, dot, hyphen, underscore. */
  job: z
    .string()
    .regex(
      /^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/,
      'expected 1 to 40 letters, digits, dots, hyphens or underscores, the first a letter or digit',
    ),
  technician: z.string().min(1).max(80),
  vehicle: z.strictObject({
    vin: z.string().max(17).exactOptional(),
    plate: z.string().max(20).exactOptional(),
    description: z.string().max(120).exactOptional(),
    odometerKm: z.int().nonnegative().exactOptional(),
  }),
  engine: engineSchema,
  plug: plugSchema,
  specification: specificationSchema,
});
export type WorkOrder = z.infer<typeof workOrderSchema>;
