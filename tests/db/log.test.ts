import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import { LOWEST_STORED } from '../../db/tree.ts';
import { checkStream } from '../../src/evidence/check-stream.ts';
import { readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { entryHash } from '../../src/evidence/entry.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import { heldAgainst } from '../../src/evidence/kept-checkpoints.ts';
import type { Draft, LogEntry } from '../../src/evidence/log.ts';
import {
  consistencyHolds,
  consistencyProof,
  inclusionHolds,
  inclusionProof,
  leafHash,
  treeOf,
  treeRoot,
} from '../../src/evidence/merkle.ts';
import { toHex } from '../../src/evidence/platform/bytes.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { linkEndReasonSchema } from '../../src/reading.ts';
import { AT, drafts, opening, station, stationEvents, wholeJob } from '../evidence/sample-job.ts';
import { withoutRules, withPlain } from './plain.ts';

let folder: string;
let path: string;
let log: StationLogFile;
const stamp = { at: AT, monoUs: 1000 };
/** As many as make the smallest subtree that is stored whole. */
const LONG = [...wholeJob(), ...wholeJob()].slice(0, 2 ** LOWEST_STORED);
const COUNT = LONG.length;
const closing: JobEvent = {
  type: 'job-closed',
  complete: false,
  open: [{ kind: 'gap-not-measured', cylinder: 1 }],
};

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
    expect(checkStream([...first, ...third], 'job:WO-1')).toBeNull();
    expect(log.check()).toBeNull();
    const all = [...first, ...second, ...third];
    expect(log.size()).toBe(all.length);
    const expected = treeOf(all.map(entryHash));
    expect(treeRoot(log.tree, log.size())).toEqual(treeRoot(expected, all.length));
  });

  it('is empty at first', () => {
    expect(log.streams()).toEqual([]);
    expect(log.entries('job:WO-1')).toEqual([]);
    expect(log.lastJobs()).toEqual([]);
    expect(log.check()).toBeNull();
    expect(log.append('job:WO-1', [], stamp)).toEqual([]);
    expect(log.size()).toBe(0);
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

it('keeps what belongs to the station beside the jobs, in the same tree', async () => {
  const [first] = stationEvents;
  if (first === undefined) throw new Error('no events of the station');
  const [setUp] = log.appendStation([{ by: 'station', event: first }], stamp);
  log.append('job:WO-1', drafts(wholeJob()), stamp);
  log.close();
  log = await openStationLog(path);
  expect(log.stationEntries()).toEqual([setUp]);
  expect(log.streams()).toEqual(['job:WO-1']);
  expect(log.lastJobs().map(({ job }) => job)).toEqual(['WO-1']);
  expect(log.check()).toBeNull();
  expect(() => log.append('station', drafts([opening()]), stamp)).toThrow();
});

it('keeps every checkpoint that was signed', () => {
  expect(log.checkpoints()).toEqual([]);
  log.keepCheckpoint(3, 'first');
  log.keepCheckpoint(5, 'second');
  expect(log.checkpoints()).toEqual(['first', 'second']);
});

it('proves entries and earlier states of itself from stored hashes, however it was appended to', async () => {
  const size = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 12 });
  let run = 0;
  await fc.assert(
    fc.asyncProperty(size, async (batches) => {
      const file = await openStationLog(join(folder, `tree-${run++}.log`));
      try {
        const entries = batches.flatMap((count) =>
          file.append('job:A', drafts(Array(count).fill(closing)), stamp),
        );
        const size = entries.length;
        const root = treeRoot(file.tree, size);
        for (const [index, entry] of entries.entries()) {
          const path = inclusionProof(file.tree, index, size);
          expect(inclusionHolds(entryHash(entry), { index, size, path, root })).toBe(true);
          const older = { size: index, root: treeRoot(file.tree, index) };
          expect(consistencyHolds(older, { size, root }, consistencyProof(file.tree, index, size))).toBe(
            true,
          );
        }
      } finally {
        file.close();
      }
    }),
    { numRuns: 12 },
  );
});

it('any drafts come back as they were read from their bytes', async () => {
  const text = fc.string({ unit: 'binary', maxLength: 30 });
  const time = fc.nat();
  const event = fc.oneof(
    fc.record({
      type: fc.constant('tool-lost' as const),
      tool: fc.string({ minLength: 1, maxLength: 32 }),
      reason: fc.constantFrom(...linkEndReasonSchema.options),
    }),
    fc.record({
      type: fc.constant('job-closed' as const),
      complete: fc.boolean(),
      open: fc.array(
        fc.record({ kind: fc.constant('no-torque' as const), cylinder: fc.integer({ min: 1 }) }),
      ),
    }),
    fc.record({
      type: fc.constant('raw-value' as const),
      tool: fc.constant('wrench'),
      atUs: time,
      source: text,
      hex: fc.constantFrom('', '00ff'),
    }),
    fc.record({
      type: fc.constant('gap-measured' as const),
      tool: fc.constant('gauge'),
      reading: fc.integer({ min: 1 }),
      atUs: time,
      source: fc.constantFrom('linked' as const, 'typed' as const, 'replayed' as const),
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
      stream: fc.constantFrom('job:A', 'job:B', 'job:C'),
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
    log.append('job:WO-1', drafts(LONG), stamp);
    other = new Sqlite(path);
  });
  afterEach(() => {
    other.close();
  });

  const tamper = (sql: string) => withoutRules(withPlain(other)).exec(sql);

  it('a writer that holds the lock leads to a clear problem, when patience is over', () => {
    log.waitAtMost(200);
    other.exec('BEGIN IMMEDIATE');
    expect(codeOf(() => log.append('job:WO-1', drafts([closing]), stamp))).toMatchObject({
      code: 'log-busy',
      where: path,
    });
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
    expect(log.entries('job:WO-1')).toHaveLength(COUNT + 1);
    expect(log.append('job:WO-1', drafts([closing]), stamp)).toHaveLength(1);
  });

  it('a second program on another job is none of its business', async () => {
    const second = await openStationLog(path);
    second.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    second.close();
    expect(log.append('job:WO-1', drafts([closing]), stamp)[0]?.seq).toBe(COUNT + 2);
    expect(log.check()).toBeNull();
  });

  it.each([
    ['an entry taken out', 'DELETE FROM entries WHERE seq = 3', { seq: 3 }],
    ['the first entry taken out', 'DELETE FROM entries WHERE seq = 1', { seq: 1 }],
    [
      'a word changed',
      `UPDATE entries SET body = packed(replace(plain(body, salt), '"by":"station"', '"by":"technician"')) WHERE seq = 4`,
      { seq: 4 },
    ],
    ['a body that is no JSON', `UPDATE entries SET body = packed('x') WHERE seq = 5`, { seq: 5 }],
    ['a hash exchanged', `UPDATE entries SET hash = randomblob(32) WHERE seq = 6`, { seq: 6 }],
    ['the last entry taken out', `DELETE FROM entries WHERE seq = ${COUNT}`, { seq: COUNT }],
    [
      'a hash of the tree exchanged',
      'UPDATE subtrees SET hash = randomblob(32) WHERE place = 31',
      { seq: COUNT },
    ],
    ['a hash of the tree taken out', 'DELETE FROM subtrees WHERE place = 31', { seq: COUNT }],
    ['samples said to be something else', 'UPDATE entries SET kind = 1 - kind WHERE seq = 7', { seq: 7 }],
    [
      'the last entry in a stream without a name',
      `UPDATE entries SET stream = 4096 WHERE seq = ${COUNT}`,
      { seq: COUNT },
    ],
    ['a stream that nothing is in', `INSERT INTO streams VALUES (77, 'job:GHOST')`, { seq: COUNT + 1 }],
    ['an entry in another stream', 'UPDATE entries SET stream = 99 WHERE seq = 7', { seq: 7 }],
    ['a stream under another name', `UPDATE streams SET name = 'job:WO-9'`, { seq: 1 }],
    [
      'what bodies are packed with',
      `UPDATE dictionaries SET text = replace(text, 'event', 'EVENT')`,
      { seq: 1 },
    ],
    ['a body of another dictionary', `UPDATE entries SET body = x'02ff' WHERE seq = 5`, { seq: 5 }],
  ])('%s: the check names the entry', (_what, sql, fault) => {
    tamper(sql);
    expect(log.check()).toMatchObject(fault);
  });

  it('a changed entry whose own hash was made again does not fit the tree', () => {
    const entry = log.entries('job:WO-1')[3];
    if (entry === undefined) throw new Error('no fourth entry');
    const hash = toHex(entryHash({ ...entry, by: 'technician' }));
    tamper(
      `UPDATE entries SET hash = x'${hash}', body = packed(replace(plain(body, salt), '"by":"station"', '"by":"technician"')) WHERE seq = 4`,
    );
    expect(log.check()).toMatchObject({ seq: COUNT, message: expect.stringContaining('hash tree') });
  });

  it('an entry in another writing is found even where its hash was made to fit', () => {
    const { body } = z
      .object({ body: z.string() })
      .parse(
        withPlain(other).prepare(`SELECT plain(body, salt) AS body FROM entries WHERE seq = ${COUNT}`).get(),
      );
    const spaced = body.replace(',', ', ');
    const hash = toHex(leafHash(Buffer.from(spaced)));
    tamper(`UPDATE entries SET hash = x'${hash}', body = packed('${spaced}') WHERE seq = ${COUNT}`);
    expect(log.check()).toEqual({ seq: COUNT, message: `entry ${COUNT} is not written as an entry is` });
  });

  it('a tail that was cut off clean, tree and all, shows only against a checkpoint that was kept', () => {
    const { privateKey } = station;
    const size = log.size();
    const origin = 'plugmark/log/test';
    const kept = signCheckpoint({ origin, size, root: treeRoot(log.tree, size) }, privateKey);
    tamper(`DELETE FROM entries WHERE seq > 8; DELETE FROM subtrees WHERE place > 7`);
    expect(log.check()).toBeNull();
    const note = readCheckpoint(kept, 'kept');
    if (!note.ok) throw new Error(note.error.message);
    const now = { origin, size: log.size(), tree: log.tree, keys: [publicJwk(privateKey)] };
    expect(heldAgainst(now, [note.value])).toEqual([{ kind: 'cut', size, from: 9, to: size }]);
  });

  it('an entry that cannot be read leads to a clear problem', () => {
    tamper(`UPDATE entries SET body = packed('{}') WHERE seq = 5`);
    expect(codeOf(() => log.entries('job:WO-1'))).toMatchObject({ code: 'log-damaged', where: path });
  });
});

describe('the jobs that were worked on last', () => {
  beforeEach(() => {
    log.append('job:WO-1', drafts([opening('WO-1')]), stamp);
    log.append('job:WO-2', drafts(wholeJob('WO-2')), stamp);
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
        fleet: null,
        openedAt: AT,
        lastAt: '2026-03-02T10:00:00.000Z',
        state: 'open',
        sources: [],
        outOfOrder: [],
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
