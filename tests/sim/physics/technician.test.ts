import { describe, expect, it } from 'vitest';
import { createBench, type PlugSpec } from '../../../sim/physics/bench.ts';
import { Random } from '../../../sim/random.ts';
import { CAREFUL, type Habits, HURRIED } from '../../../sim/technician/habits.ts';
import { technician } from '../../../sim/technician/technician.ts';
import { Program } from './program.ts';
import { CONICAL, GASKET, SEEDS, USED } from './rig.ts';

const ORDER = [1, 3, 4, 2];
const M10: PlugSpec = { ...GASKET, thread: 'M10x1', lowerNm: 10, upperNm: 12 };
const M18: PlugSpec = { ...GASKET, thread: 'M18x1.5', lowerNm: 35, upperNm: 40 };

/** Lets a person do a whole job; `sees` false: the screen never notices a thing. */
function job(plug: PlugSpec, habits: Habits, seed: number, sees = true) {
  const bench = createBench({ seed, cylinders: [1, 2, 3, 4], plug, wrench: { sampleIntervalUs: 50_000 } });
  const program = new Program(bench, plug, ORDER);
  const person = technician(
    {
      habits,
      order: ORDER,
      gapLowerMm: plug.gapLowerMm,
      gapUpperMm: plug.gapUpperMm,
      hurtFromNm: 1.15 * plug.upperNm,
    },
    new Random(seed).fork('technician'),
  );
  const actions: string[] = [];
  let step = person.next(program.screen);
  while (step.done !== true) {
    actions.push(step.value.do);
    if (step.value.do === 'press') program.press(step.value.command);
    else {
      bench.begin(step.value);
      while (bench.next() !== null);
    }
    step = person.next(sees ? program.look() : program.screen);
  }
  const tightened = bench.truth.pulls.filter(({ kind }) => kind !== 'loosening' && kind !== 'handling');
  return { bench, program, actions, leaving: step.value, tightened };
}

const lastPeaks = (tightened: ReturnType<typeof job>['tightened']) =>
  ORDER.map(
    (cylinder) => tightened.filter((pull) => pull.cylinder === cylinder).at(-1)?.peakNm ?? Number.NaN,
  );

describe('a careful technician', () => {
  it.each([
    ['M14 new gasket', GASKET],
    ['M14 used gasket', USED],
    ['M14 conical', CONICAL],
    ['M10', M10],
    ['M18', M18],
  ])('finishes every job on %s with every true torque inside the window and no second click', (_, plug) => {
    for (const seed of SEEDS.slice(0, 25)) {
      const { bench, leaving, tightened, program } = job(plug, CAREFUL, seed);
      expect(leaving).toEqual({ finished: true, why: 'all is done' });
      expect(Math.max(...tightened.map(({ peakNm }) => peakNm))).toBeLessThanOrEqual(plug.upperNm);
      expect(Math.min(...lastPeaks(tightened))).toBeGreaterThanOrEqual(plug.lowerNm);
      expect(tightened.filter(({ kind }) => kind === 'rehit')).toEqual([]);
      expect(program.answers).toEqual([]);
      for (const cylinder of ORDER) {
        const gap = bench.truth.gaps.filter((g) => g.cylinder === cylinder).at(-1);
        expect(gap?.trueMm).toBeGreaterThan(plug.gapLowerMm);
        expect(gap?.trueMm).toBeLessThan(plug.gapUpperMm);
      }
    }
  });

  it('bends or replaces a plug whose gap is out of range, and measures again', () => {
    const jobs = SEEDS.map((seed) => job(CONICAL, CAREFUL, seed));
    expect(jobs.some(({ actions }) => actions.includes('bend-electrode'))).toBe(true);
    for (const { actions } of jobs)
      for (const [i, action] of actions.entries())
        if (action === 'bend-electrode' || action === 'replace') expect(actions[i + 1]).toBe('measure-gap');
  });

  it('does the plug again when the screen notices nothing, and gives up in the end', () => {
    const { actions, leaving } = job({ ...CONICAL }, CAREFUL, 3, false);
    expect(leaving.finished).toBe(false);
    expect(actions.length).toBeLessThan(400);
  });

  it('does the same with the same seed', () => {
    const told = (seed: number) => JSON.stringify(job(GASKET, CAREFUL, seed).bench.truth);
    expect(told(12)).toBe(told(12));
    expect(told(12)).not.toBe(told(13));
  });
});

describe('habits', () => {
  it('skipping leaves exactly one cylinder without a pull, and the last one hit twice', () => {
    for (const seed of SEEDS) {
      const { tightened, leaving } = job(CONICAL, { ...CAREFUL, skips: 1 }, seed);
      const pulled = new Set(tightened.map(({ cylinder }) => cylinder));
      expect(pulled.size).toBe(ORDER.length - 1);
      expect(pulled.has(2)).toBe(true);
      expect(tightened.filter(({ kind }) => kind === 'rehit').map(({ cylinder }) => cylinder)).toContain(2);
      expect(leaving.finished).toBe(false);
    }
  });

  it('clicking twice is a re-hit, and owned up to', () => {
    for (const seed of SEEDS.slice(0, 20)) {
      const { tightened, program } = job(CONICAL, { ...CAREFUL, clicksTwice: 1 }, seed);
      expect(tightened.filter(({ kind }) => kind === 'rehit').length).toBeGreaterThanOrEqual(ORDER.length);
      expect(program.answers.length).toBeGreaterThan(0);
      expect(program.answers.every(({ pull, answer }) => pull.kind === 'rehit' && answer === 'rehit')).toBe(
        true,
      );
    }
  });

  it('stopping short is made good by one continuation to the click', () => {
    for (const seed of SEEDS.slice(0, 20)) {
      const { tightened, leaving } = job(USED, { ...CAREFUL, stopsShort: 1 }, seed);
      expect(leaving.finished).toBe(true);
      expect(tightened.map(({ kind }) => kind)).toEqual(ORDER.flatMap(() => ['tightening', 'continuation']));
      expect(tightened.map(({ releaseNm }) => releaseNm !== null)).toEqual(
        ORDER.flatMap(() => [false, true]),
      );
    }
  });

  it('leaning on ends in plugs taken out and done again, or replaced when hurt', () => {
    const jobs = SEEDS.slice(0, 20).map((seed) => job(CONICAL, { ...CAREFUL, overpulls: 0.5 }, seed));
    const answers = jobs.flatMap(({ program }) => program.answers);
    expect(new Set(answers.map(({ answer }) => answer))).toEqual(new Set(['refit', 'replace']));
    for (const { pull, answer } of answers)
      expect(answer === 'replace').toBe(pull.peakNm >= 1.15 * CONICAL.upperNm);
  });

  it('knocking is called handling', () => {
    const { program, bench } = job(USED, { ...CAREFUL, knocks: 1 }, 2);
    expect(bench.truth.pulls.filter(({ kind }) => kind === 'handling').length).toBe(ORDER.length);
    expect(program.answers.map(({ answer }) => answer)).toEqual(ORDER.map(() => 'handling'));
  });

  it('whatever the habits, every answer is true', () => {
    const habits = { ...HURRIED, clicksTwice: 0.3, overpulls: 0.2, knocks: 0.3, stopsShort: 0.2, skips: 0.3 };
    let told = 0;
    for (const seed of SEEDS) {
      const { program, bench } = job(seed % 2 === 0 ? CONICAL : GASKET, habits, seed);
      for (const { pull, answer } of program.answers) {
        told++;
        const since = bench.truth.pulls.slice(bench.truth.pulls.indexOf(pull));
        if (answer === 'handling') expect(pull.kind).toBe('handling');
        else if (answer === 'rehit') expect(pull.kind).toBe('rehit');
        else if (answer === 'fresh') expect(['tightening', 'continuation']).toContain(pull.kind);
        else
          expect(since.some((later) => later.kind === 'loosening' && later.cylinder === pull.cylinder)).toBe(
            true,
          );
      }
    }
    expect(told).toBeGreaterThan(50);
  });
});
