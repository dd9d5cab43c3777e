/** A shop that signs a package in which the files for people say something nicer than the records do. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { dispute } from '../../src/cli/audit/dispute.ts';
import { makePackage } from '../../src/cli/evidence/package.ts';
import { verify } from '../../src/cli/evidence/verify.ts';
import type { PackageIndex } from '../../src/package/format.ts';
import { said } from '../cli/answers.ts';
import { auditStation, VAN } from '../cli/audit/audit-station.ts';
import { signedAnew as signedAgain } from '../cli/audit/signed-anew.ts';

const station = auditStation();
let out = '';
const at = (name: string) => join(out, name);
const make = (given: Partial<Parameters<typeof makePackage>[0]> = {}) =>
  said(() => makePackage({ ...station.scope(), out, ...given }));
const verified = async () => {
  const { value, text } = await said(() => verify(out, { trust: join(station.data, 'trusted-keys.json') }));
  return { value, text: text.replaceAll(/\s+/g, ' ') };
};

const signedAnew = (change?: (index: PackageIndex) => PackageIndex) =>
  signedAgain({ data: station.data, out }, change);

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

  it('is refused with the paper of another job', async () => {
    await make();
    writeFileSync(at('papers/J-3.pdf'), readFileSync(at('papers/J-1.pdf')));
    await signedAnew();
    const { value, text } = await verified();
    expect(value).toBe(1);
    expect(text).toContain('papers/J-3.pdf is not what the records give');
  });

  it.each<[string, () => void, string]>([
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
    await make({ papers: false });
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
    expect(text).toContain('NOT held against the records: jobs.csv.');
  });

  describe('of another version', () => {
    const old = () => signedAnew((index) => ({ ...index, program: 'plugmark 0.0.1' }));
    it('has its list compared by words and figures', async () => {
      await make({ papers: false });
      edit('jobs.csv', 'J-3,no,incomplete', 'J-3,no,not all done');
      await old();
      const { value, text } = await verified();
      expect(value).toBe(0);
      expect(text).toContain('its words and figures compared and what is drawn NOT: jobs.csv.');
    });

    it.each<[string, () => void, string]>([
      [
        'a figure in its list',
        () => edit('jobs.csv', 'J-1,no,', 'J-1,31.7,'),
        'jobs.csv does not say of job J-1',
      ],
      [
        'another key in its guide',
        () => edit('READ-ME.txt', 'Its key now: ', `Its key now: ${'A'.repeat(43)} or `),
        'READ-ME.txt names another key',
      ],
    ])('is refused for %s', async (_what, change, why) => {
      await make({ papers: false });
      change();
      await old();
      const { value, text } = await verified();
      expect(text).toContain(why);
      expect(value).toBe(1);
    });

    it('is refused for a paper that is none', async () => {
      await make();
      writeFileSync(at('papers/J-1.pdf'), 'a paper of another version');
      await old();
      const { value, text } = await verified();
      expect(text).toContain('papers/J-1.pdf is not what the records give');
      expect(value).toBe(1);
    });
  });

  it('with the paper of an impact assessment that says something else is refused', async () => {
    await station.impact();
    await make({ papers: false });
    const pdf = readFileSync(at('impacts/IA-1.pdf'), 'latin1');
    writeFileSync(at('impacts/IA-1.pdf'), pdf.replace('0.8 w\n', '0.9 w\n'), 'latin1');
    edit('impacts/IA-1.vehicles.csv', 'J-1', 'J-8');
    await signedAnew();
    const { value, text } = await verified();
    expect(text).toContain('impacts/IA-1.pdf is not what the records give');
    expect(text).toContain('; and 1 more. The records are what counts.');
    expect(value).toBe(1);
  });

  it('with a file that no program of ours writes is not held against anything, and says so', async () => {
    await make({ papers: false });
    writeFileSync(at('letter.pdf'), 'all is well');
    await signedAnew((index) => ({
      ...index,
      files: [...index.files, { path: 'letter.pdf', bytes: 0, sha256: '' }].sort((a, b) =>
        a.path < b.path ? -1 : 1,
      ),
    }));
    const { value, text } = await verified();
    expect(text).toContain('NOT held against the records: letter.pdf.');
    expect(value).toBe(0);
  });

  it('on a claim is held against its records with its paper as well', async () => {
    await station.impact();
    await said(() => dispute({ ...station.scope(), vin: VAN.vin, claim: 'C-1', out }));
    const { value, text } = await verified();
    expect(text).toMatch(/What the records give: 2 papers, .*dispute\.pdf/);
    expect(value).toBe(0);
    const pdf = readFileSync(at('dispute.pdf'), 'latin1');
    writeFileSync(at('dispute.pdf'), pdf.replace('0.8 w\n', '0.9 w\n'), 'latin1');
    await signedAnew();
    const forged = await verified();
    expect(forged.text).toContain('dispute.pdf is not what the records give');
    expect(forged.value).toBe(1);
  });
});
