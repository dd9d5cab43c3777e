import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { flattened, treeOf } from '../../../src/cli/help/command-tree.ts';
import { allPages, manual } from '../../../src/cli/help/manual.ts';
import { pageOf } from '../../../src/cli/help/markdown.ts';
import { manName, roffOfPage } from '../../../src/cli/help/page-roff.ts';
import { textOfPage } from '../../../src/cli/help/page-text.ts';
import { FORMS } from '../../../src/cli/help/schema.ts';
import { TOPICS, topicFile } from '../../../src/cli/help/topics.ts';
import { buildProgram } from '../../../src/cli/main.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { columnsOf } from '../../../src/ui/printable.ts';
import { logOf, seal, station, trusting, wholeJob } from '../../evidence/sample-job.ts';
import { problemOf, said } from '../answers.ts';
import { folder } from '../program.ts';
import { filled } from './generated.ts';

const program = () => buildProgram(() => () => Promise.resolve());
const nodes = flattened(treeOf(program()));
const groff = spawnSync('groff', ['--version']).error === undefined;
const markdownOf = (topic: (typeof TOPICS)[number]) => readFileSync(topicFile(topic), 'utf8');
const shown = (topic?: string, options = {}) => said(() => manual(program(), topic, options));
const README = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');

/** Commands in indented lines; a line that ends with a backslash goes on. */
const commandsIn = (markdown: string) =>
  markdown
    .replaceAll(/ \\\n +/g, ' ')
    .split('\n')
    .flatMap((line) => /^ {4}(plugmark .*?)(?: {2,}#.*)?$/.exec(line)?.[1] ?? []);

describe('the topics', () => {
  it('are the files that are there, under their own names', () => {
    const files = readdirSync(new URL('./', topicFile('verify'))).map((name) => name.replace(/\.md$/, ''));
    expect([...TOPICS].sort()).toEqual(files.sort());
    for (const topic of TOPICS) expect(pageOf(markdownOf(topic)).name).toBe(topic);
  });

  it.each(TOPICS)('%s has the fields of the schemas and the examples (else run "npm run docs")', (topic) => {
    expect(filled(markdownOf(topic))).toBe(markdownOf(topic));
  });

  it.each(TOPICS)('%s: links lead to topics, "plugmark schema" to forms', (topic) => {
    const markdown = markdownOf(topic);
    for (const [, name] of markdown.matchAll(/\]\(([^)]+)\.md\)/g)) expect(TOPICS).toContain(name);
    for (const [, form] of markdown.matchAll(/plugmark schema ([a-z-]+)/g))
      expect(Object.keys(FORMS)).toContain(form);
    for (const [, name] of markdown.matchAll(/plugmark manual ([a-z][a-z-]+)/g))
      expect([...TOPICS, 'commands']).toContain(name);
  });

  it.each(TOPICS)('%s: every command is taken by the command line', async (topic) => {
    for (const line of commandsIn(markdownOf(topic))) await expectTaken(line);
  });

  it('the README lists every topic', () => {
    for (const topic of TOPICS) expect(README).toContain(`| [${topic}](src/cli/help/topics/${topic}.md) |`);
  });

  it('the README shows the checks that a record goes through, in their order', () => {
    const { checks } = verifyRecord(seal(logOf(wholeJob())), trusting(station));
    const shown = README.split('\n').filter((line) => line.startsWith('  [ok]   '));
    expect(shown).toHaveLength(checks.length);
    for (const [i, { name }] of checks.entries())
      expect(shown[i]).toMatch(new RegExp(`^  \\[ok\\]   ${name} `));
  });

  it('the README: every command is taken, every link leads to a file', async () => {
    const commands = commandsIn(README);
    expect(commands.length).toBeGreaterThan(5);
    for (const line of commands) await expectTaken(line);
    for (const [, path] of README.matchAll(/\]\(([^)#:]+)\)/g))
      expect(() => readFileSync(new URL(`../../../${path}`, import.meta.url))).not.toThrow();
  });
});

describe('DEVELOPERS.md', () => {
  it('names folders and files that are there', () => {
    const text = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8');
    const paths = [...text.matchAll(/`((?:src|drivers|sim|db|tests)\/[^`<*]*)`/g)].map(
      ([, path]) => path ?? '',
    );
    expect(paths.length).toBeGreaterThan(30);
    expect(paths.filter((path) => !existsSync(new URL(`../../../${path}`, import.meta.url)))).toEqual([]);
  });
});

async function expectTaken(line: string): Promise<void> {
  const words = [...line.replace(/ [<>|] .*$/, '').matchAll(/"([^"]*)"|(\S+)/g)].map(
    ([, quoted, plain]) => quoted ?? plain ?? '',
  );
  const run = program();
  for (const { command } of flattened(treeOf(run)))
    command.exitOverride().configureOutput({ writeErr: () => {} });
  await expect(run.parseAsync(words.slice(1), { from: 'user' }), line).resolves.toBeDefined();
}

describe('the manual in a terminal', () => {
  it('lists every topic with a line of its own, and the commands', async () => {
    const { value, text } = await shown();
    expect(value).toBe(0);
    for (const { name, about } of allPages(program())) {
      expect(text).toContain(`  ${name} `);
      expect(text).toContain(about);
    }
  });

  it.each(TOPICS)('%s: prose fits into 80 columns, and nothing steers the terminal', async (topic) => {
    const { text } = await shown(topic);
    const asTheyStand = new Set(
      pageOf(markdownOf(topic)).blocks.flatMap((block) =>
        block.kind === 'lines' ? block.text.split('\n').map((line) => `    ${line}`.trimEnd()) : [],
      ),
    );
    const lines = text.split('\n');
    expect(lines.filter((line) => columnsOf(line) > 80 && !asTheyStand.has(line))).toEqual([]);
    expect(text).not.toMatch(/[^\P{Cc}\n]/u);
  });

  it('holds every command and every option', async () => {
    const { text } = await shown('commands');
    const page = `\n${text}`;
    const titles = ['OPTIONS', ...nodes.slice(1).map(({ name }) => name), 'EXIT STATUS'];
    const heading = (i: number) => page.indexOf(`\n${titles[i]}\n`);
    for (const [i, node] of nodes.entries()) {
      expect(heading(i), node.name).toBeGreaterThan(-1);
      expect(heading(i + 1), node.name).toBeGreaterThan(heading(i));
      const section = page.slice(heading(i), heading(i + 1));
      for (const { flags } of node.options) expect(section, node.name).toContain(flags);
    }
  });

  it('refuses a topic that is none, and says which there are', async () => {
    const problem = await problemOf(() => manual(program(), 'torque', {}));
    expect(problem).toMatchObject({ code: 'option-not-valid' });
    expect(problem.next).toContain('verdicts');
  });

  it('breaks a table where its text goes on, below its own column', () => {
    const page = pageOf('# x - y\n\n| a | b |\n| --- | --- |\n| `one` | two three four five |\n');
    expect(textOfPage(page, { columns: 30, bold: false })).toBe(
      ['x - y', '', '    a    b', '    ---  --------------------', '    one  two three four five', ''].join(
        '\n',
      ),
    );
    const narrow = textOfPage(pageOf('# x - y\n\none two three four five six\n'), {
      columns: 24,
      bold: false,
    });
    expect(narrow).toBe('x - y\n\n    one two three four\n    five six\n');
  });

  it('marks code by backticks, or by bold letters where a terminal shows them', () => {
    const page = pageOf('# x - y\n\nUse (`a b`), **not** c.\n');
    expect(textOfPage(page, { columns: 80, bold: false })).toContain('    Use (`a b`), not c.');
    expect(textOfPage(page, { columns: 80, bold: true })).toContain(
      '    Use (\u001b[1ma\u001b[22m \u001b[1mb\u001b[22m), \u001b[1mnot\u001b[22m c.',
    );
  });
});

describe('the pages for man', () => {
  const formatted = (text: string) =>
    spawnSync('groff', ['-ww', '-man', '-Tutf8', '-Kutf8'], { input: text, encoding: 'utf8' });

  it.skipIf(!groff).each(allPages(program()).map((page) => [manName(page), page] as const))(
    '%s: groff has no warning',
    (_name, page) => {
      const { stderr, status, stdout } = formatted(roffOfPage(page, '1'));
      expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
      expect(stdout.length).toBeGreaterThan(500);
    },
  );

  it.skipIf(!groff)('keeps lines of code as they stand', () => {
    const line = '\'.x\' \\n ~ ^ ` -- "q"';
    const { stdout } = formatted(roffOfPage(pageOf(`# x - y\n\nText.\n\n    ${line}\n`), '1'));
    expect(stdout).toContain(line);
  });

  it('go into the folders where man looks, all of them', async () => {
    const out = join(folder(), 'man');
    await shown(undefined, { out });
    expect(readdirSync(join(out, 'man1'))).toEqual(['plugmark.1']);
    expect(readdirSync(join(out, 'man7')).sort()).toEqual(
      TOPICS.map((topic) => `plugmark-${topic}.7`).sort(),
    );
  });
});
