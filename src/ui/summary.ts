/** The end of a job in plain lines: a row a cylinder, then whether it is complete. */
import { openItems } from '../job/closing.ts';
import type { CylinderState, JobState, StepState } from '../job/state.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import { type Glyphs, glyphsFor } from './glyphs.ts';
import { gathered } from './open-list.ts';
import { printable } from './printable.ts';
import { figure, SIMULATED, stepSpoken, unitWord, verdictSpoken } from './words.ts';

function stepCell(
  step: StepState,
  settlement: CylinderState['settlement'],
  judgement: Judgement | null,
  window: Window | null,
  glyphs: Glyphs,
): string {
  if (step === 'settled' && (judgement === null || window === null))
    return stepSpoken(step, glyphs, settlement, true).word;
  if (step === 'todo' || judgement === null || window === null) return stepSpoken(step, glyphs).word;
  const verdict = verdictSpoken(judgement.result, glyphs).word;
  const value = `${figure(judgement.value, window.unit)} ${unitWord(window.unit, glyphs)}`;
  const waits =
    step === 'settled'
      ? `, ${stepSpoken(step, glyphs, settlement, true).word}`
      : step === 'ask'
        ? ', ask'
        : step === 'again'
          ? ', again'
          : '';
  return `${verdict} ${value}${waits}`;
}

function row(state: JobState, one: CylinderState, glyphs: Glyphs): readonly string[] {
  const gap = one.gaps.at(-1)?.judgement ?? null;
  const torque = one.pulls.findLast(({ judgement }) => judgement !== null)?.judgement ?? null;
  return [
    String(one.cylinder),
    stepCell(one.gap, undefined, gap, state.gapWindow, glyphs),
    stepCell(one.torque, one.settlement, torque, state.torqueWindow, glyphs),
    `${one.gaps.length}`,
    `${one.pulls.length}`,
  ];
}

/** How a job is complete: proven, or with cylinders that somebody answered for. */
export function completeText({ cylinders }: JobState): string {
  const settled = cylinders.filter(({ torque }) => torque === 'settled').map(({ cylinder }) => cylinder);
  if (settled.length === 0) return 'Complete: every gap and every torque is proven.';
  return `Complete, but the torque of cylinder ${settled.join(', ')} is not proven: somebody answered for it.`;
}

function outcome(state: JobState, ascii: boolean): string[] {
  if (state.voided !== null) {
    const { by, reason } = state.voided;
    return [`VOID: declared void by ${printable(by, 80, ascii)}: ${printable(reason, 200, ascii)}`];
  }
  if (state.closed?.complete === true) return [completeText(state)];
  const open = state.closed?.open ?? openItems(state);
  const list = gathered(open).map((text) => `  ${printable(text, 200, ascii)}`);
  if (state.closed !== null) return ['Closed, not complete. Still open:', ...list];
  return open.length === 0
    ? ['Nothing is open any more; the job is not closed yet.']
    : ['The job is not closed; it can be taken up again. Still open:', ...list];
}

/** Job and vehicle, a table in service order, and the outcome or what is still open. */
export function summaryLines(state: JobState, ascii = false): string[] {
  const glyphs = glyphsFor(ascii);
  const head = ['cylinder', 'gap', 'torque', 'gap readings', 'pulls'];
  const rows = [head, ...state.cylinders.map((one) => row(state, one, glyphs))];
  const widths = head.map((_, column) => Math.max(...rows.map((cells) => cells[column]?.length ?? 0)));
  const table = rows.map((cells) =>
    cells
      .map((cell, at) => cell.padEnd(widths[at] ?? 0))
      .join('  ')
      .trimEnd(),
  );
  const { job, vehicle } = state.order;
  const details = [`job ${job}`, vehicle.description, vehicle.plate, vehicle.vin, state.technician];
  const title = details.filter((text) => text !== undefined).map((text) => printable(text, 120, ascii));
  const simulated = state.simulated ? [`${SIMULATED} tools: this job proves nothing about any engine.`] : [];
  return [title.join('  '), ...simulated, ...table, ...outcome(state, ascii)];
}
