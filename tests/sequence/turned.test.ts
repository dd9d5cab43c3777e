import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { place } from '../../src/sequence/place.ts';
import {
  type Before,
  type RiseShape,
  riseShape,
  turnedLogOdds,
  unevenness,
} from '../../src/sequence/turned.ts';
import { pullOf, riseBy, second } from './pulls.ts';

/** Torque against the turn of the handle: a spring of `nmPerDeg`, and behind it a joint or none. */
interface Joint {
  readonly nmPerDeg: number;
  /** Turn at a share of the torque of the click. */
  readonly givesDeg: (share: number) => number;
}

const CLICK_NM = 27;
const TIGHT: Joint['givesDeg'] = () => 0;
/** Share of its turn that a joint has taken at a share of the torque: a little softer at the bottom, or collapsing first. */
const USED: Joint['givesDeg'] = (share) => 32 * share ** 0.8;
const NEW: Joint['givesDeg'] = (share) => 200 * Math.max(0, (share - 0.12) / 0.88) ** 0.35;

/** A pull at a steady pace from the start to the click. */
function steadily({ nmPerDeg, givesDeg }: Joint, degPerS: number) {
  const atMs = (tenth: number) =>
    (1000 * ((tenth / 10) * (CLICK_NM / nmPerDeg) + givesDeg(tenth / 10))) / degPerS;
  const rise = riseBy([1, 2, 3, 4, 5, 6, 7, 8, 9].map(atMs));
  return pullOf({ rise, riseMs: atMs(8) - atMs(2), noiseNm: 0.03, intervalUs: 5000 });
}

const shapeOf = (joint: Joint, degPerS: number): RiseShape => riseShape(steadily(joint, degPerS));
/** Three plugs that this hand turned, at about the same pace. */
const turnedBefore = (givesDeg: Joint['givesDeg'], nmPerDeg: number): RiseShape[] =>
  [28, 36, 45].map((degPerS) => shapeOf({ nmPerDeg, givesDeg }, degPerS));

const paces = fc.double({ min: 5, max: 200, noNaN: true });
const springs = fc.double({ min: 0.5, max: 8, noNaN: true });

describe('a tight plug pulled again at a steady pace', () => {
  it('draws a straight line at any pace, through any extension', () => {
    fc.assert(
      fc.property(paces, springs, (degPerS, nmPerDeg) => {
        expect(unevenness(shapeOf({ nmPerDeg, givesDeg: TIGHT }, degPerS))).toBeLessThan(1e-6);
      }),
    );
  });

  it.each([
    ['new gaskets', NEW],
    ['used gaskets', USED],
  ])('proves no cylinder without a question after %s, the last one least of all', (_what, givesDeg) => {
    fc.assert(
      fc.property(paces, springs, fc.boolean(), (degPerS, nmPerDeg, lastOpen) => {
        const earlier = turnedBefore(givesDeg, nmPerDeg);
        const at = { ...second(), earlier, lastOpen };
        const { kind } = place(steadily({ nmPerDeg, givesDeg: TIGHT }, degPerS), at);
        expect(kind).toBe('unsure');
      }),
    );
  });

  it('proves none though nothing was tightened before it', () => {
    fc.assert(
      fc.property(paces, springs, (degPerS, nmPerDeg) => {
        const at = { ...second(), last: null, lastTight: null, target: 1 };
        expect(place(steadily({ nmPerDeg, givesDeg: TIGHT }, degPerS), at).kind).toBe('unsure');
      }),
    );
  });
});

describe('a tight plug under a hand that is the slower the more it pulls', () => {
  /** The pace falls in a line with the torque, by `tires` of itself up to the click. */
  function tiring({ nmPerDeg, givesDeg }: Joint, degPerS: number, tires: number) {
    const STEPS = 1000;
    let [ms, deg] = [0, 0];
    const reachedMs: number[] = [];
    for (let step = 1; step <= (9 * STEPS) / 10; step++) {
      const share = step / STEPS;
      const atDeg = share * (CLICK_NM / nmPerDeg) + givesDeg(share);
      ms += (1000 * (atDeg - deg)) / (degPerS * (1 - tires * share));
      deg = atDeg;
      if (step % (STEPS / 10) === 0) reachedMs.push(ms);
    }
    const riseMs = (reachedMs[7] ?? 0) - (reachedMs[1] ?? 0);
    return pullOf({ rise: riseBy(reachedMs), riseMs, noiseNm: 0.03, intervalUs: 5000 });
  }

  it.each([
    ['new gaskets', NEW],
    ['used gaskets', USED],
  ])('proves no cylinder without a question after %s', (_what, givesDeg) => {
    const tires = fc.double({ min: 0, max: 0.75, noNaN: true });
    const stiff = fc.double({ min: 1.2, max: 8, noNaN: true });
    // Whoever tries a plug that is tight does not pull longer at it than at one that turns.
    const quicker = fc.double({ min: 1, max: 6, noNaN: true });
    fc.assert(
      fc.property(tires, stiff, quicker, fc.boolean(), (tired, nmPerDeg, by, lastOpen) => {
        const earlier = [28, 36, 45].map((pace) => riseShape(tiring({ nmPerDeg, givesDeg }, pace, tired)));
        const at = { ...second(), earlier, lastOpen };
        expect(place(tiring({ nmPerDeg, givesDeg: TIGHT }, 36 * by, tired), at).kind).toBe('unsure');
      }),
    );
  });

  it('is no reason to doubt a plug that turns as the others did', () => {
    const earlier = [28, 36, 45].map((pace) => riseShape(tiring({ nmPerDeg: 4, givesDeg: USED }, pace, 0.5)));
    const pull = tiring({ nmPerDeg: 4, givesDeg: USED }, 33, 0.5);
    expect(place(pull, { ...second(), earlier }).kind).toBe('tightening');
  });
});

describe('a plug that turns', () => {
  const given = (earlier: readonly RiseShape[], more: Partial<Before> = {}): Before => ({
    earlier,
    refitted: false,
    lastOpen: true,
    ...more,
  });

  it('is known by a gasket that is crushed, before anything is known of the hand', () => {
    for (const nmPerDeg of [0.7, 2, 5])
      expect(turnedLogOdds(shapeOf({ nmPerDeg, givesDeg: NEW }, 150), given([]))).toBeGreaterThan(1);
  });

  it('is known on a hard seat by the plugs before it', () => {
    const earlier = turnedBefore(USED, 5);
    const odds = (degPerS: number) =>
      turnedLogOdds(shapeOf({ nmPerDeg: 5, givesDeg: USED }, degPerS), given(earlier));
    expect(odds(40)).toBeGreaterThan(3);
    expect(odds(40)).toBeGreaterThan(odds(150));
  });

  it('is not known through an extension so soft that it hides the joint', () => {
    const nmPerDeg = 0.3;
    const earlier = turnedBefore(USED, nmPerDeg);
    const odds = turnedLogOdds(shapeOf({ nmPerDeg, givesDeg: USED }, 36), given(earlier));
    expect(odds).toBeLessThan(
      turnedLogOdds(shapeOf({ nmPerDeg: 5, givesDeg: USED }, 36), given(turnedBefore(USED, 5))),
    );
  });

  it('with a gasket that was crushed before is not held against new ones', () => {
    const again = shapeOf({ nmPerDeg: 5, givesDeg: USED }, 60);
    const earlier = turnedBefore(NEW, 5);
    const odds = (refitted: boolean) => turnedLogOdds(again, given(earlier, { refitted }));
    expect(odds(true)).toBeGreaterThan(odds(false) + 2);
  });
});

describe('what is no proof of a turn', () => {
  it('is a rise that only slows down: a hand on a spring can do that', () => {
    const easing = riseShape(pullOf({ rise: riseBy([40, 80, 120, 165, 215, 275, 345, 440, 570]) }));
    const at = { earlier: turnedBefore(USED, 5), refitted: false, lastOpen: false };
    expect(turnedLogOdds(easing, at)).toBeLessThan(0);
    expect(turnedLogOdds(easing, { ...at, earlier: [] })).toBeLessThan(0);
  });

  it('is the shape of the others at a third of their time', () => {
    const earlier = turnedBefore(USED, 5);
    const quick = shapeOf({ nmPerDeg: 5, givesDeg: USED }, 130);
    expect(turnedLogOdds(quick, { earlier, refitted: false, lastOpen: false })).toBeLessThan(0.5);
  });
});
