/** What the commands of the office print for people comes from the catalogue; what programs read does not depend on a language. */
import { rmSync } from 'node:fs';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { flattened, treeOf } from '../../src/cli/help/command-tree.ts';
import { buildProgram } from '../../src/cli/main.ts';
import { languageFor } from '../../src/cli/station/reader-language.ts';
import { ENGLISH, speak } from '../../src/words/catalogue.ts';
import { unspoken } from '../words/pseudo.ts';
import { answeringStation } from './answering-station.ts';
import { typed } from './answers.ts';

vi.mock('../../src/words/dictionaries.ts', async () => ({
  dictionary: async () => (await import('../words/pseudo.ts')).PSEUDO,
}));

let station = '';
beforeAll(async () => {
  station = await answeringStation();
}, 120_000);
afterAll(() => {
  rmSync(station, { recursive: true, force: true });
  speak(ENGLISH);
});
beforeEach(() => {
  vi.stubEnv('PLUGMARK_LANGUAGE', 'de');
  vi.stubEnv('LANG', 'C.UTF-8');
  return () => vi.unstubAllEnvs();
});

/** Names, paths, codes, units and command lines that are the same in every language. */
const FACTS: readonly (string | RegExp)[] = [
  /plugmark(?: [a-z-]+)*/,
  /<\w+>/,
  /[\w./-]*\/[\w./-]+/,
  /[\w-]{43}/,
  /[\w*-]+\.(json|db|csv|txt|html|png|pem|record|checkpoint|pdf)[\w.]*/,
  /"[^"]*"/,
  /\b(?:wrench|gauge)(?=[\s(]+EXAMPLE)/,
  /\b[0-9a-f]{16}\b/,
  /https?:\S+/,
  /(?:Example|EXAMPLE|Technician|Quality)[\w -]*/,
  /\b[A-Z]{1,3}-[\w-]+/,
  /ZZ9\w+/,
  /\d{4}-\d\d-\d\d(?:T[\d:.]+Z?)?/,
  // As the source prints them.
  /0\.7-0\.8 mm/,
  /N·m|mm|MB|UTF|SQLite|UTC|Bluetooth/,
  /--[\w-]+/,
];

/** Where something is wrong, as a file or a command line calls it. */
const PLACES = ['specification', 'torque', 'list', 'URL', 'http', 'text'];

/** Commands that are converted, as they are typed. */
const LINES: readonly (readonly string[])[] = [
  ['jobs'],
  ['jobs', 'show', 'J-404'],
  ['jobs', 'hand-over', 'J-1', 'Technician Two'],
  ['jobs', 'papers', 'J-3'],
  ['keys'],
  ['keys', 'revoke', 'nobody', '--as', 'lost', '--because', 'lost'],
  ['keys', 'destroy', 'nobody'],
  ['log', 'check'],
  ['log', 'check', 'nowhere.checkpoint'],
  ['log', 'lost', '--because', 'gone'],
  ['log', 'witness', '--station', 'witnessed.json'],
  ['log', 'witness'],
  ['log', 'prove', 'inclusion', '999'],
  ['backup', 'copy-1.db'],
  ['backup', 'copy-1.db'],
  ['restore'],
  ['restore', 'found.json'],
  ['recover', '--out', 'saved-1.db'],
  ['retention'],
  ['forget', '--plate', 'NOBODY 1'],
  ['forget'],
  ['specifications', 'check'],
  ['specifications', 'show', 'nothing'],
  ['archive', 'status'],
  ['archive', 'join', 'http://example.com'],
  ['archive', 'init', '--name', 'archive.example/one'],
  ['archive', 'stations'],
  ['archive', 'faults'],
  ['archive', 'enrol', '--tenant', 'No Tenant'],
  ['archive', 'judge'],
  ['archive', 'reader', '--tenant', 'north-street', '--reader', 'Quality One'],
  ['archive', 'readers'],
  ['archive', 'dismiss', '--tenant', 'north-street', '--reader', 'Quality One'],
  ['archive', 'reads'],
  ['witness', 'init', '--name', 'witness.example/one'],
  ['witness', 'logs'],
  ['witness', 'add', 'nothing'],
  ['gauge-study', 'list'],
  ['gauge-study', 'run', '--tool', 'nothing', '--appraisers', 'A,B'],
  ['driver', 'check', 'profile.json', '--bytes', 'xx'],
  ['ask'],
  ['ask', '--exceptions'],
  ['ask', '--attempts'],
  ['ask', '--csv', '--out', 'list.csv'],
  ['ask', '--out', 'list.csv'],
  ['ask', '--out', 'list.txt'],
  ['ask', '--from', 'yesterday'],
  ['ask', '--from', '2026-03-03', '--to', '2026-03-01'],
  ['calendar'],
  ['calendar', '--staircase', '--ics', 'tools.ics'],
  ['calendar', '--staircase', '--shortest', '9', '--longest', '3'],
  ['certificates', 'keep', 'older.json'],
  ['certificates', 'keep', 'pull.csv'],
  ['certificates', 'keep', 'pull.csv', '--for', 'nothing'],
  ['certificates', 'check'],
  ['capability'],
  ['capability', '--specification', 'nothing'],
  ['capability', 'delivered'],
  ['drift', 'nothing'],
  ['impact', 'list'],
  ['impact', 'show', 'IA-9'],
  ['impact', 'decide', 'IA-1', 'J-404', '--as', 'inform', '--because', 'called', '--by', 'Quality One'],
  ['impact', 'decide', 'IA-1', '--as', 'inform', '--because', 'called', '--by', 'Quality One'],
  ['impact', 'wrench', '--as-found', 'found.json', '--by', 'Quality One'],
  ['dispute', '--claim', 'C-1', '--out', 'claim'],
  ['dispute', '--claim', 'C-1', '--out', 'claim', '--plate', 'NOBODY 1'],
  ['dispute', '--claim', 'C-1', '--out', 'claim', '--plate', 'EXAMPLE 1', '--no-papers'],
  ['driver', 'teach', '--unit', 'N.m', '--step', '0.01', '--out', 'taught.json'],
  ['sim', 'replay', 'empty.jsonl'],
  ['package', '--out', 'audit'],
  ['package', '--out', 'another', '--vin', 'NOBODY'],
  ['share', 'nowhere.json'],
  ['countersign', 'records/J-1.record.json', '--key', 'nowhere.pem'],
  ['window', 'thirty'],
  ['jobs', 'list', '--nothing'],
  ['jobs', 'void'],
  ['nothing'],
];

describe('in a language that marks its words nothing comes by another way', () => {
  it.each(LINES.map((line) => [line.join(' '), line] as const))('%s', async (_, line) => {
    const { stdout, stderr } = await typed(line, { cwd: station });
    expect(unspoken(`${stdout}\n${stderr}`, [...FACTS, ...line, ...PLACES])).toEqual([]);
    expect(`${stdout}${stderr}`).toContain('⟦');
  });

  it('doctor, but for what the machine itself says', async () => {
    const { stdout } = await typed(['doctor'], { cwd: station });
    expect(stdout).toContain('⟦');
    expect(
      unspoken(stdout, [...FACTS, /hci\d/, 'wrench', 'gauge', 'UTF-8', 'EAFNOSUPPORT', /\d+\.\d+\.\d+/]),
    ).toEqual([]);
  });
});

describe('help', () => {
  const commands = flattened(treeOf(buildProgram(() => () => Promise.resolve())));
  /** What is typed as it stands: examples, names of commands, flags and what stands for a value. */
  const TYPED_AS_IT_IS = [
    /\b0\.(01|95)\b/,
    /\n *plugmark [^\n]*/,
    /\n {2}[\w.-]+(?= )/,
    /<[^>]*>/,
    /\[[^\]]*\]/,
    /-{1,2}[\w-]+/,
  ];

  it.each(commands.map(({ name, path }) => [name, path] as const))('%s', async (_, path) => {
    const { stdout } = await typed([...path, '--help'], { cwd: station });
    expect(unspoken(`\n${stdout}`, [path.join('-'), ...TYPED_AS_IT_IS, ...FACTS])).toEqual([]);
  });
});

describe('help on a terminal of sixty columns', () => {
  it.each([['demo'], ['jobs', 'void'], ['verify']])('%s %s is broken between words', async (...path) => {
    const { isTTY, columns } = process.stdout;
    Object.assign(process.stdout, { isTTY: true, columns: 60 });
    const { stdout } = await typed([...path.filter((word) => typeof word === 'string'), '--help'], {
      cwd: station,
    });
    Object.assign(process.stdout, { isTTY, columns });
    const [help = ''] = stdout.split(/\n.*\n {2}plugmark /);
    expect(help.split('\n').filter((line) => line.length > 60)).toEqual([]);
  });
});

describe('what programs read', () => {
  it.each([['jobs'], ['keys'], ['gauge-study', 'list'], ['specifications'], ['log', 'check']])(
    '%s %s --json',
    async (...path) => {
      const words = [...path.filter((word) => typeof word === 'string'), '--json'];
      const marked = await typed(words, { cwd: station });
      vi.stubEnv('PLUGMARK_LANGUAGE', 'en');
      expect(marked).toEqual(await typed(words, { cwd: station }));
    },
  );

  it.each(LINES.map((line) => [line.join(' '), line] as const))('the exit code of %s', async (_, line) => {
    const marked = await typed(line, { cwd: station });
    vi.stubEnv('PLUGMARK_LANGUAGE', 'en');
    expect(marked.code).toBe((await typed(line, { cwd: station })).code);
  });
});

describe('whose language it is', () => {
  it.each([
    [['jobs'], 'de'],
    [['jobs', '--json'], 'en'],
    [['completion', 'bash'], 'en'],
    [['completion', '--help'], 'de'],
    [['manual', 'keys'], 'de'],
    [['manual', 'commands', '--roff'], 'en'],
  ] as const)('%j', (words, language) => {
    expect(languageFor(words)).toBe(language);
  });

  it('is English where neither the environment nor a station file says another', () => {
    vi.stubEnv('PLUGMARK_LANGUAGE', 'xx');
    expect(languageFor(['jobs', '--station', 'nowhere.json'])).toBe('en');
  });
});
