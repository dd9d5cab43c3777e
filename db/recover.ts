/** A new log of what can be saved of a damaged one, and of what exported records still hold. */
import { closeSync, openSync, rmSync, writeSync } from 'node:fs';
import { canonicalBytes } from '../src/evidence/canonical.ts';
import { readCheckpoint, type SignedCheckpoint } from '../src/evidence/checkpoint.ts';
import { type Finding, heldAgainst } from '../src/evidence/held-against.ts';
import { type AnyEntry, readEntry, STATION_STREAM, stationEntrySchema } from '../src/evidence/log.ts';
import { leafHash } from '../src/evidence/merkle.ts';
import { type StationState, stationOf } from '../src/evidence/station.ts';
import { ProblemError } from '../src/problem.ts';
import { type CarvedEntry, carve } from './carve.ts';
import { openDatabase } from './open.ts';
import { storedTree } from './tree.ts';

/** What a record that was verified still holds: entries with their places, and the checkpoint it was sealed with. */
export interface FromRecord {
  readonly entries: readonly AnyEntry[];
  readonly checkpoint: string;
}

export interface Recovered {
  /** Entries in the new log, from the first on without a gap. */
  readonly kept: number;
  /** So many of them came from records. */
  readonly fromRecords: number;
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
 * Problems: `recover-nothing` where not even the first entry is left, and those of {@link openDatabase}.
 */
export async function recoverLog(
  damaged: string,
  { out, beside }: { readonly out: string; readonly beside: string },
  records: readonly FromRecord[],
): Promise<Recovered> {
  const carved = carve(damaged);
  try {
    const held = new Map(
      records.flatMap(({ entries }) => entries.map((entry) => [entry.seq, entry] as const)),
    );
    const entryAt = (seq: number): CarvedEntry | null => carved.entry(seq) ?? fromRecord(held.get(seq));
    const known = [...held.keys()].reduce((most, seq) => Math.max(most, seq), carved.last);
    if (entryAt(1) === null) throw new ProblemError(nothingLeft(damaged));
    const written = await writeLog(out, entryAt, records, carved.notes);
    const rest = besideThe(written.size, known, entryAt, beside);
    const fromRecords = countTo(written.size, (seq) => !carved.has(seq));
    return {
      kept: written.size,
      fromRecords,
      lost: rest.lost,
      beside: rest.count,
      cutJobs: rest.jobs,
      checkpoints: written.checkpoints,
    };
  } finally {
    carved.close();
  }
}

function fromRecord(entry: AnyEntry | undefined): CarvedEntry | null {
  if (entry === undefined) return null;
  const bytes = canonicalBytes(entry);
  const { seq, stream, n } = entry;
  return { seq, stream, n, hash: leafHash(bytes), body: bytes.toString('utf8') };
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
    const insert = db.prepare('INSERT INTO entries (seq, stream, n, hash, body) VALUES (?, ?, ?, ?, ?)');
    const keep = db.prepare(
      'INSERT INTO checkpoints SELECT coalesce(max(place), 0) + 1, ?, ? FROM checkpoints',
    );
    const lastOf = new Map<string, number>();
    const some = db.transaction((from: number) => {
      for (let seq = from; seq < from + ENTRIES_A_TRANSACTION; seq++) {
        const entry = entryAt(seq);
        if (entry === null || !isNext(entry, seq, lastOf)) return seq - 1;
        insert.run(seq, entry.stream, entry.n, entry.hash, entry.body);
        tree.grow(seq - 1, entry.hash);
        lastOf.set(entry.stream, entry.n);
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
    const bySize = new Map(findings.map((finding) => [finding.size, finding.kind]));
    for (const { note, size: at } of known) if (bySize.get(at) === 'extends') keep.run(at, note);
    return { size, checkpoints: findings };
  } finally {
    db.close();
  }
}

/** Whether an entry is written as one is, and is the next of the log and of its stream. */
function isNext({ seq, stream, n, body }: CarvedEntry, due: number, lastOf: Map<string, number>): boolean {
  const entry = readEntry(JSON.parse(body));
  return (
    entry.success &&
    seq === due &&
    entry.data.seq === due &&
    entry.data.stream === stream &&
    n === (lastOf.get(stream) ?? 0) + 1
  );
}

function stationIn(entryAt: (seq: number) => CarvedEntry | null, size: number): StationState | null {
  const entries = [];
  for (let seq = 1; seq <= size; seq++) {
    const entry = entryAt(seq);
    if (entry?.stream === STATION_STREAM) entries.push(stationEntrySchema.parse(JSON.parse(entry.body)));
  }
  return stationOf(entries);
}

function checkpointsOf(notes: readonly string[]): readonly (SignedCheckpoint & { readonly note: string })[] {
  const found = new Map<number, SignedCheckpoint & { readonly note: string }>();
  for (const note of notes) {
    const read = readCheckpoint(note, 'a checkpoint of the station');
    if (read.ok) found.set(read.value.size, { ...read.value, note });
  }
  return [...found.values()].sort((a, b) => a.size - b.size);
}

/** Writes what is readable behind the log's end into a file, and finds what is not. */
function besideThe(
  size: number,
  known: number,
  entryAt: (seq: number) => CarvedEntry | null,
  path: string,
): { readonly count: number; readonly lost: Recovered['lost']; readonly jobs: readonly string[] } {
  rmSync(path, { force: true });
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

const nothingLeft = (path: string) => ({
  code: 'recover-nothing',
  where: path,
  message: 'not even the first entry of the log is left, and no record holds it',
  next: 'Restore the log from a backup; where there is none, its jobs live on in their exported records alone.',
});
