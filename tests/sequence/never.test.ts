/** What no placement may ever do, whatever the situation: held against thousands of them, drawn anew from every figure that decides. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DetectedPull } from '../../src/pull/pull.ts';
import { asProven, type Placement, place, type Situation } from '../../src/sequence/place.ts';
import { settle } from '../../src/sequence/settle.ts';
import { FIRST, pullOf, riseBy, strokeTo, tenths } from './pulls.ts';

const CYLINDERS = [1, 2, 3, 4] as const;
const cylinder = fc.constantFrom(...CYLINDERS);
const maybe = fc.option(cylinder, { nil: null });
const chance = fc.double({ min: 0, max: 1, noNaN: true });

const situations: fc.Arbitrary<Situation> = fc
  .record({
    target: maybe,
    lastOpen: fc.boolean(),
    started: fc.constantFrom(null, 'stroke' as const, 'short' as const),
    startedNm: fc.double({ min: 0, max: 29, noNaN: true }),
    startedTurning: fc.boolean(),
    refitted: fc.boolean(),
    next: maybe,
    refitting: maybe,
    lastTight: maybe,
    asking: maybe,
    chosen: maybe,
    clicks: fc.boolean(),
    last: fc.option(
      fc.record({
        cylinder,
        endUs: fc.integer({ min: 0, max: 10_000_000 }),
        asked: fc.constantFrom(null, 'which' as const, 'no-click' as const),
        tight: fc.boolean(),
        short: fc.boolean(),
        knock: chance,
      }),
      { nil: null },
    ),
  })
  .map((drawn) => ({ ...FIRST, ...drawn }));

const rises = fc.record({
  ms: fc.integer({ min: 20, max: 2000 }),
  bend: fc.double({ min: -1, max: 1.5, noNaN: true }),
});
const peaks = fc.double({ min: -35, max: 40, noNaN: true });
const pulls: fc.Arbitrary<DetectedPull> = fc
  .record({ rise: rises, peak: peaks, clicked: fc.boolean(), saturated: fc.boolean(), cut: fc.boolean() })
  .map(({ rise: { ms, bend }, peak, clicked, saturated, cut }) => {
    const change = {
      riseMs: ms,
      rise: riseBy(tenths(ms, bend)),
      saturated,
      cut: cut ? ('link-lost' as const) : null,
    };
    return clicked && peak > 0
      ? pullOf({ peakNm: peak, highestNm: peak, releaseNm: peak, ...change })
      : strokeTo(peak, change);
  });

const proves = ({ kind }: Placement) => kind === 'tightening' || kind === 'continuation';
const always = (holds: (pull: DetectedPull, at: Situation) => void, drawn = pulls) =>
  fc.assert(fc.property(drawn, situations, holds), { numRuns: 1500 });

describe('whatever the situation', () => {
  it('a pull at the end of the scale, or whose end is missing, proves no plug', () => {
    always((pull, at) => {
      if (pull.saturated || pull.cut !== null) expect(proves(place(pull, at))).toBe(false);
    });
  });

  it('nothing is proven while a question is open, nor when no cylinder is due', () => {
    always((pull, at) => {
      const placement = place(pull, at);
      if (at.asking !== null || at.target === null) expect(proves(placement)).toBe(false);
      if (proves(placement)) expect(placement.cylinder).toBe(at.target);
    });
  });

  it('loosening proves nothing, and too little torque is given to no plug', () => {
    always((pull, at) => {
      const placement = place(pull, at);
      if (pull.peakNm < 0) expect(proves(placement)).toBe(false);
      if (placement.because === 'too-little-torque') expect(placement).toMatchObject({ cylinder: null });
    });
  });

  it('a torque above the window is never a stroke on the way', () => {
    always((pull, at) => {
      if (pull.peakNm > at.upperNm) expect(place(pull, at).kind).not.toBe('run-down');
    });
  });

  it('a straight rise proves no plug that nothing was pulled on before', () => {
    const straight = fc
      .integer({ min: 20, max: 3000 })
      .map((ms) => pullOf({ riseMs: ms, rise: riseBy(tenths(ms)) }));
    always((pull, at) => {
      if (at.started === null) expect(proves(place(pull, at))).toBe(false);
    }, straight);
  });

  it('what is asked names its question and its cylinder, and only that is asked', () => {
    always((pull, at) => {
      const { kind, ask, cylinder: about } = place(pull, at);
      expect(ask !== undefined).toBe(kind === 'unsure');
      if (kind === 'unsure') expect(about).not.toBeNull();
      if (kind === 'handling') expect(about).toBeNull();
    });
  });
});

describe('a stroke that nothing followed', () => {
  const at = { lowerNm: 25, short: false };
  const knock = (share: number) => ({
    ...(place(pullOf(), FIRST).evidence ?? expect.fail('none')),
    knock: share,
  });
  it.each<[what: string, nm: number, knock: number, kind: string, because: string]>([
    ['below a fifth of the lower limit', 4.99, 0, 'handling', 'too-little-torque'],
    ['from a fifth of it on, where a wrench may have been leaned on', 5, 0, 'unsure', 'knock-or-short'],
    ['higher than anybody leans on a wrench', 11.25, 0, 'tightening', 'stopped-short'],
    ['low and surely a knock', 22.49, 0.98, 'handling', 'knock'],
    ['low and perhaps a knock', 22.49, 0.97, 'unsure', 'knock-or-short'],
    ['low and as surely a stroke as it takes', 22.49, 0.02, 'tightening', 'stopped-short'],
    ['too high for a knock', 22.5, 1, 'tightening', 'stopped-short'],
    ['just below the window', 24.99, 0, 'tightening', 'stopped-short'],
    ['in the window without a click', 25, 0, 'unsure', 'no-click-and-nothing-followed'],
  ])('%s', (_what, nm, share, kind, because) => {
    expect(settle(strokeTo(nm), 2, knock(share), at)).toMatchObject({ kind, because });
    expect(settle(strokeTo(nm), 2, knock(share), at).cylinder).toBe(kind === 'handling' ? null : 2);
  });

  it('goes on with a plug that had stopped short before, and needs no evidence for that', () => {
    expect(settle(strokeTo(20), 2, undefined, { ...at, short: true })).toEqual({
      cylinder: 2,
      kind: 'continuation',
      because: 'stopped-short',
    });
  });
});

describe('a placement that a person made', () => {
  const given = (kind: Placement['kind']): Placement => ({ cylinder: 2, kind, because: 'plug-turned' });
  it.each<[string, Partial<DetectedPull>, Placement['kind'], string]>([
    ['a whole pull', {}, 'tightening', 'tightening'],
    ['one whose end is missing', { cut: 'link-lost' }, 'tightening', 'unsure'],
    ['the same as a continuation', { cut: 'stopped' }, 'continuation', 'unsure'],
    ['the same as a re-hit', { cut: 'link-lost' }, 'rehit', 'rehit'],
    ['one at the end of the scale', { saturated: true }, 'tightening', 'unsure'],
    ['the same as a re-hit: it may have gone too far', { saturated: true }, 'rehit', 'unsure'],
    ['the same as loosening', { saturated: true }, 'loosening', 'loosening'],
  ])('%s', (_what, change, kind, stands) => {
    expect(asProven(pullOf(change), given(kind)).kind).toBe(stands);
  });

  it('on no cylinder stays there', () => {
    const nowhere: Placement = { cylinder: null, kind: 'handling', because: 'knock' };
    expect(asProven(pullOf({ saturated: true, cut: 'link-lost' }), nowhere)).toEqual(nowhere);
  });
});
