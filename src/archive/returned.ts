/**
 * What an archive gives back of a log, for a station that has lost it: a line of JSON, then two lines an entry as they were
 * shipped. Whoever reads it believes nothing of it before its entries lead to the root of the checkpoint.
 */
import { z } from 'zod';
import { leafHash } from '../evidence/merkle.ts';
import { utf8 } from '../evidence/platform/bytes.ts';
import { entriesIn, type ShippedEntry } from './bundle.ts';
import { jsonIn } from './json.ts';

const headSchema = z.strictObject({
  form: z.literal('plugmark/returned/1'),
  entries: z.int().min(1).describe('So many entries follow, from the first on.'),
  note: z.string().max(64_000).describe('The newest checkpoint whose entries are all kept.'),
});
export type ReturnedHead = z.infer<typeof headSchema>;

export const returnRequestSchema = z.strictObject({
  token: z.string().min(1).max(200).describe('The one-time token, which names the log.'),
});

export const returnedHead = (head: Omit<ReturnedHead, 'form'>): string =>
  `${JSON.stringify({ form: 'plugmark/returned/1', ...head } satisfies ReturnedHead)}\n`;

/** Null for what is no such line. */
export function readReturnedHead(line: string): ReturnedHead | null {
  const read = headSchema.safeParse(jsonIn(line));
  return read.success ? read.data : null;
}

export interface ReturnedEntry extends ShippedEntry {
  readonly seq: number;
  readonly stream: string;
  readonly n: number;
  readonly hash: Uint8Array;
}

const placeSchema = z.object({ seq: z.int().min(1), stream: z.string(), n: z.int().min(1) });

/** An entry from its two lines; null where they are none. */
export function returnedEntry(body: string, disclosures: string): ReturnedEntry | null {
  const [entry] = entriesIn(`${body}\n${disclosures}\n`, 1) ?? [];
  const place = placeSchema.safeParse(jsonIn(body));
  return entry === undefined || !place.success
    ? null
    : { ...entry, ...place.data, hash: leafHash(utf8(entry.body)) };
}
