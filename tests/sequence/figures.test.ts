/**
 * The odds of the rules, figure by figure. A changed coefficient changes verdicts: whoever means to change one measures it
 * (`npm run bench -- kinds`), and writes the new odds here.
 */
import { describe, expect, it } from 'vitest';
import { measuredLogOdds } from '../../src/sequence/measured-turn.ts';
import { beforehand, surelyTurned } from '../../src/sequence/odds.ts';
import { knockProbability } from '../../src/sequence/shape.ts';
import { type RiseShape, riseShape, turnedLogOdds, usualRiseMs } from '../../src/sequence/turned.ts';
import { pullOf, riseBy } from './pulls.ts';

/** Milliseconds at which the tenths of the top were reached. */
const RISES = {
  'a straight line': [30, 60, 90, 120, 150, 180, 210, 240, 270],
  'a slow straight line': [300, 600, 900, 1200, 1500, 1800, 2100, 2400, 2700],
  'a hard seat': [60, 112, 160, 200, 235, 270, 300, 330, 358],
  'a gasket': [20, 220, 420, 560, 640, 700, 745, 780, 810],
  'a gasket that collapses': [15, 700, 1050, 1150, 1200, 1240, 1275, 1305, 1330],
  'a hand that hesitates': [25, 50, 75, 100, 300, 330, 360, 390, 420],
} as const;
type Name = keyof typeof RISES;
const shapeOf = (name: Name, noiseNm = 0.03): RiseShape =>
  riseShape(pullOf({ rise: riseBy([...RISES[name]]), noiseNm, intervalUs: 10_000 }));
const EARLIER = [
  shapeOf('a gasket'),
  riseShape(pullOf({ rise: riseBy([30, 200, 380, 520, 600, 660, 705, 745, 780]), noiseNm: 0.03 })),
  riseShape(pullOf({ rise: riseBy([10, 260, 470, 600, 690, 740, 780, 820, 850]), noiseNm: 0.03 })),
];
const NEVER = { earlier: [], refitted: false, lastOpen: false };
const BEFORE = {
  'first of all': NEVER,
  'first and last': { ...NEVER, lastOpen: true },
  'after three gaskets': { ...NEVER, earlier: EARLIER },
  'after three gaskets, the last': { earlier: EARLIER, refitted: false, lastOpen: true },
  'after three gaskets, fitted again': { earlier: EARLIER, refitted: true, lastOpen: false },
} as const;

describe('ln of the odds that a plug turned', () => {
  it('by the rise alone', () => {
    const odds = Object.fromEntries(
      Object.entries(BEFORE).map(([when, before]) => [
        when,
        Object.fromEntries(
          (Object.keys(RISES) as Name[]).map((name) => [
            name,
            Number(turnedLogOdds(shapeOf(name), before).toFixed(4)),
          ]),
        ),
      ]),
    );
    expect(odds).toMatchInlineSnapshot(`
      {
        "after three gaskets": {
          "a gasket": 20.2669,
          "a gasket that collapses": 15.6387,
          "a hand that hesitates": 1.6993,
          "a hard seat": -9.4834,
          "a slow straight line": -17.3434,
          "a straight line": -15.4594,
        },
        "after three gaskets, fitted again": {
          "a gasket": 19.574,
          "a gasket that collapses": 16.6773,
          "a hand that hesitates": 1.7153,
          "a hard seat": -1.7023,
          "a slow straight line": -5.201,
          "a straight line": -3.7434,
        },
        "after three gaskets, the last": {
          "a gasket": 13.9041,
          "a gasket that collapses": 7.3788,
          "a hand that hesitates": -1.3067,
          "a hard seat": -8.7361,
          "a slow straight line": -18.5473,
          "a straight line": -16.317,
        },
        "first and last": {
          "a gasket": 7.3327,
          "a gasket that collapses": 11.4286,
          "a hand that hesitates": 0.2141,
          "a hard seat": 2.0389,
          "a slow straight line": -5.7186,
          "a straight line": -3.8775,
        },
        "first of all": {
          "a gasket": 7.3327,
          "a gasket that collapses": 11.4286,
          "a hand that hesitates": 0.2141,
          "a hard seat": 2.0389,
          "a slow straight line": -5.7186,
          "a straight line": -3.8775,
        },
      }
    `);
  });

  it('is the less sure the more the readings waver and the fewer there are', () => {
    const of = (noiseNm: number) => turnedLogOdds(shapeOf('a hard seat', noiseNm), NEVER);
    expect([0.01, 0.1, 0.5].map((noise) => Number(of(noise).toFixed(4)))).toMatchInlineSnapshot(`
      [
        2.0397,
        2.0301,
        1.6517,
      ]
    `);
  });

  it('the usual time is the geometric mean of the times before', () => {
    const times = [560, 545, 560].map((ms) => ms);
    const product = times.reduce((all, ms) => all * ms, 1);
    expect(usualRiseMs(EARLIER)).toBeCloseTo(product ** (1 / 3), 6);
  });

  it('by the angle: nothing below a degree, all from ten on, and more is needed where plugs turn far', () => {
    const plug = (turnedDeg: number) => ({
      turnedDeg,
      standardDeg: 0.2,
      fromNm: 2,
      windUpDeg: 5,
      reachedDeg: [1, 2, 3, 4, 5, 6, 7, 8, 9],
    });
    const of = (turnedDeg: number, usual: readonly number[]) =>
      Number(measuredLogOdds(plug(turnedDeg), usual).toFixed(4));
    const degs = [-1, 0, 1, 2, 4, 6, 10, 20, 180];
    expect({
      alone: degs.map((deg) => of(deg, [])),
      gaskets: degs.map((deg) => of(deg, [210, 190, 200])),
    }).toMatchInlineSnapshot(`
      {
        "alone": [
          -10.3944,
          -9.4059,
          -7.4116,
          -4.5085,
          0.4392,
          3.528,
          7.0549,
          11.8336,
          27.1889,
        ],
        "gaskets": [
          -8.6364,
          -7.6478,
          -6.6431,
          -5.6179,
          -3.7982,
          -2.6705,
          -1.1874,
          2.0332,
          16.6509,
        ],
      }
    `);
    // The middle one counts, in whatever order they came.
    expect(of(4, [10, 300, 200])).toBe(of(4, [300, 200, 10]));
    expect(of(4, [10, 200, 300])).toBe(of(4, [200, 200, 200]));
  });

  it('what is likely beforehand: 1 in 2000, 50, 300, 15 and 4 tries a tight plug, 1 in 20 the trial', () => {
    const due = { target: 2, refitted: false, lastOpen: false, lastTight: 1, trial: false } as const;
    const odds = (change: Partial<Parameters<typeof beforehand>[0]>, soon = false) =>
      Math.exp(beforehand({ ...due, ...change }, soon));
    expect(odds({ target: null })).toBe(1);
    expect(odds({ lastTight: null })).toBeCloseTo(2000, 9);
    expect(odds({})).toBeCloseTo(50, 9);
    expect(odds({}, true)).toBeCloseTo(15, 9);
    expect(odds({ refitted: true })).toBeCloseTo(300, 9);
    expect(odds({ refitted: true, lastOpen: true })).toBeCloseTo(50, 9);
    expect(odds({ lastOpen: true })).toBeCloseTo(4, 9);
    expect(odds({ trial: true })).toBeCloseTo(1 / 20, 9);
  });

  it('what may be believed: 0.98, or 0.965 of a rise surely bent; nothing of a straight line', () => {
    const evidence = (turned: number, uneven: number, plugDeg?: number) =>
      surelyTurned({
        riseNmPerS: 40,
        bend: 0,
        impulseNms: 5,
        workJ: null,
        angleDeg: null,
        sinceLastMs: null,
        heldRiseMs: null,
        slowdown: null,
        uneven,
        turned,
        knock: 0,
        ...(plugDeg !== undefined && { plugDeg }),
      });
    expect([evidence(0.98, 0.1), evidence(0.9799, 0.1)]).toEqual([true, false]);
    expect([evidence(0.965, 0.15), evidence(0.9649, 0.15)]).toEqual([true, false]);
    expect([evidence(0.97, 0.149), evidence(1, 0.0399), evidence(1, 0.04)]).toEqual([false, false, true]);
    // Measured, the shape of the rise does not count.
    expect([evidence(0.98, 0, 90), evidence(0.9799, 0.5, 90)]).toEqual([true, false]);
    expect(surelyTurned(undefined)).toBe(false);
  });

  it('that a stroke was a knock', () => {
    const knocks = [20, 60, 120, 300].flatMap((riseMs) =>
      [3, 12, 25].map((peakNm) =>
        Number(
          knockProbability(
            pullOf({
              peakNm,
              releaseNm: null,
              release: 'none',
              riseMs,
              startUs: 1_000_000,
              peakUs: 1_000_000 + 2000 * riseMs,
              endUs: 1_000_000 + 4000 * riseMs,
            }),
          ).toFixed(5),
        ),
      ),
    );
    expect(knocks).toMatchInlineSnapshot(`
      [
        1,
        1,
        1,
        0.99841,
        0.99841,
        0.99841,
        0.00168,
        0.00168,
        0.00168,
        0,
        0,
        0,
      ]
    `);
  });
});
