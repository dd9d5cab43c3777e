/** A new log of what can be saved of a damaged one, and of what exported records still hold. */
import { closeSync, existsSync, openSync, writeSync } from 'node:fs';
import { canonicalBytes } from '../src/evidence/canonical.ts';
import {
  checkpointHolds,
  originOf,
  readCheckpoint,
  type SignedCheckpoint,
} from '../src/evidence/checkpoint.ts';
import { type Finding, heldAgainst } from '../src/evidence/held-against.ts';
import { type PublicJwk, thumbprint } from '../src/evidence/jwk.ts';
import {
  type AnyEntry,
  readEntry,
  STATION_STREAM,
  type StationEntry,
  stationEntrySchema,
} from '../src/evidence/log.ts';
import { leafHash } from '../src/evidence/merkle.ts';
import { type StationState, stationOf } from '../src/evidence/station.ts';
import { successionBy } from '../src/evidence/succession.ts';
import { ProblemError } from '../src/problem.ts';
import { type Carved, type CarvedEntry, carve } from './carve.ts';
import { entryTable } from './entries.ts';
import { openDatabase } from './open.ts';
import { storedTree } from './tree.ts';

/** What a record that was verified still holds: entries with their places, and the checkpoint it was sealed with. */
export interface FromRecord {
  /** What the user knows it by. */
  readonly name: string;
  readonly entries: readonly AnyEntry[];
  readonly checkpoint: string;
}

export interface Recovered {
  /** Entries in the new log, from the first on without a gap. */
  readonly kept: number;
  /** So many of them came from records. */
  readonly fromRecords: number;
  /** Names of records that are of another log, or that no key known to be this log's has sealed: nothing of them was used. */
  readonly leftOut: readonly string[];
  /** Stretches of entries that nothing holds any more, the last one up to the highest number that is known of. */
  readonly lost: readonly { readonly from: number; readonly to: number }[];
  /** Readable entries behind the first gap: they cannot stand in the log, and were written into a file of their own. */
  readonly beside: number;
  /** Jobs of which the new log holds a part or nothing, though entries of them were found. */
  readonly cutJobs: readonly string[];
  /** What checkpoints that were signed before say of the new log. */
  readonly checkpoints: readonly Finding[];
}

const ENTRIES_A_TRANSACTION = 2000;

/**
 * Writes a new log to `out` and the entries that cannot stand in it to `beside`, a line each; `damaged` is only read.
 * Problems: `recover-exists` where one of the two is there already, `recover-two-courses` where records hold other entries
 * than the log or one another, `recover-nothing` where not even the first entry is left, and those of {@link openDatabase}.
 */
export async function recoverLog(
  damaged: string,
  { out, beside }: { readonly out: string; readonly beside: string },
  records: readonly FromRecord[],
): Promise<Recovered> {
  for (const path of [out, beside]) if (existsSync(path)) throw new ProblemError(isThere(path));
  const carved = await carve(damaged);
  try {
    const own = ofThisLog(carved, records);
    const held = heldBy(own, carved);
    const entryAt = (seq: number): CarvedEntry | null => carved.entry(seq) ?? held.get(seq) ?? null;
    const known = [...held.keys()].reduce((most, seq) => Math.max(most, seq), carved.last);
    if (entryAt(1) === null) throw new ProblemError(nothingLeft(damaged));
    const written = await writeLog(out, entryAt, own, carved.notes);
    const rest = besideThe(written.size, known, entryAt, beside);
    const fromRecords = countTo(written.size, (seq) => !carved.has(seq));
    return {
      kept: written.size,
      fromRecords,
      leftOut: records.filter((record) => !own.includes(record)).map(({ name }) => name),
      lost: rest.lost,
      beside: rest.count,
      cutJobs: rest.jobs,
      checkpoints: written.checkpoints,
    };
  } finally {
    carved.close();
  }
}

function fromRecord(entry: AnyEntry): CarvedEntry {
  const bytes = canonicalBytes(entry);
  const { seq, stream, n } = entry;
  return { seq, stream, n, hash: leafHash(bytes), body: bytes.toString('utf8') };
}

/**
 * The records of the damaged log itself: any other station that is trusted has entries of the same numbers. Which log it is
 * its own pages say; where they do not, only a record that shares an entry with them can.
 */
function ofThisLog(carved: Carved, records: readonly FromRecord[]): readonly FromRecord[] {
  const stations = stationEntriesIn(carved.entry, carved.last);
  const first = stations.find(({ seq }) => seq === 1)?.event;
  const shares = ({ entries }: FromRecord) =>
    entries.some((entry) => carved.entry(entry.seq)?.hash.equals(fromRecord(entry).hash));
  const origin =
    (first?.type === 'station-set-up' ? originOf(thumbprint(first.key)) : null) ??
    onlyOrigin(records.filter(shares).map(({ checkpoint }) => checkpoint)) ??
    onlyOrigin(carved.notes);
  const known = keysIn(stations).map(({ jwk }) => thumbprint(jwk));
  return records.filter(({ entries, checkpoint }) => {
    const read = readCheckpoint(checkpoint, 'a checkpoint of a record');
    if (!read.ok || read.value.origin !== origin) return false;
    return keysOfLog(entries, origin, known).some((key) => checkpointHolds(read.value, key));
  });
}

function onlyOrigin(notes: readonly string[]): string | null {
  const origins = new Set(checkpointsOf(notes).map(({ origin }) => origin));
  const [origin = null] = origins;
  return origins.size === 1 ? origin : null;
}

/** Keys of a record that are the log's: found in its pages, the one that it is named after, and those these named. */
function keysOfLog(entries: readonly AnyEntry[], origin: string, known: readonly string[]): PublicJwk[] {
  const keys: PublicJwk[] = [];
  const stations = entries.flatMap((entry) => stationEntrySchema.safeParse(entry).data ?? []);
  for (const { jwk, statement } of keysIn(stations)) {
    const kid = thumbprint(jwk);
    const isNamed = keys.some((old) => {
      const said = statement === null ? null : successionBy(statement, old);
      return said !== null && said.log === origin && thumbprint(said.next) === kid;
    });
    if (known.includes(kid) || originOf(kid) === origin || isNamed) keys.push(jwk);
  }
  return keys;
}

interface NamedKey {
  readonly jwk: PublicJwk;
  /** By what the key before it named this one. */
  readonly statement: string | null;
}

const keysIn = (entries: readonly StationEntry[]): readonly NamedKey[] =>
  entries.flatMap(({ event }): readonly NamedKey[] => {
    if (event.type === 'key-rotated') return [{ jwk: event.key, statement: event.statement }];
    if (event.type === 'station-set-up' || event.type === 'key-replaced')
      return [{ jwk: event.key, statement: null }];
    return [];
  });

/** What records hold, by number. A log has one entry of a number; where two are claimed nobody here can choose. */
function heldBy(records: readonly FromRecord[], carved: Carved): ReadonlyMap<number, CarvedEntry> {
  const held = new Map<number, CarvedEntry>();
  for (const { name, entries } of records)
    for (const entry of entries.map(fromRecord)) {
      const other = held.get(entry.seq) ?? carved.entry(entry.seq);
      if (other !== null && !other.hash.equals(entry.hash))
        throw new ProblemError(twoCourses(name, entry.seq));
      held.set(entry.seq, entry);
    }
  return held;
}

/** Entries from the first on, as long as each is there and in its place. */
async function writeLog(
  out: string,
  entryAt: (seq: number) => CarvedEntry | null,
  records: readonly FromRecord[],
  notes: readonly string[],
): Promise<{ readonly size: number; readonly checkpoints: readonly Finding[] }> {
  const db = await openDatabase(out);
  try {
    const tree = storedTree(db, out);
    const table = entryTable(db);
    const keep = db.prepare(
      'INSERT INTO checkpoints SELECT coalesce(max(place), 0) + 1, ?, ? FROM checkpoints',
    );
    const lastOf = new Map<string, number>();
    const some = db.transaction((from: number) => {
      for (let seq = from; seq < from + ENTRIES_A_TRANSACTION; seq++) {
        const entry = entryAt(seq);
        const next = entry === null ? null : nextEntry(entry, seq, lastOf);
        if (entry === null || next === null) return seq - 1;
        table.put(next, entry.hash, entry.body);
        tree.grow(seq - 1, entry.hash);
        lastOf.set(next.stream, next.n);
      }
      return from + ENTRIES_A_TRANSACTION - 1;
    });
    let size = 0;
    for (let next = 1; ; next = size + 1) {
      size = some.immediate(next);
      if (size < next + ENTRIES_A_TRANSACTION - 1) break;
    }
    const state = stationIn(entryAt, size);
    if (state === null) return { size, checkpoints: [] };
    const known = checkpointsOf([...notes, ...records.map(({ checkpoint }) => checkpoint)]);
    const now = { origin: state.origin, size, tree, keys: state.keys.map(({ jwk }) => jwk) };
    const findings = heldAgainst(now, known);
    // Both are in the order of sizes; of several that agree at one size the last is kept.
    const agreed = known.filter((_, i) => findings[i]?.kind === 'extends');
    for (const [at, note] of new Map(agreed.map((one) => [one.size, one.note]))) keep.run(at, note);
    return { size, checkpoints: findings };
  } finally {
    db.close();
  }
}

/** Where it is written as an entry is, and is the next of the log and of its stream. */
function nextEntry(
  { seq, stream, n, body }: CarvedEntry,
  due: number,
  lastOf: Map<string, number>,
): AnyEntry | null {
  const read = readEntry(JSON.parse(body));
  const isNext = seq === due && read.data?.seq === due && n === (lastOf.get(stream) ?? 0) + 1;
  return isNext && read.success && read.data.stream === stream ? read.data : null;
}

function stationIn(entryAt: (seq: number) => CarvedEntry | null, size: number): StationState | null {
  return stationOf(stationEntriesIn(entryAt, size));
}

/** Those that are written as one is. */
function stationEntriesIn(entryAt: (seq: number) => CarvedEntry | null, size: number): StationEntry[] {
  const found = [];
  for (let seq = 1; seq <= size; seq++) {
    const entry = entryAt(seq);
    const read =
      entry?.stream === STATION_STREAM ? stationEntrySchema.safeParse(JSON.parse(entry.body)) : null;
    if (read?.success === true) found.push(read.data);
  }
  return found;
}

function checkpointsOf(notes: readonly string[]): readonly (SignedCheckpoint & { readonly note: string })[] {
  const found = [];
  for (const note of new Set(notes)) {
    const read = readCheckpoint(note, 'a checkpoint of the station');
    if (read.ok) found.push({ ...read.value, note });
  }
  return found.sort((a, b) => a.size - b.size);
}

/** Writes what is readable behind the log's end into a file, and finds what is not. */
function besideThe(
  size: number,
  known: number,
  entryAt: (seq: number) => CarvedEntry | null,
  path: string,
): { readonly count: number; readonly lost: Recovered['lost']; readonly jobs: readonly string[] } {
  if (known <= size) return { count: 0, lost: [], jobs: [] };
  const file = openSync(path, 'wx', 0o600);
  const jobs = new Set<string>();
  const lost: { from: number; to: number }[] = [];
  let count = 0;
  try {
    for (let seq = size + 1; seq <= known; seq++) {
      const entry = entryAt(seq);
      const hole = lost.at(-1);
      if (entry !== null) {
        writeSync(file, `${entry.body}\n`);
        count++;
        if (entry.stream !== STATION_STREAM) jobs.add(entry.stream.slice('job:'.length));
      } else if (hole !== undefined && hole.to === seq - 1) hole.to = seq;
      else lost.push({ from: seq, to: seq });
    }
  } finally {
    closeSync(file);
  }
  return { count, lost, jobs: [...jobs] };
}

function countTo(size: number, counts: (seq: number) => boolean): number {
  let count = 0;
  for (let seq = 1; seq <= size; seq++) if (counts(seq)) count++;
  return count;
}

const isThere = (path: string) => ({
  code: 'recover-exists',
  where: path,
  message: 'a file is there already, and nothing is written over',
  next: 'Name a new file with --out.',
});

const twoCourses = (record: string, seq: number) => ({
  code: 'recover-two-courses',
  where: record,
  message: `its entry ${seq} is not the one that the log, or a record before it, has under this number`,
  next: 'The log took two courses, as after an old backup was restored: name a folder with the records of one course alone.',
});

const nothingLeft = (path: string) => ({
  code: 'recover-nothing',
  where: path,
  message: 'not even the first entry of the log is left, and no record holds it',
  next: 'Restore the log from a backup; where there is none, its jobs live on in their exported records alone.',
});
