/** The help of commands in the reader's language. Their declarations stay as they are: each text is looked up where it is printed. */
import type { Argument, Command, HelpConfiguration, Option } from 'commander';
import { spokenPhrase, w } from '../../words/catalogue.ts';

export const HELP_IN_READERS_LANGUAGE: HelpConfiguration = {
  // Longest names of options leave less than commander's 40 columns on a terminal of 60.
  minWidthToWrap: 20,
  commandDescription: (command: Command) => spokenPhrase(command.description()),
  subcommandDescription: (command: Command) => spokenPhrase(command.summary() || command.description()),
  optionDescription: (option: Option) =>
    withMore(spokenPhrase(option.description), [
      ...choicesOf(option.argChoices),
      ...(hasDefault(option) ? [w`default: ${JSON.stringify(option.defaultValue)}`] : []),
    ]),
  argumentDescription: (argument: Argument) =>
    withMore(spokenPhrase(argument.description), choicesOf(argument.argChoices)),
  styleTitle: (title) => TITLES[title]?.() ?? title,
};

const TITLES: Readonly<Record<string, () => string>> = {
  'Usage:': () => w`Usage:`,
  'Arguments:': () => w`Arguments:`,
  'Options:': () => w`Options:`,
  'Commands:': () => w`Commands:`,
};

const choicesOf = (choices: readonly string[] | undefined): readonly string[] =>
  choices === undefined ? [] : [w`choices: ${choices.map((choice) => JSON.stringify(choice)).join(', ')}`];

/** Of a flag that is off unless given nothing is said, as commander does by itself. */
const hasDefault = (option: Option) =>
  option.defaultValue !== undefined &&
  (option.required || option.optional || (option.isBoolean() && typeof option.defaultValue === 'boolean'));

const withMore = (text: string, more: readonly string[]): string =>
  more.length === 0 ? text : `${text} (${more.join(', ')})`.trimStart();

/** What commander finds wrong with a command line, in its own words. */
const REFUSALS: readonly (readonly [pattern: RegExp, say: (...names: readonly string[]) => string])[] = [
  [/^unknown option '(.*)'$/s, (option = '') => w`unknown option '${option}'`],
  [/^unknown command '(.*)'$/s, (command = '') => w`unknown command '${command}'`],
  [/^missing required argument '(.*)'$/s, (argument = '') => w`missing required argument '${argument}'`],
  [/^option '(.*)' argument missing$/s, (option = '') => w`option '${option}' argument missing`],
  [/^required option '(.*)' not specified$/s, (option = '') => w`required option '${option}' not specified`],
  [
    /^too many arguments(?: for '(.*)')?\. Expected (\d+) arguments? but got (\d+)(?:.*)$/s,
    (_command, most = '', count = '') => w`too many arguments: expected ${most}, found ${count}`,
  ],
  [
    /^(option|command-argument) '(.*?)' argument '(.*)' is invalid\. (.*)$/s,
    (_kind, option = '', given = '', why = '') => w`'${option}': '${given}' is not valid. ${allowed(why)}`,
  ],
  [
    /^command-argument value '(.*)' is invalid for argument '(.*?)'\. (.*)$/s,
    (given = '', argument = '', why = '') => w`'${argument}': '${given}' is not valid. ${allowed(why)}`,
  ],
];

const allowed = (why: string): string => {
  const choices = /^Allowed choices are (.*)\.$/s.exec(why)?.[1];
  return choices === undefined ? why : w`Allowed choices are ${choices}.`;
};

/** The same in the reader's language; as it is where it is none of them. A word that was meant may be proposed behind it. */
export function refusalOf(text: string): string {
  const [first = '', proposal] = text.split(/\n\(Did you mean (?=.*\?\)$)/s);
  const said = saidOf(first);
  return proposal === undefined
    ? said
    : `${said} ${w`(Did you mean ${proposal.slice(0, -2).replace(/^one of /, '')}?)`}`;
}

function saidOf(text: string): string {
  for (const [pattern, say] of REFUSALS) {
    const [whole, ...names] = pattern.exec(text) ?? [];
    if (whole !== undefined) return say(...names);
  }
  return text;
}
