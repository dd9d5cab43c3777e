import { existsSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { verify } from '../../../src/cli/evidence/verify.ts';
import { witnessFindings } from '../../../src/cli/station/health/witnesses.ts';
import { papersAgain } from '../../../src/cli/station/jobs.ts';
import { checkpoint, printVerifierKey } from '../../../src/cli/station/log.ts';
import { witnessLog } from '../../../src/cli/station/log-witness.ts';
import { rotateKey } from '../../../src/cli/station/rotate.ts';
import { readStationFile } from '../../../src/cli/station/station-file.ts';
import { workIn } from '../../audit/shop.ts';
import { type Answering, addTo, witnessHere } from '../../serve/witnesses.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation, CAR, scopeOf } from '../audit/audit-station.ts';
import { exampleJson } from '../program.ts';

/** A station whose job J-1 is sealed. */
const station = auditStation((data) => said(() => papersAgain('J-1', scopeOf(data))));
const at = (...names: string[]) => join(station.data, ...names);
const work = (job: string, on: string) =>
  workIn(station.data, [{ job, on, peaks: [27, 27, 27, 27], vehicle: CAR }]);
const seal = (job: string) => said(() => papersAgain(job, station.scope()));
const vkeyOfLog = async () => (await said(() => printVerifierKey(station.scope()))).text.trim();

/** Witnesses that know the station's log. */
async function witnesses(count: number): Promise<readonly Answering[]> {
  const vkeys = [await vkeyOfLog()];
  const all: Answering[] = [];
  for (let i = 0; i < count; i++)
    all.push(
      await witnessHere({
        name: `witness.example/${i}`,
        seed: `e${i}`,
        vkeys,
        nowS: () => Math.floor(Date.now() / 1000),
      }),
    );
  return all;
}

/** A station file that names these. */
function stationFile(
  all: readonly Answering[],
  urls = all.map(({ url }) => url),
): { readonly station: string } {
  const file = at('bay.json');
  const named = all.map(({ keys }, i) => ({ url: urls[i], keys: keys.map(({ vkey }) => vkey) }));
  writeFileSync(file, JSON.stringify({ ...exampleJson('station.json'), data: '.', witnesses: named }));
  return { station: file };
}

async function policyOf(all: readonly Answering[], quorum: string, log?: string): Promise<string> {
  const file = at('insurer.policy');
  const lines = [
    `log ${log ?? (await vkeyOfLog())}`,
    ...all.map(({ keys }, i) => `witness w${i} ${keys[i % 2]?.vkey}`),
    `group all ${quorum} ${all.map((_, i) => `w${i}`).join(' ')}`,
    'quorum all',
  ];
  writeFileSync(file, `${lines.join('\n')}\n`);
  return file;
}

const verified = (path: string, policy: string) => said(() => verify(path, { policy }));

describe('a station and its witnesses', () => {
  it('sends its newest checkpoint, keeps the cosigned note, and puts one beside each record', async () => {
    const all = await witnesses(3);
    const { value, text } = await said(() => witnessLog(stationFile(all)));
    expect(value).toBe(0);
    expect(text.match(/: cosigned on /g)).toHaveLength(3);
    expect(readFileSync(at('cosigned.checkpoint'), 'utf8').match(/^— witness\.example/gm)).toHaveLength(6);
    expect(existsSync(at('J-1.record.json.witnessed'))).toBe(true);
  });

  it('a record is verified by a policy alone: whose log, which witnesses, and when', async () => {
    const all = await witnesses(3);
    await said(() => witnessLog(stationFile(all.slice(0, 2))));
    const { value, text } = await verified(at('J-1.record.json'), await policyOf(all, '2'));
    expect(text).toMatch(
      /Cosigned by 2 of 3 on 20\d\d-.*Z \(w0, w1\): nobody can rewrite the first \d+ entries/,
    );
    expect(text).toContain('Signed by the station plugmark/log/');
    expect(value).toBe(0);
  });

  it('too few witnesses are said, and the record is not trusted', async () => {
    const all = await witnesses(3);
    await said(() => witnessLog(stationFile(all.slice(0, 1))));
    const { value, text } = await verified(at('J-1.record.json'), await policyOf(all, '2'));
    expect(value).toBe(3);
    expect(text).toContain('your policy asks for witnesses that it does not have');
    expect(text).toMatch(
      /\[FAIL\] witnesses +Cosigned by 1 of 3 on .* \(w0\), and your policy asks for more/,
    );
  });

  it('a record without the note of witnesses, and one of a log that the policy does not name, are not trusted', async () => {
    const all = await witnesses(1);
    const policy = await policyOf(all, 'any');
    expect((await verified(at('J-1.record.json'), policy)).text).toContain(
      'Cosigned by 0 of 1, and your policy',
    );
    await said(() => witnessLog(stationFile(all)));
    const other = 'PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW';
    const { value, text } = await verified(at('J-1.record.json'), await policyOf(all, 'any', other));
    expect(value).toBe(3);
    expect(text).toContain('Your policy does not name this log');
  });

  it('beside a trust list, a policy without logs adds the witnesses alone', async () => {
    const all = await witnesses(1);
    await said(() => witnessLog(stationFile(all)));
    writeFileSync(at('w.policy'), `witness w ${all[0]?.keys[0]?.vkey}\nquorum w\n`);
    const trust = at('trusted-keys.json');
    const options = { policy: at('w.policy'), trust };
    expect((await said(() => verify(at('J-1.record.json'), options))).value).toBe(0);
    rmSync(at('J-1.record.json.witnessed'));
    expect((await said(() => verify(at('J-1.record.json'), options))).value).toBe(3);
    expect((await said(() => verify(at('J-1.record.json'), { trust }))).value).toBe(0);
  });

  it('a folder of records is held against the policy, a record at a time', async () => {
    const all = await witnesses(1);
    await said(() => witnessLog(stationFile(all)));
    await seal('J-2');
    const { value, text } = await verified(station.data, await policyOf(all, 'any'));
    expect(value).toBe(3);
    expect(text).toContain('NOT TRUSTED');
    expect(text).toContain('J-2.record.json');
    expect(text).not.toContain('J-1.record.json');
  });

  it('a station that was offline sends what the witness has not seen, and records from before are covered', async () => {
    const all = await witnesses(2);
    const file = stationFile(all);
    await said(() => witnessLog(file));
    const away = stationFile(all, ['http://127.0.0.1:9', all[1]?.url ?? '']);
    await work('J-5', '2026-07-01');
    await seal('J-5');
    const offline = await said(() => witnessLog(away));
    expect(offline.value).toBe(1);
    expect(offline.text).toContain('http://127.0.0.1:9: not cosigned; it cannot be reached');
    await work('J-6', '2026-07-02');
    await seal('J-6');
    expect((await said(() => witnessLog(stationFile(all)))).value).toBe(0);
    const policy = await policyOf(all, 'all');
    for (const job of ['J-1', 'J-5', 'J-6'])
      expect((await verified(at(`${job}.record.json`), policy)).value).toBe(0);
  });

  it('the first note that dates a record stays beside it', async () => {
    const all = await witnesses(1);
    const file = stationFile(all);
    await said(() => witnessLog(file));
    const before = readFileSync(at('J-1.record.json.witnessed'), 'utf8');
    await work('J-5', '2026-07-01');
    await seal('J-5');
    await said(() => witnessLog(file));
    expect(readFileSync(at('J-1.record.json.witnessed'), 'utf8')).toBe(before);
    expect(existsSync(at('J-5.record.json.witnessed'))).toBe(true);
  });

  it('of many records those without a note get one, and a bad one among the newest is written anew', async () => {
    const file = stationFile(await witnesses(1));
    await said(() => witnessLog(file));
    const [record, note] = ['J-1.record.json', 'J-1.record.json.witnessed'].map((name) =>
      readFileSync(at(name)),
    );
    if (record === undefined || note === undefined) throw new Error('two files');
    const names = Array.from({ length: 60 }, (_, i) => `copy-${i}.record.json`);
    for (const [i, name] of names.entries()) {
      writeFileSync(at(name), record);
      utimesSync(at(name), 1_790_000_000 - i, 1_790_000_000 - i);
      if (i < 59) writeFileSync(at(`${name}.witnessed`), i === 0 ? 'paid in full' : note);
    }
    expect((await said(() => witnessLog(file))).value).toBe(0);
    const isNote = (name: string) => JSON.parse(readFileSync(at(`${name}.witnessed`), 'utf8')).form;
    expect(new Set(names.map(isNote))).toEqual(new Set(['plugmark/consistency/1']));
  });

  it('the cosigned note goes into packages, with the proof that their log goes on from it', async () => {
    const all = await witnesses(2);
    await seal('J-2');
    await said(() => witnessLog(stationFile(all)));
    const out = at('audit');
    await said(() => makePackage({ ...station.scope(), out, papers: false }));
    const { value, text } = await verified(out, await policyOf(all, 'all'));
    expect(text).toMatch(/\[ok\] +witnesses +Cosigned by 2 of 2 on/);
    expect(value).toBe(0);
  });

  it('jobs that no witness has seen make a package not trusted', async () => {
    const all = await witnesses(1);
    await said(() => witnessLog(stationFile(all)));
    await work('J-5', '2026-07-01');
    await seal('J-5');
    const out = at('audit');
    await said(() => makePackage({ ...station.scope(), out, papers: false }));
    const { value, text } = await verified(out, await policyOf(all, 'all'));
    expect(value).toBe(3);
    expect(text).toContain('They have not seen 1 of');
    expect(text).toContain('J-5');
  });

  it('a witness is asked again once it has the key that was rotated to', async () => {
    const all = await witnesses(1);
    const file = stationFile(all);
    await said(() => witnessLog(file));
    await said(() => rotateKey(station.scope()));
    const refused = await said(() => witnessLog(file));
    expect(refused.value).toBe(1);
    expect(refused.text).toContain('it does not have the key that signs this log now');
    const [one] = all;
    if (one === undefined) throw new Error('no witness');
    expect(addTo(one.file, await vkeyOfLog())).toBe('new-key');
    expect((await said(() => witnessLog(file))).value).toBe(0);
  });

  it('a log whose end was cut off is told that the witness has a longer one', async () => {
    const all = await witnesses(1);
    const file = stationFile(all);
    await said(() => checkpoint(station.scope()));
    const old = ['station.db', 'last.checkpoint'].map((name) => [name, readFileSync(at(name))] as const);
    await work('J-5', '2026-07-01');
    await seal('J-5');
    await said(() => witnessLog(file));
    for (const name of ['station.db-wal', 'station.db-shm', 'J-5.record.json', 'cosigned.checkpoint'])
      rmSync(at(name), { force: true });
    for (const [name, bytes] of old) writeFileSync(at(name), bytes);
    await said(() => checkpoint(station.scope()));
    const { value, text } = await said(() => witnessLog(file));
    expect(value).toBe(1);
    expect(text).toContain('HAS A LONGER LOG of this station');
  });

  it('doctor says how far the witnesses have come', async () => {
    const all = await witnesses(2);
    const { station: file } = stationFile(all);
    const doctor = async () => await witnessFindings(await readStationFile(file));
    expect(await doctor()).toMatchObject([{ state: 'warning', text: 'none of 2 has cosigned this log yet' }]);
    await said(() => witnessLog({ station: file }));
    expect(await doctor()).toMatchObject([{ state: 'good' }]);
    await work('J-5', '2026-07-01');
    await seal('J-5');
    const [{ state, text } = { state: '', text: '' }] = await doctor();
    expect(state).toBe('warning');
    expect(text).toMatch(/^2 of 2 cosigned the first \d+ of \d+ entries that are signed$/);
  });

  it('a station file without witnesses says so', async () => {
    const file = at('bay.json');
    writeFileSync(file, JSON.stringify({ ...exampleJson('station.json'), data: '.' }));
    expect(await problemOf(() => witnessLog({ station: file }))).toMatchObject({ code: 'no-witness' });
  });
});

describe('a station that has signed nothing yet', () => {
  const fresh = auditStation();

  it('has nothing that a witness could have seen, and doctor says nothing of them', async () => {
    station.data = fresh.data;
    const { station: file } = stationFile(await witnesses(2));
    expect(await witnessFindings(await readStationFile(file))).toEqual([]);
  });
});
