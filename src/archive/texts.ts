/**
 * The personal texts of entries on their way into an archive. What is signed has a digest in the place of each text; the text
 * comes beside it, as a disclosure. Nothing here knows one kind of entry from another, but for the one that forgets: what a
 * newer station signs is kept as well.
 */
import { z } from 'zod';
import { digestOf } from '../evidence/disclosures.ts';
import { STATION_STREAM } from '../evidence/log.ts';
import type { ShippedEntry } from './bundle.ts';
import { jsonIn } from './json.ts';

/** In canonical JSON a quote inside a text has a backslash before it, so that this stands nowhere but where a text is concealed. */
const CONCEALED = /\{"_sd":\["([A-Za-z0-9_-]{43})"\]\}/g;

/** The digests of an entry's texts, in the order in which the log counts them. */
const digestsIn = (body: string): readonly string[] =>
  [...body.matchAll(CONCEALED)].map(([, digest = '']) => digest);

/** Whether each disclosure is that of a text of the entry, and none is there twice. */
export function disclosesItsOwn({ body, disclosures }: ShippedEntry): boolean {
  if (disclosures.length === 0) return true;
  const own = new Set(digestsIn(body));
  return disclosures.every((disclosure) => own.delete(digestOf(disclosure)));
}

/** Where a text was: the index of its entry in the log, and which of its texts it is, both from 0. */
export interface ForgottenPlace {
  readonly index: number;
  readonly text: number;
}

const forgettingSchema = z.object({
  stream: z.literal(STATION_STREAM),
  event: z.object({
    type: z.literal('texts-forgotten'),
    texts: z.array(z.object({ entry: z.int().min(1), text: z.int().min(0) })),
  }),
});

/** The texts that this entry of the log says are forgotten. It speaks of entries before it alone. */
export function forgottenBy({ body }: ShippedEntry, index: number): readonly ForgottenPlace[] {
  if (!body.includes('"texts-forgotten"')) return [];
  const read = forgettingSchema.safeParse(jsonIn(body));
  if (!read.success) return [];
  return read.data.event.texts
    .map(({ entry, text }) => ({ index: entry - 1, text }))
    .filter((place) => place.index < index);
}

/** The entry without some of its texts; the same entry where none of them is there. */
export function withoutTexts(entry: ShippedEntry, texts: ReadonlySet<number>): ShippedEntry {
  const digests = digestsIn(entry.body);
  const gone = new Set([...texts].map((text) => digests[text]));
  const disclosures = entry.disclosures.filter((disclosure) => !gone.has(digestOf(disclosure)));
  return disclosures.length === entry.disclosures.length ? entry : { ...entry, disclosures };
}
