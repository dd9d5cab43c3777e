/** Keys as they lie on the disk of a station: what is left there of a key that signs no more, and what may be done with it. */
import {
  copyFileSync,
  existsSync,
  linkSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { destroyKeyFile, newKey, relockKeyFile, writeKeyFile } from '../../db/keyfile.ts';
import { writePapers } from '../../src/cli/bench/papers.ts';
import { verify } from '../../src/cli/evidence/verify.ts';
import { now, stamp } from '../../src/cli/station/clock.ts';
import { stationHealth } from '../../src/cli/station/health/station.ts';
import { papersAgain } from '../../src/cli/station/jobs.ts';
import { addTechnician, lockKeys } from '../../src/cli/station/keys.ts';
import { printVerifierKey, proveInclusion } from '../../src/cli/station/log.ts';
import { destroyKey, rotateKey } from '../../src/cli/station/rotate.ts';
import { openStation } from '../../src/cli/station/station.ts';
import { readCheckpoint } from '../../src/evidence/checkpoint.ts';
import { inclusionHolds, leafHash } from '../../src/evidence/merkle.ts';
import { SI } from '../../src/quantity/shown.ts';
import { USUAL_CSV } from '../../src/report/csv-style.ts';
import { orThrow } from '../../src/result.ts';
import { workIn } from '../audit/shop.ts';
import { problemOf, said } from '../cli/answers.ts';
import { auditStation, CAR } from '../cli/audit/audit-station.ts';
import { folder } from '../cli/program.ts';

const station = auditStation();
const at = (...names: string[]) => join(station.data, ...names);
const pems = () => readdirSync(at('keys')).filter((name) => name.startsWith('station.'));
const isLocked = (name: string) => readFileSync(at('keys', name), 'utf8').includes('ENCRYPTED');
const rotated = (given: Partial<Parameters<typeof rotateKey>[0]> = {}) =>
  said(() => rotateKey({ ...station.scope(), ...given }));
const verified = (list = at('trusted-keys.json')) =>
  said(() => verify(at('J-2.record.json'), { trust: list }));
const sealed = () => said(() => papersAgain('J-2', station.scope()));
const findings = async () => (await stationHealth(station.data)).findings;

afterEach(() => {
  vi.unstubAllEnvs();
  vi.useRealTimers();
});

describe('after a change of the key', () => {
  it('the old private key is on the disk no more', async () => {
    const [old = ''] = pems();
    await rotated();
    expect(pems()).toHaveLength(1);
    expect(pems()).not.toContain(old);
    expect((await findings()).filter(({ state }) => state !== 'good')).toEqual([]);
  });

  it('nor is a technician’s own, once he has another', async () => {
    vi.stubEnv('PLUGMARK_PIN', '123456');
    for (const _ of [1, 2]) await said(() => addTechnician('Technician One', station.scope()));
    expect(readdirSync(at('keys')).filter((name) => name.startsWith('technician.'))).toHaveLength(1);
  });

  it('where the shop keeps it, it is under a passphrase, and nothing is done without one', async () => {
    expect((await problemOf(() => rotated({ keep: true }))).code).toBe('passphrase-empty');
    expect(pems()).toHaveLength(1);
    vi.stubEnv('PLUGMARK_PASSPHRASE', 'an invented passphrase');
    await rotated({ keep: true });
    expect(pems().map(isLocked)).toEqual([true, true]);
    expect((await problemOf(() => rotated({ keep: true, lost: true }))).code).toBe('option-not-valid');
  });

  it('a key under a passphrase is followed by one under a passphrase', async () => {
    vi.stubEnv('PLUGMARK_PASSPHRASE', 'an invented passphrase');
    await said(() => lockKeys(station.scope()));
    await rotated();
    expect(pems().map(isLocked)).toEqual([true]);
  });

  it('a record from before is believed with the proof beside it, and not without', async () => {
    await sealed();
    const oldList = join(folder(), 'old.json');
    copyFileSync(at('trusted-keys.json'), oldList);
    await rotated();
    const { value, text } = await verified();
    expect(text).toContain('a later log of the station contains this');
    expect(value).toBe(0);
    writeFileSync(at('J-2.record.json.proof'), 'paid in full');
    const told = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    expect((await verified()).value).toBe(3);
    expect(told.mock.calls.flat().join('')).toContain('J-2.record.json.proof');
    told.mockRestore();
    rmSync(at('J-2.record.json.proof'));
    const without = await verified();
    expect(without.value).toBe(3);
    expect(without.text.replaceAll(/\s+/g, ' ')).toContain('only its own word says that it signed before');
    const headline = without.text.split('\n  job ')[0]?.replaceAll(/\s+/g, ' ');
    expect(headline).toContain('the station is on your list, but this key of it has ended');
    expect(headline).toContain('*.record.json.proof');
    // Whoever was not given the new list knows of no end.
    expect((await verified(oldList)).value).toBe(0);
    await sealed();
    expect((await verified(oldList)).value).toBe(0);
  });

  it('so it is where the clock of the job ran ahead of that of the change', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 3_600_000 });
    await workIn(station.data, [{ job: 'J-9', on: '2027-01-01', peaks: [27, 27, 27, 27], vehicle: CAR }]);
    await sealed();
    vi.useRealTimers();
    await rotated();
    expect((await verified()).value).toBe(0);
  });

  it.each([
    ['ahead', 365],
    ['behind', -365],
  ])('what the new key signs is believed, though the clock ran %s when it was made', async (_how, days) => {
    vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + days * 86_400_000 });
    await rotated();
    vi.useRealTimers();
    await sealed();
    expect((await verified()).value).toBe(0);
  });

  it('a program that still holds the old one signs nothing with it', async () => {
    const { log, ...running } = await openStation('Example bay', station.data, stamp);
    await rotated();
    const audience = { language: 'en' as const, units: SI };
    const sealing = { folder: station.data, signedAt: now(), technician: null, audience, style: USUAL_CSV };
    const problem = await problemOf(() => writePapers({ log, ...running }, 'job:J-2', sealing));
    log.close();
    expect(problem).toMatchObject({
      code: 'key-retired',
      message: expect.stringContaining('nothing was signed'),
    });
    await sealed();
    expect((await verified()).value).toBe(0);
  });

  it('so it is after a second change, and after a key that was lost', async () => {
    await sealed();
    await rotated();
    await rotated({ lost: true, because: 'laptop stolen' });
    expect((await verified()).value).toBe(0);
  });
});

describe('keys lock', () => {
  it('covers every key of the station that is here', async () => {
    const stray = newKey();
    orThrow(writeKeyFile(at('keys', `station.${stray.kid}.pem`), stray, null));
    vi.stubEnv('PLUGMARK_PASSPHRASE', 'an invented passphrase');
    await said(() => lockKeys(station.scope()));
    expect(pems().map(isLocked)).toEqual([true, true]);
  });
});

describe('doctor', () => {
  it('names an old key that lies there in clear, and what to do', async () => {
    const [old = ''] = pems();
    const copy = join(folder(), old);
    copyFileSync(at('keys', old), copy);
    await rotated();
    copyFileSync(copy, at('keys', old));
    const kid = old.slice('station.'.length, -'.pem'.length);
    expect((await findings()).find(({ name }) => name === 'old key')).toMatchObject({
      state: 'bad',
      text: expect.stringContaining(kid),
      next: expect.stringContaining(`plugmark keys destroy ${kid}`),
    });
    await said(() => destroyKey(kid, station.scope()));
    expect(existsSync(at('keys', old))).toBe(false);
    expect((await findings()).some(({ name }) => name === 'old key')).toBe(false);
  });

  it('names a key that the log does not know', async () => {
    const stray = newKey();
    orThrow(writeKeyFile(at('keys', `station.${stray.kid}.pem`), stray, null));
    expect((await findings()).at(-1)).toMatchObject({
      name: 'other keys',
      next: expect.stringContaining('plugmark keys destroy'),
    });
  });
});

it('the key that signs is not destroyed, nor any other file', async () => {
  const kid = (pems()[0] ?? '').slice('station.'.length, -'.pem'.length);
  expect((await problemOf(() => destroyKey(kid, station.scope()))).code).toBe('key-in-use');
  expect((await problemOf(() => destroyKey('../station', station.scope()))).code).toBe('key-unknown');
  expect((await problemOf(() => destroyKey('A'.repeat(43), station.scope()))).code).toBe('key-unknown');
});

it('a key is written over before its file goes, also where it is only put under a passphrase', () => {
  const key = newKey();
  const where = folder();
  const file = join(where, 'a.pem');
  orThrow(writeKeyFile(file, key, null));
  const clear = readFileSync(file);
  // A second name of the same bytes on the disk shows what became of them.
  linkSync(file, join(where, 'clear'));
  orThrow(relockKeyFile(file, key, 'an invented passphrase'));
  expect(readFileSync(join(where, 'clear')).equals(clear)).toBe(false);
  linkSync(file, join(where, 'locked'));
  const locked = readFileSync(file);
  orThrow(destroyKeyFile(file));
  expect(existsSync(file)).toBe(false);
  expect(readFileSync(join(where, 'locked')).equals(locked)).toBe(false);
});

describe('what other programs for such logs take', () => {
  it('the verifier key, and a proof of inclusion as c2sp.org/tlog-proof has it', async () => {
    const { text: vkey } = await said(() => printVerifierKey(station.scope()));
    const { text } = await said(() => proveInclusion(3, { ...station.scope(), form: 'tlog-proof' }));
    const [head = '', ...note] = text.split('\n\n');
    const [form, index, ...path] = head.split('\n');
    expect([form, index]).toEqual(['c2sp.org/tlog-proof@v1', 'index 2']);
    const { origin, size, root } = orThrow(readCheckpoint(note.join('\n\n'), 'proof'));
    expect(vkey).toMatch(new RegExp(`^${origin}\\+[0-9a-f]{8}\\+[A-Za-z0-9+/]{44}\\n$`));
    const { text: json } = await said(() => proveInclusion(3, station.scope()));
    const leaf = Buffer.from(JSON.parse(json).leaf, 'base64');
    const hashes = path.map((line) => Buffer.from(line, 'base64'));
    expect(inclusionHolds(leaf, { index: 2, size, path: hashes, root })).toBe(true);
    expect(inclusionHolds(leafHash(leaf), { index: 2, size, path: hashes, root })).toBe(false);
  });
});
