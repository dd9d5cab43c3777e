import { z } from 'zod';
import { samplingFunctionSchema } from '../../src/reading.ts';
import { hasOwnStep, NUMBER_TYPES, sizeOf } from './number.ts';
import { PROFILE_UNITS, scaleOf, unitMeasures } from './unit.ts';

/*
 * A device described without code, form `plugmark/profile/1`; "plugmark manual profiles".
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
  .max(MOST_BYTES - 1)
  .describe('Where it begins in the packet, in bytes.');
const unsigned = z.enum(['uint8', 'uint16', 'uint24', 'uint32']);
const place = {
  service: uuidSchema.describe('Its service.'),
  characteristic: uuidSchema.describe('Its characteristic.'),
};

const bitSchema = z.strictObject({
  bit: z.int().min(0).max(31).describe('Number of the bit, from 0.'),
  means: z
    .enum(['valid', 'no-value', 'nothing'])
    .describe(
      '`valid`: no value without it. `no-value`: no value with it. `nothing`: says nothing about the value.',
    ),
  label: z.string().min(1).max(80).exactOptional().describe('What it tells, in words.'),
});

const packetSchema = z.strictObject({
  fixed: z
    .array(z.strictObject({ offset, hex: hexSchema.describe('The bytes.') }))
    .max(16)
    .exactOptional()
    .describe('Bytes that are always the same.'),
  status: z
    .strictObject({
      offset,
      type: unsigned.describe('How the status lies in the packet.'),
      bits: z.array(bitSchema).max(32).describe('Its bits.'),
    })
    .exactOptional()
    .describe('Status bits. A set bit that is not listed makes the packet raw.'),
  counter: z
    .strictObject({
      offset,
      type: unsigned.describe('How it lies in the packet.'),
      counts: z.enum(['packets', 'samples']).describe('What it counts.'),
    })
    .exactOptional()
    .describe(
      'A number that rises by one and starts again from 0 when it is full. A jump is a gap of known size.',
    ),
  samples: z
    .strictObject({
      offset,
      type: z
        .enum(NUMBER_TYPES)
        .describe('How a value lies in the packet. Floating point is IEEE 754, `medfloat` is IEEE 11073.'),
      count: z
        .union([z.int().min(1).max(MOST_BYTES), z.literal('rest')])
        .default(1)
        .describe('How many; `rest`: as many as the packet has room for.'),
      every: z
        .int()
        .min(1)
        .max(MOST_BYTES)
        .exactOptional()
        .describe('Bytes from one to the next; left out, they follow closely.'),
      spacingMs: z
        .number()
        .positive()
        .max(10_000)
        .exactOptional()
        .describe('Time from one to the next. The last one counts as taken when the packet came.'),
      noValue: z.array(z.int()).max(8).exactOptional().describe('Numbers that mean that there is no value.'),
    })
    .describe('The values.'),
});

export const profileSchema = z
  .strictObject({
    form: z.literal('plugmark/profile/1'),
    title: z.string().min(1).max(120).describe('A name for the device.'),
    source: z.string().min(1).max(400).describe('The document that publishes the layout.'),
    quantity: z.enum(['torque', 'length']).describe('What it measures.'),
    advertised: uuidSchema.describe('The service by which the device is found.'),
    readings: z
      .strictObject({
        ...place,
        by: z
          .discriminatedUnion('how', [
            z.strictObject({ how: z.literal('notify') }).describe('The device sends them.'),
            z
              .strictObject({
                how: z.literal('poll'),
                everyMs: z.int().min(20).max(60_000).describe('How often it is read.'),
              })
              .describe(
                'The device is read. The same bytes again are no new reading unless a counter says so.',
              ),
          ])
          .describe('How they come.'),
      })
      .describe('Where the readings come from.'),
    start: z
      .array(z.strictObject({ ...place, hex: hexSchema.describe('The bytes.') }))
      .max(8)
      .exactOptional()
      .describe('What is written once the readings are subscribed to, in this order.'),
    memory: z
      .strictObject({
        ...place,
        request: z
          .strictObject({ ...place, hex: hexSchema.describe('The bytes.') })
          .describe('What is written to ask for them.'),
      })
      .exactOptional()
      .describe(
        'Where the device keeps readings while it is out of reach. They come in the same packets; each is taken to be handed out once.',
      ),
    byteOrder: z.enum(['little', 'big']).describe('Which byte of a number comes first.'),
    packet: packetSchema.describe('The layout of a packet.'),
    scale: decimalText.describe('The value of 1, in `unit`; in quotes, `"0.02"`.'),
    unit: z.enum(PROFILE_UNITS).describe('The unit.'),
    resolution: decimalText
      .exactOptional()
      .describe('The smallest step, in `unit`. Needed for floating point numbers.'),
    samplingFunction: samplingFunctionSchema.describe('What a value is a value of.'),
    updateIntervalMs: z
      .number()
      .positive()
      .max(60_000)
      .exactOptional()
      .describe('How often the device measures.'),
    bandwidthHz: z
      .number()
      .positive()
      .max(100_000)
      .exactOptional()
      .describe('Where the low-pass filter of the device has fallen by 3 dB, if it smooths its readings.'),
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
