/** What the live screen would find: a terminal, room, UTF-8, colour. None of it is needed: plain lines do without. */

import { SMALLEST } from '../../../ui/layout.ts';
import { w } from '../../../words/catalogue.ts';
import { type Finding, good, warning } from './finding.ts';

export interface TerminalFacts {
  /** A person at both ends, and no reason to draw nothing. */
  readonly screen: boolean;
  readonly columns: number | undefined;
  readonly rows: number | undefined;
  readonly utf8: boolean;
  readonly color: boolean;
}

export function terminalFindings({
  screen,
  columns = 0,
  rows = 0,
  utf8,
  color,
}: TerminalFacts): readonly Finding[] {
  const plain = w`Start plugmark in a terminal to get the screen. Plain lines work anywhere.`;
  if (!screen) return [warning(w`terminal`, w`none; jobs run in plain lines`, plain)];
  const size = `${columns} x ${rows}`;
  const fits = columns >= SMALLEST.columns && rows >= SMALLEST.rows;
  const needed = `${SMALLEST.columns} x ${SMALLEST.rows}`;
  return [
    fits
      ? good(w`terminal`, `${size}${color ? w`, with colour` : w`, without colour`}`)
      : warning(
          w`terminal`,
          w`${size}; the screen needs ${needed}`,
          w`Make the window larger, or work with --plain.`,
        ),
    utf8
      ? good(w`characters`, 'UTF-8')
      : warning(
          w`characters`,
          w`not UTF-8; drawn in plain ASCII`,
          w`Set LANG to a UTF-8 locale, such as C.UTF-8.`,
        ),
  ];
}
