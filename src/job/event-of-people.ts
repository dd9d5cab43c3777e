/** What people state, attest, answer and decide. */
import { z } from 'zod';
import { conditionSchema, damageSchema, threadStateSchema } from '../plug/condition.ts';
import { plugFeatureSchema } from '../plug/feature.ts';
import { cylinder, ownWords, person, reason, source, toolId, us, why } from './event-fields.ts';
import { listPhaseSchema, shortNameSchema } from './routine.ts';

export const answerSchema = z.enum(['fresh', 'rehit', 'handling', 'refit', 'replace', 'unfinished']);
/**
 * `unfinished`: it was a stroke on the way. `fresh`: it was the tightening of this cylinder. `rehit`: a second pull on a plug already tight. `handling`: no plug
 * was turned. `refit`: plug backed out, thread inspected, to be fitted again. `replace`: the same with a new plug.
 */
export type Answer = z.infer<typeof answerSchema>;

export const PEOPLE_EVENTS = [
  z
    .strictObject({ type: z.literal('technician-at-work'), person })
    .describe('Who works on the engine from here on. Whoever answers for the job stays the same.'),
  z.strictObject({ type: z.literal('windows-confirmed') }).describe('Somebody confirmed the windows.'),
  z
    .strictObject({ type: z.literal('trial-click-skipped') })
    .describe('Somebody passed over the trial click.'),
  z
    .strictObject({
      type: z.literal('steps-attested'),
      phase: listPhaseSchema.describe('Which list.'),
      steps: z
        .array(
          z.strictObject({
            item: shortNameSchema.describe('The item, by its id in the routine.'),
            as: shortNameSchema.describe("`done`, `not-done`, or one of the item's choices, by its id."),
            why: why.exactOptional(),
          }),
        )
        .min(1)
        .max(12)
        .describe('An answer for each item.'),
      together: z
        .literal(true)
        .exactOptional()
        .describe('The items were answered by one key, or all within a second.'),
    })
    .describe('A list of the routine was attested as a whole. The last one counts.'),
  z
    .strictObject({
      type: z.literal('old-plugs-read'),
      cylinders: z.array(cylinder).min(1).describe('The cylinders.'),
      condition: conditionSchema.describe('The gravest condition that fits.'),
      damage: z.array(damageSchema).describe('What is broken.'),
      thread: threadStateSchema.describe('The thread in the head, as seen in the hole.'),
      note: ownWords(z.string().max(200)).exactOptional(),
    })
    .describe('How the plugs that came out of these cylinders look.'),
  z
    .strictObject({
      type: z.literal('old-gap-measured'),
      tool: toolId,
      reading: z.int().min(1).describe("The driver's number of the reading."),
      atUs: us,
      source,
      cylinder,
      gapMm: z.number().describe('The gap in mm.'),
    })
    .describe('The gap of an old plug. It is judged against nothing.'),
  z
    .strictObject({
      type: z.literal('removal-felt'),
      cylinder,
      pull: z.int().min(1).describe('Number of the loosening pull.'),
    })
    .describe('The removal torque of the plug of this cylinder.'),
  z
    .strictObject({
      type: z.literal('new-plugs-checked'),
      cylinders: z.array(cylinder).min(1).describe('The cylinders they are for.'),
      part: z.string().min(1).max(60).describe('Part number on the plug.'),
      lot: z.string().min(1).max(40).nullable().describe('Lot number; null where there is none.'),
      differs: z.array(plugFeatureSchema).describe('In what they differ; empty when they agree.'),
    })
    .describe('New plugs were held against the old ones and the specification.'),
  z
    .strictObject({
      type: z.literal('taken-back'),
      said: z
        .int()
        .min(1)
        .describe(
          'Which one, counted from 1 among the entries of these types: `windows-confirmed`, `steps-attested`, `old-plugs-read`, `old-gap-measured`, `new-plugs-checked`, `gap-measured`, `fitted-by-angle`, `pull-accepted`; with `of`, among those of that type.',
        ),
      of: z
        .enum(['gap-inspected', 'plug-scrapped', 'question-answered'])
        .exactOptional()
        .describe('The type of the entry, where it is one of these.'),
      why: reason,
    })
    .describe(
      'Something that was stated, or a gap that was read, was taken back. It stays, and counts no more.',
    ),
  z
    .strictObject({
      type: z.literal('fitted-by-angle'),
      cylinder,
      turn: z.string().min(1).max(40).describe('The angle as the source prints it, `1/2 turn`.'),
      why,
    })
    .describe('No torque wrench reaches the plug: it was turned by an angle, which proves no torque.'),
  z
    .strictObject({
      type: z.literal('pull-accepted'),
      pull: z.int().min(1).describe('Number of the pull.'),
      cylinder,
      by: person,
      reason,
    })
    .describe(
      'A pull that went too far, or came too early, stays as it is: somebody answers for it by name.',
    ),
  z
    .strictObject({ type: z.literal('job-handed-over'), to: person })
    .describe('From here on somebody else works on the job and answers for it.'),
  z
    .strictObject({
      type: z.literal('job-voided'),
      by: person,
      reason,
    })
    .describe('The job was declared void. What was read stays, and proves nothing. Final.'),
  z
    .strictObject({
      type: z.literal('cylinder-chosen'),
      quantity: z
        .enum(['torque', 'length', 'old-plug'])
        .describe('The next pull, the next gap, or the next old plug.'),
      cylinder,
    })
    .describe('The next reading is for this cylinder.'),
  z
    .strictObject({
      type: z.literal('question-answered'),
      pull: z.int().min(1).describe('Number of the pull.'),
      answer: answerSchema.describe(
        '`fresh`: the tightening of this cylinder. `rehit`: a second pull on a tight plug. `handling`: no plug was turned. `refit`: backed out, to be fitted again. `replace`: the same with a new plug. `unfinished`: a stroke on the way.',
      ),
    })
    .describe('A question about a pull was answered.'),
] as const;
