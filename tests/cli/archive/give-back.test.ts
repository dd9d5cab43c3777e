/** A station ships, forgets, loses its log and gets it back from the archive, as its people and the archive's do it. */
import { cpSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { openSqlite } from '../../../db/archive/sqlite.ts';
import { archiveStore } from '../../../db/archive/store.ts';
import { checkLog } from '../../../db/backup.ts';
import { ENTRIES_A_BUNDLE, entriesText, type ShippedEntry } from '../../../src/archive/bundle.ts';
import { tokenHash } from '../../../src/archive/enrolment.ts';
import { entriesKept } from '../../../src/archive/kept-log.ts';
import { logId } from '../../../src/archive/log-id.ts';
import type { ArchiveStore, TokenUse } from '../../../src/archive/store.ts';
import { joinArchive } from '../../../src/cli/archive/join.ts';
import { shipLog } from '../../../src/cli/archive/ship.ts';
import { takeLostKey } from '../../../src/cli/archive/take-key.ts';
import { restore } from '../../../src/cli/station/backup.ts';
import { forget } from '../../../src/cli/station/forget.ts';
import { witnessFindings } from '../../../src/cli/station/health/witnesses.ts';
import { papersAgain, voidJob } from '../../../src/cli/station/jobs.ts';
import { printVerifierKey } from '../../../src/cli/station/log.ts';
import { check } from '../../../src/cli/station/log-check.ts';
import { rotateKey } from '../../../src/cli/station/rotate.ts';
import { sendLog } from '../../../src/cli/station/send.ts';
import { readStationFile } from '../../../src/cli/station/station-file.ts';
import { archiveServer } from '../../../src/serve/archive.ts';
import { witnessKeys } from '../../serve/witness-keys.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation, CAR } from '../audit/audit-station.ts';
import { exampleJson, folder } from '../program.ts';

const NAME = 'archive.example';
const station = auditStation();
const scope = () => station.scope();
let archiveData = '';
let url = '';
let bundles: () => Promise<string>;
let give: (token: string, use: TokenUse) => Promise<void>;
let kept: () => Promise<readonly ShippedEntry[]>;
let keepAgain: (before: readonly ShippedEntry[]) => Promise<void>;
let log = '';
let outcomes: () => ReturnType<ArchiveStore['history']['judged']>;

beforeEach(async () => {
  archiveData = folder();
  const identity = { form: 'plugmark/archive-folder/1', name: NAME, kid: 'none' };
  writeFileSync(join(archiveData, 'archive.json'), JSON.stringify(identity));
  const store = archiveStore(await openSqlite(join(archiveData, 'archive.db')));
  const nowS = () => Math.floor(Date.now() / 1000);
  const server = await archiveServer(
    { name: NAME, store, keys: witnessKeys(NAME, 'e7'), nowS, heard: () => undefined },
    { tls: null, requestsAMinute: 600, patienceMs: 5000 },
  );
  url = await server.listen({ host: '127.0.0.1', port: 0 });
  onTestFinished(async () => {
    await server.close();
    await store.close();
  });
  give = async (token, use) => {
    await store.addToken(tokenHash(token), use, '2999-01-01T00:00:00.000Z');
    vi.stubEnv('PLUGMARK_ENROLMENT', token);
    onTestFinished(() => void vi.unstubAllEnvs());
  };
  await give('join', { use: 'enrol', tenant: 'north', origin: null });
  await said(() => joinArchive(url, scope()));
  await said(() => shipLog(scope()));
  log = (await store.logs())[0]?.id ?? '';
  outcomes = () => store.history.judged(log);
  kept = async () => {
    const all = [];
    for await (const bundle of store.bundles(log, 0)) all.push(entriesKept(bundle) ?? []);
    return all.flat();
  };
  keepAgain = async (before) => {
    for await (const bundle of store.bundles(log, 0)) {
      const first = bundle.number * ENTRIES_A_BUNDLE;
      const entries = (entriesKept(bundle) ?? []).map((entry, at) => before[first + at] ?? entry);
      const again = { ...bundle, text: entriesText(entries) };
      await store.change(log, () => ({ answer: 0, writes: { bundles: [again] } }));
    }
  };
  bundles = async () => {
    const texts = [];
    for await (const bundle of store.bundles(log, 0))
      for (const { disclosures } of entriesKept(bundle) ?? [])
        texts.push(...disclosures.map((one) => Buffer.from(one, 'base64url').toString('utf8')));
    return texts.join('\n');
  };
});

const lose = () => {
  for (const name of readdirSync(station.data))
    if (/^station\.db/.test(name)) rmSync(join(station.data, name));
};
const fetchBack = () => said(() => restore(undefined, { ...scope(), fromArchive: url }));

it('has its jobs judged by the archive behind the shipping, and nobody waits for that', async () => {
  await vi.waitFor(async () => expect(await outcomes()).toHaveLength(3), { timeout: 30_000 });
  expect((await outcomes()).map(({ stream, judged }) => `${stream} ${judged.as}`)).toEqual([
    'job:J-1 same',
    'job:J-2 same',
    'job:J-3 same',
  ]);
  const metrics = await (await fetch(`${url}/metrics`)).text();
  expect(metrics).toMatch(/plugmark_jobs_judged_total\{as="same"\} \d/);
  // A job that goes on is judged as it is then.
  await said(() => voidJob('J-2', { ...scope(), by: 'Foreman', because: 'wrong car' }));
  await said(() => shipLog(scope()));
  const voided = { as: 'same', pulls: 4, lacks: ['voided', 'closed-incomplete'] };
  await vi.waitFor(async () => expect((await outcomes())[1]?.judged).toEqual(voided), { timeout: 30_000 });
});

describe('a station that has lost its log', () => {
  it('gets it back whole, by a token for that log, once', async () => {
    const { entries } = await checkLog(join(station.data, 'station.db'));
    lose();
    await give('back', { use: 'restore', log });
    const { text, value } = await fetchBack();
    expect(value, text).toBe(0);
    expect(text).toContain(`Checked and restored from the archive at ${url}: ${entries} entries`);
    expect(text).toContain('What the station wrote after its last shipping is not in the archive.');
    expect((await said(() => check([], scope()))).text).toContain(
      `Checkpoint of ${entries} entries: nothing before it was removed or changed.`,
    );
    expect(await problemOf(fetchBack)).toMatchObject({ code: 'archive-refused' });
  });

  it('is not given a log by a token for joining, nor by one for a log that is not there', async () => {
    lose();
    await give('again', { use: 'enrol', tenant: 'north', origin: null });
    expect(await problemOf(fetchBack)).toMatchObject({ code: 'archive-refused' });
    await give('other', { use: 'restore', log: logId('nobody.example/log') });
    expect(await problemOf(fetchBack)).toMatchObject({ code: 'archive-refused' });
    expect(existsSync(join(station.data, 'station.db'))).toBe(false);
    expect(readdirSync(station.data).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('learns whose log it is where no key of the station is there any more', async () => {
    await give('back', { use: 'restore', log });
    const { text } = await said(() => restore(undefined, { ...scope(), data: folder(), fromArchive: url }));
    expect(text).toMatch(/It is the log of the station "[^"]+" \(plugmark\/log\/[^)]+\)\. Is it yours\?/);
  });

  it('takes no entry more than the archive announced, and no answer that breaks off', async () => {
    await give('back', { use: 'restore', log });
    const answer = await fetch(`${url}/return`, {
      method: 'POST',
      body: JSON.stringify({ token: 'back' }),
      headers: { 'content-type': 'application/json' },
    });
    const whole = gunzipSync(new Uint8Array(await answer.arrayBuffer())).toString('utf8');
    const more = gzipSync(`${whole}${whole.split('\n').slice(-3).join('\n')}`);
    const broken = gzipSync(whole).subarray(0, -40);
    lose();
    for (const [bytes, problem] of [
      [more, { code: 'archive-refused', message: expect.stringContaining('not the log that was signed') }],
      [broken, { code: 'archive-not-reached', next: expect.stringContaining('a new token') }],
    ] as const) {
      vi.spyOn(globalThis, 'fetch').mockImplementation(async (to) =>
        `${to}`.endsWith('/return')
          ? new Response(bytes)
          : new Response(JSON.stringify({ archive: NAME, form: 'plugmark/archive/1' })),
      );
      onTestFinished(() => void vi.restoreAllMocks());
      expect(await problemOf(fetchBack)).toMatchObject(problem);
      expect(existsSync(join(station.data, 'station.db'))).toBe(false);
    }
  });

  it('keeps what was written after the last shipping where the log is there still', async () => {
    await said(() => voidJob('J-2', { ...scope(), by: 'Foreman', because: 'wrong car' }));
    await give('back', { use: 'restore', log });
    expect(await problemOf(fetchBack)).toMatchObject({ code: 'restore-newer' });
  });
});

describe('a plate that the station forgets', () => {
  it('leaves the archive with the next shipping, and does not come back with the log', async () => {
    expect(await bundles()).toContain(CAR.plate);
    await said(() => forget({ ...scope(), plate: CAR.plate, yes: true }));
    expect(await bundles()).toContain(CAR.plate);
    await said(() => shipLog(scope()));
    expect(await bundles()).not.toContain(CAR.plate);
    expect(await bundles()).toContain(CAR.vin);
    lose();
    await give('back', { use: 'restore', log });
    expect((await fetchBack()).value).toBe(0);
    expect((await said(() => check([], scope()))).text).toContain(
      'Every personal text is there, or was deleted with "plugmark forget".',
    );
  });
});

it('a text that was forgotten does not come back from an archive that kept it all the same', async () => {
  const before = await kept();
  await said(() => forget({ ...scope(), plate: CAR.plate, yes: true }));
  await said(() => shipLog(scope()));
  await keepAgain(before);
  expect(await bundles()).toContain(CAR.plate);
  lose();
  await give('back', { use: 'restore', log });
  expect((await fetchBack()).value).toBe(0);
  expect((await said(() => check([], scope()))).text).toContain(
    'Every personal text is there, or was deleted with "plugmark forget".',
  );
  expect(readFileSync(join(station.data, 'station.db')).toString('latin1')).not.toContain(CAR.plate);
});

describe('a second station under the origin of another', () => {
  it('is refused with another key, and hears what to do; the first one ships on', async () => {
    const copy = join(folder(), 'copy');
    cpSync(station.data, copy, { recursive: true });
    rmSync(join(copy, 'archive-link.json'));
    const second = { ...scope(), data: copy };
    await said(() => rotateKey({ ...second, lost: true }));
    await give('second', { use: 'enrol', tenant: 'north', origin: null });
    expect(await problemOf(() => joinArchive(url, second))).toMatchObject({
      code: 'archive-refused',
      message: expect.stringContaining('a log of the same origin already, with another key'),
      next: expect.stringContaining('plugmark setup'),
    });
    expect(existsSync(join(copy, 'archive-link.json'))).toBe(false);
    await said(() => voidJob('J-2', { ...scope(), by: 'Foreman', because: 'wrong car' }));
    expect((await said(() => shipLog(scope()))).value).toBe(0);
  });
});

describe('a station whose key is lost', () => {
  it('ships again once the archive has taken its new key by hand; the lost one is not taken back', async () => {
    const lost = (await said(() => printVerifierKey(scope()))).text.trim();
    await said(() => rotateKey({ ...scope(), lost: true }));
    expect(await problemOf(() => shipLog(scope()))).toMatchObject({ code: 'archive-refused' });
    const vkey = (await said(() => printVerifierKey(scope()))).text.trim();
    const { text } = await said(() => takeLostKey({ data: archiveData, vkey }));
    expect(text).toContain('signs with this key from now on');
    expect(await problemOf(() => takeLostKey({ data: archiveData, vkey: lost }))).toMatchObject({
      code: 'key-retired',
    });
    expect((await said(() => shipLog(scope()))).value).toBe(0);
  });

  it('is helped by no key of a log that the archive does not have', async () => {
    const vkey = 'nobody.example/log+00000000+AAAA';
    expect(await problemOf(() => takeLostKey({ data: archiveData, vkey }))).toMatchObject({
      code: 'option-not-valid',
    });
  });
});

describe('what is sent behind a job', () => {
  const stationFile = () => {
    const path = join(station.data, 'bay.json');
    writeFileSync(path, JSON.stringify({ ...exampleJson('station.json'), data: '.' }));
    return path;
  };
  const sealed = () => said(() => papersAgain('J-2', scope()));
  const doctor = async () => witnessFindings(await readStationFile(stationFile()));

  it('goes to the archive that the station has joined, and doctor says how much of it is there', async () => {
    await said(() => voidJob('J-2', { ...scope(), by: 'Foreman', because: 'wrong car' }));
    await sealed();
    expect(await doctor()).toMatchObject([{ state: 'warning', name: 'archive' }]);
    const { text, value } = await said(() => sendLog({ station: stationFile() }));
    expect(value, text).toBe(0);
    expect(text).toContain(`${NAME} has all`);
    expect(await doctor()).toMatchObject([{ state: 'good', name: 'archive' }]);
  });

  it('is nobody where the station has joined none and names none', async () => {
    rmSync(join(station.data, 'archive-link.json'));
    const { text, value } = await said(() => sendLog({ station: stationFile() }));
    expect([value, text]).toEqual([0, expect.stringContaining('there is nobody to send to')]);
    expect(await doctor()).toEqual([]);
  });
});

it('restore takes a backup or an archive, and not both or neither', async () => {
  expect(await problemOf(() => restore(undefined, scope()))).toMatchObject({ code: 'option-not-valid' });
  expect(await problemOf(() => restore('kept.db', { ...scope(), fromArchive: url }))).toMatchObject({
    code: 'option-not-valid',
  });
});
