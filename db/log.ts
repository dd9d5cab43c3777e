/** The station log in SQLite: appends entries and lets its Merkle tree grow in one transaction, reads back, checks itself. */

import { randomBytes } from 'node:crypto';
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { isStationEntry, type Written, written } from '../src/evidence/entry.ts';
import {
  type AnyEntry,
  type Draft,
  type LogEntry,
  STATION_STREAM,
  type Stamp,
  type StationEntry,
  type StationLog,
} from '../src/evidence/log.ts';
import type { Subtrees } from '../src/evidence/merkle.ts';
import type { KeptText } from '../src/evidence/sharing.ts';
import type { StationEvent } from '../src/evidence/station-event.ts';
import type { JobEvent } from '../src/job/event.ts';
import { ProblemError } from '../src/problem.ts';
import { w } from '../src/words/catalogue.ts';
import type { Progress } from './attempts.ts';
import { checkedLog, type LogCheck, type LogFault, logFault } from './check.ts';
import { entryOf, entryTable, KIND } from './entries.ts';
import { createHistory, type History } from './history.ts';
import { inPlace } from './in-place.ts';
import { createProjector, type JobRow, lastJobs, rebuildHistory, renewHistory } from './jobs.ts';
import { isOfHistory, mendHistory } from './mend.ts';
import { assertFull, type Opened, openDatabase, PATIENCE_MS } from './open.ts';
import { problemOf } from './problems.ts';
import { storedTree } from './tree.ts';

/** The log together with what only a database can do. */
export interface StationLogFile extends StationLog {
  /** Appends to the station's own stream. */
  appendStation(drafts: readonly Draft<StationEvent>[], stamp: Stamp): readonly StationEntry[];
  stationEntries(): readonly StationEntry[];
  /** How many entries it holds. */
  size(): number;
  /** The stored hashes of its Merkle tree: roots and proofs take O(log n) of them. */
  readonly tree: Subtrees;
  /** All checkpoints that were signed, the oldest first. */
  checkpoints(): readonly string[];
  /** The one that was signed last; null where none was. */
  newestCheckpoint(): string | null;
  /** Once, where it is the newest already. */
  keepCheckpoint(size: number, note: string): void;
  /** Reads all of it and finds the first entry that was tampered with; null when there is none. */
  check(): LogFault | null;
  /** The same, and what is wrong with the personal texts beside the entries. */
  checkAll(): LogCheck;
  /** All personal texts that it still has. */
  texts(): Iterable<KeptText>;
  /** What is signed of the entries behind `seq`, so many at most, each with the disclosures that are left of it. */
  signedAfter(
    seq: number,
    limit: number,
  ): readonly { readonly body: string; readonly disclosures: readonly string[] }[];
  /** What is signed of all entries but samples, each with its stream. */
  signed(): Iterable<{ readonly stream: string; readonly body: string }>;
  /**
   * Deletes personal texts, and what was made of them for look-up; an entry of the station's own stream says where they
   * were. From then on nothing reads them; {@link sweep} takes them out of what is left in the file.
   */
  forget(texts: readonly KeptText[], draft: Draft<StationEvent>, stamp: Stamp): void;
  /** Writes the file anew, so that no page of it, nor of the file beside it, keeps what was deleted. */
  sweep(): Swept;
  /** The jobs that were worked on last, the latest first. */
  lastJobs(limit?: number): readonly JobRow[];
  /** What questions are asked of: attempts and jobs by vehicle, tool, person, part, day. */
  readonly history: History;
  /** Makes the tables for look-up anew from the entries. */
  rebuildProjections(): void;
  /** How long a write waits for another program; a job at work waits in its own way. */
  waitAtMost(ms?: number): void;
}

export interface Opening extends Opened {
  /** Hears how the list of jobs is made anew. */
  readonly jobs?: Progress;
  /** Hears how jobs are folded into the history, for the question that waits for it. */
  readonly history?: Progress;
  /** Hears how the entries are checked. */
  readonly check?: Progress;
  /** What problems call the file; its path unless told. */
  readonly name?: string;
}

/**
 * Opens or makes the log at `path`; problems are those of {@link openDatabase}. Appending throws `log-busy`, `log-disk`,
 * `log-other-writer` when another program added to a stream after this one read it, and `log-moved` when its path leads
 * elsewhere.
 */
export async function openStationLog(path: string, opening: Opening = {}): Promise<StationLogFile> {
  const db = await openDatabase(path, opening);
  const { jobs, name = path } = opening;
  try {
    renewHistory(db, jobs);
    return stationLog(db, name, opening);
  } catch (cause) {
    db.close();
    throw problemOf(cause, name);
  }
}

function stationLog(db: Database, path: string, watch: Opening): StationLogFile {
  const tree = storedTree(db, path);
  const table = entryTable(db);
  const notes = db.prepare('SELECT note FROM checkpoints ORDER BY place').pluck();
  const keep = db.prepare(
    'INSERT INTO checkpoints SELECT coalesce(max(place), 0) + 1, ?, ? FROM checkpoints',
  );
  const newestNote = db.prepare('SELECT note FROM checkpoints ORDER BY place DESC LIMIT 1').pluck();
  const project = createProjector(db);
  const refuseMoved = inPlace(db, path);
  /** How far this program has read or written each stream. */
  const lastSeen = new Map<string, number>();

  const put = ({ entry, hash, body }: Written) => {
    table.put(entry, hash, body);
    tree.grow(entry.seq - 1, hash);
    if (!isStationEntry(entry)) project(entry);
  };
  const append = db.transaction(
    (stream: string, drafts: readonly Draft<JobEvent | StationEvent>[], stamp: Stamp) => {
      const n = table.lastOf(stream);
      if (lastSeen.has(stream) && lastSeen.get(stream) !== n) throw otherWriter(path, stream);
      const entries = written({ seq: table.size(), n }, stream, drafts, stamp, newSalt);
      entries.forEach(put);
      return entries.map(({ entry }) => entry);
    },
  );
  const appendTo = <T>(
    stream: string,
    drafts: readonly Draft<JobEvent | StationEvent>[],
    stamp: Stamp,
    as: (entry: AnyEntry) => T,
  ) =>
    withProblems(() => {
      const entries = mending('corrupt', () => append.immediate(stream, drafts, stamp));
      assertFull(db);
      refuseMoved();
      const last = entries.at(-1);
      if (last !== undefined) lastSeen.set(stream, last.n);
      return entries.map(as);
    });
  const read = (stream: string) => table.ofStream(stream).map((stored) => entryOf(stored, path));
  const remembered = <T>(stream: string, entries: readonly T[]) => {
    lastSeen.set(stream, entries.length);
    return entries;
  };
  /** Where a table for look-up is damaged, it is made again and the work done once more. */
  const mending = <T>(sign: 'corrupt' | 'any', work: () => T): T => {
    try {
      return work();
    } catch (cause) {
      if (!isOfHistory(cause, sign) || !mendHistory(db)) throw cause;
      watch.mended?.();
      return work();
    }
  };
  const withProblems = <T>(work: () => T): T => {
    try {
      return work();
    } catch (cause) {
      throw problemOf(cause, path);
    }
  };

  return {
    append: (stream, drafts, stamp) => appendTo(stream, drafts, stamp, asJob),
    appendStation: (drafts, stamp) => appendTo(STATION_STREAM, drafts, stamp, asStation),
    entries: (stream) => withProblems(() => remembered(stream, read(stream).map(asJob))),
    stationEntries: () => withProblems(() => remembered(STATION_STREAM, read(STATION_STREAM).map(asStation))),
    streams: () => withProblems(() => table.streams().filter((stream) => stream !== STATION_STREAM)),
    size: () => withProblems(table.size),
    tree,
    checkpoints: () => withProblems(() => notes.all().map((note) => z.string().parse(note))),
    newestCheckpoint: () =>
      withProblems(() =>
        z
          .string()
          .nullable()
          .parse(newestNote.get() ?? null),
      ),
    keepCheckpoint: (at, note) => {
      withProblems(() => newestNote.get() === note || keep.run(at, note));
      refuseMoved();
    },
    texts: table.texts,
    *signed() {
      for (const { stream, kind, body } of table.all())
        if (kind !== KIND.samples && body !== null) yield { stream, body: body.toString('utf8') };
    },
    signedAfter: (seq, limit) =>
      withProblems(() => table.after(seq, limit)).map((stored) => {
        if (stored.body === null) entryOf(stored, path);
        return { body: stored.body?.toString('utf8') ?? '', disclosures: stored.disclosures };
      }),
    forget: (texts, draft, stamp) =>
      withProblems(() => {
        db.pragma('secure_delete = ON');
        db.transaction(() => {
          const entries = append(STATION_STREAM, [draft], stamp);
          table.forget(texts);
          rebuildHistory(db);
          const last = entries.at(-1);
          if (last !== undefined) lastSeen.set(STATION_STREAM, last.n);
        }).immediate();
        assertFull(db);
        refuseMoved();
      }),
    sweep: () => swept(db, path),
    check: () => withProblems(() => logFault(db, watch.check)),
    checkAll: () => withProblems(() => checkedLog(db, watch.check)),
    lastJobs: (limit = 20) => withProblems(() => mending('any', () => lastJobs(db, limit))),
    history: createHistory(db, (work) => withProblems(() => mending('any', work)), watch.history),
    rebuildProjections: () => withProblems(() => rebuildHistory(db)),
    waitAtMost: (ms = PATIENCE_MS) => void db.pragma(`busy_timeout = ${ms}`),
    close: () => {
      db.close();
    },
  };
}

/** `open-elsewhere`: another program has the log open. `no-room`: the disk has no room for the second copy that it takes. */
export type Swept = 'done' | 'open-elsewhere' | 'no-room';

function swept(db: Database, path: string): Swept {
  try {
    db.exec('VACUUM');
    const [{ busy }] = checkpointSchema.parse(db.pragma('wal_checkpoint(TRUNCATE)'));
    return busy === 0 ? 'done' : 'open-elsewhere';
  } catch (cause) {
    const problem = problemOf(cause, path);
    const code = problem instanceof ProblemError ? problem.problem.code : null;
    if (code === 'log-busy') return 'open-elsewhere';
    if (code === 'log-disk') return 'no-room';
    throw problem;
  }
}

const checkpointSchema = z.tuple([z.object({ busy: z.int() })]);

function asJob(entry: AnyEntry): LogEntry {
  if (isStationEntry(entry)) throw new Error('an entry of the station came from the stream of a job');
  return entry;
}

function asStation(entry: AnyEntry): StationEntry {
  if (!isStationEntry(entry)) throw new Error('an entry of a job came from the stream of the station');
  return entry;
}

/** 128 random bits, in base64url. */
const newSalt = () => randomBytes(16).toString('base64url');

function otherWriter(path: string, stream: string): ProblemError {
  return new ProblemError({
    code: 'log-other-writer',
    where: path,
    message: w`another program wrote to ${stream} at the same time`,
    next: w`Close the other program, then open the job again.`,
  });
}
