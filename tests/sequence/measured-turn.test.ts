import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turnedBelow } from '../../src/sequence/measured-turn.ts';
import { place, type Situation } from '../../src/sequence/place.ts';
import { FIRST, pullOf, second, strokeTo, tightPull, turn } from './pulls.ts';

/** The last cylinder is due; the others turned by 20 degrees each. */
const LAST: Situation = { ...second(), lastOpen: true, target: 4, usualTurns: [19, 20, 21] };

describe('with an angle, whether the plug turned is measured', () => {
  it('a plug that turned is tightened, though the torque rose in a straight line', () => {
    expect(place(tightPull(turn(20)), LAST)).toMatchObject({ kind: 'tightening', cylinder: 4 });
    expect(place(tightPull(), LAST)).toMatchObject({ kind: 'unsure' });
  });

  it('a plug that stood is asked about, though the torque rose like that of a gasket', () => {
    expect(place(pullOf(turn(0.4)), LAST)).toMatchObject({ kind: 'unsure', ask: 'already-tight' });
    expect(place(pullOf(turn(0.4)), second())).toMatchObject({ kind: 'unsure', ask: 'already-tight' });
  });

  it('a plug that stood is asked about even as the first of all', () => {
    expect(place(pullOf(turn(0)), FIRST)).toMatchObject({ kind: 'unsure', ask: 'already-tight' });
  });

  it('never is a pull believed that turned less than a tight plug may give', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 2.5, noNaN: true }),
        fc.integer({ min: 60, max: 4000 }),
        (deg, riseMs) => {
          for (const at of [LAST, second(), FIRST])
            expect(place(pullOf({ riseMs, ...turn(deg) }), at).kind).toBe('unsure');
        },
      ),
    );
  });

  it('what was turned is in the evidence', () => {
    expect(place(pullOf(turn(20)), second()).evidence).toMatchObject({ plugDeg: 20 });
    expect(place(pullOf(), second()).evidence?.plugDeg).toBeUndefined();
  });

  it('soon after another one, a plug that turned is the next', () => {
    expect(place(pullOf(turn(20)), second(1000))).toMatchObject({ kind: 'tightening', cylinder: 2 });
  });

  it('when all are done, one that stood was a check, and one that turned was loose', () => {
    const done: Situation = { ...second(), target: null };
    expect(place(pullOf(turn(0.3)), done)).toMatchObject({ kind: 'check' });
    expect(place(pullOf(turn(30)), done)).toMatchObject({ kind: 'unsure', ask: 'loose' });
  });
});

describe('going on from what a plug had held, measured', () => {
  const short: Situation = { ...second(), started: 'short', startedNm: 15, startedTurning: true };

  it('it stood up to there and gave beyond: the same plug', () => {
    expect(place(pullOf(turn(12, 15 / 27)), short)).toMatchObject({ kind: 'continuation', cylinder: 2 });
  });

  it('it turned from loose: another one', () => {
    expect(place(pullOf(turn(20)), short)).toMatchObject({ kind: 'unsure', ask: 'other-plug' });
  });

  it('it stood all the way: a tight one', () => {
    expect(place(pullOf(turn(0.3)), short)).toMatchObject({ kind: 'unsure', ask: 'other-plug' });
  });

  it('a stroke is not believed to have gone on from the one before if it did not turn', () => {
    const stroke: Situation = {
      ...second(),
      started: 'stroke',
      startedNm: 12,
      startedTurning: true,
      last: { cylinder: 2, endUs: 9_500_000, asked: null, tight: false, short: true, knock: 0 },
    };
    expect(place(pullOf(turn(9, 12 / 27)), stroke)).toMatchObject({ kind: 'tightening', cylinder: 2 });
    expect(place(pullOf(turn(0.2)), stroke)).toMatchObject({ kind: 'unsure', ask: 'already-tight' });
  });

  it('a low stroke that turned a plug from loose is on the next one', () => {
    const round: Situation = { ...short, next: 3 };
    expect(place(strokeTo(14, turn(60)), round)).toMatchObject({ kind: 'run-down', cylinder: 3 });
  });
});

describe('how far a plug had turned by a torque', () => {
  it('is its own share, without the wind-up', () => {
    const { plug } = turn(24, 0.5, 30).turn;
    if (plug === undefined) throw new Error('no turn');
    expect(turnedBelow(plug, 27, 13.5)).toBeCloseTo(0, 6);
    expect(turnedBelow(plug, 27, 0.75 * 27)).toBeCloseTo(12, 6);
    expect(turnedBelow(plug, 27, 30)).toBe(24);
  });

  it('cannot be said where it took several strokes', () => {
    const { plug } = turn(24).turn;
    if (plug === undefined) throw new Error('no turn');
    expect(turnedBelow({ ...plug, windUpDeg: null }, 27, 13)).toBeNull();
  });
});

describe('two tools that both send torque', () => {
  it('are asked about where one pull began before the other had ended', () => {
    const other = { ...second(), last: { ...(second().last ?? expect.fail('no pull')), endUs: 10_500_000 } };
    expect(place(pullOf(turn(20)), other)).toMatchObject({ kind: 'unsure', because: 'two-tools-at-once' });
  });
});
