/** Whoever can write to the database of a station, with its rules taken out, and lets the station go on. */
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { verify } from '../../src/cli/evidence/verify.ts';
import { papersAgain } from '../../src/cli/station/jobs.ts';
import { check } from '../../src/cli/station/log-check.ts';
import { said } from '../cli/answers.ts';
import { auditStation } from '../cli/audit/audit-station.ts';
import { withoutRules, withPlain } from '../db/plain.ts';

const station = auditStation();
const changed = (sql: string) => {
  const db = withoutRules(withPlain(new Sqlite(join(station.data, 'station.db'))));
  const { changes } = db.prepare(sql).run();
  db.close();
  expect(changes).toBeGreaterThan(0);
};
const checked = async () => {
  const { value, text } = await said(() => check([], station.scope()));
  return { value, text: text.replaceAll(/\s+/g, ' ') };
};

describe('"log check" names', () => {
  it.each<[string, string, RegExp]>([
    [
      'an entry that says something else',
      `UPDATE entries SET body = packed(replace(plain(body, salt), '"peakNm":27', '"peakNm":25')) WHERE seq = (
         SELECT seq FROM entries WHERE plain(body, salt) LIKE '%"peakNm":27%' LIMIT 1)`,
      /DIVERGED at entry \d+/,
    ],
    ['an entry that is gone', 'DELETE FROM entries WHERE seq = 9', /DIVERGED at entry 9/],
    [
      'two entries of one job exchanged',
      'UPDATE entries SET n = -n WHERE n IN (3, 4)',
      /DIVERGED at entry \d+/,
    ],
    [
      'a node of the tree',
      'UPDATE subtrees SET hash = zeroblob(32) WHERE place = 31',
      /DIVERGED at entry \d+/,
    ],
    [
      'a plate that is not the one of its entry',
      "UPDATE disclosures SET text = 'EXAMPLE 9' WHERE kind = 'plate'",
      /DIVERGED at entry \d+/,
    ],
    ['a plate that is gone', "DELETE FROM disclosures WHERE kind = 'plate'", /\(plate\) is MISSING/],
  ])('%s', async (_what, sql, why) => {
    changed(sql);
    const { value, text } = await checked();
    expect(text).toMatch(why);
    expect(value).toBe(1);
  });
});

it('a look-up table that calls an open job complete reaches no record', async () => {
  changed("UPDATE jobs SET state = 'complete' WHERE job = 'J-3'");
  await said(() => papersAgain('J-3', station.scope()));
  const { value, text } = await said(() =>
    verify(join(station.data, 'J-3.record.json'), { trust: join(station.data, 'trusted-keys.json') }),
  );
  expect(text).toContain('Authentic, but NOT complete');
  expect(value).toBe(1);
});
