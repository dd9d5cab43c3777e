import { z } from 'zod';
import { plugFeatureSchema } from '../plug/feature.ts';
import { replacementSchema } from '../plug/gap.ts';

const cylinder = z.int().min(1).describe('The cylinder; with two plugs a cylinder, the plug.');

/** One thing that stands between a job and its end. What is printed for each is in report/words/open-item.ts. */
export const openItemSchema = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z
        .enum([
          'old-plug-not-read',
          'new-plug-not-checked',
          'gap-not-measured',
          'gap-not-proven',
          'no-torque',
          'torque-not-proven',
          'torque-in-question',
        ])
        .describe('What is missing.'),
      cylinder,
    })
    .describe('Something is missing on a cylinder.'),
  z
    .strictObject({
      kind: z.literal('new-plug-differs'),
      cylinder,
      features: z.array(plugFeatureSchema).min(1).describe('In what it differs.'),
    })
    .describe('The new plug is not that of the order.'),
  replacementSchema
    .extend({ kind: z.literal('plug-to-be-replaced'), cylinder })
    .describe('Its gap asks for another plug.'),
  z
    .strictObject({
      kind: z
        .enum([
          'windows-not-confirmed',
          'before-removal-not-attested',
          'fitting-not-attested',
          'afterwards-not-attested',
        ])
        .describe('Which step.'),
    })
    .describe('A step of the routine is missing.'),
  z
    .strictObject({
      kind: z.literal('question-not-answered'),
      pull: z.int().min(1).describe('Number of the pull that is asked about.'),
    })
    .describe('A question about a pull is open.'),
  z.strictObject({ kind: z.literal('declared-void') }).describe('The job was declared void.'),
]);
export type OpenItem = z.infer<typeof openItemSchema>;
export type OpenKind = OpenItem['kind'];
