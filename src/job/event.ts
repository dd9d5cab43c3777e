import { z } from 'zod';
import { instrumentSchema } from '../instrument/instrument.ts';
import { refusalSchema } from '../instrument/unfit.ts';
import { judgementSchema, turnJudgementSchema, windowSchema } from '../metrology/judgement.ts';
import { permissibleDeviationSchema } from '../metrology/permissible.ts';
import { personal } from '../personal.ts';
import { conditionSchema, damageSchema, threadStateSchema } from '../plug/condition.ts';
import { plugFeatureSchema } from '../plug/feature.ts';
import { pullSchema } from '../pull/pull.ts';
import { detectorSettingsSchema } from '../pull/settings.ts';
import {
  figureSourceSchema,
  linkEndReasonSchema,
  missReasonSchema,
  refusalReasonSchema,
  toolDescriptionSchema,
} from '../reading.ts';
import { evidenceSchema } from '../sequence/evidence.ts';
import { askSchema, pullKindSchema } from '../sequence/kind.ts';
import { placementReasonSchema } from '../sequence/reason.ts';
import { basisSchema } from './basis.ts';
import { openItemSchema } from './open-item.ts';
import { workOrderSchema } from './order.ts';
import { outOfTurnSchema } from './out-of-order.ts';
import { listPhaseSchema, routineSchema, shortNameSchema } from './routine.ts';

const toolId = z.string().min(1).max(32).describe('The tool, by its id in the station file.');
const cylinder = z.int().min(1).describe('The cylinder; with two plugs a cylinder, the plug.');
const source = figureSourceSchema.describe('Where the figure came from.');
const us = z.int().nonnegative().describe('Monotonic clock of the session, in microseconds.');
const person = personal('person', z.string().min(1).max(80).describe('Name of the person.'));
const reason = personal('note', z.string().min(1).max(200).describe('Why, in words of the person.'));
/** In a person's own words. */
const why = personal('note', z.string().max(200).describe("Why, in the person's own words."));

const base64 = z.string().regex(/^[A-Za-z0-9+/]*={0,2}$/, 'expected base64');

/** Samples of one tool in the compact coding of src/pull/trace.ts. */
export const readingsSchema = z
  .strictObject({
    type: z.literal('readings'),
    tool: toolId,
    first: z
      .int()
      .min(1)
      .describe("The driver's number of the first sample; the others follow without a break."),
    count: z.int().min(1).describe('How many samples.'),
    startUs: us.describe('Stamp from which the differences count, in microseconds.'),
    times: base64.describe('Differences of the time steps in microseconds: zigzag, 7-bit groups, base64.'),
    counts: base64.describe('Differences of the counts: zigzag, 7-bit groups, base64.'),
    angles: base64
      .exactOptional()
      .describe(
        'Differences of the angles, coded in the same way: an angle is a sum of them · 10^exponent degrees, with the exponent under `angle` in the description of the tool. Absent where the tool sends none.',
      ),
  })
  .describe(
    'Samples of one tool, in a compact coding. A figure is counts · 10^exponent of the unit, both as the last `tool-linked` of this tool describes it.',
  );

export const answerSchema = z.enum(['fresh', 'rehit', 'handling', 'refit', 'replace', 'unfinished']);
/**
 * `unfinished`: it was a stroke on the way. `fresh`: it was the tightening of this cylinder. `rehit`: a second pull on a plug already tight. `handling`: no plug
 * was turned. `refit`: plug backed out, thread inspected, to be fitted again. `replace`: the same with a new plug.
 */
export type Answer = z.infer<typeof answerSchema>;

/** Why a plug goes to the scrap: it fell, its tip or insulator broke, or its gap cannot be set as the rules allow. */
export const scrapReasonSchema = z.enum(['dropped', 'broken-tip', 'cracked-insulator', 'gap']);
export type ScrapReason = z.infer<typeof scrapReasonSchema>;

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
      basis: basisSchema.describe('What else the verdicts rest on.'),
      rules: z.string().describe('The rules that find and judge the pulls. Judging again needs the same.'),
      routine: routineSchema
        .exactOptional()
        .describe('The steps around the torque; absent where the shop wants none.'),
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
  z
    .strictObject({
      type: z.literal('session-started'),
      session: z
        .int()
        .min(1)
        .describe('Rises by one with every start. A monotonic clock holds within one session only.'),
      program: z.string().describe('Name and version of the program.'),
      platform: z.string().describe('What it runs on.'),
    })
    .describe('The program was started on this job.'),
  z
    .strictObject({
      type: z.literal('tool-linked'),
      tool: toolId,
      driver: z.string().describe('The driver that reads it.'),
      source: figureSourceSchema.describe(
        'Where all its figures come from, until it is linked again. `replayed` and `simulated` figures prove nothing; `typed` ones are attested by the person at work.',
      ),
      description: toolDescriptionSchema.describe('What the tool says of itself.'),
      detection: detectorSettingsSchema
        .exactOptional()
        .describe(
          'Of a torque wrench: how pulls are looked for in its readings, what it does not state filled in.',
        ),
    })
    .describe('A tool joined.'),
  // It never works the other way: a link is not proof enough to make a guard band narrower.
  z
    .strictObject({
      type: z.literal('uncertainty-declared'),
      tool: toolId,
      permissibleDeviation: permissibleDeviationSchema.describe('How far it may be off.'),
      window: windowSchema.describe('The window that follows.'),
      firstWindow: windowSchema
        .nullable()
        .describe('That of the first of two steps; null for a plain tightening.'),
    })
    .describe(
      'The device says that it may be off by more than the station file says, and there is no certificate. From here on that holds.',
    ),
  z
    .strictObject({
      type: z.literal('tool-lost'),
      tool: toolId,
      reason: linkEndReasonSchema.describe('Why.'),
      controllerReason: z
        .int()
        .min(0)
        .max(255)
        .exactOptional()
        .describe(
          'The reason of the Bluetooth controller (Core specification, Vol 1 Part F); absent where it gave none.',
        ),
    })
    .describe('The link to a tool ended.'),
  readingsSchema,
  z
    .strictObject({
      type: z.literal('readings-missed'),
      tool: toolId,
      fromUs: us,
      toUs: us,
      readings: z.int().min(1).exactOptional().describe('How many, where the tool counts them.'),
      reason: missReasonSchema.describe('Why.'),
    })
    .describe('Readings did not arrive.'),
  z
    .strictObject({
      type: z.literal('tool-silent'),
      tool: toolId,
      atUs: us,
    })
    .describe(
      'Nothing came from the tool up to then. Written where that ends a pull: of a tool that sends one figure a pull.',
    ),
  z
    .strictObject({
      type: z.literal('value-stored'),
      tool: toolId,
      reading: z.int().min(1).describe("The driver's number of the reading."),
      atUs: us,
      counts: z.int().describe('The figure, in steps as the last `tool-linked` of this tool describes them.'),
      angleCounts: z
        .int()
        .exactOptional()
        .describe('The angle of that reading, in steps of the angle; absent where the tool sends none.'),
    })
    .describe(
      'A reading from the memory of the tool, taken while it was out of reach. It is kept and given to no cylinder.',
    ),
  z
    .strictObject({
      type: z.literal('device-refused'),
      tool: toolId,
      address: z.string().max(64).describe('Its address.'),
      serial: z
        .string()
        .max(256)
        .exactOptional()
        .describe('The serial number that it gave; only with `other-serial`.'),
      reason: refusalReasonSchema.describe('Why.'),
    })
    .describe('A device that looks like the tool was refused.'),
  z
    .strictObject({
      type: z.literal('value-not-known'),
      tool: toolId,
      reading: z.int().min(1).describe("The driver's number of the reading."),
      atUs: us,
    })
    .describe('The tool sent a reading without a value.'),
  z
    .strictObject({
      type: z.literal('raw-value'),
      tool: toolId,
      atUs: us,
      source: z.string().describe('The characteristic that they came from.'),
      hex: z
        .string()
        .regex(/^([0-9a-f]{2})*$/, 'expected whole bytes in small hexadecimal digits')
        .describe('The bytes.'),
    })
    .describe('Bytes whose layout is not described. They are kept, and never guessed.'),
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
      note: why.exactOptional(),
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
          'Which one, counted from 1 among the entries of these types: `windows-confirmed`, `steps-attested`, `old-plugs-read`, `old-gap-measured`, `new-plugs-checked`, `gap-measured`, `fitted-by-angle`, `pull-accepted`.',
        ),
      why: reason,
    })
    .describe(
      'Something that was said, or a gap that was read, was taken back. It stays, and counts no more.',
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
