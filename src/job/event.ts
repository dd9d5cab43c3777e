import { z } from 'zod';
import { instrumentSchema } from '../instrument/instrument.ts';
import { judgementSchema, windowSchema } from '../metrology/judgement.ts';
import { permissibleDeviationSchema } from '../metrology/permissible.ts';
import { personal } from '../personal.ts';
import { conditionSchema, damageSchema, threadStateSchema } from '../plug/condition.ts';
import { pullSchema } from '../pull/pull.ts';
import { toolDescriptionSchema } from '../reading.ts';
import { evidenceSchema } from '../sequence/evidence.ts';
import { askSchema, pullKindSchema } from '../sequence/kind.ts';
import { basisSchema } from './basis.ts';
import { workOrderSchema } from './order.ts';
import { listPhaseSchema, routineSchema } from './routine.ts';

const toolId = z.string().min(1).max(32);
const cylinder = z.int().min(1);
const us = z.int().nonnegative();
const person = personal('person', z.string().min(1).max(80));
/** Why somebody decided so, in his own words. */
const reason = personal('note', z.string().min(1).max(200));
/** In a person's own words. */
const why = personal('note', z.string().max(200));

/** Samples of one tool in the compact coding of src/pull/trace.ts. */
export const readingsSchema = z.strictObject({
  type: z.literal('readings'),
  tool: toolId,
  /** The driver's number of the first sample; the rest follow without a break. */
  first: z.int().min(1),
  count: z.int().min(1),
  exponent: z.int(),
  startUs: us,
  /** base64 of variable-length integers: differences of the time steps, in microseconds. */
  times: z.string(),
  /** base64 of variable-length integers: differences of the counts. */
  counts: z.string(),
});

export const answerSchema = z.enum(['fresh', 'rehit', 'handling', 'refit', 'replace', 'unfinished']);
/**
 * `unfinished`: it was a stroke on the way. `fresh`: it was the tightening of this cylinder. `rehit`: a second pull on a plug already tight. `handling`: no plug
 * was turned. `refit`: plug backed out, thread inspected, to be fitted again. `replace`: the same with a new plug.
 */
export type Answer = z.infer<typeof answerSchema>;

/** Why a plug goes to the scrap: it fell, its tip or insulator broke, or its gap cannot be set as the rules allow. */
export const scrapReasonSchema = z.enum(['dropped', 'broken-tip', 'cracked-insulator', 'gap']);
export type ScrapReason = z.infer<typeof scrapReasonSchema>;

/** What of a new plug is held against the old one and the specification. */
export const plugFeatureSchema = z.enum([
  'thread',
  'pitch',
  'reach',
  'seat',
  'hex',
  'heat-range',
  'resistor',
]);
export type PlugFeature = z.infer<typeof plugFeatureSchema>;

export const jobEventSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('job-opened'),
    order: workOrderSchema,
    instruments: z.array(instrumentSchema).min(1),
    torqueWindow: windowSchema,
    /** Null where the gap is not measured. */
    gapWindow: windowSchema.nullable(),
    basis: basisSchema,
    /** Which rules found the pulls and gave the verdicts: judging again needs the same. */
    rules: z.string(),
    /** The steps around the torque that this shop wants said; absent where it wants none. */
    routine: routineSchema.exactOptional(),
  }),
  /** A supervisor answered for an instrument that would have been refused. */
  z.strictObject({
    type: z.literal('instrument-overridden'),
    tool: toolId,
    code: z.string(),
    /** Why it would have been refused, in words. */
    refusal: z.string(),
    by: person,
    reason,
  }),
  z.strictObject({
    type: z.literal('session-started'),
    /** Rises by one with every start of the program on this job; a clock's origin holds within one session only. */
    session: z.int().min(1),
    program: z.string(),
    platform: z.string(),
    /** The tools of this session were simulated: such a job proves nothing about any engine. */
    simulated: z.boolean(),
  }),
  z.strictObject({
    type: z.literal('tool-linked'),
    tool: toolId,
    driver: z.string(),
    description: toolDescriptionSchema,
  }),
  /**
   * The device says that it may be off by more than its listing says, and there is no certificate: from here on that
   * holds. It never works the other way: a link is not proof enough to make a guard band narrower.
   */
  z.strictObject({
    type: z.literal('uncertainty-declared'),
    tool: toolId,
    permissibleDeviation: permissibleDeviationSchema,
    window: windowSchema,
    firstWindow: windowSchema.nullable(),
  }),
  z.strictObject({ type: z.literal('tool-lost'), tool: toolId, reason: z.string() }),
  readingsSchema,
  z.strictObject({
    type: z.literal('readings-missed'),
    tool: toolId,
    fromUs: us,
    toUs: us,
    /** How many, where the tool counts its readings. */
    readings: z.int().min(1).exactOptional(),
    reason: z.string(),
  }),
  /** Fetched from the memory of the tool: taken while it was out of reach, so it is kept and given to no cylinder. */
  z.strictObject({
    type: z.literal('value-stored'),
    tool: toolId,
    reading: z.int().min(1),
    atUs: us,
    exponent: z.int(),
    counts: z.int(),
  }),
  /** A device that looks like the tool and was not taken for it. */
  z.strictObject({
    type: z.literal('device-refused'),
    tool: toolId,
    address: z.string().max(64),
    reason: z.string().max(400),
  }),
  z.strictObject({ type: z.literal('value-not-known'), tool: toolId, reading: z.int().min(1), atUs: us }),
  /** Bytes in a layout that no public source confirms: kept, never guessed. */
  z.strictObject({
    type: z.literal('raw-value'),
    tool: toolId,
    atUs: us,
    source: z.string(),
    hex: z.string(),
  }),
  z.strictObject({
    type: z.literal('gap-measured'),
    tool: toolId,
    reading: z.int().min(1),
    atUs: us,
    cylinder,
    judgement: judgementSchema,
  }),
  /** Somebody looked at the gap, because the specification permits no more. */
  z.strictObject({ type: z.literal('gap-inspected'), cylinder, sound: z.boolean() }),
  /** Go/no-go by two wires; a `gap-measured` of the tool `wire` follows. */
  z.strictObject({ type: z.literal('wire-tried'), cylinder, outcome: z.enum(['fits', 'tight', 'wide']) }),
  /** The plug for this cylinder is thrown away, and another takes its place. */
  z.strictObject({ type: z.literal('plug-scrapped'), cylinder, reason: scrapReasonSchema }),
  pullSchema.extend({ type: z.literal('pull-detected') }),
  z.strictObject({
    type: z.literal('pull-placed'),
    pull: z.int().min(1),
    /** Null for loosening and handling: such a pull is on the record and on no cylinder. */
    cylinder: cylinder.nullable(),
    kind: pullKindSchema,
    /** Why it was taken for that kind, in words. */
    because: z.string(),
    /** Null where nothing is to be judged: re-hits, handling, pulls that were cut, questions still open. */
    judgement: judgementSchema.nullable(),
    /** What there is to ask; only with `unsure`. */
    ask: askSchema.exactOptional(),
    /** What the placement rests on; absent where a person said it. */
    evidence: evidenceSchema.exactOptional(),
  }),
  /** A person said which plug a pull was on; what the rules make of it follows. */
  z.strictObject({ type: z.literal('pull-given'), pull: z.int().min(1), cylinder, why }),
  /**
   * A person found the plug of this cylinder never tightened: the pulls from it on were each on the plug behind, up to
   * the pull that raised the question.
   */
  z.strictObject({
    type: z.literal('cylinder-left-out'),
    pull: z.int().min(1),
    cylinder,
    /** The tight plug that the pull in question was on. */
    on: cylinder,
    why,
  }),
  /** A person backs a plug off to start again; what it had proven stays on the record and counts no more. */
  z.strictObject({ type: z.literal('cylinder-restarted'), cylinder, newPlug: z.boolean(), why }),
  /** Somebody read the windows that the figures of the order give, and found them right. */
  z.strictObject({ type: z.literal('windows-confirmed') }),
  /** One list of the routine, said as a whole; said again, the last one holds. */
  z.strictObject({
    type: z.literal('steps-attested'),
    phase: listPhaseSchema,
    said: z
      .array(
        z.strictObject({
          item: z.string().min(1).max(40),
          /** `done`, `not-done`, or one of the item's choices. */
          as: z.string().min(1).max(60),
          why: why.exactOptional(),
        }),
      )
      .min(1)
      .max(12),
  }),
  /** How the plugs that came out of these cylinders look. */
  z.strictObject({
    type: z.literal('old-plugs-read'),
    cylinders: z.array(cylinder).min(1),
    condition: conditionSchema,
    damage: z.array(damageSchema),
    /** In the head, as seen in the hole. */
    thread: threadStateSchema,
    note: why.exactOptional(),
  }),
  /** A gap reading that came while the old plugs were read; it is held against no window. */
  z.strictObject({
    type: z.literal('old-gap-measured'),
    tool: toolId,
    reading: z.int().min(1),
    atUs: us,
    cylinder,
    gapMm: z.number(),
  }),
  /** A loosening pull that came while the old plugs were out on their way: the removal torque of this cylinder's plug. */
  z.strictObject({ type: z.literal('removal-felt'), cylinder, pull: z.int().min(1) }),
  /** The new plugs for these cylinders were held against the old ones and the specification. */
  z.strictObject({
    type: z.literal('new-plugs-checked'),
    cylinders: z.array(cylinder).min(1),
    part: z.string().min(1).max(60),
    lot: z.string().min(1).max(40).nullable(),
    /** In what they differ; empty when they agree. */
    differs: z.array(plugFeatureSchema),
  }),
  /** No torque wrench could reach it: turned by an angle, which proves no torque. */
  z.strictObject({
    type: z.literal('fitted-by-angle'),
    cylinder,
    /** As given by the source, `1/2 turn`. */
    turn: z.string().min(1).max(40),
    why,
  }),
  /** A pull that went too far stays as it is: somebody answers for it by name. */
  z.strictObject({
    type: z.literal('pull-accepted'),
    pull: z.int().min(1),
    cylinder,
    by: person,
    reason,
  }),
  /** From here on somebody else works on the job and answers for it. */
  z.strictObject({ type: z.literal('job-handed-over'), to: person }),
  /** Somebody declares the job void: what was read stays, and proves nothing. Final, and possible after closing. */
  z.strictObject({ type: z.literal('job-voided'), by: person, reason }),
  z.strictObject({
    type: z.literal('cylinder-chosen'),
    quantity: z.enum(['torque', 'length', 'old-plug']),
    cylinder,
  }),
  z.strictObject({ type: z.literal('question-answered'), pull: z.int().min(1), answer: answerSchema }),
  z.strictObject({
    type: z.literal('job-closed'),
    complete: z.boolean(),
    /** What is still missing, in words; empty when complete. */
    open: z.array(z.string()),
  }),
]);
/** Everything that can happen in a job. The job's state is the fold of these, and nothing else. */
export type JobEvent = z.infer<typeof jobEventSchema>;
export type JobEventOf<T extends JobEvent['type']> = Extract<JobEvent, { type: T }>;
