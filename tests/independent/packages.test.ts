/** The same of packages: both verifiers on what a station packed, and on what somebody made of it. */
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';
import { makePackage } from '../../src/cli/evidence/package.ts';
import { checkpoint } from '../../src/cli/station/log.ts';
import { openStationFolder, stateOf } from '../../src/cli/station/station.ts';
import { currentKey } from '../../src/cli/station/station-keys.ts';
import { readCheckpoint, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import type { PrivateKey } from '../../src/evidence/platform/signature.ts';
import { orThrow } from '../../src/result.ts';
import { said } from '../cli/answers.ts';
import { auditStation, impactOn, scopeOf } from '../cli/audit/audit-station.ts';
import { plugmark, python } from './both-packages.ts';
import {
  type Change,
  type Expected,
  FINE,
  handsOn,
  REFUSED,
  STRANGER,
  UNREADABLE,
} from './hostile/packages.ts';
import { missingPython } from './python.ts';

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

async function ownKey() {
  const { folder, log, ...rest } = await openStationFolder(station.data);
  const { privateKey } = await currentKey(folder, stateOf({ folder, log, ...rest }));
  log.close();
  return privateKey;
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

      const theirs = python(
        cases.map(({ at }) => at),
        { trust: trustFile() },
      );
      const parted: unknown[] = [];
      for (const [i, one] of cases.entries()) {
        const ours = await plugmark(one.at, { trust: trustFile() });
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
      const reader = { trust: trustFile(), kept: own };
      const ours = await plugmark(whole, reader);
      expect(python([whole], reader)[0]?.found).toEqual(ours);
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
