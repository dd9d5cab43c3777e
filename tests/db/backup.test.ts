import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backUpLog, restoreLog } from '../../db/backup.ts';
import { openStationLog } from '../../db/log.ts';
import { looksSound } from '../../db/sound.ts';
import { treeRoot } from '../../src/evidence/merkle.ts';
import { ProblemError } from '../../src/problem.ts';
import { AT, drafts, opening, stationEvents, wholeJob } from '../evidence/sample-job.ts';
import { withoutRules, withPlain } from './plain.ts';

let folder: string;
let path: string;
let backup: string;
const stamp = { at: AT, monoUs: 1000 };

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'backup-'));
  path = join(folder, 'station.db');
  backup = join(folder, 'kept.db');
  const log = await openStationLog(path);
  log.appendStation(
    stationEvents.map((event) => ({ by: 'station', event })),
    stamp,
  );
  log.append('job:WO-1', drafts(wholeJob()), stamp);
  log.close();
});
afterEach(() => rmSync(folder, { recursive: true }));

async function problemOf(work: Promise<unknown>): Promise<unknown> {
  try {
    await work;
  } catch (thrown) {
    return thrown instanceof ProblemError ? thrown.problem : thrown;
  }
  throw new Error('nothing was thrown');
}

const sizeOf = async (file: string) => {
  const log = await openStationLog(file);
  const seen = { size: log.size(), root: treeRoot(log.tree, log.size()), jobs: log.lastJobs().length };
  log.close();
  return seen;
};

describe('a backup', () => {
  it('is a whole log of its own, and says what it holds', async () => {
    const before = await sizeOf(path);
    expect(await backUpLog(path, backup)).toEqual({ entries: before.size, jobs: 1, lastAt: AT });
    expect(await sizeOf(backup)).toEqual(before);
    expect(existsSync(`${backup}.part`)).toBe(false);
  });

  it('is made while a job goes on, and holds the log as it stood at one moment', async () => {
    const log = await openStationLog(path);
    const before = log.size();
    const made = backUpLog(path, backup);
    for (let i = 0; i < 40; i++) {
      log.append(`job:MORE-${i}`, drafts([opening(`MORE-${i}`)]), stamp);
      await new Promise(setImmediate);
    }
    const { entries } = await made;
    expect(entries).toBeGreaterThanOrEqual(before);
    expect(log.size()).toBe(before + 40);
    log.close();
    const copy = await openStationLog(backup);
    expect(copy.check()).toBeNull();
    expect(copy.size()).toBe(entries);
    copy.close();
  });

  it('is never written over a file that is there', async () => {
    writeFileSync(backup, 'mine');
    expect(await problemOf(backUpLog(path, backup))).toMatchObject({ code: 'backup-exists', where: backup });
    expect(readFileSync(backup, 'utf8')).toBe('mine');
  });

  it('of a log that was tampered with is refused, and leaves nothing behind', async () => {
    const db = withoutRules(withPlain(new Sqlite(path)));
    db.exec(`UPDATE entries SET hash = zeroblob(32) WHERE seq = 3`);
    db.close();
    const message = expect.stringContaining('entry 3');
    expect(await problemOf(backUpLog(path, backup))).toMatchObject({ code: 'log-damaged', message });
    expect(existsSync(backup)).toBe(false);
    expect(existsSync(`${backup}.part`)).toBe(false);
  });
});

describe('restoring', () => {
  it('puts the backup in the place of the log, and keeps what was there', async () => {
    await backUpLog(path, backup);
    const then = await sizeOf(path);
    const log = await openStationLog(path);
    log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    log.close();
    const restored = await restoreLog(backup, path, 'before-1');
    expect(restored).toMatchObject({ entries: then.size, jobs: 1, before: `${path}.before-1` });
    expect(await sizeOf(path)).toEqual(then);
    expect((await sizeOf(`${path}.before-1`)).size).toBe(then.size + 1);
  });

  it('keeps all that was there before, also where two are restored under one name', async () => {
    await backUpLog(path, backup);
    const log = await openStationLog(path);
    log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    log.close();
    const original = await sizeOf(path);
    await restoreLog(backup, path, 'before-1');
    const again = await restoreLog(backup, path, 'before-1');
    expect(again.before).toBe(`${path}.before-1-2`);
    expect(await sizeOf(`${path}.before-1`)).toEqual(original);
    expect(existsSync(`${path}.before-1-2`)).toBe(true);
  });

  it('takes in the entries that stand in the write-ahead log beside a copy made by hand', async () => {
    const log = await openStationLog(path);
    log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    for (const end of ['', '-wal']) copyFileSync(`${path}${end}`, `${backup}${end}`);
    log.close();
    const whole = await sizeOf(path);
    const wal = readFileSync(`${backup}-wal`);
    expect(await restoreLog(backup, path, 'x')).toMatchObject({ entries: whole.size, jobs: 2 });
    expect(await sizeOf(path)).toEqual(whole);
    expect(readFileSync(`${backup}-wal`).equals(wal)).toBe(true);
  });

  it('does not let the write-ahead log of a file that is gone into the restored one', async () => {
    await backUpLog(path, backup);
    const then = await sizeOf(path);
    rmSync(path);
    writeFileSync(`${path}-wal`, 'left behind');
    expect((await restoreLog(backup, path, 'x')).before).toBe(`${path}.x`);
    expect(readFileSync(`${path}.x-wal`, 'utf8')).toBe('left behind');
    expect(await sizeOf(path)).toEqual(then);
  });

  it('works where nothing is there, and in the place of a damaged file', async () => {
    await backUpLog(path, backup);
    const then = await sizeOf(path);
    rmSync(path);
    expect((await restoreLog(backup, path, 'x')).before).toBeNull();
    const bytes = readFileSync(path);
    bytes.fill(0xa5, 4096, 20_480);
    writeFileSync(path, bytes);
    expect(await problemOf(openStationLog(path))).toMatchObject({ code: 'log-damaged' });
    await restoreLog(backup, path, 'damaged-1');
    expect(await sizeOf(path)).toEqual(then);
    expect(readFileSync(`${path}.damaged-1`).equals(bytes)).toBe(true);
  });

  it('changes nothing where the backup is damaged, missing or no log', async () => {
    await backUpLog(path, backup);
    const before = readFileSync(path);
    const bytes = readFileSync(backup);
    bytes.fill(0, bytes.length - 4096 * 3, bytes.length - 4096);
    writeFileSync(backup, bytes);
    expect(await problemOf(restoreLog(backup, path, 'x'))).toMatchObject({ code: 'log-damaged' });
    expect(await problemOf(restoreLog(join(folder, 'no.db'), path, 'x'))).toMatchObject({
      code: 'backup-missing',
    });
    writeFileSync(backup, 'a letter to somebody');
    expect(await problemOf(restoreLog(backup, path, 'x'))).toMatchObject({ code: 'log-not-a-log' });
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(existsSync(`${path}.restoring`)).toBe(false);
  });

  it('is refused while another program has the log open', async () => {
    await backUpLog(path, backup);
    const log = await openStationLog(path);
    log.size();
    expect(await problemOf(restoreLog(backup, path, 'x'))).toMatchObject({ code: 'log-busy' });
    log.append('job:WO-9', drafts([opening('WO-9')]), stamp);
    log.close();
    expect((await sizeOf(path)).jobs).toBe(2);
  });
});

it('damage is told in one sentence when the log is opened, however the file came to it', async () => {
  const whole = readFileSync(path);
  const said = async () => await problemOf(openStationLog(path));
  for (const [from, to] of [
    [4096, 8192],
    [whole.length - 8192, whole.length - 4096],
  ] as const) {
    const bytes = Buffer.from(whole);
    bytes.fill(0x5a, from, to);
    writeFileSync(path, bytes);
    expect(await said()).toMatchObject({
      code: 'log-damaged',
      where: path,
      message: expect.any(String),
      next: expect.stringContaining('plugmark restore'),
    });
  }
});

describe('a file that is too large to be read whole at every opening', () => {
  const looks = () => {
    const db = new Sqlite(path);
    try {
      return looksSound(db, path, 0);
    } finally {
      db.close();
    }
  };

  it('is looked at where a power cut would have hit', () => {
    expect(looks()).toBe(true);
    const db = withoutRules(withPlain(new Sqlite(path)));
    db.exec(
      `UPDATE entries SET body = replace(plain(body), '"v":1', '"v":2') WHERE seq = (SELECT max(seq) FROM entries)`,
    );
    db.close();
    expect(looks()).toBe(false);
  });

  it('is told when its end is missing', () => {
    const bytes = readFileSync(path);
    writeFileSync(path, bytes.subarray(0, bytes.length - 4096));
    expect(looks).toThrow('malformed');
  });

  it('never gives an entry that is not as it was written', async () => {
    const db = withoutRules(withPlain(new Sqlite(path)));
    db.exec(
      `UPDATE entries SET body = replace(plain(body), 'A. Example', 'B. Example') WHERE n = 1 AND stream = (SELECT id FROM streams WHERE name = 'job:WO-1')`,
    );
    db.close();
    const log = await openStationLog(path);
    const read = async () => log.entries('job:WO-1');
    expect(await problemOf(read())).toMatchObject({
      code: 'log-damaged',
      message: expect.stringMatching(/^entry \d+ of the station log is not as it was written$/),
    });
    log.close();
  });
});
