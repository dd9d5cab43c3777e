/** A new log of what can be saved of a damaged one, and of what exported records still hold. */

import { closeSync, fsyncSync, lstatSync, openSync, rmSync, writeSync } from 'node:fs';
import { forgottenIn } from '../src/evidence/forgotten.ts';
import type { Finding } from '../src/evidence/kept-checkpoints.ts';
import { STATION_STREAM } from '../src/evidence/log.ts';
import { disclosuresBut } from '../src/evidence/sharing.ts';
import { putInPlace, syncFile, unfinishedName } from '../src/files/whole-file.ts';
import { type Problem, ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';
import type { Progress } from './attempts.ts';
import { type Carved, type CarvedEntry, carve, carvedEntry } from './carve.ts';
import { writeLog } from './new-log.ts';
import { type FromRecord, heldBy, ofThisLog, stationEntriesIn } from './recover-records.ts';

export interface Recovered {
  /** Entries in the new log, from the first on without a gap. */
  readonly kept: number;
  /** So many of them came from records. */
  readonly fromRecords: number;
  /** Nothing could be read of a log. */
  readonly fromRecordsAlone: boolean;
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
 * Writes a new log to `out` and the entries that cannot stand in it to `beside`, a line each; `damaged` is only read, and
 * null where there is none. `keys` are thumbprints known to be this station's: where nothing can be read of a log, they tell
 * its records from those of others. Problems: `file-exists` where one of the two is there already, `recover-two-courses`
 * where records hold other entries than the log or one another, `recover-several-logs`, `recover-nothing` where not even the
 * first entry is left, and those of {@link openDatabase}.
 */
export async function recoverLog(
  damaged: string | null,
  { out, beside }: { readonly out: string; readonly beside: string },
  records: readonly FromRecord[],
  keys: readonly string[] = [],
  watch: { readonly read?: Progress; readonly written?: Progress } = {},
): Promise<Recovered> {
  for (const path of [out, beside])
    if (lstatSync(path, { throwIfNoEntry: false }) !== undefined) throw new ProblemError(isThere(path));
  const carved = damaged === null ? NOTHING : await carve(damaged, watch.read);
  const part = unfinishedName(out);
  try {
    const own = ofThisLog(carved, records, keys);
    const held = heldBy(own, carved);
    const storedEntry = (seq: number): CarvedEntry | null => carved.entry(seq) ?? held.get(seq) ?? null;
    const lastReported = [...held.keys()].reduce((most, seq) => Math.max(most, seq), carved.last);
    const forgotten = forgottenIn(stationEntriesIn(storedEntry, lastReported));
    const entryAt = (seq: number): CarvedEntry | null => withoutForgotten(storedEntry(seq), forgotten);
    if (entryAt(1) === null) throw new ProblemError(nothingLeft(damaged));
    const notes = [...carved.notes, ...own.map(({ checkpoint }) => checkpoint)];
    const written = await writeLog(part, inOrder(entryAt), {
      notes,
      written: (size) => watch.written?.(size, lastReported),
    });
    const rest = besideThe(written.size, lastReported, entryAt, beside);
    syncFile(part);
    putInPlace(part, out);
    const fromRecords = countTo(written.size, (seq) => !carved.has(seq));
    return {
      kept: written.size,
      fromRecords,
      fromRecordsAlone: carved.last === 0,
      leftOut: records.filter((record) => !own.includes(record)).map(({ name }) => name),
      lost: rest.lost,
      beside: rest.count,
      cutJobs: rest.jobs,
      checkpoints: written.checkpoints,
    };
  } finally {
    carved.close();
    for (const end of ['', '-wal', '-shm']) rmSync(`${part}${end}`, { force: true });
  }
}

/** As if a file had been looked through in which nothing was found. */
const NOTHING: Carved = { last: 0, has: () => false, entry: () => null, notes: [], close: () => {} };

/** Entries from the first on, as long as each is there. */
function* inOrder(entryAt: (seq: number) => CarvedEntry | null): Iterable<readonly CarvedEntry[]> {
  for (let next = 1; ; next += ENTRIES_A_TRANSACTION) {
    const batch: CarvedEntry[] = [];
    for (let seq = next; seq < next + ENTRIES_A_TRANSACTION; seq++) {
      const entry = entryAt(seq);
      if (entry === null) break;
      batch.push(entry);
    }
    yield batch;
    if (batch.length < ENTRIES_A_TRANSACTION) return;
  }
}

/** A record that was given away before still has what was forgotten. */
function withoutForgotten(
  carved: CarvedEntry | null,
  forgotten: ReturnType<typeof forgottenIn>,
): CarvedEntry | null {
  const gone = carved === null ? undefined : forgotten.get(carved.seq);
  const entry = carved === null || gone === undefined ? null : carvedEntry(carved);
  if (carved === null || entry === null) return carved;
  return { ...carved, disclosures: disclosuresBut(entry, (_text, number) => gone?.has(number) === true) };
}

/** Writes what is readable behind the log's end into a file, and finds what is not. */
function besideThe(
  size: number,
  lastReported: number,
  entryAt: (seq: number) => CarvedEntry | null,
  path: string,
): { readonly count: number; readonly lost: Recovered['lost']; readonly jobs: readonly string[] } {
  if (lastReported <= size) return { count: 0, lost: [], jobs: [] };
  const file = openSync(path, 'wx', 0o600);
  const jobs = new Set<string>();
  const lost: { from: number; to: number }[] = [];
  let count = 0;
  try {
    for (let seq = size + 1; seq <= lastReported; seq++) {
      const entry = entryAt(seq);
      const hole = lost.at(-1);
      if (entry !== null) {
        writeSync(file, `{"disclosures":${JSON.stringify(entry.disclosures)},"entry":${entry.body}}\n`);
        count++;
        if (entry.stream !== STATION_STREAM) jobs.add(entry.stream.slice('job:'.length));
      } else if (hole !== undefined && hole.to === seq - 1) hole.to = seq;
      else lost.push({ from: seq, to: seq });
    }
    fsyncSync(file);
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

const isThere = (path: string): Problem => ({
  code: 'file-exists',
  where: path,
  message: w`the file exists; nothing is overwritten`,
  next: w`Name a new file with --out.`,
});

const nothingLeft = (path: string | null): Problem => ({
  code: 'recover-nothing',
  ...(path !== null && { where: path }),
  message: w`the first entry of the log is lost, and no valid record contains it`,
  next: w`Restore a backup. If you have none, only the exported records of the jobs remain.`,
});
