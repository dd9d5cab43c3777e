/** Backup, restore and recovery of a station that somebody works at, run as a user runs them. */
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { verify } from '../../../src/cli/evidence/verify.ts';
import { backUp, restore } from '../../../src/cli/station/backup.ts';
import { papersAgain, voidJob } from '../../../src/cli/station/jobs.ts';
import { checkpoint } from '../../../src/cli/station/log.ts';
import { check, stateLoss } from '../../../src/cli/station/log-check.ts';
import { recover } from '../../../src/cli/station/recover.ts';
import { workIn } from '../../audit/shop.ts';
import { answering, problemOf, said } from '../answers.ts';
import { auditStation, CAR } from '../audit/audit-station.ts';
import { folder } from '../program.ts';

const station = auditStation();
const at = (...names: string[]) => join(station.data, ...names);
const voided = () => said(() => voidJob('J-2', { ...station.scope(), by: 'Foreman', because: 'wrong car' }));
let kept: string;

beforeEach(async () => {
  kept = join(folder(), 'kept.db');
  await said(() => backUp(kept, station.scope()));
});

describe('restoring an older backup', () => {
  it('names the newer entries and their jobs, and restores nothing unasked', async () => {
    await voided();
    await workIn(station.data, [{ job: 'J-5', on: '2026-06-03', peaks: [27], vehicle: CAR, closed: false }]);
    const before = readFileSync(at('station.db'));
    expect(await problemOf(() => restore(kept, station.scope()))).toMatchObject({
      code: 'restore-newer',
      where: at('station.db'),
      message: expect.stringMatching(
        /^nothing was restored: \d+ entries newer than the backup \(J-2 void, J-5 opened\) would be set aside$/,
      ),
      next: expect.stringContaining('--set-aside'),
    });
    expect(readFileSync(at('station.db')).equals(before)).toBe(true);
    const { text } = await said(() => restore(kept, { ...station.scope(), setAside: true }));
    expect(text).toMatch(/\d+ entries newer than the backup \(J-2 void, J-5 opened\) are set aside\./);
    const [aside = ''] = readdirSync(station.data).filter((name) => name.includes('before-'));
    expect(text).toContain(`The old log is kept as ${at(aside)}.`);
    const back = await said(() => restore(at(aside), station.scope()));
    expect(back.value).toBe(0);
    expect(back.text).not.toContain('set aside');
  });

  it('asks where somebody is there to answer, and takes no for an answer', async () => {
    await voided();
    const no = answering({});
    expect(await problemOf(() => restore(kept, station.scope(), () => no.dialogue))).toMatchObject({
      code: 'restore-newer',
    });
    expect(no.lines.join()).toContain('1 entry newer than the backup (J-2 void) would be set aside.');
    const yes = answering({ 'Restore anyway?': 'yes' });
    expect((await said(() => restore(kept, station.scope(), () => yes.dialogue))).value).toBe(0);
  });

  it('says that the two took their own courses', async () => {
    await said(() => restore(kept, station.scope()));
    await voided();
    const first = join(folder(), 'first.db');
    await said(() => backUp(first, station.scope()));
    await said(() => restore(kept, { ...station.scope(), setAside: true }));
    await said(() => voidJob('J-1', { ...station.scope(), by: 'Foreman', because: 'other' }));
    expect((await problemOf(() => restore(first, station.scope()))).message).toMatch(
      /the log and the backup took two courses behind entry \d+: 1 entry of the log \(J-1 void\), where the backup has 1 of its own,/,
    );
  });

  it('keeps the trust list, and says where the file of a missing key comes from', async () => {
    const trust = readFileSync(at('trusted-keys.json'));
    rmSync(at('keys'), { recursive: true });
    const { text } = await said(() => restore(kept, station.scope()));
    expect(text).toMatch(
      /keys\/station\.[\w-]{43}\.pem: .*the file of the station key is missing\. Put it back from your copy/,
    );
    expect(readFileSync(at('trusted-keys.json')).equals(trust)).toBe(true);
    rmSync(at('trusted-keys.json'));
    await said(() => restore(kept, station.scope()));
    expect(readFileSync(at('trusted-keys.json')).equals(trust)).toBe(true);
  });
});

it('no log of another station is restored, whether this one still has its own or its keys alone', async () => {
  const other = join(folder(), 'data');
  await workIn(other, [{ job: 'X-1', on: '2026-02-03', peaks: [27], vehicle: CAR }]);
  const strange = join(folder(), 'other.db');
  await said(() => backUp(strange, { station: 'none.json', data: other }));
  const refused = {
    code: 'restore-other-station',
    where: strange,
    message: expect.stringMatching(/log of another station: "Example bay" \(plugmark\/log\/.*station here/),
  };
  const whole = { ...station.scope(), setAside: true as const };
  expect(await problemOf(() => restore(strange, whole))).toMatchObject(refused);
  renameSync(at('station.db'), at('elsewhere.db'));
  expect(await problemOf(() => restore(strange, whole))).toMatchObject(refused);
  rmSync(at('keys'), { recursive: true });
  expect(await problemOf(() => restore(strange, whole))).toMatchObject(refused);
  expect(existsSync(at('station.db'))).toBe(false);
});

describe('recovery from records alone', () => {
  const records = () => at('records');
  const lost = async (...jobs: readonly string[]) => {
    for (const job of jobs) await said(() => papersAgain(job, { ...station.scope(), out: records() }));
    rmSync(at('station.db'));
  };

  it('makes the log anew up to the last job that has a record, and says what cannot be known', async () => {
    await lost('J-1', 'J-2', 'J-3');
    const out = at('saved.db');
    const { value, text } = await said(() => recover({ ...station.scope(), out, records: records() }));
    expect(text).toContain('No log here: rebuilt from records only.');
    expect(text).toContain('Not in any record: jobs that were never closed');
    // The open job was in the log when the others were sealed, and is in no record.
    expect(value).toBe(1);
    const [, from, to] = /Checkpoint of \d+ entries: entries (\d+) to (\d+) are missing/.exec(text) ?? [];
    expect(Number(to)).toBeGreaterThan(Number(from));
    expect(text).not.toContain('LOST:');
    expect((await said(() => restore(out, station.scope()))).text).toContain(
      `${Number(from) - 1} entries, 3 jobs`,
    );
    // The station signed over what is gone, and signs nothing else before it says so.
    const seal = () => said(() => papersAgain('J-1', { ...station.scope(), out: at('again') }));
    expect((await problemOf(seal)).code).toBe('log-turned');
    await said(() => stateLoss({ ...station.scope(), because: 'the disk broke' }));
    expect((await seal()).value).toBe(0);
    const trust = at('trusted-keys.json');
    expect((await said(() => verify(at('again', 'J-1.record.json'), { trust }))).value).toBe(0);
    expect((await said(() => check([], station.scope()))).value).toBe(0);
  });

  it('tells its own records from those of another station by a key, and takes none where nothing tells', async () => {
    const other = join(folder(), 'data');
    await workIn(other, [{ job: 'X-1', on: '2026-02-03', peaks: [27, 27, 27, 27], vehicle: CAR }]);
    await said(() => papersAgain('X-1', { station: 'none.json', data: other, out: records() }));
    await lost('J-1', 'J-2', 'J-3');
    const list = (file: string) => JSON.parse(readFileSync(file, 'utf8')).keys;
    const trust = at('both.json');
    const keys = [...list(at('trusted-keys.json')), ...list(join(other, 'trusted-keys.json'))];
    writeFileSync(trust, JSON.stringify({ keys }));
    const options = { records: records(), trust };
    const { text } = await said(() => recover({ ...station.scope(), ...options, out: at('saved.db') }));
    expect(text).toMatch(/Left out: .*X-1\.record\.json: not shown to belong to this log/);
    mkdirSync(at('nothing'));
    const work = () => recover({ station: 'none.json', data: at('nothing'), ...options, out: at('s.db') });
    expect(await problemOf(work)).toMatchObject({ code: 'recover-several-logs' });
  });

  it('needs records', async () => {
    rmSync(at('station.db'));
    expect(await problemOf(() => recover({ ...station.scope(), out: at('s.db') }))).toMatchObject({
      code: 'log-missing',
    });
  });
});

describe('a checkpoint in a file', () => {
  it('is never written over another, and what was written is said', async () => {
    const out = join(folder(), 'kept.checkpoint');
    const first = await said(() => checkpoint({ ...station.scope(), out }));
    expect(first.text).toMatch(
      /^Checkpoint of \d+ entries written to .*kept\.checkpoint\. Keep it in another place\.\n$/,
    );
    const note = readFileSync(out);
    expect((await said(() => checkpoint({ ...station.scope(), out }))).text).toContain('Nothing written');
    await voided();
    expect(await problemOf(() => checkpoint({ ...station.scope(), out }))).toMatchObject({
      code: 'file-exists',
      where: out,
    });
    expect(readFileSync(out).equals(note)).toBe(true);
  });

  it('that the station kept too is named once by a check', async () => {
    const out = join(folder(), 'kept.checkpoint');
    await said(() => checkpoint({ ...station.scope(), out }));
    await said(() => checkpoint({ ...station.scope() }));
    const { text } = await said(() => check([out], station.scope()));
    expect(text.match(/Checkpoint of/g)).toHaveLength(1);
  });
});
