import { UNIT_TEXT, type Unit } from '../figures.ts';

/** How a chart is written as plain text. */
export interface TextSize {
  /** Columns; below 40 it is drawn as for 40. */
  readonly width: number;
  /** Only characters of ASCII, for old terminals and mail. */
  readonly ascii: boolean;
}

export interface TextMarks {
  readonly value: string;
  readonly above: string;
  readonly below: string;
  readonly limit: string;
  readonly centre: string;
  readonly bar: string;
  readonly rule: string;
  readonly cut: string;
}

const FULL: TextMarks = {
  value: '•',
  above: '▲',
  below: '▼',
  limit: '│',
  centre: '┊',
  bar: '█',
  rule: '─',
  cut: '…',
};
const ASCII: TextMarks = {
  value: 'o',
  above: '^',
  below: 'v',
  limit: '|',
  centre: ':',
  bar: '#',
  rule: '-',
  cut: '~',
};

const NARROWEST = 40;

export function marks({ ascii }: TextSize): TextMarks {
  return ascii ? ASCII : FULL;
}

export function columns({ width }: TextSize): number {
  return Math.max(NARROWEST, Math.floor(width));
}

/** Cut to `room` characters, with a mark where something was left out. */
export function cutTo(text: string, room: number, { ascii }: TextSize): string {
  const known = [...(ascii ? inAscii(text) : text)];
  const { cut } = marks({ width: room, ascii });
  return known.length <= room ? known.join('') : `${known.slice(0, Math.max(0, room - 1)).join('')}${cut}`;
}

export function unitText(unit: Unit, { ascii }: TextSize): string {
  return ascii ? inAscii(UNIT_TEXT[unit]) : UNIT_TEXT[unit];
}

/** Long lines broken at spaces. */
export function wrapped(text: string, size: TextSize): readonly string[] {
  const room = columns(size);
  const lines: string[] = [];
  for (const word of (size.ascii ? inAscii(text) : text).split(' ')) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + 1 + word.length <= room)
      lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(cutTo(word, room, size));
  }
  return lines;
}

function inAscii(text: string): string {
  return text
    .replaceAll('·', '.')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\x20-\x7e]/gu, '?');
}
