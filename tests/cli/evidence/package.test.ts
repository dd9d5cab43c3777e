import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { verify } from '../../../src/cli/evidence/verify.ts';
import { papersAgain, voidJob } from '../../../src/cli/station/jobs.ts';
import { checkpoint } from '../../../src/cli/station/log.ts';
import { rotateKey } from '../../../src/cli/station/rotate.ts';
import { workIn } from '../../audit/shop.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation, CAR, scopeOf } from '../audit/audit-station.ts';
import { folder } from '../program.ts';

const CHECKPOINT = 'kept.checkpoint';
/** An auditor keeps a checkpoint, and a job more is worked. */
async function keptAndWorked(data: string): Promise<void> {
  await said(() => checkpoint({ ...scopeOf(data), out: join(data, CHECKPOINT) }));
  await workIn(data, [{ job: 'J-5', on: '2026-06-02', peaks: [27, 27, 27, 27], vehicle: CAR }]);
}
/** Papers take longest; package-people.test.ts asks about them. */
const WITHOUT_PAPERS = { papers: false } as const;

describe('an audit package', () => {
  const station = auditStation(keptAndWorked);
  let out = '';
  let kept = '';
  beforeEach(() => {
    out = join(station.data, 'audit');
    kept = join(station.data, CHECKPOINT);
  });
  const make = (
    given: Partial<Parameters<typeof makePackage>[0]> = WITHOUT_PAPERS,
    since: string | null = kept,
  ) => said(() => makePackage({ ...station.scope(), out, ...(since !== null && { kept: since }), ...given }));
  const trust = () => join(station.data, 'trusted-keys.json');
  const verified = (given = {}) => said(() => verify(out, { trust: trust(), kept, ...given }));

  it('verifies as a whole, with the checkpoint that the auditor kept', async () => {
    const { text: made } = await make({});
    expect(made).toContain('4 records');
    expect(made).toContain('left out: job J-4, it is still open');
    const { value, text } = await verified();
    expect(text).not.toContain('FAIL');
    expect(value).toBe(0);
    expect(text).toContain('(that you kept) was removed or rewritten');
    expect(text).toContain('4 records, each authentic and judged again; 1 of a job that was not completed');
  });

  it('holds what was asked for, and says what that was', async () => {
    await make({ ...WITHOUT_PAPERS, vin: CAR.vin });
    expect(readdirSync(join(out, 'records'))).toEqual(['J-2.record.json', 'J-5.record.json']);
    expect((await verified()).text).toContain('asked for one vin');
    rmSync(out, { recursive: true });
    await make({ ...WITHOUT_PAPERS, exceptions: true });
    expect(readdirSync(join(out, 'records'))).toEqual(['J-3.record.json']);
  });

  it('takes the record that was sealed at the close, with the signatures on it, unless the job went on', async () => {
    await said(() => papersAgain('J-1', station.scope()));
    await said(() => papersAgain('J-2', station.scope()));
    await said(() => voidJob('J-2', { ...station.scope(), by: 'Foreman One', because: 'wrong vehicle' }));
    await make();
    const same = (job: string) =>
      readFileSync(join(out, 'records', `${job}.record.json`)).equals(
        readFileSync(join(station.data, `${job}.record.json`)),
      );
    expect([same('J-1'), same('J-2')]).toEqual([true, false]);
    expect((await verified()).value).toBe(0);
  });

  it('leaves a tampered record of the station out, and seals the job anew', async () => {
    await said(() => papersAgain('J-1', station.scope()));
    const file = join(station.data, 'J-1.record.json');
    writeFileSync(file, readFileSync(file, 'utf8').replace('"signature":"', '"signature":"A'));
    await make();
    expect((await verified()).value).toBe(0);
  });

  it('is trusted only by a list that holds the key, not by the one inside', async () => {
    await make();
    const other = join(station.data, 'other.json');
    writeFileSync(other, '{"keys":[]}');
    const { value, text } = await verified({ trust: other });
    expect(value).toBe(3);
    expect(text).toContain('NOT trusted');
    expect(text).toContain('Compare the key above with the one that the station gave you');
  });

  it('does not pass for a mere folder of records when its index is gone', async () => {
    await make();
    rmSync(join(out, 'index.json'));
    expect((await problemOf(() => verified())).where).toContain('index.json');
  });

  it('is not taken for one that goes on from a checkpoint which it does not prove', async () => {
    await make();
    await workIn(station.data, [{ job: 'J-6', on: '2026-06-03', peaks: [27], vehicle: CAR }]);
    const later = join(station.data, 'later.checkpoint');
    await said(() => checkpoint({ ...station.scope(), out: later }));
    const { value, text } = await verified({ kept: later });
    expect(value).toBe(1);
    expect(text).toMatch(/Your checkpoint stands for \d+ entries, and the log of the package has only/);
  });

  it('says that it was made with another checkpoint than the one that the auditor kept', async () => {
    await make(WITHOUT_PAPERS, null);
    const { value, text } = await verified();
    expect(value).toBe(1);
    expect(text).toContain('proves nothing from your checkpoint');
  });

  it('is not made where the kept checkpoint has more entries than the log: its end was cut off', async () => {
    const before = join(folder(), 'before');
    cpSync(station.data, before, { recursive: true });
    await workIn(station.data, [{ job: 'J-6', on: '2026-06-03', peaks: [27], vehicle: CAR }]);
    const longer = join(station.data, 'longer.checkpoint');
    await said(() => checkpoint({ ...station.scope(), out: longer }));
    const { value, text } = await said(() =>
      makePackage({ station: 'none.json', data: before, out, kept: longer }),
    );
    expect(value).toBe(1);
    expect(text).toContain('The end of the log was cut off, or an old copy was put back');
    expect(existsSync(out)).toBe(false);
  });

  it('verifies across a change of the key, for who knows the old key alone', async () => {
    await said(() => papersAgain('J-1', station.scope()));
    const old = join(folder(), 'old.json');
    cpSync(trust(), old);
    await said(() => rotateKey(station.scope()));
    await make();
    const { value, text } = await verified({ trust: old });
    expect(text).not.toContain('FAIL');
    expect(value).toBe(0);
    const { kid } = JSON.parse(readFileSync(trust(), 'utf8')).keys.at(-1);
    expect(text).toContain(`whose earlier key named this one on`);
    expect(text).toContain(`with its key ${kid}`);
  });

  it('is not trusted where the key was replaced and not named by the old one', async () => {
    const old = join(folder(), 'old.json');
    cpSync(trust(), old);
    await said(() => rotateKey({ ...station.scope(), lost: true }));
    await make();
    expect((await verified({ trust: old })).value).toBe(3);
    expect((await verified()).value).toBe(0);
  });

  it('shows a file whose name would turn a line, and reads none that is far too large', async () => {
    await make();
    writeFileSync(join(out, 'a\n[ok] b'), '');
    mkdirSync(join(out, 'sub'));
    symlinkSync('..', join(out, 'sub', 'round'));
    const { value, text } = await verified();
    expect(value).toBe(1);
    expect(text).toContain('a [ok] b was added');
    expect(text).toContain('sub/round was added');
    truncateSync(join(out, 'index.json'), 300 << 20);
    expect(await problemOf(() => verified())).toMatchObject({ code: 'file-too-large' });
  });

  it('is not made where the log no longer begins with the kept checkpoint', async () => {
    const other = join(folder(), 'other');
    await workIn(other, [{ job: 'J-1', on: '2026-02-03', peaks: [27] }]);
    const foreign = join(other, 'foreign.checkpoint');
    await said(() => checkpoint({ station: 'none.json', data: other, out: foreign }));
    const { value, text } = await make({ kept: foreign });
    expect(value).toBe(1);
    expect(text).toContain('NOT from this log');
    expect(text).toContain('No package was made');
  });

  it('is not made of no job at all', async () => {
    expect((await problemOf(() => make({ from: '2030-01-01' }))).code).toBe('nothing-matches');
    expect(existsSync(out)).toBe(false);
  });

  it('goes into an empty folder only', async () => {
    await make();
    expect((await problemOf(() => make())).code).toBe('folder-not-empty');
  });
});

describe('an audit package that was changed', () => {
  const station = auditStation(async (data) => {
    await keptAndWorked(data);
    const given = { out: join(data, 'audit'), kept: join(data, CHECKPOINT), ...WITHOUT_PAPERS };
    await said(() => makePackage({ ...scopeOf(data), ...given }));
  });
  let out = '';
  beforeEach(() => {
    out = join(station.data, 'audit');
  });
  const trust = () => join(station.data, 'trusted-keys.json');
  const verified = () => said(() => verify(out, { trust: trust(), kept: join(station.data, CHECKPOINT) }));

  const change = (path: string, from: string, to: string) => {
    const file = join(out, path);
    const before = readFileSync(file, 'utf8');
    writeFileSync(file, before.replace(from, to));
    if (readFileSync(file, 'utf8') === before) throw new Error(`nothing changed in ${path}`);
  };
  it.each([
    [
      'a record taken away',
      () => rmSync(join(out, 'records', 'J-2.record.json')),
      'records/J-2.record.json is missing',
    ],
    [
      'a file added',
      () => writeFileSync(join(out, 'records', 'note.txt'), 'x'),
      'records/note.txt was added',
    ],
    ['a link added', () => symlinkSync(trust(), join(out, 'list')), 'list was added'],
    [
      'a record behind a link',
      () => {
        const record = join(out, 'records', 'J-2.record.json');
        renameSync(record, join(station.data, 'elsewhere'));
        symlinkSync(join(station.data, 'elsewhere'), record);
      },
      'records/J-2.record.json was changed',
    ],
    ['a list changed', () => change('jobs.csv', 'complete', 'incomplet'), 'jobs.csv was changed'],
    ['a file made longer', () => appendFileSync(join(out, 'READ-ME.txt'), 'x'), 'READ-ME.txt was changed'],
    [
      'a record changed',
      () => change('records/J-2.record.json', 'eyJ', 'eyK'),
      'records/J-2.record.json was changed',
    ],
    [
      'a key of another station on its list',
      () => change('trusted-keys.json', '"kid"', '"kie"'),
      'trusted-keys.json was changed',
    ],
    [
      'an index that tells otherwise',
      () => change('index.json', 'Example bay', 'Exemple bay'),
      'The signature does not belong to the index',
    ],
    [
      'the signature of the index taken away',
      () => rmSync(join(out, 'index.jws')),
      'The signature does not belong to the index',
    ],
    ['a proof taken away', () => rmSync(join(out, 'proofs.json')), 'proofs.json is missing'],
    [
      "an entry of the station's own changed",
      () => change('station-entries.json', 'Example bay', 'Exemple bay'),
      'are not in the log',
    ],
    [
      'a checkpoint of another size',
      () => change('log.checkpoint', '\n1', '\n2'),
      'log.checkpoint was changed',
    ],
  ])('shows %s', async (_, tamper, expected) => {
    tamper();
    const { value, text } = await verified();
    expect(text).toContain(expected);
    expect(text).toContain('NOT authentic or NOT whole');
    expect(value).toBe(1);
  });
});
