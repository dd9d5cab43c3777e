import { describe, expect, it } from 'vitest';
import { coachingFor } from '../../src/job/coaching.ts';
import type { JobState } from '../../src/job/state.ts';
import type { Pull } from '../../src/pull/pull.ts';
import { A_PULL } from '../pull/a-pull.ts';
import { exampleOrder, INSTRUMENTS, workshop } from './workshop.ts';

const order = exampleOrder(4);
const { angle: _angle, ...unadvised } = order.specification;
type PlugOf = Partial<typeof order.plug>;

/** A shop whose order is for such plugs. */
const shopFor = (plug: PlugOf = {}, angle?: string) => {
  const { gasket: _gasket, ...rest } = order.plug;
  const specification = angle === undefined ? unadvised : { ...unadvised, angle };
  return workshop({ ...order, plug: { ...rest, seat: 'gasket', ...plug }, specification });
};

/** The same with a pull as it might have been; the workshop's wrench tells no angle. */
function with_(state: JobState, number: number, change: Partial<Pull>): JobState {
  const cylinders = state.cylinders.map((c) => ({
    ...c,
    pulls: c.pulls.map((one) =>
      one.pull.pull === number ? { ...one, pull: { ...one.pull, ...change } } : one,
    ),
  }));
  return { ...state, cylinders };
}

const turned = (deg: number) => ({
  turn: { startToPeakDeg: deg + 5, from10PercentDeg: deg, from50PercentDeg: 0.3 * deg, workJ: 20 },
});
const kinds = (state: JobState, pull: number) => coachingFor(state, pull).map(({ kind }) => kind);

describe('what a technician is told of a pull', () => {
  it('is nothing for a good one, and nothing for one that is not there', () => {
    const shop = shopFor({ seat: 'conical' });
    shop.pull(27);
    expect(coachingFor(shop.bench.state(), 1)).toEqual([]);
    expect(coachingFor(shop.bench.state(), 9)).toEqual([]);
  });

  it('is that it was pulled too fast, where the wrench clicks', () => {
    const shop = shopFor({ seat: 'conical' });
    shop.pull(27);
    const state = with_(shop.bench.state(), 1, { rise: { ...A_PULL.rise, slopeAtTopNmPerS: 200 } });
    expect(kinds(state, 1)).toEqual([]);
    const instruments = INSTRUMENTS.map((one) => ({ ...one, type: 'setting' as const }));
    expect(kinds({ ...state, instruments }, 1)).toEqual(['too-fast-ms']);
  });

  it.each<[string, PlugOf, number, string[]]>([
    ['a new gasket that hardly turned', { gasket: 'new' }, 30, ['turned-too-little-deg']],
    ['a plug without a word on its gasket is a new one', {}, 30, ['turned-too-little-deg']],
    ['a used gasket', { gasket: 'used' }, 30, []],
    ['a used gasket that turned as far as a new one', { gasket: 'used' }, 200, ['turned-too-far-deg']],
    ['a used plug without a word on its gasket', { condition: 'used' }, 200, []],
    ['a conical seat', { seat: 'conical' }, 28, []],
    ['a conical seat that turned like a gasket', { seat: 'conical' }, 200, ['turned-too-far-deg']],
  ])('goes by what the plug seats on: %s', (_what, plug, deg, told) => {
    const shop = shopFor(plug);
    shop.pull(27);
    expect(kinds(with_(shop.bench.state(), 1, turned(deg)), 1)).toEqual(told);
  });

  it('goes by the turn that the specification advises, until the gasket was pulled down once', () => {
    const shop = shopFor({ gasket: 'new' }, '1/6 turn');
    shop.pull(32);
    shop.answer('refit');
    shop.loosen(18);
    shop.pull(27);
    const state = shop.bench.state();
    expect(kinds(with_(state, 1, turned(65)), 1)).toEqual([]);
    expect(kinds(with_(state, 1, turned(200)), 1)).toEqual(['turned-too-far-deg']);
    expect(kinds(with_(state, 3, turned(30)), 3)).toEqual([]);
    expect(kinds(with_(state, 2, turned(200)), 2)).toEqual([]);
  });

  it('takes a replaced plug for a new one', () => {
    const shop = shopFor({ gasket: 'new' });
    shop.pull(32);
    shop.answer('replace');
    shop.loosen(18);
    shop.pull(27);
    expect(kinds(with_(shop.bench.state(), 3, turned(30)), 3)).toEqual(['turned-too-little-deg']);
  });

  it('does not go by the turn of a plug that took several strokes, or was tight already', () => {
    const shop = shopFor({ gasket: 'new' });
    shop.stopShort(12);
    shop.goOn(12, 27);
    shop.again(27.2);
    expect(shop.cylinder(1).pulls.map(({ kind }) => kind)).toEqual(['run-down', 'tightening', 'rehit']);
    for (const pull of [1, 2, 3])
      expect(kinds(with_(shop.bench.state(), pull, turned(30)), pull)).toEqual([]);
  });

  it('is that the torque rose early, where the wrench tells no angle', () => {
    const shop = shopFor({ gasket: 'new' });
    shop.pull(27);
    const even = [50, 100, 200, 300, 400, 500, 600, 700, 800];
    const state = with_(shop.bench.state(), 1, { rise: { ...A_PULL.rise, reachedMs: even } });
    expect(kinds(state, 1)).toEqual(['early-torque']);
    expect(kinds({ ...state, order: { ...order, plug: { ...order.plug, seat: 'conical' } } }, 1)).toEqual([]);
  });
});
