import { describe, expect, it } from 'vitest';
import { combine, coverageFactorFor } from '../../src/metrology/budget.ts';
import { propagate } from '../../src/metrology/covariance.ts';
import { studentQuantile } from '../../src/metrology/student.ts';
import { type Input, standardUncertainty } from '../../src/metrology/term.ts';
import { repeatabilityTerm, resolutionTerm } from '../../src/metrology/terms.ts';
import { agrees, type Confirmed } from './published.ts';

const GTC = 'JCGM 100:2008 H.1, by MSLNZ/GTC examples/GUM_H1.py and its test';

describe('GUM H.1: calibration of a gauge block', () => {
  const term = (
    name: string,
    amount: number,
    kind: 'standard' | 'rectangular' | 'arcsine',
    sensitivity: number,
    degreesOfFreedom = Number.POSITIVE_INFINITY,
  ): Input & { name: string } => ({
    name,
    type: 'B',
    amount,
    distribution: { kind },
    sensitivity,
    degreesOfFreedom,
  });
  // Sensitivities with the nominal length, as printed: 50 mm.
  const LENGTH = 50_000_000;
  const EXPANSION = 11.5e-6;
  const difference = [
    term('mean of five', 5.8, 'standard', 1, 24),
    term('comparator, random', 3.9, 'standard', 1, 5),
    term('comparator, systematic', 6.7, 'standard', 1, 8),
  ];
  const temperature = [term('bed', 0.2, 'standard', 1), term('cycle', 0.5, 'arcsine', 1)];
  const all = [
    term('standard', 25, 'standard', 1, 18),
    ...difference,
    term('expansion of the standard', 2e-6, 'rectangular', 0),
    term('difference in expansion', 1e-6, 'rectangular', LENGTH * 0.1, 50),
    term('difference in temperature', 0.05, 'rectangular', -LENGTH * EXPANSION, 2),
    term('temperature', combine(temperature, { k: 1 }).standard, 'standard', 0),
  ];
  const budget = combine(all, { confidence: 0.99 });
  const check = (
    what: string,
    value: number,
    within: number,
    ours: () => number,
    confirmed: Confirmed = 'read',
  ) => agrees({ what, value, within, source: GTC, confirmed }, ours);
  const row = (name: string) => budget.rows.find((one) => one.name === name)?.contribution ?? Number.NaN;

  check('combined standard uncertainty, nm', 31.66, 0.005, () => budget.standard);
  check('effective degrees of freedom', 16.75, 0.005, () => budget.degreesOfFreedom);
  check(
    'u of the measured difference, nm',
    9.68194195397,
    5e-11,
    () => combine(difference, { k: 1 }).standard,
  );
  check('its degrees of freedom', 25.4472507774, 5e-10, () => combine(difference, { k: 1 }).degreesOfFreedom);
  check('u of the temperature, °C', 0.40620192, 5e-9, () => combine(temperature, { k: 1 }).standard);
  check('contribution of the difference in temperature, nm', 16.5988, 5e-5, () =>
    row('difference in temperature'),
  );
  check('contribution of the difference in expansion, nm', 2.88675, 5e-5, () =>
    row('difference in expansion'),
  );
  check('coverage factor t99(16)', 2.92, 0.005, () => budget.coverageFactor, 'from memory');
  check('expanded uncertainty at 99 %, nm', 93, 1, () => budget.expanded, 'from memory');
});

describe('GUM H.2: resistance and reactance measured together', () => {
  const [V, I, phi] = [4.999, 19.661e-3, 1.04446];
  const Z = V / I;
  const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
  const { standard, correlation } = propagate(
    [
      [cos / I, (-Z * cos) / I, -Z * sin],
      [sin / I, (-Z * sin) / I, Z * cos],
      [1 / I, -Z / I, 0],
    ],
    {
      standard: [3.2e-3, 9.5e-6, 7.5e-4],
      correlation: [
        [1, -0.36, 0.86],
        [-0.36, 1, -0.65],
        [0.86, -0.65, 1],
      ],
    },
  );
  const check = (what: string, value: number, within: number, ours: () => number | undefined) =>
    agrees(
      { what, value, within, source: 'JCGM 100:2008 H.2, table H.4', confirmed: 'read' },
      () => ours() ?? Number.NaN,
    );
  check('R, Ω', 127.732, 0.0005, () => Z * cos);
  check('X, Ω', 219.85, 0.005, () => Z * sin);
  check('Z, Ω', 254.26, 0.005, () => Z);
  check('u(R), Ω', 0.07, 0.0005, () => standard[0]);
  check('u(X), Ω', 0.3, 0.005, () => standard[1]);
  check('u(Z), Ω', 0.24, 0.005, () => standard[2]);
  check('r(R, X)', -0.59, 0.005, () => correlation[0]?.[1]);
  check('r(R, Z)', -0.49, 0.005, () => correlation[0]?.[2]);
  check('r(X, Z)', 0.99, 0.005, () => correlation[1]?.[2]);

  it('the table of correlations is symmetric with ones on its diagonal', () => {
    for (const [i, row] of correlation.entries())
      for (const [j, r] of row.entries())
        expect(r).toBeCloseTo(i === j ? 1 : (correlation[j]?.[i] ?? Number.NaN), 12);
  });
});

describe('GUM table G.2: t for a given confidence', () => {
  const rows: readonly (readonly [df: number, confidence: number, t: number, within: number])[] = [
    [1, 0.95, 12.71, 0.005],
    [2, 0.95, 4.3, 0.005],
    [3, 0.95, 3.18, 0.005],
    [5, 0.95, 2.57, 0.005],
    [10, 0.95, 2.23, 0.005],
    [16, 0.95, 2.12, 0.005],
    [50, 0.95, 2.01, 0.005],
    [100, 0.95, 1.984, 0.0005],
    [1, 0.9545, 13.97, 0.005],
    [4, 0.9545, 2.87, 0.005],
    [10, 0.9545, 2.28, 0.005],
    [5, 0.99, 4.03, 0.005],
    [10, 0.99, 3.17, 0.005],
    [100, 0.99, 2.626, 0.0005],
  ];
  for (const [df, confidence, value, within] of rows)
    agrees(
      {
        what: `t, ${confidence * 100} %, ${df} degrees of freedom`,
        value,
        within,
        source: 'JCGM 100:2008, table G.2',
        confirmed: 'from memory',
      },
      () => coverageFactorFor(df, confidence),
    );

  // scipy 1.17.1, scipy.stats.t.ppf
  const computed: readonly (readonly [p: number, df: number, t: number])[] = [
    [0.975, 1, 12.706204736174694],
    [0.975, 2.5, 3.5746548420036817],
    [0.975, 7, 2.364624251592784],
    [0.975, 16, 2.1199052992212546],
    [0.975, 120.5, 1.9798467346393642],
    [0.995, 1, 63.656741162871526],
    [0.995, 2.5, 7.163728138948783],
    [0.995, 7, 3.4994832973504924],
    [0.995, 16, 2.9207816224251],
    [0.995, 120.5, 2.617245970983195],
    [0.6, 1, 0.32491969623290634],
    [0.6, 2.5, 0.2814595127485477],
    [0.6, 7, 0.2631668613520229],
    [0.6, 16, 0.25759919485514193],
    [0.6, 120.5, 0.2539071865002148],
    [0.001, 1, -318.30883898555044],
    [0.001, 2.5, -13.822193110865964],
    [0.001, 7, -4.785289628638334],
    [0.001, 16, -3.6861547926860134],
    [0.001, 120.5, -3.1592453383841947],
  ];
  for (const [p, df, value] of computed)
    agrees(
      {
        what: `t quantile ${p}, ${df} degrees of freedom`,
        value,
        within: 1e-9 * Math.abs(value),
        source: 'scipy 1.17.1',
        confirmed: 'computed',
      },
      () => studentQuantile(p, df),
    );
});

describe('NIST StRD, univariate: standard deviation of hard-to-sum readings', () => {
  const saw = (first: number, low: number, high: number) => [
    first,
    ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high)),
  ];
  const check = (what: string, value: number, within: number, readings: readonly number[]) =>
    agrees(
      { what, value, within, source: 'NIST StRD certified values', confirmed: 'read' },
      () => repeatabilityTerm(readings, 'printed').amount,
    );
  check('NumAcc1', 1, 0, [10_000_001, 10_000_003, 10_000_002]);
  check('NumAcc2', 0.1, 1e-14, saw(1.2, 1.1, 1.3));
  check('NumAcc3', 0.1, 1e-9, saw(1_000_000.2, 1_000_000.1, 1_000_000.3));
  check('NumAcc4', 0.1, 1e-8, saw(10_000_000.2, 10_000_000.1, 10_000_000.3));
});

describe('GUM 4.3.7 and F.2.2.1: bounds and steps', () => {
  const check = (source: string, what: string, value: number, within: number, ours: () => number) =>
    agrees({ what, value, within, source: `JCGM 100:2008, ${source}`, confirmed: 'from memory' }, ours);
  check('4.3.7, example 1', 'u of an expansion that is in error by 0.40 at most, 1e-6/°C', 0.23, 0.005, () =>
    standardUncertainty(0.4, { kind: 'rectangular' }),
  );
  check('F.2.2.1', 'u of an indication in steps, in steps', 0.29, 0.005, () => {
    const { amount, distribution } = resolutionTerm(1);
    return standardUncertainty(amount, distribution);
  });
});
