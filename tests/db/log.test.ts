import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import { entryHash, hashOfBody } from '../../src/evidence/chain.ts';
import { checkLog, checkStream } from '../../src/evidence/check-chain.ts';
import type { Draft, LogEntry } from '../../src/evidence/log.ts';
import { type JobEvent, jobEventSchema } from '../../src/job/event.ts';
import { AT, drafts, opening, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let path: string;
let log: StationLogFile;
const stamp = { at: AT, monoUs: 1000 };
const closing: JobEvent = { type: 'job-closed', complete: false, open: ['cylinder 1: gap not measured'] };

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'log-'));
  path = join(folder, 'station.log');
  log = await openStationLog(path);
});
afterEach(() => {
  log.close();
  rmSync(folder, { recursive: true });
});

/** The problem's code, for calls that must fail with one. */
function codeOf(work: () => unknown): unknown {
  try {
    work();
  } catch (thrown) {
    return thrown instanceof Error && 'problem' in thrown ? thrown.problem : thrown;
  }
  throw new Error('nothing was thrown');
}

describe('the station log', () => {
  it('gives back what was appended, chained, also after it was closed and opened again', async () => {
    const first = log.append('job:WO-1', drafts(wholeJob()), stamp);
    const second = log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    const third = log.append('job:WO-1', drafts([closing]), stamp);
    log.close();
    log = await openStationLog(path);
    expect(log.entries('job:WO-1')).toEqual([...first, ...third]);
    expect(log.entries('job:WO-2')).toEqual(second);
    expect(log.streams()).toEqual(['job:WO-1', 'job:WO-2']);
    expect(checkLog([...first, ...second, ...third])).toBeNull();
    expect(checkStream([...first, ...third])).toBeNull();
    expect(log.check()).toBeNull();
    const last = third.at(-1);
    expect(log.head()).toEqual({ seq: 11, hash: last === undefined ? '' : entryHash(last) });
  });

  it('is empty at first', () => {
    expect(log.streams()).toEqual([]);
    expect(log.entries('job:WO-1')).toEqual([]);
    expect(log.lastJobs()).toEqual([]);
    expect(log.check()).toBeNull();
    expect(log.append('job:WO-1', [], stamp)).toEqual([]);
    expect(log.head()).toEqual({ seq: 0, hash: '0'.repeat(64) });
  });

  it('appends all of a batch or nothing', () => {
    const bad: Draft = { by: '', event: opening() };
    expect(() => log.append('job:WO-1', [...drafts(wholeJob()), bad], stamp)).toThrow();
    expect(log.entries('job:WO-1')).toEqual([]);
    expect(log.lastJobs()).toEqual([]);
  });

  it('keeps any text as it came: nothing in it is SQL', () => {
    const stream = `job:'; DROP TABLE entries; --`;
    const [entry] = log.append(stream, [{ by: "x'); DELETE FROM jobs; --", event: opening() }], stamp);
    expect(log.entries(stream)).toEqual([entry]);
  });
});

it('any drafts come back as they were read from their bytes', async () => {
  const text = fc.string({ unit: 'binary', maxLength: 30 });
  const time = fc.nat();
  const event = fc.oneof(
    fc.record({
      type: fc.constant('tool-lost' as const),
      tool: fc.string({ minLength: 1, maxLength: 32 }),
      reason: text,
    }),
    fc.record({ type: fc.constant('job-closed' as const), complete: fc.boolean(), open: fc.array(text) }),
    fc.record({
      type: fc.constant('raw-value' as const),
      tool: fc.constant('wrench'),
      atUs: time,
      source: text,
      hex: text,
    }),
    fc.record({
      type: fc.constant('gap-measured' as const),
      tool: fc.constant('gauge'),
      reading: fc.integer({ min: 1 }),
      atUs: time,
      cylinder: fc.integer({ min: 1 }),
      judgement: fc.record({
        result: fc.constantFrom('OK' as const, 'NotOK' as const),
        side: fc.constantFrom('inside' as const, 'low' as const),
        grade: fc.constantFrom('pass' as const, 'fail' as const),
        value: fc.double({ min: -100, max: 100, noNaN: true }).filter((x) => !Object.is(x, -0)),
        expandedUncertainty: fc.double({ min: 1e-300, max: 1, noNaN: true }),
        conformanceProbability: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
    }),
  );
  const batches = fc.array(
    fc.record({
      stream: fc.constantFrom('job:A', 'job:B', 'station'),
      drafts: fc.array(fc.record({ by: fc.string({ unit: 'binary', minLength: 1, maxLength: 40 }), event }), {
        maxLength: 4,
      }),
    }),
    { maxLength: 8 },
  );
  let run = 0;
  await fc.assert(
    fc.asyncProperty(batches, async (list) => {
      const file = await openStationLog(join(folder, `any-${run++}.log`));
      try {
        const written = new Map<string, LogEntry[]>();
        for (const { stream, drafts } of list) {
          const entries = file.append(stream, drafts, stamp);
          expect(entries.map(({ by, event }) => ({ by, event }))).toEqual(drafts);
          written.set(stream, [...(written.get(stream) ?? []), ...entries]);
        }
        for (const [stream, entries] of written) expect(file.entries(stream)).toEqual(entries);
        expect(file.check()).toBeNull();
      } finally {
        file.close();
      }
    }),
    { numRuns: 40 },
  );
});

describe('what others do to the file', () => {
  let other: Sqlite.Database;
  beforeEach(() => {
    log.append('job:WO-1', drafts(wholeJob()), stamp);
    other = new Sqlite(path);
  });
  afterEach(() => {
    other.close();
  });

  /** What only somebody who means harm does. */
  function tamper(sql: string): void {
    const triggers = other.prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'").pluck().all();
    for (const name of triggers) other.exec(`DROP TRIGGER ${String(name)}`);
    other.pragma('ignore_check_constraints = ON');
    other.exec(sql);
  }

  it('a writer that holds the lock leads to a clear problem, soon', () => {
    other.exec('BEGIN IMMEDIATE');
    const start = performance.now();
    expect(codeOf(() => log.append('job:WO-1', drafts([closing]), stamp))).toMatchObject({
      code: 'log-busy',
      where: path,
    });
    expect(performance.now() - start).toBeLessThan(1500);
    other.exec('ROLLBACK');
    expect(log.append('job:WO-1', drafts([closing]), stamp)).toHaveLength(1);
  });

  it('a second program on the same job is noticed before the two contradict one another', async () => {
    const second = await openStationLog(path);
    second.append('job:WO-1', drafts([closing]), stamp);
    second.close();
    expect(codeOf(() => log.append('job:WO-1', drafts([closing]), stamp))).toMatchObject({
      code: 'log-other-writer',
    });
    expect(log.entries('job:WO-1')).toHaveLength(10);
    expect(log.append('job:WO-1', drafts([closing]), stamp)).toHaveLength(1);
  });

  it('a second program on another job is none of its business', async () => {
    const second = await openStationLog(path);
    second.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    second.close();
    expect(log.append('job:WO-1', drafts([closing]), stamp)[0]?.seq).toBe(11);
    expect(log.check()).toBeNull();
  });

  it.each([
    ['an entry taken out', 'DELETE FROM entries WHERE seq = 3', { seq: 3 }],
    ['the first entry taken out', 'DELETE FROM entries WHERE seq = 1', { seq: 1 }],
    [
      'a word changed',
      `UPDATE entries SET body = replace(body, 'A. Example', 'B. Example') WHERE seq = 4`,
      { seq: 4 },
    ],
    ['a body that is no JSON', `UPDATE entries SET body = 'x' WHERE seq = 5`, { seq: 5 }],
    ['a hash exchanged', `UPDATE entries SET hash = '${'a'.repeat(64)}' WHERE seq = 6`, { seq: 6 }],
  ])('%s: the check names the entry', (_what, sql, fault) => {
    tamper(sql);
    expect(log.check()).toMatchObject(fault);
  });

  it('a changed entry whose own hash was made again breaks the link of the next one', () => {
    const entry = log.entries('job:WO-1')[3];
    if (entry === undefined) throw new Error('no fourth entry');
    const forged = { ...entry, by: 'B. Example' };
    tamper(
      `UPDATE entries SET hash = '${entryHash(forged)}', body = replace(body, 'A. Example', 'B. Example') WHERE seq = 4`,
    );
    expect(log.check()).toEqual({ seq: 5, message: 'entry 5 does not hold the hash of the entry before it' });
  });

  it('an entry in another writing is found even where its hash was made to fit', () => {
    const { body } = z
      .object({ body: z.string() })
      .parse(other.prepare('SELECT body FROM entries WHERE seq = 9').get());
    const spaced = body.replace(',', ', ');
    tamper(
      `UPDATE entries SET hash = '${hashOfBody(Buffer.from(spaced))}', body = '${spaced}' WHERE seq = 9`,
    );
    expect(log.check()).toEqual({ seq: 9, message: 'entry 9 is not written as an entry is' });
  });

  it('the last entries cut off show only against a head that was kept elsewhere', () => {
    const kept = log.head();
    tamper('DELETE FROM entries WHERE seq = 9');
    expect(log.check()).toBeNull();
    expect(log.head()).not.toEqual(kept);
  });

  it('an entry that cannot be read leads to a clear problem', () => {
    tamper(`UPDATE entries SET body = '{}' WHERE seq = 5`);
    expect(codeOf(() => log.entries('job:WO-1'))).toMatchObject({ code: 'log-damaged', where: path });
  });
});

describe('the jobs that were worked on last', () => {
  beforeEach(() => {
    log.append('job:WO-1', drafts([opening('WO-1')]), stamp);
    log.append('job:WO-2', drafts(wholeJob('WO-2')), stamp);
    log.append('station', drafts([{ type: 'tool-lost', tool: 'wrench', reason: 'off' }]), stamp);
    log.append('job:WO-3', drafts([opening('WO-3'), closing]), stamp);
    log.append('job:WO-1', drafts([{ type: 'cylinder-chosen', quantity: 'torque', cylinder: 2 }]), {
      at: '2026-03-02T10:00:00.000Z',
      monoUs: 2000,
    });
  });

  it('are listed latest first, with where they stand', () => {
    expect(log.lastJobs()).toEqual([
      {
        stream: 'job:WO-1',
        job: 'WO-1',
        vin: '11111111111111111',
        plate: 'EX 100',
        openedAt: AT,
        lastAt: '2026-03-02T10:00:00.000Z',
        state: 'open',
      },
      expect.objectContaining({ job: 'WO-3', state: 'incomplete' }),
      expect.objectContaining({ job: 'WO-2', state: 'complete' }),
    ]);
    expect(log.lastJobs(1)).toHaveLength(1);
  });

  it('are a projection: lost or falsified, they are made again from the entries', () => {
    const before = log.lastJobs();
    const other = new Sqlite(path);
    other.exec("UPDATE jobs SET vin = 'FALSE', state = 'complete'; DELETE FROM jobs WHERE job = 'WO-2'");
    other.close();
    expect(log.lastJobs()).not.toEqual(before);
    log.rebuildProjections();
    expect(log.lastJobs()).toEqual(before);
    log.append('job:WO-3', drafts([opening('WO-3')]), stamp);
    expect(log.lastJobs()[0]).toMatchObject({ job: 'WO-3' });
  });

  it('are made again even where the table is gone', () => {
    const before = log.lastJobs();
    const other = new Sqlite(path);
    other.exec('DROP TABLE jobs');
    other.close();
    log.rebuildProjections();
    expect(log.lastJobs()).toEqual(before);
  });
});

it('the sample is made of events that the schema accepts', () => {
  expect(wholeJob().map((event) => jobEventSchema.safeParse(event).success)).toEqual(Array(9).fill(true));
});
