import { z } from 'zod';
import { instrumentSchema } from '../instrument/instrument.ts';
import { judgementSchema, windowSchema } from '../metrology/judgement.ts';
import { pullSchema } from '../pull/pull.ts';
import { pullKindSchema } from '../sequence/kind.ts';
import { workOrderSchema } from './order.ts';

const toolId = z.string().min(1).max(32);
const cylinder = z.int().min(1);
const us = z.int().nonnegative();

const linkSchema = z.strictObject({
  kind: z.enum(['bluetooth-le', 'direct', 'file', 'keyboard']),
  address: z.string().max(64).exactOptional(),
  authenticated: z.boolean(),
});

const toolDescriptionSchema = z.strictObject({
  quantity: z.enum(['torque', 'length']),
  unit: z.enum(['N.m', 'm']),
  exponent: z.int().min(-12).max(3),
  maker: z.string().exactOptional(),
  model: z.string().exactOptional(),
  serial: z.string().exactOptional(),
  firmware: z.string().exactOptional(),
  batteryPercent: z.int().min(0).max(100).exactOptional(),
  samplingFunction: z.enum([
    'unspecified',
    'instantaneous',
    'mean',
    'rms',
    'maximum',
    'minimum',
    'moving-average',
  ]),
  updateIntervalMs: z.number().nonnegative().exactOptional(),
  resolutionCounts: z.int().exactOptional(),
  uncertainty: z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('relative'), percent: z.number() }),
      z.strictObject({ kind: z.literal('absolute'), counts: z.int() }),
    ])
    .exactOptional(),
  validRange: z.strictObject({ lowerCounts: z.int(), upperCounts: z.int() }).exactOptional(),
  link: linkSchema,
});

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

export const answerSchema = z.enum(['fresh', 'rehit', 'handling', 'refit', 'replace']);
/**
 * `fresh`: it was the tightening of this cylinder. `rehit`: a second pull on a plug already tight. `handling`: no plug
 * was turned. `refit`: plug backed out, thread inspected, to be fitted again. `replace`: the same with a new plug.
 */
export type Answer = z.infer<typeof answerSchema>;

export const jobEventSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('job-opened'),
    order: workOrderSchema,
    instruments: z.array(instrumentSchema).min(1),
    torqueWindow: windowSchema,
    gapWindow: windowSchema,
    /** Which rules found the pulls and gave the verdicts: judging again needs the same. */
    rules: z.string(),
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
  z.strictObject({ type: z.literal('tool-lost'), tool: toolId, reason: z.string() }),
  readingsSchema,
  z.strictObject({
    type: z.literal('readings-missed'),
    tool: toolId,
    fromUs: us,
    toUs: us,
    reason: z.string(),
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
  pullSchema.extend({ type: z.literal('pull-found') }),
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
  }),
  z.strictObject({ type: z.literal('cylinder-chosen'), quantity: z.enum(['torque', 'length']), cylinder }),
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
