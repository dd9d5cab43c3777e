/** People whose names are gone: their keys stay theirs, and nothing untrue is said of them. */
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { forget } from '../../../src/cli/station/forget.ts';
import { papersAgain } from '../../../src/cli/station/jobs.ts';
import { addTechnician, listKeys, revokeKey } from '../../../src/cli/station/keys.ts';
import { check } from '../../../src/cli/station/log-check.ts';
import { readTrust } from '../../../src/cli/station/trust-file.ts';
import { thumbprint } from '../../../src/evidence/jwk.ts';
import { openRecord } from '../../../src/evidence/record.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { readBytes } from '../../../src/files/input.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation } from '../audit/audit-station.ts';

const station = auditStation();
beforeEach(() => vi.stubEnv('PLUGMARK_PIN', '123456'));
afterEach(() => vi.unstubAllEnvs());

const withKey = async (name: string): Promise<string> => {
  const { text } = await said(() => addTechnician(name, station.scope()));
  return /signs with ([\w-]{43})\./.exec(text)?.[1] ?? '';
};
const forgotten = (person: string) =>
  said(() =>
    forget({ ...station.scope(), person, yes: true, althoughHeld: true, by: 'Owner One', because: 'asked' }),
  );
const keys = async () => (await said(() => listKeys(station.scope()))).text;
const revoke = (kid: string) =>
  said(() => revokeKey(kid, { ...station.scope(), as: 'lost', because: 'the folder was copied' }));

async function sealedAgain(job: string) {
  await said(() => papersAgain(job, { ...station.scope(), out: join(station.data, 'again') }));
  const bytes = await readBytes(join(station.data, 'again', `${job}.record.json`), 'record', 1e7);
  const opened = openRecord(bytes);
  if (!opened.ok) throw new Error(opened.error.problem.message);
  const trust = await readTrust(join(station.data, 'trusted-keys.json'));
  return { record: opened.value.record, verdict: verifyRecord(bytes, trust).verdict };
}

describe('the keys of people whose names were forgotten', () => {
  it('are listed each by itself, and each can be revoked', async () => {
    const kids = [await withKey('Technician One'), await withKey('Technician Two')];
    for (const name of ['Technician One', 'Technician Two']) await forgotten(name);
    const text = await keys();
    for (const kid of kids) expect(text).toContain(`technician  ${kid}  withheld`);
    for (const kid of kids) await revoke(kid);
    expect((await keys()).match(/withheld {2}REVOKED/g)).toHaveLength(2);
  });

  it('are listed with all that one person had, of whom only the last one signs', async () => {
    const [first, second] = [await withKey('Technician Two'), await withKey('Technician Two')];
    expect(await keys()).toContain(`technician  ${second}  Technician Two\n`);
    expect(await keys()).toContain(`technician  ${first}  Technician Two  an earlier key`);
    await revoke(first);
    await forgotten('Technician Two');
    expect(await keys()).toContain(`technician  ${first}  withheld  REVOKED`);
    expect(await keys()).toContain(`technician  ${second}  withheld`);
    expect((await problemOf(() => revoke('x'.repeat(43)))).code).toBe('key-unknown');
  });

  it('are nobody else: a namesake who comes later starts without a key', async () => {
    const [first, second] = [await withKey('Technician Two'), (await forgotten('Technician Two')).value];
    expect(second).toBe(0);
    const now = await withKey('Technician Two');
    expect(await keys()).toContain(`technician  ${now}  Technician Two\n`);
    expect(await keys()).not.toContain('an earlier key');
    expect(await keys()).toContain(`technician  ${first}  withheld\n`);
  });
});

describe('the record of a job whose technician was forgotten', () => {
  it('still says that he has a key, and did not sign this writing of it', async () => {
    await withKey('Technician One');
    const kid = await withKey('Technician Two');
    expect((await sealedAgain('J-2')).record.technicianSignature).toBe('given');
    for (const name of ['Technician One', 'Technician Two']) await forgotten(name);
    const { record, verdict } = await sealedAgain('J-2');
    expect(verdict).toBe('authentic');
    expect(record.technicianSignature).toBe('not-given');
    const people = record.background.flatMap(({ event }) =>
      event.type === 'person-recorded' ? [event] : [],
    );
    expect(people.map(({ key }) => key && thumbprint(key))).toEqual([null, kid]);
  });

  it('says that he has none where he had none, whatever others had', async () => {
    await withKey('Technician One');
    for (const name of ['Technician One', 'Technician Two']) await forgotten(name);
    const { record, verdict } = await sealedAgain('J-2');
    expect([verdict, record.technicianSignature]).toEqual(['authentic', 'no-key']);
  });

  it('leaves the log whole, whoever decided being forgotten as well', async () => {
    for (const name of ['Technician One', 'Technician Two']) await forgotten(name);
    const decider = { person: 'Owner One', by: 'Clerk One', because: 'left the shop' };
    expect((await said(() => forget({ ...station.scope(), ...decider, yes: true }))).value).toBe(0);
    expect((await said(() => check([], station.scope()))).value).toBe(0);
  });
});
