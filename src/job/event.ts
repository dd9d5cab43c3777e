import { z } from 'zod';
import { instrumentSchema } from '../instrument/instrument.ts';
import { refusalSchema } from '../instrument/unfit.ts';
import { windowSchema } from '../metrology/judgement.ts';
import { basisSchema } from './basis.ts';
import { person, reason, toolId } from './event-fields.ts';
import { MEASURING_EVENTS } from './event-of-measuring.ts';
import { PEOPLE_EVENTS } from './event-of-people.ts';
import { TOOL_EVENTS } from './event-of-tools.ts';
import { openItemSchema } from './open-item.ts';
import { workOrderSchema } from './order.ts';
import { routineSchema } from './routine.ts';
import { shopSchema, utcOffsetSchema } from './shop.ts';

export { type ScrapReason, scrapReasonSchema } from './event-of-measuring.ts';
export { type Answer, answerSchema } from './event-of-people.ts';

export const jobEventSchema = z.discriminatedUnion('type', [
  z
    .strictObject({
      type: z.literal('job-opened'),
      order: workOrderSchema.describe('The work order.'),
      instruments: z
        .array(instrumentSchema)
        .min(1)
        .describe('The tools, with their certificates as they were on that day.'),
      torqueWindow: windowSchema.describe('The torque window.'),
      gapWindow: windowSchema.nullable().describe('The gap window; null where the gap is not measured.'),
      furtherWindows: z
        .array(
          z.strictObject({
            tool: toolId,
            window: windowSchema.describe('Its window.'),
            firstWindow: windowSchema
              .nullable()
              .describe('That of the first of two steps; null for a plain tightening, and of a gauge.'),
          }),
        )
        .min(1)
        .max(15)
        .exactOptional()
        .describe(
          'The windows of every further wrench and gauge, each by its own uncertainty; `torqueWindow` and `gapWindow` are those of the first. Absent where there is one of each.',
        ),
      toolsOf: z
        .array(z.strictObject({ tool: toolId, technician: person }))
        .min(1)
        .max(16)
        .exactOptional()
        .describe(
          'Whose tools they are: whoever has such a tool in hand is at work. Absent where nobody says so.',
        ),
      basis: basisSchema.describe('What else the verdicts rest on.'),
      rules: z.string().describe('The rules that find and judge the pulls. Judging again needs the same.'),
      routine: routineSchema
        .exactOptional()
        .describe('The steps around the torque; absent where the shop wants none.'),
      shop: shopSchema
        .exactOptional()
        .describe('The shop as its papers name it; absent where its station file does not say.'),
      utcOffsetMin: utcOffsetSchema
        .exactOptional()
        .describe("Minutes by which the shop's clock was ahead of UTC when the job was opened."),
    })
    .describe('The job was opened. All that its verdicts rest on is frozen here.'),
  z
    .strictObject({
      type: z.literal('instrument-overridden'),
      tool: toolId,
      refusal: refusalSchema.describe('Why it would have been refused.'),
      by: person,
      reason,
    })
    .describe('A supervisor answered for an instrument that would have been refused.'),
  ...TOOL_EVENTS,
  ...MEASURING_EVENTS,
  ...PEOPLE_EVENTS,
  z
    .strictObject({
      type: z.literal('job-closed'),
      complete: z.boolean().describe('Whether nothing is open.'),
      open: z.array(openItemSchema).describe('What is still open; empty when complete.'),
    })
    .describe('The job was closed.'),
]);

/** Everything that can happen in a job. The job's state is the fold of these, and nothing else. */
export type JobEvent = z.infer<typeof jobEventSchema>;
export type JobEventOf<T extends JobEvent['type']> = Extract<JobEvent, { type: T }>;
