import { z } from 'zod';
import { samplingFunctionSchema } from '../../src/reading.ts';
import { hasOwnStep, NUMBER_TYPES, sizeOf } from './number.ts';
import { PROFILE_UNITS, scaleOf, unitMeasures } from './unit.ts';

/*
 * A device described without code, form `plugmark/profile/1`; README, "A tool that nobody has written a driver for".
 * What a profile does not describe is never guessed: such packets are kept as raw bytes.
 */

/** Nothing longer fits an attribute. */
const MOST_BYTES = 512;

/** Short, lower case and without dashes, as the radio port has them; UUIDs of the Bluetooth base become short. */
const uuidSchema = z
  .string()
  .regex(
    /^([0-9a-fA-F]{4}|[0-9a-fA-F]{8}-([0-9a-fA-F]{4}-){3}[0-9a-fA-F]{12})$/,
    'expected a UUID of 4 digits, or of 32 with dashes',
  )
  .transform((text) => {
    const hex = text.replaceAll('-', '').toLowerCase();
    return /^0000([0-9a-f]{4})00001000800000805f9b34fb$/.exec(hex)?.[1] ?? hex;
  });

const hexSchema = z
  .string()
  .regex(/^([0-9a-fA-F]{2}){1,512}$/, 'expected whole bytes in hexadecimal digits')
  .transform((text) => text.toLowerCase());

const decimalText = z
  .string()
  .regex(/^\d{1,9}(\.\d{1,9})?$/, 'expected a decimal figure in quotes, such as "0.01"')
  .refine((text) => Number(text) > 0, 'expected a figure above 0');

const offset = z
  .int()
  .min(0)
  .max(MOST_BYTES - 1);
const unsigned = z.enum(['uint8', 'uint16', 'uint24', 'uint32']);
const place = { service: uuidSchema, characteristic: uuidSchema };

const bitSchema = z.strictObject({
  bit: z.int().min(0).max(31),
  /** `valid`: no value without it; `no-value`: no value with it; `nothing`: says nothing about the value. */
  means: z.enum(['valid', 'no-value', 'nothing']),
  label: z.string().min(1).max(80).exactOptional(),
});

const packetSchema = z.strictObject({
  /** Bytes that are always the same. */
  fixed: z
    .array(z.strictObject({ offset, hex: hexSchema }))
    .max(16)
    .exactOptional(),
  /** A set bit that is not listed makes the packet raw. */
  status: z.strictObject({ offset, type: unsigned, bits: z.array(bitSchema).max(32) }).exactOptional(),
  /** Rises by one with every packet or every sample, and starts again from 0 when it is full. */
  counter: z.strictObject({ offset, type: unsigned, counts: z.enum(['packets', 'samples']) }).exactOptional(),
  samples: z.strictObject({
    offset,
    type: z.enum(NUMBER_TYPES),
    /** How many; `rest`: as many as the packet has room for. */
    count: z.union([z.int().min(1).max(MOST_BYTES), z.literal('rest')]).default(1),
    /** Bytes from one sample to the next; left out: they follow closely. */
    every: z.int().min(1).max(MOST_BYTES).exactOptional(),
    /** Time from one sample of a packet to the next; the last one counts as taken when the packet came. */
    spacingMs: z.number().positive().max(10_000).exactOptional(),
    /** Numbers that mean that there is no value. */
    noValue: z.array(z.int()).max(8).exactOptional(),
  }),
});

export const profileSchema = z
  .strictObject({
    form: z.literal('plugmark/profile/1'),
    title: z.string().min(1).max(120),
    /** The document that publishes the layout. */
    source: z.string().min(1).max(400),
    quantity: z.enum(['torque', 'length']),
    /** The service by which the device is found on the air. */
    advertised: uuidSchema,
    readings: z.strictObject({
      ...place,
      by: z.discriminatedUnion('how', [
        z.strictObject({ how: z.literal('notify') }),
        /** The same bytes again are no new reading unless there is a counter that says so. */
        z.strictObject({ how: z.literal('poll'), everyMs: z.int().min(20).max(60_000) }),
      ]),
    }),
    /** Written once the readings are subscribed to, in this order. */
    start: z
      .array(z.strictObject({ ...place, hex: hexSchema }))
      .max(8)
      .exactOptional(),
    /** Where the device keeps readings while it is out of reach: asked for by a write, they come in the same packets. */
    memory: z
      .strictObject({ ...place, request: z.strictObject({ ...place, hex: hexSchema }) })
      .exactOptional(),
    byteOrder: z.enum(['little', 'big']),
    packet: packetSchema,
    /** The value of 1, in `unit`. */
    scale: decimalText,
    unit: z.enum(PROFILE_UNITS),
    /** The smallest step, in `unit`; integers step by `scale`, floating point numbers must be told. */
    resolution: decimalText.exactOptional(),
    samplingFunction: samplingFunctionSchema,
    updateIntervalMs: z.number().positive().max(60_000).exactOptional(),
  })
  .superRefine((profile, ctx) => {
    for (const { path, message } of faults(profile))
      ctx.addIssue({ code: 'custom', path: [...path], message });
  });
export type Profile = z.infer<typeof profileSchema>;

interface Fault {
  readonly path: readonly (string | number)[];
  readonly message: string;
}

/** What the fields say of each other. */
function faults(profile: Profile): readonly Fault[] {
  const { packet, quantity, unit, scale, resolution } = profile;
  const { samples, status, counter, fixed = [] } = packet;
  const list: Fault[] = [];
  const fault = (path: Fault['path'], message: string) => list.push({ path, message });
  if (unitMeasures(unit) !== quantity) fault(['unit'], `${unit} is no unit of ${quantity}`);
  const size = sizeOf(samples.type);
  if (samples.every !== undefined && samples.every < size)
    fault(['packet', 'samples', 'every'], `expected at least the ${size} bytes of a ${samples.type}`);
  if (hasOwnStep(samples.type) && resolution !== undefined && Number(resolution) < Number(scale))
    fault(['resolution'], `expected at least the scale, ${scale}: an integer cannot step finer`);
  if (!hasOwnStep(samples.type) && resolution === undefined)
    fault(['resolution'], `expected the smallest step of the tool, because a ${samples.type} tells none`);
  if (samples.noValue !== undefined && !hasOwnStep(samples.type))
    fault(['packet', 'samples', 'noValue'], `a ${samples.type} has codes of its own for that`);
  for (const [i, { bit }] of (status?.bits ?? []).entries()) {
    if (status !== undefined && bit >= 8 * sizeOf(status.type))
      fault(['packet', 'status', 'bits', i, 'bit'], `a ${status.type} has no bit ${bit}`);
    if (status?.bits.findIndex((other) => other.bit === bit) !== i)
      fault(['packet', 'status', 'bits', i, 'bit'], `bit ${bit} stands twice`);
  }
  const { exponent } = scaleOf(scale, resolution ?? scale, unit, hasOwnStep(samples.type));
  if (exponent < -12 || exponent > 3) fault(['scale'], 'this step is too fine or too coarse to be recorded');
  const head = [
    ...fixed.map((one, i) => ({ path: ['packet', 'fixed', i], at: one.offset, size: one.hex.length / 2 })),
    ...(status === undefined
      ? []
      : [{ path: ['packet', 'status'], at: status.offset, size: sizeOf(status.type) }]),
    ...(counter === undefined
      ? []
      : [{ path: ['packet', 'counter'], at: counter.offset, size: sizeOf(counter.type) }]),
  ];
  for (const [i, one] of head.entries()) {
    if (one.at + one.size > samples.offset)
      fault(one.path, `reaches into the samples at byte ${samples.offset}`);
    const other = head
      .slice(0, i)
      .find((before) => one.at < before.at + before.size && before.at < one.at + one.size);
    if (other !== undefined) fault(one.path, `lies over ${other.path.join('.')}`);
  }
  return list;
}
