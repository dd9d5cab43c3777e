/** Two editions that truly differ, in a copy of the sources that is thrown away. */
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OPEN_EDITION, RULES } from '../../src/job/rules.ts';
import { ROOT } from './bundle.ts';
import { complete } from './jobs.ts';
import { GoldenStation, trusted } from './station.ts';

describe('the closed editions of this program', () => {
  const folder = fileURLToPath(new URL('src/rules/', ROOT));
  const sums = readFileSync(join(folder, 'SHA256SUMS'), 'utf8')
    .split('\n')
    .filter((line) => line !== '');

  it('are all below the open one, and each is the file that was made when it was closed', () => {
    const digest = (path: string) =>
      createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('hex');
    const files = Array.from({ length: OPEN_EDITION - 1 }, (_, i) => `edition-${i + 1}/judge.js`);
    expect(sums).toEqual(files.map((file) => `${digest(file)}  ${file}`));
    expect(readdirSync(folder).filter((name) => name.startsWith('edition-'))).toHaveLength(files.length);
  });
});

describe('an edition that is closed, and rules that change afterwards', () => {
  const copy = mkdtempSync(join(tmpdir(), 'plugmark-editions-'));
  const root = fileURLToPath(ROOT);
  afterAll(() => rmSync(copy, { recursive: true, force: true }));

  const tsx = (...args: string[]) => {
    const bin = join(root, 'node_modules/tsx/dist/cli.mjs');
    const { status, stdout, stderr } = spawnSync(process.execPath, [bin, ...args], {
      cwd: copy,
      encoding: 'utf8',
    });
    return { status, stdout, stderr };
  };
  const close = () => tsx('tests/golden/close-edition.ts');
  const commit = () => {
    const git = (...args: string[]) => execFileSync('git', args, { cwd: copy, stdio: 'ignore' });
    git('add', '--all');
    git(
      '-c',
      'user.name=Example',
      '-c',
      'user.email=example@example.invalid',
      'commit',
      '-qm',
      'all',
      '--allow-empty',
    );
  };
  const trust = join(copy, 'trusted-keys.json');

  beforeAll(() => {
    for (const name of ['src', 'drivers', 'sim', 'db', 'tests', 'package.json', 'tsconfig.json'])
      cpSync(join(root, name), join(copy, name), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
    const station = new GoldenStation();
    station.work('old', complete('old', station.today));
    writeFileSync(join(copy, 'old.record.json'), station.seal('old'));
    writeFileSync(trust, JSON.stringify({ keys: [trusted(station.key, 'Example bay')] }));
    writeFileSync(join(copy, '.gitignore'), 'node_modules\n');
    execFileSync('git', ['init', '-q'], { cwd: copy });
  });

  it('is closed only with its artefacts sealed and nothing uncommitted, and only once', () => {
    rmSync(join(copy, `tests/golden/edition-${OPEN_EDITION}`), { recursive: true, force: true });
    expect(close()).toMatchObject({ status: 2, stderr: expect.stringContaining('not committed') });
    commit();
    expect(close()).toMatchObject({ status: 2, stderr: expect.stringContaining('no golden artefacts') });
    mkdirSync(join(copy, `tests/golden/edition-${OPEN_EDITION}`));
    writeFileSync(join(copy, `tests/golden/edition-${OPEN_EDITION}/expected.json`), '[]');
    commit();
    expect(close()).toMatchObject({ status: 0, stderr: '' });
    const rules = join(copy, 'src/job/rules.ts');
    expect(readFileSync(rules, 'utf8')).toContain(`OPEN_EDITION = ${OPEN_EDITION + 1};`);
    const judge = readFileSync(join(copy, `src/rules/edition-${OPEN_EDITION}/judge.js`), 'utf8');
    expect(judge).toContain(RULES.slice(0, -String(OPEN_EDITION).length));
    expect(judge).not.toMatch(/zod|\bz\.(strict)?object/i);
    // As if somebody had taken the number back.
    const raised = readFileSync(rules, 'utf8');
    writeFileSync(
      rules,
      raised.replace(`OPEN_EDITION = ${OPEN_EDITION + 1};`, `OPEN_EDITION = ${OPEN_EDITION};`),
    );
    commit();
    expect(close()).toMatchObject({ status: 2, stderr: expect.stringContaining('closed already') });
    writeFileSync(rules, raised);
    commit();
  });

  it('judges its records as ever, beside those of the new rules, which judge otherwise', () => {
    // Half as far again from the limits before anything is proven.
    const coverage = join(copy, 'src/metrology/coverage.ts');
    const before = readFileSync(coverage, 'utf8');
    const after = before.replace('COVERAGE_FACTOR = 2;', 'COVERAGE_FACTOR = 3;');
    expect(after).not.toBe(before);
    writeFileSync(coverage, after);
    writeFileSync(
      join(copy, 'seal-and-judge.ts'),
      `import { readFileSync, writeFileSync } from 'node:fs';
       import { openRecord } from './src/evidence/record.ts';
       import { RULES } from './src/job/rules.ts';
       import { judgeAgain, outcomeOf } from './src/rules/judge.ts';
       import { complete } from './tests/golden/jobs.ts';
       import { GoldenStation } from './tests/golden/station.ts';
       const station = new GoldenStation();
       station.work('new', complete('new', station.today));
       writeFileSync('new.record.json', station.seal('new'));
       const opened = openRecord(readFileSync('old.record.json'));
       if (!opened.ok) throw new Error('not a record');
       const { entries, budgets } = opened.value.record;
       const events = entries.map(({ event }) => (event.type === 'job-opened' ? { ...event, rules: RULES } : event));
       const same = JSON.stringify(outcomeOf(events).budgets) === JSON.stringify(budgets);
       process.stdout.write(JSON.stringify({ rules: RULES, again: judgeAgain(events), same }));`,
    );
    expect(JSON.parse(tsx('seal-and-judge.ts').stdout)).toEqual({
      rules: `plugmark/rules/${OPEN_EDITION + 1}`,
      again: { agrees: false, position: 1, code: 'other-windows', event: 'job-opened' },
      same: false,
    });
    for (const record of ['old.record.json', 'new.record.json']) {
      const { status, stdout, stderr } = tsx('src/cli/bin.ts', 'verify', record, '--trust', trust, '--json');
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      expect(JSON.parse(stdout)).toMatchObject({ verdict: 'authentic' });
    }
  });
});
