import {
  copyFileSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Opening, openStationLog } from '../../db/log.ts';
import { migrate, readMigrations, versionOf } from '../../db/migrate.ts';
import { assertFull, openDatabase } from '../../db/open.ts';
import { ProblemError } from '../../src/problem.ts';
import { AT, drafts, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let path: string;
const stamp = { at: AT, monoUs: 1000 };

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'log-'));
  path = join(folder, 'station.log');
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

async function writtenLog(): Promise<void> {
  const log = await openStationLog(path);
  log.append('job:WO-1', drafts(wholeJob()), stamp);
  log.close();
}

async function problemAtOpening(opening: Opening = {}): Promise<unknown> {
  try {
    (await openStationLog(path, opening)).close();
  } catch (thrown) {
    return thrown instanceof ProblemError ? thrown.problem : thrown;
  }
  throw new Error('the file was opened');
}

/** A change made behind the program's back. */
function meddle(...pragmas: string[]): void {
  const db = new Sqlite(path);
  for (const pragma of pragmas) db.pragma(pragma);
  db.close();
}

describe('an open log', () => {
  it('commits to disk: WAL with synchronous FULL, after opening, after writing, and opened again', async () => {
    for (let round = 0; round < 2; round++) {
      const db = await openDatabase(path);
      expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
      expect(db.pragma('synchronous', { simple: true })).toBe(2);
      db.exec(`INSERT INTO dictionaries (id, text) VALUES (${100 + round}, '')`);
      expect(db.pragma('synchronous', { simple: true })).toBe(2);
      db.close();
    }
  });

  it('waits for one that another program is just beginning: its file is empty for a moment', async () => {
    await writtenLog();
    const whole = readFileSync(path);
    writeFileSync(path, '');
    const opening = openStationLog(path);
    writeFileSync(path, whole);
    const log = await opening;
    expect(log.streams()).toContain('job:WO-1');
    log.close();
  });

  it('keeps rules that SQLite leaves to each connection', async () => {
    const db = await openDatabase(path);
    const on = ['foreign_keys', 'recursive_triggers', 'fullfsync'].map((name) =>
      db.pragma(name, { simple: true }),
    );
    expect(on).toEqual([1, 1, 1]);
    expect(db.pragma('trusted_schema', { simple: true })).toBe(0);
    expect(db.pragma('journal_size_limit', { simple: true })).toBe(4 * 1024 * 1024);
    db.close();
  });

  it('notices when commits would be worth less', async () => {
    const db = await openDatabase(path);
    expect(() => assertFull(db)).not.toThrow();
    db.pragma('synchronous = NORMAL');
    expect(() => assertFull(db)).toThrow('synchronous=1');
    db.close();
  });
});

describe('migrations', () => {
  it('lead from nothing to the latest form, and do nothing the second time', () => {
    const db = new Sqlite(':memory:');
    const migrations = readMigrations();
    migrate(db, migrations);
    expect(versionOf(db)).toBe(migrations.length);
    const schema = db.prepare('SELECT name, sql FROM sqlite_schema').all();
    migrate(db, migrations);
    expect(db.prepare('SELECT name, sql FROM sqlite_schema').all()).toEqual(schema);
    db.close();
  });

  it('lead on from each earlier form', () => {
    const migrations = readMigrations();
    for (let version = 0; version < migrations.length; version++) {
      const db = new Sqlite(':memory:');
      migrate(db, migrations.slice(0, version));
      expect(versionOf(db)).toBe(version);
      migrate(db, migrations);
      expect(db.prepare('SELECT count(*) FROM entries').pluck().get()).toBe(0);
      db.close();
    }
  });

  it('are all or nothing', () => {
    const db = new Sqlite(':memory:');
    const broken = [
      ...readMigrations(),
      { version: 99, sql: 'CREATE TABLE half (a); SELECT * FROM nowhere' },
    ];
    expect(() => migrate(db, broken)).toThrow('nowhere');
    expect(versionOf(db)).toBe(0);
    expect(db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get()).toBe(0);
    db.close();
  });
});

describe('a file that cannot serve as station log is refused with what to do', () => {
  it('from a newer version', async () => {
    await writtenLog();
    meddle('user_version = 99');
    expect(await problemAtOpening()).toMatchObject({ code: 'log-newer', where: path });
  });

  it('garbage', async () => {
    writeFileSync(path, 'not a database, but text of some length'.repeat(200));
    expect(await problemAtOpening()).toMatchObject({ code: 'log-not-a-log', where: path });
    expect(readFileSync(path, 'utf8')).toContain('not a database');
  });

  it('another program’s database, which is left as it is', async () => {
    const other = new Sqlite(path);
    other.exec('CREATE TABLE recipes (a)');
    other.close();
    const before = readFileSync(path);
    expect(await problemAtOpening()).toMatchObject({ code: 'log-not-a-log', where: path });
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  it('emptied', async () => {
    await writtenLog();
    for (const kept of [1, 0]) {
      truncateSync(path, kept);
      // Longer ago than anybody takes to begin one.
      utimesSync(path, 0, 0);
      expect(await problemAtOpening()).toMatchObject({ code: 'log-empty', where: path });
    }
  });

  it('cut off', async () => {
    await writtenLog();
    const size = readFileSync(path).length;
    // The last page may be one that nothing is in yet: of that, SQLite misses nothing until all of it is gone.
    for (const kept of [size - 4096, size - 4196, 4096, 100, 10]) {
      copyFileSync(path, `${path}.whole`);
      truncateSync(path, kept);
      expect(await problemAtOpening()).toMatchObject({
        code: expect.stringMatching(/^log-(damaged|not-a-log)$/),
        where: path,
      });
      copyFileSync(`${path}.whole`, path);
    }
  });

  it('overwritten in the middle', async () => {
    await writtenLog();
    const bytes = readFileSync(path);
    bytes.fill(0xa5, 4096, 8192);
    writeFileSync(path, bytes);
    expect(await problemAtOpening()).toMatchObject({ code: 'log-damaged', where: path });
  });

  it('hit in its first bytes, anywhere: opened, or told, never a fault of the program', async () => {
    await writtenLog();
    const whole = readFileSync(path);
    const codes = new Set<string>();
    for (let at = 0; at < 100; at++)
      for (const value of [0x00, 0x5a, 0xff]) {
        const bytes = Buffer.from(whole);
        bytes[at] = value;
        writeFileSync(path, bytes);
        try {
          (await openStationLog(path)).close();
        } catch (thrown) {
          if (!(thrown instanceof ProblemError)) throw new Error(`byte ${at}`, { cause: thrown });
          codes.add(thrown.problem.code);
        }
      }
    expect([...codes].sort()).toEqual(['log-damaged', 'log-newer', 'log-not-a-log']);
    for (const to of [100, 4096]) {
      const bytes = Buffer.from(whole);
      bytes.fill(0x5a, 0, to);
      writeFileSync(path, bytes);
      expect(await problemAtOpening()).toMatchObject({ code: 'log-damaged', where: path });
    }
  });

  it('in a folder that is not there', async () => {
    path = join(folder, 'nowhere', 'station.log');
    expect(await problemAtOpening()).toMatchObject({ code: 'log-path', where: path });
  });

  it('being a folder', async () => {
    path = folder;
    expect(await problemAtOpening()).toMatchObject({ code: 'log-path', where: path });
  });

  it('held by another program, when its patience is over', async () => {
    await writtenLog();
    const other = new Sqlite(path);
    other.pragma('locking_mode = EXCLUSIVE');
    other.exec('BEGIN EXCLUSIVE');
    const problem = await problemAtOpening({ patienceMs: 200 });
    expect(problem).toMatchObject({ code: 'log-busy', where: path });
    other.exec('ROLLBACK');
    other.close();
  });
});

it('a log may be opened for reading while another program is in the middle of writing', async () => {
  await writtenLog();
  const other = new Sqlite(path);
  other.exec('BEGIN IMMEDIATE');
  const log = await openStationLog(path);
  expect(log.entries('job:WO-1')).toHaveLength(wholeJob().length);
  log.close();
  other.exec('ROLLBACK');
  other.close();
});
