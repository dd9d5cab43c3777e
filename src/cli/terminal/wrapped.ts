import { wrapped } from '../../report/text-wrap.ts';

export { wrapped };

/** Where the text of a line begins that has a label in front of it. */
export const LABEL = 16;

/** Columns of the terminal; without one, lines stay whole: one row is one line for whatever reads them. */
export const screenColumns = (): number =>
  process.stdout.isTTY === true ? process.stdout.columns || 80 : Number.POSITIVE_INFINITY;

/** Lines for people, broken where the terminal ends. */
export function print(lines: readonly string[]): void {
  const columns = screenColumns();
  process.stdout.write(`${lines.flatMap((line) => wrapped(line, columns)).join('\n')}\n`);
}
