import { describe, expect, it } from 'vitest';
import { fitDrift, predict } from '../../src/statistics/drift.ts';
import {
  lag1,
  type Moments,
  mean,
  merge,
  momentsOf,
  standardDeviation,
} from '../../src/statistics/moments.ts';
import { exactMoments } from './exact.ts';
import { agrees } from './published.ts';
import { digitsOfPi, LEW, LOTTERY, MAVRO, MICHELSO, NORRIS, piDigitsAsCertified, saw } from './strd-data.ts';

interface Set {
  readonly name: string;
  readonly readings: readonly number[];
  readonly mean: number;
  readonly s: number;
  readonly r1: number;
  /**
   * Relative, of mean, s and r1. The readings as doubles are not the readings as printed, so exact arithmetic on the doubles
   * is already off by that: Mavro 7.5e-14 and 1.2e-14, Michelso 1.4e-14 and 3.6e-14, NumAcc3 3.5e-10 and 5.8e-13, NumAcc4
   * 5.6e-9 and 9.3e-12 (s and r1). In NumAcc3 and 4 the error of the two readings widens all distances from the mean
   * alike: s grows with it, and r1, a ratio of them, hardly sees it.
   */
  readonly within: readonly [number, number, number];
}

const FULL = [1e-15, 2e-14, 2e-14] as const;

const sets: readonly Set[] = [
  {
    name: 'PiDigits',
    readings: piDigitsAsCertified(),
    mean: 4.5348,
    s: 2.86733906028871,
    r1: -0.00355099287237972,
    within: [1e-15, 1e-14, 5e-14],
  },
  {
    name: 'Lottery',
    readings: LOTTERY,
    mean: 518.95871559633,
    s: 291.699727470969,
    r1: -0.120948622967393,
    within: FULL,
  },
  { name: 'Lew', readings: LEW, mean: -177.435, s: 277.332168044316, r1: -0.307304800605679, within: FULL },
  {
    name: 'Mavro',
    readings: MAVRO,
    mean: 2.001856,
    s: 0.000429123454003053,
    r1: 0.937989183438248,
    within: [1e-15, 1e-13, 5e-14],
  },
  {
    name: 'Michelso',
    readings: MICHELSO,
    mean: 299.8524,
    s: 0.0790105478190518,
    r1: 0.535199668621283,
    within: [1e-15, 5e-14, 1e-13],
  },
  {
    name: 'NumAcc1',
    readings: [10_000_001, 10_000_003, 10_000_002],
    mean: 10_000_002,
    s: 1,
    r1: -0.5,
    within: [0, 0, 0],
  },
  {
    name: 'NumAcc2',
    readings: saw(1.2, 1.1, 1.3),
    mean: 1.2,
    s: 0.1,
    r1: -0.999,
    within: [1e-15, 1e-14, 2e-14],
  },
  {
    name: 'NumAcc3',
    readings: saw(1_000_000.2, 1_000_000.1, 1_000_000.3),
    mean: 1_000_000.2,
    s: 0.1,
    r1: -0.999,
    within: [1e-15, 1e-9, 1e-11],
  },
  {
    name: 'NumAcc4',
    readings: saw(10_000_000.2, 10_000_000.1, 10_000_000.3),
    mean: 10_000_000.2,
    s: 0.1,
    r1: -0.999,
    within: [1e-15, 1e-8, 1e-10],
  },
];

/** Summed in parts of `length` and merged, as parallel work would. */
function inParts(readings: readonly number[], length: number): Moments {
  const parts = Array.from({ length: Math.ceil(readings.length / length) }, (_, i) =>
    momentsOf(readings.slice(i * length, (i + 1) * length)),
  );
  return parts.reduce(merge);
}

for (const [how, sum] of [
  ['in one pass', momentsOf],
  ['in merged parts of 37', (readings: readonly number[]) => inParts(readings, 37)],
] as const)
  describe(`NIST StRD, univariate summary statistics, ${how}`, () => {
    for (const set of sets) {
      const check = (what: string, value: number, within: number, ours: (moments: Moments) => number) =>
        agrees(
          {
            what: `${set.name}: ${what}`,
            value,
            within: within * Math.abs(value),
            source: 'NIST StRD certified values',
            confirmed: 'read',
          },
          () => ours(sum(set.readings)),
        );
      check('mean', set.mean, set.within[0], mean);
      check('standard deviation', set.s, set.within[1], standardDeviation);
      check('lag-1 autocorrelation', set.r1, set.within[2], (moments) => lag1(moments) ?? Number.NaN);

      it(`${set.name}: as good as double precision allows, against exact arithmetic on the same doubles`, () => {
        const exact = exactMoments(set.readings);
        const ours = sum(set.readings);
        const off = (value: number | null, from: number) => Math.abs((value ?? Number.NaN) / from - 1);
        expect(off(mean(ours), exact.mean)).toBeLessThan(3e-14);
        expect(off(standardDeviation(ours), exact.s)).toBeLessThan(3e-14);
        expect(off(lag1(ours), exact.r1)).toBeLessThan(3e-14);
      });
    }
  });

describe('digits of π', () => {
  // mpmath 1.3.0
  agrees(
    { what: 'sum of the first 5000', value: 22_679, within: 0, source: 'mpmath', confirmed: 'computed' },
    () => digitsOfPi(5000).reduce((sum, digit) => sum + digit, 0),
  );

  it('end as they should, so that none was lost to rounding', () => {
    expect(digitsOfPi(5000).slice(-10).join('')).toBe('7413260472');
  });
});

describe('NIST StRD, linear regression, Norris', () => {
  const fitted = fitDrift(NORRIS.map(({ x, y }) => ({ atDays: x, deviation: y })));
  const check = (what: string, value: number, ours: () => number) =>
    agrees(
      {
        what,
        value,
        within: 1e-12 * Math.abs(value),
        source: 'NIST StRD certified values',
        confirmed: 'from memory',
      },
      ours,
    );
  if (!fitted.ok) throw new Error(fitted.error.message);
  const drift = fitted.value;
  check('intercept', -0.262323073774029, () => predict(drift, 0, 0.5).value);
  check('slope', 1.00211681802045, () => drift.perDay);
  check('standard deviation of the slope', 0.000429796848199937, () => drift.perDayUncertainty);
  check('residual standard deviation', 0.884796396144373, () => drift.scatter);

  it('has 36 points', () => {
    expect(drift.n).toBe(36);
  });
});
