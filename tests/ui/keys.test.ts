import { describe, expect, it } from 'vitest';
import type { JobState } from '../../src/job/state.ts';
import { benchCommand } from '../../src/ui/keys.ts';
import { cylinderIn, jobWith, questionOn, withCylinder } from './fixtures.ts';

const open = jobWith(2); // service order 1 3 5 7 2 4 6 8; the target is 5
const asking = (answers: Parameters<typeof questionOn>[2]): JobState => ({
  ...open,
  questions: [questionOn(5, 'unsure', answers, 3)],
});
const press = (key: string, job: JobState, pulling = false) => benchCommand({ key }, job, pulling);
const choice = (quantity: 'torque' | 'length', cylinder: number) => ({
  do: 'choose-cylinder',
  quantity,
  cylinder,
});

describe('keys', () => {
  it.each([
    ['right', choice('torque', 7)],
    ['down', choice('length', 7)],
  ])('%s goes on along the service order', (key, command) => {
    expect(press(key, open)).toEqual(command);
  });

  it('skips cylinders that are done and stops at both ends', () => {
    expect(press('left', open)).toBeNull();
    expect(press('up', open)).toBeNull();
    const gapOfSevenDone = withCylinder(open, cylinderIn(7, 'done', 'todo'));
    expect(press('down', gapOfSevenDone)).toEqual(choice('length', 2));
    expect(press('right', gapOfSevenDone)).toEqual(choice('torque', 7));
    expect(press('left', { ...open, torqueTarget: 2 })).toEqual(choice('torque', 7));
    expect(press('right', { ...open, torqueTarget: 8 })).toBeNull();
    expect(press('right', jobWith(8))).toBeNull();
  });

  it('does not change the cylinder under a pull', () => {
    for (const key of ['left', 'right', 'up', 'down'])
      expect(press(key, { ...open, torqueTarget: 2 }, true)).toBeNull();
  });

  it.each([
    ['f', 'fresh'],
    ['r', 'rehit'],
    ['h', 'handling'],
    ['b', 'refit'],
    ['F', 'fresh'],
  ] as const)('%s answers %s, and only where that is an answer', (key, answer) => {
    expect(press(key, asking([answer]))).toEqual({ do: 'answer', pull: 3, answer });
    expect(press(key, asking(answer === 'handling' ? ['fresh'] : ['handling']))).toBeNull();
    expect(press(key, open)).toBeNull();
  });

  it('answers the oldest question first', () => {
    const second = questionOn(7, 'cut', ['handling'], 4);
    const job = { ...open, questions: [...asking(['handling']).questions, second] };
    expect(press('h', job)).toEqual({ do: 'answer', pull: 3, answer: 'handling' });
  });

  it('signs only when everything is proven', () => {
    expect(press('s', jobWith(8))).toEqual({ do: 'close' });
    expect(press('s', jobWith(8), true)).toBeNull();
    expect(press('s', open)).toBeNull();
    expect(press('s', { ...jobWith(8), questions: asking(['fresh']).questions })).toBeNull();
    expect(press('s', jobWith(8, { closed: { complete: true, open: [] } }))).toBeNull();
  });

  it('moves nothing while a question is open', () => {
    for (const key of ['left', 'right', 'up', 'down']) expect(press(key, asking(['fresh']))).toBeNull();
  });

  it('knows no other key', () => {
    for (const key of ['1', '9', 'x', 'c', ' ', '\r', '\u001b', 'left right'])
      expect(press(key, open)).toBeNull();
    for (const key of ['q', 's', 'f'])
      expect(benchCommand({ key, ctrl: true }, jobWith(8), false)).toBeNull();
  });
});
