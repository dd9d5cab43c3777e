/** Damage in the newest part of a log, which SQLite itself would drop without a word. */
import {
  closeSync,
  copyFileSync,
  existsSync,
  ftruncateSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  unlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUpLog } from '../../db/backup.ts';
import { copyLog } from '../../db/copy.ts';
import { openStationLog } from '../../db/log.ts';
import { recoverLog } from '../../db/recover.ts';
import { readWal, walState } from '../../db/wal.ts';
import { ProblemError } from '../../src/problem.ts';
import { AT, drafts, stationEvents, wholeJob } from '../evidence/sample-job.ts';

const stamp = { at: AT, monoUs: 1000 };
let folder: string;
/** As a program leaves it that is killed: entries that only the write-ahead log holds. */
let path: string;
let entries: number;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'wal-'));
  path = join(folder, 'station.db');
  const live = join(folder, 'live.db');
  const log = await openStationLog(live);
  log.appendStation(
    stationEvents.map((event) => ({ by: 'station', event })),
    stamp,
  );
  for (const job of ['WO-1', 'WO-2', 'WO-3', 'WO-4', 'WO-5', 'WO-6'])
    log.append(`job:${job}`, drafts(wholeJob(job)), stamp);
  entries = log.size();
  for (const end of ['', '-wal']) copyFileSync(`${live}${end}`, `${path}${end}`);
  log.close();
  atRest();
});
afterEach(() => rmSync(folder, { recursive: true }));

const wal = () => `${path}-wal`;
/** Its program has been gone for a while. */
const atRest = () => utimesSync(wal(), 1, 1);
const FRAME = 24 + 4096;
const frameAt = (i: number) => 32 + i * FRAME;
const frames = () => readWal(wal())?.frames ?? [];
/** The frames that end a write. */
const ends = () => frames().flatMap(({ commits }, i) => (commits ? [i] : []));

function change(at: number, by: (byte: number) => number): void {
  const bytes = readFileSync(wal());
  for (let i = at; i < at + 4; i++) bytes[i] = by(bytes[i] ?? 0);
  writeFileSync(wal(), bytes);
  atRest();
}

async function problemOf(work: () => Promise<unknown>) {
  try {
    await work();
  } catch (thrown) {
    if (thrown instanceof ProblemError) return thrown.problem;
    throw thrown;
  }
  throw new Error('it ended well');
}

async function opened(): Promise<{ readonly size: number; readonly cut: readonly number[] }> {
  const cut: number[] = [];
  const log = await openStationLog(path, { cutOff: (count) => cut.push(count) });
  try {
    expect(log.check()).toBeNull();
    return { size: log.size(), cut };
  } finally {
    log.close();
  }
}

it('is whole after a kill: all entries are there and nothing is said', async () => {
  expect(frames().every(({ whole }) => whole)).toBe(true);
  expect(ends().length).toBeGreaterThan(5);
  expect(await opened()).toEqual({ size: entries, cut: [] });
});

describe('four changed bytes in a write that others follow', () => {
  it.each([
    ['in a page', () => frameAt(2) + 24 + 2000],
    ['in the number of a page', () => frameAt(2)],
    ['in the salt of a frame', () => frameAt(2) + 8],
    ['in the sum of a frame', () => frameAt(2) + 16],
    ['in the head of the file', () => 16],
  ])(
    '%s are damage: nothing opens it, nothing is touched, and the entries can be recovered',
    async (_, at) => {
      change(at(), (byte) => byte ^ 0x5a);
      expect(walState(path).kind).toBe('damaged');
      const before = [readFileSync(path), readFileSync(wal())];
      for (const work of [
        () => openStationLog(path),
        () => backUpLog(path, join(folder, 'backup.db')),
        () => copyLog(path, join(folder, 'copy.db')),
      ])
        expect(await problemOf(work)).toMatchObject({
          code: 'log-damaged',
          where: wal(),
          next: expect.stringContaining('recover'),
        });
      expect([readFileSync(path), readFileSync(wal())]).toEqual(before);
      expect(existsSync(join(folder, 'backup.db'))).toBe(false);
      const out = join(folder, 'new.db');
      const report = await recoverLog(path, { out, beside: join(folder, 'beside') }, []);
      expect(report).toMatchObject({ kept: entries, lost: [], beside: 0 });
      const recovered = await openStationLog(out);
      expect(recovered.check()).toBeNull();
      recovered.close();
    },
  );
});

describe('a last write that is not whole', () => {
  const lastWrite = () => (ends().at(-2) ?? -1) + 1;

  it.each([
    ['its end is missing', () => ftruncated(frameAt(lastWrite() + 1) + 100)],
    ['its mark is missing', () => ftruncated(frameAt((ends().at(-1) ?? 0) - 0))],
    ['a page of it never reached the disk', () => change(frameAt(lastWrite()) + 24 + 60, () => 0xa5)],
  ])('%s: the log opens without it, and says up to how many entries it was', async (_, happens) => {
    happens();
    const { size, cut } = await opened();
    const ofLastJob = wholeJob('WO-6').length;
    expect(size).toBe(entries - ofLastJob);
    expect(cut).toHaveLength(1);
    expect(cut[0]).toBeGreaterThanOrEqual(0);
    expect(cut[0]).toBeLessThanOrEqual(ofLastJob);
  });

  it('is not told of a program that is writing at this moment', async () => {
    ftruncated(frameAt(lastWrite() + 1));
    utimesSync(wal(), new Date(), new Date());
    expect((await opened()).cut).toEqual([]);
  });

  function ftruncated(size: number): void {
    expect(size).toBeLessThan(statSync(wal()).size);
    const file = openSync(wal(), 'r+');
    ftruncateSync(file, size);
    closeSync(file);
    atRest();
  }
});

it('that should be there and is missing is told: its index is still there', async () => {
  unlinkSync(wal());
  expect((await opened()).size).toBeLessThan(entries);
  writeFileSync(`${path}-shm`, Buffer.alloc(32_768));
  expect(await problemOf(() => openStationLog(path))).toMatchObject({
    code: 'log-damaged',
    where: wal(),
    message: expect.stringContaining('missing'),
  });
});

it('frames of an earlier round behind the newest are no damage', async () => {
  const log = await openStationLog(path);
  log.close();
  const again = await openStationLog(path);
  for (let i = 0; i < 30; i++) again.append(`job:A-${i}`, drafts(wholeJob(`A-${i}`)), stamp);
  again.sweep();
  again.append('job:B-1', drafts(wholeJob('B-1')), stamp);
  expect(walState(path).kind).toBe('whole');
  const second = await openStationLog(path);
  expect(second.size()).toBe(again.size());
  second.close();
  again.close();
});
