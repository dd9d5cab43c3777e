import { z } from 'zod';
import { byteFieldSchema, textFieldSchema } from './field-schema.ts';
import { hexSchema } from './link-schema.ts';

/** How the stream of bytes is cut into frames, and what a frame is made of. */

const quietMs = z
  .int()
  .min(2)
  .max(10_000)
  .exactOptional()
  .describe('A pause so long ends what is unfinished; 1000 unless given.');
const spacingMs = z
  .number()
  .positive()
  .max(10_000)
  .exactOptional()
  .describe('Time between frames that came at once. The last one counts as taken when they came.');

export const framesSchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('packet') }).describe('Each packet of the Bluetooth link is one.'),
  z
    .strictObject({ by: z.literal('length'), quietMs, spacingMs })
    .describe('Their length is that of their fields, or what their field `size` says.'),
  z
    .strictObject({
      by: z.literal('delimiter'),
      hex: hexSchema.describe('The bytes behind each frame, which do not belong to it.'),
      quietMs,
      spacingMs,
    })
    .describe('Bytes between them.'),
  z
    .strictObject({
      by: z.literal('time'),
      quietMs: z.int().min(2).max(10_000).describe('The pause between them.'),
    })
    .describe('A pause between them.'),
]);
export type Frames = z.infer<typeof framesSchema>;

export const layoutSchema = z.discriminatedUnion('of', [
  z
    .strictObject({
      of: z.literal('bytes'),
      byteOrder: z
        .enum(['little', 'big'])
        .describe('Which byte of a number comes first: the `little` end or the `big` one.'),
      fields: z
        .array(byteFieldSchema)
        .min(1)
        .max(64)
        .describe('What a frame is made of, one after the other.'),
    })
    .describe('Bytes.'),
  z
    .strictObject({
      of: z.literal('text'),
      fields: z
        .array(textFieldSchema)
        .min(1)
        .max(64)
        .describe('What a frame is made of, one after the other.'),
    })
    .describe('Text in ASCII.'),
]);
export type Layout = z.infer<typeof layoutSchema>;
