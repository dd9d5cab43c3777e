/** What a built program says of the artefacts of an edition, beside what it must say. */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';
import { EXPECTED_FILE, type Expected, expectedSchema } from './artefacts.ts';

export const GOLDEN = fileURLToPath(new URL('.', import.meta.url));
export const DIST = fileURLToPath(new URL('../../dist', import.meta.url));
const VERIFY_ALL = fileURLToPath(new URL('verify-all.mjs', import.meta.url));

/** The folders of the sealed editions. */
export const sealedEditions = (): readonly string[] =>
  readdirSync(GOLDEN)
    .filter((name) => /^edition-[1-9]\d*$/.test(name))
    .sort((a, b) => a.length - b.length || (a < b ? -1 : 1))
    .map((name) => join(GOLDEN, name));

/** What all files of the sealed editions were when they were sealed, as `sha256sum` writes it. */
export const SUMS = join(GOLDEN, 'SHA256SUMS');

/** A line for each file of an edition. */
export const sumsOf = (edition: string): readonly string[] =>
  readdirSync(edition, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map((one) => join(one.parentPath, one.name))
    .sort()
    .map((path) => {
      const digest = createHash('sha256').update(readFileSync(path)).digest('hex');
      return `${digest}  ${basename(edition)}${path.slice(edition.length).replaceAll('\\', '/')}`;
    });

export const expectedIn = (edition: string): readonly Expected[] =>
  z.array(expectedSchema).parse(JSON.parse(readFileSync(join(edition, EXPECTED_FILE), 'utf8')));

const check = z.object({
  name: z.string(),
  outcome: z.enum(['passed', 'doubtful', 'failed', 'not-applicable']),
});
const said = z.union([
  z.object({
    exit: z.int(),
    answer: z.object({
      verdict: z.string(),
      checks: z.array(check),
      withheld: z.array(z.object({ kind: z.string(), count: z.int() })),
    }),
  }),
  z.object({ fault: z.string() }),
]);

/** What the program in `dist` says, in the form of what is expected. */
export function verdictsOf(
  dist: string,
  edition: string,
  runs: readonly Pick<Expected, 'path' | 'options'>[],
) {
  const output = execFileSync(process.execPath, [VERIFY_ALL, dist, edition, JSON.stringify(runs)], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const lines = output.trimEnd().split('\n');
  return runs.map(({ path, options }, i) => {
    const one = said.parse(JSON.parse(lines[i] ?? '{"fault":"said nothing"}'));
    if ('fault' in one) return { path, options, fault: one.fault };
    const { verdict, checks, withheld } = one.answer;
    return {
      path,
      options,
      exit: one.exit,
      verdict,
      checks: Object.fromEntries(
        checks.flatMap(({ name, outcome }) => (outcome === 'passed' ? [] : [[name, outcome]])),
      ),
      withheld: Object.fromEntries(withheld.map(({ kind, count }) => [kind, count])),
    };
  });
}
