/** Whatever verification finds is said in the language of whoever reads it, at the time when he reads it. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { type VerificationReport, verifyRecord } from '../../src/evidence/verify.ts';
import { findingOf } from '../../src/package/finding.ts';
import { orThrow } from '../../src/result.ts';
import { ENGLISH, inLanguage } from '../../src/words/catalogue.ts';
import { hostileRecords } from '../independent/hostile/records.ts';
import { validRecords } from '../independent/hostile/valid.ts';
import { PSEUDO, unspoken } from '../words/pseudo.ts';
import { station, trusting } from './sample-job.ts';

const GOLDEN = new URL('../golden/edition-1/', import.meta.url);
const READ_AT = '2026-06-01T00:00:00.000Z';

const golden = readdirSync(GOLDEN)
  .filter((name) => name.endsWith('.record.json'))
  .map((name) => [name, Uint8Array.from(readFileSync(new URL(name, GOLDEN)))] as const);
const goldenTrust = orThrow(parseTrustList(readFileSync(new URL('trusted-keys.json', GOLDEN)), 'trust'));

const FILES: readonly (readonly [string, Uint8Array, typeof goldenTrust])[] = [
  ...golden.map(([name, bytes]) => [name, bytes, goldenTrust] as const),
  ...golden.map(([name, bytes]) => [`${name}, nobody trusted`, bytes, { keys: [] }] as const),
  ...Object.entries(validRecords()).map(([name, bytes]) => [name, bytes, trusting(station)] as const),
  ...hostileRecords().map(({ what, file }) => [what, file, trusting(station)] as const),
];

/** In front of what is wrong with the form of a file stands the place in it, by its names in the file. */
const withoutPlace = (detail: string) => detail.replace(/^record( payload)?(: [^⟦]*)?: (?=⟦)/, '');

/** Keys, times, digests, codes, the types of JSON, and what stands in quotation marks. */
const FACTS: readonly (string | RegExp)[] = [
  /\d{4}-\d\d-\d\dT[\d:.]+Z/,
  /(?<![\w-])[\w-]{43}(?![\w-])/,
  /\S+\/log\S*/,
  /[0-9a-f]{16,64}/,
  /"[^"]*"/,
  /\b[a-z]+(-[a-z]+)+\b/,
  // Names of members that are there twice.
  /^\s*(payload|job|torque)\s*\.$/,
  /\b(array|object|string|number|int|undefined|null|ISO datetime|value|readings|job:\S*)(?![\w])/,
];

const NAMED: ReadonlySet<string> = new Set(['id', 'tool', 'job', 'by', 'reason', 'station']);
/** What people wrote into a record, and what they called their tools. */
function namesIn(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) =>
    typeof one !== 'string'
      ? namesIn(one)
      : one.includes(' ') || /^[A-Z]/.test(one) || NAMED.has(name)
        ? [one]
        : [],
  );
}

/** All of it but its sentences. */
const factsOf = ({ checks, ...report }: VerificationReport) =>
  JSON.stringify([checks.map(({ detail: _, ...check }) => check), report]);

const detailsOf = ({ checks }: VerificationReport) => checks.map(({ detail }) => detail);

describe('what is found of a record', () => {
  it('is said in the language in which it is read, not in that in which it was found', () => {
    const [, bytes, trust] = FILES[0] ?? ['', new Uint8Array(), { keys: [] }];
    const report = inLanguage(PSEUDO, () => verifyRecord(bytes, trust, null, READ_AT));
    const english = detailsOf(report);
    expect(english.join(' ')).not.toContain('⟦');
    for (const detail of inLanguage(PSEUDO, () => detailsOf(report))) expect(detail).toContain('⟦');
    expect(inLanguage(ENGLISH, () => detailsOf(report))).toEqual(english);
  });

  it('of one among many as well, and to another thread it goes as it is read there', () => {
    const [, bytes] = FILES[0] ?? ['', new Uint8Array()];
    const finding = findingOf('FILE', bytes, { keys: [] }, READ_AT);
    expect(finding.fault).toContain('not on the trust list');
    expect(inLanguage(PSEUDO, () => structuredClone(finding).fault)).toMatch(/^⟦signer⟧: ⟦/);
  });
});

describe('no sentence comes by another way than the catalogue, and no fact rests on the language', () => {
  it.each(FILES)('%s', (_, bytes, trust) => {
    const report = verifyRecord(bytes, trust, null, READ_AT);
    const elsewhere = inLanguage(PSEUDO, () => verifyRecord(bytes, trust, null, READ_AT));
    const said = inLanguage(PSEUDO, () => detailsOf(elsewhere));
    const names = [...namesIn(report.record), ...trust.keys.flatMap(({ name }) => name ?? [])];
    expect(said.flatMap((detail) => unspoken(withoutPlace(detail), [...FACTS, ...names]))).toEqual([]);
    expect(factsOf(elsewhere)).toEqual(factsOf(report));
  });
});
