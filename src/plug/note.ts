/** What a reader should know about the figures of an order: codes with their figures; the words are in report/words. */
import { z } from 'zod';
import {
  headMaterialSchema,
  seatSchema,
  specificationSchema,
  threadConditionSchema,
} from './specification.ts';

const { kind, title } = specificationSchema.shape.source.shape;
const lubricant = z.enum(['oiled', 'anti-seize']).describe('What is on the threads.');

export const noteSchema = z.discriminatedUnion('code', [
  z
    .strictObject({ code: z.literal('no-general-table') })
    .describe('No general table has a figure for this thread and seat.'),
  z
    .strictObject({
      code: z.literal('outside-general-tables'),
      lowestNm: z.number().describe('The lowest torque in the tables.'),
      highestNm: z.number().describe('The highest torque in the tables.'),
      seat: seatSchema.describe('The seat that they are for.'),
      head: headMaterialSchema.describe('The head that they are for.'),
    })
    .describe('No general table holds the whole of the torque range.'),
  z
    .strictObject({ code: z.literal('general-tables-disagree') })
    .describe('No torque suits all publishers of general tables.'),
  z
    .strictObject({ code: z.literal('general-table-used') })
    .describe('The figure comes from a general table and is not for this engine.'),
  z
    .strictObject({
      code: z.literal('source-set-aside'),
      source: kind,
      title,
      torque: specificationSchema.shape.torque.describe('The torque as that source prints it.'),
      threads: threadConditionSchema.describe('The condition of the threads that it assumes.'),
    })
    .describe('Another source that was not worked to.'),
  z
    .strictObject({ code: z.literal('threads-dry') })
    .describe('The figure assumes dry threads, without oil and without anti-seize.'),
  z
    .strictObject({
      code: z.literal('torque-reduced'),
      percent: z.number().describe('By how much.'),
      lubricant,
    })
    .describe("The torque was reduced by the shop's own rule."),
  z
    .strictObject({
      code: z.literal('reduction-by-friction'),
      frictionDry: z.number().describe('Coefficient of friction before.'),
      frictionLubricated: z.number().describe('Coefficient of friction after.'),
      percent: z.int().describe('By how much the torque for the same clamp force falls, whole per cent.'),
    })
    .describe('What a usual fall of friction would ask for (Motosh; seat ring assumed).'),
  z
    .strictObject({ code: z.literal('plug-used') })
    .describe('A used plug goes back into the cylinder that it came from.'),
  z
    .strictObject({ code: z.literal('gasket-used') })
    .describe('A used gasket takes far less angle than a new one.'),
  z
    .strictObject({ code: z.literal('by-angle-alone') })
    .describe(
      'The order names an angle and no torque: the turn is judged, and the torque only for being usual for thread and seat.',
    ),
  z
    .strictObject({ code: z.literal('turn-without-tolerance') })
    .describe('The angle is one figure without a tolerance, which nothing can prove.'),
]);
export type Note = z.infer<typeof noteSchema>;
