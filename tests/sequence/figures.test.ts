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
  'a hand that tires on a spring': [40, 84, 133, 188, 250, 322, 407, 510, 640],
  'a hard seat under a hand that tires': [75, 145, 213, 280, 348, 420, 500, 590, 695],
  'a check': [25, 49, 72, 94, 116, 137, 158, 178, 198],
} as const;
type Name = keyof typeof RISES;
const shapeOf = (name: Name, noiseNm = 0.03): RiseShape =>
  riseShape(pullOf({ rise: riseBy([...RISES[name]]), noiseNm, intervalUs: 10_000 }));
const EARLIER = [
  shapeOf('a gasket'),
  riseShape(pullOf({ rise: riseBy([30, 200, 380, 520, 600, 660, 705, 745, 780]), noiseNm: 0.03 })),
  riseShape(pullOf({ rise: riseBy([10, 260, 470, 600, 690, 740, 780, 820, 850]), noiseNm: 0.03 })),
];
const SEATS = ['a hard seat', 'a hard seat under a hand that tires', 'a hard seat'] as const;
const NEVER = { earlier: [], refitted: false, lastOpen: false };
const BEFORE = {
  'first of all': NEVER,
  'first and last': { ...NEVER, lastOpen: true },
  'after one gasket': { ...NEVER, earlier: EARLIER.slice(0, 1) },
  'after three hard seats': { ...NEVER, earlier: SEATS.map((name) => shapeOf(name)) },
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
        "after one gasket": {
          "a check": -12.3881,
          "a gasket": 14.1012,
          "a gasket that collapses": 9.3075,
          "a hand that hesitates": 1.1808,
          "a hand that tires on a spring": -8.319,
          "a hard seat": -6.6236,
          "a hard seat under a hand that tires": -6.5514,
          "a slow straight line": -13.8776,
          "a straight line": -12.1838,
        },
        "after three gaskets": {
          "a check": -16.0513,
          "a gasket": 14.4131,
          "a gasket that collapses": 7.8893,
          "a hand that hesitates": -0.8501,
          "a hand that tires on a spring": -9.8776,
          "a hard seat": -9.4465,
          "a hard seat under a hand that tires": -8.0527,
          "a slow straight line": -17.3435,
          "a straight line": -15.4463,
        },
        "after three gaskets, fitted again": {
          "a check": -3.2108,
          "a gasket": 13.7201,
          "a gasket that collapses": 8.9279,
          "a hand that hesitates": -0.8341,
          "a hand that tires on a spring": -5.86,
          "a hard seat": -1.6654,
          "a hard seat under a hand that tires": 0.3663,
          "a slow straight line": -5.2011,
          "a straight line": -3.7304,
        },
        "after three gaskets, the last": {
          "a check": -15.9114,
          "a gasket": 14.4143,
          "a gasket that collapses": 7.8895,
          "a hand that hesitates": -0.8136,
          "a hand that tires on a spring": -9.8762,
          "a hard seat": -8.7858,
          "a hard seat under a hand that tires": -7.6444,
          "a slow straight line": -18.5473,
          "a straight line": -16.3207,
        },
        "after three hard seats": {
          "a check": -2.1422,
          "a gasket": 2.9127,
          "a gasket that collapses": 2.038,
          "a hand that hesitates": 3.2399,
          "a hand that tires on a spring": -3.2496,
          "a hard seat": 2.9478,
          "a hard seat under a hand that tires": 1.12,
          "a slow straight line": -9.7336,
          "a straight line": -1.7261,
        },
        "first and last": {
          "a check": -1.8597,
          "a gasket": 5.7942,
          "a gasket that collapses": 9.309,
          "a hand that hesitates": -1.045,
          "a hand that tires on a spring": -5.1778,
          "a hard seat": 2.0331,
          "a hard seat under a hand that tires": 1.3734,
          "a slow straight line": -5.7181,
          "a straight line": -3.8749,
        },
        "first of all": {
          "a check": -1.8597,
          "a gasket": 5.7942,
          "a gasket that collapses": 9.309,
          "a hand that hesitates": -1.045,
          "a hand that tires on a spring": -5.1778,
          "a hard seat": 2.0331,
          "a hard seat under a hand that tires": 1.3734,
          "a slow straight line": -5.7181,
          "a straight line": -3.8749,
        },
      }
    `);
  });

  it('is the less sure the more the readings waver and the fewer there are', () => {
    const of = (noiseNm: number) => turnedLogOdds(shapeOf('a hard seat', noiseNm), NEVER);
    expect([0.01, 0.1, 0.5].map((noise) => Number(of(noise).toFixed(4)))).toMatchInlineSnapshot(`
      [
        2.0338,
        2.0251,
        1.6601,
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

  it('rest on time and paces as ln, and on what noise and steps leave open of a pace', () => {
    const { time, paces, blur } = shapeOf('a gasket', 0.1);
    // 220 to 780 ms; fifths of 400, 220, 105 and 65 ms against their geometric mean.
    expect(time).toBeCloseTo(Math.log(560), 9);
    const geometric = (Math.log(400) + Math.log(220) + Math.log(105) + Math.log(65)) / 4;
    [400, 220, 105, 65].forEach((ms, i) => {
      expect(paces[i]).toBeCloseTo(Math.log(ms) - geometric, 9);
    });
    // 0.9 of the noise over a fifth of 27 N·m; 0.3 of a step of 10 ms over a quarter of 790 ms.
    expect(blur).toBeCloseTo(Math.hypot((0.9 * 0.1) / 5.4, (0.3 * 10) / 197.5), 9);
    const atOnce = riseShape(
      pullOf({ rise: riseBy([0, 0, 0, 0, 0, 0, 0, 0, 0]), releaseNm: null, peakNm: -27 }),
    );
    expect(atOnce).toMatchObject({ time: Math.log(0.5), paces: [0, 0, 0, 0] });
    expect(atOnce.blur).toBeCloseTo(Math.hypot((0.9 * 0.02) / 5.4, (0.3 * 10) / 0.5), 9);
  });

  it('that a stroke was a knock, by how it came down and how long it stood near its top', () => {
    const knock = (downMs: number, atHalfMs: number) =>
      Number(
        knockProbability(
          pullOf({
            startUs: 1_000_000,
            peakUs: 1_100_000,
            endUs: 1_100_000 + 1000 * downMs,
            rise: riseBy([5, 10, 15, 20, atHalfMs, 80, 85, 90, 95]),
          }),
        ).toFixed(5),
      );
    expect(
      [20, 60, 150, 300].map((downMs) => [25, 50, 90].map((atHalfMs) => knock(downMs, atHalfMs))),
    ).toMatchInlineSnapshot(`
      [
        [
          0.99973,
          1,
          0,
        ],
        [
          1,
          1,
          0,
        ],
        [
          0.9977,
          0.09526,
          0,
        ],
        [
          0,
          0,
          0,
        ],
      ]
    `);
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
