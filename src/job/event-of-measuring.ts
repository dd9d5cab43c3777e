/** What was measured, and the cylinder it was given to. */
import { z } from 'zod';
import { judgementSchema, turnJudgementSchema } from '../metrology/judgement.ts';
import { pullSchema } from '../pull/pull.ts';
import { evidenceSchema } from '../sequence/evidence.ts';
import { askSchema, pullKindSchema } from '../sequence/kind.ts';
import { placementReasonSchema } from '../sequence/reason.ts';
import { cylinder, person, reason, source, toolId, us, why } from './event-fields.ts';
import { stepSchema } from './order-of-work.ts';
import { outOfTurnSchema } from './out-of-order.ts';

/** Why a plug goes to the scrap: it fell, its tip or insulator broke, or its gap cannot be set as the rules allow. */
export const scrapReasonSchema = z.enum(['dropped', 'broken-tip', 'cracked-insulator', 'gap']);
export type ScrapReason = z.infer<typeof scrapReasonSchema>;

export const MEASURING_EVENTS = [
  z
    .strictObject({
      type: z.literal('gap-measured'),
      tool: toolId,
      reading: z.int().min(1).describe("The driver's number of the reading."),
      atUs: us,
      source,
      cylinder,
      judgement: judgementSchema.describe('The verdict.'),
    })
    .describe('A gap was measured.'),
  z
    .strictObject({
      type: z.literal('gap-out-of-turn'),
      tool: toolId,
      reading: z.int().min(1).describe("The driver's number of the reading."),
      atUs: us,
      source,
      gapMm: z.number().describe('The gap in mm.'),
      because: outOfTurnSchema,
    })
    .describe('A gap was measured out of its turn. It is kept and given to no plug.'),
  z
    .strictObject({
      type: z.literal('gap-kept'),
      cylinder,
      step: stepSchema.describe('The step that had not been done when it was measured.'),
      by: person,
      reason,
    })
    .describe(
      'The gap that was measured last, out of its turn, is kept for this cylinder: somebody answers for it by name, and it is not proven. A `gap-measured` of that reading follows.',
    ),
  z
    .strictObject({
      type: z.literal('gap-inspected'),
      cylinder,
      sound: z.boolean().describe('Whether it looks sound.'),
    })
    .describe('The gap was looked at, because the specification permits no more.'),
  z
    .strictObject({
      type: z.literal('wire-tried'),
      cylinder,
      outcome: z.enum(['fits', 'tight', 'wide']).describe('Right, too tight or too wide.'),
    })
    .describe('Two wires were tried in the gap. A `gap-measured` of the tool `wire` follows.'),
  z
    .strictObject({ type: z.literal('plug-scrapped'), cylinder, reason: scrapReasonSchema.describe('Why.') })
    .describe('The plug for this cylinder goes to the scrap; another takes its place.'),
  pullSchema.extend({ type: z.literal('pull-detected') }).describe('A pull was found in the samples.'),
  z
    .strictObject({
      type: z.literal('pull-placed'),
      pull: z.int().min(1).describe('Number of the pull.'),
      cylinder: cylinder
        .nullable()
        .describe('The cylinder that it was given to; null for loosening and handling.'),
      kind: pullKindSchema.describe('What kind of pull it was.'),
      because: placementReasonSchema.describe('Why it was taken for that kind.'),
      otherPull: z
        .int()
        .min(1)
        .exactOptional()
        .describe('The pull that it was placed with, or that went on from it.'),
      leftOut: cylinder
        .exactOptional()
        .describe('The cylinder that was left out, so that this pull moved on.'),
      judgement: judgementSchema
        .nullable()
        .describe(
          'The verdict; null where nothing is judged. Where the turn is judged too, result and side are the worse of the two, and all else is of the torque.',
        ),
      turn: turnJudgementSchema
        .nullable()
        .exactOptional()
        .describe(
          'The verdict on the turn of the plug, where the specification asks for one; null where it was not measured, which proves nothing.',
        ),
      ask: askSchema.exactOptional().describe('What there is to ask; only with `unsure`.'),
      evidence: evidenceSchema
        .exactOptional()
        .describe(
          'What the placement rests on; absent where a person gave the answer, and where the tool sends no more than the highest torque.',
        ),
    })
    .describe('A pull was given to a cylinder, or to none.'),
  z
    .strictObject({
      type: z.literal('pull-given'),
      pull: z.int().min(1).describe('Number of the pull.'),
      cylinder,
      why,
    })
    .describe('A person gave a pull to a plug.'),
  z
    .strictObject({
      type: z.literal('cylinder-left-out'),
      pull: z.int().min(1).describe('The pull that raised the question.'),
      cylinder,
      on: cylinder.describe('The tight plug that this pull was on.'),
      why,
    })
    .describe(
      'A person says that the plug of this cylinder was never tightened: the pulls from it on move by one plug.',
    ),
  z
    .strictObject({
      type: z.literal('cylinder-restarted'),
      cylinder,
      newPlug: z.boolean().describe('Whether a new plug takes its place.'),
      why,
    })
    .describe(
      'A plug is backed off to start again. What it had proven stays on the record and counts no more.',
    ),
] as const;
