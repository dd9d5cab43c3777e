/** Bringing the history up to date beside a job that is worked on: it has the log to itself for no longer than a moment. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { openStationLog } from '../../db/log.ts';
import { generate } from '../bench/history/generate.ts';
import { AT, drafts, wholeJob } from '../evidence/sample-job.ts';

const JOBS = 25;
let folder: string;
let path: string;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'folding-'));
  path = join(folder, 'station.db');
  await generate(path, JOBS, () => {});
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

it('on a machine that is as slow as can be, others may write behind every single job', async () => {
  const log = await openStationLog(path);
  const other = new Sqlite(path, { timeout: 0 });
  // Each look at the clock is a second after the one before.
  let now = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => (now += 1000));
  const seen: number[] = [];
  log.history.bringUpToDate((done) => {
    seen.push(done);
    other.exec('BEGIN IMMEDIATE; ROLLBACK');
  });
  expect(seen).toEqual(Array.from({ length: JOBS }, (_, i) => i + 1));
  expect(log.history.attemptsOf({}).length).toBeGreaterThan(JOBS);
  other.close();
  log.close();
});

it('what was forgotten meanwhile does not come back with what was read before', async () => {
  const log = await openStationLog(path);
  const other = await openStationLog(path);
  const [first] = [...other.texts()].filter(({ kind }) => kind === 'person');
  expect(first).toBeDefined();
  const person = first?.content ?? '';
  const all = [...other.texts()].filter(({ content }) => content === person);
  let now = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => (now += 1000));
  let forgotten = false;
  log.history.bringUpToDate(() => {
    if (forgotten) return;
    forgotten = true;
    const texts = all.map(({ entry, text, kind }) => ({ entry, text, kind }));
    other.forget(all, { by: 'station', event: { type: 'texts-forgotten', texts } }, { at: AT, monoUs: 1 });
  });
  expect(forgotten).toBe(true);
  expect(log.history.technicians()).not.toContain(person);
  other.close();
  log.close();
});

it('a job that goes on while it is read is asked about as it is then', async () => {
  const log = await openStationLog(path);
  const other = await openStationLog(path);
  const seen = new Set<string>();
  log.history.bringUpToDate(() => {
    if (seen.size > 0) return;
    seen.add('once');
    other.append('job:WO-1', drafts(wholeJob('WO-1')), { at: AT, monoUs: 1 });
  });
  expect(log.history.attemptsOf({ job: 'WO-1' }).length).toBeGreaterThan(0);
  other.close();
  log.close();
});
