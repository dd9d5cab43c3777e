import { z } from 'zod';
import {
  contradictionSchema,
  missReasonSchema,
  type Reading,
  toolDescriptionSchema,
} from '../../src/reading.ts';
import type { Timing } from '../driver.ts';

/*
 * A recording of one tool, form `plugmark/readings/1`: newline-delimited JSON in UTF-8.
 *
 *   {"form":"plugmark/readings/1","tool":"wrench","timing":{"stamps":"arrival"},"description":{…}}
 *   {"kind":"values","n":1,"atUs":[1000,11000,21000],"counts":[0,12,31]}
 *   {"kind":"missed","n":4,"atUs":900000,"fromUs":21000,"reason":"out-of-reach"}
 *   {"kind":"value","n":5,"atUs":910000,"counts":44,"angleCounts":1730}
 *   {"kind":"end","readings":5}
 *
 * The first line describes the tool as it was when it joined. Each line after it is one reading as in src/reading.ts,
 * or a batch `values` of value readings whose numbers follow each other from `n`. Numbers rise by one from 1, stamps
 * never go back. The last line counts the readings, so that a recording that was cut short is known for one.
 */

export const FORM = 'plugmark/readings/1';

const whole = z.int();
const n = z.int().min(1).describe('Number of the reading, from 1.');

const timingSchema = z.strictObject({
  stamps: z.enum(['arrival', 'device', 'none']).describe('Where the stamps come from.'),
  jitterMs: z.exactOptional(z.number().min(0)).describe('How far they may be off.'),
}) satisfies z.ZodType<Timing>;

export const headerSchema = z.strictObject({
  form: z.literal(FORM),
  tool: z.string().min(1).max(64).describe('Id of the tool.'),
  timing: timingSchema.describe('What its stamps are worth.'),
  description: toolDescriptionSchema.describe('What the tool says of itself.'),
});
export type Header = z.infer<typeof headerSchema>;

const hex = z
  .string()
  .regex(/^([0-9a-f]{2})*$/, 'expected whole bytes in small hexadecimal digits')
  .describe('The bytes.');

const angleCounts = whole
  .exactOptional()
  .describe(
    'The angle at the same instant, in steps as the description says; absent where the tool sends none.',
  );

const readingSchemas = [
  z
    .strictObject({
      kind: z.literal('value'),
      n,
      atUs: whole.describe('Stamp in microseconds.'),
      counts: whole.describe('The figure, in steps of the tool.'),
      angleCounts,
    })
    .describe('A reading.'),
  z
    .strictObject({ kind: z.literal('not-known'), n, atUs: whole.describe('Stamp in microseconds.') })
    .describe('A reading without a value.'),
  z
    .strictObject({
      kind: z.literal('raw'),
      n,
      atUs: whole.describe('Stamp in microseconds.'),
      source: z.string().min(1).max(64).describe('The characteristic that they came from.'),
      hex,
    })
    .describe('Bytes that are not described.'),
  z
    .strictObject({
      kind: z.literal('stored'),
      n,
      atUs: whole.describe('Stamp in microseconds.'),
      counts: whole.describe('The figure, in steps of the tool.'),
      angleCounts,
    })
    .describe('A reading from the memory of the tool.'),
  z
    .strictObject({
      kind: z.literal('missed'),
      n,
      atUs: whole.describe('Stamp of the end of the gap, in microseconds.'),
      fromUs: whole.describe('Stamp of its beginning.'),
      readings: z.int().min(1).exactOptional().describe('How many are missing, where the tool counts them.'),
      reason: missReasonSchema.describe('Why.'),
    })
    .describe('Readings that did not arrive.'),
  z
    .strictObject({
      kind: z.literal('contradicted'),
      n,
      atUs: whole.describe('Stamp in microseconds.'),
      because: contradictionSchema.describe(
        'What speaks against the profile: `bytes` that it does not describe, or `figures` that cannot be.',
      ),
    })
    .describe('What came shows that the profile is not that of this device.'),
] as const;

/** Here only so that the compiler compares the form with the contract. */
z.discriminatedUnion('kind', readingSchemas) satisfies z.ZodType<Reading>;

const batchSchema = z
  .strictObject({
    kind: z.literal('values'),
    n,
    atUs: z.array(whole).min(1).describe('A stamp for each.'),
    counts: z.array(whole).min(1).describe('A figure for each.'),
    angleCounts: z
      .array(whole)
      .exactOptional()
      .describe('An angle for each; absent where the tool sends none.'),
  })
  .refine((batch) => batch.atUs.length === batch.counts.length, 'expected as many counts as stamps')
  .refine(
    ({ counts, angleCounts }) => angleCounts === undefined || angleCounts.length === counts.length,
    'expected as many angles as counts',
  );

const endSchema = z.strictObject({
  kind: z.literal('end'),
  readings: z.int().min(0).describe('How many readings the file holds.'),
});

export const lineSchema = z.discriminatedUnion('kind', [...readingSchemas, batchSchema, endSchema]);
export type Line = z.infer<typeof lineSchema>;
