import { chmodSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStationLog } from '../../db/log.ts';
import { openLogToRead, tooLargeToCopy } from '../../db/read-only.ts';
import { ProblemError } from '../../src/problem.ts';
import { AT, drafts, opening, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let path: string;
const stamp = { at: AT, monoUs: 1000 };
const NOBODY = 65_534;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  path = join(folder, 'station.db');
  const log = await openStationLog(path);
  log.append('job:WO-1', drafts(wholeJob()), stamp);
  log.close();
});
afterEach(() => {
  chmodSync(folder, 0o755);
  rmSync(folder, { recursive: true });
});

/** Rights do not bind the superuser, who becomes somebody else meanwhile. */
async function asReader<T>(work: () => Promise<T>): Promise<T> {
  const isRoot = process.geteuid?.() === 0;
  if (isRoot) process.seteuid?.(NOBODY);
  try {
    return await work();
  } finally {
    if (isRoot) process.seteuid?.(0);
  }
}

describe.runIf(process.platform !== 'win32')('a log that may only be read', () => {
  it.each([
    ['its folder and its file', 0o555, 0o444],
    ['its folder', 0o555, 0o666],
    ['its file', 0o777, 0o444],
  ])(
    'answers from a copy that goes when it is closed, and takes nothing (%s)',
    async (_, onFolder, onFile) => {
      chmodSync(path, onFile);
      chmodSync(folder, onFolder);
      const before = readFileSync(path);
      const names = readdirSync(folder);
      const copies = () => readdirSync(tmpdir()).filter((name) => /^plugmark-\w{6}$/.test(name));
      const there = copies();
      await asReader(async () => {
        const { log, copied } = await openLogToRead(path);
        expect(copied).toBe(true);
        expect(copies().length).toBe(there.length + 1);
        expect(log.check()).toBeNull();
        expect(log.history.jobsOf({})).toHaveLength(1);
        expect(log.history.technicians()).toHaveLength(1);
        for (const add of [
          () => log.append('job:WO-2', drafts([opening('WO-2')]), stamp),
          () => log.appendStation([], stamp),
          () => log.keepCheckpoint(1, 'note'),
        ])
          expect(add).toThrow(ProblemError);
        log.close();
      });
      expect(copies()).toEqual(there);
      expect(readdirSync(folder)).toEqual(names);
      expect(readFileSync(path).equals(before)).toBe(true);
    },
  );

  it('is copied with what another program has not yet put into the file', async () => {
    const open = await openStationLog(path);
    open.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    chmodSync(path, 0o444);
    chmodSync(`${path}-wal`, 0o444);
    rmSync(`${path}-shm`);
    chmodSync(folder, 0o555);
    await asReader(async () => {
      const { log } = await openLogToRead(path);
      expect(log.lastJobs().map(({ job }) => job)).toEqual(['WO-2', 'WO-1']);
      log.close();
    });
    chmodSync(folder, 0o755);
    open.close();
  });

  it('that may not be read either is told', async () => {
    chmodSync(folder, 0o755);
    chmodSync(path, 0o000);
    await asReader(async () => {
      await expect(openLogToRead(path)).rejects.toMatchObject({ problem: { code: 'log-path', where: path } });
    });
  });

  it('is not copied where there is no room', () => {
    expect(tooLargeToCopy(path, 1000)).toMatch(/^1 MB, too large for a copy in /);
    expect(tooLargeToCopy(path)).toBeNull();
  });
});

it('a log that may be written is opened where it lies', async () => {
  const { log, copied } = await openLogToRead(path);
  expect(copied).toBe(false);
  log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
  log.close();
  expect(existsSync(path)).toBe(true);
});
