import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { flattened, treeOf } from '../../../src/cli/help/command-tree.ts';
import { completion } from '../../../src/cli/help/completion.ts';
import { buildProgram } from '../../../src/cli/main.ts';
import { workIn } from '../../audit/shop.ts';
import { problemOf, said, typed } from '../answers.ts';
import { exampleJson } from '../program.ts';

const program = () => buildProgram(() => () => Promise.resolve());
const BIN = fileURLToPath(new URL('../../../dist/src/cli/bin.js', import.meta.url));
const has = (tool: string) => spawnSync(tool, ['--version']).error === undefined;

/** A name that would run a command, end a string, or be a second line. */
const HOSTILE = `$(touch was-run)\`touch was-run\`"'; touch was-run #`;

/** A folder with `plugmark` on its path, a station file and a log with three jobs, one of them open. */
let place = '';
let env: NodeJS.ProcessEnv = {};
const flag = () => join(place, 'was-run');
beforeAll(async () => {
  place = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  mkdirSync(join(place, 'bin'));
  const script = join(place, 'bin', 'plugmark');
  writeFileSync(script, `#!/bin/sh\nexec '${process.execPath}' '${BIN}' "$@"\n`);
  chmodSync(script, 0o755);
  env = {
    ...process.env,
    PATH: `${join(place, 'bin')}${delimiter}${process.env['PATH'] ?? ''}`,
    LANG: 'C.UTF-8',
  };
  await workIn(join(place, 'data'), [
    { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 27] },
    { job: 'J-2', on: '2026-03-11', peaks: [27, 27, 27, 27], technician: 'Technician Two' },
    { job: 'K-3', on: '2026-06-01', peaks: [27], closed: false },
  ]);
  const { tools, ...file } = exampleJson('station.json');
  const odd = { ...tools[0], id: HOSTILE };
  writeFileSync(
    join(place, 'station.json'),
    JSON.stringify({ ...file, data: 'data', tools: [...tools, odd] }),
  );
  for (const shell of ['bash', 'zsh', 'fish'])
    writeFileSync(join(place, `plugmark.${shell}`), (await said(() => completion(shell, program()))).text);
  return () => rmSync(place, { recursive: true, force: true });
}, 60_000);

const lines = (text: string) =>
  text
    .split('\n')
    .map((line) => line.split('\t')[0]?.trim() ?? '')
    .filter((line) => line !== '');
const shell = (name: string, args: readonly string[]) =>
  lines(
    execFileSync(name, [...args], { encoding: 'utf8', cwd: place, env, stdio: ['ignore', 'pipe', 'pipe'] }),
  );

/** What each shell offers for the last word of a line. */
const OFFERED: Readonly<Record<string, (line: string) => readonly string[]>> = {
  bash: (line) => {
    const words = line.split(' ').map((word) => `'${word}'`);
    const body = `source plugmark.bash; COMP_WORDS=(${words.join(' ')}); COMP_CWORD=${words.length - 1}; _plugmark; printf '%s\\n' "\${COMPREPLY[@]}"`;
    return shell('bash', ['--norc', '-c', body]);
  },
  fish: (line) => shell('fish', ['--no-config', '-c', `source plugmark.fish; complete -C '${line}'`]),
  zsh: (line) => shell('zsh', ['-f', '-c', `${zshTyping(line)}\ntrue`]),
};

/**
 * Types the line into a zsh of its own, as at a terminal, with a tab behind it, and prints what its completion added. The
 * command behind the tab runs once the completion is done, however long that takes.
 */
const zshTyping = (line: string) => `
zmodload zsh/zpty
zpty z zsh -f -i
zpty -w z $'PS1=; LISTMAX=10000; bindkey -e; autoload -Uz compinit; compinit -u -D; source ./plugmark.zsh'
zpty -w z $'compadd() { local -a got; [[ " $* " == *" -[OAD] "* ]] || { builtin compadd -O got "$@"; print -rl -- $got >> offered.txt }; builtin compadd "$@" }'
zpty -w z $'rm -f offered.txt; print -n > ready.txt'
repeat 400; do zpty -r -t z text; [[ -f ready.txt ]] && break; sleep 0.05; done
zpty -w -n z $'${line.replaceAll("'", "\\'")}\t'
zpty -w z $'\\C-uprint -r -- "#end" >> offered.txt'
repeat 400; do zpty -r -t z text; [[ -f offered.txt && "$(<offered.txt)" == *'#end' ]] && break; sleep 0.05; done
zpty -d z
grep -v '^#end$' offered.txt
rm -f offered.txt ready.txt`;

const LINES: readonly (readonly [line: string, offers: readonly string[]])[] = [
  ['plugmark jobs v', ['void']],
  ['plugmark log prove in', ['inclusion']],
  ['plugmark jobs void J-1 --be', ['--because']],
  ['plugmark jobs --op', ['--open']],
  ['plugmark jobs list --op', ['--open']],
  ['plugmark demo --technician over', ['overlooks', 'overpulls']],
  ['plugmark window --thread M12', ['M12x1.25']],
  ['plugmark schema work', ['work-order']],
  ['plugmark schema jobs-s', ['jobs-show']],
  ['plugmark jobs show J', ['J-1', 'J-2']],
  ['plugmark job --resume ', ['K-3']],
  ['plugmark drift wr', ['wrench']],
  ['plugmark impact wr', ['wrench']],
  ['plugmark impact decide IA-1 J-1 K', ['K-3']],
  ['plugmark verify --trust plugmark.z', ['plugmark.zsh']],
  ['plugmark retention --years ', []],
];

for (const name of ['bash', 'fish', 'zsh'])
  describe(`completion in ${name}`, () => {
    it.runIf(has(name)).each(LINES)(
      'offers after "%s": %j',
      (line, offers) => {
        const found = OFFERED[name]?.(line) ?? [];
        expect([...new Set(found)].sort()).toEqual(offers);
      },
      30_000,
    );

    it.runIf(has(name))(
      'runs nothing that a name holds',
      () => {
        const found = OFFERED[name]?.('plugmark drift ') ?? [];
        expect(found).toContain('wrench');
        expect(
          found.some((one) => one.includes('touch')),
          found.join('\n'),
        ).toBe(true);
        expect(existsSync(flag())).toBe(false);
      },
      30_000,
    );

    it.runIf(has(name))('is taken by the shell as a script', () => {
      const checked = spawnSync(name, ['-n', join(place, `plugmark.${name}`)], { encoding: 'utf8' });
      expect(checked).toMatchObject({ status: 0, stderr: '' });
    });
  });

describe('the scripts', () => {
  it('hold every command and every long option', async () => {
    for (const name of ['bash', 'zsh', 'fish']) {
      const { text } = await said(() => completion(name, program()));
      for (const { command, path, options } of flattened(treeOf(program()))) {
        if (path.length > 0) expect(text).toContain(command.name());
        for (const { long } of options) expect(text).toContain(long);
      }
    }
  });

  it('are refused for another shell', async () => {
    expect(await problemOf(() => completion('tcsh', program()))).toMatchObject({ code: 'option-not-valid' });
  });
});

describe('names of the station', () => {
  const names = async (kind: string, ...words: readonly string[]) => {
    const { code, stdout, stderr } = await typed(['complete', kind, '--', ...words], { cwd: place });
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    return lines(stdout);
  };

  it('are those of its people, and of the station that was typed', async () => {
    expect(await names('person')).toEqual(['Technician One', 'Technician Two']);
    expect(await names('job', 'jobs', 'show', '--data', 'data')).toEqual(['K-3', 'J-2', 'J-1']);
    expect(await names('job', 'jobs', 'show', '--data', '=', 'data')).toHaveLength(3);
    expect(await names('job', 'jobs', 'show', "--data='data'")).toHaveLength(3);
  });

  it.each([
    ['a kind that nobody knows', ['rocket']],
    ['a station file that is missing', ['job', '--station', 'none.json']],
    ['a station file that is none', ['tool', '--station', 'plugmark.bash']],
    ['a folder without a log', ['job', '--data', 'bin']],
  ])('are none, without a word, for %s', async (_what, [kind = '', ...words]) => {
    expect(await names(kind, ...words)).toEqual([]);
  });

  it('never hold what steers a terminal or begins an option', async () => {
    const odd = ['two\nlines', '\u001b[2J', '--help', '\u202eback', 'good'];
    writeFileSync(join(place, 'odd.json'), JSON.stringify({ tools: odd.map((id) => ({ id })) }));
    expect(await names('tool', '--station', 'odd.json')).toEqual(['good']);
  });
});
