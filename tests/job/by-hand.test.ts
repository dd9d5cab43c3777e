import { describe, expect, it } from 'vitest';
import type { Command } from '../../src/job/command.ts';
import { foldAll } from '../../src/job/fold.ts';
import { replay } from '../../src/job/replay.ts';
import { turningPull } from '../pull/shapes.ts';
import { workshop } from './workshop.ts';

type Shop = ReturnType<typeof workshop>;

const tell = (shop: Shop, command: Command) => shop.give({ kind: 'command', command });
const kindsOn = (shop: Shop, cylinder: number) => shop.cylinder(cylinder).pulls.map(({ kind }) => kind);

/** Whatever a person did must come out the same from the record. */
function provesItself(shop: Shop) {
  const again = replay(JSON.parse(JSON.stringify(shop.events)));
  if (!again.ok) throw new Error(`${again.error.where ?? ''} ${again.error.message}`);
  expect(again.value.state()).toEqual(shop.bench.state());
  expect(foldAll(shop.events)).toEqual(shop.bench.state());
}

describe('strokes without a click', () => {
  it('says nothing bad of a stroke that more follows', () => {
    const shop = workshop();
    shop.stopShort(16);
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'todo',
      pulls: [{ kind: 'run-down', judgement: null }],
    });
    shop.goOn(16, 27);
    shop.rest();
    expect(kindsOn(shop, 1)).toEqual(['run-down', 'tightening']);
    expect(shop.cylinder(1).torque).toBe('done');
    provesItself(shop);
  });

  it('says that it stopped short once nothing followed, from the samples alone', () => {
    const shop = workshop();
    shop.stopShort(16);
    shop.rest(2600);
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'again',
      pulls: [{ kind: 'tightening', judgement: { result: 'NotOK', side: 'low' } }],
    });
    provesItself(shop);
  });

  it('says so at once when the link is lost, and when the program stops', () => {
    for (const stops of [
      {
        kind: 'link',
        tool: 'wrench',
        driver: 'test',
        source: 'linked',
        link: { state: 'lost', reason: 'tool-switching-off' },
      },
      { kind: 'session', program: 'plugmark test', platform: 'test' },
    ] as const) {
      const shop = workshop();
      shop.stopShort(16);
      shop.give(stops);
      expect(shop.cylinder(1).torque).toBe('again');
      provesItself(shop);
    }
  });

  it('asks about the next plug when it is not the one that stopped short', () => {
    const shop = workshop();
    shop.stopShort(16);
    shop.pull(27);
    expect(shop.cylinder(1).torque).toBe('ask');
    expect(shop.bench.state().questions).toMatchObject([{ kind: 'other-plug', cylinder: 1 }]);
    tell(shop, { do: 'give-pull', pull: 2, cylinder: 2, why: 'did not hear it' });
    expect(shop.cylinder(1).torque).toBe('again');
    expect(shop.cylinder(2)).toMatchObject({
      torque: 'done',
      pulls: [{ pull: { pull: 2 }, kind: 'tightening' }],
    });
    provesItself(shop);
  });
});

describe('giving a pull to another cylinder', () => {
  it('takes the proof with it, and keeps what was there in the log', () => {
    const shop = workshop();
    shop.pull(27);
    tell(shop, { do: 'give-pull', pull: 1, cylinder: 3, why: 'went to the wrong one' });
    expect(shop.cylinder(1)).toMatchObject({ torque: 'todo', pulls: [] });
    expect(shop.cylinder(3)).toMatchObject({ torque: 'done', pulls: [{ kind: 'tightening' }] });
    expect(shop.events.filter(({ type }) => type === 'pull-placed')).toMatchObject([
      { cylinder: 1 },
      { cylinder: 3 },
    ]);
    expect(shop.events).toContainEqual({
      type: 'pull-given',
      pull: 1,
      cylinder: 3,
      why: 'went to the wrong one',
    });
    provesItself(shop);
  });

  it('takes the strokes before it and the second click behind it along', () => {
    const shop = workshop();
    shop.stopShort(16);
    shop.goOn(16, 27);
    shop.again(27.2);
    tell(shop, { do: 'give-pull', pull: 2, cylinder: 2, why: '' });
    expect(kindsOn(shop, 1)).toEqual([]);
    expect(kindsOn(shop, 2)).toEqual(['run-down', 'tightening', 'rehit']);
    provesItself(shop);
  });

  it('is only a check on a cylinder that is proven already', () => {
    const shop = workshop();
    shop.pull(27);
    shop.pull(27.4);
    tell(shop, { do: 'give-pull', pull: 2, cylinder: 1, why: '' });
    expect(kindsOn(shop, 1)).toEqual(['tightening', 'check']);
    expect(shop.cylinder(2).torque).toBe('todo');
    provesItself(shop);
  });

  it('asks what went above the window at the cylinder where it was', () => {
    const shop = workshop();
    shop.pull(32);
    tell(shop, { do: 'give-pull', pull: 1, cylinder: 4, why: '' });
    expect(shop.bench.state().questions).toMatchObject([{ kind: 'over-window', cylinder: 4, pull: 1 }]);
    expect(shop.cylinder(1).torque).toBe('todo');
    provesItself(shop);
  });

  it.each([
    ['a pull that nobody found', { pull: 9, cylinder: 2 }],
    ['a cylinder that is not there', { pull: 1, cylinder: 9 }],
  ])('refuses %s', (_what, which) => {
    const shop = workshop();
    shop.pull(27);
    const before = shop.bench.state();
    expect(tell(shop, { do: 'give-pull', ...which, why: '' }).ok).toBe(false);
    expect(shop.bench.state()).toBe(before);
  });
});

describe('a cylinder that was left out', () => {
  /** Cylinder 2 is passed over: what is recorded of 2 and 3 was on 3 and 4, and 4 is tried once more. */
  function passedOver() {
    const shop = workshop();
    for (const nm of [27, 27.2, 27.4]) shop.pull(nm);
    shop.rest();
    shop.again(27.6);
    return shop;
  }

  it('is asked about when the plug that is due turns out to be tight', () => {
    expect(passedOver().bench.state().questions).toMatchObject([
      { kind: 'already-tight', cylinder: 4, pull: 4 },
    ]);
  });

  it('moves the pulls behind it on by one and is due itself', () => {
    const shop = passedOver();
    tell(shop, { do: 'left-out', pull: 4, cylinder: 2, on: 4, why: 'only finger-tight' });
    expect(
      shop.bench
        .state()
        .cylinders.map(({ torque, pulls }) => [torque, ...pulls.map(({ pull }) => pull.pull)]),
    ).toEqual([['done', 1], ['todo'], ['done', 2], ['done', 3, 4]]);
    expect(shop.bench.state()).toMatchObject({ torqueTarget: 2, questions: [] });
    // Hands may still be at the last one: a key says that they are not.
    shop.pull(27);
    expect(shop.bench.state().questions).toMatchObject([{ cylinder: 2, kind: 'by-plan' }]);
    tell(shop, { do: 'answer', pull: 5, answer: 'fresh' });
    expect(shop.bench.state().torqueTarget).toBeNull();
    provesItself(shop);
  });

  it('leaves alone what a person gave to a cylinder', () => {
    const shop = workshop();
    shop.pull(27);
    tell(shop, { do: 'give-pull', pull: 1, cylinder: 3, why: '' });
    shop.pull(27.2);
    tell(shop, { do: 'answer', pull: 2, answer: 'fresh' });
    shop.pull(27.4);
    shop.rest();
    shop.again(27.6);
    tell(shop, { do: 'left-out', pull: 4, cylinder: 1, on: 4, why: '' });
    expect(shop.bench.state().cylinders.map(({ pulls }) => pulls.map(({ pull }) => pull.pull))).toEqual([
      [],
      [2],
      [1],
      [3, 4],
    ]);
    provesItself(shop);
  });

  it('is refused without a question, or where no pull could have been on the plug behind', () => {
    const shop = passedOver();
    expect(tell(shop, { do: 'left-out', pull: 1, cylinder: 2, on: 4, why: '' }).ok).toBe(false);
    expect(tell(shop, { do: 'left-out', pull: 4, cylinder: 4, on: 4, why: '' }).ok).toBe(false);
  });
});

describe('backing a plug off to start again', () => {
  it('makes a proven cylinder due at once, and nothing before it counts', () => {
    const shop = workshop();
    for (const nm of [27, 27.2]) shop.pull(nm);
    tell(shop, { do: 'start-again', cylinder: 1, newPlug: false, why: 'thread felt rough' });
    expect(shop.cylinder(1)).toMatchObject({ torque: 'again', pulls: [{ judgement: { result: 'OK' } }] });
    expect(shop.bench.state()).toMatchObject({ torqueTarget: 1, refitting: 1 });
    shop.loosen(15);
    shop.pull(27.4);
    expect(shop.cylinder(1).torque).toBe('done');
    expect(shop.bench.state().torqueTarget).toBe(3);
    provesItself(shop);
  });

  it('wants the gap of a new plug', () => {
    const shop = workshop();
    shop.gap(0.75);
    shop.pull(27);
    tell(shop, { do: 'start-again', cylinder: 1, newPlug: true, why: '' });
    expect(shop.cylinder(1).gap).toBe('again');
    provesItself(shop);
  });

  it('does not take the plug for done that was never backed off', () => {
    const shop = workshop();
    shop.pull(27);
    tell(shop, { do: 'start-again', cylinder: 1, newPlug: false, why: '' });
    shop.rest();
    shop.again(27);
    expect(shop.cylinder(1).torque).toBe('ask');
  });

  it('is refused while a question is open', () => {
    const shop = workshop();
    shop.pull(32);
    expect(tell(shop, { do: 'start-again', cylinder: 1, newPlug: false, why: '' }).ok).toBe(false);
  });
});

describe('a plug that is backed out', () => {
  it('takes along what was pulled on it before it came out', () => {
    const shop = workshop();
    shop.pull(32);
    shop.pull(27);
    tell(shop, { do: 'give-pull', pull: 2, cylinder: 1, why: '' });
    tell(shop, { do: 'answer', pull: 1, answer: 'refit' });
    expect(shop.cylinder(1).torque).toBe('again');
    provesItself(shop);
  });

  it('takes along what else was asked about it', () => {
    const shop = workshop();
    shop.pull(32);
    shop.pull(27);
    expect(shop.bench.state().questions).toHaveLength(2);
    shop.answer('refit');
    expect(shop.bench.state().questions).toEqual([]);
    expect(shop.cylinder(1).torque).toBe('again');
    provesItself(shop);
  });
});

describe('a plug that turns from loose', () => {
  it('though all are done puts what had proven it in question, back to the pull that was on a tight plug', () => {
    const shop = workshop();
    shop.pull(27.1); // plug 1
    shop.pull(27.2); // plug 2
    shop.pull(27.3); // plug 2 once more, as if it turned: taken for 3
    shop.pull(27.4); // plug 3, taken for 4
    expect(shop.bench.state().torqueTarget).toBeNull();
    shop.pull(27.5); // plug 4
    expect(shop.bench.state().questions).toMatchObject([{ pull: 5, cylinder: 4, kind: 'loose' }]);
    shop.answer('fresh');
    expect(shop.bench.state().questions).toMatchObject([{ pull: 4, cylinder: 4, kind: 'unsure' }]);
    expect(shop.cylinder(4).torque).toBe('ask');
    tell(shop, { do: 'give-pull', pull: 4, cylinder: 3, why: 'it was on this plug' });
    expect(shop.bench.state().questions).toMatchObject([{ pull: 3, cylinder: 3, kind: 'unsure' }]);
    tell(shop, { do: 'give-pull', pull: 3, cylinder: 2, why: 'tried once more' });
    expect(shop.bench.state().questions).toMatchObject([{ pull: 2, cylinder: 2, kind: 'unsure' }]);
    shop.answer('fresh');
    expect(shop.bench.state().questions).toEqual([]);
    expect([1, 2, 3, 4].map((cylinder) => shop.cylinder(cylinder).torque)).toEqual(Array(4).fill('done'));
    expect(
      [1, 2, 3, 4].map((cylinder) => shop.cylinder(cylinder).pulls.map(({ pull }) => pull.pull)),
    ).toEqual([[1], [2, 3], [4], [5]]);
    provesItself(shop);
  });

  it('is not what a tight plug did that a person names, however sure the due one would have turned', () => {
    const shop = workshop();
    shop.pull(27.1);
    shop.doubtful(27.2, 0.18);
    const [{ evidence } = {}] = shop.cylinder(2).pulls;
    expect(evidence?.turned).toBeGreaterThan(0.8);
    expect(evidence?.turnedByPull).toBeLessThan(0.5);
    tell(shop, { do: 'give-pull', pull: 2, cylinder: 1, why: 'tried once more' });
    expect(shop.bench.state().questions).toEqual([]);
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'done',
      pulls: [{ kind: 'tightening' }, { kind: 'check' }],
    });
    provesItself(shop);
  });

  it('before another one of the same cylinder puts that one in question', () => {
    const shop = workshop();
    shop.pull(27.1); // plug 1
    shop.pull(27.2); // plug 3, taken for 2
    shop.pull(27.3); // plug 4, taken for 3
    shop.doubtful(27.4, 0.45); // plug 2, which was left out
    expect(shop.bench.state().questions).toMatchObject([{ pull: 4, cylinder: 4 }]);
    tell(shop, { do: 'give-pull', pull: 4, cylinder: 2, why: 'left out, done last' });
    expect(shop.bench.state().questions).toMatchObject([{ pull: 2, cylinder: 2 }]);
    tell(shop, { do: 'give-pull', pull: 2, cylinder: 3, why: 'it was on this plug' });
    expect(shop.bench.state().questions).toMatchObject([{ pull: 3, cylinder: 3 }]);
    expect(shop.cylinder(3).torque).toBe('ask');
    tell(shop, { do: 'give-pull', pull: 3, cylinder: 4, why: 'it was on this plug' });
    expect(shop.bench.state().questions).toEqual([]);
    expect(
      [1, 2, 3, 4].map((cylinder) => shop.cylinder(cylinder).pulls.map(({ pull }) => pull.pull)),
    ).toEqual([[1], [4], [2], [3]]);
    expect([1, 2, 3, 4].map((cylinder) => shop.cylinder(cylinder).torque)).toEqual(Array(4).fill('done'));
    provesItself(shop);
  });

  it('at once after one that stopped just short is another one', () => {
    const shop = workshop();
    shop.stopShort(24);
    shop.draw([{ atMs: 0, nm: 0 }, ...turningPull(400, 700, 27.4, 22, 22)]);
    expect(shop.bench.state().questions).toMatchObject([{ pull: 2, cylinder: 1, kind: 'other-plug' }]);
    tell(shop, { do: 'give-pull', pull: 2, cylinder: 2, why: 'it was on this plug' });
    expect([1, 2].map((cylinder) => shop.cylinder(cylinder).torque)).toEqual(['again', 'done']);
    expect(kindsOn(shop, 1)).toEqual(['tightening']);
    provesItself(shop);
  });
});

describe('first strokes from plug to plug', () => {
  it('go to one cylinder after the other, and the second round begins with the first', () => {
    const shop = workshop();
    for (const nm of [15, 15.4, 15.2, 15.1]) {
      shop.rest();
      shop.stopShort(nm);
    }
    shop.rest();
    expect([1, 2, 3, 4].map((cylinder) => kindsOn(shop, cylinder))).toEqual(Array(4).fill(['tightening']));
    expect(shop.bench.state()).toMatchObject({ torqueTarget: 1, questions: [] });
    for (const held of [15, 15.4, 15.2, 15.1]) {
      shop.rest();
      shop.goOn(held, 27);
    }
    expect([1, 2, 3, 4].map((cylinder) => shop.cylinder(cylinder).torque)).toEqual(Array(4).fill('done'));
    provesItself(shop);
  });

  it('are not finished by a pull that goes on from a stroke on the next plug', () => {
    const shop = workshop();
    shop.rest();
    shop.stopShort(15);
    shop.rest();
    shop.stopShort(15.4);
    shop.goOn(15.4, 27);
    expect(shop.bench.state().questions).toMatchObject([{ pull: 3, cylinder: 1, kind: 'other-plug' }]);
    expect(shop.cylinder(1).torque).toBe('ask');
  });
});
