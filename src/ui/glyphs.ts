/** The characters that the screen draws with. All take one column; none has a coloured emoji form. */
export interface Glyphs {
  readonly ascii: boolean;
  readonly cutMark: string;
  readonly pointer: string;
  readonly between: string;
  readonly up: string;
  readonly down: string;
  readonly todo: string;
  readonly again: string;
  readonly ask: string;
  readonly done: string;
  readonly bad: string;
  readonly settled: string;
  readonly empty: string;
  readonly line: string;
  readonly limit: string;
  readonly guard: string;
  readonly accept: string;
  readonly peak: string;
  readonly pixel: string;
  readonly upperHalf: string;
  readonly lowerHalf: string;
  /** Part of a column filled from the left, from empty to full. */
  readonly across: readonly string[];
  /** Part of a column filled from below, from empty to full. */
  readonly upward: readonly string[];
  /** Corners and sides of a cell: top left, top right, bottom left, bottom right, horizontal, vertical. */
  readonly box: readonly [string, string, string, string, string, string];
}

const UNICODE: Glyphs = {
  ascii: false,
  cutMark: '…',
  pointer: '►',
  between: ' · ',
  up: '↑',
  down: '↓',
  todo: '·',
  again: '!',
  ask: '?',
  done: '✓',
  bad: '✗',
  settled: '≈',
  empty: '□',
  line: '─',
  limit: '┃',
  guard: '░',
  accept: '▓',
  peak: '│',
  pixel: '█',
  upperHalf: '▀',
  lowerHalf: '▄',
  across: [' ', '▏', '▎', '▍', '▌', '▋', '▊', '▉', '█'],
  upward: [' ', '▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'],
  box: ['┌', '┐', '└', '┘', '─', '│'],
};

const ASCII: Glyphs = {
  ascii: true,
  cutMark: '~',
  pointer: '>',
  between: ' | ',
  up: '^',
  down: 'v',
  todo: '.',
  again: '!',
  ask: '?',
  done: '+',
  bad: 'x',
  settled: '~',
  empty: '_',
  line: '-',
  limit: '|',
  guard: ':',
  accept: '=',
  peak: '|',
  pixel: '#',
  upperHalf: "'",
  lowerHalf: '.',
  across: [' ', '#'],
  upward: [' ', '.', ':', '#'],
  box: ['+', '+', '+', '+', '-', '|'],
};

/** The set for a terminal: plain ASCII where it cannot be trusted with more. */
export const glyphsFor = (ascii: boolean): Glyphs => (ascii ? ASCII : UNICODE);
