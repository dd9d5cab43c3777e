/** What a reader of an audit package is not to be talked into: another's trust list, a lost index, a forged record. */
import { execFileSync } from 'node:child_process';
import { generateKeyPairSync } from 'node:crypto';
import { copyFileSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { verify } from '../../../src/cli/evidence/verify.ts';
import { papersAgain } from '../../../src/cli/station/jobs.ts';
import { checkpoint, printVerifierKey } from '../../../src/cli/station/log.ts';
import { openStationFolder, stateOf } from '../../../src/cli/station/station.ts';
import { currentKey } from '../../../src/cli/station/station-keys.ts';
import { canonicalBytes } from '../../../src/evidence/canonical.ts';
import { addSignature } from '../../../src/evidence/jws.ts';
import { toBase64url } from '../../../src/evidence/platform/bytes.ts';
import type { PrivateKey } from '../../../src/evidence/platform/signature.ts';
import { openRecord } from '../../../src/evidence/record.ts';
import { indexBytes, type PackageIndex, signIndex } from '../../../src/package/format.ts';
import { problemOf, said, typed } from '../answers.ts';
import { auditStation, CAR, scopeOf } from '../audit/audit-station.ts';

const CHECKPOINT = 'kept.checkpoint';
const station = auditStation((data) =>
  said(() => checkpoint({ ...scopeOf(data), out: join(data, CHECKPOINT) })),
);
/** POSIX; Node itself makes no pipe that has a name. */
const PIPE_MAKER = 'mkfifo';
async function ownKey(): Promise<PrivateKey> {
  const stationFolder = await openStationFolder(station.data);
  const key = await currentKey(stationFolder.folder, stateOf(stationFolder));
  stationFolder.log.close();
  return key.privateKey;
}

describe('a package before a wary reader', () => {
  let out = '';
  let kept = '';
  beforeEach(() => {
    out = join(station.data, 'audit');
    kept = join(station.data, CHECKPOINT);
  });
  const make = (given: Partial<Parameters<typeof makePackage>[0]> = {}) =>
    said(() => makePackage({ ...station.scope(), out, kept, papers: false, ...given }));
  const trust = () => join(station.data, 'trusted-keys.json');
  const verified = (given = {}) => said(() => verify(out, { trust: trust(), kept, ...given }));

  it('is not checked by a list that is not there, and neither are its records', async () => {
    await make();
    for (const path of [out, join(out, 'records'), join(out, 'records', 'J-1.record.json')])
      expect(await problemOf(() => verify(path, { trust: 'nope.json' }))).toMatchObject({
        code: 'trust-list',
        where: 'nope.json',
      });
    const { value, text } = await said(() => verify(out, {}));
    expect(value).toBe(3);
    expect(text).toContain('There is no trusted-keys.json in this folder');
  });

  it('is not trusted by a link to the list inside, but by a copy of it outside', async () => {
    await make();
    const [link, copy] = [join(station.data, 'link.json'), join(station.data, 'copy.json')];
    symlinkSync(join(out, 'trusted-keys.json'), link);
    copyFileSync(join(out, 'trusted-keys.json'), copy);
    expect((await verified({ trust: link })).value).toBe(3);
    expect((await verified({ trust: copy })).value).toBe(0);
    expect(readFileSync(join(out, 'READ-ME.txt'), 'utf8')).toContain('--trust YOUR-LIST');
  });

  it('says whose the list is that nobody named: in a folder that was sent, it is the sender who put it there', async () => {
    const whose =
      'The trust list is trusted-keys.json of the folder that you are in: yours only if you put it there.';
    await make();
    await said(() => papersAgain('J-1', station.scope()));
    const sent = { cwd: station.data };
    for (const path of ['audit', 'audit/records', 'J-1.record.json', 'J-1.pdf']) {
      const unnamed = await typed(['verify', path], sent);
      expect(unnamed.code).toBe(0);
      expect(unnamed.stdout.replace(/\s+/g, ' ')).toContain(whose);
      const json = await typed(['verify', path, '--json'], sent);
      expect(json.stderr).toContain(whose);
      const named = await typed(['verify', path, '--trust', 'trusted-keys.json'], sent);
      expect(named.code).toBe(0);
      expect(named.stdout + named.stderr).not.toContain('The trust list is');
    }
    expect((await typed(['show', 'J-1.record.json', '--plain'], sent)).stdout).toContain('The trust list is');
  });

  /** The sealed record of J-1, its content changed, under one signature of this key. */
  const forge = async (key: PrivateKey, from: string, to: string) => {
    await said(() => papersAgain('J-1', station.scope()));
    const file = join(station.data, 'J-1.record.json');
    const opened = openRecord(readFileSync(file));
    if (!opened.ok) throw new Error('the record cannot be opened');
    const content = Buffer.from(opened.value.jws.payload, 'base64url').toString('utf8');
    const payload = toBase64url(content.replaceAll(from, to));
    const jws = addSignature(
      { payload, signatures: [] },
      { privateKey: key, role: 'station', signedAt: '2026-02-03T12:00:00.000Z' },
    );
    const bytes = Buffer.concat([canonicalBytes(jws), Buffer.from('\n')]);
    expect(openRecord(bytes)).toMatchObject({ ok: true });
    writeFileSync(file, bytes);
    return bytes;
  };
  it.each([
    ['signed by a stranger', () => generateKeyPairSync('ed25519').privateKey, '', ''],
    ['of other entries, signed by the station', ownKey, '"platform":"test"', '"platform":"desk"'],
  ])('takes no record %s', async (_, key, from, to) => {
    const forged = await forge(await key(), from, to);
    await make();
    expect(readFileSync(join(out, 'records', 'J-1.record.json')).equals(forged)).toBe(false);
    expect((await verified()).value).toBe(0);
  });

  it.each([
    ['the package', () => '.'],
    ['a record in it', () => join('records', 'J-2.record.json')],
    ['the folder of its records', () => 'records'],
  ])('is not trusted by the list inside, where %s is checked', async (_, path) => {
    await make({ vin: CAR.vin });
    const told = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const { value, text } = await said(() =>
      verify(join(out, path()), { trust: join(out, 'trusted-keys.json') }),
    );
    expect(value).toBe(3);
    const words = `${text}${told.mock.calls.flat().join('')}`;
    told.mockRestore();
    expect(words).toContain('lies in a package and is no trust');
  });

  it('is not trusted by a policy inside, though the maker names his own log in it', async () => {
    await make({ vin: CAR.vin });
    const policy = join(out, 'insurer.policy');
    const log = (await said(() => printVerifierKey(station.scope()))).text.trim();
    writeFileSync(policy, `log ${log}\nquorum none\n`);
    for (const path of ['.', 'records', join('records', 'J-2.record.json')])
      expect(await problemOf(() => verify(join(out, path), { policy }))).toMatchObject({
        code: 'policy-form',
        message: expect.stringContaining('nobody says in his own package whom to trust'),
      });
  });

  it('does not pass beside a kept checkpoint when all that told of it is gone', async () => {
    await make();
    for (const name of ['index.json', 'index.jws', 'proofs.json']) rmSync(join(out, name));
    expect((await problemOf(() => verified())).code).toBe('package-index-missing');
    const record = join(out, 'records', 'J-2.record.json');
    const { code } = await problemOf(() => verify(record, { trust: trust(), kept }));
    expect(code).toBe('package-index-missing');
  });

  /** The index as the station itself might have made it, and signed. */
  const signedAnew = async (change: (index: PackageIndex) => PackageIndex) => {
    const { form, ...index } = change(JSON.parse(readFileSync(join(out, 'index.json'), 'utf8')));
    const bytes = indexBytes(index);
    writeFileSync(join(out, 'index.json'), bytes);
    writeFileSync(join(out, 'index.jws'), signIndex(bytes, await ownKey()));
  };

  it('does not take the record of one job for that of another, though the station signed it', async () => {
    await make();
    await signedAnew(({ jobs, ...index }) => ({
      ...index,
      jobs: jobs.map((one) => ({ ...one, job: one.job === 'J-1' ? 'J-9' : one.job })),
    }));
    const { value, text } = await verified();
    expect(value).toBe(1);
    expect(text).toContain('records/J-1.record.json is of job J-1, not of the one that the index says');
  });

  it('does not take over that an impact assessment touched nothing, though the station signed it', async () => {
    await station.impact();
    await make();
    await signedAnew(({ jobs, ...index }) => ({
      ...index,
      jobs: jobs.map((one) => ({ ...one, impacts: [] })),
    }));
    const { value, text } = await verified();
    expect(value).toBe(1);
    expect(text).toContain("The index does not say of job J-1 what the station's own entries say");
    expect(text).toContain('job J-1 of 2026-02-03: OUT at cylinder 4');
  });

  it('reads no pipe that stands where a record should', async () => {
    await make();
    const record = join(out, 'records', 'J-1.record.json');
    rmSync(record);
    execFileSync(PIPE_MAKER, [record]);
    const { value, text } = await verified();
    expect(value).toBe(1);
    expect(text).toContain('records/J-1.record.json was changed');
    const { value: loose, text: found } = await said(() => verify(join(out, 'records'), { trust: trust() }));
    expect(loose).toBe(2);
    expect(found).toContain('J-1.record.json: no plain file');
  });

  it('takes no time stamp, which belongs to one record', async () => {
    await make();
    await expect(verified({ time: join(out, 'any.tsr') })).rejects.toThrow('belongs to one record');
  });

  it('is told of in JSON that moves no cursor and turns no line', async () => {
    await make();
    const name = 'a\u009b2J\u202eb';
    writeFileSync(join(out, name), '');
    const { text } = await verified({ json: true });
    expect(text).not.toMatch(/[\u0080-\u009f\u202e]/);
    expect(text).toContain('a\\u009b2J\\u202eb');
    expect(JSON.stringify(JSON.parse(text))).toContain(`${name} was added`);
  });
});
