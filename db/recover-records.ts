/** What exported records give to a damaged log: which of them are its own, and the entries that they hold. */

import { isSignedBy, originOf, readCheckpoint, type SignedCheckpoint } from '../src/evidence/checkpoint.ts';
import { disclosuresOf, entryHash, isStationEntry, signedBytes } from '../src/evidence/entry.ts';
import { type PublicJwk, thumbprint } from '../src/evidence/jwk.ts';
import { type AnyEntry, STATION_STREAM, type StationEntry } from '../src/evidence/log.ts';
import { leafHash } from '../src/evidence/merkle.ts';
import { fromUtf8 } from '../src/evidence/platform/bytes.ts';
import { successionBy } from '../src/evidence/succession.ts';
import { type Problem, ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';
import { type Carved, type CarvedEntry, carvedEntry } from './carve.ts';

/** What a record that was verified still holds: entries with their places, and the checkpoint it was sealed with. */
export interface FromRecord {
  /** What the user knows it by. */
  readonly name: string;
  readonly entries: readonly AnyEntry[];
  readonly checkpoint: string;
}

/**
 * The records of the damaged log itself: any other station that is trusted has entries of the same numbers. Which log it is
 * its own pages say; where they do not, only a record that shares an entry with them can. Where nothing can be read of a
 * log, it is the one that a key of the station belongs to, or that all records are of.
 */
export function ofThisLog(
  carved: Carved,
  records: readonly FromRecord[],
  keys: readonly string[],
): readonly FromRecord[] {
  const stations = stationEntriesIn(carved.entry, carved.last);
  const first = stations.find(({ seq }) => seq === 1)?.event;
  const shares = ({ entries }: FromRecord) =>
    entries.some((entry) => carved.entry(entry.seq)?.hash.equals(entryHash(entry)));
  const origin =
    (first?.type === 'station-set-up' ? originOf(thumbprint(first.key), first.domain) : null) ??
    onlyOrigin(records.filter(shares).map(({ checkpoint }) => checkpoint)) ??
    onlyOrigin(carved.notes) ??
    (carved.last === 0 ? originOfRecords(records, keys) : null);
  const stationKids = keysIn(stations).map(({ jwk }) => thumbprint(jwk));
  return records.filter(({ entries, checkpoint }) => {
    const read = readCheckpoint(checkpoint, w`a checkpoint of a record`);
    if (!read.ok || read.value.origin !== origin) return false;
    return isSignedBy(read.value, keysOfLog(entries, origin, stationKids));
  });
}

export function onlyOrigin(notes: readonly string[]): string | null {
  const origins = new Set(checkpointsOf(notes).map(({ origin }) => origin));
  const [origin = null] = origins;
  return origins.size === 1 ? origin : null;
}

/** Problem `recover-several-logs` where nothing says which of them is meant. */
function originOfRecords(records: readonly FromRecord[], keys: readonly string[]): string | null {
  const names = ({ entries }: FromRecord) =>
    keysIn(entries.filter(isStationEntry)).some(({ jwk }) => keys.includes(thumbprint(jwk)));
  const own = keys.length === 0 ? records : records.filter(names);
  const origin = onlyOrigin(own.map(({ checkpoint }) => checkpoint));
  if (origin === null && own.length > 0) throw new ProblemError(severalLogs());
  return origin;
}

/** Keys of a record that are the log's: found in its pages, the one that it is named after, and those these named. */
function keysOfLog(
  entries: readonly AnyEntry[],
  origin: string,
  stationKids: readonly string[],
): PublicJwk[] {
  const keys: PublicJwk[] = [];
  const stations = entries.filter(isStationEntry);
  for (const { jwk, statement } of keysIn(stations)) {
    const kid = thumbprint(jwk);
    const isNamed = keys.some((old) => {
      const succession = statement === null ? null : successionBy(statement, old);
      return succession !== null && succession.log === origin && thumbprint(succession.next) === kid;
    });
    if (stationKids.includes(kid) || originOf(kid) === origin || isNamed) keys.push(jwk);
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
export function heldBy(records: readonly FromRecord[], carved: Carved): Map<number, CarvedEntry> {
  const held = new Map<number, CarvedEntry>();
  for (const { name, entries } of records)
    for (const entry of entries.map(fromRecord)) {
      const other = held.get(entry.seq) ?? carved.entry(entry.seq);
      if (other !== null && !other.hash.equals(entry.hash))
        throw new ProblemError(twoCourses(name, entry.seq));
      // Of two that say the same, the one with more of its texts left.
      if (other === null || entry.disclosures.length >= other.disclosures.length) held.set(entry.seq, entry);
      else held.set(entry.seq, other);
    }
  return held;
}

function fromRecord(entry: AnyEntry): CarvedEntry {
  const bytes = signedBytes(entry);
  const { seq, stream, n } = entry;
  return {
    seq,
    stream,
    n,
    hash: Buffer.from(leafHash(bytes)),
    body: fromUtf8(bytes),
    disclosures: disclosuresOf(entry),
  };
}

/** Those that are written as one is. */
export function stationEntriesIn(entryAt: (seq: number) => CarvedEntry | null, size: number): StationEntry[] {
  const matching = [];
  for (let seq = 1; seq <= size; seq++) {
    const entry = entryAt(seq);
    const read = entry?.stream === STATION_STREAM ? carvedEntry(entry) : null;
    if (read !== null && isStationEntry(read)) matching.push(read);
  }
  return matching;
}

export function checkpointsOf(
  notes: readonly string[],
): readonly (SignedCheckpoint & { readonly note: string })[] {
  const matching = [];
  for (const note of new Set(notes)) {
    const read = readCheckpoint(note, w`a checkpoint of the station`);
    if (read.ok) matching.push({ ...read.value, note });
  }
  return matching.sort((a, b) => a.size - b.size);
}

const twoCourses = (record: string, seq: number): Problem => ({
  code: 'recover-two-courses',
  where: record,
  message: w`its entry ${seq} differs from the one in the log or in an earlier record`,
  next: w`The log split in two, as after restoring an old backup. Name a folder with the records of one of them.`,
});

const severalLogs = (): Problem => ({
  code: 'recover-several-logs',
  message: w`the records are from several logs, and no key shows which one is this station`,
  next: w`Name a folder with the records of one station only.`,
});
