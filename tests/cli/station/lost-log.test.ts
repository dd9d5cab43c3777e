/** A station whose log is gone, and what must not come of it: a new log in its name. */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { describe, expect, it, vi } from 'vitest';
import { openStationLog } from '../../../db/log.ts';
import { job } from '../../../src/cli/bench/job.ts';
import { backUp } from '../../../src/cli/station/backup.ts';
import { stationHealth } from '../../../src/cli/station/health/station.ts';
import { listJobs } from '../../../src/cli/station/jobs.ts';
import { listKeys, revokeKey } from '../../../src/cli/station/keys.ts';
import { check } from '../../../src/cli/station/log-check.ts';
import { openStation, openStationFolder, recordStation } from '../../../src/cli/station/station.ts';
import { readTrust } from '../../../src/cli/station/trust-file.ts';
import { publicJwk } from '../../../src/evidence/jwk.ts';
import { generate } from '../../bench/history/generate.ts';
import { kidOf, stranger } from '../../evidence/sample-job.ts';
import { problemOf, said, slowly } from '../answers.ts';
import { auditStation } from '../audit/audit-station.ts';
import { exampleJson, folder } from '../program.ts';

const stamp = () => ({ at: '2026-09-04T09:30:00.000Z', monoUs: 1 });
const station = auditStation();
const log = () => join(station.data, 'station.db');

describe('a station whose log is gone', () => {
  it.each(['missing', 'empty'])('gets no new log or key, and its trust list stays (%s)', async (how) => {
    rmSync(log());
    if (how === 'empty') writeFileSync(log(), '');
    const before = readdirSync(station.data, { recursive: true });
    const trust = readFileSync(join(station.data, 'trusted-keys.json'));
    const work = [
      () => openStation('Example bay', station.data, stamp),
      () => listJobs(station.scope()),
      () => listKeys(station.scope()),
      () => check([], station.scope()),
      () => backUp(join(folder(), 'b.db'), station.scope()),
    ];
    for (const one of work)
      expect(await problemOf(one)).toMatchObject({
        code: 'log-missing',
        where: log(),
        message: `the log of this station is ${how} (keys, a trust list are still here)`,
        next: expect.stringMatching(/restore.*recover.*another folder/),
      });
    expect(readdirSync(station.data, { recursive: true })).toEqual(before);
    expect(readFileSync(join(station.data, 'trusted-keys.json'))).toEqual(trust);
    expect((await stationHealth(station.data)).findings).toEqual([
      expect.objectContaining({
        name: 'log',
        state: 'bad',
        text: expect.stringContaining('the log of this station is'),
      }),
    ]);
  });

  it.each<[string, string, boolean]>([
    ['keys', 'keys/station.x.pem', true],
    ['a trust list', 'trusted-keys.json', true],
    ['certificates', 'certificates/some.json', true],
    ['Bluetooth bonds', 'bluetooth-bonds.json', true],
    ["the log's newest entries", 'station.db-wal', true],
    ['a log that was set aside', 'station.db.before-20260301T000000', true],
    ['orders', 'orders/J-1.json', false],
  ])('is told by %s alone', async (words, file, isSign) => {
    const data = join(folder(), 'data');
    mkdirSync(join(data, file, '..'), { recursive: true });
    writeFileSync(join(data, file), 'x');
    const work = () => openStation('Example bay', data, stamp).then((open) => open.log.close());
    if (!isSign) return void (await expect(work()).resolves.toBeUndefined());
    expect(await problemOf(work)).toMatchObject({
      code: 'log-missing',
      message: expect.stringContaining(words),
    });
    expect(existsSync(join(data, 'station.db'))).toBe(false);
  });

  it('is told also by a log that was begun anew and holds nothing; keys alone are left by a beginning that was cut off', async () => {
    const data = join(folder(), 'data');
    mkdirSync(join(data, 'keys'), { recursive: true });
    (await openStationLog(join(data, 'station.db'))).close();
    writeFileSync(join(data, 'keys', 'station.x.pem'), 'x');
    (await openStation('Example bay', data, stamp)).log.close();
    rmSync(join(data, 'station.db'));
    (await openStationLog(join(data, 'station.db'))).close();
    expect(await problemOf(() => openStation('Example bay', data, stamp))).toMatchObject({
      code: 'log-missing',
    });
    expect(await problemOf(() => listKeys({ station: 'none.json', data }))).toMatchObject({
      code: 'log-missing',
    });
  });

  it('a key beside a log that does not name it is worth a note', async () => {
    const kid = kidOf(stranger);
    writeFileSync(join(station.data, 'keys', `station.${kid}.pem`), 'x');
    expect((await stationHealth(station.data)).findings.at(-1)).toMatchObject({
      state: 'warning',
      text: expect.stringContaining(kid),
    });
  });
});

it('a damaged beginning of the log is told as damage, whatever SQLite takes it for', async () => {
  const whole = readFileSync(log());
  for (const [from, to] of [
    [0, 4096],
    [0, 100],
    [68, 72],
  ] as const) {
    const bytes = Buffer.from(whole);
    bytes.fill(0x5a, from, to);
    writeFileSync(log(), bytes);
    for (const work of [
      () => listJobs(station.scope()),
      () => check([], station.scope()),
      () => backUp(join(folder(), 'b.db'), station.scope()),
      () => openStation('Example bay', station.data, stamp),
    ])
      expect(await problemOf(work)).toMatchObject({
        code: 'log-damaged',
        where: log(),
        next: expect.stringMatching(/restore.*recover/),
      });
  }
});

describe('the trust list', () => {
  const others = async () => {
    const file = join(station.data, 'trusted-keys.json');
    const { keys } = await readTrust(file);
    const foreman = { ...publicJwk(stranger.privateKey), kid: kidOf(stranger), name: 'Foreman One' };
    return { file, keys, foreman };
  };
  const recorded = async () => {
    const stationFolder = await openStationFolder(station.data);
    await recordStation(stationFolder, [{ type: 'technicians-decided', technicians: 'sign' }], stamp());
    stationFolder.log.close();
  };

  it('keeps every key that it had, and every revocation, when it is written anew', async () => {
    const { file, keys, foreman } = await others();
    const revoked = { from: '2026-08-01T00:00:00.000Z', reason: 'compromised' as const };
    const list = [...keys.map((key) => ({ ...key, revoked })), { ...foreman, role: 'countersigner' }];
    writeFileSync(file, JSON.stringify({ keys: list }));
    await recorded();
    expect((await readTrust(file)).keys).toEqual(list);
    const kid = keys[0]?.kid ?? '';
    await said(() => revokeKey(kid, { ...station.scope(), as: 'lost', because: 'test' }));
    expect((await readTrust(file)).keys[0]?.revoked?.reason).toBe('lost');
  });

  it('that is damaged is kept beside the one that is made again from the log, and told', async () => {
    const { file } = await others();
    writeFileSync(file, '{"keys": [');
    const told = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    try {
      await recorded();
      expect(String(told.mock.calls[0]?.[0])).toContain(`kept as ${file}.damaged`);
    } finally {
      told.mockRestore();
    }
    expect(readFileSync(`${file}.damaged`, 'utf8')).toBe('{"keys": [');
    expect((await readTrust(file)).keys.map(({ role }) => role)).toEqual(['station']);
  });
});

it('the file of the station’s key is missing: where it comes from is said, not to make another', async () => {
  rmSync(join(station.data, 'keys'), { recursive: true });
  const missing = {
    message: expect.stringContaining('the file of the station key is missing'),
    next: expect.stringMatching(/^Put it back from your copy/),
  };
  expect(await problemOf(() => openStation('Example bay', station.data, stamp))).toMatchObject(missing);
  expect((await stationHealth(station.data)).findings[1]).toMatchObject({ state: 'bad', next: missing.next });
});

it('a job is not opened in the log where a tool was not adopted', async () => {
  const dir = folder();
  const file = join(dir, 'station.json');
  const order = join(dir, 'order.json');
  const example = exampleJson('station.json');
  const tools = example.tools.map(({ serial: _, ...tool }: { serial?: string }) => ({
    ...tool,
    driver: { use: 'imds' },
  }));
  writeFileSync(file, JSON.stringify({ ...example, data: 'data', tools }));
  writeFileSync(order, JSON.stringify(exampleJson('order-8.json')));
  const work = () => job({ order, station: file, plain: true });
  expect(await problemOf(work)).toMatchObject({ code: 'tool-not-adopted' });
  const { log: opened } = await openStationFolder(join(dir, 'data'));
  expect(opened.streams()).toEqual([]);
  opened.close();
});

it('a large log says how far it is while its jobs are listed anew and read for the history', async () => {
  const data = folder();
  await generate(join(data, 'station.db'), 25, () => {});
  const db = new Sqlite(join(data, 'station.db'));
  db.exec('UPDATE projection SET version = 0');
  db.close();
  const { isTTY } = process.stderr;
  let shown = '';
  const spy = vi.spyOn(process.stderr, 'write').mockImplementation((chunk) => {
    shown += String(chunk);
    return true;
  });
  try {
    process.stderr.isTTY = true;
    slowly();
    const stationFolder = await openStationFolder(data);
    stationFolder.log.history.technicians();
    stationFolder.log.close();
  } finally {
    process.stderr.isTTY = isTTY;
    spy.mockRestore();
    vi.mocked(performance.now).mockRestore();
  }
  expect(shown).toMatch(/\] 25 of 25 jobs listed anew, 0 s left\r\u001b\[K/);
  expect(shown).toMatch(/\] 25 of 25 jobs read for the history, 0 s left\r\u001b\[K$/);
});
