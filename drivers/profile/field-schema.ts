import { z } from 'zod';
import { w } from '../../src/words/catalogue.ts';
import { CHECKSUM_KINDS } from './checksum.ts';
import { hexSchema } from './link-schema.ts';
import { INTEGER_KINDS, NUMBER_TYPES, UNSIGNED_TYPES } from './number.ts';
import { ANGLE_UNITS, PROFILE_UNITS } from './unit.ts';

/** The parts that a frame is made of, one after the other: every byte and every character belongs to one of them. */

/** Nothing longer fits an attribute, and no serial frame of such a tool is longer. */
export const MOST_BYTES = 512;

const decimalText = z
  .string()
  .regex(/^\d{1,9}(\.\d{1,9})?$/, { error: () => w`expected a decimal figure in quotes, such as "0.01"` })
  .refine((text) => Number(text) > 0, { error: () => w`expected a figure above 0` });
const scaleText = z
  .string()
  .regex(/^-?\d{1,9}(\.\d{1,9})?$/, { error: () => w`expected a decimal figure in quotes, such as "0.02"` })
  .refine((text) => Number(text) !== 0, { error: () => w`expected a figure other than 0` });

const scale = scaleText
  .exactOptional()
  .describe('The value of 1, in `unit`; in quotes, `"0.02"`. Below 0 where the device counts the other way.');
const resolution = decimalText
  .exactOptional()
  .describe('The smallest step, in `unit`. Needed for text and for floating point numbers.');
const unit = z.enum(PROFILE_UNITS).exactOptional().describe('The unit; left out where the frame tells it.');
const wraps = z
  .literal(true)
  .exactOptional()
  .describe('`true`: the angle starts again at a full turn, and plugmark counts on.');
const angleUnit = z.enum(ANGLE_UNITS).default('°').describe('The unit, `°` or `turn`; `°` unless given.');
const zero = z.int().exactOptional().describe('The number that means 0; 0 unless given.');
const noValue = z.array(z.int()).max(8).exactOptional().describe('Numbers that mean that there is no value.');
const within = z
  .strictObject({
    least: z.int().describe('The least one.'),
    most: z.int().describe('The largest one.'),
  })
  .exactOptional()
  .describe('The numbers that it can be, before `zero` is taken off. Another one makes the frame raw.');
const counts = z.enum(['frames', 'samples']).describe('What it counts.');
const label = z.string().min(1).max(80).exactOptional().describe('What it tells, in words.');
const MEANS = ['valid', 'no-value', 'negative', 'nothing'] as const;
const means = z
  .enum(MEANS)
  .describe(
    '`valid`: no value without it. `no-value`: no value with it. `negative`: the value is below 0. `nothing`: says nothing about the value.',
  );
const unitOfCode = {
  unit: z.enum(PROFILE_UNITS).describe('The unit.'),
  scale,
  resolution,
};
const codes = z
  .array(z.strictObject({ code: z.int().min(0).describe('The number.'), ...unitOfCode }))
  .min(1)
  .max(16)
  .describe('The units by number. Another number makes the frame raw.');

const fixed = z
  .strictObject({ is: z.literal('fixed'), hex: hexSchema.describe('The bytes.') })
  .describe(
    'Bytes that are always the same. A byte stream is searched for those at the beginning of the frame.',
  );
const unused = z
  .strictObject({ is: z.literal('unused'), bytes: z.int().min(1).max(MOST_BYTES).describe('How many.') })
  .describe('Bytes that say nothing about the reading.');
const checksumKind = z
  .enum(CHECKSUM_KINDS)
  .describe('How it is made: a sum, or a CRC by its name in the RevEng catalogue.');
const from = z
  .int()
  .min(0)
  .max(MOST_BYTES - 1)
  .exactOptional()
  .describe('The first byte of the frame that it covers; 0 unless given.');

const start = z.int().min(0).max(31).describe('Its lowest bit, from 0.');
const width = z.int().min(1).max(32).describe('How many bits.');
const bitKind = z.enum(INTEGER_KINDS).default('uint');
const partSchema = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('flag'), bit: start, means, label }).describe('One bit.'),
  z
    .strictObject({
      is: z.literal('value'),
      bit: start,
      bits: width,
      type: bitKind.describe('How the number is written. `uint` unless given.'),
      zero,
      scale,
      unit,
      resolution,
      noValue,
      within,
    })
    .describe('A value.'),
  z
    .strictObject({
      is: z.literal('angle'),
      bit: start,
      bits: width,
      type: bitKind.describe('How the number is written. `uint` unless given.'),
      zero,
      scale,
      unit: angleUnit,
      wraps,
      resolution,
      noValue,
    })
    .describe('The angle at the same instant.'),
  z.strictObject({ is: z.literal('unit'), bit: start, bits: width, codes }).describe('The unit.'),
  z.strictObject({ is: z.literal('counter'), bit: start, bits: width, counts }).describe('A counter.'),
  z.strictObject({ is: z.literal('unused'), bit: start, bits: width }).describe('Bits that say nothing.'),
  z
    .strictObject({
      is: z.literal('fixed'),
      bit: start,
      bits: width,
      number: z.int().min(0).describe('The number that they are.'),
    })
    .describe('Bits that are always the same. Others make the frame raw.'),
]);
export type Part = z.infer<typeof partSchema>;

const value = z
  .strictObject({
    is: z.literal('value'),
    type: z
      .enum(NUMBER_TYPES)
      .describe(
        'How the number is written. `signmag`: sign and magnitude. `bcd`: packed decimal. `float`: IEEE 754. `medfloat`: IEEE 11073.',
      ),
    zero,
    scale,
    unit,
    resolution,
    noValue,
    within,
  })
  .describe('A value of `quantity`.');
const angle = z
  .strictObject({
    is: z.literal('angle'),
    type: z.enum(NUMBER_TYPES).describe('How the number is written.'),
    zero,
    scale,
    unit: angleUnit,
    wraps,
    resolution,
    noValue,
  })
  .describe('The angle at the same instant: all that was turned, growing in the tightening direction.');
const bits = z
  .strictObject({
    is: z.literal('bits'),
    type: z.enum(UNSIGNED_TYPES).describe('The bytes that they are in.'),
    parts: z
      .array(partSchema)
      .max(32)
      .describe('What they are. A set bit that is in none of them makes the frame raw.'),
  })
  .describe('Bits with meanings of their own.');
const unitField = z
  .strictObject({
    is: z.literal('unit'),
    type: z.enum(UNSIGNED_TYPES).describe('How the number is written.'),
    codes,
  })
  .describe('The unit of the value.');

const sampleFieldSchema = z.discriminatedUnion('is', [value, angle, bits, unitField, fixed, unused]);
export type SampleField = z.infer<typeof sampleFieldSchema>;

const samples = z
  .strictObject({
    is: z.literal('samples'),
    count: z
      .union([z.int().min(1).max(MOST_BYTES), z.literal('rest')])
      .describe('How many; `rest`: as many as the frame has room for.'),
    spacingMs: z
      .number()
      .positive()
      .max(10_000)
      .exactOptional()
      .describe('Time from one to the next. The last one counts as taken when the frame came.'),
    fields: z.array(sampleFieldSchema).min(1).max(16).describe('What one of them is made of.'),
  })
  .describe('Several samples, one after the other.');

export const byteFieldSchema = z.discriminatedUnion('is', [
  ...sampleFieldSchema.options,
  samples,
  z
    .strictObject({
      is: z.literal('counter'),
      type: z.enum(UNSIGNED_TYPES).describe('How the number is written.'),
      counts,
    })
    .describe(
      'A number that rises by one and starts again from 0 when it is full. A jump is a gap of known size.',
    ),
  z
    .strictObject({
      is: z.literal('size'),
      type: z.enum(UNSIGNED_TYPES).describe('How the number is written.'),
      adds: z
        .int()
        .min(-MOST_BYTES)
        .max(MOST_BYTES)
        .default(0)
        .describe('Bytes of the frame that it does not count; 0 unless given.'),
    })
    .describe('How many bytes the frame has.'),
  z
    .strictObject({
      is: z.literal('count'),
      type: z.enum(UNSIGNED_TYPES).describe('How the number is written.'),
    })
    .describe('How many samples follow.'),
  z
    .strictObject({
      is: z.literal('checksum'),
      kind: checksumKind,
      from,
      to: z
        .enum(['itself', 'end'])
        .default('itself')
        .describe(
          'Up to where it covers: up to `itself`, or up to the `end` of the frame without itself. `itself` unless given.',
        ),
      byteOrder: z
        .enum(['little', 'big'])
        .exactOptional()
        .describe('Which of its bytes comes first, as in `layout`; that of the layout unless given.'),
    })
    .describe('A checksum. Where it is wrong the frame is raw.'),
]);
export type ByteField = z.infer<typeof byteFieldSchema>;

const characters = z
  .string()
  .regex(/^[\x20-\x7e]{1,32}$/, { error: () => w`expected up to 32 printable characters of ASCII` });
const decimalMark = z
  .enum(['.', ','])
  .default('.')
  .describe('The decimal mark, `.` or `,`; `.` unless given.');
const decimals = z
  .int()
  .min(0)
  .max(9)
  .exactOptional()
  .describe('Digits behind the decimal mark, always as many; those of `resolution` unless given.');
const noText = z
  .array(characters)
  .max(8)
  .exactOptional()
  .describe('Texts in its place that mean that there is no value.');

export const textFieldSchema = z.discriminatedUnion('is', [
  z
    .strictObject({ is: z.literal('text'), text: characters.describe('The text.') })
    .describe('Text that is always the same.'),
  fixed,
  z.strictObject({ is: z.literal('blanks') }).describe('Any number of blanks, or none.'),
  z
    .strictObject({ is: z.literal('value'), decimalMark, decimals, scale, unit, resolution, noValue: noText })
    .describe('A value of `quantity`, as a decimal figure with or without sign.'),
  z
    .strictObject({
      is: z.literal('angle'),
      decimalMark,
      decimals,
      scale,
      unit: angleUnit,
      wraps,
      resolution,
      noValue: noText,
    })
    .describe('The angle at the same instant.'),
  z
    .strictObject({
      is: z.literal('unit'),
      texts: z
        .array(z.strictObject({ text: characters.describe('The text.'), ...unitOfCode, decimals }))
        .min(1)
        .max(16)
        .describe('The units by text. Another text makes the frame raw.'),
    })
    .describe('The unit of the value.'),
  z
    .strictObject({
      is: z.literal('status'),
      texts: z
        .array(z.strictObject({ text: characters.describe('The text.'), means, label }))
        .min(1)
        .max(16)
        .describe('What it can be. Another text makes the frame raw.'),
    })
    .describe('What the device says about the value.'),
  z
    .strictObject({
      is: z.literal('counter'),
      digits: z.int().min(1).max(9).describe('How many digits.'),
      counts,
    })
    .describe(
      'A number that rises by one and starts again from 0 when it is full. A jump is a gap of known size.',
    ),
  z
    .strictObject({
      is: z.literal('unused'),
      characters: z.int().min(1).max(MOST_BYTES).exactOptional().describe('How many.'),
      until: characters.exactOptional().describe('The text in front of which they end.'),
    })
    .describe('Characters that say nothing about the reading: so many, or all in front of a text.'),
  z
    .strictObject({ is: z.literal('checksum'), kind: checksumKind, from })
    .describe('A checksum in hexadecimal digits, over all in front of it.'),
]);
export type TextField = z.infer<typeof textFieldSchema>;
