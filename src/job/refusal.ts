import { gapCheckOf } from '../plug/gap.ts';
import type { Command } from './command.ts';
import type { Answer } from './event.ts';
import { attemptOf, leftOut } from './situation.ts';
import type { JobState } from './state.ts';

/** Why a command cannot be carried out now, in one sentence; null when it can. */
export function refused(state: JobState, command: Command, pulling: boolean): string | null {
  if (command.do === 'void') return notVoidable(state);
  if (state.closed !== null) return 'The job is closed.';
  const cylinder = 'cylinder' in command ? command.cylinder : null;
  if (cylinder !== null && !state.cylinders.some((c) => c.cylinder === cylinder))
    return `This engine has no cylinder ${cylinder}.`;
  switch (command.do) {
    case 'close':
      return pulling ? 'A pull is under way.' : null;
    case 'hand-over':
      return command.to === state.technician ? `${command.to} works on it already.` : null;
    case 'choose-cylinder':
      return command.quantity === 'torque' && pulling
        ? 'A pull is under way and belongs to the cylinder that was due.'
        : null;
    case 'answer':
      return wrongAnswer(state, command.pull, command.answer);
    case 'give-pull':
      return attemptOf(state, command.pull) === undefined ? `There is no pull ${command.pull}.` : null;
    case 'left-out':
      return notLeftOut(state, command);
    case 'gap-seen':
      return gapCheckOf(state.order.specification) === 'visual-only'
        ? null
        : 'The gap of this job is not judged by eye.';
    case 'gap-wire':
      return gapCheckOf(state.order.specification) === 'wire'
        ? null
        : 'The gap of this job is not checked by wire.';
    case 'scrap-plug':
      return pulling ? 'A pull is under way.' : null;
    case 'start-again':
      if (pulling) return 'A pull is under way.';
      return state.questions.length > 0 ? 'A question is open: answer it first.' : null;
  }
}

/** Why a job cannot be declared void; null when it can. */
function notVoidable(state: JobState): string | null {
  return state.voided === null ? null : `The job was declared void by ${state.voided.by} already.`;
}

function wrongAnswer(state: JobState, pull: number, answer: Answer): string | null {
  const question = state.questions.find((open) => open.pull === pull);
  if (question === undefined) return `No question is open about pull ${pull}.`;
  return question.answers.includes(answer) ? null : `"${answer}" does not answer this question.`;
}

function notLeftOut(state: JobState, command: Command & { do: 'left-out' }): string | null {
  const { pull, cylinder, on } = command;
  if (!state.questions.some((open) => open.pull === pull)) return `No question is open about pull ${pull}.`;
  if (!state.cylinders.some((c) => c.cylinder === on)) return `This engine has no cylinder ${on}.`;
  return leftOut(state, command).length > 0
    ? null
    : `Cylinder ${cylinder} has no pulls that could be on the plug behind it.`;
}
