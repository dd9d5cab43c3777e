/** A shop that signs a package in which the files for people say something nicer than the records do. */
import { createHash } from 'node:crypto';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { makePackage } from '../../src/cli/evidence/package.ts';
import { verify } from '../../src/cli/evidence/verify.ts';
import { openStationFolder, stateOf } from '../../src/cli/station/station.ts';
import { currentKey } from '../../src/cli/station/station-keys.ts';
import { indexBytes, type PackageIndex, readIndex, signIndex } from '../../src/package/format.ts';
import { orThrow } from '../../src/result.ts';
import { said } from '../cli/answers.ts';
import { auditStation } from '../cli/audit/audit-station.ts';

const station = auditStation();
let out = '';
const at = (name: string) => join(out, name);
const make = (given: Partial<Parameters<typeof makePackage>[0]> = {}) =>
  said(() => makePackage({ ...station.scope(), out, ...given }));
const verified = async () => {
  const { value, text } = await said(() => verify(out, { trust: join(station.data, 'trusted-keys.json') }));
  return { value, text: text.replaceAll(/\s+/g, ' ') };
};

/** The index over the files as they are now, signed with the station's own key. */
async function signedAnew(change: (index: PackageIndex) => PackageIndex = (index) => index): Promise<void> {
  const stationFolder = await openStationFolder(station.data);
  const { privateKey } = await currentKey(stationFolder.folder, stateOf(stationFolder));
  stationFolder.log.close();
  const { form: _form, ...index } = change(orThrow(readIndex(readFileSync(at('index.json')))));
  const files = index.files.map(({ path }) => {
    const bytes = readFileSync(at(path));
    return { path, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') };
  });
  const bytes = indexBytes({ ...index, files });
  writeFileSync(at('index.json'), bytes);
  writeFileSync(at('index.jws'), signIndex(bytes, privateKey));
}

const edit = (name: string, from: string, to: string) => {
  const text = readFileSync(at(name), 'latin1');
  expect(text).toContain(from);
  writeFileSync(at(name), text.replace(from, to), 'latin1');
};

describe('a package whose files for people were changed before it was signed', () => {
  beforeEach(() => {
    out = join(station.data, 'audit');
  });

  it('is as it should be where nobody did', async () => {
    await make();
    await signedAnew();
    const { value, text } = await verified();
    expect(text).toContain('What the records give: 3 papers, READ-ME.txt, jobs.csv');
    expect(value).toBe(0);
  });

  it.each([
    ['with texts withheld', { without: 'all' }],
    ['without papers', { papers: false }],
    ['with impact assessments', {}],
  ])('is as it should be %s', async (_what, given) => {
    await station.impact();
    await make(given);
    expect((await verified()).value).toBe(0);
  });

  it.each<[string, () => void, string]>([
    [
      'the paper of another job',
      () => writeFileSync(at('papers/J-3.pdf'), readFileSync(at('papers/J-1.pdf'))),
      'papers/J-3.pdf is not the paper of its record',
    ],
    [
      'a list that calls an open job complete',
      () => edit('jobs.csv', 'J-3,no,incomplete', 'J-3,no,complete'),
      'jobs.csv does not say of job J-3 what its record says',
    ],
    [
      'a list with a row more',
      () => writeFileSync(at('jobs.csv'), `${readFileSync(at('jobs.csv'), 'utf8')}J-99,no,complete\r\n`),
      'jobs.csv has a row of no record here',
    ],
    [
      'a list with a row less',
      () =>
        edit(
          'jobs.csv',
          readFileSync(at('jobs.csv'), 'latin1')
            .split('\r\n')
            .find((row) => row.startsWith('J-1,')) ?? '?',
          'J-1',
        ),
      'jobs.csv does not say of job J-1',
    ],
    [
      'a guide that names another key',
      () => edit('READ-ME.txt', 'Its key now: ', 'Its key now: x'),
      'READ-ME.txt is not what this version writes',
    ],
  ])('is refused with %s', async (_what, change, why) => {
    await make();
    change();
    await signedAnew();
    const { value, text } = await verified();
    expect(value).toBe(1);
    expect(text).toContain(why);
  });

  it('is refused where it is dated in the future', async () => {
    await make({ papers: false });
    await signedAnew((index) => ({ ...index, at: new Date(Date.now() + 3 * 86_400_000).toISOString() }));
    const { value, text } = await verified();
    expect(value).toBe(1);
    expect(text).toContain('and the clock of this computer says');
  });

  it('is in doubt where it is dated before its jobs', async () => {
    await make({ papers: false });
    await signedAnew((index) => ({ ...index, at: '2026-02-01T00:00:00.000Z' }));
    // The key is trusted from the first job on.
    expect((await verified()).text).toContain('TIMES IN DOUBT: the package is dated 2026-02-01');
  });

  it('with a list of another form is not held against the records, and says so', async () => {
    await make({ papers: false });
    writeFileSync(at('jobs.csv'), 'all is well');
    await signedAnew();
    const { value, text } = await verified();
    expect(value).toBe(0);
    expect(text).toContain('NOT held against them: jobs.csv, which is of another form');
  });

  it('of another version is not held against the records, and says so', async () => {
    await make();
    rmSync(at('papers/J-1.pdf'));
    writeFileSync(at('papers/J-1.pdf'), 'a paper of another version');
    await signedAnew((index) => ({ ...index, program: 'plugmark 0.0.1' }));
    const { value, text } = await verified();
    expect(value).toBe(0);
    expect(text).toContain('were NOT held against the records');
  });
});
