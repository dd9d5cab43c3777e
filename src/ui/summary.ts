/** The end of a job in plain lines: a row a cylinder, then whether it is complete. */
import { isByAngle } from '../job/click.ts';
import { openItems } from '../job/closing.ts';
import { outOfOrderIn, standsOutOfOrder } from '../job/early.ts';
import { isProvenThroughout, marksOf, proofOf } from '../job/proof.ts';
import { RULES } from '../job/rules.ts';
import type { CylinderState, JobState, StepState } from '../job/state.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import { gapCheckOf } from '../plug/gap.ts';
import {
  GAPS_UNMEASURED,
  MARK_SENTENCE,
  outOfOrderCaveat,
  outOfOrderWord,
  proofBrief,
  proofText,
  reasonWords,
} from '../report/words/index.ts';
import { w } from '../words/catalogue.ts';
import { type Glyphs, glyphsFor } from './glyphs.ts';
import { gathered } from './open-list.ts';
import { columnsOf, fill, printable } from './printable.ts';
import { figure, quantityBrief, stepSpoken, unitWord, verdictSpoken } from './words.ts';

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
        ? w`, ask`
        : step === 'again'
          ? w`, again`
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

/** How a job is complete: what its figures are worth, and cylinders that somebody answered for. */
function completeText(state: JobState, ascii: boolean): string {
  const settled = settledIn(state);
  if (isProvenThroughout(state)) return allProven(state);
  const figures = printable(proofText(proofOf(state)), 400, ascii);
  const complete = figures === '' ? w`COMPLETE.` : w`COMPLETE. ${figures}.`;
  const caveat = outOfOrderCaveat(outOfOrderIn(state));
  const told = caveat === '' ? complete : `${complete} ${caveat}`;
  if (settled.length === 0) return told;
  const answered = isByAngle(state.basis)
    ? w`The turn of cylinder ${settled.join(', ')} is NOT proven: somebody answered for it.`
    : w`The torque of cylinder ${settled.join(', ')} is NOT proven: somebody answered for it.`;
  return `${told} ${answered}`;
}

function allProven({ order }: JobState): string {
  const unmeasured = GAPS_UNMEASURED[gapCheckOf(order.specification)];
  return unmeasured === null
    ? w`Complete: every gap and every torque is proven.`
    : w`Complete: every torque is proven; ${unmeasured}.`;
}

const settledIn = ({ cylinders }: JobState): readonly number[] =>
  cylinders.filter(({ torque }) => torque === 'settled').map(({ cylinder }) => cylinder);

/** The same for one line of a narrow screen. */
export function completeBrief(state: JobState): string {
  const settled = settledIn(state);
  if (isProvenThroughout(state)) return allProven(state);
  if (standsOutOfOrder(state).length > 0)
    return w`${outOfOrderWord()}, but nothing is open: ${proofBrief(proofOf(state)) || w`nothing is proven`}.`;
  if (settled.length > 0)
    return isByAngle(state.basis)
      ? w`Complete, but cylinder ${settled.join(', ')} is NOT proven by turn.`
      : w`Complete, but cylinder ${settled.join(', ')} is NOT proven by torque.`;
  return w`Complete: ${proofBrief(proofOf(state)) || w`nothing was measured`}.`;
}

/** A job goes on by the rules that it was opened under, or not at all. */
const notClosed = ({ rules }: JobState): string =>
  rules === RULES
    ? w`The job is not closed; it can be taken up again. Still open:`
    : w`The job is not closed; it was opened by another version of the program, and only that one can take it up again. Still open:`;

function outcome(state: JobState, ascii: boolean): string[] {
  if (state.voided !== null) {
    const { by, reason } = state.voided;
    return [
      w`VOID: declared void by ${printable(by, 80, ascii)}: ${printable(reasonWords(reason), 200, ascii)}`,
    ];
  }
  if (state.closed?.complete === true) return [completeText(state, ascii)];
  const open = state.closed?.open ?? openItems(state);
  const list = gathered(open).map((text) => `  ${printable(text, 200, ascii)}`);
  if (state.closed !== null) return [w`Closed, not complete. Still open:`, ...list];
  return open.length === 0
    ? [w`Nothing is open any more; the job is not closed yet.`]
    : [notClosed(state), ...list];
}

/** Job and vehicle, a table in service order, and the outcome or what is still open. */
export function summaryLines(state: JobState, ascii = false): string[] {
  const glyphs = glyphsFor(ascii);
  const head = [w`cylinder`, quantityBrief('length'), quantityBrief('torque'), w`gap readings`, w`pulls`];
  const rows = [head, ...state.cylinders.map((one) => row(state, one, glyphs))];
  const widths = head.map((_, column) => Math.max(...rows.map((cells) => columnsOf(cells[column] ?? ''))));
  const table = rows.map((cells) =>
    cells
      .map((cell, at) => fill(cell, widths[at] ?? 0, ''))
      .join('  ')
      .trimEnd(),
  );
  const { job, vehicle } = state.order;
  const details = [w`job ${job}`, vehicle.description, vehicle.plate, vehicle.vin, state.technician];
  const title = details.filter((text) => text !== undefined).map((text) => printable(text, 120, ascii));
  const marked = marksOf(state.sources).map((mark) => MARK_SENTENCE[mark]);
  return [title.join('  '), ...marked, ...table, ...outcome(state, ascii)];
}
