/** What is asked about a pull. */
import { heldBy } from '../../job/early.ts';
import type { Step } from '../../job/order-of-work.ts';
import type { JobState, Question, TorqueAttempt } from '../../job/state.ts';
import { called } from '../../sequence/plan.ts';
import { w } from '../../words/catalogue.ts';
import { placementText } from './placement.ts';
import { stepsToDo } from './step.ts';

interface Asked {
  /** How the plug is called. */
  readonly name: string;
  /** Why the pull is in question. */
  readonly why: string;
  readonly judgement: TorqueAttempt['judgement'];
  /** What comes before it and had not been done. */
  readonly held: readonly Step[];
}

export const QUESTION_WORDS: { readonly [K in Question['kind']]: (asked: Asked) => string } = {
  'over-window': ({ name, judgement }) =>
    judgement?.result === 'NotOK'
      ? w`${capital(name)} went above the window. Back the plug out and look at its threads.`
      : w`${capital(name)} went too near the upper limit to be proven. Back the plug out and look at its threads.`,
  loosened: ({ name, why }) => w`A plug was loosened (${why}). Was it ${name}?`,
  cut: ({ name }) =>
    w`The readings broke off in the middle of a pull on ${name}. The torque that it reached is unknown.`,
  'end-of-scale': ({ name, why }) =>
    w`STOP: ${name}: ${why}. The plug may have had far more. Back it out and look at its threads.`,
  'already-tight': ({ name, why }) =>
    w`STOP: ${name} is due, but this plug was tight already (${why}). Was it another one, or was a cylinder left out?`,
  'other-plug': ({ name, why }) =>
    w`STOP: ${name} had stopped short, but this looks like another plug (${why}). Was it ${name}?`,
  'no-click': ({ name, why }) => w`No click was seen on ${name} (${why}). Did the wrench click?`,
  loose: ({ name, why }) =>
    w`STOP: a plug still turned, but every cylinder is done (${why}). Was it ${name}?`,
  'by-plan': ({ name, why }) => w`Was that ${name}? (${why}.)`,
  early: ({ name, held }) =>
    w`STOP: ${name} was pulled too early: it proves nothing. Back the plug out. Before it goes in again, ${stepsToDo(held)}.`,
  unsure: ({ why }) => w`What was this pull? (${why}.)`,
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function questionText(state: JobState, { pull, cylinder, kind }: Question): string {
  const asked = state.cylinders.find((one) => one.cylinder === cylinder);
  const attempt = asked?.pulls.find((one) => one.pull.pull === pull);
  if (attempt === undefined) throw new Error(`pull ${pull} is asked about but was never placed`);
  const { judgement } = attempt;
  return QUESTION_WORDS[kind]({
    name: called(state.order.engine, cylinder),
    why: placementText(attempt),
    judgement,
    held: heldBy(state, attempt),
  });
}
