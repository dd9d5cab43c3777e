/** What the screen of `show` says at one cylinder and pull: engine, steps with their times, the curve in its window. */
import type { AttemptRow } from '../../report/attempts.ts';
import { traceLines } from '../../report/job-text.ts';
import type { ReportModel } from '../../report/model.ts';
import { VERDICT_WORD } from '../../report/verdict.ts';
import type { KeyPress } from '../../ui/key-press.ts';
import type { Size } from '../../ui/layout.ts';
import { cutLine, exactly, type Line } from '../../ui/line.ts';
import { printable } from '../../ui/printable.ts';
import { w } from '../../words/catalogue.ts';

/** Where the person is: the cylinder by its place in service order, and which of its pulls. */
export interface Place {
  readonly cylinder: number;
  readonly pull: number;
}

export interface Shown {
  readonly model: ReportModel;
  /** How the verification came out. */
  readonly verdict: string;
  readonly ascii: boolean;
}

const pullsAt = ({ plots, cylinders }: ReportModel, at: number) =>
  plots
    .filter(({ cylinder }) => cylinder === cylinders[at]?.cylinder)
    .flatMap((plot) => plot.pulls.map((pull) => ({ plot, pull })));

/** Begins at the first cylinder, with the pull that counted. */
export const firstPlace = (model: ReportModel): Place => ({
  cylinder: 0,
  pull: pullsAt(model, 0).length - 1,
});

/** Left and right go from cylinder to cylinder, up and down from pull to pull. */
export function moved(model: ReportModel, { cylinder, pull }: Place, { key }: KeyPress): Place {
  const count = model.cylinders.length;
  const to = (at: number): Place => ({ cylinder: at, pull: pullsAt(model, at).length - 1 });
  const pulls = pullsAt(model, cylinder).length;
  switch (key) {
    case 'left':
      return to((cylinder + count - 1) % count);
    case 'right':
    case 'tab':
      return to((cylinder + 1) % count);
    case 'home':
      return to(0);
    case 'end':
      return to(count - 1);
    case 'up':
      return { cylinder, pull: Math.max(0, pull - 1) };
    case 'down':
      return { cylinder, pull: Math.min(pulls - 1, pull + 1) };
    default:
      return { cylinder, pull };
  }
}

/** Exactly as many lines as the window has. */
export function showFrame({ model, verdict, ascii }: Shown, place: Place, { columns, rows }: Size): Line[] {
  const row = model.cylinders[place.cylinder];
  const plain = (text: string, more: Partial<Line[number]> = {}): Line => [
    { text: printable(text, columns, ascii), ...more },
  ];
  const chosen = pullsAt(model, place.cylinder)[place.pull];
  const { torqueWindow } = model;
  const curve =
    chosen === undefined
      ? [`  ${w`No pull was given to it.`}`]
      : traceLines(model, chosen.plot, chosen.pull, { columns, ascii });
  const steps = row === undefined ? [] : [...row.gaps, ...row.pulls].sort((a, b) => (a.at < b.at ? -1 : 1));
  const lines: Line[] = [
    plain(`${w`${model.status.word}: job ${model.job}.`} ${model.status.text}`, { bold: true }),
    plain(verdict),
    [],
    ...engine(model, place, columns),
    [],
    plain(w`Window ${torqueWindow.limits}; accepted ${torqueWindow.acceptance}. Dashed: the limits.`),
    ...curve.map((text): Line => [{ text }]),
    [],
  ];
  const bold = (step: AttemptRow) => step.pull !== null && step.pull === chosen?.pull.pull;
  const stepLines = around(steps, steps.findIndex(bold), rows - 2 - lines.length).map(
    (step): Line => [{ text: stepText(step), bold: bold(step) }],
  );
  const keys = ascii
    ? w`left right: cylinder  up down: pull  q: leave`
    : w`← → cylinder   ↑ ↓ pull   q leave`;
  const shown = exactly([...lines, ...stepLines], Math.max(1, rows - 2)).map((line) =>
    cutLine(line, columns, ascii ? '~' : '…'),
  );
  return [...shown, plain(keys, { dim: true })];
}

/** As many as there is room for, the one at `at` among them. */
function around<T>(all: readonly T[], at: number, room: number): readonly T[] {
  const first = Math.max(0, Math.min(at - Math.floor(room / 2), all.length - room));
  return all.slice(first, first + Math.max(0, room));
}

/** Every cylinder with its verdict; the one before the eyes stands out without colour. */
function engine(model: ReportModel, place: Place, columns: number): Line[] {
  const cells = model.cylinders.map(({ cylinder, verdict }, at) => ({
    text: ` ${model.positions.cell(cylinder)} ${VERDICT_WORD[verdict]} `,
    inverse: at === place.cylinder,
    bold: verdict !== 'ok',
  }));
  const lines: { text: string; inverse?: boolean; bold?: boolean }[][] = [[]];
  let used = 0;
  for (const [at, cell] of cells.entries()) {
    const framed = at === place.cylinder ? `[${cell.text.trim()}]` : cell.text;
    if (used + framed.length > columns) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)?.push({ ...cell, text: framed });
    used += framed.length;
  }
  return lines;
}

/** `08:15:28  gap    0.742 mm  OK`. */
function stepText({ at, quantity, valueText, verdictWord, kind, pull, outOfOrder }: AttemptRow): string {
  const what = quantity === 'gap' ? w`gap` : w`pull ${pull ?? ''}, ${kind}`;
  const unit = quantity === 'gap' ? 'mm' : 'N·m';
  const early = outOfOrder === '' ? '' : `, ${w`OUT OF ORDER: ${outOfOrder}`}`;
  return `  ${at.slice(11, 19)} UTC  ${what.padEnd(24)}${valueText.padStart(8)} ${unit}  ${verdictWord}${early}`;
}
