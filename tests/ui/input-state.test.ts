import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemsOf } from '../../src/job/routine.ts';
import type { JobState } from '../../src/job/state.ts';
import { textOf } from '../../src/ui/editor.ts';
import { type InputState, newInputState, type Out, pasted, pressed } from '../../src/ui/input-state.ts';
import { columnsOf } from '../../src/ui/printable.ts';
import { workshop } from '../job/workshop.ts';
import { linesOf } from './drawn.tsx';
import { jobWith, pullOf, questionOn } from './fixtures.ts';
import { ROUTINE_JOBS, VIEWS } from './views.ts';

interface Told {
  readonly input: InputState;
  readonly outs: readonly Out[];
}

const NAMED = new Set(['enter', 'escape', 'up', 'down', 'left', 'right', 'backspace']);

/** Keys by their names between spaces, all else character by character. */
function type(job: JobState, keys: string, from: InputState = newInputState(), pulling = false): Told {
  const presses = keys
    .split(' ')
    .flatMap((word) => (NAMED.has(word) ? [word] : [...word.replaceAll('_', ' ')]));
  return presses.reduce<Told>(
    ({ input, outs }, key) => {
      const after = pressed(input, { key }, job, pulling);
      return { input: after.input, outs: after.out === null ? outs : [...outs, after.out] };
    },
    { input: from, outs: [] },
  );
}

const asking = VIEWS['notOk']?.job ?? expect.fail('no view');
const worked = jobWith(3, { pullCount: 3, lastTight: 5, lastPull: pullOf(3, 27.4) });

describe('a panel', () => {
  it('of the windows is confirmed by Enter and by nothing else', () => {
    expect(type(ROUTINE_JOBS.windows, 'enter').outs).toEqual([{ do: 'confirm-windows' }]);
    expect(type(ROUTINE_JOBS.windows, 'ynab1').outs).toEqual([]);
  });

  it('of a list is ticked item by item, or all by one key, and never beforehand', () => {
    const steps = ['engine-cold', 'ignition-off', 'boots', 'blown-clean', 'hand-tools'].map((item) => ({
      item,
      as: 'done',
    }));
    const attested = { do: 'attest', phase: 'before-removal', steps };
    expect(type(ROUTINE_JOBS.list, 'enter').outs).toEqual([]);
    expect(type(ROUTINE_JOBS.list, '____ enter').outs).toEqual([]);
    expect(type(ROUTINE_JOBS.list, '_____ enter').outs).toEqual([attested]);
    expect(type(ROUTINE_JOBS.list, 'a').outs).toEqual([{ ...attested, together: true }]);
  });

  it('of a list is not ticked as a whole before it can have been read, and says how fast it was answered', () => {
    const shownAfter = (keys: readonly (readonly [string, number])[]) =>
      keys.reduce<Told>(
        ({ input, outs }, [key, shownMs]) => {
          const next = pressed(input, { key, shownMs }, ROUTINE_JOBS.list, false);
          return { input: next.input, outs: next.out === null ? outs : [...outs, next.out] };
        },
        { input: newInputState(), outs: [] },
      );
    expect(shownAfter([['a', 300]])).toMatchObject({ outs: [], input: { notice: /Read the list first/ } });
    expect(shownAfter([['a', 2500]]).outs[0]).toMatchObject({ do: 'attest', together: true });
    const ticks = (everyMs: number) =>
      shownAfter([...[1, 2, 3, 4, 5].map((n) => [' ', 3000 + n * everyMs] as const), ['enter', 9000]])
        .outs[0];
    expect(ticks(900)).not.toHaveProperty('together');
    expect(ticks(100)).toMatchObject({ together: true });
  });

  it('of a list strikes an item with the reason, by key or typed, and takes that back', () => {
    const [byKey] = type(ROUTINE_JOBS.list, 'down x 1 a').outs;
    expect(byKey).toMatchObject({
      steps: expect.arrayContaining([
        { item: 'ignition-off', as: 'not-done', why: 'does-not-apply-to-this-engine' },
      ]),
    });
    const [typed] = type(ROUTINE_JOBS.list, 'x 4 no_key_here enter a').outs;
    expect(typed).toMatchObject({
      steps: expect.arrayContaining([{ item: 'engine-cold', as: 'not-done', why: 'no key here' }]),
    });
    const [back] = type(ROUTINE_JOBS.list, 'x 1 x a').outs;
    expect(back).toMatchObject({ steps: expect.arrayContaining([{ item: 'engine-cold', as: 'done' }]) });
  });

  it('of a list with choices goes from one open item to the next and is not attested before', () => {
    expect(type(ROUTINE_JOBS.afterwards, 'enter').outs).toEqual([]);
    expect(type(ROUTINE_JOBS.afterwards, '21 enter').outs).toEqual([]);
    expect(type(ROUTINE_JOBS.afterwards, '2_13 enter').outs).toEqual([
      {
        do: 'attest',
        phase: 'afterwards',
        steps: [
          { item: 'boot-compound', as: 'as-allowed' },
          { item: 'boots-seated', as: 'done' },
          { item: 'engine-run', as: 'runs-well' },
          { item: 'old-parts', as: 'scrapped' },
        ],
      },
    ]);
    const arrows = type(ROUTINE_JOBS.afterwards, 'right down _ left down right right enter').outs[0];
    expect(arrows).toMatchObject({
      steps: expect.arrayContaining([
        { item: 'boot-compound', as: 'none' },
        { item: 'engine-run', as: 'not-run' },
        { item: 'old-parts', as: 'given-to-customer' },
      ]),
    });
  });

  it('of the old plugs takes one key for a normal one, one for all the rest', () => {
    const normal = { do: 'read-old-plugs', condition: 'normal', damage: [], thread: 'sound' };
    expect(type(ROUTINE_JOBS.oldPlugs, 'n').outs).toEqual([{ ...normal, cylinders: [7] }]);
    expect(type(ROUTINE_JOBS.oldPlugs, 'a').outs).toEqual([{ ...normal, cylinders: [7, 2, 4, 6, 8] }]);
  });

  it('of the old plugs says what was marked, and keeps marks from being taken for all', () => {
    expect(type(ROUTINE_JOBS.oldPlugs, 'down down x 1 x 2 x 2 t w wet_below enter enter').outs).toEqual([
      {
        do: 'read-old-plugs',
        cylinders: [7],
        condition: 'sooty',
        damage: ['cracked-insulator'],
        thread: 'dirty',
        note: 'wet below',
      },
    ]);
    const all = type(ROUTINE_JOBS.oldPlugs, 'x 1 a');
    expect(all.outs).toEqual([]);
    expect(all.input.notice).toContain('cylinder 7');
  });

  it('of the old plugs goes to another cylinder with left and right', () => {
    expect(type(ROUTINE_JOBS.oldPlugs, 'right').outs).toEqual([
      { do: 'choose-cylinder', quantity: 'old-plug', cylinder: 2 },
    ]);
    expect(type(ROUTINE_JOBS.oldPlugs, 'left').outs).toEqual([
      { do: 'choose-cylinder', quantity: 'old-plug', cylinder: 5 },
    ]);
  });

  it('of the new plugs asks once for the lot, then agrees for all', () => {
    const agreed = {
      do: 'check-new-plugs',
      cylinders: [1, 3, 5, 7, 2, 4, 6, 8],
      part: 'EX-1234',
      differs: [],
    };
    expect(type(ROUTINE_JOBS.newPlugs, 'enter L-7 enter').outs).toEqual([{ ...agreed, lot: 'L-7' }]);
    expect(type(ROUTINE_JOBS.newPlugs, 'enter enter').outs).toEqual([{ ...agreed, lot: null }]);
  });

  it('of the new plugs names what differs, one cylinder at a time where that is wanted', () => {
    expect(type(ROUTINE_JOBS.newPlugs, 'o right down down x enter enter').outs).toEqual([
      { do: 'check-new-plugs', cylinders: [3], part: 'EX-1234', lot: null, differs: ['reach'] },
    ]);
  });

  it('of the new plugs refuses a part that the order does not allow, and says which it does', () => {
    const { input, outs } = type(ROUTINE_JOBS.newPlugs, 'p 2 EX-9 enter enter enter');
    expect(outs).toEqual([]);
    expect(input.notice).toMatch(/EX-1234.*EX-9/);
    const { plug } = ROUTINE_JOBS.newPlugs.order;
    const order = { ...ROUTINE_JOBS.newPlugs.order, plug: { ...plug, alsoParts: ['EX-9'] } };
    expect(type({ ...ROUTINE_JOBS.newPlugs, order }, 'p 2 enter enter').outs[0]).toMatchObject({
      part: 'EX-9',
    });
  });

  it('forgets its marks when the job goes on', () => {
    const marked = type(ROUTINE_JOBS.oldPlugs, 'down x 1').input;
    const next = { ...ROUTINE_JOBS.oldPlugs, oldPlugTarget: 2 };
    expect(type(next, 'enter', marked).outs).toEqual([
      { do: 'read-old-plugs', cylinders: [2], condition: 'normal', damage: [], thread: 'sound' },
    ]);
  });
});

const LIST = ROUTINE_JOBS.list.routine ?? expect.fail('no routine');
const ITEMS = itemsOf(LIST, 'before-removal').length;

describe('a pedal, a presenter, or one row of keys', () => {
  it('ticks a list with Enter, item by item, and then confirms it', () => {
    const { outs } = type(ROUTINE_JOBS.list, 'enter '.repeat(ITEMS));
    expect(outs).toEqual([]);
    expect(type(ROUTINE_JOBS.list, 'enter '.repeat(1 + ITEMS)).outs).toMatchObject([
      { do: 'attest', phase: 'before-removal' },
    ]);
  });

  it('answers a question with the arrows and Enter, and nothing is marked beforehand', () => {
    const blind = type(asking, 'enter');
    expect(blind.outs).toEqual([]);
    expect(blind.input.notice).toContain('arrows');
    expect(type(asking, 'right enter').outs).toEqual([{ do: 'answer', pull: 5, answer: 'refit' }]);
    expect(type(asking, 'left enter').input.form?.kind).toBe('replace');
    expect(type(asking, 'left enter enter').outs).toEqual([{ do: 'answer', pull: 5, answer: 'replace' }]);
  });

  it('signs with Enter only once the end has been on screen for a moment', () => {
    const { job } = VIEWS['proven'] ?? expect.fail('no view');
    const enter = (shownMs: number) => pressed(newInputState(), { key: 'enter', shownMs }, job, false).out;
    expect(enter(300)).toBeNull();
    expect(enter(3000)).toEqual({ do: 'close' });
  });
});

describe('pasted text', () => {
  it('goes where text is typed, its first line alone, as far as it fits', () => {
    const { input } = type(asking, 'k');
    const named = pasted(input, '  A. Foreman\nq\nq', asking).input;
    expect(textOf(named.form?.text ?? expect.fail('no text'))).toBe('A. Foreman');
    const long = pasted(input, 'x'.repeat(1_000_000), asking).input;
    expect(textOf(long.form?.text ?? expect.fail('no text'))).toHaveLength(80);
  });

  it('is never keys: it neither leaves nor answers nor signs', () => {
    for (const job of [asking, jobWith(2), ROUTINE_JOBS.list, ROUTINE_JOBS.oldPlugs]) {
      const after = pasted(newInputState(), 'qabd\r\r1', job);
      expect(after.out).toBeNull();
      expect(after.input.notice).toContain('Pasted');
    }
    expect(pasted(type(worked, 'c').input, '1', worked).input.form?.kind).toBe('exceptions');
  });
});

describe('a proposed figure', () => {
  it('is replaced by the first digit, kept by Enter, and gone over by an arrow', () => {
    const at = (keys: string) => type(worked, `c 2 ${keys}`).input.form?.answers;
    expect(at('enter')).toEqual(['5']);
    expect(at('3 enter')).toEqual(['3']);
    expect(at('right backspace 1 enter')).toEqual(['1']);
  });
});

describe('an exception', () => {
  it('gives a pull to another cylinder', () => {
    expect(type(worked, 'c 1 enter 7 enter 1').outs).toEqual([
      { do: 'give-pull', pull: 5, cylinder: 7, why: 'wrench-was-on-that-plug' },
    ]);
  });

  it('puts a cylinder that was left out before the pulls behind it', () => {
    const shop = workshop();
    for (const nm of [27, 27.2, 27.4]) shop.pull(nm);
    shop.rest();
    shop.again(27.6);
    const [command] = type(shop.bench.state(), 'c 2 2 enter enter 1').outs;
    expect(command).toEqual({
      do: 'left-out',
      pull: 4,
      cylinder: 2,
      on: 4,
      why: 'only-finger-tight',
    });
    if (command !== undefined && command !== 'quit' && 'do' in command)
      shop.give({ kind: 'command', command });
    expect(shop.bench.state()).toMatchObject({ torqueTarget: 2, questions: [] });
  });

  it('takes a plug out to start again, with or without a new one', () => {
    expect(type(worked, 'c 2 enter 2 4 it_fell enter').outs).toEqual([
      { do: 'start-again', cylinder: 5, newPlug: true, why: 'it fell' },
    ]);
    expect(type(worked, 'c 2 3 enter 1 1').outs).toEqual([
      { do: 'start-again', cylinder: 3, newPlug: false, why: 'thread-or-seat-to-look-at' },
    ]);
  });

  it('lets a pull over the window stay by name and reason only', () => {
    expect(type(asking, 'k enter').input.form?.fault).toContain('name');
    expect(type(asking, 'k Åsa_Öst enter 2').outs).toEqual([
      { do: 'accept', pull: 5, by: 'Åsa Öst', reason: 'service-information-allows-it' },
    ]);
    expect(type(asking, 'k Foreman enter 3 enter').outs).toEqual([]);
    expect(type(worked, 'k').outs).toEqual([]);
  });

  it('sends no plug to the scrap by one key, and says what follows', () => {
    const job = jobWith(2);
    const { input, outs } = type(job, 'd');
    expect(outs).toEqual([]);
    const asked = linesOf({ ...(VIEWS['gap'] ?? expect.fail('no view')), job }, { input }).join(' ');
    expect(asked).toMatch(/Discard the plug for cylinder 5\? A new one takes its place/);
    expect(type(job, 'escape', input).outs).toEqual([]);
    expect(type(job, '2', input).outs).toEqual([{ do: 'scrap-plug', cylinder: 5, reason: 'broken-tip' }]);
  });

  it('takes back what was said, the last first, with a reason', () => {
    const shop = workshop();
    shop.gap(0.75);
    shop.gap(0.95);
    expect(type(shop.bench.state(), 'u enter 1').outs).toEqual([
      { do: 'take-back', said: 2, why: 'wrong-key-pressed' },
    ]);
    expect(type(shop.bench.state(), 'u down enter 2').outs).toEqual([
      { do: 'take-back', said: 1, why: 'measured-or-read-again' },
    ]);
    expect(type(jobWith(0), 'u').input.form).toBeNull();
  });

  it('records a plug that no wrench reaches as turned by an angle', () => {
    const job = jobWith(2);
    expect(type(job, 'c 3 enter 1/2_turn enter 1').outs).toEqual([
      { do: 'fit-by-angle', cylinder: 5, turn: '1/2 turn', why: 'no-room-for-the-wrench' },
    ]);
  });

  it('hands the job over', () => {
    expect(type(jobWith(2), 'c 4 Technician_Two enter').outs).toEqual([
      { do: 'hand-over', to: 'Technician Two' },
    ]);
  });

  it('refuses a cylinder or a pull that is not there, in words, and goes on asking', () => {
    const { input, outs } = type(worked, 'c 1 enter 42 enter');
    expect(outs).toEqual([]);
    expect(input.form?.fault).toContain('no cylinder "42"');
    expect(type(worked, 'backspace backspace 7 enter 1', input).outs).toHaveLength(1);
  });

  it('is left by Esc, one step back at a time, and by no other key', () => {
    expect(type(worked, 'c 1 enter').input.form?.answers).toEqual(['5']);
    expect(type(worked, 'c 1 enter escape').input.form?.answers).toEqual([]);
    expect(type(worked, 'c 1 enter escape escape escape').input.form).toBeNull();
    expect(type(worked, 'c 1 qqs?').outs).toEqual([]);
    expect(type(worked, 'c qs').input.form).not.toBeNull();
  });

  it('offers only what can be told now', () => {
    const keys = (job: JobState) => type(job, 'c').input.form !== null;
    expect(keys(jobWith(0))).toBe(true);
    expect(type(jobWith(0), 'c 9').input.form?.kind).toBe('exceptions');
    expect(type(asking, 'c 9').input.form?.kind).toBe('exceptions');
  });
});

describe('at any time', () => {
  const everywhere = [jobWith(2), asking, ...Object.values(ROUTINE_JOBS), VIEWS['closed']?.job ?? jobWith(8)];

  it('q and Ctrl-C leave, ? helps, m turns the bell off and on', () => {
    for (const job of everywhere) {
      expect(type(job, 'q').outs).toEqual(['quit']);
      expect(pressed(newInputState(), { key: 'c', ctrl: true }, job, true).out).toBe('quit');
      expect(type(job, '?').input.help).toBe(true);
      expect(type(job, '??').input.help).toBe(false);
      expect(type(job, 'm').input.quiet).toBe(true);
      expect(type(job, 'mm').input.quiet).toBe(false);
    }
  });

  it('Ctrl-C leaves in the middle of a typed line too, and q is a letter there', () => {
    const { input } = type(asking, 'k Jacq');
    expect(pressed(input, { key: 'c', ctrl: true }, asking, false).out).toBe('quit');
    expect(type(asking, 'k Jacq enter 1').outs[0]).toMatchObject({ by: 'Jacq' });
  });

  it('a question goes before the panel', () => {
    const job = {
      ...ROUTINE_JOBS.list,
      questions: [questionOn(1, 'unsure', ['rehit'], 1)],
    };
    expect(type(job, 'r').outs).toEqual([{ do: 'answer', pull: 1, answer: 'rehit' }]);
    expect(type(job, 'enter').outs).toEqual([]);
  });

  it('says why a command is refused, until the next key', () => {
    const { input, outs } = type(worked, 'c 2 enter 1 1', newInputState(), true);
    expect(outs).toEqual([]);
    expect(input.notice).toBe('A pull is under way.');
    expect(type(worked, 'z', input).input.notice).toBeNull();
  });

  it('that would sign what is not done says what is missing', () => {
    const { input, outs } = type(worked, 's');
    expect(outs).toEqual([]);
    expect(input.notice).toMatch(/^Not yet: cylinder 2: gap not measured, and \d+ more\. q leaves it open/);
  });
});

describe('a gauge that types', () => {
  const types = newInputState({ types: true });

  it('types its figure in any phase without pressing a key', () => {
    for (const job of [jobWith(2), asking, ROUTINE_JOBS.windows, ROUTINE_JOBS.list, ROUTINE_JOBS.afterwards])
      expect(type(job, '0.75 enter', types).outs).toEqual([{ typed: '0.75' }]);
    expect(type(jobWith(2), '.030_in enter', types).outs).toEqual([{ typed: '.030 in' }]);
  });

  it.each(['27.5 N·m', '27.5N·m', '27.5 Nm', '27,5 N.m', '20 lbf·ft', '20 ft-lb', '2.8 kgf·m'])(
    'and a wrench that is typed has its unit with it: %s',
    (text) => {
      const both = newInputState({ types: true, typedUnits: { torque: 'N·m', length: 'mm' } });
      for (const job of [jobWith(2), asking, ROUTINE_JOBS.windows, ROUTINE_JOBS.list]) {
        const { input, outs } = type(job, `${text.replaceAll(' ', '_')} enter`, both);
        expect([outs, input.quiet]).toEqual([[{ typed: text }], false]);
      }
    },
  );

  it('has no letter that begins no unit of this station: it is a key', () => {
    expect(type(jobWith(2), '27.5 m', types).input).toMatchObject({ figure: '27.5m', quiet: false });
    expect(type(jobWith(2), '27.5 c', types).input.form?.kind).toBe('exceptions');
    expect(type(ROUTINE_JOBS.oldPlugs, '27.5 n', types).outs).toHaveLength(1);
  });

  it('does so into an open line too, which stays empty', () => {
    const { input, outs } = type(asking, 'k 0.75 enter', types);
    expect(outs).toEqual([{ typed: '0.75' }]);
    expect(type(asking, 'Foreman enter down enter', input).outs).toEqual([
      expect.objectContaining({ by: 'Foreman' }),
    ]);
  });

  it('leaves choices to the arrows, because a digit is never a key', () => {
    expect(type(ROUTINE_JOBS.afterwards, 'right down _ right down right enter', types).outs).toHaveLength(1);
  });

  it('that broke off in the middle is dropped by Esc or by any key, which then counts', () => {
    expect(type(ROUTINE_JOBS.windows, '0.7 escape enter', types).outs).toEqual([{ do: 'confirm-windows' }]);
    expect(type(ROUTINE_JOBS.oldPlugs, '0.7 left', types).outs).toHaveLength(1);
    expect(type(ROUTINE_JOBS.oldPlugs, '0.7 backspace 5 enter', types).outs).toEqual([{ typed: '0.5' }]);
  });
});

describe('whatever is pressed', () => {
  const key = fc.oneof(
    fc.constantFrom('enter', 'escape', 'up', 'down', 'left', 'right', 'backspace', 'tab'),
    fc.constantFrom(...'acdefgilmnopqrstvxy123?0.'),
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 1 }),
  );
  const size = fc.record({
    columns: fc.integer({ min: 60, max: 200 }),
    rows: fc.integer({ min: 20, max: 60 }),
  });

  it('the screen keeps its size and its foot, in every state and at any size', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.values(VIEWS)),
        fc.array(key, { maxLength: 25 }),
        size,
        fc.boolean(),
        (view, keys, at, types) => {
          let input = newInputState({ types });
          for (const one of keys) input = pressed(input, { key: one }, view.job, view.live.pulling).input;
          const lines = linesOf(view, { ...at, input });
          expect(lines).toHaveLength(at.rows - 1);
          for (const line of lines) expect(columnsOf(line)).toBeLessThanOrEqual(at.columns);
          expect(lines.join('')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
          expect(lines.at(-2)).toContain('entries on disk');
          expect(lines.at(-1)).toMatch(/\[\S/);
        },
      ),
      { numRuns: 150 },
    );
  });
});
