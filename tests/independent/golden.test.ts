/** The second verifier on what earlier programs sealed: the verdict that each artefact must get, but for what takes the rules. */
import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { orThrow } from '../../src/result.ts';
import { BY_RULES, missingPython, verifiedByPython } from './python.ts';

/** One run of `plugmark verify` on a file or folder, and what it must say. */
const expectedSchema = z.object({
  path: z.string(),
  options: z.object({ trust: z.string(), kept: z.string().optional() }),
  verdict: z.string(),
  /** All that did not pass. */
  checks: z.record(z.string(), z.string()),
  withheld: z.record(z.string(), z.int()),
});

type Expected = z.infer<typeof expectedSchema>;

const GOLDEN = new URL('../golden/', import.meta.url).pathname;
const editions = globSync('*/expected.json', { cwd: GOLDEN }).map((file) => join(GOLDEN, file));
const missing = missingPython();

/** What the second verifier says of each: those of the same options in one run. */
function verifiedAll(folder: string, all: readonly Expected[]) {
  const runs = new Map<string, Expected[]>();
  for (const one of all) {
    const key = JSON.stringify([one.options.trust, one.options.kept]);
    runs.set(key, [...(runs.get(key) ?? []), one]);
  }
  const found = [...runs.values()].flatMap((run) => {
    const { trust = '', kept } = run[0]?.options ?? {};
    const list = orThrow(parseTrustList(readFileSync(join(folder, trust)), trust));
    const verified = verifiedByPython(
      run.map(({ path }) => join(folder, path)),
      { trust: list, ...(kept === undefined ? {} : { kept: join(folder, kept) }) },
    );
    return run.map((one, i) => [one, verified[i]] as const);
  });
  return new Map(found);
}

describe.skipIf(missing !== null || editions.length === 0)('a second verifier', () => {
  it.each(editions)('says of every artefact what it must: %s', (file) => {
    const folder = dirname(file);
    const all = z.array(expectedSchema).parse(JSON.parse(readFileSync(file, 'utf8')));
    const foundOf = verifiedAll(folder, all);
    const parted = all.filter((one) => {
      const { verdict, checks, withheld } = one;
      const found = foundOf.get(one);
      const failed = Object.keys(checks).filter((name) => checks[name] === 'failed');
      if (verdict === 'unreadable') return found?.verdict !== 'unreadable';
      const byRules = failed.length > 0 && failed.every((name) => BY_RULES.has(name));
      if (verdict === 'rejected') return found?.verdict !== 'not authentic' && !byRules;
      const { trusted, complete } = found ?? {};
      return !(
        found?.verdict === 'authentic' &&
        trusted === !failed.includes('signer') &&
        (complete === undefined || complete === null || complete === !failed.includes('completeness')) &&
        JSON.stringify(Object.entries(found.withheld ?? {}).sort()) ===
          JSON.stringify(Object.entries(withheld).sort())
      );
    });
    expect(all.length).toBeGreaterThan(0);
    expect(parted).toEqual([]);
  });

  it('reads every record that is there', () => {
    const listed = editions.flatMap((file) =>
      z
        .array(expectedSchema)
        .parse(JSON.parse(readFileSync(file, 'utf8')))
        .map(({ path }) => join(dirname(file), path)),
    );
    const records = globSync('**/*.record.json', { cwd: GOLDEN }).map((path) => join(GOLDEN, path));
    const alone = records.filter((path) => !existsSync(join(dirname(path), '..', 'index.json')));
    expect(alone.filter((path) => !listed.includes(path))).toEqual([]);
  });
});
