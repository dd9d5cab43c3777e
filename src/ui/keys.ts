/** What a key press means at the bench; pure, so that the keyboard can be read as a table. */
import type { Command } from '../job/command.ts';
import { isOver, type JobState } from '../job/state.ts';
import type { Quantity } from '../reading.ts';
import { plugCommand } from './gap-keys.ts';
import { type KeyPress, printed } from './key-press.ts';
import { KEY } from './key-table.ts';
import { allProven } from './next-step.ts';
import { answerWords } from './words.ts';

/** Enter signs no earlier after the last step: it may still be meant for that. Assumption. */
const SIGN_READ_MS = 1500;

/**
 * To the next cylinder that is still open, one step along the service order and no further: no jump by digit, which a
 * glove can brush and which says nothing on an engine with ten cylinders or more, and no way round from last to first.
 */
function choose(state: JobState, quantity: Quantity, step: 1 | -1): Command | null {
  const [from, which] =
    quantity === 'torque' ? ([state.torqueTarget, 'torque'] as const) : ([state.gapTarget, 'gap'] as const);
  const at = state.cylinders.findIndex(({ cylinder }) => cylinder === from);
  if (at < 0) return null;
  const ahead = step === 1 ? state.cylinders.slice(at + 1) : state.cylinders.slice(0, at).reverse();
  const to = ahead.find((one) => !isOver(one[which]));
  return to === undefined ? null : { do: 'choose-cylinder', quantity, cylinder: to.cylinder };
}

function answer(state: JobState, key: string): Command | null {
  const question = state.questions[0];
  const given = question?.answers.find((option) => answerWords(question.kind, option).key === key);
  // What is thrown away is asked about first (src/ui/input-state.ts).
  if (question === undefined || given === undefined || given === 'replace') return null;
  return { do: 'answer', pull: question.pull, answer: given };
}

/**
 * The command of a key while plugs are measured and pulled, or null when it means nothing now. While a pull is under way
 * the cylinder cannot be changed, because the pull would go to the wrong one, and the job not be closed.
 */
export function benchCommand(press: KeyPress, state: JobState, pulling: boolean): Command | null {
  if (press.ctrl === true || state.closed !== null) return null;
  const key = printed(press)?.toLowerCase() ?? press.key;
  if (state.questions.length > 0) return answer(state, key);
  if (pulling) return null;
  if (key === KEY.sign || (key === 'enter' && (press.shownMs ?? 0) >= SIGN_READ_MS))
    return allProven(state) ? { do: 'close' } : null;
  switch (key) {
    case 'left':
      return choose(state, 'torque', -1);
    case 'right':
      return choose(state, 'torque', 1);
    case 'up':
      return choose(state, 'length', -1);
    case 'down':
      return choose(state, 'length', 1);
    default:
      return plugCommand(key, state, state.gapTarget ?? state.torqueTarget);
  }
}
