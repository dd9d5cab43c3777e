import { isWithheld } from '../personal.ts';
import { gapCheckOf } from '../plug/gap.ts';
import { hasOwnParts, partsFor } from '../plug/parts.ts';
import { phrases, w } from '../words/catalogue.ts';
import { isByAngle } from './click.ts';
import type { Command } from './command.ts';
import { firstMissing, isFitted, strictnessOf } from './early.ts';
import type { Answer } from './event.ts';
import { heldGapStep } from './held-gap.ts';
import type { Step } from './order-of-work.ts';
import { DONE, itemsOf, itemText, NOT_DONE } from './routine.ts';
import { attemptOf, leftOut } from './situation.ts';
import { stageOf } from './stage.ts';
import { isOver, type JobState } from './state.ts';
import { notTakenBack } from './statements.ts';
import { stillFitted } from './torque-step.ts';
import { isTrialDue } from './trial.ts';

/** Why a command cannot be carried out now, in one sentence; null when it can. */
export function refused(state: JobState, command: Command, pulling: boolean): string | null {
  if (command.do === 'void') return notVoidable(state);
  if (state.closed !== null) return w`The job is closed.`;
  const cylinder = 'cylinder' in command ? command.cylinder : null;
  if (cylinder !== null && !state.cylinders.some((c) => c.cylinder === cylinder))
    return w`This engine has no cylinder ${cylinder}.`;
  switch (command.do) {
    case 'close':
      return pulling ? w`A pull is under way.` : null;
    case 'at-work':
      return command.person === state.technician && !isWithheld(command.person)
        ? w`${command.person} is at work already.`
        : null;
    case 'hand-over':
      return command.to === state.technician && !isWithheld(command.to)
        ? w`${command.to} works on this job already.`
        : null;
    case 'choose-cylinder':
      return command.quantity === 'torque' && pulling
        ? w`A pull is under way. It belongs to the cylinder that was due.`
        : null;
    case 'answer':
      return wrongAnswer(state, command.pull, command.answer);
    case 'give-pull':
      return attemptOf(state, command.pull) === undefined ? w`There is no pull ${command.pull}.` : null;
    case 'left-out':
      return notLeftOut(state, command);
    case 'gap-inspected':
      return gapCheckOf(state.order.specification) === 'visual-only'
        ? gapTooLate(state, command.cylinder)
        : w`This job does not check the gap by eye.`;
    case 'keep-gap':
      return notKeepable(state, command.cylinder);
    case 'gap-wire':
      return gapCheckOf(state.order.specification) === 'wire'
        ? gapTooLate(state, command.cylinder)
        : w`This job does not check the gap by wire.`;
    case 'scrap-plug':
      return pulling ? w`A pull is under way.` : null;
    case 'start-again':
      if (pulling) return w`A pull is under way.`;
      return state.questions.length > 0 ? w`Answer the open question first.` : null;
    case 'confirm-windows':
      return state.windowsConfirmed ? w`The windows are already confirmed.` : null;
    case 'skip-trial':
      return isTrialDue(state) ? null : w`No trial click is due.`;
    case 'attest':
      return notAttestable(state, command);
    case 'read-old-plugs':
      if (state.routine?.oldPlugs !== true) return w`This job does not record old plugs.`;
      return first(state, ['before-removal']) ?? strangers(state, command.cylinders);
    case 'check-new-plugs':
      return notCheckable(state, command);
    case 'take-back':
      return notTakenBack(state, command);
    case 'fit-by-angle':
      if (pulling) return w`A pull is under way.`;
      return state.cylinders.some((c) => c.cylinder === command.cylinder && c.torque === 'done')
        ? provenAlready(state, command.cylinder)
        : null;
    case 'accept':
      return notAcceptable(state, command.pull);
  }
}

/** What has to come first, as a sentence; null for nothing. */
function first(state: JobState, steps: readonly Step[]): string | null {
  const missing = firstMissing(state, steps);
  return missing === null ? null : w`Too early. First ${STEP[missing]}.`;
}

const STEP: Readonly<Record<Step, string>> = phrases({
  windows: 'confirm the windows',
  'before-removal': 'confirm the list before removal',
  'old-plugs': 'read the old plugs',
  'new-plugs': 'check the new plugs',
  gap: 'measure the gaps',
  fitting: 'confirm the list before fitting',
  afterwards: 'confirm the list for afterwards',
});

const provenAlready = ({ basis }: JobState, cylinder: number): string =>
  isByAngle(basis)
    ? w`Cylinder ${cylinder} is proven by its turn.`
    : w`Cylinder ${cylinder} is proven by torque.`;

/** A gap is looked at before its plug goes in, and behind what comes before that. */
function gapTooLate(state: JobState, cylinder: number): string | null {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  if (c !== undefined && isFitted(c))
    return w`The plug of cylinder ${cylinder} is in the engine. Take it out and start it again.`;
  return first(state, ['windows', 'before-removal', 'old-plugs', 'new-plugs']);
}

function notKeepable(state: JobState, cylinder: number): string | null {
  if (heldGapStep(state) === null) return w`No gap that came too early can be kept now.`;
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  if (c !== undefined && isFitted(c))
    return w`The plug of cylinder ${cylinder} is in the engine. Take it out and start it again.`;
  return c !== undefined && isOver(c.gap) ? w`The gap for cylinder ${cylinder} is done already.` : null;
}

function notAcceptable(state: JobState, pull: number): string | null {
  const question = state.questions.find((open) => open.pull === pull);
  if (question?.kind !== 'over-window' && question?.kind !== 'early')
    return w`No question about a pull over the window, or too early, is open for pull ${pull}.`;
  const c = state.cylinders.find(({ cylinder }) => cylinder === question.cylinder);
  if (c === undefined || !stillFitted(c, pull))
    return w`This plug was taken out since. It can no longer be left as it was.`;
  const early = c.pulls.find((attempt) => attempt.pull.pull === pull);
  if (question.kind === 'early' && early?.early?.includes('gap') === true)
    return w`The gap of this plug is not proven. Take the plug out and measure it.`;
  if (question.kind === 'early' && early?.judgement?.result !== 'OK')
    return w`This torque is not OK. Take the plug out and do it again.`;
  return stageOf(state, question.cylinder) === 'final'
    ? null
    : w`Only the final torque can be left as it is.`;
}

function strangers(state: JobState, cylinders: readonly number[]): string | null {
  const stranger = cylinders.find((wanted) => !state.cylinders.some(({ cylinder }) => cylinder === wanted));
  return stranger === undefined ? null : w`This engine has no cylinder ${stranger}.`;
}

/** Every item of the list has its word, and none that the list does not know. */
function notAttestable(state: JobState, { phase, steps }: Command & { do: 'attest' }): string | null {
  const { routine } = state;
  const items = routine === null ? [] : itemsOf(routine, phase);
  if (items.length === 0) return w`This job has no such list.`;
  const open = state.cylinders.some(({ torque }) => !isOver(torque));
  if (phase === 'afterwards' && open && strictnessOf(state, 'afterwards') === 'binding')
    return w`This list comes last. First tighten every plug.`;
  const missing = items.find(({ id }) => !steps.some(({ item }) => item === id));
  if (missing !== undefined) return w`Answer this item too: "${itemText(missing)}".`;
  for (const { item, as, why } of steps) {
    const listed = items.find(({ id }) => id === item);
    if (listed === undefined) return w`"${item}" is not on this list.`;
    const answers = [...(listed.choices?.map((choice) => choice.id) ?? [DONE]), NOT_DONE];
    if (!answers.includes(as)) return w`The answers to "${itemText(listed)}" are: ${answers.join(', ')}.`;
    if (as === NOT_DONE && (why ?? '').trim() === '')
      return w`Give the reason why this is not done: "${itemText(listed)}".`;
  }
  return steps.length > items.length ? w`An item is answered twice.` : null;
}

function notCheckable(
  state: JobState,
  { cylinders, part, differs }: Command & { do: 'check-new-plugs' },
): string | null {
  if (state.routine?.newPlugs !== true) return w`This job does not check new plugs.`;
  const { plug } = state.order;
  // A wrong part is no check that went well; that it differs may be said, and holds the job open.
  const wrong = cylinders.find((cylinder) => !partsFor(plug, cylinder).includes(part));
  if (differs.length === 0 && wrong !== undefined) {
    const allowed = partsFor(plug, wrong).join(w` or `);
    return hasOwnParts(plug)
      ? w`Cylinder ${wrong} takes ${allowed}, not ${part}: this engine has two different plugs.`
      : w`The specification allows ${allowed} in this engine, not ${part}.`;
  }
  return strangers(state, cylinders);
}

/** Why a job cannot be declared void; null when it can. */
function notVoidable(state: JobState): string | null {
  return state.voided === null ? null : w`${state.voided.by} declared this job void already.`;
}

function wrongAnswer(state: JobState, pull: number, answer: Answer): string | null {
  const question = state.questions.find((open) => open.pull === pull);
  if (question === undefined) return w`No question is open about pull ${pull}.`;
  return question.answers.includes(answer) ? null : w`"${answer}" does not answer this question.`;
}

function notLeftOut(state: JobState, command: Command & { do: 'left-out' }): string | null {
  const { pull, cylinder, on } = command;
  if (!state.questions.some((open) => open.pull === pull)) return w`No question is open about pull ${pull}.`;
  if (!state.cylinders.some((c) => c.cylinder === on)) return w`This engine has no cylinder ${on}.`;
  return leftOut(state, command).length > 0
    ? null
    : w`No pull of cylinder ${cylinder} can belong to the next plug.`;
}
