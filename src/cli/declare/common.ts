/** What the declarations of commands share. A declaration loads nothing but commander: a command's own file is imported when it runs. */
import { type Command, InvalidArgumentError, Option } from 'commander';
import { LANGUAGES, spokenPhrase, w } from '../../words/catalogue.ts';
import { EXIT, EXIT_TABLE, type ExitCode, type ExitName } from '../terminal/exit.ts';
import { screenColumns, wrapped } from '../terminal/wrapped.ts';

/** Makes a commander action of a command: its exit code becomes the program's, its problems become sentences. */
export type Run = (command: () => Promise<ExitCode>) => () => Promise<void>;

/** Adds some commands to the program. */
export type Declare = (program: Command, run: Run) => void;

/** How a command can end beside "done" and "bad input", and what that means of this command. */
export type Ends = Readonly<Partial<Record<ExitName, string>>>;

/** Every command can end so. */
const ALWAYS: ReadonlySet<ExitName> = new Set(['done', 'badInput']);

/** The end of a command's help: its exit codes, then lines that can be typed as they stand. */
export function closing(ends: Ends, ...lines: readonly string[]): string {
  const rows = EXIT_TABLE.flatMap(({ key, name, meaning }) => {
    const own = ends[key];
    const words = own === undefined ? (ALWAYS.has(key) ? meaning : undefined) : spokenPhrase(own);
    return words === undefined ? [] : exitLines(EXIT[key], name, words);
  });
  return `\n${w`Exit codes:`}\n${rows.join('\n')}\n${examples(...lines)}`;
}

/** The end of the help of a group of commands. */
export const examples = (...lines: readonly string[]): string =>
  `\n${lines.length === 1 ? w`Example:` : w`Examples:`}\n${lines.map((line) => `  ${line}`).join('\n')}`;

/** All exit codes, as the help of the program shows them. */
export const allExitCodes = (): string =>
  `\n${w`Exit codes:`}\n${EXIT_TABLE.flatMap(({ key, name, meaning }) => exitLines(EXIT[key], name, meaning)).join('\n')}`;

const exitLines = (code: ExitCode, name: string, meaning: string): readonly string[] =>
  wrapped(
    `  ${String(code).padEnd(2)}  ${name.padEnd(Math.max(...EXIT_TABLE.map((row) => row.name.length)))}  ${meaning}`,
    screenColumns(),
  );

/** Which station a command is about. */
export const scope = (command: Command): Command =>
  command
    .option('--station <file>', 'the station file', 'station.json')
    .option('--data <folder>', "the folder of the station's data, instead of a station file");

/** Whose records are asked: those of a station, or of all stations of an archive. */
export const askedScope = (command: Command): Command =>
  scope(command).option('--archive <url>', 'all stations of the archive there, instead of one station');

/** Adds `--json`. The form of what it prints is called after the command: `jobs-list`. */
export const json = (command: Command): Command =>
  command.option(
    '--json',
    w`the answer as JSON; "plugmark schema ${pathOf(command).join('-')}" prints its form`,
  );

const pathOf = (command: Command): readonly string[] =>
  command.parent === null ? [] : [...pathOf(command.parent), command.name()];

/** Adds `--csv-locale`. */
export const csvLocale = (command: Command): Command =>
  command.option(
    '--csv-locale <language>',
    'CSV as spreadsheets of that language read it, for example de; none: without byte order mark',
  );

/** Adds `--language` and `--units`, whom the papers of a command are for. */
export const forReader = (command: Command): Command =>
  command
    .addOption(
      new Option(
        '--language <language>',
        'language of the papers; else as the station file says, or English',
      ).choices(LANGUAGES),
    )
    .addOption(
      new Option(
        '--units <units>',
        'units on the papers; else as the station file says, or N·m and mm',
      ).choices(['N.m-mm', 'lbf.ft-in']),
    );

export function whole(text: string): number {
  if (!/^\d{1,9}$/.test(text)) throw new InvalidArgumentError(w`expected a whole number.`);
  return Number(text);
}

export function oneOrMore(text: string): number {
  const value = whole(text);
  if (value === 0) throw new InvalidArgumentError(w`expected 1 or more.`);
  return value;
}

export function positive(text: string): number {
  const value = Number(text);
  if (!/^\d{1,6}(\.\d{1,6})?$/.test(text) || value === 0)
    throw new InvalidArgumentError(w`expected a number above zero.`);
  return value;
}

export function figure(text: string): number {
  if (!/^\d{1,6}(?:\.\d{1,6})?$/.test(text)) throw new InvalidArgumentError(w`expected a number.`);
  return Number(text);
}

/** May be given several times. */
export const collected = (value: string, before: readonly string[]): readonly string[] => [...before, value];
