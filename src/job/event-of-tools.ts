/** What tools and the program report: links, readings, and readings that did not come. */
import { z } from 'zod';
import { windowSchema } from '../metrology/judgement.ts';
import { permissibleDeviationSchema } from '../metrology/permissible.ts';
import { detectorSettingsSchema } from '../pull/settings.ts';
import {
  contradictionSchema,
  figureSourceSchema,
  linkEndReasonSchema,
  missReasonSchema,
  refusalReasonSchema,
  toolDescriptionSchema,
} from '../reading.ts';
import { base64, toolId, us } from './event-fields.ts';

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

export const TOOL_EVENTS = [
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
  z
    .strictObject({ type: z.literal('tool-in-use'), tool: toolId })
    .describe(
      'Another wrench or gauge than before is in hand, as its reading shows. Its own windows hold from here on, and where it is the tool of a technician, he is at work.',
    ),
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
      type: z.literal('profile-contradicted'),
      tool: toolId,
      atUs: us,
      because: contradictionSchema.describe(
        'What speaks against it: `bytes` that it does not describe, or `figures` that cannot be.',
      ),
    })
    .describe(
      'What the tool sends shows that its profile is not that of this device. From here on no reading of this driver counts: they are kept, no pull is looked for in them, and no gap is given to a plug.',
    ),
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
] as const;
