import { z } from 'zod';
import { plugSchema, specificationSchema } from '../plug/specification.ts';
import { w } from '../words/catalogue.ts';
import { workOrderSchema } from './order.ts';

/**
 * An entry of a shop's own library: figures that somebody typed from the service information once, for one engine and
 * one plug. A job works by a copy, which is frozen in its order, so a later change here changes no job.
 */
export const libraryEntrySchema = z.strictObject({
  form: z.literal('plugmark/specification/1'),
  name: z
    .string()
    .max(80)
    .regex(/^\S(?:.*\S)?$/, { error: () => w`expected a name, without spaces at its ends` })
    .describe("What it is found by, in the shop's words."),
  engine: workOrderSchema.shape.engine.describe('The engine, as in a work order.'),
  plug: plugSchema.describe('The plug, as in a work order.'),
  specification: specificationSchema.describe('The figures, as in a work order.'),
  enteredBy: z.string().min(1).max(80).describe('Who typed the figures.'),
  enteredOn: z.iso.date().describe('On which day.'),
});
export type LibraryEntry = z.infer<typeof libraryEntrySchema>;

/** What a job takes over from an entry. */
export type Figures = Pick<LibraryEntry, 'engine' | 'plug' | 'specification'>;

/** Names are the same however they are spaced and capitalised. */
export const normalName = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();

/** The entries whose name, plug or source holds every word of `text`; one that bears just this name stands alone. */
export function matchingEntries<T extends Pick<LibraryEntry, 'name' | 'plug' | 'specification'>>(
  entries: readonly T[],
  text: string,
): readonly T[] {
  const wanted = normalName(text);
  const exactly = entries.filter(({ name }) => normalName(name) === wanted);
  if (exactly.length > 0) return exactly;
  return entries.filter(({ name, plug, specification }) => {
    const searched = normalName(`${name} ${plug.part} ${specification.source.title}`);
    return wanted.split(' ').every((word) => searched.includes(word));
  });
}

/** The name as the name of a file: small letters, digits and hyphens, whatever the name holds. */
export function fileNameOf(name: string): string {
  const safe = normalName(name)
    .normalize('NFKD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${safe || 'specification'}.json`;
}
