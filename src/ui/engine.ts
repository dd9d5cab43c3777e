/** The engine as it lies there: one row a bank, front to the left, a cell a cylinder with its gap and its torque. */

import { type CylinderState, isOver, type JobState, type Settlement, type StepState } from '../job/state.ts';
import type { Judgement } from '../metrology/judgement.ts';
import { w } from '../words/catalogue.ts';
import type { Glyphs } from './glyphs.ts';
import { type EngineLayout, PAIR_MARGIN } from './layout.ts';
import type { Line, Span } from './line.ts';
import { nextTask } from './next-step.ts';
import { columnsOf, fill } from './printable.ts';
import { figure, quantityBrief, stepSpoken } from './words.ts';

interface Cell {
  readonly cylinder: number;
  readonly gap: StepState;
  readonly torque: StepState;
  readonly gapFigure: string;
  readonly torqueFigure: string;
  readonly settlement: Settlement | undefined;
  /** The cylinder of the next step. */
  readonly target: boolean;
  readonly gapNext: boolean;
  readonly torqueNext: boolean;
}

function measured(step: StepState, judgement: Judgement | null | undefined, unit: 'mm' | 'N.m'): string {
  const shown = step === 'done' || step === 'again' || step === 'settled';
  return shown && judgement ? figure(judgement.value, unit) : '';
}

function cellOf(job: JobState, cylinder: number): Cell {
  const state: CylinderState | undefined = job.cylinders.find((one) => one.cylinder === cylinder);
  const task = nextTask(job);
  const atBench = task.kind !== 'panel' && job.closed === null;
  const gap = state?.gap ?? 'todo';
  const torque = state?.torque ?? 'todo';
  const judged = state?.pulls.findLast(({ judgement }) => judgement !== null);
  return {
    cylinder,
    gap,
    torque,
    gapFigure: measured(gap, state?.gaps.at(-1)?.judgement, 'mm'),
    torqueFigure: measured(torque, judged?.judgement, 'N.m'),
    settlement: state?.settlement,
    target: 'cylinder' in task && task.cylinder === cylinder,
    gapNext: atBench && job.gapTarget === cylinder,
    torqueNext: atBench && job.torqueTarget === cylinder,
  };
}

/** Symbol, word and, where there is room, the figure: exactly `columns` wide. */
function stepText(
  step: StepState,
  settlement: Settlement | undefined,
  value: string,
  columns: number,
  glyphs: Glyphs,
): string {
  const { symbol, word } = stepSpoken(step, glyphs, settlement, columns >= 10);
  const short = columns >= 7 ? `${symbol} ${word}` : symbol + word;
  const both = `${fill(short, Math.max(7, columnsOf(short)), '')} ${value}`;
  const full = columnsOf(both) <= columns ? both : short;
  return fill(full, columns, glyphs.cutMark);
}

function half(cell: Cell, which: 'gap' | 'torque', label: string, columns: number, glyphs: Glyphs): Line {
  const step = cell[which];
  const next = which === 'gap' ? cell.gapNext : cell.torqueNext;
  const value = which === 'gap' ? cell.gapFigure : cell.torqueFigure;
  const number = which === 'gap' ? String(cell.cylinder).padStart(2) : '  ';
  const head = `${next ? glyphs.pointer : ' '}${number} ${label}`;
  return [
    { text: head, bold: true, inverse: cell.target },
    {
      text: stepText(
        step,
        which === 'gap' ? undefined : cell.settlement,
        value,
        columns - head.length,
        glyphs,
      ),
      tone: stepSpoken(step, glyphs).tone,
      bold: cell.target,
      inverse: cell.target,
    },
  ];
}

const GAP_COLUMN: Span = { text: ' ' };

function pairLines(cells: readonly Cell[], layout: EngineLayout, glyphs: Glyphs): Line[] {
  const room = layout.cellColumns - (layout.cellColumns > 10 ? 1 : 0);
  const between = layout.cellColumns > room ? [GAP_COLUMN] : [];
  const line = (which: 'gap' | 'torque'): Line => [
    {
      text:
        fill(` ${quantityBrief(which === 'gap' ? 'length' : 'torque')}`, PAIR_MARGIN - 1, glyphs.cutMark) +
        ' ',
    },
    ...cells.flatMap((cell) => [...half(cell, which, '', room, glyphs), ...between]),
  ];
  return [line('gap'), line('torque')];
}

function boxedLines(cells: readonly Cell[], layout: EngineLayout, glyphs: Glyphs): Line[] {
  const inner = layout.cellColumns - 3;
  const [topLeft, topRight, bottomLeft, bottomRight, across, down] = glyphs.box;
  const edge = (left: string, right: string): Line => [
    GAP_COLUMN,
    ...cells.map(({ target }) => ({ text: `${left}${across.repeat(inner)}${right} `, bold: target })),
  ];
  const middle = (which: 'gap' | 'torque'): Line => [
    GAP_COLUMN,
    ...cells.flatMap((cell) => [
      { text: down, bold: cell.target },
      ...half(
        cell,
        which,
        `${fill(quantityBrief(which === 'gap' ? 'length' : 'torque'), 6, glyphs.cutMark)} `,
        inner,
        glyphs,
      ),
      { text: `${down} `, bold: cell.target },
    ]),
  ];
  return [edge(topLeft, topRight), middle('gap'), middle('torque'), edge(bottomLeft, bottomRight)];
}

/** One word for both steps: what is wanted, else that all is well. */
function tinyWord(cell: Cell, glyphs: Glyphs): { text: string; tone?: Span['tone'] } {
  const worst = (['ask', 'again'] as const).find((step) => cell.gap === step || cell.torque === step);
  const over = isOver(cell.gap) ? (isOver(cell.torque) ? cell.torque : null) : null;
  const step = worst ?? over ?? 'todo';
  const { symbol, word, tone } = stepSpoken(step, glyphs, cell.settlement);
  const open = isOver(cell.gap) ? w`pull` : quantityBrief('length');
  return { text: symbol + (step === 'todo' ? open : word), tone };
}

function tinyLine(cells: readonly Cell[], layout: EngineLayout, glyphs: Glyphs): Line {
  return [
    GAP_COLUMN,
    ...cells.map((cell): Span => {
      const pointer = cell.target ? glyphs.pointer : ' ';
      const { text, tone } = tinyWord(cell, glyphs);
      const whole = `${pointer}${String(cell.cylinder).padStart(2)}${text}`;
      return { text: fill(whole, layout.cellColumns, ''), tone, inverse: cell.target, bold: cell.target };
    }),
  ];
}

function bankLines(bank: readonly number[], job: JobState, layout: EngineLayout, glyphs: Glyphs): Line[] {
  const lines: Line[] = [];
  for (let at = 0; at < bank.length; at += layout.perRow) {
    const cells = bank.slice(at, at + layout.perRow).map((cylinder) => cellOf(job, cylinder));
    if (layout.form === 'tiny') lines.push(tinyLine(cells, layout, glyphs));
    else lines.push(...(layout.form === 'pair' ? pairLines : boxedLines)(cells, layout, glyphs));
  }
  return lines;
}

/** The crankshaft; where there is room the firing order stands on it, which nothing rests on. */
function crankText({ order }: JobState, length: number, glyphs: Glyphs): string {
  const { firingOrder } = order.engine;
  const text = firingOrder === undefined ? '' : w` fires ${firingOrder.join('-')} `;
  if (text === '' || text.length + 6 > length) return glyphs.line.repeat(length);
  return `${glyphs.line.repeat(3)}${text}`.padEnd(length, glyphs.line);
}

/** All banks, with the line of the crankshaft in the middle that marks the front. */
export function engineLines(job: JobState, layout: EngineLayout, glyphs: Glyphs): Line[] {
  const { banks } = job.order.engine;
  const margin = layout.form === 'pair' ? PAIR_MARGIN : 1;
  const [front, rear] = [w`front`, w`rear`];
  const length = margin + layout.perRow * layout.cellColumns - columnsOf(` ${front}  ${rear} `);
  const crank: Line = [
    { text: ` ${front} ${crankText(job, Math.max(3, length), glyphs)} ${rear}`, dim: true },
  ];
  const half = Math.ceil(banks.length / 2);
  const drawn = (some: typeof banks) => some.flatMap((bank) => bankLines(bank, job, layout, glyphs));
  return [...drawn(banks.slice(0, half)), crank, ...drawn(banks.slice(half))];
}
