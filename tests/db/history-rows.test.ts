import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Opening, openStationLog, type StationLogFile } from '../../db/log.ts';
import type { AttemptRow, ProcessRow } from '../../src/audit/attempt.ts';
import { GROUPINGS, processGroups } from '../../src/audit/capability.ts';
import type { AttemptFilter } from '../../src/audit/records.ts';
import { generate } from '../bench/history/generate.ts';

let folder: string;
let path: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'history-rows-'));
  path = join(folder, 'station.db');
  await generate(path, 30, () => {});
});
afterAll(() => rmSync(folder, { recursive: true }));

async function asked<T>(
  question: (history: StationLogFile['history']) => T,
  from = path,
  opening: Opening = {},
): Promise<T> {
  const log = await openStationLog(from, opening);
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
    ['value', `'27.5 N·m'`],
    ['atMs', `'today'`],
    ['flags', `x'01'`],
    ['cylinder', 'NULL'],
    ['result', '7'],
    ['tool', '999999'],
    ['person', `'nobody'`],
  ])('is made again from the log, and told once: %s of %s', async (column, wrong) => {
    const copy = join(folder, `${column}.db`);
    await copied(
      copy,
      `${LOOSE}; UPDATE attempts SET ${column} = ${wrong} WHERE seq = (SELECT max(seq) FROM attempts)`,
    );
    const [whole] = await asked((history) => [history.attemptsOf({})]);
    let told = 0;
    await asked(
      (history) => {
        expect(history.attemptsOf({})).toEqual(whole);
        expect(history.attemptsOf({})).toEqual(whole);
      },
      copy,
      { mended: () => told++ },
    );
    expect(told).toBe(1);
  });
});
