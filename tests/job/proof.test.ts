import { describe, expect, it } from 'vitest';
import { figuresOf, isProvenThroughout, marksOf, proofOf, WORTH } from '../../src/job/proof.ts';
import { replay } from '../../src/job/replay.ts';
import { proofText, unprovenText } from '../../src/report/words/index.ts';
import { exampleOrder, workshop } from './workshop.ts';

const none = { linked: 0, typed: 0, replayed: 0, simulated: 0 };
const order = exampleOrder(4);

it('a figure proves only where an instrument sent it, and what was played or simulated is worth nothing', () => {
  expect(WORTH).toEqual({ linked: 'proven', typed: 'attested', replayed: 'nothing', simulated: 'nothing' });
});

describe('a job', () => {
  it('whose figures all come from linked instruments is proven throughout', () => {
    const shop = workshop();
    for (const _ of order.engine.serviceOrder) shop.gap(0.75);
    for (const _ of order.engine.serviceOrder) shop.pull(27);
    expect(isProvenThroughout(shop.bench.state())).toBe(true);
    expect(figuresOf(shop.bench.state())).toEqual({
      torque: { ...none, linked: 4 },
      gap: { ...none, linked: 4 },
    });
  });

  it('counts what cylinders stand on, not what was tried', () => {
    const shop = workshop();
    shop.gap(0.9);
    shop.gap(0.75);
    shop.stopShort(12);
    expect(figuresOf(shop.bench.state())).toEqual({ torque: none, gap: { ...none, linked: 1 } });
  });

  it('in which a recording took the place of the wrench is marked, also for the figures before and after', () => {
    const shop = workshop();
    shop.pull(27);
    shop.join('replayed');
    shop.pull(27);
    shop.join('linked');
    shop.pull(27);
    const state = shop.bench.state();
    expect(figuresOf(state).torque).toEqual({ ...none, linked: 2, replayed: 1 });
    expect([state.sources, marksOf(state.sources)]).toEqual([['linked', 'replayed'], ['replayed']]);
    expect(isProvenThroughout(state)).toBe(false);
    const again = replay(shop.events);
    expect(again.ok && again.value.state()).toEqual(state);
  });

  it('says of figures that were typed who attests each, also after it was handed over', () => {
    const shop = workshop();
    shop.join('typed');
    shop.gap(0.75);
    shop.give({ kind: 'command', command: { do: 'hand-over', to: 'B. Second' } });
    shop.gap(0.75);
    const proof = proofOf(shop.bench.state());
    expect(proof.attestedBy).toEqual([order.technician, 'B. Second']);
    expect(proofText(proof)).toBe(
      `2 gaps typed by ${order.technician}, B. Second, attested, not proven by an instrument`,
    );
  });

  it('whose gaps were tried with wires rests on what a person says', () => {
    const wires = { go: '0.72 mm', noGo: '0.78 mm', within: '0.003 mm' };
    const { specification } = order;
    const shop = workshop({
      ...order,
      specification: { ...specification, gapRules: { check: 'wire', wires } },
    });
    shop.give({ kind: 'command', command: { do: 'gap-wire', cylinder: 1, outcome: 'fits' } });
    expect(figuresOf(shop.bench.state()).gap).toEqual({ ...none, typed: 1 });
    expect(shop.bench.state().sources).toEqual(['linked', 'typed']);
  });

  it('of two steps stands on the weaker of both', () => {
    const specification = {
      ...order.specification,
      torque: '15-20 N·m',
      tightenFirst: '25-30 N·m',
      checkedBy: 'A. Foreman',
    };
    const shop = workshop({ ...order, specification });
    shop.join('replayed');
    shop.pull(27);
    shop.loosen(15);
    shop.join('linked');
    shop.pull(17.5);
    expect(shop.cylinder(1).torque).toBe('done');
    expect(figuresOf(shop.bench.state()).torque).toEqual({ ...none, replayed: 1 });
  });
});

it('many jobs are counted by what they rest on', () => {
  expect(unprovenText({ of: 5, simulated: 0, replayed: 0, typed: 0 })).toBe('');
  expect(unprovenText({ of: 5, simulated: 1, replayed: 2, typed: 3 })).toBe(
    'SIMULATED: 1 of 5 jobs; these prove nothing about any engine. REPLAYED: 2 of 5 jobs; these prove nothing about any engine. Figures of 3 of 5 jobs were typed: attested by a person, NOT proven by an instrument.',
  );
});
