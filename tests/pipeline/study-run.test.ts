import { describe, expect, it } from 'vitest';
import { believableOf } from '../../src/audit/gauge-doubt.ts';
import { newExercise, planFrom } from '../../src/audit/gauge-exercise.ts';
import { sittingWith } from '../../src/audit/gauge-sitting.ts';
import { studyViewOf } from '../../src/cli/study/study-view.ts';
import { createStudyRun } from '../../src/pipeline/run-study.ts';
import { ProblemError } from '../../src/problem.ts';
import { err, ok, orThrow } from '../../src/result.ts';

const plan = orThrow(planFrom({ appraisers: ['Ann', 'Ben'], parts: ['1', '2'], trials: 2 }));
const inOrder = (n: number) => Array.from({ length: n }, (_, i) => i);

const ABOUT = {
  study: 'GS-1',
  station: 'Example garage',
  instrument: {
    id: 'gauge',
    quantity: 'length',
    resolution: 0.001,
    basis: 'data sheet',
    permissibleDeviation: { kind: 'absolute', amount: 0.01 },
  },
  types: false,
  on: '2026-11-25',
} as const;

describe('a study at work', () => {
  const set = (keep: () => void = () => {}) =>
    createStudyRun({
      sitting: sittingWith(
        newExercise(plan, inOrder),
        believableOf({ quantity: 'length', unit: 'mm' }),
        'gauge',
      ),
      keep,
      record: () => {
        throw new Error('not now');
      },
      typed: (line) => (line === '0.7' ? ok(0.7) : err({ code: 'not-understood', message: 'x', next: 'x' })),
    });

  it('shows a reading only once it is on disk', async () => {
    const shown: number[] = [];
    const run = set(() => {
      throw new ProblemError({ code: 'log-disk', message: 'full', next: 'make room' });
    });
    const failed = new Promise((resolve) =>
      run.state$.subscribe({
        next: ({ sitting }) => shown.push(sitting.exercise.readings.length),
        error: resolve,
      }),
    );
    run.hear({ kind: 'value', value: 0.7, source: 'linked' });
    expect(await failed).toBeInstanceOf(ProblemError);
    expect(shown).toEqual([0]);
  });

  it('keeps nothing that comes once somebody left', () => {
    let kept = 0;
    const run = set(() => kept++);
    run.hear({ kind: 'value', value: 0.7, source: 'linked' });
    run.leave();
    run.hear({ kind: 'value', value: 0.7, source: 'linked' });
    expect(kept).toBe(1);
  });

  it('takes what somebody typed for a tool that does not type, and says so of what is no figure', () => {
    const run = set();
    run.command({ typed: '0.7' });
    run.command({ typed: 'seven' });
    expect(run.state().sitting).toMatchObject({
      exercise: { readings: [0.7] },
      notice: { words: 'This is not a figure.' },
    });
  });

  it('records nothing that is not whole', () => {
    const run = set();
    const seen: unknown[] = [];
    run.state$.subscribe({ error: (error) => seen.push(error) });
    run.command('record');
    expect(seen).toEqual([]);
    for (let i = 0; i < 8; i++) run.command({ typed: '0.7' });
    run.command('record');
    expect(seen).toEqual([new Error('not now')]);
  });

  it('gives the screen what is asked about as the same thing until it is answered, and takes it then', () => {
    const run = set();
    const asked = () => studyViewOf(run.state(), ABOUT).asked;
    run.hear({ kind: 'value', value: 99, source: 'linked' });
    const first = asked();
    expect(first).toMatchObject({ value: 99, lower: 0.2, upper: 3 });
    run.hear({ kind: 'refused', words: 'too soon' });
    expect(asked()).toBe(first);
    run.command('take');
    expect(asked()).toBeNull();
    expect(run.state().sitting.exercise.readings).toEqual([99]);
  });

  it('gives the screen the reading before last to nobody, and the last one only within its turn', () => {
    const run = set();
    const told = (value: number) => {
      run.hear({ kind: 'value', value, source: 'linked' });
      return JSON.stringify(studyViewOf(run.state(), ABOUT));
    };
    expect(told(0.4711)).toContain('0.4711');
    const second = told(0.4712);
    expect(second).not.toMatch(/0\.471/);
    expect(second).toContain('"handOver":true');
    expect(told(0.4713)).not.toMatch(/0\.471[12]/);
  });
});
