/** The projection `attempts`: jobs that went on since they were last asked about are folded again and written anew. */

import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import type { Attempt, Censored } from '../src/audit/attempt.ts';
import { type JobHistory, jobHistory } from '../src/audit/attempt-walk.ts';
import { type Setup, setupKey, specificationKey } from '../src/audit/setup.ts';
import { canonical } from '../src/evidence/canonical.ts';
import { STATION_STREAM } from '../src/evidence/log.ts';
import { type Problem, ProblemError } from '../src/problem.ts';
import { type FigureSource, figureSourceSchema } from '../src/reading.ts';
import { w } from '../src/words/catalogue.ts';
import { entryTable, jobEntryOf, type StoredEntry } from './entries.ts';
import { pause } from './pause.ts';

/** What the numbers in the table stand for; the place in the list is the number. */
export const KINDS = [
  'tightening',
  'continuation',
  'run-down',
  'rehit',
  'check',
  'loosening',
  'handling',
  'unsure',
  'gap',
] as const satisfies readonly Attempt['kind'][];
export const RESULTS = ['OK', 'NotOK', 'NotDecidable'] as const satisfies readonly Attempt['result'][];
export const SOURCES = figureSourceSchema.options;
export const SIDES = ['inside', 'low', 'high'] as const satisfies readonly Attempt['side'][];
/** Each source has the bit of its place in the list. */
export const sourceBits = (sources: readonly FigureSource[]): number =>
  sources.reduce((bits, source) => bits | (1 << figureSourceSchema.options.indexOf(source)), 0);

/** Bits of `flags`. */
export const FLAG = { first: 1, last: 2, firstStage: 4, early: 128, held: 256 } as const;
export const CENSORED: Readonly<Record<Censored, number>> = {
  cut: 8,
  saturated: 16,
  undecided: 32,
  bounded: 64,
};
export const ANY_CENSORED = 8 | 16 | 32 | 64;

/** Jobs are read for so long while nobody is kept from writing, */
const READ_MS = 100;
/** and written down for so long: a job under way beside it waits for no noticeable time. */
const WRITE_MS = 20;
/** Long enough for a program that waits for its turn to look again. */
const PAUSE_MS = 5;
/** More are never read in their time. */
const JOBS_AT_ONCE = 200;

/** Told how many jobs are done, and how many there are to do. */
export type Progress = (done: number, of: number) => void;

interface Folded {
  readonly row: z.infer<typeof dueSchema>;
  readonly history: JobHistory;
}

/** Folds what is not yet folded. Takes next to nothing when nothing is. */
export function createFolding(db: Database): (progress?: Progress) => void {
  const due = db.prepare('SELECT id, stream, lastSeq FROM jobs WHERE foldedSeq < lastSeq LIMIT ?');
  const dueCount = db.prepare('SELECT count(*) FROM jobs WHERE foldedSeq < lastSeq').pluck();
  // Samples are by far the most of a job, and nothing here rests on them.
  const table = entryTable(db);
  const write = writer(db);
  /** Rises when texts are forgotten: what was read before may hold them. */
  const stationSize = () => table.lastOf(STATION_STREAM);
  const readSome = db.transaction(() => {
    const untilMs = performance.now() + READ_MS;
    const jobs: Folded[] = [];
    for (const row of z.array(dueSchema).parse(due.all(JOBS_AT_ONCE))) {
      jobs.push({ row, history: folded(row.stream, table.withoutSamples(row.stream)) });
      if (performance.now() > untilMs) break;
    }
    return { jobs, station: stationSize() };
  });
  /** Returns how many it came to; none where what was read may not be written any more. */
  const writeSome = db.transaction((jobs: readonly Folded[], station: number) => {
    if (stationSize() !== station) return 0;
    const untilMs = performance.now() + WRITE_MS;
    let done = 0;
    for (const { row, history } of jobs) {
      write(row, history);
      done++;
      if (performance.now() > untilMs) break;
    }
    return done;
  });
  return (progress) => {
    if (due.get(1) === undefined) return;
    const of = z.int().parse(dueCount.get());
    for (let done = 0; ; ) {
      const { jobs, station } = readSome.deferred();
      if (jobs.length === 0) return;
      for (let rest = jobs; rest.length > 0; ) {
        const some = writeSome.immediate(rest, station);
        if (some === 0) break;
        done += some;
        rest = rest.slice(some);
        progress?.(Math.min(done, of), of);
        pause(PAUSE_MS);
      }
    }
  };
}

const dueSchema = z.strictObject({ id: z.int(), stream: z.string(), lastSeq: z.int() });

function folded(stream: string, stored: readonly StoredEntry[]): JobHistory {
  try {
    const history = jobHistory(stored.map((one) => jobEntryOf(one, stream)));
    if (history !== null) return history;
  } catch (cause) {
    throw new ProblemError(unreadable(stream), { cause });
  }
  throw new ProblemError(unreadable(stream));
}

const unreadable = (stream: string): Problem => ({
  code: 'log-damaged',
  where: stream,
  message: w`the entries of this job are damaged`,
  next: w`Run "plugmark log check". It names the first changed entry.`,
});

/** Writes one job's attempts in place of those that were there. */
function writer(db: Database) {
  const forget = db.prepare('DELETE FROM attempts WHERE job = ?');
  const job =
    db.prepare(`UPDATE jobs SET foldedSeq = :seq, day = :on, setup = :setup, sources = :sources, outOfOrder = :outOfOrder
       WHERE id = :id AND stream = :stream`);
  const attempt = db.prepare(
    `INSERT INTO attempts (job, seq, atMs, length, cylinder, number, tool, person, part, kind, result, side, flags,
       reading, value, expanded, peak, source) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  const person = once(db, 'SELECT id FROM people WHERE name = ?', 'INSERT INTO people (name) VALUES (?)');
  const part = once(
    db,
    `SELECT id FROM parts WHERE part = ? AND ifnull(lot, '') = ifnull(?, '')`,
    'INSERT INTO parts (part, lot) VALUES (?, ?)',
  );
  const tool = once(
    db,
    `SELECT id FROM tools WHERE tool = ? AND ifnull(serial, '') = ifnull(?, '') AND ifnull(certificate, '') = ifnull(?, '')`,
    'INSERT INTO tools (tool, serial, certificate) VALUES (?, ?, ?)',
  );
  const setupId = db.prepare('SELECT id FROM setups WHERE key = ?').pluck();
  const addSetup = db.prepare(
    `INSERT INTO setups (key, specification, engine, lower, upper, firstLower, firstUpper, gapLower, gapUpper, body)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  const setup = (one: Setup): number => {
    const key = setupKey(one);
    const there = setupId.get(key);
    if (there !== undefined) return z.int().parse(there);
    const { engine, torqueWindow, firstTorqueWindow, gapWindow } = one;
    const added = addSetup.run(
      key,
      specificationKey(one),
      engine,
      torqueWindow.lowerLimit,
      torqueWindow.upperLimit,
      firstTorqueWindow?.lowerLimit ?? null,
      firstTorqueWindow?.upperLimit ?? null,
      gapWindow?.lowerLimit ?? null,
      gapWindow?.upperLimit ?? null,
      canonical(one),
    );
    return Number(added.lastInsertRowid);
  };
  return ({ id, stream, lastSeq }: z.infer<typeof dueSchema>, history: JobHistory) => {
    const { on, attempts } = history;
    const { sources, outOfOrder } = history;
    // Another program may have made the tables anew, and given the number to another job.
    const there = job.run({
      id,
      stream,
      seq: lastSeq,
      on,
      setup: setup(history.setup),
      sources: sourceBits(sources),
      outOfOrder: outOfOrder.length === 0 ? null : canonical(outOfOrder),
    });
    if (there.changes === 0) return;
    forget.run(id);
    for (const one of attempts) {
      const instrument = history.setup.instruments.find(({ id: name }) => name === one.tool);
      attempt.run(
        id,
        one.seq,
        Date.parse(one.at),
        one.quantity === 'length' ? 1 : 0,
        one.cylinder,
        one.number,
        tool(one.tool, instrument?.serial ?? null, instrument?.certificate?.number ?? null),
        person(one.technician),
        part(one.part, one.lot),
        KINDS.indexOf(one.kind),
        one.result === null ? null : RESULTS.indexOf(one.result),
        one.side === null ? null : SIDES.indexOf(one.side),
        flagsOf(one),
        one.readingSi,
        one.valueSi,
        one.expanded,
        one.peakStandardSi,
        SOURCES.indexOf(one.source),
      );
    }
  };
}

export function flagsOf({ first, last, stage, censored, early, held }: Attempt): number {
  return (
    (first ? FLAG.first : 0) |
    (last ? FLAG.last : 0) |
    (stage === 'first' ? FLAG.firstStage : 0) |
    (early ? FLAG.early : 0) |
    (held ? FLAG.held : 0) |
    (censored === null ? 0 : CENSORED[censored])
  );
}

/** The number of a row that stands once for what many attempts share; made when it is first met. */
function once(db: Database, find: string, add: string) {
  const existing = db.prepare(find).pluck();
  const added = db.prepare(add);
  return (...what: readonly (string | null)[]): number => {
    const id = existing.get(...what);
    return id === undefined ? Number(added.run(...what).lastInsertRowid) : z.int().parse(id);
  };
}
