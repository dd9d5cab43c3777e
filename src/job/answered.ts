import type { Answer } from './event.ts';
import type { CylinderState, JobState, TorqueAttempt } from './state.ts';

/**
 * The state after a person answered the question that a pull raised. `fresh`, `rehit` and `handling` only note the
 * answer: a placement of the same pull follows and says what became of it.
 */
export function answered(state: JobState, pull: number, answer: Answer): JobState {
  const question = state.questions.find((open) => open.pull === pull);
  if (question === undefined) throw new Error(`no question is open about pull ${pull}`);
  const noted = (list: readonly TorqueAttempt[]) =>
    list.map((attempt) => (attempt.pull.pull === pull ? { ...attempt, answer } : attempt));
  const settled: JobState = {
    ...state,
    questions: state.questions.filter((open) => open.pull !== pull),
    cylinders: state.cylinders.map((c) => ({ ...c, pulls: noted(c.pulls) })),
  };
  if (answer !== 'refit' && answer !== 'replace')
    return { ...settled, cylinders: settled.cylinders.map(reopened) };
  return {
    ...settled,
    refitting: question.cylinder,
    cylinders: settled.cylinders.map((c) =>
      c.cylinder === question.cylinder
        ? { ...c, torque: 'again', gap: answer === 'replace' ? 'again' : c.gap }
        : c,
    ),
  };

  /** What the cylinder was before the question; the placement that follows may change it again. */
  function reopened(c: CylinderState): CylinderState {
    if (question === undefined || c.cylinder !== question.cylinder) return c;
    if (settled.questions.some((open) => open.cylinder === c.cylinder)) return c;
    return { ...c, torque: lastStep(c.pulls.filter((attempt) => attempt.pull.pull !== pull)) };
  }
}

/** The state that the pulls themselves left a cylinder in. */
function lastStep(pulls: readonly TorqueAttempt[]): CylinderState['torque'] {
  const last = pulls.findLast(
    (attempt) => attempt.kind === 'loosening' || (attempt.judgement !== null && attempt.kind !== 'rehit'),
  );
  if (last === undefined) return 'todo';
  if (last.answer === 'refit' || last.answer === 'replace') return 'again';
  return last.judgement?.result === 'OK' ? 'done' : 'again';
}
