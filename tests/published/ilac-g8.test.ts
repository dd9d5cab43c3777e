import { describe, expect, it } from 'vitest';
import { acceptanceZone } from '../../src/metrology/decision.ts';
import { falseAcceptanceOnEdge } from '../../src/metrology/edge-risk.ts';
import { normalQuantile } from '../../src/metrology/normal.ts';
import { specificRisk } from '../../src/metrology/risk.ts';
import { normalSpread } from '../../src/metrology/spread.ts';
import { peakTerm } from '../../src/metrology/terms.ts';
import { conformanceProbability, judge, windowOf } from '../../src/metrology/window.ts';
import { agrees } from './published.ts';

describe('ILAC-G8:09/2019: risk of a false OK on the acceptance limit', () => {
  // The layout of the table is from memory; "< 2.5 %" and "< 50 %" were read.
  const rows: readonly (readonly [rule: string, r: number, risk: number, within: number])[] = [
    ['six sigma, w = 3U', 3, 1e-9, 1e-9],
    ['three sigma, w = 1.5U', 1.5, 0.00135, 5e-6],
    ['w = U', 1, 0.02275, 5e-6],
    ['ISO 14253-1, w = 0.83U', 0.83, 0.04846, 5e-6],
    ['simple acceptance, w = 0', 0, 0.5, 0],
    ['uncritical, w = -U', -1, 0.97725, 5e-6],
  ];
  /** For a normal distribution. */
  const falseAcceptanceAt = (r: number) =>
    falseAcceptanceOnEdge([peakTerm(0.5)], { guardLower: r, guardUpper: r }).upper;
  for (const [what, r, value, within] of rows)
    agrees({ what, value, within, source: 'ILAC-G8:09/2019, table of rules', confirmed: 'computed' }, () =>
      falseAcceptanceAt(r),
    );

  it('stays below the bounds that the guide prints: 2.5 % with w = U, 50 % without a guard band', () => {
    expect(falseAcceptanceAt(1)).toBeLessThan(0.025);
    expect(falseAcceptanceAt(0.83)).toBeLessThan(0.05);
    expect(falseAcceptanceAt(3)).toBeLessThan(1e-6);
    expect(falseAcceptanceAt(0)).toBeLessThanOrEqual(0.5);
  });

  agrees(
    {
      what: 'false OK at the edge that the rule of ISO 14253-1 gives, "95 %"',
      value: 0.05,
      within: 0.005,
      source: 'ISO 14253-1:2017, default rule',
      confirmed: 'from memory',
    },
    () => {
      const zone = acceptanceZone(
        { kind: 'iso-14253-1' },
        { lowerLimit: 0, upperLimit: 100 },
        normalSpread(2),
      );
      return specificRisk(zone?.upper ?? Number.NaN, 1, { lowerLimit: 0, upperLimit: 100 }).high;
    },
  );

  const factor = (what: string, value: number, ours: () => number) =>
    agrees({ what, value, within: 5e-7, source: 'normal distribution', confirmed: 'computed' }, ours);
  factor('guard band for exactly 2.5 %, in u', 1.959964, () => -normalQuantile(0.025));
  factor('guard band for exactly 5 %, in u', 1.644854, () => -normalQuantile(0.05));
});

describe('ILAC-G8:09/2019, 4.2.3: the non-binary statement with guard band (read)', () => {
  // 25 N·m ±10 %, U = 1.0 (k = 2): the wording is "y <= TL - w", "<= TL", "<= TL + w", beyond.
  const window = windowOf({
    unit: 'N.m',
    lowerLimit: 22.5,
    upperLimit: 27.5,
    guardBandFactor: 1,
    spreadAt: () => normalSpread(1),
  });
  it.each([
    [26.5, 'pass'],
    [26.500001, 'conditional-pass'],
    [27.5, 'conditional-pass'],
    [27.500001, 'conditional-fail'],
    [28.5, 'conditional-fail'],
    [28.500001, 'fail'],
  ])('%d N·m: %s', (value, grade) => {
    expect(judge(value, normalSpread(1), window).grade).toBe(grade);
    expect(judge(50 - value, normalSpread(1), window).grade).toBe(grade);
  });

  const worked = (what: string, value: number, within: number, ours: () => number) =>
    agrees({ what, value, within, source: 'worked example after ILAC-G8', confirmed: 'computed' }, ours);
  worked('risk at 26.5 N·m', 0.02275, 5e-6, () => specificRisk(26.5, 0.5, window).high);
  worked(
    'risk at 27.0 N·m, in the guard band',
    0.158655,
    5e-7,
    () => 1 - conformanceProbability(27, 0.5, window),
  );
  worked(
    'upper limit with r = 0.83',
    26.67,
    1e-9,
    () => acceptanceZone({ kind: 'guard-band', r: 0.83 }, window, normalSpread(1))?.upper ?? Number.NaN,
  );
  worked(
    'lower limit with r = 0.83',
    23.33,
    1e-9,
    () => acceptanceZone({ kind: 'guard-band', r: 0.83 }, window, normalSpread(1))?.lower ?? Number.NaN,
  );
});
