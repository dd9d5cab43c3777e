/** What the declarations of commands share. A declaration loads nothing but commander: a command's own file is imported when it runs. */
import { type Command, InvalidArgumentError } from 'commander';
import type { ExitCode } from '../terminal/exit.ts';

/** Makes a commander action of a command: its exit code becomes the program's, its problems become sentences. */
export type Run = (command: () => Promise<ExitCode>) => () => Promise<void>;

/** Adds some commands to the program. */
export type Declare = (program: Command, run: Run) => void;

/** The end of a command's help: lines that can be typed as they stand. */
export const examples = (...lines: readonly string[]) =>
  `\n${lines.length === 1 ? 'Example' : 'Examples'}:\n${lines.map((line) => `  ${line}`).join('\n')}`;

/** Which station a command is about. */
export const scope = (command: Command): Command =>
  command
    .option('--station <file>', 'the station file (JSON)', 'station.json')
    .option('--data <folder>', "the folder of the station's data, instead of a station file");

export function whole(text: string): number {
  if (!/^\d{1,9}$/.test(text)) throw new InvalidArgumentError('expected a whole number.');
  return Number(text);
}

export function oneOrMore(text: string): number {
  const value = whole(text);
  if (value === 0) throw new InvalidArgumentError('expected 1 or more.');
  return value;
}

export function positive(text: string): number {
  const value = Number(text);
  if (!/^\d{1,6}(\.\d{1,6})?$/.test(text) || value === 0)
    throw new InvalidArgumentError('expected a number above zero.');
  return value;
}

export function oneOf(...allowed: readonly number[]): (text: string) => number {
  return (text) => {
    const value = whole(text);
    if (!allowed.includes(value)) throw new InvalidArgumentError(`expected ${allowed.join(' or ')}.`);
    return value;
  };
}
