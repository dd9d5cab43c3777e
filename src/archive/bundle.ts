/**
 * Bundles of entries on their way from a station to an archive: up to 256 entries each, cut at multiples of 256 of the log,
 * each with the hashes that lead from its leaves to the root of a checkpoint.
 *
 * As text: a line of JSON that says what follows, then two lines an entry: what is signed of it, in its canonical JSON, and a
 * list of the disclosures that the station gives with it. Neither ever holds a line feed.
 */
import { z } from 'zod';
import { leafHash, rootOfSet } from '../evidence/merkle.ts';
import { fromBase64, isSame, toBase64, utf8 } from '../evidence/platform/bytes.ts';
import { jsonIn } from './json.ts';

export const ENTRIES_A_BUNDLE = 256;
/** So many bundles make a request; a single one may be larger than all others, for an assessment of 20 000 jobs is one entry. */
export const BUNDLES_A_REQUEST = 32;
/** A request that is longer is refused before anything of it is read. */
export const MAX_REQUEST_BYTES = 96 << 20;

export interface ShippedEntry {
  /** What is signed, in canonical JSON. */
  readonly body: string;
  /** The disclosures of its personal texts, as far as the station gives them. */
  readonly disclosures: readonly string[];
}

export interface Bundle {
  /** Counted from 0: its first entry has the index 256 times as high. */
  readonly number: number;
  readonly entries: readonly ShippedEntry[];
  /** The hashes of the largest subtrees that hold none of its leaves, from left to right. */
  readonly proof: readonly Uint8Array[];
}

export interface Shipment {
  /** The size of the checkpoint that the proofs lead to. */
  readonly size: number;
  readonly bundles: readonly Bundle[];
}

const hash = z.string().refine((text) => fromBase64(text)?.length === 32, 'expected 32 bytes in base64');
const headSchema = z.strictObject({
  form: z.literal('plugmark/bundles/1'),
  size: z.int().min(1),
  bundles: z
    .array(
      z.strictObject({
        number: z.int().nonnegative(),
        entries: z.int().min(1).max(ENTRIES_A_BUNDLE),
        proof: z.array(hash).max(128),
      }),
    )
    .min(1)
    .max(BUNDLES_A_REQUEST),
});
/** The longest head there can be, and somewhat more. */
const MOST_HEAD_CHARACTERS = 256 << 10;
const MOST_DISCLOSURES = 65_536;
const DISCLOSURE = /^[A-Za-z0-9_-]{1,4000}$/;

export function shipmentText({ size, bundles }: Shipment): string {
  const head = {
    form: 'plugmark/bundles/1',
    size,
    bundles: bundles.map(({ number, entries, proof }) => ({
      number,
      entries: entries.length,
      proof: proof.map(toBase64),
    })),
  };
  return `${JSON.stringify(head)}\n${bundles.map(({ entries }) => entriesText(entries)).join('')}`;
}

/** Null for what is no such text. It comes from strangers: nothing is read beyond what a head may promise. */
export function readShipment(text: string): Shipment | null {
  const end = text.indexOf('\n');
  if (end < 0 || end > MOST_HEAD_CHARACTERS) return null;
  const head = headSchema.safeParse(jsonIn(text.slice(0, end)));
  if (!head.success) return null;
  const { size, bundles } = head.data;
  const promised = bundles.reduce((sum, { entries }) => sum + entries, 0);
  const entries = entriesIn(text.slice(end + 1), promised);
  if (entries === null) return null;
  const read: Bundle[] = [];
  let at = 0;
  for (const { number, entries: count, proof } of bundles) {
    const hashes = proof.map((one) => fromBase64(one) ?? new Uint8Array());
    read.push({ number, entries: entries.slice(at, at + count), proof: hashes });
    at += count;
  }
  return { size, bundles: read };
}

/** The leaves of its entries in the tree of the log. */
export const leavesOf = ({ entries }: Bundle): readonly Uint8Array[] =>
  entries.map(({ body }) => leafHash(utf8(body)));

/** How many entries the bundle of this number has in a log of this size; 0 where it lies behind the end. */
export const entriesOf = (number: number, size: number): number =>
  Math.max(0, Math.min(ENTRIES_A_BUNDLE, size - number * ENTRIES_A_BUNDLE));

/** Whether these are the leaves of the bundle in the log that has this root. */
export function isBundleOf(
  { number, proof }: Bundle,
  leaves: readonly Uint8Array[],
  { size, root }: { readonly size: number; readonly root: Uint8Array },
): boolean {
  if (leaves.length !== entriesOf(number, size)) return false;
  const set = leaves.map((leaf, i) => ({ index: number * ENTRIES_A_BUNDLE + i, hash: leaf }));
  const found = rootOfSet(set, size, proof);
  return found !== null && isSame(found, root);
}

/** Entries as they are shipped, without the head of a shipment. */
export const entriesText = (entries: readonly ShippedEntry[]): string =>
  entries.map(({ body, disclosures }) => `${body}\n${JSON.stringify(disclosures)}\n`).join('');

/** So many entries as they were shipped; null where there are more or fewer. */
export function entriesIn(text: string, count: number): readonly ShippedEntry[] | null {
  // One more than there may be, so that a text of nothing but line feeds is not taken apart.
  const lines = text.split('\n', 2 * count + 2);
  if (lines.length !== 2 * count + 1 || lines.pop() !== '') return null;
  const entries: ShippedEntry[] = [];
  for (let at = 0; at < lines.length; at += 2) {
    const disclosures = disclosuresIn(lines[at + 1] ?? '');
    if (disclosures === null) return null;
    entries.push({ body: lines[at] ?? '', disclosures });
  }
  return entries;
}

/** A list of texts in base64url, as JSON without white space. */
function disclosuresIn(line: string): readonly string[] | null {
  if (line === '[]') return [];
  if (!line.startsWith('["') || !line.endsWith('"]')) return null;
  const disclosures = line.slice(2, -2).split('","', MOST_DISCLOSURES + 1);
  const good = disclosures.length <= MOST_DISCLOSURES && disclosures.every((one) => DISCLOSURE.test(one));
  return good ? disclosures : null;
}
