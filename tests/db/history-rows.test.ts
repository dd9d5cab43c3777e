import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AttemptFilter } from '../../db/history-filter.ts';
import { openStationLog, type StationLogFile } from '../../db/log.ts';
import type { AttemptRow, ProcessRow } from '../../src/audit/attempt.ts';
import { GROUPINGS, processGroups } from '../../src/audit/capability.ts';
import { generate } from '../bench/history/generate.ts';

let folder: string;
let path: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'history-rows-'));
  path = join(folder, 'station.db');
  await generate(path, 30, () => {});
});
afterAll(() => rmSync(folder, { recursive: true }));

async function asked<T>(question: (history: StationLogFile['history']) => T, from = path): Promise<T> {
  const log = await openStationLog(from);
  try {
    return question(log.history);
  } finally {
    log.close();
  }
}

/** The station log in another file, all attempts folded and then changed. */
async function copied(to: string, change: string): Promise<void> {
  await asked((history) => history.bringUpToDate());
  const db = new Sqlite(path);
  db.prepare('VACUUM INTO ?').run(to);
  db.close();
  const copy = new Sqlite(to);
  copy.exec(change);
  copy.close();
}

describe('rows for what a process can do', () => {
  it.each<AttemptFilter>([
    {},
    { quantity: 'torque' },
    { quantity: 'length' },
    { technician: 'Technician 3' },
  ])('are those of the attempts, in their order, with fewer names: %j', async (filter) => {
    const [whole, narrow] = await asked((history) => [history.attemptsOf(filter), history.processOf(filter)]);
    expect(narrow.length).toBeGreaterThan(0);
    expect(narrow).toHaveLength(whole.length);
    for (const [i, row] of narrow.entries()) expect(whole[i]).toMatchObject(row);
  });

  it('have the UTC day of their moment, before and after every midnight', async () => {
    const copy = join(folder, 'midnights.db');
    await copied(copy, 'UPDATE attempts SET atMs = 86400000 * (19000 + seq / 2) - seq % 2');
    const [whole, narrow] = await asked((history) => [history.attemptsOf({}), history.processOf({})], copy);
    expect(new Set(narrow.map(({ day }) => day)).size).toBeGreaterThan(100);
    expect(narrow.map(({ day }) => day)).toEqual(whole.map(({ at }) => at.slice(0, 10)));
  });

  it('lead to the same figures, however they are told apart', async () => {
    const [whole, narrow] = await asked((history) => [history.attemptsOf({}), history.processOf({})]);
    const figures = (rows: readonly ProcessRow[]) =>
      GROUPINGS.map((by) =>
        processGroups(rows, by).map(({ process, product, ...group }) => ({
          ...group,
          process: { ...process, rows: process.rows.length },
          product: { ...product, rows: product.rows.length },
        })),
      );
    expect(figures(narrow)).toEqual(figures(whole satisfies readonly AttemptRow[]));
  });
});

describe('a history that a foreign hand changed', () => {
  /** The table again without STRICT, so that it takes anything. */
  const LOOSE = `CREATE TABLE loose AS SELECT * FROM attempts; DROP TABLE attempts;
    ALTER TABLE loose RENAME TO attempts; CREATE INDEX attempts_by_part ON attempts (part, atMs)`;

  it.each([
    ['value', `'27.5 N·m'`, 'is no number'],
    ['atMs', `'today'`, 'is no number'],
    ['flags', `x'01'`, 'is no number'],
    ['cylinder', 'NULL', 'is no number'],
    ['result', '7', 'stands for nothing'],
    ['tool', '999999', 'is missing'],
    ['person', `'nobody'`, 'is no number'],
  ])('is an error and no answer: %s of %s %s', async (column, wrong, message) => {
    const copy = join(folder, `${column}.db`);
    await copied(
      copy,
      `${LOOSE}; UPDATE attempts SET ${column} = ${wrong} WHERE seq = (SELECT max(seq) FROM attempts)`,
    );
    await asked((history) => {
      expect(() => history.processOf({})).toThrow(message);
      expect(() => history.attemptsOf({})).toThrow(message);
      expect(history.attemptsOf({ to: '2021-11-25' }).length).toBeGreaterThan(0);
    }, copy);
  });
});
