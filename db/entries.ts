/** The table `entries`: the one place that knows how an entry lies in it. What it repeats of a body is held against it. */
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { type AnyEntry, readEntry } from '../src/evidence/log.ts';
import { leafHash } from '../src/evidence/merkle.ts';
import { parseStrictJson } from '../src/evidence/strict-json.ts';
import { ProblemError } from '../src/problem.ts';
import { packingOf } from './packing.ts';
import { DAMAGED_NEXT } from './problems.ts';

/** An entry as the table holds it; whether it is the one that was written is for {@link entryIn} to say. */
export interface StoredEntry {
  readonly seq: number;
  readonly stream: string;
  readonly n: number;
  readonly kind: number;
  readonly hash: Uint8Array;
  /** Null where what is stored is no body. */
  readonly body: Buffer | null;
}

/** What an entry holds: samples alone; what opens, closes or voids a job; anything else. */
export const KIND = { samples: 0, other: 1, status: 2 } as const;

/** What the table repeats of an entry. */
type Placed = Pick<AnyEntry, 'seq' | 'stream' | 'n'> & {
  readonly event: { readonly type: AnyEntry['event']['type'] };
};

export interface EntryTable {
  /** How many entries there are. */
  size(): number;
  /** The highest `n` of a stream; 0 for one that is not there. */
  lastOf(stream: string): number;
  put(one: Placed, hash: Uint8Array, body: string): void;
  ofStream(stream: string): readonly StoredEntry[];
  /** Those of a stream without samples. */
  withoutSamples(stream: string): readonly StoredEntry[];
  /** So many that say where a job stands, behind `seq`. */
  statusAfter(seq: number, limit: number): readonly StoredEntry[];
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
  body: z.unknown(),
});

/** No entry is left out of an answer because its stream has lost its name: it comes with none, and is not as it was written. */
export function entryTable(db: Database): EntryTable {
  const { pack, unpack } = packingOf(db);
  const some = (rest: string) =>
    db.prepare(
      `SELECT e.seq, ifnull(s.name, '') AS stream, e.n, e.kind, e.hash, e.body FROM entries e LEFT JOIN streams s ON s.id = e.stream ${rest}`,
    );
  const lastSeq = db.prepare('SELECT coalesce(max(seq), 0) FROM entries').pluck();
  const streamId = db.prepare('SELECT id FROM streams WHERE name = ?').pluck();
  const addStream = db.prepare('INSERT INTO streams SELECT coalesce(max(id), 0) + 1, ? FROM streams');
  const lastN = db.prepare('SELECT coalesce(max(n), 0) FROM entries WHERE stream = ?').pluck();
  const insert = db.prepare(
    'INSERT INTO entries (seq, stream, n, kind, hash, body) VALUES (?, ?, ?, ?, ?, ?)',
  );
  const ofStream = some('WHERE s.name = ? ORDER BY e.n');
  const withoutSamples = some(`WHERE s.name = ? AND e.kind <> ${KIND.samples} ORDER BY e.n`);
  const statusAfter = some(`WHERE e.seq > ? AND e.kind = ${KIND.status} ORDER BY e.seq LIMIT ?`);
  const newest = some('ORDER BY e.seq DESC LIMIT ?');
  const newestOf = some('WHERE s.name = ? ORDER BY e.n DESC LIMIT 1');
  const all = some('ORDER BY e.seq');
  const streams = db.prepare('SELECT name FROM streams ORDER BY id').pluck();

  const idOf = (stream: string): number | null => z.int().optional().parse(streamId.get(stream)) ?? null;
  const stored = (row: unknown): StoredEntry => {
    const { body, ...rest } = rowSchema.parse(row);
    return { ...rest, body: unpack(body) };
  };
  return {
    size: () => z.int().parse(lastSeq.get()),
    lastOf: (stream) => z.int().parse(lastN.get(idOf(stream))),
    put: (one, hash, body) => {
      const id = idOf(one.stream) ?? Number(addStream.run(one.stream).lastInsertRowid);
      insert.run(one.seq, id, one.n, kindOf(one), hash, pack(body));
    },
    ofStream: (stream) => ofStream.all(stream).map(stored),
    withoutSamples: (stream) => withoutSamples.all(stream).map(stored),
    statusAfter: (seq, limit) => statusAfter.all(seq, limit).map(stored),
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
export function entryIn({ seq, stream, n, kind, hash, body }: StoredEntry): AnyEntry | null {
  const json = body !== null && leafHash(body).equals(hash) ? parseStrictJson(body, 'entry') : null;
  const read = json?.ok === true ? readEntry(json.value) : null;
  if (read?.success !== true) return null;
  const { data: entry } = read;
  const agrees = entry.seq === seq && entry.stream === stream && entry.n === n && kindOf(entry) === kind;
  return agrees ? entry : null;
}

/** The entry as it was written: what does not match its hash any more is never passed on. Throws `log-damaged`. */
export function entryOf(stored: StoredEntry, where: string): AnyEntry {
  const entry = entryIn(stored);
  if (entry !== null) return entry;
  throw new ProblemError({
    code: 'log-damaged',
    where,
    message: `entry ${stored.seq} of the station log was changed`,
    next: DAMAGED_NEXT,
  });
}

function kindOf({ event }: Placed): number {
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
