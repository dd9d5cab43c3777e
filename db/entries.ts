/** The table `entries`: the one place that knows how an entry lies in it. What it repeats of a body is held against it. */

import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { disclosureOf } from '../src/evidence/disclosures.ts';
import { isJobEntry, personalTexts, readEntry } from '../src/evidence/entry.ts';
import type { AnyEntry, LogEntry } from '../src/evidence/log.ts';
import { leafHash } from '../src/evidence/merkle.ts';
import { isSame } from '../src/evidence/platform/bytes.ts';
import type { KeptText } from '../src/evidence/sharing.ts';
import { parseStrictJson } from '../src/evidence/strict-json.ts';
import { personalKindSchema } from '../src/personal.ts';
import { ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';
import { packingOf } from './packing.ts';
import { damagedNext } from './problems.ts';

/** An entry as the table kind it; whether it is the one that was written is for {@link entryIn} to say. */
export interface StoredEntry {
  readonly seq: number;
  readonly stream: string;
  readonly n: number;
  readonly kind: number;
  readonly hash: Uint8Array;
  /** What is signed, with its salt; null where what is stored is no body. */
  readonly body: Buffer | null;
  /** The disclosures that are left of it. */
  readonly disclosures: readonly string[];
}

/** No entry has more personal texts: the longest impact assessment has three for each of its 20 000 jobs. */
export const TEXTS_AN_ENTRY = 65_536;

/** What an entry kind: samples alone; what opens, closes or voids a job; anything else. */
export const KIND = { samples: 0, other: 1, status: 2 } as const;

export interface EntryTable {
  /** How many entries there are. */
  size(): number;
  /** The highest `n` of a stream; 0 for one that is not there. */
  lastOf(stream: string): number;
  put(entry: AnyEntry, hash: Uint8Array, body: string): void;
  /** All personal texts that are there. */
  texts(): Iterable<KeptText>;
  /** Deletes these. */
  forget(texts: readonly Pick<KeptText, 'entry' | 'text'>[]): void;
  ofStream(stream: string): readonly StoredEntry[];
  /** Those of a stream without samples. */
  withoutSamples(stream: string): readonly StoredEntry[];
  /** So many that say where a job stands, behind `seq`. */
  statusAfter(seq: number, limit: number): readonly StoredEntry[];
  /** So many behind `seq`. */
  after(seq: number, limit: number): readonly StoredEntry[];
  /** The last ones, the newest first. */
  newest(limit: number): readonly StoredEntry[];
  /** The newest of a stream. */
  newestOf(stream: string): StoredEntry | null;
  all(): Iterable<StoredEntry>;
  /** All streams in the order of their first entries. */
  streams(): readonly string[];
}

const rowSchema = z.strictObject({
  seq: z.int(),
  stream: z.string(),
  n: z.int(),
  kind: z.int(),
  hash: z.instanceof(Uint8Array),
  salt: z.unknown(),
  body: z.unknown(),
});

const textSchema = z.strictObject({
  place: z.int(),
  kind: personalKindSchema,
  content: z.string(),
  stream: z.string(),
});

const disclosureSchema = z.strictObject({ salt: z.instanceof(Uint8Array), text: z.string() });

/** No entry is left out of an answer because its stream has lost its name: it comes with none, and is not as it was written. */
export function entryTable(db: Database): EntryTable {
  const { pack, unpack } = packingOf(db);
  const some = (rest: string) =>
    db.prepare(
      `SELECT e.seq, ifnull(s.name, '') AS stream, e.n, e.kind, e.hash, e.salt, e.body FROM entries e LEFT JOIN streams s ON s.id = e.stream ${rest}`,
    );
  const lastSeq = db.prepare('SELECT coalesce(max(seq), 0) FROM entries').pluck();
  const streamId = db.prepare('SELECT id FROM streams WHERE name = ?').pluck();
  const addStream = db.prepare('INSERT INTO streams SELECT coalesce(max(id), 0) + 1, ? FROM streams');
  const lastN = db.prepare('SELECT coalesce(max(n), 0) FROM entries WHERE stream = ?').pluck();
  const insert = db.prepare(
    'INSERT INTO entries (seq, stream, n, kind, hash, salt, body) VALUES (?, ?, ?, ?, ?, ?, ?)',
  );
  const disclose = db.prepare('INSERT INTO disclosures (place, kind, salt, text) VALUES (?, ?, ?, ?)');
  const disclosed = db.prepare(
    'SELECT salt, text FROM disclosures WHERE place BETWEEN ? AND ? ORDER BY place',
  );
  const allTexts = db.prepare(
    `SELECT d.place, d.kind, d.text AS content, ifnull(s.name, '') AS stream FROM disclosures d LEFT JOIN entries e ON e.seq = d.place / ${TEXTS_AN_ENTRY} LEFT JOIN streams s ON s.id = e.stream ORDER BY d.place`,
  );
  const remove = db.prepare('DELETE FROM disclosures WHERE place = ?');
  const ofStream = some('WHERE s.name = ? ORDER BY e.n');
  const withoutSamples = some(`WHERE s.name = ? AND e.kind <> ${KIND.samples} ORDER BY e.n`);
  const statusAfter = some(`WHERE e.seq > ? AND e.kind = ${KIND.status} ORDER BY e.seq LIMIT ?`);
  const after = some('WHERE e.seq > ? ORDER BY e.seq LIMIT ?');
  const newest = some('ORDER BY e.seq DESC LIMIT ?');
  const newestOf = some('WHERE s.name = ? ORDER BY e.n DESC LIMIT 1');
  const all = some('ORDER BY e.seq');
  const streams = db.prepare('SELECT name FROM streams ORDER BY id').pluck();

  const idOf = (stream: string): number | null => z.int().optional().parse(streamId.get(stream)) ?? null;
  const stored = (row: unknown): StoredEntry => {
    const { salt, body: packed, ...rest } = rowSchema.parse(row);
    const body = unpack(packed, salt);
    return { ...rest, body, disclosures: body?.includes('"_sd"') === true ? disclosuresOf(rest.seq) : [] };
  };
  const disclosuresOf = (seq: number) =>
    disclosed.all(seq * TEXTS_AN_ENTRY, (seq + 1) * TEXTS_AN_ENTRY - 1).map((row) => {
      const { salt, text } = disclosureSchema.parse(row);
      return disclosureOf(Buffer.from(salt).toString('base64url'), text);
    });
  return {
    size: () => z.int().parse(lastSeq.get()),
    lastOf: (stream) => z.int().parse(lastN.get(idOf(stream))),
    put: (entry, hash, body) => {
      const { seq, stream, n, salt } = entry;
      const id = idOf(stream) ?? Number(addStream.run(stream).lastInsertRowid);
      insert.run(seq, id, n, kindOf(entry), hash, Buffer.from(salt, 'base64url'), pack(body));
      const texts = personalTexts(entry);
      for (const [item, { kind, text, place }] of texts.entries()) {
        const one = entry.concealed.find((c) => c.place.join('.') === place.join('.'));
        if (one !== undefined && 'salt' in one)
          disclose.run(seq * TEXTS_AN_ENTRY + item, kind, Buffer.from(one.salt, 'base64url'), text);
      }
    },
    *texts() {
      for (const row of allTexts.iterate()) {
        const { place, ...rest } = textSchema.parse(row);
        yield { ...rest, entry: Math.floor(place / TEXTS_AN_ENTRY), text: place % TEXTS_AN_ENTRY };
      }
    },
    forget: (texts) => {
      for (const { entry, text } of texts) remove.run(entry * TEXTS_AN_ENTRY + text);
    },
    ofStream: (stream) => ofStream.all(stream).map(stored),
    withoutSamples: (stream) => withoutSamples.all(stream).map(stored),
    statusAfter: (seq, limit) => statusAfter.all(seq, limit).map(stored),
    after: (seq, limit) => after.all(seq, limit).map(stored),
    newest: (limit) => newest.all(limit).map(stored),
    newestOf: (stream) => {
      const row = newestOf.get(stream);
      return row === undefined ? null : stored(row);
    },
    *all() {
      for (const row of all.iterate()) yield stored(row);
    },
    streams: () => streams.all().map((name) => z.string().parse(name)),
  };
}

/** The entry as it was written; null where the body is not what its hash was made of, or the table says otherwise than it. */
export function entryIn(stored: StoredEntry): AnyEntry | null {
  const { seq, stream, n, kind, hash, body, disclosures } = stored;
  const json = body !== null && isSame(leafHash(body), hash) ? parseStrictJson(body, 'entry') : null;
  const read = json?.ok === true ? readEntry(json.value, disclosures, `entry ${seq}`) : null;
  if (read?.ok !== true) return null;
  const { value: entry } = read;
  const agrees = entry.seq === seq && entry.stream === stream && entry.n === n && kindOf(entry) === kind;
  return agrees ? entry : null;
}

/** The same of an entry of a job. */
export function jobEntryOf(stored: StoredEntry, where: string): LogEntry {
  const entry = entryOf(stored, where);
  if (isJobEntry(entry)) return entry;
  throw new Error('an entry of the station came from the stream of a job');
}

/** The entry as it was written: what does not match its hash any more is never passed on. Throws `log-damaged`. */
export function entryOf(stored: StoredEntry, where: string): AnyEntry {
  const entry = entryIn(stored);
  if (entry !== null) return entry;
  throw new ProblemError({
    code: 'log-damaged',
    where,
    message: w`entry ${stored.seq} of the station log was changed`,
    next: damagedNext(),
  });
}

function kindOf({ event }: AnyEntry): number {
  switch (event.type) {
    case 'readings':
      return KIND.samples;
    case 'job-opened':
    case 'job-closed':
    case 'job-voided':
      return KIND.status;
    default:
      return KIND.other;
  }
}
