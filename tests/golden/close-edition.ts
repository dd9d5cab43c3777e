/**
 * `npm run close-edition`: makes today's judge the closed edition N, written once, and opens N+1. From then on a job that was
 * opened under N is judged by that file, whatever becomes of the sources.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { OPEN_EDITION } from '../../src/job/rules.ts';

const ROOT = new URL('../../', import.meta.url);
const RULES_FILE = new URL('src/job/rules.ts', ROOT);
const SUMS_FILE = new URL('src/rules/SHA256SUMS', ROOT);

const folder = new URL(`src/rules/edition-${OPEN_EDITION}/`, ROOT);
const golden = new URL(`tests/golden/edition-${OPEN_EDITION}/`, ROOT);

const changed = execFileSync('git', ['status', '--porcelain'], {
  cwd: fileURLToPath(ROOT),
  encoding: 'utf8',
});
if (changed !== '') refuse('the tree has changes that are not committed', 'Commit them first.');
if (existsSync(folder))
  refuse(`edition ${OPEN_EDITION} is closed already`, 'Restore the files of src/rules from the repository.');
if (!existsSync(golden))
  refuse(`edition ${OPEN_EDITION} has no golden artefacts`, 'Seal and commit them first: npm run golden');

const { bundledJudge } = await import('./bundle.ts');
const judge = await bundledJudge(OPEN_EDITION);
const digest = createHash('sha256').update(judge).digest('hex');
const rules = readFileSync(RULES_FILE, 'utf8');
const raised = rules.replace(`OPEN_EDITION = ${OPEN_EDITION};`, `OPEN_EDITION = ${OPEN_EDITION + 1};`);
if (raised === rules) throw new Error(`${RULES_FILE.pathname} does not hold the number of the open edition`);
mkdirSync(folder);
writeFileSync(new URL('judge.js', folder), judge);
appendFileSync(SUMS_FILE, `${digest}  edition-${OPEN_EDITION}/judge.js\n`);
writeFileSync(RULES_FILE, raised);
process.stdout.write(
  `Edition ${OPEN_EDITION} is closed: ${judge.length} bytes, SHA-256 ${digest}. Edition ${OPEN_EDITION + 1} is open.\nRun the tests, then commit.\n`,
);

function refuse(why: string, next: string): never {
  process.stderr.write(`close-edition: ${why}. ${next}\n`);
  process.exit(2);
}
