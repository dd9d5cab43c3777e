import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { carve } from '../../db/carve.ts';
import { openStationLog } from '../../db/log.ts';
import { recoverLog } from '../../db/recover.ts';
import type { FromRecord } from '../../db/recover-records.ts';
import { originOf, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { disclosuresOf, isStationEntry, signedBytes } from '../../src/evidence/entry.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import type { Signer } from '../../src/evidence/jws.ts';
import type { AnyEntry } from '../../src/evidence/log.ts';
import { treeRoot } from '../../src/evidence/merkle.ts';
import { fromUtf8 } from '../../src/evidence/platform/bytes.ts';
import { stateSuccession } from '../../src/evidence/succession.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { ProblemError } from '../../src/problem.ts';
import { stationEntry } from '../evidence/entries.ts';
import { AT, drafts, kidOf, station, stationEvents, stranger, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let path: string;
let out: string;
let beside: string;
/** All entries of the log as it was before anything happened to it. */
let entries: readonly AnyEntry[];
let root: Uint8Array;
const stamp = { at: AT, monoUs: 1000 };

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'recover-'));
  path = join(folder, 'station.db');
  out = join(folder, 'new.db');
  beside = join(folder, 'beside.jsonl');
  const log = await openStationLog(path);
  const made: AnyEntry[] = [
    ...log.appendStation(
      stationEvents.map((event) => ({ by: 'station', event })),
      stamp,
    ),
  ];
  for (const job of ['WO-1', 'WO-2', 'WO-3'])
    made.push(...log.append(`job:${job}`, drafts([...wholeJob(job), ...rawValues(40)]), stamp));
  root = treeRoot(log.tree, log.size());
  entries = made;
  log.keepCheckpoint(log.size(), noteBy(station, originBy(station)));
  log.close();
});
afterEach(() => rmSync(folder, { recursive: true }));

/** So many events that hardly deflate, so that each job fills some pages. */
const rawValues = (count: number): JobEvent[] =>
  Array.from({ length: count }, (_, i) => ({
    type: 'raw-value',
    tool: 'wrench',
    atUs: i,
    source: 'test',
    hex: Array.from({ length: 4 }, (_, j) => createHash('sha256').update(`${i} ${j}`).digest('hex')).join(''),
  }));

/** Overwrites pages, counted from 1 as SQLite does. */
function ruin(...pages: readonly number[]): void {
  const bytes = readFileSync(path);
  for (const page of pages) bytes.fill(0xa5, (page - 1) * 4096, page * 4096);
  writeFileSync(path, bytes);
}

/** The leaf pages on which entries lie, and which entries begin on each. */
async function leaves(): Promise<readonly { readonly page: number; readonly seqs: readonly number[] }[]> {
  const bytes = readFileSync(path);
  const carved = await carve(path);
  carved.close();
  const found = [];
  for (let page = 1; page <= bytes.length / 4096; page++) {
    const only = Buffer.alloc(bytes.length);
    bytes.copy(only, 0, 0, 100);
    bytes.copy(only, (page - 1) * 4096, (page - 1) * 4096, page * 4096);
    const alone = join(folder, 'page.db');
    writeFileSync(alone, only);
    const here = await carve(alone);
    const seqs = entries.map(({ seq }) => seq).filter((seq) => here.has(seq));
    here.close();
    if (seqs.length > 0) found.push({ page, seqs });
  }
  return found;
}

const noteBy = ({ privateKey }: Signer, origin: string, rootThen = root) =>
  signCheckpoint({ origin, size: entries.length, root: rootThen }, privateKey);
const originBy = (signer: Signer) => originOf(kidOf(signer));

const asRecord = (job: string): FromRecord => ({
  name: `${job}.record.json`,
  entries: entries.filter(({ stream }) => stream === `job:${job}` || stream === 'station'),
  checkpoint: noteBy(station, originBy(station)),
});

/** What another station, set up by this key, would have written under the same numbers. */
const foreign = (by: Signer, origin: string): FromRecord => ({
  name: 'foreign.record.json',
  entries: entries.map((entry): AnyEntry => {
    if (!isStationEntry(entry)) return { ...entry, monoUs: entry.monoUs + 1 };
    const { event } = entry;
    const key = publicJwk(by.privateKey);
    return { ...entry, event: event.type === 'station-set-up' ? { ...event, key } : event };
  }),
  checkpoint: noteBy(by, origin),
});

/** Ruins a page that holds entries of the second job alone, and gives their numbers. */
async function ruinSecondJob(): Promise<readonly number[]> {
  const middle = (await leaves()).find(({ seqs }) =>
    seqs.every((seq) => entries.find((entry) => entry.seq === seq)?.stream === 'job:WO-2'),
  );
  if (middle === undefined) throw new Error('no page of the second job alone');
  ruin(middle.page);
  return middle.seqs;
}

it('finds every entry in a log that nothing happened to, also in its write-ahead log', async () => {
  const log = await openStationLog(path);
  log.append('job:WO-4', drafts(wholeJob('WO-4')), stamp);
  expect(existsSync(`${path}-wal`)).toBe(true);
  const carved = await carve(path);
  const size = log.size();
  expect(carved.last).toBe(size);
  for (let seq = 1; seq <= size; seq++) expect(carved.entry(seq)?.seq).toBe(seq);
  carved.close();
  log.close();
});

it('leaves out what stands in the write-ahead log behind the last commit', async () => {
  const log = await openStationLog(path);
  const committed = log.size();
  log.append('job:WO-4', drafts(wholeJob('WO-4')), stamp);
  const copy = join(folder, 'copy.db');
  copyFileSync(path, copy);
  const wal = readFileSync(`${path}-wal`);
  log.close();
  // The number of pages in a frame's head is what makes it a commit.
  for (let at = 32; at < wal.length; at += 24 + 4096) wal.writeUInt32BE(0, at + 4);
  writeFileSync(`${copy}-wal`, wal);
  const carved = await carve(copy);
  expect(carved.last).toBe(committed);
  carved.close();
});

describe('a damaged log', () => {
  it('is saved whole where only the pages that lead to the entries are gone', async () => {
    const db = new Sqlite(path, { readonly: true });
    const interior = db
      .prepare<[], { pageno: number }>(
        `SELECT pageno FROM dbstat WHERE name = 'entries' AND pagetype = 'internal'`,
      )
      .all();
    db.close();
    expect(interior.length).toBeGreaterThan(0);
    ruin(1, ...interior.map(({ pageno }) => pageno));
    const report = await recoverLog(path, { out, beside }, []);
    expect(report).toMatchObject({ kept: entries.length, fromRecords: 0, lost: [], beside: 0, cutJobs: [] });
    expect(report.checkpoints).toEqual([{ kind: 'extends', size: entries.length }]);
    const log = await openStationLog(out);
    expect(log.check()).toBeNull();
    expect(treeRoot(log.tree, log.size())).toEqual(root);
    expect(log.lastJobs()).toHaveLength(3);
    expect(log.checkpoints()).toHaveLength(1);
    log.close();
  });

  it('is saved up to the damage, and all that is readable behind it is kept beside', async () => {
    const middle = (await leaves()).find(
      ({ seqs }) => entries.find(({ seq }) => seq === seqs[0])?.stream === 'job:WO-2',
    );
    if (middle === undefined) throw new Error('no page of the second job');
    ruin(middle.page);
    const report = await recoverLog(path, { out, beside }, []);
    const first = Math.min(...middle.seqs);
    expect(report.kept).toBe(first - 1);
    expect(report.lost).toEqual([{ from: first, to: Math.max(...middle.seqs) }]);
    expect(report.beside).toBe(entries.length - Math.max(...middle.seqs));
    expect(report.cutJobs).toEqual(expect.arrayContaining(['WO-3']));
    expect(report.checkpoints).toEqual([
      { kind: 'cut', size: entries.length, from: report.kept + 1, to: entries.length },
    ]);
    const lines = readFileSync(beside, 'utf8').trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line).entry.seq)).toEqual(
      entries.map(({ seq }) => seq).filter((seq) => seq > Math.max(...middle.seqs)),
    );
    const log = await openStationLog(out);
    expect(log.check()).toBeNull();
    expect(log.size()).toBe(report.kept);
    log.close();
  });

  it('is made whole again from a record that holds what the damage took', async () => {
    const seqs = await ruinSecondJob();
    const report = await recoverLog(path, { out, beside }, [asRecord('WO-2')]);
    expect(report).toMatchObject({
      kept: entries.length,
      fromRecords: seqs.length,
      leftOut: [],
      lost: [],
      cutJobs: [],
      checkpoints: [{ kind: 'extends', size: entries.length }],
    });
    const log = await openStationLog(out);
    expect(treeRoot(log.tree, log.size())).toEqual(root);
    log.close();
    expect(existsSync(beside)).toBe(false);
  });

  it('takes nothing from records of another log, nor from those that a key not of this log has sealed', async () => {
    const seqs = await ruinSecondJob();
    const others = [foreign(stranger, originBy(stranger)), foreign(stranger, originBy(station))];
    const report = await recoverLog(path, { out, beside }, [...others, asRecord('WO-2')]);
    expect(report).toMatchObject({ kept: entries.length, fromRecords: seqs.length, lost: [] });
    expect(report.leftOut).toEqual(['foreign.record.json', 'foreign.record.json']);
    const log = await openStationLog(out);
    expect(treeRoot(log.tree, log.size())).toEqual(root);
    log.close();
  });

  it('is still told from another log where the entry that sets the station up is gone', async () => {
    const first = (await leaves()).find(({ seqs }) => seqs.includes(1));
    if (first === undefined) throw new Error('no page of the first entry');
    ruin(first.page);
    const other = foreign(stranger, originBy(stranger));
    await expect(recoverLog(path, { out, beside }, [other])).rejects.toMatchObject({
      problem: { code: 'recover-nothing' },
    });
    const own = ['WO-1', 'WO-2', 'WO-3'].map(asRecord);
    const report = await recoverLog(path, { out, beside }, [other, ...own]);
    expect(report).toMatchObject({ kept: entries.length, leftOut: ['foreign.record.json'] });
  });

  it('is not made up of two courses of itself: two entries of one number are refused, and nothing is written', async () => {
    await ruinSecondJob();
    const whole = asRecord('WO-2');
    const altered = (number: (seq: number) => boolean): FromRecord => ({
      ...whole,
      name: 'altered.record.json',
      entries: whole.entries.map((entry) =>
        number(entry.seq) ? { ...entry, monoUs: entry.monoUs + 1 } : entry,
      ),
    });
    const lastSeq = Math.max(...whole.entries.map(({ seq }) => seq));
    for (const records of [[altered((seq) => seq === lastSeq), whole], [altered((seq) => seq === 2)]])
      await expect(recoverLog(path, { out, beside }, records)).rejects.toMatchObject({
        problem: { code: 'recover-two-courses' },
      });
    expect(existsSync(out)).toBe(false);
  });

  it.each(['key-rotated', 'key-replaced'] as const)(
    'believes a key that its pages do not hold only if one that it knows named it (%s)',
    async (type) => {
      const key = publicJwk(stranger.privateKey);
      const origin = originBy(station);
      const statement = stateSuccession({ log: origin, next: key, at: AT }, station.privateKey);
      const event = type === 'key-rotated' ? { type, key, statement } : { type, key, because: 'lost' };
      const last = entries.length + 1;
      const n = entries.filter(({ stream }) => stream === 'station').length + 1;
      const entry = stationEntry(event, { seq: last, n, ...stamp });
      const checkpoint = noteBy(stranger, origin);
      const record = {
        name: 'later.record.json',
        entries: [...asRecord('WO-1').entries, entry],
        checkpoint,
      };
      const report = await recoverLog(path, { out, beside }, [record]);
      expect(report).toMatchObject(
        type === 'key-rotated'
          ? { kept: last, fromRecords: 1, leftOut: [] }
          : { kept: last - 1, fromRecords: 0, leftOut: ['later.record.json'] },
      );
    },
  );

  it('does not hide a checkpoint that it contradicts behind one of the same size that it agrees with', async () => {
    const contradicting = noteBy(station, originBy(station), Buffer.alloc(32, 7));
    const record = { ...asRecord('WO-1'), checkpoint: contradicting };
    const { checkpoints } = await recoverLog(path, { out, beside }, [record]);
    expect(checkpoints.map(({ kind }) => kind).sort()).toEqual(['diverged', 'extends']);
  });

  it('is never written over a file, nor are the entries beside it', async () => {
    for (const there of [out, beside]) {
      writeFileSync(there, 'mine');
      await expect(recoverLog(path, { out, beside }, [])).rejects.toMatchObject({
        problem: { code: 'file-exists', where: there },
      });
      expect(readFileSync(there, 'utf8')).toBe('mine');
      rmSync(there);
    }
    expect(existsSync(out)).toBe(false);
  });

  it('of which nothing is left is said to be so', async () => {
    writeFileSync(path, Buffer.alloc(40_960, 0xa5));
    const work = recoverLog(path, { out, beside }, []);
    await expect(work).rejects.toBeInstanceOf(ProblemError);
    await expect(work).rejects.toMatchObject({ problem: { code: 'recover-nothing', where: path } });
    expect(existsSync(out)).toBe(false);
  });

  it('that is gone altogether is made from records alone, up to an entry that none of them holds', async () => {
    const job = entries.find(({ event }) => event.type === 'job-opened');
    if (job?.event.type !== 'job-opened') throw new Error('no job');
    const { specification } = job.event.order;
    const log = await openStationLog(path);
    const recorded = log.appendStation(
      [{ by: 'station', event: { type: 'specification-recorded', specification } }],
      stamp,
    );
    const later = log.append('job:WO-4', drafts(wholeJob('WO-4')), stamp);
    const size = log.size();
    const checkpoint = signCheckpoint(
      { origin: originBy(station), size, root: treeRoot(log.tree, size) },
      station.privateKey,
    );
    log.close();
    const own = entries.filter(({ stream }) => stream === 'station');
    const others = ['WO-1', 'WO-2', 'WO-3'].map(asRecord);
    const recordWith = (background: readonly AnyEntry[]): FromRecord => ({
      name: 'WO-4.record.json',
      entries: [...background, ...later],
      checkpoint,
    });
    const report = await recoverLog(null, { out, beside }, [...others, recordWith([...own, ...recorded])]);
    expect(report).toMatchObject({
      kept: size,
      fromRecords: size,
      fromRecordsAlone: true,
      lost: [],
      checkpoints: [{ kind: 'extends' }, { kind: 'extends', size }],
    });
    rmSync(out);
    const without = await recoverLog(null, { out, beside }, [...others, recordWith(own)]);
    const gap = recorded[0]?.seq ?? 0;
    expect(without).toMatchObject({ kept: gap - 1, lost: [{ from: gap, to: gap }], beside: later.length });
  });

  it('gives back what is left of the personal texts, from its pages and from records', async () => {
    await ruinSecondJob();
    await recoverLog(path, { out, beside }, [asRecord('WO-2')]);
    const log = await openStationLog(out);
    for (const job of ['WO-1', 'WO-2', 'WO-3'])
      expect(log.entries(`job:${job}`)).toEqual(entries.filter(({ stream }) => stream === `job:${job}`));
    log.close();
  });

  it('that is gone is not made from records of several logs, unless a key tells which is meant', async () => {
    const records = [
      asRecord('WO-1'),
      asRecord('WO-2'),
      asRecord('WO-3'),
      foreign(stranger, originBy(stranger)),
    ];
    const work = (keys: readonly string[]) => recoverLog(null, { out, beside }, records, keys);
    await expect(work([])).rejects.toMatchObject({ problem: { code: 'recover-several-logs' } });
    await expect(work(['another'])).rejects.toMatchObject({ problem: { code: 'recover-nothing' } });
    expect(await work([kidOf(station)])).toMatchObject({
      kept: entries.length,
      leftOut: ['foreign.record.json'],
    });
  });

  it('never gives an entry that is not as it was written, whatever bytes were hit', async () => {
    const whole = readFileSync(path);
    const hits = fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { minLength: 1, maxLength: 30 });
    await fc.assert(
      fc.asyncProperty(hits, async (some) => {
        const bytes = Buffer.from(whole);
        for (const [at, value] of some) bytes[at] = value;
        const file = join(folder, 'hit.db');
        writeFileSync(file, bytes);
        const carved = await carve(file);
        for (const entry of entries) {
          const found = carved.entry(entry.seq);
          if (found === null) continue;
          expect(found.body).toBe(fromUtf8(signedBytes(entry)));
          for (const disclosure of found.disclosures) expect(disclosuresOf(entry)).toContain(disclosure);
        }
        carved.close();
      }),
      { numRuns: 60 },
    );
  });
});
