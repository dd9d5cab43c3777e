/**
 * Whoever holds the disk of a station, with its database and all files, and not its passphrase: he turns the log back or
 * writes it anew, and waits for the station to sign it.
 */
import { cpSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { placeOf } from '../../db/tree.ts';
import { job } from '../../src/cli/bench/job.ts';
import { makePackage } from '../../src/cli/evidence/package.ts';
import { verify } from '../../src/cli/evidence/verify.ts';
import { papersAgain } from '../../src/cli/station/jobs.ts';
import { checkpoint, proveConsistency } from '../../src/cli/station/log.ts';
import { check, stateLoss } from '../../src/cli/station/log-check.ts';
import { rotateKey } from '../../src/cli/station/rotate.ts';
import { completedBy, leafHash } from '../../src/evidence/merkle.ts';
import { workIn } from '../audit/shop.ts';
import { problemOf, said } from '../cli/answers.ts';
import { auditStation, CAR, scopeOf } from '../cli/audit/audit-station.ts';
import { exampleJson, folder } from '../cli/program.ts';
import { withoutRules, withPlain } from '../db/plain.ts';

const station = auditStation();
const at = (...names: string[]) => join(station.data, ...names);
const sign = () => said(() => checkpoint(station.scope()));
const seal = (job: string) => said(() => papersAgain(job, station.scope()));
const workOn = (data: string, job: string) =>
  workIn(data, [{ job, on: '2026-07-01', peaks: [27], vehicle: CAR }]);
const work = (job: string) => workOn(station.data, job);

/** Each test of a description gets its copy of a station on which this was done, once. */
function onStation(prepare: (data: string) => Promise<unknown>): void {
  const prepared = auditStation(prepare);
  beforeEach(() => {
    station.data = prepared.data;
  });
}

/** The database as it is now, to be put back later. */
function copyOfLog(data: string): () => void {
  const log = join(data, 'station.db');
  const copy = readFileSync(log);
  return () => {
    for (const name of ['-wal', '-shm']) rmSync(`${log}${name}`, { force: true });
    writeFileSync(log, copy);
  };
}

/** Job J-9 is worked and sealed, and the log of before is put back. */
async function turnedBack(data: string): Promise<void> {
  const back = copyOfLog(data);
  await workOn(data, 'J-9');
  await said(() => papersAgain('J-9', scopeOf(data)));
  back();
}

/** One text of one entry written anew, and every hash above it: no entry is at fault afterwards. */
function rewritten(data: string, from: string, to: string): void {
  const db = withoutRules(withPlain(new Sqlite(join(data, 'station.db'))));
  const rows = z
    .array(z.object({ seq: z.int(), text: z.string(), salt: z.instanceof(Uint8Array) }))
    .parse(db.prepare('SELECT seq, plain(body, salt) AS text, salt FROM entries ORDER BY seq').all());
  const hit = rows.find(({ text }) => text.includes(from));
  if (hit === undefined) throw new Error(`no entry has ${from}`);
  const changed = hit.text.replace(from, to);
  db.prepare('UPDATE entries SET body = packed(?), hash = ? WHERE seq = ?').run(
    changed,
    leafHash(Buffer.from(changed)),
    hit.seq,
  );
  const levels: Buffer[][] = [[]];
  const node = (level: number, index: number) => levels[level]?.[index] ?? Buffer.of();
  const hashes = z
    .array(z.instanceof(Uint8Array))
    .parse(db.prepare('SELECT hash FROM entries ORDER BY seq').pluck().all());
  for (const [i, hash] of hashes.entries()) {
    levels[0]?.push(Buffer.from(hash));
    for (const made of completedBy({ node }, i, hash)) {
      levels[made.level] ??= [];
      levels[made.level]?.push(Buffer.from(made.hash));
      if (made.level >= 5)
        db.prepare('UPDATE subtrees SET hash = ? WHERE place = ?').run(
          made.hash,
          placeOf(made.level, made.index),
        );
    }
  }
  db.close();
}

describe('an entry rewritten, with the tree built anew', () => {
  onStation(async (data) => {
    await said(() => papersAgain('J-1', scopeOf(data)));
    rewritten(data, '"platform":"test"', '"platform":"desk"');
  });
  const signings: readonly (readonly [string, () => unknown])[] = [
    ['a checkpoint', () => checkpoint(station.scope())],
    ['a record', () => papersAgain('J-2', station.scope())],
    ['a package', () => makePackage({ ...station.scope(), out: join(folder(), 'p'), papers: false })],
    ['a change of the key', () => rotateKey(station.scope())],
  ];

  it.each(signings)('is not signed: %s', async (_what, work) => {
    expect(await problemOf(() => said(work as () => Promise<number>))).toMatchObject({
      code: 'log-turned',
      message: expect.stringContaining('this one has other entries'),
    });
  });

  it.each([
    ['the checkpoints in the database are gone', () => emptyCheckpoints()],
    ['the file with the last checkpoint is gone', () => rmSync(at('last.checkpoint'))],
    [
      'both are gone, and the newest record is left',
      () => {
        emptyCheckpoints();
        rmSync(at('last.checkpoint'));
      },
    ],
  ])('is not signed where %s', async (_what, hide) => {
    hide();
    expect((await problemOf(() => said(() => checkpoint(station.scope())))).code).toBe('log-turned');
  });

  it('shows in "log check", which names the record that tells', async () => {
    const { value, text } = await said(() => check([], station.scope()));
    expect(value).toBe(1);
    expect(text).toMatch(/J-1\.record\.json: Checkpoint of \d+ entries: DIVERGED/);
  });
});

function emptyCheckpoints(): void {
  const db = withoutRules(new Sqlite(at('station.db')));
  db.exec('DELETE FROM checkpoints');
  db.close();
}

describe('a log that was turned back to an old copy', () => {
  onStation(turnedBack);

  it('begins no job whose record nobody could sign: refused before a tool is looked for', async () => {
    const [file, order] = [join(folder(), 'station.json'), join(folder(), 'order.json')];
    const tools = exampleJson('station.json').tools.map((tool: object) => ({
      ...tool,
      driver: { use: 'imds' },
    }));
    writeFileSync(file, JSON.stringify({ ...exampleJson('station.json'), data: station.data, tools }));
    writeFileSync(order, JSON.stringify(exampleJson('order-8.json')));
    expect(await problemOf(() => job({ order, station: file, plain: true }))).toMatchObject({
      code: 'log-turned',
    });
  });

  it('is not signed, and "log check" says what is missing', async () => {
    expect(await problemOf(() => said(() => checkpoint(station.scope())))).toMatchObject({
      code: 'log-turned',
      message: expect.stringContaining('its end was cut off, or an old copy was put back'),
    });
    const { value, text } = await said(() => check([], station.scope()));
    expect(value).toBe(1);
    expect(text).toMatch(
      /last\.checkpoint: Checkpoint of \d+ entries: DIVERGED. Entries \d+ to \d+ are missing/,
    );
  });

  it('is not signed once it grew on differently', async () => {
    await work('J-7');
    await work('J-8');
    expect((await problemOf(() => said(() => papersAgain('J-8', station.scope())))).code).toBe('log-turned');
  });

  it('is told by a last checkpoint that was put back with it, where a newer record lies beside', async () => {
    rmSync(at('last.checkpoint'));
    utimesSync(at('J-9.record.json'), new Date(), new Date(Date.now() + 60_000));
    expect((await problemOf(() => said(() => checkpoint(station.scope())))).code).toBe('log-turned');
  });

  it('is told by the newest record of its own, however many of others and of nobody are newer', async () => {
    rmSync(at('last.checkpoint'));
    // As whoever verifies a record of a colleague puts it there.
    const other = join(folder(), 'other');
    await workOn(other, 'K-1');
    await said(() => papersAgain('K-1', scopeOf(other)));
    cpSync(join(other, 'K-1.record.json'), at('K-1.record.json'));
    writeFileSync(at('K-2.record.json'), 'no record at all');
    for (const name of ['K-1', 'K-2'])
      utimesSync(at(`${name}.record.json`), new Date(), new Date(Date.now() + 120_000));
    utimesSync(at('J-9.record.json'), new Date(), new Date(Date.now() + 60_000));
    expect((await problemOf(() => said(() => checkpoint(station.scope())))).code).toBe('log-turned');
  });

  it('goes on only where the loss is stated in the log, and every later record says so', async () => {
    await said(() => stateLoss({ ...station.scope(), because: 'the disk broke' }));
    await work('J-8');
    await seal('J-8');
    const { value, text } = await said(() =>
      verify(at('J-8.record.json'), { trust: at('trusted-keys.json') }),
    );
    expect(value).toBe(1); // One pull of four cylinders.
    expect(text.split('\n')[0]).toContain('THE LOG LOST ENTRIES');
    const checked = await said(() => check([], station.scope()));
    expect(checked.text).toContain('LOST: the log states that it went on without entries');
    expect(checked.value).toBe(0);
    // The old record cannot be true together with those of the new course.
    const folderOf = await said(() => verify(station.data, { trust: at('trusted-keys.json') }));
    expect(folderOf.value).toBe(1);
    expect(folderOf.text).toContain('TWO HISTORIES');
  });

  it('may not state a loss that there is none of', async () => {
    await said(() => stateLoss({ ...station.scope(), because: 'the disk broke' }));
    expect((await problemOf(() => stateLoss({ ...station.scope(), because: 'again' }))).code).toBe(
      'nothing-lost',
    );
  });
});

describe('records of entries that the log lost', () => {
  onStation(turnedBack);

  it('are counted where the loss is stated, with what to do before the key is changed', async () => {
    const { text } = await said(() => stateLoss({ ...station.scope(), because: 'the disk broke' }));
    expect(text.replaceAll(/\s+/g, ' ')).toContain(
      '1 record here is of the lost entries, and good as long as the key is not changed',
    );
    expect(text).toContain('plugmark time-stamp RECORD');
  });

  it('are counted before the key is changed, which then changes nothing', async () => {
    await said(() => stateLoss({ ...station.scope(), because: 'the disk broke' }));
    const keys = readdirSync(at('keys'));
    expect(await problemOf(() => said(() => rotateKey(station.scope())))).toMatchObject({
      code: 'records-left-behind',
      message: expect.stringContaining('J-9.record.json'),
      next: expect.stringContaining('--even-so'),
    });
    expect(readdirSync(at('keys'))).toEqual(keys);
    await said(() => rotateKey({ ...station.scope(), evenSo: true }));
    expect((await said(() => verify(at('J-9.record.json'), { trust: at('trusted-keys.json') }))).value).toBe(
      3,
    );
  });
});

describe('an old copy of the log alone, from before a change of the key', () => {
  it('is not signed, and what each refusal says to do leads out', async () => {
    const back = copyOfLog(station.data);
    await said(() => rotateKey(station.scope()));
    await work('J-9');
    await seal('J-9');
    back();
    expect(await problemOf(sign)).toMatchObject({
      code: 'log-turned',
      next: expect.stringContaining('plugmark log lost'),
    });
    const { text } = await said(() =>
      stateLoss({ ...station.scope(), because: 'only an old copy was left' }),
    );
    expect(text.replaceAll(/\s+/g, ' ')).toContain('Make a new one: plugmark keys rotate --lost');
    expect(await problemOf(sign)).toMatchObject({
      code: 'key-missing',
      next: expect.stringContaining('plugmark keys rotate --lost'),
    });
    const lost = { ...station.scope(), lost: true, because: 'only an old copy was left' } as const;
    // J-9 was signed by a key that this log never had.
    const refused = await problemOf(() => rotateKey(lost));
    expect(refused).toMatchObject({
      code: 'records-left-behind',
      next: expect.stringContaining('--even-so'),
    });
    await said(() => rotateKey({ ...lost, evenSo: true }));
    await sign();
    await work('J-8');
    await seal('J-8');
    const { text: verdict } = await said(() =>
      verify(at('J-8.record.json'), { trust: at('trusted-keys.json') }),
    );
    expect(verdict).toContain('THE LOG LOST ENTRIES');
    expect(verdict).not.toContain('NOT trusted');
  });
});

describe('the whole folder as it was before a change of the key, keys and last checkpoint with it', () => {
  it('is not signed where a record lies beside that the later key signed, and is led out as any other', async () => {
    const before = join(folder(), 'before');
    await sign();
    cpSync(station.data, before, { recursive: true });
    await said(() => rotateKey(station.scope()));
    await work('J-9');
    await seal('J-9');
    const record = readFileSync(at('J-9.record.json'));
    rmSync(station.data, { recursive: true });
    cpSync(before, station.data, { recursive: true });
    writeFileSync(at('J-9.record.json'), record);
    expect(await problemOf(sign)).toMatchObject({ code: 'log-turned' });
    expect((await said(() => check([], station.scope()))).value).toBe(1);
    await said(() => stateLoss({ ...station.scope(), because: 'only an old copy was left' }));
    await sign();
  });
});

it('a last checkpoint that somebody else wrote stops the station from signing', async () => {
  await sign();
  writeFileSync(at('last.checkpoint'), 'paid in full');
  expect((await problemOf(() => said(() => checkpoint(station.scope())))).code).toBe('checkpoint-form');
});

describe('a folder with two histories of one log', () => {
  let other = '';
  beforeEach(() => {
    other = join(folder(), 'other');
    cpSync(station.data, other, { recursive: true });
  });
  const collected = async (jobs: readonly [first: string, second: string]) => {
    const [first, second] = jobs;
    await workIn(station.data, [{ job: first, on: '2026-07-01', peaks: [27], vehicle: CAR }]);
    await workIn(other, [{ job: second, on: '2026-07-01', peaks: [28, 28], vehicle: CAR }]);
    const into = folder();
    await said(() => papersAgain(first, { ...station.scope(), out: join(into, 'a') }));
    await said(() => papersAgain(second, { station: 'none.json', data: other, out: join(into, 'b') }));
    return said(() => verify(into, { trust: at('trusted-keys.json') }));
  };

  it.each([
    ['of one job', ['J-9', 'J-9'] as const, 'job J-9 has two contents'],
    ['of two jobs', ['J-8', 'J-9'] as const, 'differs'],
  ])('%s names both files and ends with 1', async (_what, jobs, why) => {
    const { value, text } = await collected(jobs);
    expect(value).toBe(1);
    expect(text).toContain('TWO HISTORIES of one log');
    for (const part of [why, ...jobs.map((job, i) => join('ab'[i] ?? '', `${job}.record.json`))])
      expect(text.replaceAll(/\s+/g, ' ')).toContain(part);
  });

  it('of one and the same history says nothing of the kind', async () => {
    await seal('J-1');
    await work('J-9');
    await seal('J-9');
    const { value, text } = await said(() => verify(station.data, { trust: at('trusted-keys.json') }));
    expect(text).not.toContain('TWO HISTORIES');
    expect(value).toBe(0);
  });
});

it('a proof of consistency is what lies beside a record whose key has ended', async () => {
  await seal('J-1');
  await said(() => rotateKey(station.scope()));
  const { text } = await said(() => proveConsistency(at('J-1.record.json'), station.scope()));
  const { checkpoint: _now, ...proof } = JSON.parse(text);
  const { checkpoint: _then, ...beside } = JSON.parse(readFileSync(at('J-1.record.json.proof'), 'utf8'));
  expect(proof).toEqual(beside);
});
