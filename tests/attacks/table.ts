/** Runs the attacks and prints what became of each, as a table (npm run attacks). */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { z } from 'zod';

const ROOT = new URL('../..', import.meta.url).pathname;

/** Who tries it, and what stands against him. */
const FILES: Readonly<Record<string, readonly [who: string, byWhat: string]>> = {
  'tests/attacks/old-key.test.ts': ['who holds an old key', 'trust list, later log, time stamp'],
  'tests/attacks/small-order.test.ts': ['anybody', 'form of a key'],
  'tests/attacks/keys-on-disk.test.ts': ['who holds the disk', 'old keys destroyed or locked, doctor'],
  'tests/attacks/turned-log.test.ts': ['who holds the disk', 'one history, last checkpoint, newest record'],
  'tests/attacks/database.test.ts': ['who writes to the database', 'hash tree, log check'],
  'tests/attacks/package-readings.test.ts': ['the shop', 'files for people held against records'],
  'tests/attacks/papers.test.ts': ['who hands on a paper', 'pages made anew'],
  'tests/attacks/stranger-station.test.ts': ['another trusted station', 'line of keys, names of the list'],
  'tests/attacks/forms.test.ts': ['anybody, and the holder of the key', 'one writing of a content'],
  'tests/attacks/policy-files.test.ts': ['the shop, and strangers', 'policy, keys of the station'],
  'tests/attacks/notes-on-disk.test.ts': ['who holds the disk', 'signatures of witnesses, plain files'],
  'tests/attacks/witness.test.ts': ['a station with two histories, strangers', 'witness, cosignatures'],
  'tests/attacks/witness-keys.test.ts': [
    'who holds a key that a log had before',
    'one key a log, retired for good',
  ],
  'tests/attacks/time-stamps.test.ts': ['who wants an older date', 'token, certificate, hash, time'],
  'tests/attacks/by-design.test.ts': ['the holder of the key', 'named by verify; a kept checkpoint'],
  'tests/evidence/dishonest-station.test.ts': ['the holder of the key', 'log, contents, judged again'],
  'tests/evidence/signatures.test.ts': ['anybody', 'signatures'],
  'tests/cli/evidence/verify-package.test.ts': ['anybody, and the shop', 'index, files, log'],
  'tests/independent/rotation.test.ts': ['who holds an old key, another trusted station', 'two verifiers'],
  'tests/independent/rotated-packages.test.ts': ['who has an older or a newer list', 'two verifiers'],
  'tests/independent/packages.test.ts': ['anybody, and the shop', 'two verifiers'],
};

const reportSchema = z.object({
  testResults: z.array(
    z.object({
      name: z.string(),
      assertionResults: z.array(z.object({ fullName: z.string(), status: z.string() })),
    }),
  ),
});

const OUTCOME: Readonly<Record<string, string>> = { passed: 'as it says', failed: 'NOT as it says' };
const cell = (text: string) => text.replaceAll('|', '/').replaceAll(/\s+/g, ' ').trim();

const folder = mkdtempSync(join(tmpdir(), 'attacks-'));
const out = join(folder, 'report.json');
const config = ['--config', 'tests/vitest.config.ts', '--reporter=json', `--outputFile=${out}`];
try {
  const args = ['node_modules/vitest/vitest.mjs', 'run', ...config, ...Object.keys(FILES)];
  execFileSync(process.execPath, args, { cwd: ROOT, stdio: ['ignore', 'ignore', 'inherit'] });
} catch {
  // What failed is in the table.
}
const { testResults } = reportSchema.parse(JSON.parse(readFileSync(out, 'utf8')));
rmSync(folder, { recursive: true });
const rows = Object.entries(FILES).flatMap(([file, [who, byWhat]]) =>
  (testResults.find(({ name }) => relative(ROOT, name) === file)?.assertionResults ?? []).map(
    ({ fullName, status }) =>
      `| ${who} | ${cell(fullName)} | ${OUTCOME[status] ?? 'not tried'} | ${byWhat} |`,
  ),
);
const all = testResults.flatMap(({ assertionResults }) => assertionResults);
const failed = all.filter(({ status }) => status === 'failed').length;
const head = ['| who | attack | outcome | by what |', '| --- | --- | --- | --- |'];
process.stdout.write(`${[...head, ...rows, '', `${rows.length} sentences, ${failed} failed.`].join('\n')}\n`);
process.exitCode = failed > 0 || rows.length === 0 ? 1 : 0;
