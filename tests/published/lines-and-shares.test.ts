/** Straight lines, shares and tails of F and t that others have printed: what drift, control and delivered quality rest on. */
import { describe } from 'vitest';
import { fisherTail } from '../../src/metrology/fisher.ts';
import { normalSpread } from '../../src/metrology/spread.ts';
import { studentQuantile } from '../../src/metrology/student.ts';
import { judge, windowOf } from '../../src/metrology/window.ts';
import { type Drift, fitDrift, fitPeriods, lineAt, predict } from '../../src/statistics/drift.ts';
import { proportion } from '../../src/statistics/proportion.ts';
import { accepted } from '../statistics/outcome.ts';
import { agrees, type Confirmed } from './published.ts';

const line = (x: readonly number[], y: readonly number[]): Drift =>
  accepted(fitDrift(x.map((atDays, i) => ({ atDays, deviation: y[i] ?? Number.NaN }))));
const intercept = (of: Drift) => lineAt(of, 0, 0).value;
/** Standard uncertainty of the line at x. */
const uOfLine = (of: Drift, x: number) =>
  of.scatter * Math.sqrt(1 / of.weight + (x - of.meanAtDays) ** 2 / of.timeSquares);
/** Half of an interval over its factor: the standard uncertainty that the interval was made from. */
const uIn = ({ from, to }: { from: number; to: number }, degreesOfFreedom: number) =>
  (to - from) / 2 / studentQuantile(0.975, degreesOfFreedom);

const checks =
  (source: string, confirmed: Confirmed) =>
  (what: string, value: number, within: number, ours: () => number) =>
    agrees({ what, value, within, source, confirmed }, ours);

describe('GUM H.3: calibration of a thermometer', () => {
  const check = checks('JCGM 100:2008, H.3.3 and H.3.4', 'read');
  const x = [1.521, 2.012, 2.512, 3.003, 3.507, 3.999, 4.513, 5.002, 5.503, 6.01, 6.511];
  const y = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  const fit = line(x, y);
  check('intercept', -0.1712, 5e-5, () => intercept(fit));
  check('its standard uncertainty', 0.0029, 5e-5, () => uOfLine(fit, 0));
  check('slope', 0.00218, 5e-6, () => fit.perDay);
  check('its standard uncertainty', 0.00067, 5e-6, () => fit.perDayUncertainty);
  check('scatter', 0.0035, 5e-5, () => fit.scatter);
  check('correction at 30 °C', -0.1494, 5e-5, () => lineAt(fit, 10, 0.95).value);
  check('its standard uncertainty', 0.0041, 5e-5, () => uIn(lineAt(fit, 10, 0.95), 9));
  check('degrees of freedom', 9, 0, () => fit.degreesOfFreedom);
});

describe("Natrella, Handbook 91, worksheet 5-4.1: Young's modulus over temperature", () => {
  const check = checks('NBS Handbook 91, worksheet 5-4.1', 'read');
  const x = [30, ...Array.from({ length: 15 }, (_, i) => 100 * (i + 1))];
  const y = [4642, 4612, 4565, 4513, 4476, 4433, 4389, 4347, 4303, 4251, 4201, 4140, 4100, 4073, 4024, 3999];
  const fit = line(x, y);
  check('slope', -0.44985482, 5e-9, () => fit.perDay);
  check('intercept', 4654.9846, 5e-5, () => intercept(fit));
  // The last digit is cut off, not rounded.
  check('variance of the slope', 0.000025649045, 1e-12, () => fit.perDayUncertainty ** 2);
  check('variance of the intercept', 19.879452, 5e-6, () => uOfLine(fit, 0) ** 2);
  check('scatter', 9.277617, 5e-6, () => fit.scatter);
  check('variance of the line at 1200', 10.53, 0.005, () => uIn(lineAt(fit, 1200, 0.95), 14) ** 2);
  check('variance of a new reading at 750', 91.45, 0.005, () => uIn(predict(fit, 750, 0.95), 14) ** 2);
});

describe('ISO/TS 28037: a straight line with equal weights', () => {
  const check = checks('ISO/TS 28037:2010, p. 13', 'read');
  const y = [3.3, 5.6, 7.1, 9.3, 10.7, 12.1];
  const fit = accepted(fitPeriods([y.map((deviation, i) => ({ atDays: i + 1, deviation, standard: 0.5 }))]));
  check('intercept', 1.867, 0.0005, () => intercept(fit));
  check('its standard uncertainty', 0.465, 0.0005, () => uOfLine(fit, 0));
  check('slope', 1.757, 0.0005, () => fit.perDay);
  check('its standard uncertainty', 0.12, 0.0005, () => fit.perDayUncertainty);
  check('covariance of the two', -0.05, 0.0005, () => -fit.meanAtDays / fit.timeSquares);
  check('chi-square as observed', 1.665, 0.0005, () => fit.chiSquare);
});

describe('Bevington, table 6.1', () => {
  const check = checks('values of R lm, as another library holds them', 'computed');
  const fit = line(
    [4, 8, 12.5, 16, 20, 25, 31, 36, 40, 40],
    [3.7, 7.8, 12.1, 15.6, 19.8, 24.5, 30.7, 35.5, 39.4, 39.5],
  );
  check('intercept', -0.222142, 5e-7, () => intercept(fit));
  check('its standard uncertainty', 0.06962967, 5e-9, () => uOfLine(fit, 0));
  check('slope', 0.99278, 5e-7, () => fit.perDay);
  check('its standard uncertainty', 0.002636608, 5e-10, () => fit.perDayUncertainty);
});

describe('tails of F and t', () => {
  const f = checks('one-way analyses of variance in the tests of suncal', 'read');
  f('P(F > 0.0850416; 3, 36)', 0.96777478, 5e-8, () => fisherTail(0.0850416, [3, 36]));
  f('P(F > 0.23239; 3, 29)', 0.873061, 5e-7, () => fisherTail(0.23239, [3, 29]));
  f('P(F > 6.612; 2, 53)', 0.003, 0.0005, () => fisherTail(6.612, [2, 53]));
  const t = checks('JCGM 100:2008, table G.2', 'read');
  const row = (share: number, degreesOfFreedom: number, value: number, within: number) =>
    t(`t for ${100 * share} % and ${degreesOfFreedom}`, value, within, () =>
      studentQuantile((1 + share) / 2, degreesOfFreedom),
    );
  row(0.6827, 1, 1.84, 0.005);
  row(0.9973, 5, 5.51, 0.005);
  row(0.9, 20, 1.72, 0.005);
  row(0.9973, 1, 235.8, 0.05);
  row(0.9973, 2, 19.21, 0.005);
  row(0.99, 11, 3.11, 0.005);
  row(0.95, 20, 2.09, 0.005);
  row(0.9, 10, 1.81, 0.005);
});

describe('Newcombe 1998, table I, method 3: the score interval of Wilson', () => {
  const check = checks('Stat. Med. 17:857-872, table I', 'second-hand');
  for (const [count, n, from, to] of [
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ] as const) {
    check(`${count} of ${n}, from`, from, 5e-5, () => proportion(count, n).from);
    check(`${count} of ${n}, to`, to, 5e-5, () => proportion(count, n).to);
  }
});

describe('JCGM 106, 7.4, as a reading is judged', () => {
  const check = checks('JCGM 106:2012, 7.4', 'computed');
  const oil = windowOf({
    unit: 'mm',
    lowerLimit: 12.5,
    upperLimit: 16.3,
    guardBandFactor: 0,
    spreadAt: () => normalSpread(3.6),
  });
  check(
    'oil of 13.6 mm²/s with U = 3.6 within 12.5-16.3',
    0.66263,
    5e-7,
    () => judge(13.6, normalSpread(3.6), oil).conformanceProbability,
  );
});
