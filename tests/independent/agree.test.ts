/**
 * A second verifier, in another language, written from the manual and the printed schemas alone (record-format, package-format). It and
 * this program say the same of every record and package: honest ones, and ones made to mislead. What takes the rules, judging again,
 * only this program can say: those are listed as such.
 */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { checkClock } from '../../src/evidence/clock.ts';
import { publicJwk } from '../../src/evidence/jwk.ts';
import type { TrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { AT, kidOf, station, stranger, trusting } from '../evidence/sample-job.ts';
import { hostileRecords } from './hostile-records.ts';
import { withOneLeafChanged } from './leaves.ts';
import { type Found, missingPython, verifiedByPython } from './python.ts';
import { ROTATED, validRecords, WHOLE, WRONGLY_NAMED } from './valid.ts';

const missing = missingPython();
const folder = mkdtempSync(join(tmpdir(), 'plugmark-agree-'));
afterAll(() => rmSync(folder, { recursive: true }));

type Said = Omit<Found, 'path' | 'why'>;

/** What this program says, in the words of the other; `failed` are the checks that failed. */
function said(
  file: Uint8Array,
  trust: TrustList,
): Said & { readonly failed: readonly string[]; readonly why: string } {
  const { verdict, checks, record, withheld } = verifyRecord(file, trust);
  const outcome = (name: string) => checks.find((check) => check.name === name)?.outcome;
  const failures = checks.filter((check) => check.outcome === 'failed');
  const failed = failures.map(({ name }) => name);
  const why = failures[0]?.detail ?? '';
  if (verdict === 'unreadable') return { verdict, failed, why };
  if (verdict === 'rejected' || record === null) return { verdict: 'not authentic', failed, why };
  return {
    verdict: 'authentic',
    trusted: outcome('signer') === 'passed',
    complete: outcome('completeness') === 'passed',
    withheld: Object.fromEntries(withheld.map(({ kind, count }) => [kind, count])),
    jumps: checkClock(record.entries, record.background).jumps.map(({ n }) => n),
    failed,
    why,
  };
}

/** Both on all files, by name. */
function both(files: Readonly<Record<string, Uint8Array>>, trust: TrustList) {
  const all = Object.entries(files);
  const paths = all.map(([, file], i) => {
    const path = join(folder, `${i}.record.json`);
    writeFileSync(path, file);
    return path;
  });
  const found = verifiedByPython(paths, trust);
  return all.map(([what, file], i) => {
    const { path: _path, why = '', ...python } = found[i] ?? { path: '', verdict: 'unreadable' };
    const { failed, why: ours, ...plugmark } = said(file, trust);
    return { what, python, plugmark, failed, why: { python: why, plugmark: ours } };
  });
}

const TRUST = trusting(station);
/** Every fifth place; all of them take a minute. */
const STRIDE = 1;
/** What may tell a record from an honest one only by judging again. */
const BY_RULES = new Set(['judged again', 'contents']);

describe.skipIf(missing !== null)(
  `a verifier that somebody else wrote${missing === null ? '' : `: ${missing}`}`,
  () => {
    describe('of what stations sealed', () => {
      const results = missing === null ? both(validRecords(), TRUST) : [];

      it('takes it as authentic, and says the same of signer, completeness, clock and withheld texts', () => {
        expect(results.length).toBeGreaterThan(15);
        expect(results.map(({ what, python }) => ({ what, python }))).toEqual(
          results.map(({ what, plugmark }) => ({ what, python: plugmark })),
        );
        expect(results.filter(({ python }) => python.verdict !== 'authentic')).toEqual([]);
      });

      it('and among it are complete ones and open ones, with and without all texts', () => {
        const all = results.map(({ python }) => python);
        expect(new Set(all.map(({ complete }) => complete))).toEqual(new Set([true, false]));
        expect(new Set(all.flatMap(({ withheld = {} }) => Object.keys(withheld))).size).toBeGreaterThan(1);
        expect(all.some(({ withheld = {} }) => Object.keys(withheld).length === 0)).toBe(true);
      });
    });

    describe('of what was made to mislead', () => {
      const variants = missing === null ? hostileRecords() : [];
      const results = both(Object.fromEntries(variants.map(({ what, file }) => [what, file])), TRUST);
      const by = new Map(results.map((result) => [result.what, result]));

      it('says what this program says', () => {
        expect(new Set(variants.map(({ what }) => what)).size).toBe(variants.length);
        const parted = variants.flatMap(({ what, expected }) => {
          const result = by.get(what);
          if (result === undefined) return [{ what }];
          const { python, plugmark } = result;
          const alike =
            expected === 'judging'
              ? python.verdict === 'authentic' && plugmark.verdict === 'not authentic'
              : python.verdict === expected && JSON.stringify(python) === JSON.stringify(plugmark);
          return alike ? [] : [{ expected, ...result }];
        });
        expect(parted).toEqual([]);
      });

      it('is asked about more than sixty, of every kind', () => {
        const refused = variants.filter(({ expected }) => expected === 'not authentic');
        expect(refused.length).toBeGreaterThan(150);
        expect(new Set(variants.map(({ expected }) => expected)).size).toBe(4);
      });

      it('is refused by this program with the place', () => {
        const silent = results.filter(
          ({ plugmark, why }) => plugmark.verdict !== 'authentic' && why.plugmark === '',
        );
        expect(silent).toEqual([]);
        for (const { what, plugmark, why } of results)
          if (/^(form|texts|disclosure|content):/.test(what) && plugmark.verdict === 'not authentic')
            expect(why.plugmark, what).toMatch(/^record/);
      });

      it("is refused as nobody's key where a key is of small order", () => {
        const weak = results.filter(({ what }) => what.startsWith('a key that anybody can sign under'));
        expect(weak.length).toBeGreaterThan(12);
        for (const { what, why } of weak) expect(why.plugmark, what).toContain("nobody's key");
      });

      it('is passed over by it only where judging takes the rules', () => {
        for (const { what } of variants.filter(({ expected }) => expected === 'judging'))
          expect(by.get(what)?.failed.filter((name) => !BY_RULES.has(name))).toEqual([]);
      });
    });

    describe('of a record in which the station changed one figure, one text or one member, and wrote all anew', () => {
      const files = missing === null ? withOneLeafChanged(WHOLE, STRIDE) : {};
      const results = both(files, TRUST);

      it('says what this program says, but for what takes the rules', () => {
        expect(results.length).toBeGreaterThan(150);
        const parted = results.filter(({ python, plugmark, failed }) =>
          plugmark.verdict === 'authentic'
            ? JSON.stringify(python) !== JSON.stringify(plugmark)
            : python.verdict === 'authentic' && failed.some((name) => !BY_RULES.has(name)),
        );
        expect(parted).toEqual([]);
      });
    });

    describe('of whom a reader trusts', () => {
      const key = (signer: typeof station, more: object = {}): TrustList['keys'][number] => ({
        ...publicJwk(signer.privateKey),
        kid: kidOf(signer),
        ...more,
      });
      const before = '2026-03-01T00:00:00.000Z';
      const after = '2026-03-03T00:00:00.000Z';
      it.each<[string, TrustList['keys'], { readonly whole: boolean; readonly rotated: boolean }]>([
        ['nobody', [], { whole: false, rotated: false }],
        ['the key', [key(station)], { whole: true, rotated: true }],
        ['the key as a station', [key(station, { role: 'station' })], { whole: true, rotated: true }],
        ['the key as a technician', [key(station, { role: 'technician' })], { whole: false, rotated: false }],
        ['the key from later on', [key(station, { validFrom: after })], { whole: false, rotated: false }],
        ['the key until then', [key(station, { validUntil: AT })], { whole: true, rotated: true }],
        ['the key until earlier', [key(station, { validUntil: before })], { whole: false, rotated: false }],
        [
          'the key, lost later',
          [key(station, { revoked: { from: after, reason: 'lost' } })],
          { whole: true, rotated: true },
        ],
        [
          'the key, lost before',
          [key(station, { revoked: { from: before, reason: 'lost' } })],
          { whole: false, rotated: false },
        ],
        [
          'the key, compromised later',
          [key(station, { revoked: { from: after, reason: 'compromised' } })],
          { whole: false, rotated: false },
        ],
        ['the key before', [key(stranger)], { whole: false, rotated: true }],
        [
          'the key before, until earlier',
          [key(stranger, { validUntil: before })],
          { whole: false, rotated: false },
        ],
        [
          'the key before, retired since',
          [key(stranger, { revoked: { from: after, reason: 'retired' } })],
          { whole: false, rotated: false },
        ],
        [
          'the key before, but not this one any more',
          [key(stranger), key(station, { revoked: { from: before, reason: 'lost' } })],
          { whole: false, rotated: false },
        ],
      ])('%s', (_what, keys, trusted) => {
        const results = both({ whole: WHOLE, rotated: ROTATED, ...WRONGLY_NAMED }, { keys });
        for (const { python, plugmark } of results) expect(python).toEqual(plugmark);
        const of = Object.fromEntries(results.map(({ what, python }) => [what, python.trusted]));
        expect(of).toMatchObject(trusted);
        if (!trusted.whole) for (const what of Object.keys(WRONGLY_NAMED)) expect(of[what], what).toBe(false);
      });
    });

    const golden = new URL('../golden/', import.meta.url).pathname;
    describe.skipIf(!existsSync(golden))('of artefacts that were sealed once', () => {
      const files = existsSync(golden)
        ? readdirSync(golden, { recursive: true, encoding: 'utf8' }).filter((name) =>
            name.endsWith('.record.json'),
          )
        : [];
      it('says what this program says', () => {
        const results = both(
          Object.fromEntries(files.map((name) => [name, readFileSync(join(golden, name))])),
          TRUST,
        );
        for (const { what, python, plugmark } of results) expect(python, what).toEqual(plugmark);
      });
    });
  },
);
