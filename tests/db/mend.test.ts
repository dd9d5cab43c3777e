/** Pages of the tables for look-up are damaged, and the log is whole: a question is answered as if nothing were. */
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openStationLog } from '../../db/log.ts';
import { openDatabase } from '../../db/open.ts';
import { isSound, logIsSound } from '../../db/sound.ts';
import { ProblemError } from '../../src/problem.ts';
import { generate } from '../bench/history/generate.ts';
import { AT, drafts, wholeJob } from '../evidence/sample-job.ts';

let folder: string;
let model: string;
let path: string;
let answers: unknown;
let told: string[];

const ask = async () => {
  const log = await openStationLog(path, { mended: () => told.push('mended') });
  try {
    const { history } = log;
    const answer = [history.attemptsOf({}), history.jobsOf({}), history.tools(), history.technicians()];
    expect(log.check()).toBeNull();
    return answer;
  } finally {
    log.close();
  }
};

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'mend-'));
  model = join(folder, 'model.db');
  path = model;
  told = [];
  await generate(model, 40, () => {});
  answers = await ask();
});
afterAll(() => rmSync(folder, { recursive: true }));
beforeEach(() => {
  told = [];
  path = join(folder, 'station.db');
  copyFileSync(model, path);
});

/** Pages of a table or an index, its root first. */
function pagesOf(...names: readonly string[]): readonly number[] {
  const db = new Sqlite(path, { readonly: true });
  try {
    const wanted = names.map((name) => `'${name}'`).join();
    const rows = db
      .prepare(`SELECT rootpage FROM sqlite_schema WHERE name IN (${wanted}) ORDER BY name`)
      .pluck()
      .all();
    return rows.map(Number);
  } finally {
    db.close();
  }
}

function damage(page: number, from: number, bytes: number): void {
  const file = readFileSync(path);
  file.fill(0xa5, (page - 1) * 4096 + from, (page - 1) * 4096 + from + bytes);
  writeFileSync(path, file);
}

const TABLES = ['attempts', 'jobs', 'setups', 'tools', 'people', 'parts', 'projection'];
const INDEXES = ['jobs_by_last_entry', 'attempts_by_tool', 'sqlite_autoindex_jobs_1', 'tools_once'];

describe('damage to what is only for look-up', () => {
  it.each([...TABLES, ...INDEXES])(
    '%s: is made again from the log, told once, and leaves a sound file',
    async (name) => {
      const [page = 0] = pagesOf(name);
      expect(page).toBeGreaterThan(1);
      damage(page, 0, 16);
      expect(await ask()).toEqual(answers);
      expect(told).toEqual(['mended']);
      expect(await ask()).toEqual(answers);
      expect(told).toEqual(['mended']);
      const db = await openDatabase(path);
      expect(isSound(db)).toBe(true);
      db.close();
    },
  );

  it('a pointer into the log gives none of its pages away', async () => {
    const [attempts = 0] = pagesOf('attempts');
    const [entries = 0] = pagesOf('entries');
    const file = readFileSync(path);
    const at = (attempts - 1) * 4096;
    // Of an inner page its rightmost child, which is dropped with the table.
    expect([2, 5]).toContain(file[at]);
    file.writeUInt32BE(entries, at + 8);
    writeFileSync(path, file);
    expect(await ask()).toEqual(answers);
    expect(told).toEqual(['mended']);
  });

  it('is mended while a job is being worked on, and no entry is lost', async () => {
    const log = await openStationLog(path, { mended: () => told.push('mended') });
    const before = log.size();
    const db = new Sqlite(path);
    // What is in memory of the open file would hide the damage.
    db.pragma('wal_checkpoint(TRUNCATE)');
    db.close();
    log.close();
    const [jobs = 0] = pagesOf('jobs');
    const large = join(folder, 'large.db');
    copyFileSync(path, large);
    damage(jobs, 0, 16);
    const again = await openStationLog(path, { mended: () => told.push('mended') });
    again.append('job:WO-1', drafts(wholeJob('WO-1')), { at: AT, monoUs: 1 });
    expect(again.size()).toBe(before + wholeJob('WO-1').length);
    expect(again.lastJobs(1)).toMatchObject([{ job: 'WO-1' }]);
    expect(told).toEqual(['mended']);
    again.close();
  });
});

it('damage to the log itself is no such thing', async () => {
  const [entries = 0] = pagesOf('entries');
  damage(entries, 0, 16);
  await expect(ask()).rejects.toThrow(ProblemError);
  expect(told).toEqual([]);
  const db = new Sqlite(path);
  expect(logIsSound(db)).toBe(false);
  db.close();
});
