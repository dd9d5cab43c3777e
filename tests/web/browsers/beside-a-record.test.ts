/** What a reader gives beside a record: a time stamp with the certificates to believe, a policy of witnesses. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parsePolicy } from '../../../src/evidence/policy.ts';
import { timeQuery } from '../../../src/evidence/time-token.ts';
import { trustedTimeIn } from '../../../src/evidence/trusted-time.ts';
import { OF_PACKAGE } from '../../../src/report/verification.ts';
import { orThrow } from '../../../src/result.ts';
import { authorities, hasOpenssl } from '../../evidence/authority.ts';
import { witnessKeys } from '../../serve/witness-keys.ts';
import { browsersHere, give, opened, saidOf, started } from './browsers.ts';
import {
  complete,
  EDITION_1,
  folderOfTests,
  golden,
  packageFiles,
  saidByCommand,
  trustedKeys,
  trustOfGolden,
} from './given.ts';
import { zipOf } from './zip-of.ts';

const { folder, written } = folderOfTests();

const POLICY = `witness w ${witnessKeys('witness.example/1', '11')[0]?.vkey}\nquorum w\n`;

describe.each(browsersHere)('in %s', (name) => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await started(name);
  });
  afterAll(() => browser.close());

  it.runIf(hasOpenssl)('holds a time stamp, by the certificates that the reader gives', async () => {
    const record = golden('complete.record.json');
    const here = authorities(folder);
    here.makeRoot('one');
    here.certify('one', 'one', { serial: '7' });
    const query = await timeQuery(record, Uint8Array.of(0x41, 2, 3, 4, 5, 6, 7, 8));
    const token = here.stamped(query, 'one');
    const stamp = written('complete.tsr', token);
    const { page, complaints } = await opened(browser);
    await give(page, 'files', complete, trustedKeys, stamp);
    expect((await saidOf(page)).refusals.join()).toMatch(/nothing says which authority to believe/);
    const pem = join(folder, 'one-ca.pem');
    await give(page, 'trust-file', pem);
    const trust = trustOfGolden();
    const time = await trustedTimeIn(token, readFileSync(pem, 'latin1'), record);
    expect(time.before).not.toBeNull();
    expect(await saidOf(page)).toEqual(saidByCommand(record, trust, { time }));
    await give(page, 'files', new URL('two-plugs.record.json', EDITION_1), stamp);
    expect((await saidOf(page)).checks.join()).toMatch(/it does not belong to this record/);
    await give(page, 'files', complete);
    expect(await saidOf(page)).toEqual(saidByCommand(record, trust));
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('asks for the witnesses of the policy that the reader gives, of a record and of a package', async () => {
    const record = golden('complete.record.json');
    const trust = trustOfGolden();
    const policy = orThrow(parsePolicy(Buffer.from(POLICY), 'p'));
    const { page } = await opened(browser);
    await give(page, 'files', complete, trustedKeys, written('a.policy', POLICY));
    const expected = saidByCommand(record, trust, { byPolicy: { policy, note: null } });
    expect(expected.checks.join()).toContain('failed witnesses: ');
    expect(await saidOf(page)).toEqual(expected);
    await give(page, 'files', written('package.zip', zipOf(packageFiles())));
    const { sentence, checks } = await saidOf(page);
    expect(sentence).toContain(OF_PACKAGE.untrusted);
    expect(checks.find((one) => one.includes(' witnesses: '))).toMatch(/^failed/);
    await give(page, 'trust-file', written('broken.policy', 'quorum nobody\n'));
    expect((await saidOf(page)).refusals.join()).toMatch(/broken.policy: line 1/);
    await page.close();
  });
});
