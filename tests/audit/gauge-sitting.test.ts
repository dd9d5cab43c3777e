import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { believableOf, isBelievable } from '../../src/audit/gauge-doubt.ts';
import {
  drawnExercise,
  due,
  measuredTrials,
  newExercise,
  planFrom,
  turnsOf,
} from '../../src/audit/gauge-exercise.ts';
import { openStudyOf } from '../../src/audit/gauge-log.ts';
import {
  type Kept,
  lastSeen,
  type Sitting,
  type SittingInput,
  sat,
  sittingWith,
} from '../../src/audit/gauge-sitting.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { orThrow } from '../../src/result.ts';
import { logged, startedStudy } from './study-entries.ts';

const plan = orThrow(planFrom({ appraisers: ['Ann', 'Ben'], parts: ['1', '2', '3'], trials: 2 }));
const TURNS = [
  [2, 0, 1],
  [0, 1, 2],
  [1, 2, 0],
  [0, 2, 1],
];
const started = orThrow(drawnExercise(plan, TURNS));
const reads = (value: number): SittingInput => ({ kind: 'value', value, source: 'linked' });
const PAUSE: SittingInput = { kind: 'pause' };
const BACK: SittingInput = { kind: 'back' };
const TAKE: SittingInput = { kind: 'take' };

function sitting(...inputs: readonly SittingInput[]): { at: Sitting; kept: readonly Kept[] } {
  let at = sittingWith(started, believableOf({ quantity: 'length', unit: 'mm' }), 'gauge');
  const kept: Kept[] = [];
  for (const input of inputs) {
    const after = sat(at, input);
    at = after.sitting;
    kept.push(...after.kept);
  }
  return { at, kept };
}

const entriesOf = (kept: readonly Kept[]) =>
  logged([startedStudy(TURNS), ...kept.map((one): StationEvent => ({ ...one, study: 'GS-1' }))]);

const anything: fc.Arbitrary<SittingInput> = fc.oneof(
  fc.double({ min: 0.1, max: 4, noNaN: true }).map(reads),
  fc.constantFrom<SittingInput>(PAUSE, BACK, TAKE, { kind: 'refused', words: 'no' }),
  fc.boolean().map((pulling): SittingInput => ({ kind: 'live', nowNm: 3, pulling })),
);

describe('a sitting of a gauge study', () => {
  it('takes a reading for the part that is due, and keeps who sent it', () => {
    const { at, kept } = sitting(reads(0.7), { kind: 'value', value: 0.8, source: 'typed' });
    expect(measuredTrials(at.exercise)).toEqual([
      [1, 0, 1],
      [0, 0, 0],
    ]);
    expect(kept).toEqual([
      { type: 'gauge-study-read', turn: 1, value: 0.7, source: 'linked' },
      { type: 'gauge-study-read', turn: 2, value: 0.8, source: 'typed' },
    ]);
    expect(due(at.exercise)).toMatchObject({ appraiser: 'Ann', part: '2' });
  });

  it('takes the last reading back, so that its part is due again, and says so where there is none', () => {
    const { at, kept } = sitting(reads(0.7), BACK);
    expect(due(at.exercise)).toMatchObject({ part: '3', step: 1 });
    expect(kept.at(-1)).toEqual({ type: 'gauge-study-taken-back', turn: 1 });
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

  it('goes on from what the log kept as it stood, whatever happened, every reading among it', () => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 60 }), (inputs) => {
        const { at, kept } = sitting(...inputs);
        const logged = orThrow(openStudyOf(entriesOf(kept), 'GS-1'));
        expect(logged.exercise).toEqual(at.exercise);
        expect(logged.sources).toHaveLength(at.exercise.readings.length);
      }),
    );
  });

  it('knows a tool that was lost from one that was never there', () => {
    const description = {
      quantity: 'length',
      unit: 'm',
      exponent: -7,
      samplingFunction: 'unspecified',
      link: { kind: 'bluetooth-le', authenticated: false },
    } as const;
    const linked: SittingInput = { kind: 'link', link: { state: 'linked', description } };
    const lost: SittingInput = { kind: 'link', link: { state: 'lost', reason: 'tool-switching-off' } };
    const seen: SittingInput = { kind: 'link', link: { state: 'seen', name: 'x' } };
    expect(sitting(seen).at.tool.link).toBe('seeking');
    expect(sitting(linked).at.tool).toMatchObject({ link: 'linked', description });
    expect(sitting(linked, lost, seen).at.tool).toMatchObject({
      link: 'lost',
      end: { reason: 'tool-switching-off' },
    });
    expect(sitting(linked, lost, linked).at.tool.link).toBe('linked');
  });

  it('drops a notice when the next pull begins', () => {
    const refused: SittingInput = { kind: 'refused', words: 'once more' };
    const live = (pulling: boolean): SittingInput => ({ kind: 'live', nowNm: 1, pulling });
    expect(sitting(refused, live(false)).at.notice).toEqual({ words: 'once more' });
    expect(sitting(refused, live(true)).at.notice).toBeNull();
  });
});

describe('a reading that is far from what is believed', () => {
  const SLIP = reads(99);
  const read = (turn: number, value: number) => ({ type: 'gauge-study-read', turn, value, source: 'linked' });
  const backOf = (turn: number) => ({ type: 'gauge-study-taken-back', turn });

  it('does not count until somebody takes it as it is', () => {
    const asked = sitting(reads(0.7), SLIP);
    expect(asked.at.asked).toMatchObject({ value: 99, source: 'linked', lower: 0.2, upper: 3, unit: 'mm' });
    expect(due(asked.at.exercise)).toMatchObject({ step: 2 });
    expect(asked.kept).toEqual([read(1, 0.7)]);
    const took = sitting(reads(0.7), SLIP, TAKE);
    expect(took.at).toMatchObject({ asked: null, last: 'taken', exercise: { readings: [0.7, 99] } });
    expect(took.kept).toEqual([read(1, 0.7), read(2, 99)]);
  });

  it.each([
    ['the next reading', reads(0.71), [0.71]],
    ['taking back', BACK, []],
    ['a pause', PAUSE, []],
  ])('is set aside by %s, and stays in the log as one that was taken back', (_, input, readings) => {
    const { at, kept } = sitting(SLIP, input);
    expect(at).toMatchObject({ asked: null, exercise: { readings } });
    expect(kept.slice(0, 2)).toEqual([read(1, 99), backOf(1)]);
    expect(orThrow(openStudyOf(entriesOf(kept), 'GS-1')).takenBack).toBe(1);
  });

  it('is asked about anew where the next one is no better', () => {
    const { at, kept } = sitting(SLIP, reads(0.075), TAKE);
    expect(at.exercise.readings).toEqual([0.075]);
    expect(kept).toEqual([read(1, 99), backOf(1), read(1, 0.075)]);
  });

  it('is one beyond every gap that a plug is made with, or a torque far from what the pulls come to', () => {
    const gap = believableOf({ quantity: 'length', unit: 'mm' });
    for (const [mm, believed] of [
      [0.19, false],
      [0.2, true],
      [0.75, true],
      [3, true],
      [3.01, false],
      [-0.7, false],
    ] as const)
      expect(isBelievable(mm, gap), `${mm} mm`).toBe(believed);
    const torque = believableOf({ quantity: 'torque', unit: 'N.m', aboutNm: 25 });
    for (const [nm, believed] of [
      [12.4, false],
      [12.5, true],
      [50, true],
      [250, false],
    ] as const)
      expect(isBelievable(nm, torque), `${nm} N.m`).toBe(believed);
  });

  it('is no figure at all where the log would not take it', () => {
    for (const value of [1e7, -1e7, Number.NaN, Number.POSITIVE_INFINITY]) {
      const { at, kept } = sitting(reads(value), TAKE);
      expect(at).toMatchObject({ asked: null, notice: { words: 'This is not a figure.' } });
      expect(kept).toEqual([]);
    }
  });

  it('has nothing to take where nothing is asked', () => {
    expect(sitting(TAKE, reads(0.7), TAKE)).toMatchObject({ at: { exercise: { readings: [0.7] } } });
  });
});

describe('the order that was drawn', () => {
  it('comes back as it was', () => {
    const drawn = newExercise(plan, () => [1, 0, 2]);
    expect(orThrow(drawnExercise(plan, turnsOf(drawn)))).toEqual(drawn);
    expect(turnsOf(started)).toEqual(TURNS);
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
