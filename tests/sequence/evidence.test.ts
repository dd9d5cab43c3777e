import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../src/sequence/evidence.ts';
import { turnedBelow } from '../../src/sequence/measured-turn.ts';
import { slowdown } from '../../src/sequence/shape.ts';
import { pullOf, riseBy, tenths, turn } from './pulls.ts';

const KNOWN = { earlier: [], refitted: false, lastOpen: false, usualTurns: [], heldNm: 0, logOdds: 0 };
const HARDENS = [11, 222.345, 420, 560, 640, 700, 745, 780, 810];
const pull = pullOf({ riseMs: 557.655, rise: { ...riseBy(HARDENS), impulseNms: 8.123456 } });

describe('the evidence of a pull', () => {
  it('without an angle, on a plug that was not pulled before', () => {
    expect(evidenceOf(pull, null, KNOWN)).toMatchObject({
      // 60 % of 27 N·m in 557.655 ms; ln of 417.655 over 140 ms.
      riseNmPerS: 29.1,
      bend: 1.093,
      impulseNms: 8.123,
      workJ: null,
      angleDeg: null,
      sinceLastMs: null,
      heldRiseMs: null,
      slowdown: null,
      comparedWith: 0,
    });
    expect(Object.keys(evidenceOf(pull, null, KNOWN))).not.toContain('plugDeg');
  });

  it('with an angle, behind a stroke before', () => {
    const measured = { ...pull, ...turn(123.456, 0.5) };
    const { turned, ...rest } = evidenceOf(measured, 1234.6, { ...KNOWN, heldNm: 13.5 });
    expect(rest).toMatchObject({ sinceLastMs: 1235, workJ: 10, angleDeg: 135.5, plugDeg: 123.46 });
    // It stood up to half of the torque: nothing of the turn came below what it had held.
    expect(Math.abs(rest.belowHeldDeg ?? 99)).toBeLessThan(0.5);
    expect(turned).toBeGreaterThan(0.999);
    expect(evidenceOf(measured, 0, KNOWN)).not.toHaveProperty('belowHeldDeg');
    expect(evidenceOf(measured, 0, { ...KNOWN, heldNm: 0.5 })).toHaveProperty('belowHeldDeg');
  });
});

describe('how much slower it rose beyond what the plug had held', () => {
  const spring = pullOf({ rise: riseBy(tenths(600)), riseMs: 600 });
  it.each([
    [0.299 * 27, false],
    [0.301 * 27, true],
    [0.849 * 27, true],
    [0.851 * 27, false],
  ])('held %d of 27 N·m: told %s', (heldNm, told) => {
    expect(slowdown(spring, heldNm) !== null).toBe(told);
  });

  it('is the pace from there to 0.9 of the top over that from 0.3 to 0.9 of what it held', () => {
    // To 13.5 of 27 N·m: 0.3 of it at 15 % or 20 ms, 0.9 at 45 % or 80 ms; beyond, 40 % of the top in 300 ms.
    const bent = pullOf({ rise: riseBy([10, 30, 50, 70, 90, 165, 240, 315, 390]), riseMs: 285 });
    expect(slowdown(bent, 13.5)).toBeCloseTo(300 / (0.4 * 27) / (60 / (0.6 * 13.5)), 9);
    // Over within less than four readings on either side it says nothing; on one side it does.
    expect(slowdown({ ...bent, intervalUs: 75_000 }, 13.5)).not.toBeNull();
    expect(slowdown({ ...bent, intervalUs: 75_001 }, 13.5)).toBeNull();
  });

  it('is 1 on a spring, and above where it gave', () => {
    expect(slowdown(spring, 13.5)).toBeCloseTo(1, 1);
    const gave = pullOf({ rise: riseBy([30, 60, 90, 120, 150, 270, 390, 510, 630]), riseMs: 450 });
    expect(slowdown(gave, 13.5)).toBeGreaterThan(2);
  });
});

describe('how far a plug had turned by a torque', () => {
  const plug = turn(100).turn.plug ?? expect.fail('no turn');
  it('grows with it up to the whole, and is nothing where the turn is first counted', () => {
    expect(turnedBelow(plug, 27, 27)).toBe(100);
    expect(turnedBelow(plug, 27, 40)).toBe(100);
    // Plug and wind-up in a line: at nine tenths, at half, and between tenths.
    expect(turnedBelow(plug, 27, 24.3)).toBeCloseTo(90, 6);
    expect(turnedBelow(plug, 27, 13.5)).toBeCloseTo(50, 6);
    expect(turnedBelow(plug, 27, 14.85)).toBeCloseTo(55, 6);
    expect(turnedBelow(plug, 27, 26.9)).toBeCloseTo(99.63, 1);
  });

  it('cannot be said of several strokes, nor of one that ended where the turn is first counted', () => {
    expect(turnedBelow({ ...plug, windUpDeg: null }, 27, 13.5)).toBeNull();
    expect(turnedBelow(plug, 2, 1)).toBeNull();
  });
});
