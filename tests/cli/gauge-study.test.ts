import { PassThrough } from 'node:stream';
import { ReplaySubject, Subject } from 'rxjs';
import { describe, expect, it } from 'vitest';
import type { LinkState, Tool } from '../../drivers/driver.ts';
import { typedTool } from '../../drivers/typed/tool.ts';
import { Gauge } from '../../sim/physics/gauge.ts';
import { Random } from '../../sim/random.ts';
import { type Exercise, newExercise, planFrom, studyOf } from '../../src/audit/gauge-exercise.ts';
import { exerciseWith } from '../../src/cli/study-run.ts';
import { type StudyValue, studyValues } from '../../src/cli/study-values.ts';
import { ProblemError } from '../../src/problem.ts';
import type { Reading, ToolDescription } from '../../src/reading.ts';
import { studyLines } from '../../src/report/gauge-study.ts';
import { err, ok, orThrow } from '../../src/result.ts';
import { clickPull, drawn } from '../pull/shapes.ts';

const plan = orThrow(
  planFrom({ appraisers: ['Ann', 'Ben', 'Cem'], parts: ['1', '2', '3', '4', '5'], trials: 3 }),
);
const inOrder = (n: number) => Array.from({ length: n }, (_, i) => i);

/** Somebody who sits down with the simulated gauge, and does to each line of the exercise what `hands` does. */
function sitting(hands: (line: string, type: (text: string) => void) => void, given = plan) {
  const typed$ = new Subject<string>();
  const input = new PassThrough();
  const said: string[] = [];
  const tool = typedTool({
    id: 'gauge',
    quantity: 'length',
    unit: 'mm',
    clock: { nowUs: () => 0 },
    lines$: typed$,
  });
  const outcome = exerciseWith(newExercise(given, inOrder), {
    value$: studyValues(tool, 1),
    typed$,
    unit: 'mm',
    connect: () => tool.connect(),
    input,
    say: (line) => {
      said.push(line);
      hands(line, (text) => void input.write(`${text}\n`));
    },
  });
  return { outcome, said, input };
}

const TRUE_MM: Readonly<Record<string, number>> = { '1': 0.6, '2': 0.68, '3': 0.75, '4': 0.83, '5': 0.9 };
const partOf = (line: string) => /measure part (\S+)/.exec(line)?.[1];

/** Presses the button of the simulated gauge on each part that is asked for. */
function measuring() {
  const gauge = new Gauge({ biasMm: 0, repeatabilityMm: 0.004, resolutionMm: 0.001 }, new Random(3));
  return (line: string, type: (text: string) => void) => {
    const part = partOf(line);
    if (part !== undefined) type(String(gauge.measure(TRUE_MM[part] ?? 0) / 10_000));
  };
}

const studied = (exercise: Exercise | null) => {
  if (exercise === null) throw new Error('somebody left');
  return orThrow(studyOf(exercise));
};

describe('a gauge study with the simulated gauge', () => {
  it('asks for every part, takes what the gauge gives, and finds the gauge as it is', async () => {
    const { outcome, said } = sitting(measuring());
    const study = studied(await outcome);
    expect(said.filter((line) => partOf(line) !== undefined)).toHaveLength(45);
    expect(said).toContain('[1 of 45] trial 1: Ann, measure part 1');
    for (const row of study.readings)
      for (const [p, cell] of row.entries())
        for (const mm of cell) expect(Math.abs(mm - (TRUE_MM[String(p + 1)] ?? 0))).toBeLessThan(0.02);
    const lines = studyLines({ ...study, study: 'GS-1', tool: 'gauge', serial: null, unit: 'mm' });
    const ev = lines
      .filter((line) => line.includes('(EV)'))
      .map((line) => Number(/EV\)\s+(\S+)/.exec(line)?.[1]));
    expect(ev).toHaveLength(2);
    // The simulated gauge repeats with 0.004 mm.
    for (const sigma of ev) expect(sigma > 0.002 && sigma < 0.007).toBe(true);
  });

  it('takes a reading back, and says so of what is no figure', async () => {
    const short = orThrow(planFrom({ appraisers: ['Ann', 'Ben'], parts: ['1', '2'], trials: 2 }));
    const answers = [
      '0.5',
      'back',
      'about a millimetre',
      '0.6',
      '0.7',
      '0.6',
      '0.7',
      '0.6',
      '0.7',
      '0.6',
      '0.7',
    ];
    const { outcome, said, input } = sitting(() => {}, short);
    for (const answer of answers) input.write(`${answer}\n`);
    const study = studied(await outcome);
    expect(study.readings.flat(2)).toEqual([0.6, 0.6, 0.7, 0.7, 0.6, 0.6, 0.7, 0.7]);
    expect(said).toContain('That is no figure that can be read.');
  });

  it('is left without a result by quitting and by closing the input', async () => {
    for (const leave of [
      (input: PassThrough) => void input.write('quit\n'),
      (input: PassThrough) => void input.end(),
    ]) {
      const { outcome, input } = sitting(() => {});
      input.write('0.7\n');
      leave(input);
      expect(await outcome).toBeNull();
    }
  });

  it('ends with the problem of a tool that cannot be joined', async () => {
    const problem = { code: 'no-adapter', message: 'there is no adapter', next: 'Plug one in.' };
    const outcome = exerciseWith(newExercise(plan, inOrder), {
      value$: new Subject(),
      typed$: new Subject(),
      unit: 'mm',
      connect: () => Promise.resolve(err(problem)),
      input: new PassThrough(),
      say: () => {},
    });
    await expect(outcome).rejects.toEqual(new ProblemError(problem));
  });
});

describe('a wrench in a study', () => {
  const link$ = new ReplaySubject<LinkState>(1);
  const readings$ = new Subject<Reading>();
  const description: ToolDescription = {
    quantity: 'torque',
    unit: 'N.m',
    exponent: -2,
    samplingFunction: 'instantaneous',
    link: { kind: 'direct', authenticated: false },
  };
  const wrench: Tool = {
    id: 'wrench',
    driver: 'test',
    quantity: 'torque',
    timing: { stamps: 'device' },
    link$,
    readings$,
    connect: () => Promise.resolve(ok(description)),
    close: () => Promise.resolve(),
  };

  it('gives the peak of each whole pull, and words about the rest', () => {
    const got: StudyValue[] = [];
    const taking = studyValues(wrench, 25).subscribe((one) => got.push(one));
    link$.next({ state: 'linked', description });
    let n = 0;
    const draw = (corners: Parameters<typeof drawn>[0], fromUs: number) => {
      for (const { atUs, nm } of drawn(corners))
        readings$.next({ kind: 'value', n: ++n, atUs: fromUs + atUs, counts: Math.round(100 * nm) });
    };
    const walk = { atMs: 3000, nm: 0 };
    draw([{ atMs: 0, nm: 0 }, walk], 0);
    draw([{ atMs: 0, nm: 0 }, ...clickPull(400, 700, 26, 20, 20)], 3_010_000);
    link$.next({ state: 'lost', reason: 'battery' });
    taking.unsubscribe();
    const values = got.flatMap((one) => (one.kind === 'value' ? [one.value] : []));
    expect(values).toHaveLength(1);
    expect(Math.abs((values[0] ?? 0) - 26)).toBeLessThan(0.3);
    expect(got.at(-1)).toEqual({ kind: 'said', words: 'The tool is lost: battery. Waiting for it.' });
  });
});
