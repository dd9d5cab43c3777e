/** Entries of the station log: from drafts to the bytes that are hashed and stored, and back. */
import type { JobEvent } from '../job/event.ts';
import { type Problem, problemFromZod, spokenProblem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { sentence } from '../words/catalogue.ts';
import { canonical, canonicalBytes, type JsonValue } from './canonical.ts';
import { type Concealed, concealedValue, disclosureOf, revealed } from './disclosures.ts';
import {
  type AnyEntry,
  type Draft,
  jobEntrySchema,
  type LogEntry,
  STATION_STREAM,
  type Stamp,
  type StationEntry,
  stationEntrySchema,
} from './log.ts';
import { leafHash } from './merkle.ts';
import { type PersonalPlace, type Place, personalPlaces } from './personal-places.ts';
import { fromUtf8 } from './platform/bytes.ts';
import { isSameData } from './platform/same.ts';
import type { StationEvent } from './station-event.ts';

/** An entry together with the bytes that stand for it. */
export interface Written {
  readonly entry: AnyEntry;
  /** The leaf in the Merkle tree. */
  readonly hash: Uint8Array;
  /** What is signed, in canonical JSON. */
  readonly body: string;
}

/** Where a log and one stream of it end. */
export interface End {
  readonly seq: number;
  readonly n: number;
}

const schemaOf = (stream: unknown) => (stream === STATION_STREAM ? stationEntrySchema : jobEntrySchema);

/** The personal texts of an entry with their places. */
export const personalTexts = (entry: AnyEntry): readonly PersonalPlace[] =>
  personalPlaces(schemaOf(entry.stream), entry);

/** The entry as it is signed: canonical bytes, with digests in place of its personal texts. */
export function signedBytes({ concealed, ...entry }: AnyEntry): Uint8Array {
  return canonicalBytes(concealedValue(entry, concealed, (place) => textAt(entry, place)));
}

/** The same as a value. */
export const signedEntry = (entry: AnyEntry): JsonValue => JSON.parse(fromUtf8(signedBytes(entry)));

/** The leaf of an entry in the tree: RFC 9162's hash of its signed bytes. */
export const entryHash = (entry: AnyEntry): Uint8Array => leafHash(signedBytes(entry));

/** The disclosures of the texts that an entry still has. */
export const disclosuresOf = ({ concealed, ...entry }: AnyEntry): readonly string[] =>
  concealed.flatMap((one) => ('salt' in one ? [disclosureOf(one.salt, textAt(entry, one.place))] : []));

function textAt(value: unknown, place: Place): string {
  const text = place.reduce<unknown>(
    (at, step) => (typeof at === 'object' && at !== null ? Reflect.get(at, step) : undefined),
    value,
  );
  if (typeof text !== 'string') throw new Error(`there is no text at ${place.join('.')}`);
  return text;
}

/**
 * Makes entries of drafts, numbered on from `end`; `salt` gives 128 fresh random bits in base64url at each call. The entry
 * given back is what its bytes say, so that -0 comes back as 0. Throws for a draft that the log would not read again.
 */
export function written(
  end: End,
  stream: string,
  drafts: readonly Draft<JobEvent | StationEvent>[],
  { at, monoUs }: Stamp,
  salt: () => string,
): readonly Written[] {
  return drafts.map(({ by, event }, i) => {
    const [seq, n] = [end.seq + 1 + i, end.n + 1 + i];
    const draft = { v: 1, seq, n, stream, at, monoUs, by, salt: salt(), event };
    const read = schemaOf(stream).safeParse(JSON.parse(canonical(draft)));
    if (!read.success) throw read.error;
    const concealed = personalPlaces(schemaOf(stream), read.data).map(({ place }) => ({
      place,
      salt: salt(),
    }));
    const entry: AnyEntry = { ...read.data, concealed };
    const bytes = signedBytes(entry);
    return { entry, hash: leafHash(bytes), body: fromUtf8(bytes) };
  });
}

/** Reads a signed entry with its disclosures. Problems: `disclosure`, `entry-form`. */
export function readEntry(
  signed: JsonValue,
  disclosures: readonly string[],
  source: string,
): Result<AnyEntry> {
  const back = revealed(signed, disclosures, source);
  return back.ok ? asEntry(back.value.value, back.value.concealed, source) : back;
}

/** Reads a list of signed entries with the disclosures of all of them. Problems: `disclosure`, `entry-form`. */
export function readEntries(
  signed: readonly JsonValue[],
  disclosures: readonly string[],
  source: string,
): Result<readonly AnyEntry[]> {
  const back = revealed(signed, disclosures, source);
  if (!back.ok) return back;
  const { value, concealed } = back.value;
  const placesOf = byEntry(concealed, 1);
  const entries: AnyEntry[] = [];
  for (const [i, one] of Array.isArray(value) ? value.entries() : []) {
    const entry = asEntry(one, placesOf.get(String(i)) ?? [], `${source}: entries[${i}]`);
    if (!entry.ok) return entry;
    entries.push(entry.value);
  }
  return ok(entries);
}

/** What is concealed, by the first steps of its way, which lead to an entry; the ways lead from the entry on. */
export function byEntry(all: readonly Concealed[], steps: number): ReadonlyMap<string, readonly Concealed[]> {
  const found = new Map<string, Concealed[]>();
  for (const one of all) {
    const key = one.place.slice(0, steps).join('/');
    const inside = { ...one, place: one.place.slice(steps) };
    const some = found.get(key);
    if (some === undefined) found.set(key, [inside]);
    else some.push(inside);
  }
  return found;
}

function asEntry(value: JsonValue, concealed: readonly Concealed[], source: string): Result<AnyEntry> {
  const stream = typeof value === 'object' && value !== null && 'stream' in value ? value['stream'] : null;
  const read = schemaOf(stream).safeParse(value);
  if (!read.success) return err(problemFromZod(read.error, source, 'entry-form', NEXT));
  const entry: AnyEntry = { ...read.data, concealed };
  const fault = concealmentFault(entry, source);
  return fault === null ? ok(entry) : err(fault);
}

/** Personal text is always concealed, and nothing else is: else a verdict could be withheld, or a name given away. */
export function concealmentFault(entry: AnyEntry, source: string): Problem | null {
  const due = personalTexts(entry).map(({ place }) => place.join('.'));
  const is = entry.concealed.map(({ place }) => place.join('.'));
  if (isSameData([...due].sort(), [...is].sort())) return null;
  const open = due.find((place) => !is.includes(place));
  return spokenProblem(
    'disclosure',
    `${source}: ${open ?? is.find((place) => !due.includes(place)) ?? ''}`,
    open === undefined ? MAY_NOT_BE_CONCEALED : sentence`personal text has to be concealed here`,
    NEXT,
  );
}

export const isStationEntry = (entry: AnyEntry): entry is StationEntry => entry.stream === STATION_STREAM;
export const isJobEntry = (entry: AnyEntry): entry is LogEntry => entry.stream !== STATION_STREAM;

/** Of anything that is no personal text. */
export const MAY_NOT_BE_CONCEALED = sentence`this may not be concealed`;
const NEXT = sentence`Ask for it again from the station that wrote it.`;
