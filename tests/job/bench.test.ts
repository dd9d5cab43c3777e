import { describe, expect, it } from 'vitest';
import { openItems } from '../../src/job/closing.ts';
import { clickPull } from '../pull/shapes.ts';
import { workshop } from './workshop.ts';

describe('an unexceptional job', () => {
  it('gives gaps and pulls to the cylinders in service order and closes complete', () => {
    const shop = workshop();
    for (const mm of [0.74, 0.75, 0.76, 0.75]) shop.gap(mm);
    for (const nm of [27, 27.2, 27.4, 27.1]) shop.pull(nm);
    expect(shop.bench.state().cylinders.map((c) => [c.cylinder, c.gap, c.torque])).toEqual([
      [1, 'done', 'done'],
      [2, 'done', 'done'],
      [3, 'done', 'done'],
      [4, 'done', 'done'],
    ]);
    expect(shop.cylinder(3).pulls[0]?.judgement?.value).toBeCloseTo(27.4, 1);
    shop.give({ kind: 'command', command: { do: 'close' } });
    expect(shop.events.at(-1)).toEqual({ type: 'job-closed', complete: true, open: [] });
  });

  it('writes the samples of a pull in front of its verdict', () => {
    const shop = workshop();
    shop.pull(27);
    const types = shop.events.map(({ type }) => type);
    const found = types.indexOf('pull-detected');
    const coded = shop.events.slice(0, found).flatMap((event) => (event.type === 'readings' ? [event] : []));
    const covered = coded.reduce((sum, { count }) => sum + count, 0);
    expect(types[found + 1]).toBe('pull-placed');
    expect(covered).toBeGreaterThanOrEqual(100);
    expect(coded.map(({ first }) => first)).toEqual(
      coded.map((_, i) => 1 + coded.slice(0, i).reduce((sum, { count }) => sum + count, 0)),
    );
  });
});

describe('the torque now', () => {
  it('is none before the wrench has read, however long it is linked', () => {
    const shop = workshop();
    expect(shop.bench.live()).toBeNull();
    shop.rest();
    expect(shop.bench.live()).toMatchObject({ nowNm: 0, pulling: false });
  });

  it('is none of a wrench whose figures are typed', () => {
    const shop = workshop();
    shop.join('typed');
    shop.rest();
    expect(shop.bench.live()).toBeNull();
  });
});

describe('pulls that prove nothing', () => {
  it('keeps a cylinder open that stopped short, and takes the next pull as its continuation', () => {
    const shop = workshop();
    shop.stopShort(19);
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'todo',
      pulls: [{ kind: 'run-down', judgement: null }],
    });
    shop.rest();
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'again',
      pulls: [{ kind: 'tightening', judgement: { result: 'NotOK', side: 'low' } }],
    });
    shop.goOn(19, 27);
    expect(shop.cylinder(1).torque).toBe('done');
    expect(shop.cylinder(1).pulls[1]?.kind).toBe('continuation');
  });

  it('does not judge the strokes on the way', () => {
    const shop = workshop();
    shop.stopShort(6);
    shop.stopShort(12);
    shop.goOn(12, 27);
    expect(shop.cylinder(1).pulls.map(({ kind, judgement }) => [kind, judgement?.result])).toEqual([
      ['run-down', undefined],
      ['run-down', undefined],
      ['tightening', 'OK'],
    ]);
  });

  it('keeps a reading within the guard band undecided and the cylinder open', () => {
    const shop = workshop();
    shop.pull(25.2);
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'again',
      pulls: [{ judgement: { result: 'NotDecidable', side: 'low' } }],
    });
  });

  it('records a second click on the same cylinder and never fills the next one with it', () => {
    const shop = workshop();
    shop.pull(27);
    shop.again(27.3);
    expect(shop.cylinder(1).pulls.map(({ kind }) => kind)).toEqual(['tightening', 'rehit']);
    expect(shop.cylinder(2).pulls).toEqual([]);
    expect(shop.bench.state().torqueTarget).toBe(2);
  });

  it('asks about a second click that went above the window', () => {
    const shop = workshop();
    shop.pull(27);
    shop.again(31);
    expect(shop.cylinder(1).torque).toBe('ask');
    expect(shop.bench.state().questions).toMatchObject([{ kind: 'over-window', cylinder: 1 }]);
  });

  it('leaves handling noise on no cylinder', () => {
    const shop = workshop();
    shop.stopShort(3);
    shop.rest();
    expect(shop.bench.state().strays.map(({ kind }) => kind)).toEqual(['handling']);
    expect(shop.cylinder(1).pulls).toEqual([]);
  });
});

describe('what only a person can say', () => {
  it('holds above the window until the plug is backed out, then takes the new pull', () => {
    const shop = workshop();
    shop.pull(32);
    expect(shop.bench.state().questions).toMatchObject([
      { kind: 'over-window', cylinder: 1, answers: ['refit', 'replace'] },
    ]);
    shop.answer('refit');
    shop.loosen(18);
    shop.pull(27);
    expect(shop.cylinder(1).pulls.map(({ kind }) => kind)).toEqual(['tightening', 'loosening', 'tightening']);
    expect(shop.cylinder(1).torque).toBe('done');
    expect(shop.bench.state().questions).toEqual([]);
  });

  it('wants the gap again when the plug was replaced', () => {
    const shop = workshop();
    shop.gap(0.75);
    shop.pull(32);
    shop.answer('replace');
    expect(shop.cylinder(1).gap).toBe('again');
    expect(shop.bench.state().gapTarget).toBe(1);
  });

  it('never calls a pull OK while a question is open', () => {
    const shop = workshop();
    shop.pull(32);
    shop.pull(27);
    expect(shop.bench.state().cylinders.some(({ torque }) => torque === 'done')).toBe(false);
    expect(shop.bench.state().questions).toHaveLength(2);
  });

  it('asks when the rise tells neither a tight plug nor a turning one, and judges by the answer', () => {
    const shop = workshop();
    shop.pull(27);
    shop.doubtful(27);
    expect(shop.bench.state().questions).toMatchObject([{ kind: 'unsure', cylinder: 2 }]);
    expect(shop.cylinder(2).torque).toBe('ask');
    shop.answer('fresh');
    expect(shop.cylinder(2)).toMatchObject({
      torque: 'done',
      pulls: [{ kind: 'tightening', answer: 'fresh' }],
    });
  });

  it('gives an unsure pull back to the tight plug when the technician says so', () => {
    const shop = workshop();
    shop.pull(27);
    shop.doubtful(27);
    shop.answer('rehit');
    expect(shop.cylinder(1).pulls.map(({ kind }) => kind)).toEqual(['tightening', 'rehit']);
    expect(shop.cylinder(2)).toMatchObject({ torque: 'todo', pulls: [] });
  });

  it('reopens a proven cylinder whose plug was loosened', () => {
    const shop = workshop();
    shop.pull(27);
    shop.rest(4000);
    shop.loosen(18);
    expect(shop.bench.state().questions).toMatchObject([{ kind: 'loosened', cylinder: 1 }]);
    shop.answer('refit');
    expect(shop.cylinder(1).torque).toBe('again');
    shop.pull(27);
    expect(shop.cylinder(1).torque).toBe('done');
  });

  it('asks nothing where a plug is loosened at once after it was tightened', () => {
    const shop = workshop();
    shop.pull(27);
    shop.loosen(18);
    shop.loosen(9);
    expect(shop.bench.state().questions).toEqual([]);
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'again',
      pulls: [{ kind: 'tightening' }, { kind: 'loosening' }, { kind: 'loosening' }],
    });
    shop.pull(27);
    expect(shop.cylinder(1).torque).toBe('done');
  });

  it('keeps a proven cylinder when the loosening was something else', () => {
    const shop = workshop();
    shop.pull(27);
    shop.rest(4000);
    shop.loosen(18);
    shop.answer('handling');
    expect(shop.cylinder(1).torque).toBe('done');
    expect(shop.bench.state().strays).toHaveLength(1);
  });

  it('refuses an answer that does not fit, and changes nothing', () => {
    const shop = workshop();
    shop.pull(32);
    const before = shop.bench.state();
    const out = shop.give({ kind: 'command', command: { do: 'answer', pull: 1, answer: 'fresh' } });
    expect(out.ok).toBe(false);
    expect(shop.bench.state()).toBe(before);
  });

  it('goes to a chosen cylinder and comes back to the one that was left out', () => {
    const shop = workshop();
    shop.give({ kind: 'command', command: { do: 'choose-cylinder', quantity: 'torque', cylinder: 3 } });
    shop.pull(27);
    expect(shop.cylinder(3).torque).toBe('done');
    expect(shop.bench.state().torqueTarget).toBe(1);
  });
});

describe('a link or a program that stops', () => {
  it('never judges a pull whose link was lost in the middle', () => {
    const shop = workshop();
    shop.halfPull(27);
    shop.give({
      kind: 'link',
      tool: 'wrench',
      driver: 'test',
      source: 'linked',
      link: { state: 'lost', reason: 'out-of-reach' },
    });
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'ask',
      pulls: [{ kind: 'unsure', judgement: null, pull: { cut: 'link-lost' } }],
    });
    expect(shop.bench.state().questions[0]?.answers).toEqual(['refit', 'replace', 'handling']);
  });

  it('asks once about a pull whose readings came in pieces, and the question names the last piece', () => {
    const shop = workshop();
    shop.rest();
    shop.draw([
      { atMs: 0, nm: 0 },
      { atMs: 900, nm: 8 },
    ]);
    const brokeOffMs = 3010 + 910;
    for (const [i, nm] of [9, 10, 11].entries()) {
      shop.wait(brokeOffMs + 500 * (i + 1));
      shop.draw([{ atMs: 0, nm }]);
    }
    shop.wait(brokeOffMs + 500 * 4);
    shop.draw([{ atMs: 0, nm: 20 }, ...clickPull(10, 300, 27, 21, 21)]);
    shop.rest();
    const { questions } = shop.bench.state();
    expect(questions).toMatchObject([{ kind: 'cut', cylinder: 1, pull: 5 }]);
    expect(shop.cylinder(1).pulls.map(({ kind }) => kind)).toEqual([
      'run-down',
      'run-down',
      'run-down',
      'run-down',
      'unsure',
    ]);
    shop.answer('handling');
    expect(shop.bench.state().questions).toEqual([]);
    expect(shop.cylinder(1).torque).not.toBe('done');
  });

  it('asks about each of two pulls that broke off with time for another plug between them', () => {
    const shop = workshop();
    shop.rest();
    shop.halfPull(20);
    shop.wait(3010 + 910 + 3000);
    shop.halfPull(21);
    shop.wait(3010 + 910 + 3000 + 910 + 3000);
    shop.rest();
    expect(shop.bench.state().questions.map(({ kind, pull }) => [kind, pull])).toEqual([
      ['cut', 1],
      ['cut', 2],
    ]);
  });

  it('does not close while a pull is under way', () => {
    const shop = workshop();
    shop.halfPull(27);
    expect(shop.give({ kind: 'command', command: { do: 'close' } }).ok).toBe(false);
  });

  it('closes as not complete and says what is missing', () => {
    const shop = workshop();
    shop.gap(0.75);
    shop.pull(27);
    expect(openItems(shop.bench.state())).toContainEqual({ kind: 'gap-not-measured', cylinder: 2 });
    shop.give({ kind: 'command', command: { do: 'close' } });
    expect(shop.events.at(-1)).toMatchObject({ type: 'job-closed', complete: false });
  });

  it('keeps values that a tool does not know, and bytes nobody can read, without inventing a reading', () => {
    const shop = workshop();
    shop.give({ kind: 'reading', tool: 'wrench', reading: { kind: 'not-known', n: 1, atUs: 5 } });
    shop.give({
      kind: 'reading',
      tool: 'wrench',
      reading: { kind: 'raw', n: 2, atUs: 6, source: '2c0c', hex: '0102' },
    });
    shop.give({
      kind: 'reading',
      tool: 'wrench',
      reading: { kind: 'missed', n: 3, atUs: 90, fromUs: 6, reason: 'out-of-reach' },
    });
    expect(shop.events.slice(-3).map(({ type }) => type)).toEqual([
      'value-not-known',
      'raw-value',
      'readings-missed',
    ]);
    expect(shop.bench.state().pullCount).toBe(0);
  });
});
