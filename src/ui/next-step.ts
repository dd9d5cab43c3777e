/** What the technician does next: worked out once from the job's state, said in one plain sentence. */

import { isByAngle } from '../job/click.ts';
import { openItems } from '../job/closing.ts';
import { isFitted, standsOutOfOrder } from '../job/early.ts';
import { heldGapStep } from '../job/held-gap.ts';
import { phaseOf } from '../job/phase.ts';
import { isProvenThroughout } from '../job/proof.ts';
import { stageOf } from '../job/stage.ts';
import { type CylinderState, isOver, type JobState, type Question, type ToolState } from '../job/state.ts';
import { gapCheckOf } from '../plug/gap.ts';
import { hasOwnParts, partsFor } from '../plug/parts.ts';
import { gapText } from '../quantity/shown.ts';
import type { Quantity } from '../reading.ts';
import {
  degrees,
  earlyText,
  gapStepText,
  OUT_OF_TURN_NEXT,
  OUT_OF_TURN_WORDS,
  questionText,
  roundWireText,
  STEP_TO_DO,
  turnLimitsText,
} from '../report/words/index.ts';
import { called } from '../sequence/plan.ts';
import { w } from '../words/catalogue.ts';
import { gapRequest } from './gap-keys.ts';
import { KEY, letterOf } from './key-table.ts';
import { draftFor, panelSentence } from './panels/index.ts';
import type { Draft } from './panels/panel.ts';
import { printable } from './printable.ts';
import { capital, LOW_BATTERY_PERCENT } from './words.ts';

export type NextTask =
  | { readonly kind: 'answer'; readonly question: Question; readonly cylinder: number }
  | { readonly kind: 'gap' | 'pull'; readonly cylinder: number }
  /** What the panel of the phase asks. */
  | { readonly kind: 'panel' | 'sign' | 'closed' | 'choose' }
  /** Its gap was not proven before it was fitted. */
  | { readonly kind: 'take-out'; readonly cylinder: number };

const name = (state: JobState, cylinder: number): string => called(state.order.engine, cylinder);
const named = (state: JobState, cylinder: number): string => capital(name(state, cylinder));

const cylinderOf = (state: JobState, number: number | null): CylinderState | undefined =>
  state.cylinders.find(({ cylinder }) => cylinder === number);

/** True when every cylinder is over, all that the routine wants is said, and no question is open. */
export const allProven = (state: JobState): boolean => openItems(state).length === 0;

/** The task at hand; a plug is measured before it is fitted. */
export function nextTask(state: JobState): NextTask {
  if (state.closed !== null) return { kind: 'closed' };
  const question = state.questions[0];
  if (question !== undefined) return { kind: 'answer', question, cylinder: question.cylinder };
  const phase = phaseOf(state);
  if (phase === 'sign') return { kind: 'sign' };
  if (phase !== 'gap' && phase !== 'torque') return { kind: 'panel' };
  const { gapTarget, torqueTarget } = state;
  // Until the first pull the plugs lie on the bench, where they are measured one after the other.
  const pulled = state.cylinders.some(({ pulls }) => pulls.length > 0);
  if (gapTarget !== null && !pulled) return { kind: 'gap', cylinder: gapTarget };
  const measured = isOver(cylinderOf(state, torqueTarget)?.gap ?? 'todo');
  if (torqueTarget !== null && (measured || gapTarget === null))
    return { kind: 'pull', cylinder: torqueTarget };
  if (gapTarget !== null) return { kind: 'gap', cylinder: gapTarget };
  const late = state.cylinders.find((c) => !isOver(c.gap) && isFitted(c));
  return late === undefined ? { kind: 'choose' } : { kind: 'take-out', cylinder: late.cylinder };
}

/** The tools that measure a quantity, told by what they said of themselves or by the instrument of that name. */
const toolsFor = (state: JobState, quantity: Quantity): readonly ToolState[] =>
  Object.values(state.tools).filter(
    ({ tool, description }) =>
      (description?.quantity ?? state.instruments.find(({ id }) => id === tool)?.quantity) === quantity,
  );

function missingTool(state: JobState, quantity: Quantity): string | null {
  const tools = toolsFor(state, quantity);
  const linked = tools.filter(({ link }) => link === 'linked');
  const isWrench = quantity === 'torque';
  if (linked.length > 0 && linked.every(({ stopped }) => stopped === true))
    return isWrench
      ? w`The wrench does not send what its profile says. Nothing of it counts: take another wrench.`
      : w`The gauge does not send what its profile says. Nothing of it counts: take another gauge.`;
  if (tools.length === 0 || linked.length > 0) return null;
  const lost = tools.find(({ link }) => link === 'lost');
  if (lost === undefined)
    return isWrench ? w`Switch on the wrench. Waiting for it.` : w`Switch on the gauge. Waiting for it.`;
  const percent = lost.description?.batteryPercent;
  if (percent !== undefined && percent <= LOW_BATTERY_PERCENT)
    return isWrench
      ? w`The wrench is lost. Its battery was at ${percent} %: charge or change it. All readings are kept.`
      : w`The gauge is lost. Its battery was at ${percent} %: charge or change it. All readings are kept.`;
  return isWrench
    ? w`The wrench is lost. Switch it on and keep it near. All readings are kept.`
    : w`The gauge is lost. Switch it on and keep it near. All readings are kept.`;
}

function gapSentence(state: JobState, cylinder: number): string {
  const request = gapRequest(state, cylinder);
  if (request !== null) return request;
  const last = cylinderOf(state, cylinder);
  const judgement = last?.gap === 'again' ? last.gaps.at(-1)?.judgement : undefined;
  if (judgement === undefined) {
    const first = state.cylinders.every(({ gaps }) => gaps.length === 0);
    return (
      w`Measure the gap of the plug for ${name(state, cylinder)}.` + (first ? ` ${roundWireText()}` : '')
    );
  }
  if (judgement.result === 'OK') return w`Measure the gap of the new plug for ${name(state, cylinder)}.`;
  const step = state.plugs[cylinder]?.step ?? null;
  const next = step === null ? null : gapStepText(step);
  const then = next ?? w`set it and measure again`;
  if (judgement.result !== 'NotOK' || judgement.side === 'inside')
    return w`Gap not proven for ${name(state, cylinder)}: ${then}.`;
  return judgement.side === 'low'
    ? w`Gap too small for ${name(state, cylinder)}: ${then}.`
    : w`Gap too large for ${name(state, cylinder)}: ${then}.`;
}

function pullSentence(state: JobState, cylinder: number): string {
  if (stageOf(state, cylinder) === 'loosen')
    return w`${named(state, cylinder)}: the first torque is OK. Loosen the plug, then tighten it to the final torque.`;
  const byAngle = byAngleSentence(state, cylinder);
  if (byAngle !== null) return byAngle;
  const target = cylinderOf(state, cylinder);
  const last = target?.torque === 'again' ? target.pulls.at(-1) : undefined;
  if (last !== undefined && state.refitting !== cylinder && last.kind !== 'loosening')
    return w`${named(state, cylinder)} is not proven: pull once more until the wrench clicks.`;
  const own = hasOwnParts(state.order.plug)
    ? ` (${printable(partsFor(state.order.plug, cylinder).join(), 40)})`
    : '';
  return last?.answer === 'replace'
    ? w`${named(state, cylinder)}: fit the new plug${own} by hand, then pull until the wrench clicks.`
    : w`${named(state, cylinder)}: fit the plug${own} by hand, then pull until the wrench clicks.`;
}

/** Where the order names an angle in place of a torque. */
function byAngleSentence(state: JobState, cylinder: number): string | null {
  const { turn } = state.basis;
  if (turn?.alone !== true) return null;
  const linked = toolsFor(state, 'torque').find(({ link }) => link === 'linked');
  const limits = turnLimitsText(turn);
  if (turn.lowerDeg >= turn.upperDeg || (linked !== undefined && linked.description?.angle === undefined))
    return w`${named(state, cylinder)}: turn the plug by hand by ${limits} from contact. No wrench proves it here: press c, then e to record it.`;
  const last = cylinderOf(state, cylinder)?.pulls.at(-1);
  const goesOn = cylinderOf(state, cylinder)?.torque === 'again' && last?.turn?.side === 'low';
  return goesOn && state.refitting !== cylinder
    ? w`${named(state, cylinder)} is at ${degrees(last?.turn?.value ?? 0)}: turn it on to ${limits}.`
    : w`${named(state, cylinder)}: fit the plug by hand to contact, then turn it ${limits}.`;
}

function questionSentence(state: JobState, question: Question): string {
  const { cylinder } = question;
  const text = questionText(state, question);
  // Only this one does not name its plug.
  return question.kind === 'unsure' ? w`Cylinder ${cylinder}: ${text}` : text;
}

/** What came before its turn, and what comes first; null for nothing. */
export function earlySentence(state: JobState): string | null {
  const { tooEarly, questions } = state;
  // A question goes first, but for a gap that waits for its answer.
  const waits = tooEarly?.what === 'gap' && tooEarly.because === 'pulled-early';
  if (tooEarly === null || (questions.length > 0 && !waits)) return null;
  switch (tooEarly.what) {
    case 'gap':
      return [
        w`Gap ${gapText(tooEarly.gapMm)} is given to no plug: ${OUT_OF_TURN_WORDS[tooEarly.because]}.`,
        OUT_OF_TURN_NEXT[tooEarly.because],
        ...(heldGapStep(state) === null ? [] : [w`Or press k: a named person keeps it, not proven.`]),
      ].join(' ');
    case 'loosening':
      return w`A plug was loosened ${earlyText('before-removal')}. ${capital(STEP_TO_DO['before-removal'])} now.`;
    case 'pull':
      return w`Out of order: cylinder ${tooEarly.cylinder} was pulled ${tooEarly.steps.map(earlyText).join(', ')}.`;
  }
}

/** The next step in one sentence; for a question its text, without the keys. `draft`: what is marked on the panel. */
export function nextSentence(state: JobState, draft: Draft | null = draftFor(null, state)): string {
  const early = earlySentence(state);
  const next = stepSentence(state, draft);
  return early === null ? next : `${early} ${next}`;
}

function stepSentence(state: JobState, draft: Draft | null): string {
  const task = nextTask(state);
  switch (task.kind) {
    case 'closed':
      return state.closed?.complete === true
        ? w`The job is closed and complete. Press q to leave.`
        : w`The job is closed, but not complete. Press q to leave.`;
    case 'answer':
      return questionSentence(state, task.question);
    case 'panel':
      return draft === null ? '' : panelSentence(draft, state);
    case 'sign':
      if (isProvenThroughout(state))
        return state.gapWindow === null
          ? w`All cylinders proven by torque. Press ${letterOf(KEY.sign)} to sign and finish.`
          : w`All cylinders proven. Press ${letterOf(KEY.sign)} to sign and finish.`;
      if (standsOutOfOrder(state).length > 0)
        return w`All is done, but OUT OF ORDER: the record says so. Press ${letterOf(KEY.sign)} to sign and finish.`;
      if (state.cylinders.every(({ torque }) => torque === 'done'))
        return w`All cylinders are done. Press ${letterOf(KEY.sign)} to sign and finish.`;
      return isByAngle(state.basis)
        ? w`All cylinders are done, but not all are proven by turn. Press ${letterOf(KEY.sign)} to sign and finish.`
        : w`All cylinders are done, but not all are proven by torque. Press ${letterOf(KEY.sign)} to sign and finish.`;
    case 'take-out':
      return w`${named(state, task.cylinder)}: its gap was not proven before it was fitted. Take the plug out (c) and measure it.`;
    case 'choose':
      return w`Choose the next cylinder with the left and right keys.`;
    case 'gap':
      return (
        (gapCheckOf(state.order.specification) === 'gauge' ? missingTool(state, 'length') : null) ??
        gapSentence(state, task.cylinder)
      );
    case 'pull':
      return missingTool(state, 'torque') ?? pullSentence(state, task.cylinder);
  }
}
