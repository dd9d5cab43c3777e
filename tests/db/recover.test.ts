import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { carve } from '../../db/carve.ts';
import { openStationLog } from '../../db/log.ts';
import { type FromRecord, recoverLog } from '../../db/recover.ts';
import { originOf, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import type { AnyEntry } from '../../src/evidence/log.ts';
import { treeRoot } from '../../src/evidence/merkle.ts';
import { ProblemError } from '../../src/problem.ts';
import { AT, drafts, station, stationEvents, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let path: string;
let out: string;
let beside: string;
/** All entries of the log as it was before anything happened to it. */
let entries: readonly AnyEntry[];
let root: Buffer;
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
    made.push(...log.append(`job:${job}`, drafts(wholeJob(job)), stamp));
  root = treeRoot(log.tree, log.size());
  const origin = originOf(thumbprint(publicJwk(station.privateKey)));
  log.keepCheckpoint(log.size(), signCheckpoint({ origin, size: log.size(), root }, station.privateKey));
  log.close();
  entries = made;
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Overwrites pages, counted from 1 as SQLite does. */
function ruin(...pages: readonly number[]): void {
  const bytes = readFileSync(path);
  for (const page of pages) bytes.fill(0xa5, (page - 1) * 4096, page * 4096);
  writeFileSync(path, bytes);
}

/** The leaf pages on which entries lie, and which entries begin on each. */
function leaves(): readonly { readonly page: number; readonly seqs: readonly number[] }[] {
  const bytes = readFileSync(path);
  const carved = carve(path);
  carved.close();
  const found = [];
  for (let page = 1; page <= bytes.length / 4096; page++) {
    const only = Buffer.alloc(bytes.length);
    bytes.copy(only, 0, 0, 100);
    bytes.copy(only, (page - 1) * 4096, (page - 1) * 4096, page * 4096);
    const alone = join(folder, 'page.db');
    writeFileSync(alone, only);
    const here = carve(alone);
    const seqs = entries.map(({ seq }) => seq).filter((seq) => here.has(seq));
    here.close();
    if (seqs.length > 0) found.push({ page, seqs });
  }
  return found;
}

const asRecord = (job: string): FromRecord => ({
  entries: entries.filter(({ stream }) => stream === `job:${job}` || stream === 'station'),
  checkpoint: 'no checkpoint',
});

it('finds every entry in a log that nothing happened to, also in its write-ahead log', async () => {
  const log = await openStationLog(path);
  log.append('job:WO-4', drafts(wholeJob('WO-4')), stamp);
  expect(existsSync(`${path}-wal`)).toBe(true);
  const carved = carve(path);
  const size = log.size();
  expect(carved.last).toBe(size);
  for (let seq = 1; seq <= size; seq++) expect(carved.entry(seq)?.seq).toBe(seq);
  carved.close();
  log.close();
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
    const middle = leaves().find(
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
    expect(lines.map((line) => JSON.parse(line).seq)).toEqual(
      entries.map(({ seq }) => seq).filter((seq) => seq > Math.max(...middle.seqs)),
    );
    const log = await openStationLog(out);
    expect(log.check()).toBeNull();
    expect(log.size()).toBe(report.kept);
    log.close();
  });

  it('is made whole again from a record that holds what the damage took', async () => {
    const middle = leaves().find(({ seqs }) =>
      seqs.every((seq) => entries.find((entry) => entry.seq === seq)?.stream === 'job:WO-2'),
    );
    if (middle === undefined) throw new Error('no page of the second job alone');
    ruin(middle.page);
    const report = await recoverLog(path, { out, beside }, [asRecord('WO-2')]);
    expect(report).toMatchObject({
      kept: entries.length,
      fromRecords: middle.seqs.length,
      lost: [],
      cutJobs: [],
      checkpoints: [{ kind: 'extends', size: entries.length }],
    });
    const log = await openStationLog(out);
    expect(treeRoot(log.tree, log.size())).toEqual(root);
    log.close();
    expect(existsSync(beside)).toBe(false);
  });

  it('of which nothing is left is said to be so', async () => {
    writeFileSync(path, Buffer.alloc(40_960, 0xa5));
    const work = recoverLog(path, { out, beside }, []);
    await expect(work).rejects.toBeInstanceOf(ProblemError);
    await expect(work).rejects.toMatchObject({ problem: { code: 'recover-nothing', where: path } });
    expect(existsSync(out)).toBe(false);
  });

  it('never gives an entry that is not as it was written, whatever bytes were hit', () => {
    const whole = readFileSync(path);
    const hits = fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(hits, (some) => {
        const bytes = Buffer.from(whole);
        for (const [at, value] of some) bytes[at] = value;
        const file = join(folder, 'hit.db');
        writeFileSync(file, bytes);
        const carved = carve(file);
        for (const entry of entries) {
          const found = carved.entry(entry.seq);
          if (found !== null) expect(JSON.parse(found.body)).toEqual(entry);
        }
        carved.close();
      }),
      { numRuns: 60 },
    );
  });
});
