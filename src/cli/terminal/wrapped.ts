import { wrapped } from '../../report/text-wrap.ts';

export { wrapped };

/** Where the text of a line begins that has a label in front of it. */
export const LABEL = 16;

/** Columns of the terminal; without one, lines stay whole: one row is one line for whatever reads them. */
export const screenColumns = (): number =>
  process.stdout.isTTY === true ? process.stdout.columns || 80 : Number.POSITIVE_INFINITY;

/** Lines for people, broken where the terminal ends. */
export const print = (lines: readonly string[]): void => write(process.stdout, lines);

/** The same on the error output. */
export const warn = (lines: readonly string[]): void => write(process.stderr, lines);

function write(stream: NodeJS.WriteStream, lines: readonly string[]): void {
  const columns = stream.isTTY === true ? stream.columns || 80 : Number.POSITIVE_INFINITY;
  stream.write(`${lines.flatMap((line) => wrapped(line, columns)).join('\n')}\n`);
}
