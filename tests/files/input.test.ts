import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';

const BIN = fileURLToPath(new URL('../../dist/src/cli/bin.js', import.meta.url));
let folder = '';
let record = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  plugmark(['demo', '--fast', '--direct', '--cylinders', '4', '--out', '.']);
  record = join(folder, 'EX-4001-1.record.json');
  return () => rmSync(folder, { recursive: true, force: true });
}, 60_000);

/** With the input as a pipe, as behind `cat FILE |`. */
const plugmark = (args: readonly string[], input: string | Buffer = '') =>
  spawnSync(process.execPath, [BIN, ...args], { cwd: folder, input, encoding: 'utf8' });
/** By a shell, which puts files and pipes in the place of names. */
const shell = (line: string) => {
  const script = line.replaceAll('plugmark', `'${process.execPath}' '${BIN}'`);
  return spawnSync('bash', ['-c', script], { cwd: folder, encoding: 'utf8' });
};
/** Gives a command a terminal of its own. */
const TERMINAL = 'script';
const hasScript = spawnSync(TERMINAL, ['--version']).error === undefined;
const trust = ['--trust', 'trusted-keys.json'];
/** Of the record of a demo: authentic, but simulated. */
const NOT_PROVEN = 1;

describe('the standard input in the place of a file', () => {
  it.each(['-', '/dev/stdin'])('is verified as %s', (name) => {
    const ended = plugmark(['verify', name, ...trust], readFileSync(record));
    expect(ended.stderr).toBe('');
    expect(ended).toMatchObject({ status: NOT_PROVEN });
    expect(ended.stdout).toContain('Authentic and complete');
  });

  it.each([
    ['a file behind it', 'plugmark verify - --trust trusted-keys.json < EX-4001-1.record.json'],
    [
      'a file behind its device',
      'plugmark verify /dev/stdin --trust trusted-keys.json < EX-4001-1.record.json',
    ],
    ['a pipe by name', 'plugmark verify <(cat EX-4001-1.record.json) --trust trusted-keys.json'],
    ['a pipe in the shell', 'cat EX-4001-1.record.json | plugmark verify - --trust trusted-keys.json'],
    [
      'a pipe to its device',
      'cat EX-4001-1.record.json | plugmark verify /dev/stdin --trust trusted-keys.json',
    ],
    ['a trust list from a pipe', 'plugmark verify EX-4001-1.record.json --trust <(cat trusted-keys.json)'],
  ])('may be %s', (_what, line) => {
    const ended = shell(line);
    expect(ended.stderr).toBe('');
    expect(ended.status).toBe(NOT_PROVEN);
    expect(ended.stdout).toContain('Authentic and complete');
  });

  it('gives pulls of a trace', () => {
    const rows = Array.from(
      { length: 400 },
      (_, i) => `${i / 100},${i > 100 && i < 200 ? (i - 100) * 0.27 : 0}`,
    );
    const ended = plugmark(['pulls', '-', '--json'], `time_s,torque_Nm\n${rows.join('\n')}\n`);
    expect(ended.stderr).toBe('');
    expect(JSON.parse(ended.stdout).pulls).toHaveLength(1);
  });

  it('is named in what is wrong with it', () => {
    const ended = plugmark(['window', '--order', '-'], '{"form": oops}');
    expect(ended.status).toBe(2);
    expect(ended.stderr).toContain('plugmark: standard input: byte 9');
    expect(plugmark(['pulls', '-'], 'nothing').stderr).toContain('row 1');
  });
});

describe('what has no end, or is none', () => {
  it('is cut off where it is larger than any such file', () => {
    const ended = shell('head -c 40000000 /dev/zero | plugmark verify -');
    expect(ended.status).toBe(2);
    expect(ended.stderr).toContain('larger than 32 MB');
  });

  it('is refused as a device', () => {
    const ended = plugmark(['verify', '/dev/zero']);
    expect(ended.status).toBe(2);
    expect(ended.stderr).toContain('it is a device');
  });

  it.runIf(hasScript)('is refused where it would be somebody at a terminal', () => {
    const line = `'${process.execPath}' '${BIN}' verify -; echo "code $?"`;
    const out = execFileSync(TERMINAL, ['-qec', line, '/dev/null'], { cwd: folder, encoding: 'utf8' });
    expect(out).toContain('standard input: the record cannot be read: it is a terminal');
    expect(out).toContain('code 2');
  });

  it('is told for a folder, a missing file and an empty name', () => {
    writeFileSync(join(folder, 'empty.json'), '');
    expect(plugmark(['pulls', '.']).stderr).toContain('it is a folder');
    expect(plugmark(['pulls', 'none.csv']).stderr).toContain('no such file');
    expect(plugmark(['verify', 'empty.json']).status).toBe(2);
  });
});
