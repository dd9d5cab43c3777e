import { describe } from 'vitest';
import { acceptanceZone } from '../../src/metrology/decision.ts';
import { normalQuantile } from '../../src/metrology/normal.ts';
import { globalRisk, guardBandFor } from '../../src/metrology/risk.ts';
import { normalSpread } from '../../src/metrology/spread.ts';
import { conformanceProbability } from '../../src/metrology/window.ts';
import { agrees, type Confirmed } from './published.ts';

const INFINITE = Number.POSITIVE_INFINITY;
const check = (
  clause: string,
  what: string,
  value: number,
  within: number,
  confirmed: Confirmed,
  ours: () => number,
) => agrees({ what, value, within, source: `JCGM 106:2012, ${clause}`, confirmed }, ours);

describe('JCGM 106: conformance probability', () => {
  const oil = { lowerLimit: 12.5, upperLimit: 16.3 };
  check(
    '7.4',
    'oil of 13.6 mm²/s, u 1.8, within 12.5-16.3 (inputs read, printed result from memory)',
    0.66,
    0.005,
    'from memory',
    () => conformanceProbability(13.6, 1.8, oil),
  );
  check('7.4', 'the same, more figures', 0.66263, 5e-7, 'computed', () =>
    conformanceProbability(13.6, 1.8, oil),
  );
  check('7.3.3', 'breakdown voltage -5.47 V, u 0.05, at most -5.40', 0.92, 0.005, 'from memory', () =>
    conformanceProbability(-5.47, 0.05, { lowerLimit: -INFINITE, upperLimit: -5.4 }),
  );
  check('7.3.3', 'burst strength 509.7 kPa, u 8.6, at least 490', 0.99, 0.005, 'from memory', () =>
    conformanceProbability(509.7, 8.6, { lowerLimit: 490, upperLimit: INFINITE }),
  );
  check(
    '8.3.3.2',
    'speed that proves more than 100 km/h at 99.9 %, u 2 %: there the probability is',
    0.999,
    1e-6,
    'computed',
    () => {
      const shown = 100 / (1 - 0.02 * normalQuantile(0.999));
      return conformanceProbability(shown, 0.02 * shown, { lowerLimit: 100, upperLimit: INFINITE });
    },
  );
  check(
    '8.3.3.2',
    'the speed itself, rounded up, km/h',
    107,
    0.5,
    'from memory',
    () => 100 / (1 - 0.02 * normalQuantile(0.999)),
  );
});

describe('JCGM 106, table 1: z for a conformance probability', () => {
  for (const [p, z, exact] of [
    [0.8, 0.84, 0.8416],
    [0.9, 1.28, 1.2816],
    [0.95, 1.64, 1.6449],
    [0.99, 2.33, 2.3263],
    [0.999, 3.09, 3.0902],
  ] as const) {
    check('table 1', `z for ${p}`, z, 0.0051, 'from memory', () => normalQuantile(p));
    check('table 1', `z for ${p}, more figures`, exact, 5e-5, 'computed', () => normalQuantile(p));
  }
});

describe('JCGM 106, 9.5.4: ball bearings, gamma prior', () => {
  const source = 'JCGM 106:2012, 9.5.4, by sandialabs/suncal "Risk - Ball Bearing.ipynb"';
  /** Gamma density with shape 4 and rate 4 per µm. */
  const density = (x: number) => (x <= 0 ? 0 : (4 ** 4 / 6) * x ** 3 * Math.exp(-4 * x));
  const limits = { lowerLimit: 0, upperLimit: 2 };
  const risk = (guardBand: number) =>
    globalRisk({
      density,
      from: 0,
      to: 15,
      standard: 0.25,
      limits,
      accept: { lower: 0, upper: 2 - guardBand },
    });
  const guardBand = () => guardBandFor((g) => risk(g).consumer, 0.001, 1) ?? Number.NaN;
  const read = (what: string, value: number, within: number, ours: () => number) =>
    agrees({ what, value, within, source, confirmed: 'read' }, ours);
  read('out of tolerance', 0.04238, 5e-6, () => risk(0).outOfTolerance);
  read("consumer's risk, no guard band", 0.00802, 5e-6, () => risk(0).consumer);
  read("guard band for a consumer's risk of 0.1 %, µm", 0.32817, 5e-6, guardBand);
  read('acceptance limit, µm', 1.67183, 5e-6, () => 2 - guardBand());
  const mine = (what: string, value: number, within: number, ours: () => number) =>
    agrees({ what, value, within, source: 'quadrature with other software', confirmed: 'computed' }, ours);
  mine("producer's risk, no guard band", 0.0313, 5e-5, () => risk(0).producer);
  mine("producer's risk at the published guard band", 0.0894, 5e-5, () => risk(0.32817).producer);
});

describe('JCGM 106, 8.3: an acceptance zone from a probability', () => {
  const limits = { lowerLimit: 22.5, upperLimit: 27.5 };
  const upper = () =>
    acceptanceZone({ kind: 'probability', atLeast: 0.95 }, limits, normalSpread(1))?.upper ?? Number.NaN;
  check('8.3', 'upper acceptance limit for 95 %, 22.5-27.5 with u 0.5', 26.67757, 5e-6, 'computed', upper);
});
