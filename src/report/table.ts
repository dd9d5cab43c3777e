import type { Condition } from '../plug/condition.ts';
import { pictogram } from './pictograms.ts';
import {
  decoration,
  group,
  heightOf,
  INK,
  ink,
  lineHeight,
  PAGE,
  type Placed,
  room,
  type Sheet,
  type Struct,
  TEXT_WIDTH,
  tagged,
} from './sheet.ts';
import { symbol } from './symbols.ts';
import type { Verdict } from './verdict.ts';

export interface Column {
  readonly title: string;
  /** Share of the width; the shares of a table need no certain sum. */
  readonly share: number;
  readonly align?: 'left' | 'right';
  /** The cell names its row. */
  readonly heads?: boolean;
}

export interface Cell {
  readonly text: string;
  readonly verdict?: Verdict;
  /** How an old plug looked: drawn before the text. */
  readonly condition?: Condition;
  readonly bold?: boolean;
}

const SIZE = 7.5;
const HEAD_SIZE = 7;
const PAD = { across: 2.5, above: 2.3, below: 0.6 } as const;
const SYMBOL = 6;
const PICTOGRAM = 20;
const MOST_LINES = 8;

/** How high the head and the first row are: a section that begins with the table keeps its heading with them. */
export function startHeight(
  sheet: Sheet,
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
): number {
  const boxes = columnBoxes(columns);
  const head = heightOfRow(sheet, headCells(columns), boxes, HEAD_SIZE);
  return head + heightOfRow(sheet, rows[0] ?? [], boxes, SIZE);
}

const headCells = (columns: readonly Column[]): Cell[] =>
  columns.map(({ title }) => ({ text: title, bold: true }));

/** A tagged table over the whole width; its head is repeated on every page that it goes on to. */
export function table(
  sheet: Sheet,
  parent: Struct,
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
): void {
  const element = group(sheet, parent, 'Table');
  const boxes = columnBoxes(columns);
  const headRow = () => {
    rule(sheet, 0.6);
    drawRow(sheet, element, headCells(columns), { columns, boxes, size: HEAD_SIZE, head: true });
    rule(sheet, 0.6);
  };
  room(sheet, startHeight(sheet, columns, rows));
  headRow();
  for (const row of rows) {
    const { y } = sheet;
    room(sheet, heightOfRow(sheet, row, boxes, SIZE));
    if (sheet.y < y) headRow();
    drawRow(sheet, element, row, { columns, boxes, size: SIZE, head: false });
    rule(sheet, 0.25);
  }
}

interface RowStyle {
  readonly columns: readonly Column[];
  readonly boxes: readonly ColumnBox[];
  readonly size: number;
  readonly head: boolean;
}

interface ColumnBox {
  readonly x: number;
  readonly width: number;
}

function columnBoxes(columns: readonly Column[]): ColumnBox[] {
  const sum = columns.reduce((total, { share }) => total + share, 0);
  let x: number = PAGE.left;
  return columns.map(({ share }) => {
    const width = (TEXT_WIDTH * share) / sum;
    const box = { x: x + PAD.across, width: width - 2 * PAD.across };
    x += width;
    return box;
  });
}

function drawRow(sheet: Sheet, parent: Struct, cells: readonly Cell[], style: RowStyle): void {
  const { columns, boxes, size, head } = style;
  const { y } = sheet;
  const height = heightOfRow(sheet, cells, boxes, size);
  decoration(sheet, () => {
    cells.forEach(({ verdict, condition }, index) => {
      const box = boxes[index];
      if (condition !== undefined && box !== undefined)
        pictogram(sheet.doc, condition, box.x, y + PAD.above - 1.5, PICTOGRAM);
      if (verdict !== undefined && box !== undefined)
        symbol(sheet.doc, verdict, box.x, y + PAD.above + 0.6, SYMBOL);
    });
  });
  const row = group(sheet, parent, 'TR');
  cells.forEach((cell, index) => {
    const box = boxes[index];
    const column = columns[index];
    if (box === undefined || column === undefined) return;
    const heads = head || column.heads === true;
    const placed: Placed = {
      ...inside(cell, box),
      y: y + PAD.above,
      size,
      bold: cell.bold === true,
      lines: MOST_LINES,
      align: column.align ?? 'left',
    };
    const extras = heads ? { scope: head ? 'Column' : 'Row' } : {};
    tagged(sheet, row, heads ? 'TH' : 'TD', extras, () => ink(sheet, cell.text, placed));
  });
  sheet.y = y + height;
}

function inside(cell: Cell, box: ColumnBox): ColumnBox {
  const shift = cell.verdict !== undefined ? SYMBOL + 3 : cell.condition !== undefined ? PICTOGRAM + 5 : 0;
  return { x: box.x + shift, width: box.width - shift };
}

function heightOfRow(
  sheet: Sheet,
  cells: readonly Cell[],
  boxes: readonly ColumnBox[],
  size: number,
): number {
  const heights = cells.map((cell, index) => {
    const box = boxes[index];
    if (box === undefined) return 0;
    const { width } = inside(cell, box);
    return heightOf(sheet, cell.text, { width, size, bold: cell.bold === true, lines: MOST_LINES });
  });
  const lowest = cells.some(({ condition }) => condition !== undefined) ? PICTOGRAM : lineHeight(size);
  return Math.max(lowest, ...heights) + PAD.above + PAD.below;
}

function rule(sheet: Sheet, width: number): void {
  const { y } = sheet;
  decoration(sheet, () => {
    sheet.doc
      .lineWidth(width)
      .moveTo(PAGE.left, y)
      .lineTo(PAGE.left + TEXT_WIDTH, y)
      .stroke(INK);
  });
}
