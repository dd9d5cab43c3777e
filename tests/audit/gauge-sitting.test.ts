import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  drawnExercise,
  due,
  measuredTrials,
  newExercise,
  planFrom,
  turnsOf,
} from '../../src/audit/gauge-exercise.ts';
import {
  continued,
  type Kept,
  lastSeen,
  type Sitting,
  type SittingInput,
  sat,
  sittingWith,
} from '../../src/audit/gauge-sitting.ts';
import { orThrow } from '../../src/result.ts';

const plan = orThrow(planFrom({ appraisers: ['Ann', 'Ben'], parts: ['1', '2', '3'], trials: 2 }));
const TURNS = [
  [2, 0, 1],
  [0, 1, 2],
  [1, 2, 0],
  [0, 2, 1],
];
const begun = orThrow(drawnExercise(plan, TURNS));
const reads = (value: number): SittingInput => ({ kind: 'value', value, by: 'tool' });
const PAUSE: SittingInput = { kind: 'pause' };
const BACK: SittingInput = { kind: 'back' };

function sitting(...inputs: readonly SittingInput[]): { at: Sitting; kept: readonly Kept[] } {
  let at = sittingWith(begun, 'gauge');
  const kept: Kept[] = [];
  for (const input of inputs) {
    const after = sat(at, input);
    at = after.sitting;
    if (after.kept !== null) kept.push(after.kept);
  }
  return { at, kept };
}

const anything: fc.Arbitrary<SittingInput> = fc.oneof(
  fc.double({ min: 0.1, max: 2, noNaN: true }).map(reads),
  fc.constantFrom<SittingInput>(PAUSE, BACK, { kind: 'refused', words: 'no' }),
  fc.boolean().map((pulling): SittingInput => ({ kind: 'live', nowNm: 3, pulling })),
);

describe('a sitting of a gauge study', () => {
  it('takes a reading for the part that is due, and keeps who sent it', () => {
    const { at, kept } = sitting(reads(0.7), { kind: 'value', value: 0.8, by: 'hand' });
    expect(measuredTrials(at.exercise)).toEqual([
      [1, 0, 1],
      [0, 0, 0],
    ]);
    expect(kept).toEqual([
      { took: 0.7, by: 'tool' },
      { took: 0.8, by: 'hand' },
    ]);
    expect(due(at.exercise)).toMatchObject({ appraiser: 'Ann', part: '2' });
  });

  it('takes the last reading back, so that its part is due again, and says so where there is none', () => {
    const { at, kept } = sitting(reads(0.7), BACK);
    expect(due(at.exercise)).toMatchObject({ part: '3', step: 1 });
    expect(kept.at(-1)).toEqual({ back: true });
    const none = sitting(BACK);
    expect(none.at.notice?.words).toContain('no reading to take back');
    expect(none.kept).toEqual([]);
  });

  it('takes nothing while it is paused, and nothing more once all is measured', () => {
    const paused = sitting(PAUSE, reads(0.7));
    expect(paused.kept).toEqual([]);
    expect(paused.at.notice?.words).toContain('was not taken');
    expect(sitting(PAUSE, PAUSE, reads(0.7)).kept).toHaveLength(1);
    const whole = sitting(...Array.from({ length: 13 }, () => reads(0.7)));
    expect(due(whole.at.exercise)).toBeNull();
    expect(whole.kept).toHaveLength(12);
    expect(whole.at.notice?.words).toContain('was not taken');
    expect(due(sat(whole.at, BACK).sitting.exercise)).toMatchObject({ step: 12 });
  });

  it('is blind: no figure is in sight once its part may come again', () => {
    expect(lastSeen(sitting(reads(0.71)).at)).toBe(0.71);
    // The turn of the next appraiser begins.
    expect(lastSeen(sitting(reads(0.71), reads(0.72), reads(0.73)).at)).toBeNull();
    expect(lastSeen(sitting(reads(0.71), BACK).at)).toBeNull();
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 40 }), (inputs) => {
        const { at } = sitting(...inputs);
        const next = at.exercise.order[at.exercise.readings.length];
        const last = at.exercise.order[at.exercise.readings.length - 1];
        if (lastSeen(at) !== null && next !== undefined) expect(next.part).not.toBe(last?.part);
      }),
    );
  });

  it('goes on from what was kept as it stood, whatever happened', () => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 60 }), (inputs) => {
        const { at, kept } = sitting(...inputs);
        expect(continued(begun, kept)).toEqual(at.exercise);
      }),
    );
  });

  it('knows a tool that was lost from one that was never there', () => {
    const description = {
      quantity: 'length',
      unit: 'm',
      exponent: -7,
      samplingFunction: 'unspecified',
      link: { kind: 'direct', authenticated: false },
    } as const;
    const linked: SittingInput = { kind: 'link', link: { state: 'linked', description } };
    const lost: SittingInput = { kind: 'link', link: { state: 'lost', reason: 'battery' } };
    const seen: SittingInput = { kind: 'link', link: { state: 'seen', name: 'x' } };
    expect(sitting(seen).at.tool.link).toBe('seeking');
    expect(sitting(linked).at.tool).toMatchObject({ link: 'linked', description });
    expect(sitting(linked, lost, seen).at.tool).toMatchObject({ link: 'lost', reason: 'battery' });
    expect(sitting(linked, lost, linked).at.tool.link).toBe('linked');
  });

  it('drops a notice when the next pull begins', () => {
    const refused: SittingInput = { kind: 'refused', words: 'once more' };
    const live = (pulling: boolean): SittingInput => ({ kind: 'live', nowNm: 1, pulling });
    expect(sitting(refused, live(false)).at.notice).toEqual({ words: 'once more' });
    expect(sitting(refused, live(true)).at.notice).toBeNull();
  });
});

describe('the order that was drawn', () => {
  it('comes back as it was', () => {
    const drawn = newExercise(plan, () => [1, 0, 2]);
    expect(orThrow(drawnExercise(plan, turnsOf(drawn)))).toEqual(drawn);
    expect(turnsOf(begun)).toEqual(TURNS);
  });

  it.each([
    ['a part twice', [[0, 0, 1], ...TURNS.slice(1)]],
    ['a part that is not there', [[0, 1, 3], ...TURNS.slice(1)]],
    ['a turn too few', TURNS.slice(1)],
    ['a turn too many', [...TURNS, [0, 1, 2]]],
  ])('is refused with %s', (_, turns) => {
    expect(drawnExercise(plan, turns)).toMatchObject({ ok: false, error: { code: 'gauge-study-order' } });
  });
});
