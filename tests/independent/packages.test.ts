/** The same of packages: both verifiers on what a station packed, and on what somebody made of it. */
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';
import { makePackage } from '../../src/cli/evidence/package.ts';
import { verify } from '../../src/cli/evidence/verify.ts';
import { checkpoint } from '../../src/cli/station/log.ts';
import { openStationFolder, stateOf } from '../../src/cli/station/station.ts';
import { currentKey } from '../../src/cli/station/station-keys.ts';
import { readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import type { PrivateKey } from '../../src/evidence/platform/signature.ts';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { ProblemError } from '../../src/problem.ts';
import { orThrow } from '../../src/result.ts';
import { said } from '../cli/answers.ts';
import { auditStation, impactOn, scopeOf } from '../cli/audit/audit-station.ts';
import type { Content } from './hostile/forged.ts';
import {
  type Change,
  type Expected,
  FINE,
  handsOn,
  REFUSED,
  STRANGER,
  UNREADABLE,
} from './hostile/packages.ts';
import { missingPython, verifiedByPython } from './python.ts';

const missing = missingPython();
const place = mkdtempSync(join(tmpdir(), 'plugmark-packages-'));
afterAll(() => rmSync(place, { recursive: true }));
const [whole, bare] = [join(place, 'whole'), join(place, 'bare')];
const CHECKPOINT = 'kept.checkpoint';

/** Two packages of it, with all texts and with none. */
const station = auditStation(async (data) => {
  const kept = join(data, CHECKPOINT);
  await said(() => checkpoint({ ...scopeOf(data), out: kept }));
  await impactOn(data);
  await said(() => makePackage({ ...scopeOf(data), out: whole, kept, papers: false }));
  await said(() => makePackage({ ...scopeOf(data), out: bare, without: 'all', papers: false }));
  expect(existsSync(join(whole, 'auditor.checkpoint'))).toBe(true);
});

const trustFile = () => join(station.data, 'trusted-keys.json');
const trustList = () => orThrow(parseTrustList(readFileSync(trustFile()), 'trust'));

async function ownKey() {
  const { folder, log, ...rest } = await openStationFolder(station.data);
  const { privateKey } = await currentKey(folder, stateOf({ folder, log, ...rest }));
  log.close();
  return privateKey;
}

/** What this program says, in the words of the other. */
async function plugmark(folder: string, kept?: string): Promise<Readonly<Record<string, unknown>>> {
  try {
    const given = { trust: trustFile(), json: true, ...(kept === undefined ? {} : { kept }) } as const;
    const { text } = await said(() => verify(folder, given));
    const { verdict, withheld, checks } = JSON.parse(text);
    const failed = checks
      .filter(({ outcome }: Content) => outcome === 'failed')
      .map(({ name }: Content) => name);
    // Only the program that wrote the files for people can write them again.
    const isReadings = failed.length > 0 && failed.every((name: string) => name === 'papers');
    if (verdict === 'rejected' && !isReadings) return { verdict: 'not authentic' };
    return {
      verdict: 'authentic',
      trusted: checks.find(({ name }: Content) => name === 'signer')?.outcome === 'passed',
      withheld: Object.fromEntries(withheld.map(({ kind, count }: Content) => [kind, count])),
    };
  } catch (fault) {
    if (fault instanceof ProblemError) return { verdict: 'unreadable' };
    throw fault;
  }
}

/** What the Python says, in as many words. */
function python(paths: readonly string[], kept?: string) {
  const given = { trust: trustList(), ...(kept === undefined ? {} : { kept }) };
  return verifiedByPython(paths, given).map(({ verdict, trusted, withheld, why }) => ({
    found: verdict === 'authentic' ? { verdict, trusted, withheld } : { verdict },
    why,
  }));
}

describe.skipIf(missing !== null)(
  `packages before both verifiers${missing === null ? '' : `, left out: ${missing}`}`,
  () => {
    const kept = () => join(station.data, CHECKPOINT);

    it('they say the same of every one', async () => {
      const key = await ownKey();
      const cases: { readonly what: string; readonly expected: Expected; readonly at: string }[] = [
        { what: 'without any text', expected: 'authentic', at: bare },
      ];
      const add = (all: Readonly<Record<string, Change>>, expected: Expected) => {
        for (const [what, change] of Object.entries(all)) {
          const at = join(place, String(cases.length));
          cpSync(whole, at, { recursive: true });
          change(handsOn(at, key));
          cases.push({ what, expected, at });
        }
      };
      add(UNREADABLE, 'unreadable');
      add(REFUSED, 'not authentic');
      add(FINE, 'authentic');
      expect(cases.length).toBeGreaterThan(60);

      const theirs = python(cases.map(({ at }) => at));
      const parted: unknown[] = [];
      for (const [i, one] of cases.entries()) {
        const ours = await plugmark(one.at);
        const fits = isDeepStrictEqual(ours, theirs[i]?.found) && ours['verdict'] === one.expected;
        if (!fits) parted.push({ ...one, ours, theirs: theirs[i] });
      }
      expect(parted).toEqual([]);
    });

    it.each<[string, Expected, (note: string) => Promise<string> | string]>([
      ['as it was given', 'authentic', (note) => note],
      ['by a stranger', 'not authentic', (note) => signed(note, STRANGER)],
      [
        'of another root',
        'not authentic',
        async (note) => signed(note, await ownKey(), { root: Buffer.alloc(32) }),
      ],
      [
        'of a size that is not proven',
        'not authentic',
        async (note) => signed(note, await ownKey(), { size: 5 }),
      ],
      ['of a longer log', 'not authentic', async (note) => signed(note, await ownKey(), { size: 9999 })],
      [
        'of another log',
        'not authentic',
        async (note) => signed(note, await ownKey(), { origin: 'plugmark/log/x' }),
      ],
    ])("they say the same beside a reader's checkpoint %s", async (_what, expected, change) => {
      const own = join(place, 'own.checkpoint');
      writeFileSync(own, await change(readFileSync(kept(), 'utf8')));
      const ours = await plugmark(whole, own);
      expect(python([whole], own)[0]?.found).toEqual(ours);
      expect(ours['verdict']).toBe(expected);
    });
  },
);

/** The note with something changed, signed anew. */
function signed(
  note: string,
  key: PrivateKey,
  change: { readonly origin?: string; readonly size?: number; readonly root?: Buffer } = {},
): string {
  const { origin, size, root } = orThrow(readCheckpoint(note, 'note'));
  return signCheckpoint({ origin, size, root, ...change }, key);
}
