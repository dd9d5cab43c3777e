/**
 * A second verifier, in another language, written from the manual and the printed schemas alone (record-format, package-format).
 * It and this program say the same of every record: honest ones, and ones made to mislead. What takes the rules, judging
 * again, only this program can say: such variants are listed as `judging`.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { topicFile } from '../../src/cli/help/topics.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import { writerOf } from '../../src/job/command-event.ts';
import { jobEventSchema } from '../../src/job/event.ts';
import { AT, kidOf, station, stranger, technician, trusting } from '../evidence/sample-job.ts';
import { alike, both as bothIn, type Result } from './both.ts';
import { type Content, contentOf } from './hostile/forged.ts';
import { withOneLeafChanged } from './hostile/leaves.ts';
import { hostileRecords } from './hostile/records.ts';
import { ROTATED, validRecords, WHOLE, WRONGLY_NAMED } from './hostile/valid.ts';
import type { Variant } from './hostile/variant.ts';
import { BY_RULES, missingPython } from './python.ts';

const missing = missingPython();
const folder = mkdtempSync(join(tmpdir(), 'plugmark-agree-'));
afterAll(() => rmSync(folder, { recursive: true }));

const TRUST = trusting(station);
/** Every fourth place of a record; all of them take long. */
const STRIDE = 4;
const PATIENCE_MS = 300_000;

const both = (files: Readonly<Record<string, Uint8Array>>, trust: TrustList) => bothIn(folder, files, trust);

describe.skipIf(missing !== null)(
  `a second verifier${missing === null ? '' : `, left out: ${missing}`}`,
  () => {
    describe('of what stations sealed', () => {
      let results: readonly Result[] = [];
      beforeAll(() => {
        results = both(validRecords(), TRUST);
      }, PATIENCE_MS);

      it('says that it is authentic, and the same of signer, completeness, clock and withheld texts', () => {
        expect(results.length).toBeGreaterThan(15);
        expect(results.filter((one) => !alike(one) || one.python.verdict !== 'authentic')).toEqual([]);
      });

      it('is asked about complete jobs and open ones, with and without all texts', () => {
        const all = results.map(({ plugmark }) => plugmark);
        expect(new Set(all.map(({ complete }) => complete))).toEqual(new Set([true, false]));
        expect(new Set(all.flatMap(({ withheld = {} }) => Object.keys(withheld))).size).toBeGreaterThan(1);
        expect(all.some(({ withheld = {} }) => Object.keys(withheld).length === 0)).toBe(true);
      });
    });

    it('is asked about every entry that a person writes, and the manual names them all', () => {
      const manual = readFileSync(topicFile('record-format'), 'utf8');
      const [, list = ''] = /where a person did it: ([^.]*)\./.exec(manual) ?? [];
      const named = [...list.matchAll(/`([a-z-]+)`/g)].map(([, type]) => type).sort();
      const kinds: string[] = jobEventSchema.options.map(({ shape }) => shape.type.value);
      const byPeople = kinds.filter((type) => writerOf(JSON.parse(`{"type":"${type}"}`)) === 'technician');
      expect(named).toEqual(byPeople.sort());
      const sealed: string[] = Object.values(validRecords()).flatMap((file) =>
        contentOf(file).entries.map(({ event }: Content) => event.type),
      );
      expect(sealed).toEqual(
        expect.arrayContaining(['tool-in-use', 'technician-at-work', 'trial-click-skipped']),
      );
    });

    describe('of what was made to mislead', () => {
      let variants: readonly Variant[] = [];
      let by: ReadonlyMap<string, Result> = new Map();
      beforeAll(() => {
        variants = hostileRecords();
        const results = both(Object.fromEntries(variants.map(({ what, file }) => [what, file])), TRUST);
        by = new Map(results.map((result) => [result.what, result]));
      }, PATIENCE_MS);
      const results = () => [...by.values()];

      it('says what this program says', () => {
        const parted = variants.filter(({ what, expected }) => {
          const one = by.get(what);
          if (one === undefined) return true;
          return expected === 'judging'
            ? one.python.verdict !== 'authentic' || one.plugmark.verdict !== 'not authentic'
            : one.python.verdict !== expected || !alike(one);
        });
        expect(parted.map(({ what, expected }) => ({ expected, ...by.get(what) }))).toEqual([]);
      });

      it('is asked about more than sixty, each under a name of its own', () => {
        expect(new Set(variants.map(({ what }) => what)).size).toBe(variants.length);
        const refused = variants.filter(({ expected }) => expected === 'not authentic');
        expect(refused.length).toBeGreaterThan(150);
        expect(new Set(variants.map(({ expected }) => expected)).size).toBe(4);
      });

      it('this program refuses each with its place', () => {
        const refused = results().filter(({ plugmark }) => plugmark.verdict !== 'authentic');
        expect(refused.filter(({ why }) => why === '')).toEqual([]);
        const inTheForm = refused.filter(({ what }) => /^(form|texts|disclosure|content):/.test(what));
        expect(inTheForm.length).toBeGreaterThan(60);
        expect(inTheForm.filter(({ why }) => !/^record( payload)?: ./.test(why))).toEqual([]);
      });

      it("a key of small order is refused as nobody's key, not only because its signature does not hold", () => {
        const weak = results().filter(({ what }) => what.startsWith('a key that anybody can sign under'));
        expect(weak.length).toBeGreaterThan(12);
        expect(weak.filter(({ why }) => !why.includes("nobody's key"))).toEqual([]);
      });

      it('takes what only the rules can tell', () => {
        for (const { what } of variants.filter(({ expected }) => expected === 'judging'))
          expect(by.get(what)?.failed.filter((name) => !BY_RULES.has(name))).toEqual([]);
      });
    });

    it(
      'of a record in which the station changed one place and wrote log and signatures anew, it says the same, but for what takes the rules',
      () => {
        const results = both(withOneLeafChanged(WHOLE, STRIDE), TRUST);
        expect(results.length).toBeGreaterThan(150);
        const parted = results.filter((one) =>
          one.plugmark.verdict === 'authentic'
            ? !alike(one)
            : one.python.verdict === 'authentic' && one.failed.some((name) => !BY_RULES.has(name)),
        );
        expect(parted).toEqual([]);
      },
      PATIENCE_MS,
    );

    describe('of whom a reader trusts', () => {
      const key = (signer: typeof station, more: object = {}): TrustList['keys'][number] => ({
        ...publicJwk(signer.privateKey),
        kid: kidOf(signer),
        ...more,
      });
      const before = '2026-03-01T00:00:00.000Z';
      const after = '2026-03-03T00:00:00.000Z';
      const revoked = (from: string, reason: string) => ({ revoked: { from, reason } });
      it.each<[string, TrustList['keys'], whole: boolean, rotated: boolean]>([
        ['nobody', [], false, false],
        ['the key', [key(station)], true, true],
        ['the key as a station', [key(station, { role: 'station' })], true, true],
        ['the key as a technician', [key(station, { role: 'technician' })], false, false],
        ['the key from later on', [key(station, { validFrom: after })], false, false],
        [
          'the key until then, and nothing shows that it signed before',
          [key(station, { validUntil: AT })],
          false,
          false,
        ],
        ['the key until earlier', [key(station, { validUntil: before })], false, false],
        [
          'the key, lost later, and nothing shows that it signed before',
          [key(station, revoked(after, 'lost'))],
          false,
          false,
        ],
        ['the key, lost then', [key(station, revoked(AT, 'lost'))], false, false],
        ['the key, lost before', [key(station, revoked(before, 'lost'))], false, false],
        ['the key, compromised later', [key(station, revoked(after, 'compromised'))], false, false],
        ['the key before', [key(stranger)], false, true],
        ['the key before, until earlier', [key(stranger, { validUntil: before })], false, false],
        ['the key before, retired since', [key(stranger, revoked(after, 'retired'))], false, false],
        [
          'the key before, until later: it names nobody',
          [key(stranger, { validUntil: after })],
          false,
          false,
        ],
        [
          'the key before, which another one follows',
          [key(stranger), key(technician, { follows: kidOf(stranger) })],
          false,
          false,
        ],
        [
          'the key before and this one, which follows it',
          [key(stranger), key(station, { follows: kidOf(stranger) })],
          true,
          true,
        ],
        [
          'the key before, but this one no more',
          [key(stranger), key(station, revoked(before, 'lost'))],
          false,
          false,
        ],
      ])('%s', (_what, keys, whole, rotated) => {
        const results = both({ whole: WHOLE, rotated: ROTATED, ...WRONGLY_NAMED }, { keys });
        expect(results.filter((one) => !alike(one))).toEqual([]);
        const of = Object.fromEntries(
          results.map(({ what, python }) => [what, 'trusted' in python && python.trusted]),
        );
        expect(of).toMatchObject({ whole, rotated });
        // Named wrongly, it is trusted where it is on the list itself, and nowhere else.
        for (const what of Object.keys(WRONGLY_NAMED)) expect(of[what], what).toBe(whole);
      });
    });
  },
);
