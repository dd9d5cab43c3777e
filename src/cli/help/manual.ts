import type { Command, Option } from 'commander';
import { EXIT, EXIT_TABLE, type ExitCode } from '../terminal/exit.ts';
import { SECRETS } from '../terminal/secret.ts';
import { type CommandNode, flattened, helpTail, treeOf } from './command-tree.ts';
import { programVersion } from './version.ts';

interface Section {
  readonly title: string;
  readonly parts: readonly Part[];
}

/** `lines` stand as they are; an `entry` is a term with its text indented below. */
type Part =
  | { readonly kind: 'text' | 'lines'; readonly text: string }
  | { readonly kind: 'entry'; readonly term: string; readonly text: string };

/** Prints the reference of all commands, made from their declarations: for reading, or as a page for man. */
export function manual(program: Command, options: { readonly roff?: true }): Promise<ExitCode> {
  const sections = sectionsOf(treeOf(program));
  process.stdout.write(options.roff === true ? roff(sections) : plain(sections));
  return Promise.resolve(EXIT.done);
}

function sectionsOf(root: CommandNode): readonly Section[] {
  const commands = flattened(root).filter((node) => node !== root);
  return [
    { title: 'NAME', parts: [text(`plugmark - ${root.command.description()}`)] },
    { title: 'SYNOPSIS', parts: [text('plugmark command [options]')] },
    { title: 'OPTIONS', parts: [...optionParts(root), ...tailParts(root)] },
    ...commands.map((node) => ({
      title: node.name,
      parts: [
        text(`${sentence(node.command.description())}`),
        lines(node.command.createHelp().commandUsage(node.command)),
        ...argumentParts(node),
        ...optionParts(node),
        ...tailParts(node),
      ],
    })),
    {
      title: 'EXIT STATUS',
      parts: [
        ...EXIT_TABLE.map(({ key, name, meaning }) =>
          entry(String(EXIT[key]), `${sentence(name)} ${sentence(meaning)}`),
        ),
        text('The help of each command says what its own exit codes mean.'),
      ],
    },
    {
      title: 'ENVIRONMENT',
      parts: [
        entry('NO_COLOR', 'No colour on the screen.'),
        entry(
          Object.values(SECRETS).join(', '),
          'Passphrase of a key and PIN of a technician, where nobody can type.',
        ),
        entry('XDG_DATA_HOME', 'Below it a station that names no folder keeps its data.'),
        entry('PLUGMARK_TRACE', '1: details of a fault in the program itself.'),
      ],
    },
    {
      title: 'FILES',
      parts: [
        entry(
          'station.json',
          'The station file: what the station is called, where its data lies, its tools.',
        ),
        entry(
          'station.db, keys/, trusted-keys.json',
          "In the folder of the station's data: log, keys, and the keys for those who verify.",
        ),
      ],
    },
  ];
}

const text = (content: string): Part => ({ kind: 'text', text: content });
const lines = (content: string): Part => ({ kind: 'lines', text: content });
const entry = (term: string, content: string): Part => ({ kind: 'entry', term, text: content });
const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

const optionParts = ({ options }: CommandNode) =>
  options.map((option) => entry(option.flags, optionText(option)));

function optionText({ description, defaultValue, mandatory }: Option): string {
  const usual = defaultValue === undefined ? '' : ` (${JSON.stringify(defaultValue)} unless given)`;
  return `${sentence(description).slice(0, -1)}${usual}${mandatory ? ' (must be given)' : ''}.`;
}

const argumentParts = ({ command }: CommandNode) =>
  command.registeredArguments.map((argument) =>
    entry(argument.name(), sentence(argument.description || 'see the usage')),
  );

function tailParts(node: CommandNode): readonly Part[] {
  const tail = helpTail(node);
  return tail === '' ? [] : [lines(tail)];
}

function plain(sections: readonly Section[]): string {
  const page = sections.map(({ title, parts }) => [title, ...parts.map(plainPart)].join('\n'));
  return `plugmark ${programVersion()}\n\n${page.join('\n\n')}\n`;
}

function plainPart(part: Part): string {
  if (part.kind === 'entry') return `    ${part.term}\n        ${part.text}`;
  return part.text
    .split('\n')
    .map((line) => `    ${line}`.trimEnd())
    .join('\n');
}

/** A page for man (groff's man macros). */
function roff(sections: readonly Section[]): string {
  const page = sections.flatMap(({ title, parts }) => [
    `.SH "${title.replaceAll('"', '')}"`,
    ...parts.flatMap(roffPart),
  ]);
  return `${[`.TH PLUGMARK 1 "" "plugmark ${programVersion()}"`, ...page].join('\n')}\n`;
}

function roffPart(part: Part): readonly string[] {
  const body = part.text.split('\n').map(roffLine);
  switch (part.kind) {
    case 'text':
      return ['.PP', ...body];
    case 'lines':
      return ['.PP', '.nf', ...body, '.fi'];
    case 'entry':
      return ['.TP', `\\fB${roffLine(part.term)}\\fR`, ...body];
  }
}

/** Hyphens that can be copied, no escapes from the text, and no line that begins as a request does. */
const roffLine = (line: string) =>
  line
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replace(/^(?=[.'])/, '\\&');
