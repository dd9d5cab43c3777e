import { z } from 'zod';
import { personal } from '../personal.ts';
import { adapterSchema } from '../plug/geometry.ts';
import { headMaterialSchema, plugSchema, specificationSchema } from '../plug/specification.ts';
import { misnumbered } from '../sequence/plan.ts';

export const MAX_CYLINDERS = 24;
const MAX_PLUGS = 2;

const cylinderNumber = z.int().min(1).max(MAX_CYLINDERS);

const engineSchema = z
  .strictObject({
    /** The engine as seen from above: one list a bank, each from front to rear, with the numbers the maker gives. */
    banks: z.array(z.array(cylinderNumber).min(1)).min(1).max(4),
    /** The order in which the technician goes round; every cylinder once. */
    serviceOrder: z.array(cylinderNumber).min(1),
    /** Where a cylinder has several plugs: each plug has its own number in banks, and here its cylinder. */
    plugs: z
      .array(
        z.strictObject({ cylinder: cylinderNumber, plugs: z.array(cylinderNumber).min(1).max(MAX_PLUGS) }),
      )
      .min(1)
      .exactOptional(),
    /** For display only: nothing is tightened in this order. */
    firingOrder: z.array(cylinderNumber).min(1).exactOptional(),
    headMaterial: headMaterialSchema,
    description: z.string().max(120).exactOptional(),
  })
  .superRefine((engine, ctx) => {
    const wrong = misnumbered(engine);
    if (wrong !== null) ctx.addIssue({ code: 'custom', path: [wrong.field], message: wrong.message });
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
  technician: personal('person', z.string().min(1).max(80)),
  vehicle: z.strictObject({
    vin: personal('vin', z.string().max(17)).exactOptional(),
    plate: personal('plate', z.string().max(20)).exactOptional(),
    description: personal('vehicle', z.string().max(120)).exactOptional(),
    odometerKm: z.int().nonnegative().exactOptional(),
    /** The number under which its fleet runs it. */
    fleet: personal('fleet', z.string().max(40)).exactOptional(),
  }),
  /** Who brought it, as the shop writes it on the invoice. */
  customer: personal('customer', z.string().min(1).max(120)).exactOptional(),
  /** Why it came, in the customer's own words. */
  complaint: personal('complaint', z.string().max(200)).exactOptional(),
  engine: engineSchema,
  plug: plugSchema,
  specification: specificationSchema,
  /** A crowfoot or an offset extension between wrench and plug; a straight extension changes nothing. */
  adapter: adapterSchema.exactOptional(),
});
export type WorkOrder = z.infer<typeof workOrderSchema>;
