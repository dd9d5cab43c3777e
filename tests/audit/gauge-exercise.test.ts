import { describe, expect, it } from 'vitest';
import {
  due,
  type Exercise,
  measured,
  newExercise,
  planFrom,
  studyOf,
  takenBack,
} from '../../src/audit/gauge-exercise.ts';
import { orThrow } from '../../src/result.ts';

const plan = orThrow(planFrom({ appraisers: ['Ann', 'Ben'], parts: ['1', '2', '3'], trials: 2 }));
/** Forwards, then backwards, and so on. */
function turning() {
  let backwards = true;
  return (n: number) => {
    backwards = !backwards;
    const list = Array.from({ length: n }, (_, i) => i);
    return backwards ? list.reverse() : list;
  };
}

/** Reads what only this appraiser, part and trial give. */
function worked(started: Exercise): Exercise {
  let exercise = started;
  for (let next = due(exercise); next !== null; next = due(exercise))
    exercise = measured(exercise, Number(next.part) + 10 * next.trial + (next.appraiser === 'Ben' ? 100 : 0));
  return exercise;
}

describe('a gauge study as an exercise', () => {
  it('asks every appraiser for every part as often, in the order that was drawn', () => {
    const started = newExercise(plan, turning());
    expect(due(started)).toEqual({ appraiser: 'Ann', part: '1', trial: 1, step: 1, steps: 12 });
    expect(due(measured(measured(measured(started, 1), 1), 1))).toMatchObject({
      appraiser: 'Ben',
      part: '3',
      step: 4,
    });
  });

  it('puts each reading where it belongs, whatever the order', () => {
    expect(orThrow(studyOf(worked(newExercise(plan, turning()))))).toEqual({
      appraisers: ['Ann', 'Ben'],
      parts: ['1', '2', '3'],
      readings: [
        [
          [11, 21],
          [12, 22],
          [13, 23],
        ],
        [
          [111, 121],
          [112, 122],
          [113, 123],
        ],
      ],
    });
  });

  it('takes a reading back, and is no study before its end', () => {
    const started = measured(newExercise(plan, turning()), 5);
    expect(due(takenBack(started))).toMatchObject({ step: 1 });
    expect(due(takenBack(takenBack(started)))).toMatchObject({ step: 1 });
    expect(studyOf(started)).toMatchObject({ ok: false, error: { code: 'gauge-study-open' } });
    const whole = worked(started);
    expect(measured(whole, 9)).toBe(whole);
  });

  it.each([
    [{ appraisers: ['Ann'], parts: ['1', '2'], trials: 2 }, 'at least two appraisers'],
    [{ appraisers: ['Ann', 'Ann '], parts: ['1', '2'], trials: 2 }, 'each appraiser once'],
    [{ appraisers: ['Ann', ''], parts: ['1', '2'], trials: 2 }, 'expected a name'],
    [{ appraisers: ['Ann', 'Ben'], parts: ['1'], trials: 2 }, 'at least two parts'],
    [{ appraisers: ['Ann', 'Ben'], parts: ['1', '2'], trials: 1 }, 'at least two trials'],
  ])('is refused where nothing could come of it: %o', (given, words) => {
    const refused = planFrom(given);
    expect(refused).toMatchObject({ ok: false, error: { code: 'gauge-study-plan' } });
    expect(!refused.ok && refused.error.message).toContain(words);
  });
});
