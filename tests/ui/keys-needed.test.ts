/** How many keys an engine takes, counted as a person presses them while hands work at the tools. */
import { afterAll, describe, expect, it } from 'vitest';
import { phaseOf } from '../../src/job/phase.ts';
import { replay } from '../../src/job/replay.ts';
import { USUAL_ROUTINE } from '../../src/job/routine.ts';
import { type InputState, newInputState, pressed } from '../../src/ui/input-state.ts';
import { exampleOrder, handsOn, workshop } from '../job/workshop.ts';

/** What each way took, printed at the end. */
const table: (readonly [string, number])[] = [];
afterAll(() => {
  const lines = table.map(([what, keys]) => `  ${String(keys).padStart(3)}  ${what}`);
  process.stdout.write(`keys on a V8\n${lines.join('\n')}\n`);
});

/** Holds a way to so many keys, and has it in the table. */
function needs(what: string, keys: number, allowed: number): void {
  table.push([what, keys]);
  expect(keys).toBe(allowed);
}

/** A bench with hands and a keyboard; `keys` counts what was pressed in each phase. */
function atTheBench(shop: Shop = workshop(exampleOrder(8), USUAL_ROUTINE)) {
  const counted = new Map<string, number>();
  let input: InputState = newInputState();
  const press = (...keys: readonly string[]) => {
    for (const key of keys) {
      const job = shop.bench.state();
      const phase = phaseOf(job);
      counted.set(phase, (counted.get(phase) ?? 0) + 1);
      const after = pressed(input, { key, shownMs: 3000 }, job, false);
      input = after.input;
      if (after.out !== null && typeof after.out === 'object' && 'do' in after.out)
        shop.give({ kind: 'command', command: after.out });
    }
  };
  const all = () => [...counted.values()].reduce((sum, n) => sum + n, 0);
  return { shop, press, counted, all };
}
type Shop = Pick<
  ReturnType<typeof workshop>,
  'bench' | 'give' | 'gap' | 'pull' | 'events' | 'cylinder' | 'halfPull' | 'loosen' | 'rest'
>;
type Bench = ReturnType<typeof atTheBench>;

const EIGHT = [1, 2, 3, 4, 5, 6, 7, 8];

/** Up to the first pull: windows, list, old plugs, new plugs with a lot, gaps, list with one choice. */
function prepared(): Bench {
  const bench = atTheBench();
  bench.press('enter', 'a', 'a', 'enter', 'L', '7', 'enter');
  for (const _ of EIGHT) bench.shop.gap(0.75);
  bench.press('a', '1', 'enter');
  return bench;
}
const finished = ({ press }: Bench) => press('a', '1', '1', '1', 'enter', 's');

describe('keys on a V8', () => {
  it('are at most 24 where nothing is out of the ordinary, and none during the torque', () => {
    const bench = prepared();
    for (const _ of EIGHT) bench.shop.pull(27.5);
    finished(bench);
    expect(bench.shop.bench.state().closed).toEqual({ complete: true, open: [] });
    expect(bench.counted.get('torque') ?? 0).toBe(0);
    needs('nothing out of the ordinary, all of it', bench.all(), 16);
    expect(bench.all()).toBeLessThanOrEqual(24);
  });

  it('for a torque beyond the window: one', () => {
    const bench = prepared();
    bench.shop.pull(34);
    const before = bench.all();
    bench.press('b');
    needs('a torque over the window, backed out', bench.all() - before, 1);
    for (const _ of EIGHT) bench.shop.pull(27.5);
    finished(bench);
    expect(bench.shop.bench.state().closed?.complete).toBe(true);
  });

  it('for a plug that fell: two', () => {
    const bench = prepared();
    const before = bench.all();
    bench.press('d', 'enter');
    needs('a dropped plug', bench.all() - before, 2);
    expect(bench.shop.bench.state().cylinders[0]).toMatchObject({ gap: 'again' });
    expect(bench.shop.events.at(-1)).toEqual({ type: 'plug-scrapped', cylinder: 1, reason: 'dropped' });
  });

  it('for a gap beyond the window: none, it is set and measured again', () => {
    const bench = atTheBench();
    bench.press('enter', 'a', 'a', 'enter', 'enter');
    const before = bench.all();
    bench.shop.gap(0.85);
    for (const _ of EIGHT) bench.shop.gap(0.75);
    expect(bench.shop.bench.state().cylinders.every(({ gap }) => gap === 'done')).toBe(true);
    needs('a gap out of the window', bench.all() - before, 0);
  });

  it('for a pull on another cylinder than the one that was due: six', () => {
    const bench = prepared();
    bench.shop.pull(27.5);
    const before = bench.all();
    bench.press('c', '1', 'enter', '7', 'enter', '1');
    needs('a pull on another cylinder', bench.all() - before, 6);
    expect(bench.shop.cylinder(7).torque).toBe('done');
    expect(bench.shop.cylinder(1).torque).toBe('todo');
  });

  it('to take back what was said last: three', () => {
    const bench = atTheBench();
    bench.press('enter', 'a', 'a');
    expect(phaseOf(bench.shop.bench.state())).toBe('new-plugs');
    const before = bench.all();
    bench.press('u', 'enter', 'enter');
    needs('what was said last, taken back', bench.all() - before, 3);
    expect(phaseOf(bench.shop.bench.state())).toBe('old-plugs');
    expect(Object.values(bench.shop.bench.state().oldPlugs).every(({ read }) => read === null)).toBe(true);
  });

  it('to go on after the program was killed between two pulls: none on the screen', () => {
    const killed = prepared();
    for (const _ of [1, 2, 3]) killed.shop.pull(27.5);
    const bench = resumed(killed);
    const before = bench.all();
    for (const _ of [4, 5, 6, 7, 8]) bench.shop.pull(27.5);
    needs('gone on with after a kill between two pulls', bench.all() - before, 0);
    finished(bench);
    expect(bench.shop.bench.state().closed).toEqual({ complete: true, open: [] });
  });

  it('to go on after the program was killed in the middle of a pull: one, which says what became of it', () => {
    const killed = prepared();
    killed.shop.pull(27.5);
    killed.shop.rest();
    killed.shop.halfPull(26);
    killed.shop.give({ kind: 'flush' });
    const bench = resumed(killed);
    bench.shop.rest();
    const before = bench.all();
    bench.press('b');
    needs('gone on with after a kill in the middle of a pull', bench.all() - before, 1);
    bench.shop.loosen(12);
    for (const _ of [2, 3, 4, 5, 6, 7, 8]) bench.shop.pull(27.5);
    finished(bench);
    expect(bench.shop.bench.state().closed?.complete).toBe(true);
  });
});

/** The program is started anew on what the log holds. */
function resumed({ shop }: Bench): Bench {
  const back = replay(shop.events);
  if (!back.ok) throw new Error(back.error.message);
  const events = [...shop.events];
  const hands = { ...handsOn(back.value, events), bench: back.value, events };
  hands.give({ kind: 'session', program: 'plugmark test', platform: 'test' });
  hands.join();
  return atTheBench(hands);
}
