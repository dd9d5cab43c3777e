import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { backUpLog, restoreLog } from '../../db/backup.ts';
import { openStationLog } from '../../db/log.ts';
import { looksSound } from '../../db/sound.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import { treeRoot } from '../../src/evidence/merkle.ts';
import { ProblemError } from '../../src/problem.ts';
import {
  AT,
  drafts,
  kidOf,
  opening,
  station,
  stationEvents,
  stranger,
  wholeJob,
} from '../evidence/sample-job.ts';
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

/** Restored by somebody who says yes to everything. */
const restored = (from: string, to: string, suffix: string, keys: readonly string[] = []) =>
  restoreLog(from, to, { suffix, keys, agree: () => {} });

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
    expect(await problemOf(backUpLog(path, backup))).toMatchObject({ code: 'file-exists', where: backup });
    expect(readFileSync(backup, 'utf8')).toBe('mine');
  });

  it('names the place of the copy, and not the log, where the copy cannot be written', async () => {
    const to = join(folder, 'nowhere', 'kept.db');
    await expect(backUpLog(path, to)).rejects.toMatchObject({ problem: { code: 'file-system', where: to } });
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
    const made = await restored(backup, path, 'before-1');
    expect(made).toMatchObject({ entries: then.size, jobs: 1, before: `${path}.before-1` });
    expect(await sizeOf(path)).toEqual(then);
    expect((await sizeOf(`${path}.before-1`)).size).toBe(then.size + 1);
  });

  it('keeps all that was there before, also where two are restored under one name', async () => {
    await backUpLog(path, backup);
    const log = await openStationLog(path);
    log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    log.close();
    const original = await sizeOf(path);
    await restored(backup, path, 'before-1');
    const again = await restored(backup, path, 'before-1');
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
    expect(await restored(backup, path, 'x')).toMatchObject({ entries: whole.size, jobs: 2 });
    expect(await sizeOf(path)).toEqual(whole);
    expect(readFileSync(`${backup}-wal`).equals(wal)).toBe(true);
  });

  it('does not let the write-ahead log of a file that is gone into the restored one', async () => {
    await backUpLog(path, backup);
    const then = await sizeOf(path);
    rmSync(path);
    writeFileSync(`${path}-wal`, 'left behind');
    expect((await restored(backup, path, 'x')).before).toBe(`${path}.x`);
    expect(readFileSync(`${path}.x-wal`, 'utf8')).toBe('left behind');
    expect(await sizeOf(path)).toEqual(then);
  });

  it('works where nothing is there, and in the place of a damaged file', async () => {
    await backUpLog(path, backup);
    const then = await sizeOf(path);
    rmSync(path);
    expect((await restored(backup, path, 'x')).before).toBeNull();
    const bytes = readFileSync(path);
    bytes.fill(0xa5, 4096, 20_480);
    writeFileSync(path, bytes);
    expect(await problemOf(openStationLog(path))).toMatchObject({ code: 'log-damaged' });
    await restored(backup, path, 'damaged-1');
    expect(await sizeOf(path)).toEqual(then);
    expect(readFileSync(`${path}.damaged-1`).equals(bytes)).toBe(true);
  });

  it('changes nothing where the backup is damaged, missing or no log', async () => {
    await backUpLog(path, backup);
    const before = readFileSync(path);
    const bytes = readFileSync(backup);
    bytes.fill(0, bytes.length - 4096 * 3, bytes.length - 4096);
    writeFileSync(backup, bytes);
    expect(await problemOf(restored(backup, path, 'x'))).toMatchObject({ code: 'log-damaged' });
    expect(await problemOf(restored(join(folder, 'no.db'), path, 'x'))).toMatchObject({
      code: 'file-unreadable',
    });
    writeFileSync(backup, 'a letter to somebody');
    expect(await problemOf(restored(backup, path, 'x'))).toMatchObject({ code: 'log-not-a-log' });
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(existsSync(`${path}.restoring`)).toBe(false);
  });

  it('says before anything is replaced what the log holds and the backup does not, and leaves all as it was where that is not to be', async () => {
    await backUpLog(path, backup);
    const log = await openStationLog(path);
    log.append('job:WO-1', drafts([{ type: 'job-voided', by: 'A. Example', reason: 'test' }]), stamp);
    log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    log.appendStation(
      [{ by: 'station', event: { type: 'technicians-decided', technicians: 'sign' } }],
      stamp,
    );
    const size = log.size();
    log.close();
    const before = readFileSync(path);
    const agree = vi.fn(() => {
      throw new Error('no');
    });
    await expect(restoreLog(backup, path, { suffix: 'x', keys: [], agree })).rejects.toThrow('no');
    expect(agree).toHaveBeenCalledWith({
      kind: 'goes-on',
      common: size - 3,
      apart: {
        entries: 3,
        station: 1,
        jobs: [
          { job: 'WO-1', became: 'void' },
          { job: 'WO-2', became: 'opened' },
        ],
      },
      onlyInBackup: 0,
      size,
    });
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(existsSync(`${path}.x`)).toBe(false);
  });

  it('tells two courses from one that goes on, by the last entry that both have', async () => {
    const common = (await sizeOf(path)).size;
    copyFileSync(path, backup);
    for (const [file, jobs] of [
      [path, ['WO-2', 'WO-3']],
      [backup, ['WO-4']],
    ] as const) {
      const log = await openStationLog(file);
      for (const job of jobs) log.append(`job:${job}`, drafts([opening(job)]), stamp);
      log.close();
    }
    const { courses } = await restored(backup, path, 'x');
    expect(courses).toMatchObject({ kind: 'parted', common, onlyInBackup: 1, apart: { entries: 2 } });
    const back = await restored(`${path}.x`, path, 'y');
    expect(back.courses).toMatchObject({ kind: 'parted', common, onlyInBackup: 2, apart: { entries: 1 } });
  });

  it('sets nothing apart where the backup is the longer one', async () => {
    copyFileSync(path, backup);
    const log = await openStationLog(backup);
    log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    log.close();
    expect((await restored(backup, path, 'x')).courses).toMatchObject({
      kind: 'behind',
      onlyInBackup: 1,
      apart: { entries: 0 },
    });
  });

  it('counts what can still be read of a damaged log', async () => {
    await backUpLog(path, backup);
    const log = await openStationLog(path);
    log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
    log.close();
    const bytes = readFileSync(path);
    bytes.fill(0x5a, 0, 4096);
    writeFileSync(path, bytes);
    const { courses, before } = await restored(backup, path, 'x');
    expect(courses).toMatchObject({
      kind: 'unreadable',
      apart: { entries: 1, jobs: [{ job: 'WO-2', became: 'opened' }] },
    });
    expect(readFileSync(String(before)).equals(bytes)).toBe(true);
  });

  it('takes no log of another station: by the log that is there, readable or not, or by a key', async () => {
    const otherKey = publicJwk(stranger.privateKey);
    const other = await openStationLog(backup);
    other.appendStation(
      [{ by: 'station', event: { type: 'station-set-up', station: 'other bay', key: otherKey } }],
      stamp,
    );
    other.close();
    const own = [thumbprint(publicJwk(station.privateKey))];
    const refused = {
      code: 'restore-other-station',
      where: backup,
      message: expect.stringMatching(/"other bay" \(plugmark\/log\/[\w-]{43}\).*bay 1|has the key/),
    };
    const work = () => problemOf(restored(backup, path, 'x', own));
    expect(await work()).toMatchObject(refused);
    const bytes = readFileSync(path);
    bytes.fill(0x5a, 0, 4096);
    writeFileSync(path, bytes);
    expect(await work()).toMatchObject(refused);
    rmSync(path);
    expect(await work()).toMatchObject(refused);
    expect((await restored(backup, path, 'x', [kidOf(stranger)])).courses.kind).toBe('none');
  });

  it('takes the log that the station had before another was begun in its place, by its key', async () => {
    renameSync(path, backup);
    const started = await openStationLog(path);
    const key = publicJwk(stranger.privateKey);
    started.appendStation(
      [{ by: 'station', event: { type: 'station-set-up', station: 'bay 1', key } }],
      stamp,
    );
    started.close();
    const own = [kidOf(stranger), kidOf(station)];
    expect((await restored(backup, path, 'x', own)).courses).toMatchObject({
      kind: 'another',
      common: 0,
      apart: { entries: 1 },
    });
  });

  it('is refused where another program added to the log after it was compared', async () => {
    await backUpLog(path, backup);
    const agree = async () => {
      const log = await openStationLog(path);
      log.append('job:WO-2', drafts([opening('WO-2')]), stamp);
      log.close();
    };
    const work = restoreLog(backup, path, { suffix: 'x', keys: [], agree });
    expect(await problemOf(work)).toMatchObject({ code: 'log-busy', where: path });
    expect((await sizeOf(path)).jobs).toBe(2);
  });

  it('names the file that was given in all that is wrong with it', async () => {
    writeFileSync(backup, 'a letter to somebody');
    expect(await problemOf(restored(backup, path, 'x'))).toMatchObject({ where: backup });
    writeFileSync(backup, readFileSync(path).subarray(0, 20_480));
    expect(await problemOf(restored(backup, path, 'x'))).toMatchObject({
      code: 'log-damaged',
      where: backup,
      next: expect.stringContaining('another backup'),
    });
    rmSync(backup);
    (await openStationLog(backup)).close();
    expect(await problemOf(restored(backup, path, 'x'))).toMatchObject({ code: 'log-empty', where: backup });
    expect(await problemOf(restored(folder, path, 'x'))).toMatchObject({
      code: 'file-unreadable',
      where: folder,
      message: expect.stringContaining('folder'),
    });
  });

  it('is refused while another program has the log open', async () => {
    await backUpLog(path, backup);
    const log = await openStationLog(path);
    log.size();
    expect(await problemOf(restored(backup, path, 'x'))).toMatchObject({ code: 'log-busy' });
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
      `UPDATE entries SET body = packed(replace(plain(body, salt), '"v":1', '"v":2')) WHERE seq = (SELECT max(seq) FROM entries)`,
    );
    db.close();
    expect(looks()).toBe(false);
  });

  it('is told when its end is missing', () => {
    const bytes = readFileSync(path);
    writeFileSync(path, bytes.subarray(0, bytes.length - 4096));
    expect(looks()).toBe(false);
  });

  it('never gives an entry that is not as it was written', async () => {
    const db = withoutRules(withPlain(new Sqlite(path)));
    db.exec(
      `UPDATE entries SET body = packed(replace(plain(body, salt), 'EXAMPLE-14', 'EXAMPLE-15')) WHERE n = 1 AND stream = (SELECT id FROM streams WHERE name = 'job:WO-1')`,
    );
    db.close();
    const log = await openStationLog(path);
    const read = async () => log.entries('job:WO-1');
    expect(await problemOf(read())).toMatchObject({
      code: 'log-damaged',
      message: expect.stringMatching(/^entry \d+ of the station log was changed$/),
    });
    log.close();
  });
});
