import { execFileSync, spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { flattened, helpTail, treeOf } from '../../../src/cli/help/command-tree.ts';
import { completion } from '../../../src/cli/help/completion.ts';
import { buildProgram, main } from '../../../src/cli/main.ts';
import { problemOf, said } from '../answers.ts';
import { folder } from '../program.ts';

const program = () => buildProgram(() => () => Promise.resolve());
const nodes = flattened(treeOf(program()));
const has = (tool: string) => spawnSync(tool, ['--version']).error === undefined;

describe('help', () => {
  it.each(nodes.map((node) => [node.name, node] as const))(
    '%s has a description and an example that begins with it',
    (name, node) => {
      expect(node.command.description()).not.toBe('');
      const [, examples = ''] = helpTail(node).split(/^Examples?:$/m);
      const lines = examples.split('\n').filter((line) => line.startsWith('  '));
      expect(lines.length, 'an example').toBeGreaterThan(0);
      for (const line of lines) expect(line.trim().startsWith(name), line).toBe(true);
    },
  );

  it('every example is taken by the command line as it stands', async () => {
    for (const node of nodes) {
      const [, examples = ''] = helpTail(node).split(/^Examples?:$/m);
      for (const line of examples.split('\n').filter((one) => one.startsWith('  plugmark'))) {
        const words = [...line.replace(/ [<>] \S+$/, '').matchAll(/"([^"]*)"|(\S+)/g)].map(
          ([, quoted, plain]) => quoted ?? plain ?? '',
        );
        const run = program();
        for (const { command } of flattened(treeOf(run)))
          command.exitOverride().configureOutput({ writeErr: () => {} });
        if (words.length > 1)
          await expect(run.parseAsync(words.slice(1), { from: 'user' }), line).resolves.toBeDefined();
      }
    }
  });
});

describe('shell completion', () => {
  const script = async (shell: string) => (await said(() => completion(shell, program()))).text;

  it.each(['bash', 'zsh', 'fish'])('of %s holds every command and every long option', async (shell) => {
    const text = await script(shell);
    for (const { command, path, options } of nodes) {
      if (path.length > 0) expect(text).toContain(command.name());
      for (const { long } of options)
        expect(text).toContain(shell === 'fish' ? `-l ${long?.slice(2)} ` : long);
    }
  });

  it('is refused for another shell', async () => {
    expect(await problemOf(() => completion('tcsh', program()))).toMatchObject({ code: 'option-not-valid' });
  });

  it.skipIf(!has('bash'))('offers in bash what stands at this place', async () => {
    const file = join(folder(), 'plugmark.bash');
    writeFileSync(file, await script('bash'));
    const offered = (...words: readonly string[]) => {
      const line = words.map((word) => `'${word}'`).join(' ');
      const body = `source '${file}'; COMP_WORDS=(plugmark ${line}); COMP_CWORD=${words.length}; _plugmark; printf '%s\\n' "\${COMPREPLY[@]}"`;
      return execFileSync('bash', ['--norc', '-c', body], { encoding: 'utf8' }).trim().split('\n');
    };
    const top = nodes.filter(({ path }) => path.length === 1).map(({ command }) => command.name());
    expect(offered('').filter((word) => !word.startsWith('-'))).toEqual(top);
    expect(offered('jobs', 'v')).toEqual(['void']);
    expect(offered('jobs', 'void', 'J-1', '--re')).toEqual(['--reason']);
    expect(offered('log', 'prove', 'in')).toEqual(['inclusion']);
    expect(offered('job', '--order', '')).toEqual(['']);
  });

  it.skipIf(!has('fish'))('offers in fish what stands at this place', async () => {
    const shell = 'fish';
    const file = join(folder(), 'plugmark.fish');
    writeFileSync(file, await script(shell));
    const offered = (line: string) =>
      execFileSync(shell, ['--no-config', '-c', `source '${file}'; complete -C '${line}'`], {
        encoding: 'utf8',
      })
        .trim()
        .split('\n')
        .map((one) => one.split('\t')[0]);
    expect(offered('plugmark jobs v')).toEqual(['void']);
    expect(offered('plugmark jobs void J-1 --re')).toEqual(['--reason']);
    expect(offered('plugmark log prove in')).toEqual(['inclusion']);
  });

  it.each(['zsh', 'fish'])('is taken by %s as a script, where that shell is there', async (shell) => {
    const file = join(folder(), `plugmark.${shell}`);
    writeFileSync(file, await script(shell));
    if (!has(shell)) return expect((await script(shell)).split("'").length % 2, 'quotes in pairs').toBe(1);
    expect(spawnSync(shell, ['-n', file], { encoding: 'utf8' })).toMatchObject({ status: 0, stderr: '' });
  });
});

describe('the command line', () => {
  it('runs what is made from the declarations', async () => {
    expect((await said(() => main(['node', 'plugmark', 'manual', 'commands']))).text).toContain(
      'plugmark jobs void',
    );
    expect((await said(() => main(['node', 'plugmark', 'completion', 'fish']))).value).toBe(0);
  });
});
