import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '../../src/metrology/chi-square.ts';
import { fitPeriods, predict } from '../../src/statistics/drift.ts';
import { agrees } from './published.ts';

/** x, y, u(y) */
const POINTS = [
  [1, 3.2, 0.5],
  [2, 4.3, 0.5],
  [3, 7.6, 0.5],
  [4, 8.6, 1],
  [5, 11.7, 1],
  [6, 12.8, 1],
] as const;

describe('a straight line with unequal weights, ISO/TS 28037:2010, clause 6', () => {
  const fitted = fitPeriods([
    POINTS.map(([atDays, deviation, standard]) => ({ atDays, deviation, standard })),
  ]);
  if (!fitted.ok) throw new Error(fitted.error.message);
  const line = fitted.value;
  const check = (what: string, value: number, ours: () => number) =>
    agrees(
      {
        what,
        value,
        within: 0.0005,
        source: 'ISO/TS 28037:2010, p. 14, example with unequal weights',
        confirmed: 'read',
      },
      ours,
    );
  check('intercept', 0.885, () => predict(line, 0, 0).value);
  check('slope', 2.057, () => line.perDay);
  check('standard uncertainty of the intercept', 0.53, () =>
    Math.sqrt(1 / line.weight + line.meanAtDays ** 2 / line.timeSquares),
  );
  check('standard uncertainty of the slope', 0.178, () => line.perDayUncertainty);
  check('covariance of the two', -0.082, () => -line.meanAtDays / line.timeSquares);
  check('chi-square as observed', 4.131, () => line.chiSquare);
  check('chi-square that 95 % stay below, 4 degrees of freedom', 9.488, () => chiSquareQuantile(0.95, 4));

  it('is not rejected, as there', () => {
    expect(line).toMatchObject({ fit: 'fits', spare: 4 });
  });
});
