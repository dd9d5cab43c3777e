/** A log whose file goes away while it is open: no entry is acknowledged any more, and all that it holds is saved elsewhere. */
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, renameSync, rmSync, unlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import { ProblemError } from '../../src/problem.ts';
import { AT, drafts, wholeJob } from '../evidence/sample-job.ts';

const stamp = { at: AT, monoUs: 1000 };
let above: string;
let folder: string;
let path: string;
let log: StationLogFile;

beforeEach(async () => {
  above = mkdtempSync(join(tmpdir(), 'in-place-'));
  folder = join(above, 'data');
  mkdirSync(folder);
  path = join(folder, 'station.db');
  log = await openStationLog(path);
  log.append('job:WO-1', drafts(wholeJob('WO-1')), stamp);
});
afterEach(() => {
  log.close();
  rmSync(above, { recursive: true, force: true });
});

const append = () => log.append('job:WO-2', drafts(wholeJob('WO-2')), stamp);

function problemOf(work: () => unknown) {
  try {
    work();
  } catch (thrown) {
    if (thrown instanceof ProblemError) return thrown.problem;
    throw thrown;
  }
  throw new Error('it was acknowledged');
}

async function jobsIn(file: string): Promise<readonly string[]> {
  const saved = await openStationLog(file);
  try {
    expect(saved.check()).toBeNull();
    return saved.streams();
  } finally {
    saved.close();
  }
}

const WAYS: readonly (readonly [string, () => void, () => string])[] = [
  ['its folder is deleted', () => rmSync(folder, { recursive: true }), () => above],
  ['its folder is moved', () => renameSync(folder, join(above, 'elsewhere')), () => above],
  ['it is deleted', () => unlinkSync(path), () => folder],
  ['its write-ahead log is deleted', () => unlinkSync(`${path}-wal`), () => folder],
  [
    'another file takes its place',
    () => {
      copyFileSync(path, `${path}.copy`);
      renameSync(`${path}.copy`, path);
    },
    () => folder,
  ],
];

describe('a log that is open while', () => {
  it.each(WAYS)(
    '%s acknowledges nothing more, and is saved where it can be found',
    async (_, happens, place) => {
      happens();
      const saved = join(place(), 'station.saved.db');
      expect(problemOf(append)).toMatchObject({
        code: 'log-moved',
        where: path,
        next: expect.stringContaining(saved),
      });
      expect(await jobsIn(saved)).toEqual(['job:WO-1', 'job:WO-2']);
      // What was still in memory follows into the same file.
      expect(problemOf(() => log.append('job:WO-3', drafts(wholeJob('WO-3')), stamp)).next).toContain(saved);
      expect(await jobsIn(saved)).toEqual(['job:WO-1', 'job:WO-2', 'job:WO-3']);
    },
  );

  it('nothing happens to it goes on, however often it is written', () => {
    for (let i = 2; i < 40; i++) log.append(`job:WO-${i}`, drafts(wholeJob(`WO-${i}`)), stamp);
    log.keepCheckpoint(1, 'a note');
    expect(existsSync(join(folder, 'station.saved.db'))).toBe(false);
  });

  it('an older rescue lies there leaves that as it is', async () => {
    copyFileSync(path, join(above, 'station.saved.db'));
    rmSync(folder, { recursive: true });
    expect(problemOf(append).next).toContain(join(above, 'station.saved-2.db'));
    expect(await jobsIn(join(above, 'station.saved-2.db'))).toHaveLength(2);
  });
});
