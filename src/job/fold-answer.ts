import type { Answer } from './event.ts';
import type { CylinderState, JobState, Question, TorqueAttempt } from './state.ts';

/**
 * The state after a person answered the question that a pull raised; the steps are worked out anew behind it. `fresh`,
 * `rehit`, `handling` and `unfinished` only note the answer: a placement of the same pull follows and says what became
 * of it. A plug that is backed out takes with it whatever was asked about it and whatever was pulled since.
 */
export function answered(state: JobState, pull: number, answer: Answer): JobState {
  const question = state.questions.find((open) => open.pull === pull);
  if (question === undefined) throw new Error(`no question is open about pull ${pull}`);
  const backedOut = answer === 'refit' || answer === 'replace';
  const answers = (open: Question) => open === question || (backedOut && open.cylinder === question.cylinder);
  const pulls = new Set(state.questions.filter(answers).map((open) => open.pull));
  const concerns = (cylinder: number, number: number) =>
    pulls.has(number) || (backedOut && cylinder === question.cylinder && number > pull);
  const noted = ({ cylinder, pulls: list }: CylinderState): readonly TorqueAttempt[] =>
    list.map((attempt) => (concerns(cylinder, attempt.pull.pull) ? { ...attempt, answer } : attempt));
  const settled: JobState = {
    ...state,
    questions: state.questions.filter((open) => !answers(open)),
    cylinders: state.cylinders.map((c) => ({ ...c, pulls: noted(c) })),
  };
  if (!backedOut) return settled;
  return {
    ...settled,
    refitting: question.cylinder,
    cylinders: settled.cylinders.map((c) =>
      c.cylinder === question.cylinder && answer === 'replace' ? { ...c, gap: 'again' } : c,
    ),
  };
}
