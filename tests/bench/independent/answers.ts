/** What an honest person says who knows what he did, within what the program offers. */
import type { Command } from '../../../src/job/command.ts';
import type { Answer } from '../../../src/job/event.ts';
import type { JobState, Question } from '../../../src/job/state.ts';
import type { Seen } from './play.ts';

const WHY = 'as it was';

/** Null where the program offers nothing that is true. */
export function answerTo(question: Question, { truth }: Seen, state: JobState): Command | null {
  const { pull, cylinder } = question;
  const say = (...wanted: readonly Answer[]): Command | null => {
    const answer = wanted.find((one) => question.answers.includes(one));
    return answer === undefined ? null : { do: 'answer', pull, answer };
  };
  if (truth === null || truth.plug === null) return say('handling', 'unfinished');
  const on: Command = { do: 'give-pull', pull, cylinder: truth.plug, why: WHY };
  if (truth.was === 'loosened') return truth.plug === cylinder ? say('refit', 'handling') : say('handling');
  switch (question.kind) {
    case 'over-window':
      return truth.plug === cylinder ? { do: 'accept', pull, by: 'Master', reason: WHY } : on;
    case 'cut':
    case 'end-of-scale':
      return say('refit');
    default:
      break;
  }
  if (truth.was === 'again' || truth.was === 'in place of the last')
    return truth.plug === state.lastTight ? (say('rehit') ?? on) : on;
  if (truth.plug !== cylinder) return on;
  const under = truth.ended === 'arc' || truth.was === 'stage';
  return (under ? say('unfinished') : say('fresh')) ?? on;
}
