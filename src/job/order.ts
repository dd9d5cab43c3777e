import { z } from 'zod';
import { personal } from '../personal.ts';
import { adapterSchema, flexJointSchema } from '../plug/geometry.ts';
import { headMaterialSchema, plugSchema, specificationSchema } from '../plug/specification.ts';
import { misnumbered } from '../sequence/plan.ts';
import { w } from '../words/catalogue.ts';

export const MAX_CYLINDERS = 24;
const MAX_PLUGS = 2;

const cylinderNumber = z.int().min(1).max(MAX_CYLINDERS);

const engineSchema = z
  .strictObject({
    banks: z
      .array(z.array(cylinderNumber).min(1))
      .min(1)
      .max(4)
      .describe(
        'The engine seen from above: one list a bank, each from front to rear, with the cylinder numbers of the engine maker.',
      ),
    serviceOrder: z
      .array(cylinderNumber)
      .min(1)
      .describe('The order in which the technician works; every cylinder once.'),
    plugs: z
      .array(
        z.strictObject({
          cylinder: cylinderNumber.describe('The cylinder.'),
          plugs: z.array(cylinderNumber).min(1).max(MAX_PLUGS).describe('The numbers of its plugs.'),
        }),
      )
      .min(1)
      .exactOptional()
      .describe(
        'Only where a cylinder has two plugs: each plug has a number of its own in `banks`, and here its cylinder.',
      ),
    firingOrder: z
      .array(cylinderNumber)
      .min(1)
      .exactOptional()
      .describe('For display only; every cylinder once. Nothing is tightened in this order.'),
    headMaterial: headMaterialSchema.describe('Material of the cylinder head.'),
    description: z.string().max(120).exactOptional().describe('The engine in words.'),
  })
  .superRefine((engine, ctx) => {
    const wrong = misnumbered(engine);
    if (wrong !== null) ctx.addIssue({ code: 'custom', path: [wrong.field], message: wrong.message });
  });
export type Engine = z.infer<typeof engineSchema>;

/** The work order: what is to be done, to which engine, to which figures. "plugmark manual work-order" is about it. */
export const workOrderSchema = z.strictObject({
  form: z.literal('plugmark/work-order/1'),
  job: z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/, {
      error: () =>
        w`expected 1 to 40 letters, digits, dots, hyphens or underscores, the first a letter or digit`,
    })
    .describe('Number of the job. It names the files: letters, digits, `.`, `-`, `_`, at most 40.'),
  technician: personal('person', z.string().min(1).max(80).describe('Who works.')),
  vehicle: z
    .strictObject({
      vin: personal('vin', z.string().max(17).describe('Vehicle identification number.')).exactOptional(),
      plate: personal('plate', z.string().max(20).describe('Number plate.')).exactOptional(),
      description: personal('vehicle', z.string().max(120).describe('The vehicle in words.')).exactOptional(),
      odometerKm: z.int().nonnegative().exactOptional().describe('Reading of the odometer.'),
      fleet: personal(
        'fleet',
        z.string().max(40).describe('The number under which its fleet runs it.'),
      ).exactOptional(),
    })
    .describe('The vehicle.'),
  customer: personal(
    'customer',
    z.string().min(1).max(120).describe('Who brought it, as on the invoice.'),
  ).exactOptional(),
  complaint: personal(
    'complaint',
    z.string().max(200).describe("Why it came, in the customer's words."),
  ).exactOptional(),
  engine: engineSchema.describe('The engine.'),
  plug: plugSchema.describe('The plug to be fitted.'),
  specification: specificationSchema.describe('The figures of the service information.'),
  adapter: adapterSchema
    .exactOptional()
    .describe(
      'A crowfoot or an offset extension between wrench and plug. A straight extension needs no entry.',
    ),
  flexJoint: flexJointSchema
    .exactOptional()
    .describe('A universal joint or a wobble extension between wrench and plug.'),
});
export type WorkOrder = z.infer<typeof workOrderSchema>;
