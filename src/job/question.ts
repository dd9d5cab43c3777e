import { called } from '../sequence/plan.ts';
import type { Answer } from './event.ts';
import type { Engine } from './order.ts';
import type { Question, TorqueAttempt } from './state.ts';

/** What has to be asked about a pull that was given to a cylinder; null for nothing. */
export function questionFor(attempt: TorqueAttempt, cylinder: number, engine: Engine): Question | null {
  const name = called(engine, cylinder);
  const { pull, judgement } = attempt;
  if (attempt.kind === 'unsure') return { pull: pull.pull, cylinder, ...unsure(attempt, name) };
  if (judgement?.side !== 'high' || attempt.answer !== null) return null;
  return {
    pull: pull.pull,
    cylinder,
    kind: 'over-window',
    text:
      judgement.result === 'NotOK'
        ? `${capital(name)} went above the window. Back the plug out and look at its threads.`
        : `${capital(name)} went too near the upper limit to be proven. Back the plug out and look at its threads.`,
    answers: ['refit', 'replace'],
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

type Asked = Pick<Question, 'kind' | 'text' | 'answers'>;

const AGAIN: readonly Answer[] = ['refit', 'replace'];

function unsure({ ask, because }: TorqueAttempt, name: string): Asked {
  switch (ask) {
    case 'loosened':
      return {
        kind: 'loosened',
        text: `A plug was loosened (${because}). Was it ${name}?`,
        answers: [...AGAIN, 'handling'],
      };
    case 'cut':
      return {
        kind: 'cut',
        text: `The readings broke off in the middle of a pull on ${name}. The torque that it reached is unknown.`,
        answers: [...AGAIN, 'handling'],
      };
    case 'end-of-scale':
      return {
        kind: 'end-of-scale',
        text: `STOP: ${name}: ${because}. The plug may have had far more. Back it out and look at its threads.`,
        answers: AGAIN,
      };
    case 'already-tight':
      return {
        kind: 'already-tight',
        text: `STOP: ${name} is due, but this plug was tight already (${because}). Was it another one, or was a cylinder left out?`,
        answers: ['rehit', 'handling', ...AGAIN],
      };
    case 'other-plug':
      return {
        kind: 'other-plug',
        text: `STOP: ${name} had stopped short, but this looks like another plug (${because}). Was it ${name}?`,
        answers: ['fresh', 'unfinished', 'handling', ...AGAIN],
      };
    case 'no-click':
      return {
        kind: 'no-click',
        text: `No click was seen on ${name} (${because}). Did the wrench click?`,
        answers: ['fresh', 'unfinished', ...AGAIN],
      };
    case 'loose':
      return {
        kind: 'loose',
        text: `STOP: a plug still turned, but every cylinder is done (${because}). Was it ${name}?`,
        answers: ['fresh', 'rehit', 'handling', ...AGAIN],
      };
    default:
      return {
        kind: 'unsure',
        text: `What was this pull? (${because}.)`,
        answers: ['fresh', 'rehit', 'handling'],
      };
  }
}
