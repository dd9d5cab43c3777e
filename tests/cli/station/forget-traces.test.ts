/** What is left of a text after forgetting, and who is told so. */
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openStationLog } from '../../../db/log.ts';
import { backUp } from '../../../src/cli/station/backup.ts';
import { forget } from '../../../src/cli/station/forget.ts';
import { papersAgain } from '../../../src/cli/station/jobs.ts';
import { check } from '../../../src/cli/station/log-check.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation, CAR, VAN } from '../audit/audit-station.ts';

const station = auditStation();
const at = (name: string) => join(station.data, name);
const go = (options: Omit<Parameters<typeof forget>[0], 'station' | 'data'>) =>
  said(() => forget({ ...station.scope(), yes: true, ...options }));
const held = { althoughHeld: true, by: 'Owner One', because: 'asked for it' } as const;
const bytes = () =>
  ['station.db', 'station.db-wal', 'station.db-shm']
    .filter((name) => existsSync(at(name)))
    .map((name) => readFileSync(at(name)).toString('latin1'))
    .join('\n');
const stamp = { at: '2026-12-01T08:00:00.000Z', monoUs: 0 };
const checked = () => said(() => check([], station.scope()));

describe('files that still hold it', () => {
  it('are named: records by what they disclose, tables, papers, backups, lists; and not those of others', async () => {
    mkdirSync(at('backups'));
    await said(() => backUp(at('backups/monday.copy'), station.scope()));
    for (const job of ['J-1', 'J-2']) await said(() => papersAgain(job, station.scope()));
    writeFileSync(at('list.txt'), `call about ${CAR.plate.toLowerCase()} back`);
    writeFileSync(at('other.txt'), `call about ${CAR.plate}1 back`);
    const { text } = await go({ plate: CAR.plate });
    for (const file of ['J-2.csv', 'J-2.pdf', 'J-2.record.json', 'backups/monday.copy', 'list.txt'])
      expect(text).toContain(`  ${file}\n`);
    for (const file of ['J-1.', 'other.txt', 'station.db']) expect(text).not.toContain(`  ${file}`);
    // And again by whoever asks a second time.
    const again = await said(() =>
      problemOf(() => forget({ ...station.scope(), plate: CAR.plate, yes: true })),
    );
    expect(again.value.code).toBe('nothing-matches');
    for (const file of ['J-2.pdf', 'backups/monday.copy']) expect(again.text).toContain(`  ${file}\n`);
    expect(again.text).not.toContain('J-1.');
  });

  it('are named in a package, whose disclosures are in base64url', async () => {
    const line = Buffer.from(JSON.stringify(['A'.repeat(22), 'value', CAR.plate])).toString('base64url');
    writeFileSync(at('entries.json'), `{"disclosures":["${line}"]}`);
    expect((await go({ plate: CAR.plate })).text).toContain('  entries.json\n');
  });
});

describe('the pages of the log', () => {
  it('may keep it while another program reads them: the same command finishes it later', async () => {
    const reader = new Sqlite(at('station.db'));
    reader.exec('BEGIN; SELECT count(*) FROM entries');
    const first = await go({ plate: CAR.plate });
    expect(first.value).toBe(1);
    expect(first.text).toContain('NOT finished');
    expect(reader.prepare('SELECT count(*) FROM disclosures WHERE text = ?').pluck().get(CAR.plate)).toBe(1);
    reader.exec('COMMIT');
    reader.close();
    expect((await problemOf(() => go({ plate: CAR.plate }))).code).toBe('nothing-matches');
    expect(bytes()).not.toContain(CAR.plate);
    expect((await checked()).value).toBe(0);
  });

  it('do not keep what tables for look-up had before they were made anew', async () => {
    const log = await openStationLog(at('station.db'));
    log.history.bringUpToDate();
    log.rebuildProjections();
    log.history.bringUpToDate();
    log.close();
    await go({ person: 'Technician Two' });
    expect(bytes()).not.toContain('Technician Two');
  });
});

describe('a job that is open in another program', () => {
  it('is held; with an answer for it the job goes on, and its log holds', async () => {
    const other = await openStationLog(at('station.db'));
    other.entries('job:J-4');
    expect((await problemOf(() => go({ fleet: VAN.fleet }))).code).toBe('forget-held');
    await go({ fleet: VAN.fleet, ...held });
    other.append(
      'job:J-4',
      [{ by: 'technician', event: { type: 'job-closed', complete: false, open: [] } }],
      stamp,
    );
    other.close();
    expect((await checked()).value).toBe(0);
    const log = await openStationLog(at('station.db'));
    const [opened] = log.entries('job:J-4');
    log.close();
    expect(opened?.event).toMatchObject({ type: 'job-opened', order: { vehicle: { fleet: '\uE000' } } });
  });
});

describe('what is meant by a text', () => {
  it.each([
    'EXAMPLE 8',
    'example8',
    'EXAMPLE-8',
    'Example–8',
    'EXAMPLE\u00A08',
    'E X A M P L E 8',
    'ＥＸＡＭＰＬＥ８',
  ])('is the same plate: %s', async (plate) => {
    expect((await go({ plate })).text).toContain('Deleted: plate (1).');
    expect(bytes()).not.toContain(CAR.plate);
  });

  it.each(['EXAMPLE', 'XAMPLE 8', 'EXAMPLE 88'])('is no other plate: %s', async (plate) => {
    expect((await problemOf(() => go({ plate }))).code).toBe('nothing-matches');
  });

  it('is a free text that contains it, which is shown before it goes', async () => {
    const log = await openStationLog(at('station.db'));
    const event = {
      type: 'job-voided',
      by: 'Owner One',
      reason: `brought by TECHNICIAN  two in ${CAR.plate}`,
    } as const;
    log.append('job:J-4', [{ by: 'Owner One', event }], stamp);
    log.close();
    const { text } = await go({ person: 'Technician Two' });
    expect(text).toContain('These free texts contain it and are deleted whole:');
    expect(text).toContain('  J-4, note: brought by TECHNICIAN two in EXAMPLE 8');
    expect(bytes()).not.toContain('TECHNICIAN  two');
    expect(bytes()).toContain('Owner One');
  });

  it('is not a figure or a day in what is signed', async () => {
    const log = await openStationLog(at('station.db'));
    const event = { type: 'job-voided', by: '12', reason: 'number 12 it was' } as const;
    log.append('job:J-4', [{ by: '12', event }], stamp);
    log.close();
    const { text } = await go({ person: '12' });
    expect(text).toContain('Deleted: person (2), note (1).');
    expect(text).not.toContain('It also stands in');
  });

  it('may not come back with the reason, or with the name of who decides', async () => {
    for (const again of [{ because: 'technician two asked' }, { by: 'Technician Two' }])
      expect(await problemOf(() => go({ person: 'Technician Two', ...again }))).toMatchObject({
        code: 'option-not-valid',
        message: expect.stringContaining('contains the text that is to be forgotten'),
      });
    expect(bytes()).toContain('Technician Two');
  });
});

describe('a text that was deleted by hand', () => {
  const change = (sql: string, ...values: readonly (string | number | Buffer)[]) => {
    const db = new Sqlite(at('station.db'));
    const { changes } = db.prepare(sql).run(...values);
    db.close();
    expect(changes).toBeGreaterThan(0);
  };

  it('is named by log check, which tells it from one that was forgotten', async () => {
    await go({ plate: CAR.plate });
    expect((await checked()).text).toContain(
      'Every personal text is there, or was deleted with "plugmark forget".',
    );
    change('DELETE FROM disclosures WHERE text = ?', CAR.vin);
    const { value, text } = await checked();
    expect(value).toBe(1);
    expect(text).toMatch(
      /entry \d+: a text \(vin\) is MISSING\. It was deleted, and not with "plugmark forget"\./,
    );
    expect(text).not.toContain('(plate)');
    expect(
      JSON.parse((await said(() => check([], { ...station.scope(), json: true }))).text).texts,
    ).toMatchObject([{ fault: 'missing', kind: 'vin' }]);
  });

  it('keeps a record from being sealed that would say something untrue of the technician', async () => {
    change('DELETE FROM disclosures WHERE text = ?', 'Technician Two');
    const problem = await problemOf(() => said(() => papersAgain('J-2', station.scope())));
    expect(problem).toMatchObject({
      code: 'log-damaged',
      message: expect.stringContaining('the technician'),
    });
    expect(existsSync(at('J-2.record.json'))).toBe(false);
    expect((await said(() => papersAgain('J-1', station.scope()))).value).toBe(0);
  });

  it('is named where it was put back, and where it lies with an entry that has none', async () => {
    copyFileSync(at('station.db'), at('before.db'));
    await go({ plate: CAR.plate });
    change("INSERT INTO disclosures VALUES (65536 * 1000, 'note', randomblob(16), ?)", 'hidden');
    expect((await checked()).text).toContain('entry 1000: a text that does NOT belong to this entry.');
    const db = new Sqlite(at('station.db'));
    db.prepare('DELETE FROM disclosures WHERE text = ?').run('hidden');
    db.prepare('ATTACH ? AS old').run(at('before.db'));
    db.prepare('INSERT INTO disclosures SELECT * FROM old.disclosures WHERE text = ?').run(CAR.plate);
    db.close();
    const { value, text } = await checked();
    expect(value).toBe(1);
    expect(text).toMatch(/entry \d+: a text \(plate\) that was forgotten is BACK\./);
  });
});
