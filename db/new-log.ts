/** A new log of entries that come from elsewhere: pages of a damaged one, records, an archive. */
import { isStationEntry } from '../src/evidence/entry.ts';
import { type Finding, heldAgainst } from '../src/evidence/kept-checkpoints.ts';
import { type AnyEntry, STATION_STREAM } from '../src/evidence/log.ts';
import { stationOf } from '../src/evidence/station.ts';
import { type CarvedEntry, carvedEntry } from './carve.ts';
import { entryIn, entryTable } from './entries.ts';
import { openDatabase } from './open.ts';
import { checkpointsOf } from './recover-records.ts';
import { storedTree } from './tree.ts';

export interface Written {
  /** Entries in the new log, from the first on without a gap. */
  readonly size: number;
  /** What checkpoints that were signed before say of it. */
  readonly checkpoints: readonly Finding[];
}

/**
 * Writes entries from the first on, as long as each is in its place; a batch is a transaction. Of the checkpoints in `notes`
 * those that agree with the new log are kept in it.
 */
export async function writeLog(
  out: string,
  batches: Iterable<readonly CarvedEntry[]> | AsyncIterable<readonly CarvedEntry[]>,
  { notes, written }: { readonly notes: readonly string[]; readonly written: (size: number) => void },
): Promise<Written> {
  const db = await openDatabase(out);
  try {
    const tree = storedTree(db, out);
    const table = entryTable(db);
    const lastOf = new Map<string, number>();
    let size = 0;
    const some = db.transaction((batch: readonly CarvedEntry[]) => {
      for (const carved of batch) {
        const entry = nextEntry(carved, size + 1, lastOf);
        if (entry === null) return false;
        table.put(entry, carved.hash, carved.body);
        tree.grow(size, carved.hash);
        lastOf.set(entry.stream, entry.n);
        size += 1;
      }
      return true;
    });
    for await (const batch of batches) {
      const goesOn = some.immediate(batch);
      written(size);
      if (!goesOn) break;
    }
    const entries = table
      .ofStream(STATION_STREAM)
      .flatMap((stored) => entryIn(stored) ?? [])
      .filter(isStationEntry);
    // Whoever gave them back may still have what the log has forgotten.
    const gone = entries.flatMap(({ event }) => (event.type === 'texts-forgotten' ? event.texts : []));
    db.pragma('secure_delete = ON');
    db.transaction(() => table.forget(gone)).immediate();
    const state = stationOf(entries);
    if (state === null) return { size, checkpoints: [] };
    const checkpoints = checkpointsOf(notes);
    const now = { origin: state.origin, size, tree, keys: state.keys.map(({ jwk }) => jwk) };
    const findings = heldAgainst(now, checkpoints);
    // Both are in the order of sizes; of several that agree at one size the last is kept.
    const agreed = checkpoints.filter((_, i) => findings[i]?.kind === 'extends');
    const keep = db.prepare(
      'INSERT INTO checkpoints SELECT coalesce(max(place), 0) + 1, ?, ? FROM checkpoints',
    );
    for (const [at, note] of new Map(agreed.map((one) => [one.size, one.note]))) keep.run(at, note);
    return { size, checkpoints: findings };
  } finally {
    db.close();
  }
}

/** Where it is written as an entry is, and is the next of the log and of its stream. */
function nextEntry(carved: CarvedEntry, due: number, lastOf: ReadonlyMap<string, number>): AnyEntry | null {
  const { seq, stream, n } = carved;
  const entry = carvedEntry(carved);
  const isNext = seq === due && entry?.seq === due && n === (lastOf.get(stream) ?? 0) + 1;
  return isNext && entry.stream === stream ? entry : null;
}
