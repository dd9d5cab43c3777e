/** Both verifiers on the packages of a station that changed its key twice, before readers with older and newer lists. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { makePackage } from '../../src/cli/evidence/package.ts';
import { papersAgain } from '../../src/cli/station/jobs.ts';
import { rotateKey } from '../../src/cli/station/rotate.ts';
import { parseTrustList, type TrustList } from '../../src/evidence/trust.ts';
import { orThrow } from '../../src/result.ts';
import { said } from '../cli/answers.ts';
import { auditStation, scopeOf } from '../cli/audit/audit-station.ts';
import { plugmark, python } from './both-packages.ts';
import { missingPython } from './python.ts';

const missing = missingPython();
const place = mkdtempSync(join(tmpdir(), 'plugmark-rotated-'));
afterAll(() => rmSync(place, { recursive: true }));
const [before, after, lost] = ['before', 'after', 'lost'].map((name) => join(place, name));
if (before === undefined || after === undefined || lost === undefined) throw new Error('three packages');
const NEWEST = join(place, 'newest.json');

/** A job sealed under the first key; packages under the first, under one that it named, and under one that replaced a lost one. */
auditStation(async (data) => {
  const pack = (out: string) => said(() => makePackage({ ...scopeOf(data), out, papers: false }));
  await said(() => papersAgain('J-1', scopeOf(data)));
  await pack(before);
  await said(() => rotateKey(scopeOf(data)));
  await pack(after);
  await said(() => rotateKey({ ...scopeOf(data), lost: true }));
  await pack(lost);
  cpSync(join(data, 'trusted-keys.json'), NEWEST);
});

type Keys = TrustList['keys'];
const bare = (keys: Keys): Keys => keys.map(({ validUntil: _until, follows: _follows, ...key }) => key);

describe.skipIf(missing !== null)(
  `both verifiers on packages of a changed key${missing === null ? '' : `, left out: ${missing}`}`,
  () => {
    it.each<[string, (keys: Keys) => Keys, readonly string[]]>([
      ['the newest list', (keys) => keys, [lost]],
      ['the first key alone, as it was', (keys) => bare(keys.slice(0, 1)), [before, after]],
      ['the first key alone, which has ended', (keys) => keys.slice(0, 1), []],
      ['the first two as they were', (keys) => bare(keys.slice(0, 2)), [before, after]],
      ['the third alone', (keys) => keys.slice(2), [lost]],
      ['the third alone, as one that follows nobody', (keys) => bare(keys.slice(2)), [lost]],
      ['all three, and who follows whom left out', bare, [before, after]],
      [
        'the first and the third, and who follows whom left out',
        (keys) => bare([...keys.slice(0, 1), ...keys.slice(2)]),
        [before, after],
      ],
    ])('%s', async (_what, change, trusted) => {
      const trust = join(place, 'trust.json');
      const { keys } = orThrow(parseTrustList(readFileSync(NEWEST), 'newest'));
      writeFileSync(trust, JSON.stringify({ keys: change(keys) }));
      const all = [before, after, lost];
      const theirs = python(all, { trust });
      for (const [i, folder] of all.entries()) {
        const ours = await plugmark(folder, { trust });
        expect(theirs[i]?.found).toEqual(ours);
        expect(ours).toMatchObject({ verdict: 'authentic', trusted: trusted.includes(folder) });
      }
    });
  },
);
