import { z } from 'zod';
import { decisionRuleSchema } from '../metrology/decision.ts';
import { windowSchema } from '../metrology/judgement.ts';
import { gapPolicySchema } from '../plug/gap.ts';
import { noteSchema } from '../plug/note.ts';
import { orderOfWorkSchema } from './order-of-work.ts';

/** How the shop decides, and whether it wants the four grades of ILAC-G8 beside the verdict. */
export const decisionSchema = z.strictObject({
  rule: decisionRuleSchema.describe('When a reading counts as proof.'),
  grades: z.boolean().describe('Whether the four grades of ILAC-G8 are shown as well.'),
});
export type Decision = z.infer<typeof decisionSchema>;

/** Guard band r·U with r = 1 (ILAC-G8:09/2019): what a shop decides by that says nothing. */
export const USUAL_DECISION: Decision = { rule: { kind: 'guard-band', r: 1 }, grades: false };

/** What all verdicts of a job rest on beside its order and its instruments; frozen when it is opened. */
export const basisSchema = z.strictObject({
  on: z.iso.date().describe('The day of the job: certificates must be in date, and drift counts up to it.'),
  decision: decisionSchema.describe('How the shop decides.'),
  firstTorqueWindow: windowSchema
    .nullable()
    .describe('The window of the first of two steps; null for a plain tightening.'),
  turn: z
    .strictObject({
      lowerDeg: z.number().positive().describe('Lower limit.'),
      upperDeg: z
        .number()
        .positive()
        .describe('Upper limit; that of a single figure is the same as the lower.'),
      alone: z
        .literal(true)
        .exactOptional()
        .describe('The order names no torque: the torque window is what thread and seat usually take.'),
    })
    .readonly()
    .exactOptional()
    .describe(
      'The turn from contact that is judged beside the torque, or in place of it; absent for torque alone.',
    ),
  gap: gapPolicySchema.describe('How the gap is found and changed, defaults filled in.'),
  orderOfWork: orderOfWorkSchema
    .exactOptional()
    .describe('Which steps must keep their order, defaults filled in; absent in a job of before.'),
  notes: z
    .array(noteSchema)
    .max(20)
    .describe('What a reader should know about the figures: tables, sources set aside, reductions.'),
});
export type Basis = z.infer<typeof basisSchema>;
