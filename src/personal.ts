/**
 * Text about a person or a vehicle. What is signed holds only a salted digest of it, so that a record can be given away
 * without it, and a person can be forgotten while every signature and every verdict holds.
 */
import { z } from 'zod';

/** What such a text is about, as `share --without` and `forget` name it. */
export const personalKindSchema = z.enum([
  'plate',
  'vin',
  'vehicle',
  'fleet',
  'customer',
  'complaint',
  'person',
  'note',
]);
export type PersonalKind = z.infer<typeof personalKindSchema>;

const marked = z.registry<{ readonly kind: PersonalKind }>();

/** Marks a schema of text as personal: wherever it stands in an entry of the log, the text is kept beside what is signed. */
export function personal<T extends z.ZodType<string>>(kind: PersonalKind, schema: T): T {
  const own = schema.clone();
  marked.add(own, { kind });
  return own;
}

/** What a schema was marked as; null for all others. */
export const personalKindOf = (schema: z.core.$ZodType): PersonalKind | null =>
  marked.get(schema)?.kind ?? null;

/**
 * Stands in the place of a text that was withheld or forgotten. A private-use character, so that it fits wherever the text
 * itself would and nobody has typed it; whatever prints it says "withheld".
 */
export const WITHHELD = '\uE000';
export const isWithheld = (text: string): boolean => text === WITHHELD;

/** A telephone number in free text. With a trunk or country code in front, or in the groups of 3, 3 and 4 of North America; seven digits and more. */
const NUMBER =
  /(?<![\p{L}\p{N}.,])(?:(?:\+|\(0|0(?!\.))(?:[\s()/.-]{0,2}\d){6,14}|\(?\d{3}\)?[-. ]\d{3}[-. ]\d{4})(?![\p{L}\p{N}])/gu;

const WITHHELD_NUMBER = '(telephone number withheld)';

export const hasPhoneNumber = (text: string): boolean => text.search(NUMBER) >= 0;

export const withoutPhoneNumbers = (text: string): string => text.replace(NUMBER, WITHHELD_NUMBER);
