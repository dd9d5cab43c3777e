import { describe, expect, it } from 'vitest';
import { phaseOf } from '../../src/job/phase.ts';
import { replay } from '../../src/job/replay.ts';
import type { Routine } from '../../src/job/routine.ts';
import { adviceOnLast } from '../../src/ui/advice-words.ts';
import { newInputState, pressed } from '../../src/ui/input-state.ts';
import { lineFor } from '../../src/ui/lines.ts';
import { nextSentence } from '../../src/ui/next-step.ts';
import { clickPull, turningPull } from '../pull/shapes.ts';
import { exampleOrder, INSTRUMENTS, workshop } from './workshop.ts';

const ROUTINE: Routine = {
  form: 'plugmark/routine/1',
  confirmWindows: false,
  beforeRemoval: [],
  oldPlugs: false,
  newPlugs: false,
  fitting: [],
  trialClick: true,
  afterwards: [],
};
const CLICKING = INSTRUMENTS.map((one) =>
  one.quantity === 'torque' ? { ...one, type: 'setting' as const } : one,
);

/** A shop that wants the click tried, its gaps measured; `drop` is the share by which the torque falls at a click. */
function bay(drop: number) {
  const shop = workshop(exampleOrder(4), ROUTINE, CLICKING);
  for (let i = 0; i < 4; i++) shop.gap(0.75);
  const low = (nm: number) => nm * (1 - drop);
  return {
    ...shop,
    inVise: (nm = 27) => {
      shop.rest();
      shop.draw([{ atMs: 0, nm: 0 }, ...clickPull(400, 500, nm, low(nm), low(nm))]);
      shop.rest();
    },
    onPlug: (nm = 27) => {
      shop.rest();
      shop.draw([{ atMs: 0, nm: 0 }, ...turningPull(400, 700, nm, low(nm), low(nm))]);
      shop.rest();
    },
  };
}

describe('a trial click before the first plug', () => {
  it('is asked for before the first pull, and a key passes over it', () => {
    const { bench, give } = bay(0.3);
    expect(phaseOf(bench.state())).toBe('trial');
    expect(nextSentence(bench.state())).toMatch(/^Trial click: pull once until the wrench clicks, in a vise/);
    const { out } = pressed(newInputState(), { key: 'x' }, bench.state(), false);
    expect(out).toEqual({ do: 'skip-trial' });
    give({ kind: 'command', command: { do: 'skip-trial' } });
    expect(phaseOf(bench.state())).toBe('torque');
  });

  it('is given to no cylinder, and what it showed is said', () => {
    const { bench, events, inVise } = bay(0.3);
    inVise();
    const { cylinders, strays } = bench.state();
    expect(cylinders.map(({ pulls }) => pulls.length)).toEqual([0, 0, 0, 0]);
    expect(strays).toMatchObject([{ kind: 'handling', because: 'trial-click' }]);
    expect(adviceOnLast(bench.state())).toMatch(
      /^Trial click: the torque fell by 30 %, the pull went \d+ % beyond it\.$/,
    );
    const placed = events.findLast(({ type }) => type === 'pull-placed');
    if (placed === undefined) throw new Error('nothing was placed');
    expect(lineFor(placed, null, bench.state(), '12:00:00')).toContain(
      'trial click: the torque fell by 30 %',
    );
    expect(phaseOf(bench.state())).toBe('torque');
  });

  it('tells a weak click, and falls like it count as clicks from then on', () => {
    const { bench, inVise, onPlug, cylinder } = bay(0.07);
    inVise();
    expect(adviceOnLast(bench.state())).toMatch(/^Trial click: weak, the torque fell by 7 % only/);
    onPlug();
    expect(bench.state().questions).toEqual([]);
    expect(cylinder(1).torque).toBe('done');
  });

  it('without it a weak click is asked about once, and the answer is as good', () => {
    const { bench, give, onPlug, answer, cylinder } = bay(0.07);
    give({ kind: 'command', command: { do: 'skip-trial' } });
    onPlug();
    expect(bench.state().questions).toMatchObject([{ kind: 'no-click', cylinder: 1 }]);
    answer('fresh');
    onPlug(27.2);
    expect(bench.state().questions).toEqual([]);
    expect(cylinder(2).torque).toBe('done');
  });

  it('asks where a plug was pulled in its place', () => {
    const { bench, onPlug, answer, cylinder } = bay(0.3);
    onPlug();
    expect(bench.state().questions).toMatchObject([{ cylinder: 1, answers: ['fresh', 'rehit', 'handling'] }]);
    answer('fresh');
    expect(cylinder(1).torque).toBe('done');
    expect(phaseOf(bench.state())).toBe('torque');
  });

  it('stands in the record as it was, and replay agrees', () => {
    const { bench, events, inVise, onPlug } = bay(0.07);
    inVise();
    onPlug();
    const again = replay(events);
    expect(again.ok && again.value.state()).toEqual(bench.state());
  });
});
