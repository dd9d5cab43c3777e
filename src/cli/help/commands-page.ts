/** The reference of all commands, made from their declarations. */
import type { Command, Option } from 'commander';
import { LANGUAGE_VARIABLE } from '../station/reader-language.ts';
import { EXIT, EXIT_TABLE } from '../terminal/exit.ts';
import { SECRETS } from '../terminal/secret.ts';
import { type CommandNode, flattened, helpTail, treeOf } from './command-tree.ts';
import { type Block, code, type Page, plain, strong } from './page.ts';

export function commandsPage(program: Command): Page {
  const root = treeOf(program);
  const commands = flattened(root).filter((node) => node !== root);
  return {
    name: 'commands',
    about: 'every command with every option',
    blocks: [
      heading('SYNOPSIS'),
      lines('plugmark command [options]'),
      heading('DESCRIPTION'),
      text(sentence(root.command.description())),
      heading('OPTIONS'),
      ...optionBlocks(root),
      ...tailBlocks(root),
      ...commands.flatMap((node) => [
        heading(node.name),
        text(sentence(node.command.description())),
        lines(node.command.createHelp().commandUsage(node.command)),
        ...argumentBlocks(node),
        ...optionBlocks(node),
        ...tailBlocks(node),
      ]),
      heading('EXIT STATUS'),
      ...EXIT_TABLE.map(({ key, name, meaning }) =>
        entry(String(EXIT[key]), `${sentence(name)} ${sentence(meaning)}`),
      ),
      text('The help of each command says what its own exit codes mean.'),
      heading('ENVIRONMENT'),
      entry('NO_COLOR', 'No colour on the screen.'),
      entry(
        LANGUAGE_VARIABLE,
        'en, de, fr or es: the language of what is printed, instead of that of the station file.',
      ),
      entry(
        Object.values(SECRETS).join(', '),
        'Passphrase of a key and PIN of a technician, where nobody can type.',
      ),
      entry('XDG_DATA_HOME', 'Below it a station that names no folder keeps its data.'),
      entry('PLUGMARK_TRACE', '1: details of a fault in the program itself.'),
      heading('FILES'),
      entry('station.json', 'The station file: what the station is called, where its data is, its tools.'),
      entry(
        'station.db, keys/, trusted-keys.json',
        "In the folder of the station's data: log, keys, and the keys for those who verify.",
      ),
    ],
  };
}

const heading = (title: string): Block => ({ kind: 'heading', level: 2, text: plain(title) });
const text = (content: string): Block => ({ kind: 'paragraph', text: plain(content) });
const lines = (content: string): Block => ({ kind: 'lines', text: content });
const entry = (term: string, content: string): Block => ({
  kind: 'entry',
  term: strong(term),
  text: plain(content),
});
const sentence = (words: string) =>
  `${words.charAt(0).toUpperCase()}${words.slice(1)}${words.endsWith('.') ? '' : '.'}`;

const optionBlocks = ({ options }: CommandNode): readonly Block[] =>
  options.map((option) => ({ kind: 'entry', term: code(option.flags), text: plain(optionText(option)) }));

function optionText({ description, defaultValue, mandatory }: Option): string {
  const usual = defaultValue === undefined ? '' : ` (${JSON.stringify(defaultValue)} unless given)`;
  return `${sentence(description).slice(0, -1)}${usual}${mandatory ? ' (must be given)' : ''}.`;
}

const argumentBlocks = ({ command }: CommandNode): readonly Block[] =>
  command.registeredArguments.map((argument) =>
    entry(argument.name(), sentence(argument.description || 'see the usage')),
  );

function tailBlocks(node: CommandNode): readonly Block[] {
  const tail = helpTail(node);
  return tail === '' ? [] : [lines(tail)];
}
