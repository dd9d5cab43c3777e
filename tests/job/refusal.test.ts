/** What a person may tell a job, and when it is refused: each condition by itself. */
import { describe, expect, it } from 'vitest';
import type { Command } from '../../src/job/command.ts';
import { answerSchema } from '../../src/job/event-of-people.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { refused } from '../../src/job/refusal.ts';
import { itemsOf, USUAL_ROUTINE } from '../../src/job/routine.ts';
import { inLanguage } from '../../src/words/catalogue.ts';
import { PSEUDO, unspoken } from '../words/pseudo.ts';
import { twoSteps, typedJob } from './typed-job.ts';
import { exampleOrder, INSTRUMENTS } from './workshop.ts';

type Job = ReturnType<typeof typedJob>;
/** Answers are given and named by their codes. */
const ANSWERS = ['not-done', 'done', ...answerSchema.options];

/** Whatever is refused here can be said in every language: only names and codes stay as they are. */
function says(job: Job, command: Command, pulling = false): string | null {
  const spoken = inLanguage(PSEUDO, () => refused(job.state(), command, pulling));
  expect(unspoken(spoken ?? '', NAMES)).toEqual([]);
  return refused(job.state(), command, pulling);
}
const NAMES = [
  'Technician One',
  'no-such-item',
  /[A-Z]\. [A-Z]\w+/,
  /(?:EXAMPLE|OTHER)(?:-[\w-]+)?/,
  ...ANSWERS,
];

const withRoutine = () => typedJob(exampleOrder(4), INSTRUMENTS, USUAL_ROUTINE);
const checked = (check: 'wire' | 'visual-only'): WorkOrder => ({
  ...exampleOrder(4),
  specification: {
    ...exampleOrder(4).specification,
    gapRules:
      check === 'wire' ? { check, wires: { go: '0.72 mm', noGo: '0.78 mm', within: '0.003 mm' } } : { check },
  },
});

describe('while a pull is under way', () => {
  const command = { cylinder: 1, why: 'x' } as const;
  it.each<[string, Command, boolean]>([
    ['closing', { do: 'close' }, true],
    ['another cylinder for the wrench', { do: 'choose-cylinder', quantity: 'torque', cylinder: 2 }, true],
    ['another cylinder for the gauge', { do: 'choose-cylinder', quantity: 'length', cylinder: 2 }, false],
    ['a plug to the scrap', { do: 'scrap-plug', cylinder: 1, reason: 'dropped' }, true],
    ['starting a plug again', { do: 'start-again', newPlug: false, ...command }, true],
    ['an angle in place of a torque', { do: 'fit-by-angle', turn: '1/2 turn', ...command }, true],
    ['handing over', { do: 'hand-over', to: 'Somebody Else' }, false],
    ['confirming the windows', { do: 'confirm-windows' }, false],
    ['declaring the job void', { do: 'void', by: 'A. Foreman', reason: 'x' }, false],
  ])('%s', (_what, told, waits) => {
    const job = typedJob();
    expect(says(job, told, true)?.startsWith('A pull is under way') ?? false).toBe(waits);
    expect(says(job, told, false)).toBeNull();
  });
});

describe('a job that is closed', () => {
  it('takes nothing more but to be declared void, and that once', () => {
    const job = typedJob();
    job.give({ type: 'job-closed', complete: false, open: [] });
    expect(says(job, { do: 'confirm-windows' })).toBe('The job is closed.');
    expect(says(job, { do: 'void', by: 'A. Foreman', reason: 'x' })).toBeNull();
    job.give({ type: 'job-voided', by: 'A. Foreman', reason: 'x' });
    expect(says(job, { do: 'void', by: 'B. Owner', reason: 'y' })).toBe(
      'A. Foreman declared this job void already.',
    );
  });
});

describe('a cylinder', () => {
  it('that the engine does not have is refused, whatever is told of it', () => {
    const job = typedJob();
    const commands: readonly Command[] = [
      { do: 'choose-cylinder', quantity: 'torque', cylinder: 5 },
      { do: 'scrap-plug', cylinder: 5, reason: 'dropped' },
      { do: 'fit-by-angle', cylinder: 5, turn: '1/2 turn', why: 'x' },
      { do: 'start-again', cylinder: 5, newPlug: true, why: 'x' },
    ];
    for (const command of commands) expect(says(job, command)).toBe('This engine has no cylinder 5.');
  });

  it('that is proven by torque is not turned by an angle; one that is open is', () => {
    const job = typedJob();
    job.pull(2, 27);
    const byAngle = (cylinder: number) =>
      says(job, { do: 'fit-by-angle', cylinder, turn: '1/2 turn', why: 'x' });
    expect(byAngle(2)).toBe('Cylinder 2 is proven by torque.');
    expect(byAngle(1)).toBeNull();
  });
});

describe('the windows', () => {
  it('are confirmed once', () => {
    const job = typedJob();
    expect(says(job, { do: 'confirm-windows' })).toBeNull();
    job.give({ type: 'windows-confirmed' });
    expect(says(job, { do: 'confirm-windows' })).toBe('The windows are already confirmed.');
  });
});

describe('handing over', () => {
  it('is to somebody else', () => {
    const job = typedJob();
    const { technician } = job.state();
    expect(says(job, { do: 'hand-over', to: technician })).toBe(`${technician} works on this job already.`);
    expect(says(job, { do: 'hand-over', to: `${technician} jr` })).toBeNull();
  });
});

describe('the gap', () => {
  it.each<['wire' | 'visual-only', boolean, boolean]>([
    ['wire', false, true],
    ['visual-only', true, false],
  ])('by %s', (check, byEye, byWire) => {
    const job = typedJob(checked(check));
    expect(says(job, { do: 'gap-inspected', cylinder: 1, sound: true }) === null).toBe(byEye);
    expect(says(job, { do: 'gap-wire', cylinder: 1, outcome: 'fits' }) === null).toBe(byWire);
  });

  it('by gauge is taken by neither', () => {
    const job = typedJob();
    expect(says(job, { do: 'gap-inspected', cylinder: 1, sound: true })).toMatch(/by eye/);
    expect(says(job, { do: 'gap-wire', cylinder: 1, outcome: 'fits' })).toMatch(/by wire/);
  });
});

describe('a question', () => {
  it('is answered as it may be, and only where it is open', () => {
    const job = typedJob();
    job.pull(1, 27);
    const pull = job.pull(2, 27, 'unsure', { ask: 'which' });
    expect(says(job, { do: 'answer', pull, answer: 'fresh' })).toBeNull();
    expect(says(job, { do: 'answer', pull, answer: 'refit' })).toBe('"refit" does not answer this question.');
    expect(says(job, { do: 'answer', pull: 1, answer: 'fresh' })).toBe('No question is open about pull 1.');
  });

  it('that is open comes before starting any plug again', () => {
    const job = typedJob();
    const again: Command = { do: 'start-again', cylinder: 1, newPlug: false, why: 'x' };
    expect(says(job, again)).toBeNull();
    job.pull(2, 32);
    expect(says(job, again)).toBe('Answer the open question first.');
  });

  it('about a pull that is not there gives it to no cylinder', () => {
    const job = typedJob();
    const pull = job.pull(null, 5, 'handling');
    expect(says(job, { do: 'give-pull', pull, cylinder: 1, why: 'x' })).toBeNull();
    expect(says(job, { do: 'give-pull', pull: 9, cylinder: 1, why: 'x' })).toBe('There is no pull 9.');
  });
});

describe('a pull over the window', () => {
  const accept = (pull: number): Command => ({ do: 'accept', pull, by: 'A. Foreman', reason: 'sound' });

  it('may stay where the question about that very pull is open, though another is', () => {
    const job = typedJob();
    const unsure = job.pull(1, 27, 'unsure', { ask: 'which' });
    const over = job.pull(2, 32);
    expect(says(job, accept(over))).toBeNull();
    expect(says(job, accept(unsure))).toMatch(/No question about a pull over the window/);
    expect(says(job, accept(99))).toMatch(/No question about a pull over the window/);
  });

  it('may not stay when its plug was taken out since', () => {
    const job = typedJob();
    const over = job.pull(1, 32);
    job.pull(1, -20, 'loosening');
    expect(says(job, accept(over))).toMatch(/taken out since/);
  });

  it('may not stay as the first of two steps', () => {
    const job = typedJob(twoSteps());
    const over = job.pull(1, 33);
    expect(says(job, accept(over))).toBe('Only the final torque can be left as it is.');
  });
});

describe('a plug that was left out', () => {
  const told = (change: object): Command =>
    ({ do: 'left-out', pull: 3, cylinder: 1, on: 1, why: 'x', ...change }) as Command;
  const job = () => {
    const it = typedJob();
    it.pull(1, 27);
    it.pull(2, 27);
    it.pull(3, 27, 'unsure', { ask: 'already-tight' });
    return it;
  };

  it.each<[string, object, RegExp | null]>([
    ['the first, as the question about the third shows', {}, null],
    ['about which nothing is asked', { pull: 2 }, /No question is open about pull 2/],
    ['with the pull on a plug that is not there', { on: 9 }, /no cylinder 9/],
    ['behind the one in question', { cylinder: 4 }, /No pull of cylinder 4/],
  ])('%s', (_what, change, expected) => {
    const words = says(job(), told(change));
    if (expected === null) expect(words).toBeNull();
    else expect(words).toMatch(expected);
  });
});

describe('the checklists of a routine', () => {
  const job = withRoutine();
  const routine = job.state().routine ?? expect.fail('no routine');
  const phase = 'before-removal';
  const items = itemsOf(routine, phase);
  const all = items.map(({ id, choices }) => ({ item: id, as: choices?.[0]?.id ?? 'done' }));
  const attest = (steps: readonly object[]): Command =>
    ({ do: 'attest', phase, steps }) as unknown as Command;

  it('want each item once, with an answer that it has', () => {
    expect(all.length).toBeGreaterThan(0);
    expect(says(job, attest(all))).toBeNull();
    expect(says(job, attest(all.slice(1)))).toMatch(/^Answer this item too/);
    expect(says(job, attest([...all, ...all.slice(0, 1)]))).toBe('An item is answered twice.');
    expect(says(job, attest([...all, { item: 'no-such-item', as: 'done' }]))).toBe(
      '"no-such-item" is not on this list.',
    );
    const [first, ...rest] = all;
    expect(says(job, attest([{ ...first, as: 'perhaps' }, ...rest]))).toMatch(/^The answers to/);
    expect(says(typedJob(), attest(all))).toBe('This job has no such list.');
  });

  it('want a reason for what is not done', () => {
    const [first, ...rest] = all;
    const not = (more: object) => says(job, attest([{ ...first, as: 'not-done', ...more }, ...rest]));
    expect(not({})).toMatch(/^Give the reason/);
    expect(not({ why: '  ' })).toMatch(/^Give the reason/);
    expect(not({ why: 'no compressed air' })).toBeNull();
  });
});

describe('plugs out and in', () => {
  const old = (cylinders: number[]): Command =>
    ({ do: 'read-old-plugs', cylinders, condition: 'normal' }) as unknown as Command;
  const part = exampleOrder(4).plug.part;
  const check = (change: object): Command =>
    ({ do: 'check-new-plugs', cylinders: [1], part, differs: [], ...change }) as unknown as Command;

  it('are recorded where the routine wants it, for cylinders that there are', () => {
    const job = withRoutine();
    const routine = job.state().routine ?? expect.fail('no routine');
    expect(routine).toMatchObject({ oldPlugs: true, newPlugs: true });
    expect(says(job, old([1, 4]))).toBe('Too early. First confirm the list before removal.');
    const steps = itemsOf(routine, 'before-removal').map(({ id }) => ({ item: id, as: 'done' }));
    job.give({ type: 'steps-attested', phase: 'before-removal', steps });
    expect(says(job, old([1, 4]))).toBeNull();
    expect(says(job, old([1, 5]))).toBe('This engine has no cylinder 5.');
    expect(says(typedJob(), old([1]))).toBe('This job does not record old plugs.');
    expect(says(job, check({}))).toBeNull();
    expect(says(job, check({ cylinders: [7] }))).toBe('This engine has no cylinder 7.');
    expect(says(typedJob(), check({}))).toBe('This job does not check new plugs.');
  });

  it('a part that the order does not allow goes in only as one that differs', () => {
    const job = withRoutine();
    expect(says(job, check({ part: 'OTHER-1' }))).toMatch(
      new RegExp(`allows ${part} in this engine, not OTHER-1`),
    );
    expect(says(job, check({ part: 'OTHER-1', differs: ['part'] }))).toBeNull();
    const either = typedJob(
      { ...exampleOrder(4), plug: { ...exampleOrder(4).plug, alsoParts: ['OTHER-1'] } },
      INSTRUMENTS,
      USUAL_ROUTINE,
    );
    expect(says(either, check({ part: 'OTHER-1' }))).toBeNull();
    expect(says(either, check({ part: 'OTHER-2' }))).toMatch(/or OTHER-1 in this engine/);
  });

  it('of two different plugs in one engine each goes into its own cylinders only', () => {
    const { plug } = exampleOrder(4);
    const parts = [
      { part: plug.part, cylinders: [1, 3] },
      { part: 'OTHER-1', cylinders: [2, 4] },
    ];
    const job = typedJob(
      { ...exampleOrder(4), plug: { ...plug, alsoParts: ['OTHER-1'], parts } },
      INSTRUMENTS,
      USUAL_ROUTINE,
    );
    expect(says(job, check({ cylinders: [2, 4], part: 'OTHER-1' }))).toBeNull();
    expect(says(job, check({ cylinders: [1, 2], part: plug.part }))).toBe(
      `Cylinder 2 takes OTHER-1, not ${plug.part}: this engine has two different plugs.`,
    );
  });
});
