// Checks the directions between rooms, and that only the command line reads a clock or draws lots (and `src/files/` the names of unfinished files), and that no symbolic link is kept. Fails when the checker
// saw fewer modules than there are files: it passes with nothing read when it cannot parse the tree.
import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const files = execFileSync(
  'git',
  ['ls-files', '--cached', '--others', '--exclude-standard', 'src', 'drivers', 'sim', 'db'],
  { encoding: 'utf8' },
)
  .split('\n')
  .filter((name) => /\.tsx?$/.test(name));
const run = spawnSync(
  process.execPath,
  [
    'node_modules/dependency-cruiser/bin/dependency-cruiser.mjs',
    '--config',
    'tests/house/rooms.cjs',
    '--output-type',
    'json',
    'src',
    'drivers',
    'sim',
    'db',
  ],
  { encoding: 'utf8', maxBuffer: 1 << 28 },
);
if (run.stdout === '') {
  console.error(run.stderr);
  process.exit(2);
}
const { modules, summary } = JSON.parse(run.stdout);
const seen = new Set(modules.map(({ source }) => source));
const unseen = files.filter((name) => !seen.has(name));
for (const { rule, from, to } of summary.violations)
  console.error(`${rule.severity} ${rule.name}: ${from} -> ${to}`);
for (const name of unseen) console.error(`error not-read: ${name}`);
const CLOCK_OR_CHANCE =
  /\b(Date\.now|performance\.now|process\.hrtime|Math\.random|randomUUID|randomBytes|randomInt)\b|new Date\(\)/;
const impure = files.filter(
  (name) => /^src\/(?!cli\/|files\/)/.test(name) && CLOCK_OR_CHANCE.test(readFileSync(name, 'utf8')),
);
for (const name of impure) console.error(`error clock-or-chance: ${name}`);
// What checks evidence runs in a browser, which has no Buffer; the platform gives bytes there.
const PURE =
  /^src\/(quantity|metrology|statistics|plug|instrument|pull|sequence|job|rules|evidence|audit|package)\/(?!platform\/)/;
const ofNode = files.filter((name) => PURE.test(name) && /\bBuffer\b/.test(readFileSync(name, 'utf8')));
for (const name of ofNode) console.error(`error buffer: ${name} uses Buffer, which a browser does not have`);
// A link or a folder of the machine that was committed by accident is there for everybody.
const links = execFileSync('git', ['ls-files', '--stage'], { encoding: 'utf8' })
  .split('\n')
  .filter((line) => line.startsWith('120000'));
for (const link of links) console.error(`error link: ${link.split('\t')[1]} is a symbolic link`);
console.log(
  `house: ${seen.size} modules read, ${files.length} files, ${summary.violations.length} violations`,
);
process.exit(
  summary.violations.length + unseen.length + impure.length + ofNode.length + links.length > 0 ||
    files.length === 0
    ? 1
    : 0,
);
