import { describe, expect, it } from 'vitest';
import { PEOPLE } from '../../../sim/technician/people.ts';
import { GROUPINGS } from '../../../src/audit/capability.ts';
import { flattened, helpTail, treeOf } from '../../../src/cli/help/command-tree.ts';
import { FORM_NAMES } from '../../../src/cli/help/form-names.ts';
import { manual } from '../../../src/cli/help/manual.ts';
import { OUTPUTS } from '../../../src/cli/help/outputs.ts';
import { FORMS } from '../../../src/cli/help/schema.ts';
import { buildProgram, main } from '../../../src/cli/main.ts';
import { EXIT, EXIT_TABLE } from '../../../src/cli/terminal/exit.ts';
import { impactDecisionSchema, revocationReasonSchema } from '../../../src/evidence/station-event.ts';
import {
  headMaterialSchema,
  seatSchema,
  threadConditionSchema,
  threadSchema,
} from '../../../src/plug/specification.ts';
import { said } from '../answers.ts';

const program = () => buildProgram(() => () => Promise.resolve());
const nodes = flattened(treeOf(program()));

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

describe('exit codes', () => {
  const leaves = nodes.filter(({ children }) => children.length === 0);

  it.each(leaves.map((node) => [node.name, node] as const))('%s says how it can end', (_name, node) => {
    const [, codes = ''] = helpTail(node).split(/^Exit codes:$/m);
    const listed = [...codes.matchAll(/^ {2}(\d+) +(.+?) {2,}(.+)$/gm)];
    expect(listed.map(([, code]) => Number(code))).toEqual(
      expect.arrayContaining([EXIT.done, EXIT.badInput]),
    );
    for (const [, code, name, meaning] of listed) {
      const row = EXIT_TABLE.find(({ key }) => EXIT[key] === Number(code));
      expect(row?.name).toBe(name);
      expect(meaning).toMatch(/\w{3}/);
    }
  });

  it('are all in the table, each once, and the table is in the manual and in the help of the program', async () => {
    expect(EXIT_TABLE.map(({ key }) => key)).toEqual(Object.keys(EXIT));
    expect(new Set(Object.values(EXIT)).size).toBe(EXIT_TABLE.length);
    const { text } = await said(() => manual(program(), 'commands', {}));
    const status = text.slice(text.indexOf('EXIT STATUS'), text.indexOf('ENVIRONMENT'));
    const help = helpTail(nodes[0] ?? treeOf(program()));
    for (const { key, name, meaning } of EXIT_TABLE) {
      expect(status).toContain(`    ${EXIT[key]}\n`);
      expect(status.replace(/\s+/g, ' ')).toContain(meaning.slice(1));
      expect(help).toContain(`${name}`);
      expect(help).toContain(meaning);
    }
  });

  it('a job that is left open ends otherwise than one that is complete', () => {
    for (const name of ['plugmark job', 'plugmark demo'])
      expect(helpTail(nodes.find((node) => node.name === name) ?? treeOf(program()))).toMatch(
        /^ {2}5 +left open/m,
      );
  });
});

describe('options', () => {
  it('that bear one name stand for one kind of value everywhere', () => {
    const kinds = new Map<string, Set<string>>();
    for (const { options } of nodes)
      for (const { long, flags } of options) {
        const placeholder = /[<[]([^\]>]+)[\]>]/.exec(flags)?.[1] ?? 'none';
        kinds.set(long ?? '', (kinds.get(long ?? '') ?? new Set()).add(placeholder));
      }
    const several = [...kinds]
      .filter(([, all]) => all.size > 1)
      .map(([name, all]) => [name, [...all].sort()] as const);
    // The same question of another thing: where it goes, what is gone on with (a demo has one job only), as what it counts, who works.
    expect(Object.fromEntries(several)).toEqual({
      '--technician': ['habit', 'person'],
      '--out': ['file', 'folder'],
      '--resume': ['none', 'open-job', 'study'],
      '--as': ['decision', 'reason'],
    });
  });

  it.each(['because', 'by', 'out', 'json', 'station', 'data'])(
    '--%s is there under no other name',
    (name) => {
      expect(nodes.some(({ options }) => options.some(({ long }) => long === `--${name}`))).toBe(true);
      for (const { options, name: command } of nodes)
        for (const { long } of options)
          expect(['--reason', '--why', '--output', '--folder'], command).not.toContain(long);
    },
  );
});

describe('choices', () => {
  const choices = (command: string, flag: string) =>
    nodes.find(({ name }) => name === command)?.options.find(({ long }) => long === flag)?.argChoices;

  it.each([
    ['plugmark demo', '--technician', Object.keys(PEOPLE)],
    ['plugmark window', '--thread', threadSchema.options],
    ['plugmark window', '--seat', seatSchema.options],
    ['plugmark window', '--head', headMaterialSchema.options],
    ['plugmark window', '--lubrication', threadConditionSchema.options],
    ['plugmark capability', '--per', GROUPINGS],
    ['plugmark impact decide', '--as', impactDecisionSchema.options],
    ['plugmark keys revoke', '--as', revocationReasonSchema.options],
  ])('%s %s offers what the program knows', (command, flag, known) => {
    expect([...(choices(command, flag) ?? [])].sort()).toEqual([...known].sort());
  });

  it('of forms are those of which a schema is printed', () => {
    expect([...FORM_NAMES, ...Object.keys(OUTPUTS)].sort()).toEqual(Object.keys(FORMS).sort());
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
